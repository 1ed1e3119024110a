import { answerLine } from "../../../src/trial/start/line-answers";
import { said } from "../../../src/trial/start/say";
import { loadWorkbooks } from "../../support/open-workbook";
import { bookIn } from "./asked";

const { openWorkbook } = loadWorkbooks();

const figure = (answers: ReturnType<typeof answerLine>, what: string) =>
  answers.figures.find((one) => one.what === what)?.number;

test.each([
  ["US", 44, 40],
  ["SI", 300, 13],
] as const)(
  "%s: the lowest pressure, the variation and the set are those of the workbook of what-ifs",
  async (system, pressure, spacing) => {
    const answers = answerLine(
      bookIn(system),
      new Map([
        ["InletThereIs", pressure],
        ["Heads", 12],
        ["Spacing", spacing],
        ["Rise", 1],
        ["Wind", 5],
      ]),
      system,
    );
    const book = await openWorkbook("spacing-what-if", system);
    await book.set({ LeastInlet: pressure, Heads: 12, Spacing: spacing, Rise: 1, Wind: 5 });
    // The planned inlet of the same line that gives this lowest pressure is the one that there is.
    await book.set({
      LeastInlet: pressure,
      Lowest: figure(answers, "Lowest") ?? NaN,
      Heads: 12,
      Spacing: spacing,
      Rise: 1,
      Wind: 5,
    });
    const values = book.values();
    expect(values.PlannedInlet).toBeCloseTo(pressure, 6);
    expect(values.LeastPressure).toBeCloseTo(figure(answers, "Lowest") ?? NaN, 6);
    expect(values.Variation).toBeCloseTo(figure(answers, "Varies by") ?? NaN, 8);
    expect(values.LineFlow).toBeCloseTo(figure(answers, "Flow") ?? NaN, 6);
    expect(values.SetHours).toBeCloseTo(figure(answers, "Set") ?? NaN, 6);
  },
);

test("the question is answered yes, no, or where the last one is not the worst", () => {
  const ask = (inputs: [string, number][]) => {
    const answers = answerLine(bookIn("US"), new Map(inputs), "US");
    return { enough: answers.enough, says: said(answers.answer), warnings: answers.warnings };
  };
  expect(ask([["InletThereIs", 48]])).toMatchObject({ enough: true, warnings: [] });
  expect(ask([["InletThereIs", 48]]).says).toMatch(/^Yes\. The last sprinkler gets \d/);
  const low = ask([["InletThereIs", 40]]);
  expect(low.enough).toBe(false);
  expect(low.says).toMatch(/^No\. The last sprinkler gets 3\d\.\d psi; 40\.0 psi are wanted\.$/);
  // Downhill the last one gains what the ones before it lack.
  const down = ask([
    ["InletThereIs", 41],
    ["Rise", -20],
  ]);
  expect(down.says).toMatch(/^The last one does: .* But sprinkler \d+ gets only/);
  expect(down.enough).toBe(false);
});

test("where the water does not reach, that is said and no figure is shown as a success", () => {
  const answers = answerLine(
    bookIn("US"),
    new Map([
      ["InletThereIs", 5],
      ["Rise", 60],
    ]),
    "US",
  );
  expect(answers.enough).not.toBe(true);
  expect(said(answers.answer)).toMatch(/^(No\.|It cannot be said\.)/);
});

test("too much wind for the spacing is a warning, and a shorter line has no segments left over", () => {
  const answers = answerLine(
    bookIn("US"),
    new Map([
      ["Heads", 4],
      ["Wind", 15],
    ]),
    "US",
  );
  expect(answers.warnings.join(" ")).toMatch(/wind|move|spac/i);
  expect(answers.enough).toBe(true);
});
