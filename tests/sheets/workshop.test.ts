import { runInNewContext } from "node:vm";
import {
  exercises,
  filled,
  inSystem,
  type Exercise,
} from "../../src/sheets/books/workshop/exercises";
import { en } from "../../src/sheets/books/workshop/words/en";
import { es } from "../../src/sheets/books/workshop/words/es";
import { formatValue } from "../../src/screen/number-format";
import { bluestemFlat } from "../../src/sheets/parts/bluestem-flat";
import { catchSamples } from "../../src/sheets/parts/catch-samples";
import { call, callNumber } from "../support/host";
import { workedAnswer } from "../support/workshop-answers";

const systems = ["US", "SI"] as const;

function functionsAnswer({ call: { name, arguments: cells, pick } }: Exercise): number {
  const value = call(name, ...cells.map((cell) => (typeof cell === "object" ? [[...cell]] : cell)));
  const found = pick === undefined ? value : (value as number[][])[pick[0] - 1][pick[1] - 1];
  if (typeof found !== "number") throw new Error(`${name} gives no number`);
  return found;
}

/** "96.25 × 4.1 ÷ (45 × 50)", as a person with a calculator works it; "rounded down" where it says so. */
function worksOut(shown: string): number {
  const [before, after] = shown.split(/, (?:rounded down|redondeado hacia abajo)/);
  const sum = before
    .replace(/ = .*/, "")
    .replace(/√(\d+)/g, "Math.sqrt($1)")
    .replace(/(\d|\))²/g, "$1**2")
    .replace(/\^/g, "**")
    .replace(/×/g, "*")
    .replace(/÷/g, "/")
    .replace(/−/g, "-");
  if (!/^(?:Math\.sqrt|[\d.e()*/+ -])+$/.test(sum)) throw new Error(`not a sum: ${shown}`);
  const value = Number(runInNewContext(sum));
  return after === undefined ? value : Math.floor(value);
}

describe.each(systems)("exercises, %s", (system) => {
  test.each(exercises(system).map((exercise) => [exercise.id, exercise] as const))(
    "%s: the answer is that of another calculation",
    (_, exercise) => {
      const right = functionsAnswer(exercise);
      const other = workedAnswer(exercise, system);
      const within = exercise.whole ? 0 : 0.001;
      expect(Math.abs(right / other - 1)).toBeLessThanOrEqual(within);
    },
  );

  test("worked as it is shown, an answer has the digits that stand behind it, in both languages", () => {
    for (const exercise of exercises(system)) {
      for (const words of [en, es]) {
        const shown = filled(inSystem(words.exercises[exercise.id].shown, system), exercise);
        if (exercise.id === "mostHeads") continue;
        const worked = worksOut(shown);
        expect([exercise.id, formatValue(worked, exercise.format)]).toEqual([
          exercise.id,
          formatValue(functionsAnswer(exercise), exercise.format),
        ]);
      }
    }
  });

  test("every lesson has one, all have words, and every number named is there", () => {
    const all = exercises(system);
    expect(all.length).toBeGreaterThanOrEqual(12);
    expect(new Set(all.map(({ lesson }) => lesson))).toEqual(
      new Set(en.lessons.map(({ id }) => id)),
    );
    for (const { id, given } of all) {
      for (const words of Object.values(en.exercises[id])) {
        const text = typeof words === "string" ? words : words[system];
        for (const [, name] of text.matchAll(/\{(\w+)\}/g)) expect(given).toHaveProperty(name);
      }
    }
  });

  test("one field, one truth: every catch test has the uniformity and the rate of the plan", () => {
    const { block, leg, row, step, opening, hours } = catchSamples(system);
    const { spotUniformity, spacing, move, lesson } = bluestemFlat(system);
    const patterns = {
      block: block.map((line) => [...line]),
      leg: call("APPLICATION.OVERLAP", [[...leg]], step, spacing, move) as number[][],
      row: call("APPLICATION.FOLD", [[...row]], step, move) as number[][],
    };
    const poured = callNumber("APPLICATION.RATE", lesson.head, spacing, move, system);
    for (const pattern of Object.values(patterns)) {
      expect(Math.abs(callNumber("APPLICATION.CU", pattern) - spotUniformity)).toBeLessThan(0.005);
      const caught = pattern.flat().reduce((sum, one) => sum + one, 0) / pattern.flat().length;
      const rate = callNumber("APPLICATION.CATCH", caught, opening, system) / hours;
      // Less a twentieth in the air, a few hundredths for whole milliliters.
      expect(rate / poured).toBeGreaterThan(0.92);
      expect(rate / poured).toBeLessThan(0.98);
    }
  });
});
