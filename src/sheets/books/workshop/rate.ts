import { soilTextures } from "../../../tables/soils";
import { crops } from "../../../tables/crops";
import { amount } from "../../parts/limits";
import type { Field } from "../../parts/bluestem-flat";
import type { PageBuilder } from "../../kit/builder";
import type { Lesson } from "./lesson";

export const rate: Lesson = {
  id: "rate",
  answer: { formula: "LessonRate", unit: "rate" },
  write,
};

const DAYS = 11;

function write(page: PageBuilder, field: Field): void {
  const steps = page.block("A", 1);
  steps.heading("How fast it pours");
  steps.worked("By hand", '=HeadFlow*IF(Units="SI", 1000, 96.25)/(Spacing*Move)', {
    unit: "rate",
  });
  steps.worked("By function", "=IRRIG.APPLICATION.RATE(HeadFlow, Spacing, Move, Units)", {
    name: "LessonRate",
    unit: "rate",
  });
  steps.gap();
  steps.heading("The bucket: what the soil holds and takes in");
  steps.input("Soil", "silt loam", {
    name: "LessonSoil",
    allowed: { list: soilTextures, knownBy: "IRRIG.SOIL.AWC($)" },
  });
  steps.input("Crop", "clover hay", {
    name: "LessonCrop",
    allowed: { list: crops, knownBy: "IRRIG.CROP.ROOT($)" },
  });
  steps.input("It uses, at its peak", field.lesson.use, {
    name: "LessonUse",
    unit: "dailyDepth",
    allowed: amount(0.001, 50),
  });
  steps.worked(
    "The ground takes",
    "=IRRIG.SOIL.INTAKE(IRRIG.SOIL.PROFILE(LessonSoil), Slope, Units)",
    { name: "LessonIntake", unit: "rate" },
  );
  steps.mark("The check says", "=IRRIG.CHECK.RATE(LessonRate, LessonIntake)", 3);
  steps.worked("The soil holds", "=IRRIG.SOIL.AWC(LessonSoil, Units)", {
    name: "LessonCapacity",
    unit: "waterCapacity",
  });
  steps.worked("The roots reach", "=IRRIG.CROP.ROOT(LessonCrop, Units)", {
    name: "LessonRoot",
    unit: "length",
    format: "0.00",
  });
  steps.worked("Allowed depletion", "=IRRIG.CROP.DEPLETION(LessonCrop, Units, LessonUse)", {
    name: "LessonDepletion",
    format: "0.00",
  });
  steps.worked(
    "So put back at most",
    "=IRRIG.SOIL.NET(LessonCapacity, LessonRoot, LessonDepletion, Units)",
    { name: "LessonNet", unit: "depth" },
  );
  steps.worked("and come back within", "=IRRIG.SYSTEM.INTERVAL(LessonNet, LessonUse)", {
    name: "LessonDays",
    unit: { word: "days" },
    format: "0.0",
  });
  page.below(steps);
  page.heading("The bucket from day to day, full on day 0, no rain");
  const top = page.row;
  const rows = Array.from({ length: DAYS }, (_, i) => top + 1 + i);
  page.table("A", [
    { header: "Day", role: "result", format: "0", rows: rows.map((_, i) => i) },
    {
      header: "Left to use",
      unit: "depth",
      role: "result",
      rows: rows.map((at) => `=MAX(0, LessonNet-A${at}*LessonUse)`),
    },
  ]);
  page.chart({
    title: "What is left in the bucket",
    x: { range: `A${rows[0]}:A${rows[DAYS - 1]}`, title: "Day" },
    yTitle: "Depth",
    series: [{ range: `B${rows[0]}:B${rows[DAYS - 1]}`, titleAt: `B${top}` }],
    place: { from: `D${top}`, to: `D${rows[DAYS - 1]}` },
    description: "Water left to use, falling from day to day; the numbers stand beside it.",
  });
}
