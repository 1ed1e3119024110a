import { quoted } from "../../../formula-text/quoted";
import type { Field } from "../../parts/bluestem-flat";
import type { PageBuilder, PlainRow } from "../../kit/builder";
import type { PagePlan } from "../../kit/workbook";
import {
  callText,
  CLOSE_WITHIN,
  type Exercise,
  exercises,
  filled,
  inSystem,
  RIGHT_WITHIN,
} from "./exercises";
import { words } from "./lesson";

export function exercisePage(field: Field): PagePlan {
  return {
    name: "Exercise",
    title: "Now you",
    purpose:
      "Work each with a calculator or with functions in the free cells to the right, and type your answer. One percent off is near enough.",
    widths: [66, 12, 9, 34, 34],
    landscape: true,
    onePage: true,
    write: (page) => write(page, field),
  };
}

function write(page: PageBuilder, field: Field): void {
  const all = exercises(field.system);
  const text = (words: Parameters<typeof inSystem>[0], exercise: Exercise) =>
    quoted(filled(inSystem(words, field.system), exercise));
  const top = page.row;
  page.row += 3;
  const first = page.row;
  const rows = all.map((exercise, i): PlainRow => {
    const row = first + i;
    const { ask, hint, second } = words.exercises[exercise.id];
    const lesson = words.lessons.findIndex(({ id }) => id === exercise.lesson) + 1;
    const question = `${i + 1}.  ${filled(inSystem(ask, field.system), exercise)} (Lesson ${lesson})`;
    const right = callText(exercise);
    const off = `ABS(B${row}/${right}-1)`;
    const close = `IF(${off}<=${CLOSE_WITHIN}, "Close. ${text(second, exercise)}", "Not yet. ${text(hint, exercise)}")`;
    const more = exercise.fraction
      ? `IF(ABS(B${row}/100/${right}-1)<=${RIGHT_WITHIN}, "Close: that is percent; type it as a fraction.", ${close})`
      : close;
    const within = exercise.whole ? "0.000001" : String(RIGHT_WITHIN);
    page.needsLines(row, Math.max(2, Math.ceil(question.length / page.width(0, 1))));
    return [
      { role: "text", value: question, span: 1 },
      {
        role: "input",
        label: `Exercise ${i + 1}`,
        allowed: { low: -1000000, high: 1000000, optional: true },
      },
      exercise.unit === "" ? undefined : { role: "unit", value: exercise.unit },
      {
        role: "mark",
        span: 2,
        formula: `=IF(B${row}="", "Type your answer.", IF(${off}<=${within}, "OK", ${more}))`,
      },
    ];
  });
  page.plain(1, rows);
  const last = page.row - 1;
  page.row = top;
  const score = page.block("A", 1);
  score.sentence("Right so far", `=COUNTIF(D${first}:D${last}, "OK")&" of ${all.length}"`, 1);
  score.input("Show me the answer to number", undefined, {
    name: "ShowNumber",
    allowed: { low: 1, high: all.length, whole: true, optional: true },
  });
  const shown = all.reduceRight((rest, exercise, i) => {
    const by = text(words.exercises[exercise.id].shown, exercise);
    return `IF(ShowNumber=${i + 1}, "${by}; =${quoted(callText(exercise))}", ${rest})`;
  }, '""');
  page.row = top + 1;
  page.plain(4, [[{ role: "sentence", span: 2, formula: `=${shown}` }]]);
  page.needsLines(top + 1, 3);
  page.row = last + 2;
}
