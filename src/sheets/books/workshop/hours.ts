import type { PageBuilder } from "../../kit/builder";
import type { Lesson } from "./lesson";

export const hours: Lesson = {
  id: "hours",
  answer: { formula: "LessonHours", unit: { word: "hours" } },
  write,
};

const DAYS = 10;

function write(page: PageBuilder): void {
  const steps = page.block("A", 1);
  steps.heading("Hours of a set, for the net depth of the page Base");
  steps.worked("By hand", "=NetDepth/Rate/Efficiency", { unit: { word: "hours" }, format: "0.0" });
  steps.worked("By function: use these", "=IRRIG.SET.TIME(NetDepth, Rate, Efficiency)", {
    name: "LessonHours",
    unit: { word: "hours" },
    format: "0.0",
  });
  steps.worked("Only the average would get it", "=IRRIG.SET.TIME(NetDepth, CanRate)", {
    unit: { word: "hours" },
    format: "0.0",
  });
  steps.worked("Even the driest quarter gets it", "=IRRIG.SET.TIME(NetDepth, CanRate, CanDU)", {
    unit: { word: "hours" },
    format: "0.0",
  });
  steps.gap();
  steps.heading("Moves");
  steps.worked("Sets a day, by hand", "=INT(DayHours/(LessonHours+MoveHours))", {
    format: "0",
  });
  steps.worked("By function", "=IRRIG.SET.PERDAY(LessonHours, MoveHours, DayHours)", {
    name: "LessonSets",
    format: "0",
  });
  steps.worked("Days to cover the field", "=RoundDays", {
    unit: { word: "days" },
    format: "0",
  });
  steps.worked("Days that the net depth lasts", "=NetDepth/CropUse", {
    unit: { word: "days" },
    format: "0.0",
  });
  page.below(steps);
  page.heading("The rotation: positions watered at the end of each day");
  const top = page.row;
  const rows = Array.from({ length: DAYS }, (_, i) => top + 1 + i);
  page.table("A", [
    { header: "Day", role: "result", format: "0", rows: rows.map((_, i) => i + 1) },
    {
      header: "Positions",
      role: "result",
      format: "0",
      rows: rows.map((at) => `=MIN(Positions, A${at}*LessonSets*Lines)`),
    },
  ]);
  page.chart({
    title: "Round the field",
    x: { range: `A${rows[0]}:A${rows[DAYS - 1]}`, title: "Day" },
    yTitle: "Positions",
    series: [{ range: `B${rows[0]}:B${rows[DAYS - 1]}`, titleAt: `B${top}` }],
    place: { from: `D${top}`, to: `D${rows[DAYS - 1]}` },
    description: "Positions watered, day by day; the numbers stand beside it.",
  });
}
