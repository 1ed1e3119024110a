import { quoted } from "../../../formula-text/quoted";
import type { PageBuilder, UnitOf } from "../../kit/builder";
import type { PagePlan } from "../../kit/workbook";
import { amount, optional } from "../../parts/limits";
import type { Field } from "../../parts/bluestem-flat";
import { inSystem } from "./exercises";
import type { LessonId, LessonWords } from "./words/shape";
import { en } from "./words/en";

/** Label, value, unit, and the formula as text; then room for small tables. */
export const COLUMNS = [40, 13, 14, 66, 14, 14];

export const words = en;

export interface Lesson {
  readonly id: LessonId;
  readonly widths?: readonly number[];
  /** Of the columns, those that a label takes. */
  readonly labelColumns?: number;
  /** More than one page of paper. */
  readonly longer?: true;
  /** What the guess is held against. */
  readonly answer: { readonly formula: string; readonly unit?: UnitOf };
  write(page: PageBuilder, field: Field): void;
}

/** Near enough for a guess. */
const GUESSED_WITHIN = 0.2;

/** Question, guess, the lesson itself, what it means in the field, the source. */
export function lessonPage(lesson: Lesson, field: Field): PagePlan {
  const { id, widths = COLUMNS, labelColumns = 1, answer } = lesson;
  const number = en.lessons.findIndex((other) => other.id === id) + 1;
  const said = en.lessons[number - 1];
  return {
    name: said.page,
    title: `${number}  ${said.title}`,
    purpose: said.question,
    widths,
    landscape: true,
    ...(lesson.longer === undefined && { onePage: true }),
    write: (page) => {
      guess(page, number, said, answer, labelColumns, widths.length - labelColumns - 2);
      lesson.write(page, field);
      page.gap();
      page.heading("By hand, in words");
      page.text(inSystem(said.hand, field.system));
      page.heading("In the field");
      page.text(said.field);
      page.text(`Source: ${said.source}`);
    },
  };
}

function guess(
  page: PageBuilder,
  number: number,
  said: LessonWords,
  answer: Lesson["answer"],
  labelColumns: number,
  more: number,
): void {
  const block = page.block("A", labelColumns);
  block.heading("Guess first");
  const name = `Guess${number}`;
  block.text(said.guess, more);
  block.input(`Guess ${number}`, undefined, {
    name,
    // On the page the sentence above it stands elsewhere.
    note: said.guess,
    allowed: optional(amount(-1000000, 1000000)),
    ...(answer.unit !== undefined && { unit: answer.unit }),
  });
  block.mark(
    "Your guess",
    `=IF(${name}="", "Type your guess, then look below.", IF(ABS(${name}-${answer.formula})<=${GUESSED_WITHIN}*ABS(${answer.formula}), "OK", IF(${name}<${answer.formula}, "${quoted("It is more: look below.")}", "${quoted("It is less: look below.")}")))`,
    more,
  );
  page.below(block);
}
