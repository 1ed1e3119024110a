import { cautions, type CautionSubject } from "../cautions";
import type { Page, SheetCell, SheetChart } from "../sheets/kit/definition";
import { verdictOf } from "../sheets/kit/look";
import { readAddress, readRange, type Block as CellBlock } from "../sheets/kit/address";
import { cautionText } from "../screen/cautions-text";
import { drawChart, type ChartContent, type Point, type Stretch } from "../screen/chart";
import { freshId, make } from "../screen/dom";
import type { CellValue } from "../screen/host";
import { formatValue, writtenNumber } from "../screen/number-format";
import { resultTable, scrolled } from "../screen/result-table";
import { errorSaid, screenSaid, textSaid, workbookSaid } from "../words/spoken";
import {
  outline,
  type Block,
  type CellTable,
  type Field,
  type Outline,
  type SpilledTable,
} from "./page-outline";
import type { Call } from "./plan-drawing/degrees";
import { fieldCells } from "./plan-drawing/field";
import { type Drawn, PlanDrawing } from "./plan-drawing/plan-drawing";
import type { SheetValues, ShownCell } from "./sheet-values";
import { InputFaults } from "./input-faults";
import { grow, longText } from "./long-text";
import { readTyped } from "./typed";
import type { Place, WrongView } from "./wrong-view";

/** Time after the last key before a typed value goes to the sheet. */
const TYPING_PAUSE = 250;

/** The name of the cell that says in which units a workbook is. */
export const UNITS = "Units";

/** A row of more columns is read across, not as a block of its own. */
const MOST_STACKED = 6;

/** A drawing's pen stands still where a hydrant is at a line's end, but not for so many points. */
const MOST_ALIKE = 12;

/** An input that is called by where it stands. */
const NUMBERED = /, row \d+$/;

/** Longer text than this takes a line of its own. */
const SHORT_TEXT = 12;

/** Longer text than this is typed into a field of several lines. */
const LONG_TEXT = 24;

/** What a page of cells asks of what it stands on. */
export interface Means {
  readonly call: Call;
  /** Leads to a cell, which may stand on another page. */
  readonly lead: (place: Place) => void;
}

/**
 * A page of the sheet as a document: the answers first, the picture, the inputs as a form, the
 * results, the tables. It reads the same cells as the grid and writes to them, so that nobody needs
 * the grid's canvas to work.
 */
export class SheetView {
  private readonly refreshers: (() => void)[] = [];
  /** What is wrong, its cause first; loaded when something is. */
  private readonly wrong = make("div", { class: "wrong-first" });
  private wrongView: Promise<WrongView> | undefined;
  private readonly faults: InputFaults;
  private errs = false;
  /** By address, what shows a cell. */
  private readonly shown = new Map<string, HTMLElement>();
  private readonly view = make("div");
  private readonly parts: Outline;

  constructor(
    private readonly page: Page,
    private readonly values: SheetValues,
    /** All of the workbook, this page among them. */
    private readonly pages: readonly Page[],
    private readonly means: Means,
  ) {
    this.faults = new InputFaults(pages, values);
    this.parts = outline(page);
  }

  refresh(): void {
    this.errs = this.faults.any();
    for (const refresh of this.refreshers) refresh();
    this.tellWrong();
  }

  private tellWrong(): void {
    if (!this.errs && this.wrongView === undefined) return;
    this.wrongView ??= import("./wrong-view").then(
      ({ WrongView }) => new WrongView(this.pages, this.values, this.faults, this.means.lead),
    );
    void this.wrongView.then((view) => {
      const told = this.errs ? view.build(this.page.name) : [];
      this.wrong.replaceChildren(...told);
    });
  }

  /** Leads the eye and the keyboard to a cell of this page. */
  show(at: string): void {
    const found = this.shown.get(at);
    if (found === undefined) return;
    if (!found.matches("input, textarea, select")) found.tabIndex = -1;
    for (let around = found.closest("details"); around !== null;) {
      around.open = true;
      around = around.parentElement?.closest("details") ?? null;
    }
    found.scrollIntoView({ block: "center" });
    found.focus({ preventScroll: true });
  }

  build(): HTMLElement {
    const begun = this.begin();
    this.finish();
    return begun;
  }

  /** The answers alone, which can be read while the rest is made. */
  begin(): HTMLElement {
    this.view.className = this.page.onePage === true ? "page-view one-page" : "page-view";
    this.view.replaceChildren(this.wrong, ...this.answers(this.parts.answers));
    this.refresh();
    return this.view;
  }

  /** What stands below the answers. */
  finish(): void {
    const { parts } = this;
    const refreshed = this.refreshers.length;
    const withInputs = parts.blocks.filter(hasInput);
    const withoutInputs = parts.blocks.filter((block) => !hasInput(block));
    this.view.append(
      ...this.texts(parts.first),
      ...this.charts().map((chart) => this.picture(chart)),
      ...this.section("What you can change", "inputs", [
        ...withInputs.map((block) => this.block(block)),
        ...this.tables(parts.tables.filter(tableHasInput)),
      ]),
      ...this.section("Results", "results", [
        ...withoutInputs.map((block) => this.block(block)),
        ...this.tables(parts.tables.filter((table) => !tableHasInput(table))),
        ...parts.spilled.map((spilled) => this.spilled(spilled)),
      ]),
      ...parts.said.flatMap(({ heading, texts }) => [
        this.live(make("h2"), heading),
        ...this.texts(texts),
      ]),
      ...this.texts(parts.last),
      ...this.cautions(),
    );
    for (const refresh of this.refreshers.slice(refreshed)) refresh();
    this.tellWrong();
  }

  /** The page's title, which may be worked out too; to be given before the page is built. */
  title(element: HTMLElement): void {
    const cell = this.page.cells.find(({ role }) => role === "title");
    if (cell === undefined) element.textContent = workbookSaid(this.page.name);
    else this.live(element, cell);
  }

  /** What the page is for, where it says so itself; to be given before the page is built. */
  purpose(element: HTMLElement, otherwise: string): void {
    const cell = this.page.cells.find(({ role }) => role === "purpose");
    if (cell === undefined) element.textContent = otherwise;
    else this.live(element, cell);
  }

  private texts(cells: readonly SheetCell[]): HTMLElement[] {
    return cells.map((cell) => this.live(make("p", { class: "note" }), cell));
  }

  private section(title: string, name: string, content: readonly HTMLElement[]): HTMLElement[] {
    if (content.length === 0) return [];
    const id = freshId(name);
    return [
      make(
        "section",
        { class: name, "aria-labelledby": id },
        make("h2", { id }, title),
        ...content,
      ),
    ];
  }

  private answers(answers: Outline["answers"]): HTMLElement[] {
    if (answers.length === 0) return [];
    return [
      make(
        "dl",
        { class: "answers" },
        ...answers.map(({ question, answer }) =>
          make("div", {}, this.live(make("dt"), question), this.live(make("dd"), answer)),
        ),
      ),
    ];
  }

  private block(block: Block): HTMLElement {
    const title = block.heading;
    if (hasInput(block)) {
      const legend = make("legend");
      if (title !== undefined) this.live(legend, title);
      return make("fieldset", {}, legend, ...this.lines(block, (field) => this.field(field)));
    }
    const heading = title === undefined ? [] : [this.live(make("h3"), title)];
    return make(
      "div",
      { class: "block" },
      ...heading,
      ...this.lines(block, (field) => this.result(field)).reduce<HTMLElement[]>(listed, []),
    );
  }

  /** Fields and texts as they stand one under the other. */
  private lines({ fields, texts }: Block, line: (field: Field) => HTMLElement): HTMLElement[] {
    return [
      ...fields.map((field) => ({ at: field.label.at, element: line(field) })),
      ...texts.map((cell) => ({ at: cell.at, element: this.texts([cell])[0] })),
    ]
      .map(({ at, element }) => ({ element, ...readAddress(at) }))
      .sort((one, other) => one.row - other.row || one.column - other.column)
      .map(({ element }) => element);
  }

  private field(field: Field): HTMLElement {
    if (field.value.role !== "input") return make("dl", { class: "values" }, this.result(field));
    if (field.value.name === UNITS) return this.units(field);
    const id = freshId("input");
    const about = freshId("about");
    const hint = make("span", { id: about, class: "hint" }, field.value.note ?? "");
    const control = this.control(field.value, id, about, hint);
    const unit = make("span", { class: "unit" });
    if (field.unit !== undefined) this.live(unit, field.unit);
    return make(
      "div",
      { class: "field" },
      this.live(make("label", { for: id }), field.label),
      make("span", { class: "control" }, control, unit),
      hint,
    );
  }

  /** Shown, not changed here: a change in this cell would call 40 ft 40 m. */
  private units(field: Field): HTMLElement {
    return make(
      "div",
      { class: "field" },
      this.live(make("span"), field.label),
      make("span", { class: "control" }, this.live(make("strong"), field.value)),
      make(
        "span",
        { class: "hint" },
        "To change them, choose other units at the top: there you say whether the plan is to be converted.",
      ),
    );
  }

  private result(field: Field): HTMLElement {
    const value = make("span", { class: "number" });
    const dd = make("dd", {}, value);
    if (field.unit !== undefined)
      dd.append(" ", this.live(make("span", { class: "unit" }), field.unit));
    const isCheck = field.value.role === "check" || field.value.role === "mark";
    this.live(value, field.value, (shown) => {
      dd.classList.toggle(
        "sentence",
        typeof shown.value === "string" && shown.value.length > SHORT_TEXT,
      );
      if (isCheck) this.showVerdict(dd, shown);
    });
    return make(
      "div",
      {},
      this.live(make("dt"), field.label),
      dd,
      ...this.formula(field.formula, "dd"),
    );
  }

  /** What gives a result, as one types it, where the page shows it beside the result. */
  private formula(cell: SheetCell | undefined, tag: "dd" | "p"): HTMLElement[] {
    return cell === undefined
      ? []
      : [make(tag, { class: "formula" }, this.live(make("code"), cell))];
  }

  private judged<E extends HTMLElement>(element: E, cell: SheetCell): E {
    return this.live(element, cell, (shown) => this.showVerdict(element, shown));
  }

  private control(
    cell: SheetCell,
    id: string,
    describedBy: string,
    hint?: HTMLElement,
    label?: string,
  ): HTMLElement {
    const attributes = {
      id,
      "aria-describedby": hint && describedBy,
      "aria-label": label && workbookSaid(label),
    };
    const { allowed } = cell;
    const place = this.place(cell);
    if (allowed !== undefined && "list" in allowed) {
      const blank = allowed.optional === true ? [make("option", { value: "" }, "")] : [];
      const select = make(
        "select",
        attributes,
        ...blank,
        ...allowed.list.map((choice) => make("option", { value: choice }, choice)),
      );
      this.shown.set(cell.at, select);
      select.addEventListener("change", () =>
        this.values.write(place, choiceValue(select.value, cell)),
      );
      this.refreshers.push(() => {
        const { value } = this.values.read(place);
        const text = formatValue(value);
        // A value that is not on the list selects nothing, and is named.
        select.value =
          allowed.list.find((choice) => choice.toLowerCase() === text.toLowerCase()) ?? "";
        this.judge(select, cell, hint);
      });
      return select;
    }
    const isText = typeof cell.value === "string";
    const isLong =
      hint !== undefined &&
      isText &&
      [cell.value, this.values.read(place).value].some((text) => String(text).length > LONG_TEXT);
    const input = isLong
      ? longText(attributes)
      : make("input", {
          ...attributes,
          type: "text",
          // The keypad of a phone has no minus: where one may be due, the whole keyboard is offered.
          inputmode: isText || mayBeNegative(cell) ? undefined : "decimal",
          autocomplete: "off",
          spellcheck: "false",
          class: isText ? "words" : "number",
        });
    this.shown.set(cell.at, input);
    let written = "";
    let waiting: number | undefined;
    const write = () => {
      window.clearTimeout(waiting);
      if (input.value === written) return;
      written = input.value;
      this.values.write(place, readTyped(input.value));
      this.judge(input, cell, hint);
    };
    input.addEventListener("input", () => {
      window.clearTimeout(waiting);
      waiting = window.setTimeout(write, TYPING_PAUSE);
    });
    input.addEventListener("change", write);
    this.refreshers.push(() => {
      // Not under the hands of someone who types.
      if (document.activeElement === input && input.value !== written) return;
      const { value } = this.values.read(place);
      const text =
        typeof value === "number"
          ? writtenNumber(Number(value.toPrecision(12)))
          : formatValue(value);
      if (document.activeElement === input && readTyped(input.value) === value) return;
      input.value = text;
      grow(input);
      written = text;
      this.judge(input, cell, hint);
    });
    return input;
  }

  /** Says what the cell allows when it holds something else. The functions have the last word. */
  private judge(
    control: HTMLInputElement | HTMLTextAreaElement | HTMLSelectElement,
    cell: SheetCell,
    hint?: HTMLElement,
  ): void {
    const fault = this.faults.of(this.page.name, cell);
    control.setAttribute("aria-invalid", String(fault !== undefined));
    // In a table there is no room for a sentence beside each input.
    if (hint === undefined) control.title = fault ?? "";
    else hint.textContent = fault ?? cell.note ?? "";
  }

  /** Tables side by side share their heading; it is said once. */
  private tables(tables: readonly CellTable[]): HTMLElement[] {
    return tables.flatMap((table, index) => {
      const element = this.table(table, table.heading !== tables[index - 1]?.heading);
      const first = table.rows[0].find((cell) => cell !== undefined);
      const isAbove = ({ at }: SheetCell) =>
        first !== undefined && readAddress(at).row < readAddress(first.at).row;
      return [
        ...this.texts(table.texts.filter(isAbove)),
        element,
        ...this.texts(table.texts.filter((cell) => !isAbove(cell))),
      ];
    });
  }

  private table(table: CellTable, isCaptioned: boolean): HTMLElement {
    const caption = make("caption", { class: isCaptioned ? undefined : "out-of-sight" });
    if (table.heading !== undefined) this.live(caption, table.heading);
    const headers = table.headers.map((cell, column) => {
      const below = table.rows[0]?.[column]?.role;
      return this.live(make("th", { scope: "col", class: tableClass(below) }), cell);
    });
    const head = make("tr", {}, ...headers);
    const rows = table.rows.map((cells) =>
      make(
        "tr",
        {},
        ...cells.map((cell, column) => {
          const isRowHeader = cell?.role === "label" || cell?.role === "header";
          if (isRowHeader && column === 0) {
            return this.live(make("th", { scope: "row", class: tableClass(cell.role) }), cell);
          }
          const td = make("td", { class: tableClass(cell?.role) });
          // A header may be worked out too.
          this.refreshers.push(() => {
            td.dataset.column = headers[column]?.textContent ?? "";
          });
          if (cell === undefined) return td;
          if (cell.role === "check" || cell.role === "mark") return this.judged(td, cell);
          if (cell.role !== "input") return this.live(td, cell);
          const label = cell.label && workbookSaid(cell.label);
          const control = this.control(cell, freshId("input"), "", undefined, label);
          // Words that are worked out name a row better than its number.
          if (NUMBERED.test(cell.label ?? "") && cells[0]?.formula !== undefined)
            this.refreshers.push(() => {
              const row = td.parentElement?.firstElementChild?.textContent ?? "";
              control.setAttribute("aria-label", `${row}: ${headers[column].textContent ?? ""}`);
            });
          td.append(control);
          return td;
        }),
      ),
    );
    return scrolled(
      make(
        "table",
        { class: isStacked(table) ? "stacks" : undefined },
        caption,
        ...(table.headers.length === 0 ? [] : [make("thead", {}, head)]),
        make("tbody", {}, ...rows),
      ),
      "Table",
    );
  }

  /** The whole of what a formula spills, as wide and as long as it comes. */
  private spilled({ heading, headers, cell, texts, formula }: SpilledTable): HTMLElement {
    const title = make("summary", {}, "Table");
    if (heading !== undefined) this.live(title, heading);
    const holder = make("div");
    this.shown.set(cell.at, holder);
    const { row, column } = readAddress(cell.at);
    const { columns, reserved, headed, formats } = cell.spill ?? noSpill;
    this.refreshers.push(() => {
      const first = this.values.read(this.place(cell));
      if (first.error !== undefined) {
        this.errs = true;
        holder.replaceChildren(errorText(first));
        return;
      }
      if (first.isPending === true) {
        holder.replaceChildren(make("p", { class: "note" }, "computing…"));
        return;
      }
      const rows: CellValue[][] = [];
      for (let down = 0; down < reserved; down++) {
        const values = [];
        for (let across = 0; across < columns; across++)
          values.push(this.read(row + down, column + across).value);
        if (values.every(isBlank)) break;
        rows.push(values);
      }
      const above = headers.map((header) => this.values.read(this.place(header)).value);
      const named = headers.length === 0 ? rows : [above, ...rows];
      holder.replaceChildren(
        resultTable(named, {
          label: "Table",
          formats,
          headed: headed || headers.length > 0,
          stacks: isList(rows[headed ? 1 : 0] ?? []),
        }),
      );
    });
    return make(
      "details",
      { class: "spilled", open: this.page.working !== true },
      title,
      holder,
      ...this.formula(formula, "p"),
      ...this.texts(texts),
    );
  }

  /** How a verdict looks follows from what it says. */
  private showVerdict(element: HTMLElement, { error, value }: ShownCell): void {
    element.dataset.check = verdictOf(error?.code ?? value, this.page.waiting);
  }

  /** Those of the page; the corners of a field have its drawing beside them. */
  private charts(): readonly SheetChart[] {
    const hasCorners = this.page.names?.some(({ name }) => name === "CornersTyped") === true;
    const drawings = hasCorners ? this.pages.flatMap(({ charts = [] }) => charts) : [];
    return [...(this.page.charts ?? []), ...drawings.filter(({ drawing }) => drawing === true)];
  }

  private picture(chart: SheetChart): HTMLElement {
    const title = freshId("picture");
    return make(
      "figure",
      { class: "figure", "aria-labelledby": title },
      make("figcaption", { id: title }, chart.title),
      chart.drawing === true ? this.plan(chart) : this.chart(chart),
    );
  }

  private chart(chart: SheetChart): HTMLElement {
    const holder = make("div");
    // Drawn as wide as its place is, so that its text keeps its size.
    let width = 0;
    const draw = () => {
      if (width > 0) holder.replaceChildren(drawChart(this.chartContent(chart), width));
    };
    new ResizeObserver(([entry]) => {
      const now = Math.round(entry.contentRect.width);
      if (now === width) return;
      width = now;
      draw();
    }).observe(holder);
    this.refreshers.push(draw);
    return holder;
  }

  private plan(chart: SheetChart): HTMLElement {
    const cells = fieldCells(this.pages);
    if (cells === undefined) throw new Error("a drawing without a field");
    const plan = new PlanDrawing(
      cells,
      () => this.values,
      () => this.drawn(chart),
      this.means.call,
      chart.description,
    );
    this.refreshers.push(() => plan.refresh());
    return plan.element;
  }

  private drawn(chart: SheetChart): Drawn {
    const { page = this.page.name } = chart;
    const read = (block: CellBlock, down: number) =>
      this.values.read({ page, row: block.row + down, column: block.column }).value;
    const series = chart.series.map(({ range, x = chart.x.range, titleAt, look = "line" }) => {
      const [xs, ys] = [readRange(x), readRange(range)];
      const points: Point[] = [];
      // Columns are filled up with their last point, for hosts whose charts want all rows.
      for (let down = 0, same = 0; down < ys.rows && same < MOST_ALIKE; down++) {
        const [at, height] = [read(xs, down), read(ys, down)];
        if (typeof at !== "number" || typeof height !== "number") continue;
        const last = points.at(-1);
        same = last?.x === at && last.y === height ? same + 1 : 0;
        points.push({ x: at, y: height });
      }
      return {
        title: formatValue(this.values.read({ page, ...readAddress(titleAt) }).value),
        look,
        points,
      };
    });
    return { series, fault: this.faultOf(chart) };
  }

  /** Why the formula that spills a drawing gives none. */
  private faultOf({ page = this.page.name, x }: SheetChart): string | undefined {
    const { row, column } = readRange(x.range);
    const { error } = this.values.read({ page, row: row - 1, column });
    if (error === undefined) return undefined;
    return `${screenSaid("The lines are not drawn:")} ${errorSaid(error.message)}`;
  }

  private chartContent(chart: SheetChart): ChartContent {
    const xs = this.column(readRange(chart.x.range));
    const series = chart.series.map(({ range, titleAt }) => ({
      title: said(this.read(readAddress(titleAt).row, readAddress(titleAt).column).value),
      points: this.column(readRange(range)).flatMap((y, index): Point[] => {
        const x = xs[index];
        return typeof x === "number" && typeof y === "number" ? [{ x, y }] : [];
      }),
    }));
    return {
      xTitle: withUnit(chart.x.title, this.headerOf(readRange(chart.x.range))),
      yTitle: withUnit(chart.yTitle, series[0]?.title ?? ""),
      description: chart.description,
      series,
      ...this.alongTheLine(chart),
    };
  }

  /** What stands over a column. */
  private headerOf({ row, column }: CellBlock): string {
    return row === 0 ? "" : said(this.read(row - 1, column).value);
  }

  /** Where the picture is of a line's profile: its tubing and the ground it lies on. */
  private alongTheLine(
    chart: SheetChart,
  ): Pick<ChartContent, "stretches" | "ground" | "groundTitle"> {
    const x = readRange(chart.x.range);
    const profile = this.page.cells.find(
      (cell) =>
        cell.spill !== undefined &&
        /LATERAL\.PROFILE\(/i.test(cell.formula ?? "") &&
        contains(cell, x),
    );
    if (profile === undefined) return {};
    const { row, column } = readAddress(profile.at);
    const block = (offset: number): CellBlock => ({
      row: row + 1,
      column: column + offset,
      rows: x.rows,
      columns: 1,
    });
    const distances = this.column(block(1));
    const heights = this.column(block(2));
    const bores = this.column(block(3));
    const stretches: Stretch[] = [];
    const ground: Point[] = [];
    let from = 0;
    distances.forEach((distance, index) => {
      const bore = bores[index];
      const height = heights[index];
      if (typeof distance !== "number") return;
      if (typeof height === "number") ground.push({ x: distance, y: height });
      if (typeof bore !== "number") return;
      const label = formatValue(bore, "0.0##");
      const last = stretches.at(-1);
      if (last?.label === label) stretches[stretches.length - 1] = { ...last, to: distance };
      else stretches.push({ from, to: distance, label });
      from = distance;
    });
    const header = (offset: number) => said(this.read(row, column + offset).value);
    const rises = ground.some((point) => point.y !== ground[0].y);
    return {
      stretches: stretches.map((stretch) => ({
        ...stretch,
        label: `${withUnit(stretch.label, header(3)).replace(/[()]/g, "")} inside`,
      })),
      ...(rises && { ground, groundTitle: header(2) }),
    };
  }

  private cautions(): HTMLElement[] {
    const subjects = (this.page.cautions ?? []).filter(
      (subject): subject is CautionSubject => subject in cautions,
    );
    return this.section(
      "Safety: read before field work",
      "cautions",
      subjects.map((subject) => cautionText(subject)),
    );
  }

  private live<E extends HTMLElement>(
    element: E,
    cell: SheetCell,
    also?: (shown: ShownCell) => void,
  ): E {
    const place = this.place(cell);
    this.shown.set(cell.at, element);
    this.refreshers.push(() => {
      const shown = this.values.read(place);
      if (shown.error === undefined) {
        const text =
          shown.isPending === true ? screenSaid("computing…") : said(shown.value, cell.format);
        if (element.textContent !== text) element.textContent = text;
      } else {
        element.replaceChildren(errorText(shown));
        this.errs = true;
      }
      also?.(shown);
    });
    return element;
  }

  private place(cell: SheetCell) {
    return { page: this.page.name, ...readAddress(cell.at) };
  }

  private read(row: number, column: number): ShownCell {
    return this.values.read({ page: this.page.name, row, column });
  }

  private column(block: CellBlock): CellValue[] {
    return Array.from(
      { length: block.rows },
      (_, down) => this.read(block.row + down, block.column).value,
    );
  }
}

const noSpill = { columns: 1, reserved: 1, headed: false, formats: [] as readonly string[] };

/** The unit stands in parentheses behind a column's header. */
function withUnit(title: string, header: string): string {
  const unit = /\([^()]*\)\s*$/.exec(header)?.[0] ?? "";
  return title.includes("(") ? title : `${title} ${unit}`.trim();
}

function contains(cell: SheetCell, block: CellBlock): boolean {
  const { row, column } = readAddress(cell.at);
  const { reserved, columns } = cell.spill ?? noSpill;
  return (
    block.row >= row &&
    block.row < row + reserved &&
    block.column >= column &&
    block.column < column + columns
  );
}

/** A value as the page shows it: what a function says in words, in the page's language. */
function said(value: CellValue, format?: string): string {
  return typeof value === "string" ? textSaid(value) : formatValue(value, format);
}

function errorText({ error, value }: ShownCell): HTMLElement {
  return make(
    "span",
    { class: "error" },
    make("strong", {}, error?.code ?? String(value)),
    ` ${errorSaid(error?.message ?? "")}`,
  );
}

/** What a customer reads line by line: an item in words, and a few figures to it. */
function isList(row: readonly CellValue[]): boolean {
  return typeof row[0] === "string" && row.length > 2 && row.length <= MOST_STACKED;
}

/** On a phone: a verdict's sentence has no room in a column, and neither have many columns. */
function isStacked({ headers, rows }: CellTable): boolean {
  const judges = rows.some((row) =>
    row.some((cell) => cell?.role === "check" || cell?.role === "mark"),
  );
  return headers.length > 1 && headers.length <= MOST_STACKED && (judges || headers.length > 4);
}

function hasInput(block: Block): boolean {
  return block.fields.some((field) => field.value.role === "input");
}

function tableHasInput(table: CellTable): boolean {
  return table.rows.some((row) => row.some((cell) => cell?.role === "input"));
}

function mayBeNegative({ allowed }: SheetCell): boolean {
  return allowed === undefined || ("low" in allowed && allowed.low < 0);
}

/** Results one under the other are one list; a text between them ends it. */
function listed(all: HTMLElement[], next: HTMLElement): HTMLElement[] {
  const last = all.at(-1);
  if (next.tagName !== "DIV") return [...all, next];
  if (last?.tagName !== "DL") return [...all, make("dl", { class: "values" }, next)];
  last.append(next);
  return all;
}

function isBlank(value: CellValue): boolean {
  return value === null || value === "";
}

/** A truth value where the cell holds one, else the words. */
function choiceValue(choice: string, { value }: SheetCell): CellValue {
  if (choice === "") return null;
  return typeof value === "boolean" ? choice === "TRUE" : choice;
}

/** Words are read from the left and may wrap, numbers stand at the right. */
function tableClass(role: SheetCell["role"] | undefined): string | undefined {
  if (role === "formulaText") return "as-text";
  return role === "label" || role === "text" || role === "sentence" || role === "mark"
    ? "words"
    : undefined;
}
