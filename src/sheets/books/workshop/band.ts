import type { Field } from "../../parts/bluestem-flat";
import { LINE } from "../../parts/line-inputs";
import type { PageBuilder } from "../../kit/builder";
import type { Lesson } from "./lesson";

export const band: Lesson = { id: "band", longer: true, answer: { formula: "BandMost" }, write };

/** Places along the line where the picture is read. */
const PLACES = 8;

/** Column of the profile. */
const NOZZLE_PRESSURE = 6;

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
  const slopes = ["RuleSlope", "0", "(0-RuleSlope)"];
  const titles = ["Uphill", "Level", "Downhill"];
  const sprinklers = {
    header: "Sprinkler",
    role: "result",
    format: "0",
    rows: rows.map((_, i) => `=MAX(1, ROUND(${i}/${PLACES - 1}*Heads, 0))`),
  } as const;
  page.table("A", [
    sprinklers,
    ...slopes.map((slope, i) => ({
      header: titles[i],
      unit: "pressure" as const,
      role: "result" as const,
      rows: rows.map(
        (at) =>
          `=INDEX(IRRIG.LATERAL.PROFILE(${line("Heads", slope)}), A${at}+1, ${NOZZLE_PRESSURE})`,
      ),
    })),
  ]);
  page.needsLines(top, 2);
  page.gap();
  page.heading("Room left to the limit: below 0 the line varies too much");
  // The rule looks down from the highest nozzle of each line.
  const lowest = page.block("A", 1);
  slopes.forEach((slope, i) => {
    const found = (row: number) =>
      `INDEX(IRRIG.LATERAL.SUMMARY(${line("Heads", slope)}), ${row}, 2)`;
    lowest.worked(
      `Lowest that the limit allows, ${titles[i].toLowerCase()}`,
      `=${found(4)}-Limit*${found(6)}`,
      {
        unit: "pressure",
      },
    );
  });
  page.below(lowest);
  const roomTop = page.row;
  const limitAt = (i: number) => `B${roomTop - 1 - slopes.length + i}`;
  const [x, ...series] = page.table("A", [
    { ...sprinklers, rows: rows.map((at) => `=A${at}`) },
    ...titles.map((header, i) => ({
      header,
      unit: "pressure" as const,
      role: "result" as const,
      rows: rows.map((at) => `=${"BCD"[i]}${at}-${limitAt(i)}`),
    })),
  ]);
  page.needsLines(roomTop, 2);
  page.chart({
    title: "Room left to the limit, up and down hill",
    x: { range: x, title: "Sprinkler" },
    yTitle: "Room left",
    series: series.map((range, i) => ({ range, titleAt: `${"BCD"[i]}${roomTop}` })),
    place: { from: `A${page.row + 1}`, to: `C${page.row + 16}` },
    description:
      "How far each nozzle is above the lowest pressure that the limit allows, uphill, level and downhill; the numbers stand in the table above.",
  });
  page.row += 18;
  page.breakPage();
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
