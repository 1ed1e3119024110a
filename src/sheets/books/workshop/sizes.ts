import { LINE } from "../../parts/line-inputs";
import type { PageBuilder } from "../../kit/builder";
import type { Lesson } from "./lesson";

export const sizes: Lesson = { id: "sizes", answer: { formula: "LessonChangeover" }, write };

const PLACES = 8;

function write(page: PageBuilder): void {
  const steps = page.block("A", 1);
  steps.heading("Base's line: which segments in the larger tubing");
  const choice =
    "IRRIG.LATERAL.CHANGEOVER(Limit, Inlet, Heads, Spacing, Candidates, Chart, Units, Rise, Regulator, Friction, First, Riser)";
  page.below(steps);
  const top = page.row;
  page.table("A", [
    { header: "Size", role: "label", rows: ["Larger", "Smaller"] },
    {
      header: "Inside",
      unit: "diameter",
      role: "result",
      rows: ["=MAX(LargeBore, SmallBore)", "=MIN(LargeBore, SmallBore)"],
    },
    {
      header: "Price, relative",
      role: "input",
      allowed: { low: 0, high: 1000000 },
      rows: [1.5, 1],
    },
  ]);
  page.needsLines(top, 2);
  page.nameRange("Candidates", `B${top + 1}:C${top + 2}`);
  page.gap();
  const found = page.block("A", 1);
  found.worked("Larger bore on Base", "=INDEX(Insides, 1)", {
    name: "LargeBore",
    unit: "diameter",
  });
  found.worked(
    "Smaller bore on Base",
    "=IF(INDEX(Lengths, 2)=0, 0.8*INDEX(Insides, 1), INDEX(Insides, 2))",
    { name: "SmallBore", unit: "diameter" },
  );
  found.worked("Segments in the larger, by function", `=IFNA(INDEX(${choice}, 2, 2), Heads)`, {
    name: "LessonChangeover",
    format: "0",
  });
  found.worked("Segments in the larger on Base", "=MIN(Changeover, Heads)", { format: "0" });
  found.gap();
  found.heading("By hand: the first segment after half way");
  found.worked("Sprinklers that it still feeds", "=Heads-INT(Heads/2)", {
    name: "StillFed",
    format: "0",
  });
  found.worked(
    "It loses, in the larger",
    "=IRRIG.PIPE.FRICTION(StillFed*HeadFlow, LargeBore, Spacing, Units, Friction)",
    { unit: "pressure", format: "0.00" },
  );
  found.worked(
    "It loses, in the smaller",
    "=IRRIG.PIPE.FRICTION(StillFed*HeadFlow, SmallBore, Spacing, Units, Friction)",
    { unit: "pressure", format: "0.00" },
  );
  page.below(found);
  const picture = page.row;
  const rows = Array.from({ length: PLACES }, (_, i) => picture + 1 + i);
  const along = (tubing: string) =>
    rows.map((at) => `=IRRIG.LATERAL.PRESSURE(A${at}, ${LINE.replace("Tubing", tubing)})`);
  const [x, ...series] = page.table("A", [
    {
      header: "Sprinkler",
      role: "result",
      format: "0",
      rows: rows.map((_, i) => `=MAX(1, ROUND(${i}/${PLACES - 1}*Heads, 0))`),
    },
    { header: "All larger", unit: "pressure", role: "result", rows: along("LargeBore") },
    { header: "As on Base", unit: "pressure", role: "result", rows: along("Tubing") },
  ]);
  page.needsLines(picture, 2);
  page.chart({
    title: "One size and two",
    x: { range: x, title: "Sprinkler" },
    yTitle: "Pressure",
    series: series.map((range, i) => ({ range, titleAt: `${"BC"[i]}${picture}` })),
    place: { from: `D${picture}`, to: `D${rows[PLACES - 1] + 2}` },
    description:
      "Nozzle pressure along the line in one size and in two; the numbers stand beside it.",
  });
  page.row += 2;
}
