import type { Callables } from "../../reference";
import { cautionText } from "../../screen/cautions-text";
import { make } from "../../screen/dom";
import type { CellValue, FunctionHost } from "../../screen/host";
import { writtenNumber } from "../../screen/number-format";
import { shownAs } from "../../sheets/kit/builder";
import type { UnitSystem } from "../../sheets/kit/definition";
import { screenSaid } from "../../words/spoken";
import { books } from "../books";
import type { Contents } from "../kept/changes";
import { AskedBook } from "./asked-book";
import type { Question } from "./given";
import { readNumber } from "./given";
import { answerLine, type LineAnswers, WHAT_IF_KEYS, WHAT_IFS, type WhatIf } from "./line-answers";
import { FormField } from "./number-field";
import type { Opening } from "./opening";
import { said, sentence } from "./say";

/** The line that is asked about: that of the layout that was open last, else the sample's. */
export interface KnownLine {
  readonly system: UnitSystem;
  /** What the user calls it; undefined for the sample. */
  readonly name?: string;
  readonly contents: Contents;
}

/** Time after the last key before the answers are worked out. */
const TYPING_PAUSE = 200;

/** A grower's start: five figures to change, and what the line then does, always in sight. */
export class LinePage {
  private readonly fields = new Map<WhatIf, FormField>();
  private readonly answer = make("p", { class: "line-answer" });
  private readonly figures = make("dl", { class: "line-figures" });
  private readonly warnings = make("ul", { class: "obstacles" });
  private waiting: number | undefined;

  constructor(
    private readonly host: FunctionHost,
    private readonly callables: Callables,
    private readonly line: KnownLine,
    private readonly open: Opening,
  ) {
    const book = this.book();
    for (const key of WHAT_IF_KEYS) {
      const question: Question = WHAT_IFS[key];
      const field = new FormField(question, { signed: question.low < 0 }, () => this.changed());
      const { quantity } = question;
      field.in(quantity === undefined ? "" : shownAs(quantity, line.system).unit);
      const stands = book.stands(key);
      field.text = typeof stands === "number" ? writtenNumber(stands) : "";
      this.fields.set(key, field);
    }
  }

  build(): HTMLElement[] {
    const { name } = this.line;
    const open = make("button", { type: "button" }, "Open these in Line layout");
    open.addEventListener("click", () => this.openWorkbook());
    this.compute();
    return [
      make(
        "p",
        { class: "hint" },
        name === undefined
          ? "The sample's line. Open your own layout first, and its tubing, sprinkler and soil stand behind these answers."
          : said(sentence('The line of "{own}": its tubing, sprinkler and soil.', { own: name })),
      ),
      make(
        "div",
        { class: "line-fields" },
        ...WHAT_IF_KEYS.map((key) => this.fields.get(key)?.element ?? ""),
      ),
      make("div", { class: "start-buttons" }, open),
      this.warnings,
      make(
        "section",
        { class: "cautions", "aria-label": "Safety" },
        ...(["pressure", "overhead wires"] as const).map((subject) => cautionText(subject)),
      ),
      make(
        "section",
        { class: "line-bar", "aria-label": "Answers" },
        make("h2", {}, "With the pressure I have, does the last sprinkler get enough?"),
        make("div", { role: "status" }, this.answer),
        this.figures,
      ),
    ];
  }

  /** Nothing that was said of other figures stays in sight while these are typed. */
  private changed(): void {
    window.clearTimeout(this.waiting);
    this.show(undefined, "computing…");
    this.waiting = window.setTimeout(() => this.compute(), TYPING_PAUSE);
  }

  private read(): ReadonlyMap<string, CellValue> | undefined {
    const inputs = new Map<string, CellValue>();
    let isRight = true;
    for (const [key, field] of this.fields) {
      const question: Question = WHAT_IFS[key];
      let read = readNumber(question, field.text);
      if (key === "Heads" && typeof read === "number" && !Number.isInteger(read))
        read = sentence("{label}: a whole number is due.", { label: screenSaid(question.label) });
      field.judge(typeof read === "number" ? undefined : said(read));
      if (typeof read === "number") inputs.set(key, read);
      else isRight = false;
    }
    return isRight ? inputs : undefined;
  }

  private compute(): void {
    const inputs = this.read();
    if (inputs === undefined)
      this.show(undefined, "Nothing is said until every field holds a number that fits.");
    else {
      const answers = answerLine(this.book(), inputs, this.line.system);
      this.show(answers, said(answers.answer));
    }
  }

  private show(answers: LineAnswers | undefined, text: string): void {
    this.answer.textContent = screenSaid(text);
    this.answer.dataset.enough = answers?.enough === undefined ? "" : String(answers.enough);
    this.figures.replaceChildren(
      ...(answers?.figures ?? []).map(({ what, value }) =>
        make("div", {}, make("dt", {}, what), make("dd", {}, value)),
      ),
    );
    this.warnings.replaceChildren(
      ...(answers?.warnings ?? []).map((warning) => make("li", {}, warning)),
    );
  }

  private openWorkbook(): void {
    const inputs = this.read();
    const { system, name } = this.line;
    if (inputs === undefined) return;
    const [layout] = books();
    const title = said(sentence("{own}: what if", { own: name ?? layout.title }));
    this.open(layout, system, title, this.book().contents(inputs));
  }

  private book(): AskedBook {
    const { system, contents } = this.line;
    return new AskedBook(books()[0].pages(system), this.callables, this.host, contents);
  }
}
