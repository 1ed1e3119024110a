import { amount, flow } from "../../parts/limits";
import type { Field } from "../../parts/bluestem-flat";
import { LINE } from "../../parts/line-inputs";
import type { PageBuilder } from "../../kit/builder";
import type { Lesson } from "./lesson";

export const along: Lesson = { id: "along", answer: { formula: "LossRatio" }, write };

/** Enough sprinklers to see the fall, few enough to follow. */
const FEW = 8;

/** Where the shortcut shows what it leaves out. */
const MANY = 28;

function write(page: PageBuilder, field: Field): void {
  const given = page.block("A", 1);
  given.input("Flow of a sprinkler", field.lesson.head, {
    name: "EqualFlow",
    unit: "headFlow",
    allowed: flow,
  });
  given.input("Sprinkler spacing", field.spacing, {
    name: "EqualSpacing",
    unit: "length",
    allowed: amount(1, 500),
  });
  page.below(given);
  const top = page.row;
  const rows = Array.from({ length: FEW }, (_, i) => top + 1 + i);
  page.table("A", [
    {
      header: "Segment, from the inlet",
      role: "result",
      format: "0",
      rows: rows.map((_, i) => i + 1),
    },
    {
      header: "It carries",
      unit: "flow",
      role: "result",
      rows: rows.map((at) => `=(${FEW}-A${at}+1)*EqualFlow`),
    },
    {
      header: "It loses",
      unit: "pressure",
      role: "result",
      format: "0.000",
      rows: rows.map(
        (at) => `=IRRIG.PIPE.FRICTION(B${at}, PipeInside, EqualSpacing, Units, PipeC)`,
      ),
    },
    {
      header: "As you type it",
      role: "formulaText",
      rows: rows.map((at) => `=FORMULATEXT(C${at})`),
    },
  ]);
  page.needsLines(top, 2);
  page.gap();
  const sums = page.block("A", 1);
  sums.heading("One factor for all of it");
  sums.worked("All segments together", `=SUM(C${rows[0]}:C${rows[FEW - 1]})`, {
    name: "SumLost",
    unit: "pressure",
    format: "0.000",
  });
  sums.worked(
    "The whole flow through the whole length",
    `=IRRIG.PIPE.FRICTION(${FEW}*EqualFlow, PipeInside, ${FEW}*EqualSpacing, Units, PipeC)`,
    { name: "WholeLost", unit: "pressure", format: "0.000" },
  );
  sums.worked("Their ratio, by hand", "=SumLost/WholeLost", { name: "LossRatio", format: "0.000" });
  sums.worked("The multiple-outlet factor F", `=IRRIG.LATERAL.F(${FEW})`, { format: "0.000" });
  page.below(sums);
  page.heading("What F leaves out: sprinklers are not equal. All in the larger tubing of Base");
  const longTop = page.row;
  const counts = [8, 14, MANY];
  const long = counts.map((_, i) => longTop + 1 + i);
  const line = (at: number) =>
    LINE.replace("Heads", `A${at}`).replace("Tubing", "INDEX(Insides, 1)").replace("Rise", "0");
  page.table("A", [
    {
      header: "Sprinklers on the line",
      role: "input",
      format: "0",
      allowed: { low: 1, high: 60, whole: true },
      rows: counts,
    },
    {
      header: "Shortcut, equal flows",
      unit: "pressure",
      role: "result",
      format: "0.00",
      rows: long.map(
        (at) =>
          `=IRRIG.LATERAL.LOSS(A${at}*EqualFlow, INDEX(Insides, 1), A${at}*Spacing, A${at}, Units, Friction)`,
      ),
    },
    {
      header: "Solved",
      unit: "pressure",
      role: "result",
      format: "0.00",
      rows: long.map((at) => `=INDEX(IRRIG.LATERAL.SUMMARY(${line(at)}), 9, 2)`),
    },
    {
      header: "As you type it",
      role: "formulaText",
      rows: long.map((at) => `=FORMULATEXT(C${at})`),
    },
  ]);
  page.needsLines(longTop, 3);
  long.forEach((at) => page.needsLines(at, 2));
  page.text(
    `With ${MANY} sprinklers the far ones get less pressure and take less water, so the line really loses less than the shortcut says, and waters far less evenly.`,
  );
  page.chart({
    title: "What each segment carries",
    x: { range: `A${rows[0]}:A${rows[FEW - 1]}`, title: "Segment" },
    yTitle: "Flow",
    series: [{ range: `B${rows[0]}:B${rows[FEW - 1]}`, titleAt: `B${top}` }],
    place: { from: `A${page.row + 1}`, to: `C${page.row + 13}` },
    description:
      "Flow in each of eight segments, falling from the inlet; the numbers stand in the table above.",
  });
  page.row += 14;
}
