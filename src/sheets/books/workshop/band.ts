import type { Field } from "../../parts/bluestem-flat";
import { LINE } from "../../parts/line-inputs";
import type { PageBuilder } from "../../kit/builder";
import type { Lesson } from "./lesson";

export const band: Lesson = { id: "band", answer: { formula: "BandMost" }, write };

/** Places along the line where the picture is read. */
const PLACES = 8;

function write(page: PageBuilder, field: Field): void {
  const given = page.block("A", 1);
  given.worked(
    "The line on the page Base: pressure varies by",
    `=IRRIG.LATERAL.VARIATION(${LINE})`,
    { name: "BaseVariation", format: "0.0%" },
  );
  given.worked(
    "By hand: highest less lowest, over the average",
    "=(MostPressure-LeastPressure)/MeanPressure",
    { format: "0.0%" },
  );
  given.worked("and its flow by", `=INDEX(IRRIG.LATERAL.SUMMARY(${LINE}), 8, 2)`, {
    format: "0.0%",
  });
  given.mark("The check says", "=IRRIG.CHECK.VARIATION(BaseVariation, Limit)", 3);
  given.input("Ground rises along the line by", 1.5, {
    name: "RuleSlope",
    unit: { word: "%" },
    allowed: { low: -16, high: 16 },
    note: "Percent, uphill positive.",
  });
  given.worked(
    "The most sprinklers within the rule, level",
    "=IRRIG.LATERAL.MAXHEADS(Limit, Inlet, Spacing, INDEX(Insides, 1), Chart, Units, 0, Regulator, Friction, First, Riser)",
    { name: "BandMost", format: "0" },
  );
  page.below(given);
  const line = (heads: string, slope: string) =>
    `Inlet, ${heads}, Spacing, INDEX(Insides, 1), Chart, Units, ${slope}/100*${heads}*Spacing, Regulator, Friction, First, Riser`;
  page.heading("Pressure along Base's line, all in the larger tubing");
  const top = page.row;
  const rows = Array.from({ length: PLACES }, (_, i) => top + 1 + i);
  const along = (slope: string) =>
    rows.map((at) => `=IRRIG.LATERAL.PRESSURE(A${at}, ${line("Heads", slope)})`);
  // The rule looks down from the highest: a line that stays in this band passes.
  const uphill = (row: number) =>
    `INDEX(IRRIG.LATERAL.SUMMARY(${line("Heads", "RuleSlope")}), ${row}, 2)`;
  const foot = `=${uphill(4)}-Limit*${uphill(6)}`;
  const shown = page.table("A", [
    {
      header: "Sprinkler",
      role: "result",
      format: "0",
      rows: rows.map((_, i) => `=MAX(1, ROUND(${i}/${PLACES - 1}*Heads, 0))`),
    },
    { header: "Uphill", unit: "pressure", role: "result", rows: along("RuleSlope") },
    { header: "Level", unit: "pressure", role: "result", rows: along("0") },
    { header: "Downhill", unit: "pressure", role: "result", rows: along("(0-RuleSlope)") },
    {
      header: "Limit uphill, top",
      unit: "pressure",
      role: "result",
      rows: rows.map(() => `=${uphill(4)}`),
    },
    { header: "Limit uphill, foot", unit: "pressure", role: "result", rows: rows.map(() => foot) },
  ]);
  page.needsLines(top, 3);
  const [x, ...series] = shown;
  page.chart({
    title: "Up and down hill, with the band that the limit allows",
    x: { range: x, title: "Sprinkler" },
    yTitle: "Pressure",
    series: series.map((range, i) => ({ range, titleAt: `${"BCDEF"[i]}${top}` })),
    place: { from: `A${page.row + 1}`, to: `D${page.row + 14}` },
    description:
      "Nozzle pressure along the line uphill, level and downhill, between the edges of the band; the numbers stand in the table above.",
  });
  page.row += 16;
  page.heading("How many are too many, on that slope");
  const manyTop = page.row;
  const heads = Array.from({ length: 5 }, (_, i) => field.heads - 6 + 3 * i);
  const many = heads.map((_, i) => manyTop + 1 + i);
  page.table("A", [
    {
      header: "Sprinklers, all in the larger tubing",
      role: "input",
      format: "0",
      allowed: { low: 1, high: 500, whole: true },
      rows: heads,
    },
    {
      header: "Pressure varies by",
      role: "result",
      format: "0.0%",
      rows: many.map((at) => `=IRRIG.LATERAL.VARIATION(${line(`A${at}`, "RuleSlope")})`),
    },
    {
      header: "Flow varies by",
      role: "result",
      format: "0.0%",
      rows: many.map((at) => `=INDEX(IRRIG.LATERAL.SUMMARY(${line(`A${at}`, "RuleSlope")}), 8, 2)`),
    },
    {
      header: "The check says",
      role: "mark",
      span: 3,
      rows: many.map((at) => `=IRRIG.CHECK.VARIATION(B${at}, Limit)`),
    },
  ]);
  page.needsLines(manyTop, 2);
  many.forEach((at) => page.needsLines(at, 2));
}
