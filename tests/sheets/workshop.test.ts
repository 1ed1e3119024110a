import { exercises } from "../../src/sheets/books/workshop/exercises";
import { en } from "../../src/sheets/books/workshop/words/en";
import { bluestemFlat } from "../../src/sheets/parts/bluestem-flat";
import { catchSamples } from "../../src/sheets/parts/catch-samples";
import { call, callNumber } from "../support/host";
import { workedAnswer } from "../support/workshop-answers";

const systems = ["US", "SI"] as const;

describe.each(systems)("exercises, %s", (system) => {
  test.each(exercises(system).map((exercise) => [exercise.id, exercise] as const))(
    "%s: the answer is that of another calculation",
    (id, exercise) => {
      const {
        call: { name, arguments: cells, pick },
        whole,
      } = exercise;
      const value = call(
        name,
        ...cells.map((cell) => (typeof cell === "object" ? [[...cell]] : cell)),
      );
      const right = pick === undefined ? value : (value as number[][])[pick[0] - 1][pick[1] - 1];
      const other = workedAnswer(exercise, system);
      expect(typeof right).toBe("number");
      // The bore is by the least wall, and the function's by the middle of its tolerance.
      const within = whole ? 0 : id === "bore" ? 0.006 : 0.001;
      expect(Math.abs((right as number) / other - 1)).toBeLessThanOrEqual(within);
    },
  );

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
