import type { CautionSubject } from "../../cautions";
import type { Callables } from "../../reference";
import { cautionText } from "../../screen/cautions-text";
import { freshId, make } from "../../screen/dom";
import type { CellValue, FunctionHost } from "../../screen/host";
import { formatValue, writtenNumber } from "../../screen/number-format";
import { shownAs } from "../../sheets/kit/builder";
import type { UnitSystem } from "../../sheets/kit/definition";
import { screenSaid, workbookSaid } from "../../words/spoken";
import { books } from "../books";
import { unitOf as unitOfInput } from "../kept/convert-units";
import { readTyped } from "../typed";
import { AskedBook } from "./asked-book";
import { type FormMemory, sampleField } from "./form-memory";
import { filledIn } from "./filled-in";
import {
  isAsked,
  type Key,
  KEYS,
  type Question,
  QUESTIONS,
  readGiven,
  readNumber,
  SECTIONS,
  type Typed,
  unitOf,
  type Water,
  WATERS,
} from "./given";
import { FormField } from "./number-field";
import type { Opening } from "./opening";
import { type Obstacle, type Outcome, type Plan, proposePlan } from "./propose";
import { said, sentence } from "./say";

const SUBJECTS: readonly CautionSubject[] = [
  "plan on the ground",
  "pressure",
  "overhead wires",
  "roads and buildings",
  "backflow",
  "buried lines",
];

/** Where a plan is opened, the first of them first. */
const TARGETS = ["line-layout", "quote", "spacing-what-if", "season"];

const WATER_LABELS: Readonly<Record<Water, string>> = {
  hydrant: "A hydrant under pressure, with a gauge",
  pump: "A pump, with its curve",
};

/** Not worth a line among what was taken over: they change no number of the plan. */
const NO_FIGURES = new Set(["Units", "FieldName", "Currency"]);

/** A dealer's start: what the field is like goes in, a plan with its reasons comes out. */
export class FieldPage {
  private system: UnitSystem;
  private water: Water = "hydrant";
  private readonly name: FormField;
  private readonly fields = new Map<Key, FormField>();
  private readonly radios = new Map<string, HTMLInputElement>();
  private readonly status = make("p", { class: "start-status", role: "status" });
  private readonly proposal = make("div", { class: "proposal" });
  /** Counts proposals asked for, so that one that comes late is dropped. */
  private asked = 0;

  constructor(
    private readonly host: FunctionHost,
    private readonly callables: Callables,
    private readonly memory: FormMemory,
    private readonly open: Opening,
  ) {
    const kept = memory.read();
    this.system = kept.system;
    this.water = kept.water;
    const changed = () => this.changed();
    this.name = new FormField(
      { label: "Name of the field", hint: "Stands in the workbook. May be blank." },
      "words",
      changed,
    );
    for (const key of KEYS) {
      const question: Question = QUESTIONS[key];
      const kind =
        question.list === undefined ? { signed: question.low < 0 } : { list: question.list };
      const field = new FormField(question, kind, changed);
      field.control.addEventListener("change", () => this.judge(key));
      this.fields.set(key, field);
    }
    this.put({ ...this.standing(), ...kept.typed });
    this.name.text = kept.name;
  }

  build(): HTMLElement[] {
    const form = make(
      "form",
      { class: "start-form", novalidate: true },
      this.choices("Units", "start-system", [
        ["US", "US: ft, psi, gpm"],
        ["SI", "SI: m, kPa, m³/h"],
      ]),
      this.name.element,
      ...SECTIONS.map(({ title, keys }) => this.section(title, keys)),
      make(
        "div",
        { class: "start-buttons" },
        make("button", { type: "submit", class: "usual" }, "Propose a plan"),
        this.button("Fill in the sample field", () => this.fillSample()),
        this.button("Empty the form", () => this.empty()),
      ),
    );
    form.addEventListener("submit", (event) => {
      event.preventDefault();
      void this.propose();
    });
    this.show();
    return [
      make(
        "div",
        { class: "start-two" },
        form,
        make(
          "section",
          { class: "start-found", "aria-label": "The proposal" },
          this.status,
          this.proposal,
        ),
      ),
    ];
  }

  private section(title: string, keys: readonly Key[]): HTMLElement {
    const chart = keys.filter((key) => /^(pressure|flow)\d$/.test(key));
    const plain = keys.filter((key) => !chart.includes(key));
    return make(
      "fieldset",
      {},
      make("legend", {}, title),
      ...(title === "Water"
        ? [
            this.choices(
              "The water comes from",
              "start-water",
              WATERS.map((water) => [water, WATER_LABELS[water]]),
            ),
          ]
        : []),
      ...plain.map((key) => this.field(key).element),
      ...(chart.length === 0
        ? []
        : [
            make(
              "div",
              { class: "start-chart" },
              make("p", { class: "hint" }, "As the sprinkler's sheet prints it, lowest first."),
              ...chart.map((key) => this.field(key).element),
            ),
          ]),
    );
  }

  private choices(
    legend: string,
    name: string,
    choices: readonly (readonly [string, string])[],
  ): HTMLElement {
    return make(
      "fieldset",
      { class: name === "start-water" ? "layouts" : "systems" },
      make("legend", {}, legend),
      ...choices.map(([value, label]) => {
        const radio = make("input", { type: "radio", name, value });
        radio.addEventListener("change", () => this.choose(value));
        this.radios.set(value, radio);
        return make("label", {}, radio, make("span", {}, label));
      }),
    );
  }

  private button(label: string, act: () => void): HTMLElement {
    const button = make("button", { type: "button" }, label);
    button.addEventListener("click", act);
    return button;
  }

  private choose(value: string): void {
    if (value === "US" || value === "SI") this.convert(value);
    else this.water = value === "pump" ? "pump" : "hydrant";
    this.show();
    this.changed();
  }

  /** What was typed says the same length, pressure and flow afterwards: nothing is relabeled. */
  private convert(to: UnitSystem): void {
    const from = this.system;
    if (from === to) return;
    const before = this.standing();
    this.system = to;
    const after = this.standing();
    for (const key of KEYS) {
      const { quantity }: Question = QUESTIONS[key];
      const field = this.field(key);
      const value = readTyped(field.text);
      if (field.text === before[key]) field.text = after[key] ?? "";
      else if (quantity !== undefined && typeof value === "number") {
        const { value: other } = this.host.call(
          "UNIT_CONVERT",
          value,
          shownAs(quantity, from).unit,
          shownAs(quantity, to).unit,
        ) as { value?: CellValue };
        field.text = typeof other === "number" ? writtenNumber(Number(other.toPrecision(6))) : "";
      }
    }
  }

  /** Units, choices and which questions are asked. */
  private show(): void {
    for (const [value, radio] of this.radios)
      radio.checked = value === this.system || value === this.water;
    for (const key of KEYS) {
      const field = this.field(key);
      field.in(unitOf(key, this.system));
      field.element.hidden = !isAsked(key, this.water);
    }
  }

  private field(key: Key): FormField {
    const field = this.fields.get(key);
    if (field === undefined) throw new Error(`no field ${key}`);
    return field;
  }

  private typed(): Typed {
    return Object.fromEntries(KEYS.map((key) => [key, this.field(key).text]));
  }

  private put(typed: Typed): void {
    for (const key of KEYS) this.field(key).text = typed[key] ?? "";
  }

  /** The sprinkler and the day of the workbook, until others are typed. */
  private standing(): Record<string, string> {
    const book = this.book();
    return Object.fromEntries(
      KEYS.flatMap((key) => {
        const { standing }: Question = QUESTIONS[key];
        return standing === undefined ? [] : [[key, writtenNumber(Number(book.stands(standing)))]];
      }),
    );
  }

  private fillSample(): void {
    this.put({ ...this.standing(), ...sampleField(this.system, this.water) });
    for (const key of KEYS) this.field(key).judge(undefined);
    this.changed();
  }

  private empty(): void {
    this.put(this.standing());
    this.name.text = "";
    for (const key of KEYS) this.field(key).judge(undefined);
    this.changed();
    this.field("length").control.focus();
  }

  /** No number of what was typed before stays in sight. */
  private changed(): void {
    this.asked += 1;
    const { system, water } = this;
    this.memory.write({ system, water, name: this.name.text, typed: this.typed() });
    if (this.proposal.childElementCount === 0) {
      this.status.textContent = "";
      return;
    }
    this.proposal.replaceChildren();
    this.tell('Something was changed. Press "Propose a plan" for a new one.');
  }

  private tell(text: string): void {
    this.status.textContent = screenSaid(text);
  }

  /** One field, once it was left. */
  private judge(key: Key): void {
    const question: Question = QUESTIONS[key];
    const { text } = this.field(key);
    const read = question.list !== undefined || text === "" ? 0 : readNumber(question, text);
    this.field(key).judge(typeof read === "number" ? undefined : said(read));
  }

  private async propose(): Promise<void> {
    const mine = ++this.asked;
    this.proposal.replaceChildren();
    const { system, water } = this;
    const name = this.name.text.trim();
    const read = readGiven(this.typed(), {
      system,
      water,
      name: name === "" ? screenSaid("New field") : name,
    });
    for (const key of KEYS) {
      const fault = read.faults?.get(key);
      this.field(key).judge(fault && said(fault));
    }
    if (read.faults !== undefined) {
      const [first] = read.faults.keys();
      this.status.textContent = said(
        sentence("Nothing is proposed yet. Fields that need something: {n}.", {
          n: String(read.faults.size),
        }),
      );
      this.field(first).control.focus();
      return;
    }
    this.tell("computing…");
    const book = this.book();
    const search = proposePlan(book, read.given);
    for (;;) {
      // The page stays alive, and what is typed meanwhile ends this.
      await new Promise((resolve) => setTimeout(resolve, 0));
      if (mine !== this.asked) return;
      const step = search.next();
      if (step.done === true) {
        this.answer(step.value, book);
        return;
      }
    }
  }

  private answer({ plan, obstacles }: Outcome, book: AskedBook): void {
    if (plan === undefined) this.proposal.replaceChildren(...this.refusal(obstacles));
    else this.proposal.replaceChildren(...this.planned(plan, book));
    this.tell(
      plan === undefined
        ? "No plan fits all limits. Nothing is proposed."
        : "A plan that passes every check of the workbook.",
    );
    this.proposal.querySelector("h2")?.focus();
  }

  private refusal(obstacles: readonly Obstacle[]): HTMLElement[] {
    return [
      make("h2", { tabindex: -1 }, "Which limit to move"),
      make("p", {}, "Of the plans tried, the one that came nearest fails here:"),
      make(
        "ul",
        { class: "obstacles" },
        ...obstacles.map(({ check, says, move }) =>
          make(
            "li",
            {},
            make("strong", {}, workbookSaid(check)),
            make("p", {}, said(says)),
            ...(move === undefined ? [] : [make("p", { class: "move" }, move)]),
          ),
        ),
      ),
    ];
  }

  private planned(plan: Plan, book: AskedBook): HTMLElement[] {
    const table = make(
      "table",
      { class: "proposed" },
      make("caption", { class: "out-of-sight" }, "What is proposed, and why"),
      make(
        "thead",
        {},
        make(
          "tr",
          {},
          ...["What", "Proposed", "Why"].map((text) => make("th", { scope: "col" }, text)),
        ),
      ),
      make(
        "tbody",
        {},
        ...plan.rows.map(({ what, value, why }) =>
          make(
            "tr",
            {},
            make("th", { scope: "row" }, what),
            make("td", { class: "value" }, value),
            make("td", { class: "why" }, why.map(said).join(" ")),
          ),
        ),
      ),
    );
    return [
      make("h2", { tabindex: -1 }, "Proposed"),
      table,
      ...plan.notes.map((note) => make("p", { class: "note" }, said(note))),
      this.openers(plan),
      this.takenOver(plan, book),
      this.cautions(),
    ];
  }

  private openers(plan: Plan): HTMLElement {
    const known = books();
    return make(
      "div",
      { class: "start-buttons" },
      ...TARGETS.flatMap((id, index) => {
        const sheet = known.find((one) => one.id === id);
        if (sheet === undefined) return [];
        const button = this.button("", () =>
          this.open(
            sheet,
            this.system,
            String(plan.inputs.get("FieldName")),
            filledIn(plan, {
              system: this.system,
              from: known[0],
              to: sheet,
              book: this.book(),
            }),
          ),
        );
        button.textContent = said(sentence("Open in {title}", { title: sheet.title }));
        if (index === 0) button.classList.add("usual");
        return [button];
      }),
    );
  }

  /** What was not asked stands in the workbook as in its sample, and is said. */
  private takenOver(plan: Plan, book: AskedBook): HTMLElement {
    const pages = books()[0].pages(this.system);
    const rows = [...book.inputs.values()].flatMap((input) => {
      const { called, cell } = input;
      if (plan.inputs.has(called) || NO_FIGURES.has(called) || cell.value === undefined) return [];
      const unit = unitOfInput(pages, input)?.[this.system] ?? "";
      return [
        make(
          "div",
          {},
          make("dt", {}, workbookSaid(cell.label ?? called)),
          make("dd", {}, `${formatValue(book.stands(called), cell.format)} ${unit}`),
        ),
      ];
    });
    return make(
      "details",
      { class: "taken-over" },
      make("summary", {}, "Taken over from the sample: check each in the workbook"),
      make("dl", { class: "values" }, ...rows),
    );
  }

  private cautions(): HTMLElement {
    const id = freshId("cautions");
    return make(
      "section",
      { class: "cautions", "aria-labelledby": id },
      make("h2", { id }, "Safety: read before field work"),
      ...SUBJECTS.map((subject) => cautionText(subject)),
    );
  }

  private book(): AskedBook {
    return new AskedBook(books()[0].pages(this.system), this.callables, this.host);
  }
}
