import { summaryOf } from "../../src/formulas/field-layout";

test("a summary counts the longest run, and what the shortest has to shut off", () => {
  const run = (position: number, heads: number, covered: number, beyond: number) =>
    ({ position, heads, covered, beyond }) as Parameters<typeof summaryOf>[0]["runs"][number];
  const runs = [run(1, 4, 300, 5), run(2, 7, 500, 0), run(2, 2, 100, 20), run(3, 5, 350, 1)];
  expect(summaryOf({ runs, area: 2000 })).toEqual({
    area: 2000,
    positions: 3,
    runs: 4,
    longest: 7,
    heads: 18,
    shareCovered: 0.625,
    beyond: 26,
    mostShut: 5,
  });
});
