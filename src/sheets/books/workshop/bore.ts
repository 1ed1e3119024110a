import { amount } from "../../parts/limits";
import { type PageBuilder, unitText } from "../../kit/builder";
import type { Lesson } from "./lesson";

export const bore: Lesson = {
  id: "bore",
  longer: true,
  answer: { formula: "LessonBore", unit: "diameter" },
  write,
};

function write(page: PageBuilder): void {
  const sizes = [75, 63, 50, 40, 32];
  const first = page.block("A", 1);
  first.worked(
    "50 mm, SDR 17: wall 3.2, outside 50.2 mm",
    `=IRRIG.UNIT.CONVERT(50.2-2*3.2, "mm", ${unitText("diameter")})`,
    { unit: "diameter" },
  );
  first.worked("By function", '=IRRIG.PIPE.INSIDE("ISO PE", 50, 17, Units)', {
    name: "LessonBore",
    unit: "diameter",
  });
  page.below(first);
  const top = page.row;
  const rows = sizes.map((_, i) => top + 1 + i);
  page.table("A", [
    {
      header: "Nominal size, outside (mm), SDR 17",
      role: "input",
      format: "0",
      allowed: amount(10, 2000),
      rows: sizes,
    },
    {
      header: "Bore",
      unit: "diameter",
      role: "result",
      rows: rows.map((at) => `=IRRIG.PIPE.INSIDE("ISO PE", A${at}, 17, Units)`),
    },
    {
      header: "It loses",
      unit: "pressure",
      role: "result",
      format: "0.00",
      rows: rows.map((at) => `=IRRIG.PIPE.FRICTION(PipeFlow, B${at}, PipeLength, Units, PipeC)`),
    },
    {
      header: "As you type it",
      role: "formulaText",
      rows: rows.map((at) => `=FORMULATEXT(C${at})`),
    },
  ]);
  page.needsLines(top, 2);
  page.gap();
  page.breakPage();
  page.heading("With the size on the tubing instead");
  const wrongTop = page.row;
  const wrong = sizes.map((_, i) => wrongTop + 1 + i);
  const nominal = (at: number) => `IRRIG.UNIT.CONVERT(A${at}, "mm", ${unitText("diameter")})`;
  page.table("A", [
    {
      header: "Nominal size, outside (mm)",
      role: "result",
      format: "0",
      rows: rows.map((at) => `=A${at}`),
    },
    {
      header: "It seems to lose",
      unit: "pressure",
      role: "result",
      format: "0.00",
      rows: wrong.map(
        (at) => `=IRRIG.PIPE.FRICTION(PipeFlow, ${nominal(at)}, PipeLength, Units, PipeC)`,
      ),
    },
    {
      header: "Hidden",
      role: "result",
      format: "0%",
      rows: wrong.map((at, i) => `=1-B${at}/C${rows[i]}`),
    },
    {
      header: "As you type it",
      role: "formulaText",
      rows: wrong.map((at) => `=FORMULATEXT(B${at})`),
    },
  ]);
  for (const at of [wrongTop, ...wrong]) page.needsLines(at, 2);
  page.gap();
  page.chart({
    title: "Loss against bore",
    x: { range: `B${rows[0]}:B${rows[rows.length - 1]}`, title: "Bore" },
    yTitle: "Pressure lost",
    series: [{ range: `C${rows[0]}:C${rows[rows.length - 1]}`, titleAt: `C${top}` }],
    place: { from: `A${page.row}`, to: `C${page.row + 12}` },
    description:
      "Pressure lost in the same pipe against its bore, rising steeply as the bore narrows; the numbers stand in the first table.",
  });
  page.row += 14;
  const other = page.block("A", 1);
  other.heading("Other series, other rules");
  other.worked(
    "2 in by outside diameter, DR 11: bore",
    '=IRRIG.PIPE.INSIDE("IPS PE", 2, 11, Units)',
    {
      unit: "diameter",
    },
  );
  other.worked(
    "2 in by inside diameter, SIDR 15: bore",
    '=IRRIG.PIPE.INSIDE("SIDR", 2, 15, Units)',
    {
      unit: "diameter",
    },
  );
  page.below(other);
}
