import { amount } from "../../parts/limits";
import type { Field } from "../../parts/bluestem-flat";
import type { PageBuilder } from "../../kit/builder";
import type { Lesson } from "./lesson";

export const wind: Lesson = {
  id: "wind",
  answer: { formula: "WidestMove", unit: "length" },
  write,
};

/** Wind speeds in the units of the sheet, beside the limits of the standard's classes. */
const SPEEDS = { US: [0, 2, 4, 6, 8, 10, 12, 15], SI: [0, 3, 6, 9, 12, 16, 20, 25] } as const;

function write(page: PageBuilder, field: Field): void {
  const steps = page.block("A", 1);
  steps.heading("At the wind of the page Base");
  const widest = (row: number) => `INDEX(IRRIG.SPRINKLER.SPACING(Wetted, Wind, Units), ${row}, 2)`;
  steps.worked("Widest spacing along the line, by hand", "=0.5*Wetted", { unit: "length" });
  steps.worked("By function", `=${widest(1)}`, { unit: "length" });
  steps.worked(
    "Widest move, by hand at this wind class",
    '=Wetted*IF(Wind<=IF(Units="SI", 0.8, 0.5), 0.65, IF(Wind<=IF(Units="SI", 8.05, 5), 0.6, IF(Wind<=IF(Units="SI", 16.1, 10), 0.5, 0.45)))',
    {
      unit: "length",
    },
  );
  steps.worked("By function", `=${widest(2)}`, { name: "WidestMove", unit: "length" });
  steps.mark("The check says", "=IRRIG.CHECK.SPACING(Spacing, Move, Wetted, Wind, Units)", 3);
  page.below(steps);
  const top = page.row;
  const rows = SPEEDS[field.system].map((_, i) => top + 1 + i);
  page.table("A", [
    {
      header: "Wind",
      unit: "wind",
      role: "input",
      allowed: amount(0, 200),
      rows: SPEEDS[field.system],
    },
    {
      header: "Widest move",
      unit: "length",
      role: "result",
      rows: rows.map((at) => `=INDEX(IRRIG.SPRINKLER.SPACING(Wetted, A${at}, Units), 2, 2)`),
    },
  ]);
  page.needsLines(top, 2);
  page.chart({
    title: "Wind and the widest move",
    x: { range: `A${rows[0]}:A${rows[rows.length - 1]}`, title: "Wind" },
    yTitle: "Widest move",
    series: [{ range: `B${rows[0]}:B${rows[rows.length - 1]}`, titleAt: `B${top}` }],
    place: { from: `D${top}`, to: `D${rows[rows.length - 1] + 3}` },
    description: "Widest move against wind, in steps; the numbers stand beside it.",
  });
  page.row += 3;
}
