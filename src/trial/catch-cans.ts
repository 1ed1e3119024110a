import { errorSaid, screenSaid } from "../words/spoken";
import type { UnitSystem } from "../sheets/kit/definition";
import { bluestemFlat } from "../sheets/parts/bluestem-flat";
import { catchSamples } from "../sheets/parts/catch-samples";
import { drawMap, type DepthMap } from "./depth-map";
import { freshId, make } from "../screen/dom";
import type { Argument, CellValue, FunctionHost } from "../screen/host";
import { formatValue } from "../screen/number-format";
import { plot } from "../screen/plot";
import { readTyped } from "./typed";

type Layout = "leg" | "row" | "field";

/** Measured in mL, or with a ruler in cans with straight sides: then the depth itself. */
type Reading = "volume" | "depth";

interface Test {
  /** What each can caught: mL, or its depth. */
  cans: CellValue[][];
  opening: CellValue;
  hours: CellValue;
  step: CellValue;
  spacing: CellValue;
  move: CellValue;
  wanted: CellValue;
}

/** A test on Bluestem Flat to begin with, the same as in the workshop. */
function sample(system: UnitSystem, layout: Layout, reading: Reading): Test {
  const { opening, hours, step, leg, row, block } = catchSamples(system);
  const { spacing, move, netDepth } = bluestemFlat(system);
  const caught = { leg: [leg], row: [row], field: block }[layout];
  return {
    cans: caught.map((line) =>
      line.map((volume) => (reading === "volume" ? volume : rulerDepth(volume, opening, system))),
    ),
    opening,
    hours,
    step,
    spacing,
    move,
    wanted: netDepth,
  };
}

/** What a ruler reads, to a hundredth of an inch or half a millimeter. */
function rulerDepth(volume: number, opening: number, system: UnitSystem): number {
  const [cubic, step] = system === "US" ? [16.387, 100] : [0.001, 2];
  const depth = volume / cubic / ((Math.PI / 4) * opening ** 2);
  return Math.round(depth * step) / step;
}

const layouts: Readonly<
  Record<
    Layout,
    { readonly title: string; readonly how: string; readonly least: number; readonly most: number }
  >
> = {
  leg: {
    title: "A leg of cans out from one sprinkler",
    how: "The first can stands at the sprinkler, the others one step further each, out to a dry one. The overlap of all sprinklers around is computed from it.",
    least: 2,
    most: 40,
  },
  row: {
    title: "A row of cans across one line",
    how: "An odd number of cans, the middle one at the line. The line is laid over itself at every move.",
    least: 3,
    most: 61,
  },
  field: {
    title: "A block of cans among running sprinklers",
    how: "Cans on a regular grid where everything runs as it will: what they caught is the pattern.",
    least: 1,
    most: 20,
  },
};

const PAUSE = 250;

/** What the cans say: depths, uniformity, the pattern, and the hours. */
export class CatchCans {
  private layout: Layout = "leg";
  private system: UnitSystem = "US";
  private reading: Reading = "volume";
  private test: Test = sample("US", "leg", "volume");
  private readonly form = make("div", { class: "cans-form" });
  private readonly hours = make("section", {
    class: "cans-hours",
    "aria-live": "polite",
    "aria-labelledby": "cans-hours",
  });
  private readonly said = make("div", { class: "cans-said" });
  private waiting: number | undefined;

  constructor(
    private readonly host: FunctionHost,
    private readonly namespace: string,
  ) {}

  build(): HTMLElement[] {
    const layoutRadios = (Object.keys(layouts) as Layout[]).map((layout) =>
      this.radio("layout", layout, layouts[layout].title, layout === this.layout, () => {
        this.layout = layout;
        this.restart();
      }),
    );
    const systemRadios = (["US", "SI"] as const).map((system) =>
      this.radio(
        "cans-system",
        system,
        system === "US" ? "US: ft, in" : "SI: m, mm",
        system === this.system,
        () => {
          this.system = system;
          this.restart();
        },
      ),
    );
    const readingRadios = (["volume", "depth"] as const).map((reading) =>
      this.radio(
        "cans-reading",
        reading,
        reading === "volume" ? "Poured out, in mL" : "With a ruler, straight-sided cans",
        reading === this.reading,
        () => {
          this.reading = reading;
          this.restart();
        },
      ),
    );
    this.restart();
    return [
      make("h1", { id: "cans-title" }, "What the catch cans say"),
      make(
        "p",
        { class: "purpose" },
        "Set out cans of one size, run for a known time, measure what each caught, and type it here. The numbers to begin with are invented.",
      ),
      this.hours,
      make(
        "div",
        { class: "cans" },
        make(
          "div",
          { class: "cans-given" },
          make(
            "fieldset",
            { class: "layouts" },
            make("legend", {}, "How the cans stood"),
            ...layoutRadios,
          ),
          make("fieldset", { class: "systems" }, make("legend", {}, "Units"), ...systemRadios),
          make(
            "fieldset",
            { class: "layouts" },
            make("legend", {}, "How they were measured"),
            ...readingRadios,
          ),
          this.form,
        ),
        this.said,
      ),
    ];
  }

  private radio(
    name: string,
    value: string,
    text: string,
    checked: boolean,
    chosen: () => void,
  ): HTMLElement {
    const input = make("input", { type: "radio", name, value, checked });
    input.addEventListener("change", chosen);
    return make("label", {}, input, make("span", {}, text));
  }

  private restart(): void {
    this.test = sample(this.system, this.layout, this.reading);
    this.fillForm();
    this.compute();
  }

  private fillForm(): void {
    const { test, layout } = this;
    const length = this.system === "US" ? "ft" : "m";
    const small = this.system === "US" ? "in" : "mm";
    const fields: [keyof Omit<Test, "cans">, string, string, Layout[]][] = [
      [
        "opening",
        "Opening of a can, across",
        small,
        this.reading === "volume" ? ["leg", "row", "field"] : [],
      ],
      ["hours", "Time of the test", "hours", ["leg", "row", "field"]],
      ["step", "From can to can", length, ["leg", "row"]],
      ["spacing", "From head to head", length, ["leg"]],
      ["move", "From position to position", length, ["leg", "row"]],
      ["wanted", "Net depth wanted", small, ["leg", "row", "field"]],
    ];
    this.form.replaceChildren(
      make("p", { class: "hint" }, layouts[layout].how),
      make(
        "fieldset",
        {},
        make("legend", {}, "The test"),
        ...fields
          .filter(([, , , where]) => where.includes(layout))
          .map(([name, label, unit]) =>
            this.number(label, unit, test[name], (value) => {
              test[name] = value;
            }),
          ),
      ),
      this.cansForm(length),
    );
  }

  private number(
    label: string,
    unit: string,
    value: CellValue,
    take: (value: CellValue) => void,
  ): HTMLElement {
    const id = freshId("can-input");
    const input = this.input(value, take);
    input.id = id;
    return make(
      "div",
      { class: "field" },
      make("label", { for: id }, label),
      make("span", { class: "control" }, input, make("span", { class: "unit" }, unit)),
    );
  }

  private input(value: CellValue, take: (value: CellValue) => void): HTMLInputElement {
    const input = make("input", {
      type: "text",
      inputmode: "decimal",
      autocomplete: "off",
      class: "number",
      value: formatValue(value),
    });
    input.addEventListener("input", () => {
      take(readTyped(input.value));
      window.clearTimeout(this.waiting);
      this.waiting = window.setTimeout(() => this.compute(), PAUSE);
    });
    return input;
  }

  private cansForm(length: string): HTMLElement {
    const { cans } = this.test;
    const { least, most } = layouts[this.layout];
    const middle = (cans[0].length - 1) / 2;
    const step = Number(this.test.step);
    const titles = cans[0].map((_, index) => {
      if (this.layout === "leg") return `${formatValue(step * index, "0.##")} ${length}`;
      if (this.layout === "row")
        return index === middle
          ? screenSaid("line")
          : `${formatValue(step * (index - middle), "0.##")} ${length}`;
      return `column ${index + 1}`;
    });
    const table = make("div", { class: `can-table can-table-${this.layout}` });
    cans.forEach((line, row) => {
      line.forEach((value, column) => {
        const input = this.input(value, (typed) => {
          line[column] = typed;
        });
        const name =
          this.layout === "field"
            ? `Can in row ${row + 1}, ${titles[column]}`
            : `Can at ${titles[column]}`;
        input.setAttribute("aria-label", screenSaid(`${name}, ${this.caughtUnit()}`));
        input.addEventListener("paste", (event) => this.paste(event, row, column));
        const shown = this.layout === "field" ? `${row + 1}.${column + 1}` : titles[column];
        table.append(
          make(
            "div",
            { class: "can" },
            make("span", { class: "can-title", "aria-hidden": "true" }, shown),
            input,
          ),
        );
      });
    });
    table.style.setProperty("--cans", String(this.layout === "field" ? cans[0].length : 6));
    const by = this.layout === "row" ? 2 : 1;
    const size = (text: string, change: () => void, allowed: boolean) => {
      const button = make("button", { type: "button", disabled: !allowed }, text);
      button.addEventListener("click", () => {
        change();
        this.fillForm();
        this.compute();
      });
      return button;
    };
    const width = cans[0].length;
    return make(
      "fieldset",
      {},
      make("legend", {}, `Caught, ${this.caughtUnit()}`),
      table,
      make(
        "div",
        { class: "sizes" },
        size(
          by === 2 ? "Two cans more" : this.layout === "field" ? "A column more" : "One can more",
          () => cans.forEach((line) => (by === 2 ? (line.unshift(0), line.push(0)) : line.push(0))),
          width + by <= most,
        ),
        size(
          by === 2
            ? "Two cans fewer"
            : this.layout === "field"
              ? "A column fewer"
              : "One can fewer",
          () => cans.forEach((line) => (by === 2 ? (line.shift(), line.pop()) : line.pop())),
          width - by >= least,
        ),
        ...(this.layout === "field"
          ? [
              size(
                "A row more",
                () => cans.push(new Array<CellValue>(width).fill(0)),
                cans.length < most,
              ),
              size("A row fewer", () => cans.pop(), cans.length > 1),
            ]
          : []),
      ),
      make(
        "p",
        { class: "hint" },
        "A can that was knocked over: leave it blank. Numbers copied from a sheet can be pasted into the first can.",
      ),
    );
  }

  /** Several numbers at once go into the cans from here on. */
  private paste(event: ClipboardEvent, row: number, column: number): void {
    const text = event.clipboardData?.getData("text/plain").trim() ?? "";
    const lines = text.split(/\r?\n/).map((line) => line.split(/[\t;]|\s+/).filter(Boolean));
    if (lines.length === 1 && lines[0].length <= 1) return;
    event.preventDefault();
    const { cans } = this.test;
    // A column pasted over a row of cans lies down.
    const turned =
      cans.length === 1 && lines.every((line) => line.length === 1) ? [lines.flat()] : lines;
    turned.forEach((line, down) =>
      line.forEach((typed, across) => {
        if (cans[row + down]?.[column + across] !== undefined)
          cans[row + down][column + across] = readTyped(typed);
      }),
    );
    this.fillForm();
    this.compute();
  }

  private compute(): void {
    const title = make("h2", { id: "cans-hours" }, "What it means for the hours");
    try {
      const { hours, pattern } = this.findings();
      this.hours.replaceChildren(title, ...hours);
      this.said.replaceChildren(...pattern);
    } catch (thrown) {
      if (!(thrown instanceof Unanswered)) throw thrown;
      this.hours.replaceChildren(title, make("p", { class: "error" }, thrown.message));
      this.said.replaceChildren();
    }
  }

  private findings(): { readonly hours: HTMLElement[]; readonly pattern: HTMLElement[] } {
    const { test } = this;
    const small = this.system === "US" ? "in" : "mm";
    const format = this.system === "US" ? "0.00" : "0.0";
    const { depths, leftOut } = this.depths();
    const map = this.pattern(depths, format);
    const pattern = [map.depths.flat().filter((depth) => depth !== null)];
    const cu = this.one("APPLICATION_CU", pattern);
    const du = this.one("APPLICATION_DU", pattern);
    const all = pattern.flat();
    const mean = all.reduce((sum, depth) => sum + depth, 0) / all.length;
    const hours = Number(test.hours);
    if (!(hours > 0)) throw new Unanswered("The time of the test must be above 0 hours.");
    const rate = mean / hours;
    const average = this.one("SET_TIME", test.wanted, rate);
    const wanted = `${formatValue(test.wanted)} ${small}`;
    const rateFormat = this.system === "US" ? "0.000" : "0.0";
    const forHours = [
      ...leftOut.map((text) => make("p", { class: "error" }, text)),
      make(
        "p",
        { class: "answer" },
        `Run ${formatValue(average, "0.0")} hours and the ground gets ${wanted} on average; the driest quarter then has ${formatValue(Number(test.wanted) * du, format)} ${small}.`,
      ),
      make("p", { class: "answer" }, this.forTheDriest(rate, du, format)),
      make(
        "p",
        { class: "note" },
        "By what reached the cans: what evaporated or drifted off on the way is already gone from it.",
      ),
    ];
    return {
      hours: forHours,
      pattern: [
        make("h2", {}, "The pattern"),
        make(
          "dl",
          { class: "values" },
          ...this.value("Christiansen uniformity, CU", formatValue(cu, "0.00"), ""),
          ...this.value(
            "Distribution uniformity of the low quarter, DU",
            formatValue(du, "0.00"),
            "",
          ),
          ...this.value("Average depth in the test", formatValue(mean, format), small),
          ...this.value("Average rate", formatValue(rate, rateFormat), `${small}/h`),
        ),
        ...this.acrossLine(depths, small),
        drawMap(map),
        ...this.canDepths(depths, small, format),
        this.inASheet(),
      ],
    };
  }

  private caughtUnit(): string {
    if (this.reading === "volume") return "mL";
    return this.system === "US" ? "in" : "mm";
  }

  /** The name of a can, as its label has it. */
  private canName(row: number, column: number): string {
    if (this.layout === "field") return `row ${row + 1}, column ${column + 1}`;
    const { cans, step } = this.test;
    const middle = this.layout === "row" ? (cans[0].length - 1) / 2 : 0;
    const length = this.system === "US" ? "ft" : "m";
    return `${formatValue(Number(step) * (column - middle), "0.##")} ${length}`;
  }

  /**
   * Depths of the cans; one that is blank or holds no catch is left out by name. In a block it is
   * missing; in a leg or a row its place takes the middle of its neighbors.
   */
  private depths(): { readonly depths: (number | null)[][]; readonly leftOut: string[] } {
    const leftOut: string[] = [];
    const isBlock = this.layout === "field";
    const depths = this.test.cans.map((line, row) => {
      const read = line.map((caught, column): number | null => {
        const name = this.canName(row, column);
        const instead = isBlock ? "" : " Its place takes the middle of its neighbors.";
        if (caught === null) {
          leftOut.push(`Left out: the can at ${name} is blank.${instead}`);
          return null;
        }
        const found = this.depthOf(caught);
        if (typeof found === "number") return found;
        leftOut.push(`Left out: the can at ${name}: ${found}.${instead}`);
        return null;
      });
      return isBlock ? read : read.map((depth, column) => depth ?? this.between(read, row, column));
    });
    if (depths.flat().every((depth) => depth === null)) {
      throw new Unanswered("No can holds a catch.");
    }
    return { depths, leftOut };
  }

  /** The depth of a catch, or what is wrong with it. */
  private depthOf(caught: CellValue): number | string {
    if (this.reading === "depth") {
      return typeof caught === "number" && caught >= 0
        ? caught
        : `its depth must be a number, 0 or more; got ${String(caught)}`;
    }
    // A wrong opening is no fault of one can: it ends all results, by its name.
    this.one("APPLICATION_CATCH", 1, this.test.opening, this.system);
    const outcome = this.host.call("APPLICATION_CATCH", caught, this.test.opening, this.system);
    return outcome.error === undefined ? Number(outcome.value) : errorSaid(outcome.error.message);
  }

  private between(read: readonly (number | null)[], row: number, column: number): number {
    const before = read[column - 1];
    const after = read[column + 1];
    if (typeof before === "number" && typeof after === "number") return (before + after) / 2;
    throw new Unanswered(
      `The can at ${this.canName(row, column)} is missing, and so is a neighbor: type what it caught, or leave out the end of the row.`,
    );
  }

  /** A line of cans is drawn as a line. */
  private acrossLine(
    depths: readonly (readonly (number | null)[])[],
    small: string,
  ): HTMLElement[] {
    if (this.layout === "field") return [];
    const { cans, step } = this.test;
    const middle = this.layout === "row" ? (cans[0].length - 1) / 2 : 0;
    const length = this.system === "US" ? "ft" : "m";
    return [
      make(
        "div",
        {},
        plot({
          title: "Depth in the line of cans",
          x: this.layout === "row" ? `From the line (${length})` : `From the sprinkler (${length})`,
          y: `Depth (${small})`,
          lines: [
            {
              title: "Depth",
              points: depths[0].map((depth, i) => [Number(step) * (i - middle), depth ?? 0]),
            },
          ],
          fromZero: true,
        }),
      ),
    ];
  }

  private forTheDriest(rate: number, du: number, format: string): string {
    if (!(du > 0)) return "The driest quarter gets nothing: no time makes up for it.";
    const { wanted } = this.test;
    const small = this.system === "US" ? "in" : "mm";
    const hours = formatValue(this.one("SET_TIME", wanted, rate, du), "0.0");
    return `Run ${hours} hours and the driest quarter gets ${formatValue(wanted)} ${small}; the average is then ${formatValue(Number(wanted) / du, format)} ${small}.`;
  }

  private value(label: string, number: string, unit: string): HTMLElement[] {
    return [
      make(
        "div",
        {},
        make("dt", {}, label),
        make(
          "dd",
          {},
          make("span", { class: "number" }, number),
          " ",
          make("span", { class: "unit" }, unit),
        ),
      ),
    ];
  }

  private pattern(depths: (number | null)[][], format: string): DepthMap {
    const { test } = this;
    const length = this.system === "US" ? "ft" : "m";
    const small = this.system === "US" ? "in" : "mm";
    const at = (distance: number) => formatValue(distance, "0.#");
    if (this.layout === "field") {
      return {
        depths,
        corners: true,
        columns: depths[0].map((_, index) => String(index + 1)),
        rows: depths.map((_, index) => String(index + 1)),
        caption: `Depths in the cans (${small}), as they stood`,
        format,
      };
    }
    if (this.layout === "row") {
      const folded = this.table("APPLICATION_FOLD", depths, test.step, test.move);
      return {
        depths: [folded.map(([depth]) => depth)],
        columns: folded.map((_, index) => at(index * Number(test.step))),
        rows: [""],
        caption: `Depths (${small}) at distances (${length}) from one position of the line to the next`,
        format,
      };
    }
    const grid = this.table("APPLICATION_OVERLAP", depths, test.step, test.spacing, test.move);
    const centre = (index: number, side: CellValue, count: number) =>
      at(((index + 0.5) * Number(side)) / count);
    return {
      depths: grid,
      corners: true,
      columns: grid[0].map((_, index) => centre(index, test.spacing, grid[0].length)),
      rows: grid.map((_, index) => centre(index, test.move, grid.length)),
      caption: `Depths (${small}) between four sprinklers, which stand at the corners. Across: ${length} along the line. Down: ${length} from one position to the next`,
      format,
    };
  }

  private canDepths(
    depths: readonly (readonly (number | null)[])[],
    small: string,
    format: string,
  ): HTMLElement[] {
    if (this.layout === "field") return [];
    return [
      make(
        "details",
        {},
        make("summary", {}, "Depth in each can"),
        make(
          "ol",
          { class: "can-depths" },
          ...depths[0].map((depth) => make("li", {}, `${formatValue(depth, format)} ${small}`)),
        ),
      ),
    ];
  }

  private inASheet(): HTMLElement {
    const name = (id: string) => `${this.namespace}.${id}`;
    const lines = [
      `=${name("APPLICATION.CATCH")}(volume, opening, units)`,
      ...(this.layout === "leg"
        ? [`=${name("APPLICATION.OVERLAP")}(depths, step, spacing, move)`]
        : []),
      ...(this.layout === "row" ? [`=${name("APPLICATION.FOLD")}(depths, step, move)`] : []),
      `=${name("APPLICATION.CU")}(pattern)`,
      `=${name("APPLICATION.DU")}(pattern)`,
      `=${name("SET.TIME")}(depth, rate, DU)`,
    ];
    return make(
      "details",
      {},
      make("summary", {}, "The same in your own sheet"),
      make(
        "ul",
        { class: "formulas" },
        ...lines.map((line) => make("li", {}, make("code", {}, line))),
      ),
    );
  }

  private one(id: string, ...cells: Argument[]): number {
    const value = this.answer(id, cells);
    if (typeof value !== "number") throw new Unanswered(`${id.replace("_", ".")} gave no number.`);
    return value;
  }

  private table(id: string, ...cells: Argument[]): number[][] {
    return this.answer(id, cells) as number[][];
  }

  private answer(id: string, cells: Argument[]): CellValue | CellValue[][] {
    const outcome = this.host.call(id, ...cells);
    if (outcome.error !== undefined)
      throw new Unanswered(`${id.replace("_", ".")}: ${errorSaid(outcome.error.message)}`);
    return outcome.value;
  }
}

/** The cans as typed have no answer; the message says why. */
class Unanswered extends Error {}
