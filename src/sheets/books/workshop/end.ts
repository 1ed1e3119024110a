import type { PageBuilder } from "../../kit/builder";
import type { Lesson } from "./lesson";

export const end: Lesson = {
  id: "end",
  answer: { formula: "LineVolume", unit: "pipeVolume" },
  write,
};

function write(page: PageBuilder): void {
  const steps = page.block("A", 1);
  steps.heading("Base's line");
  steps.worked(
    "By hand",
    '=(INDEX(Insides, 1)^2*INDEX(Lengths, 1)+IF(INDEX(Lengths, 2)=0, 0, N(INDEX(Insides, 2))^2*INDEX(Lengths, 2)))*IF(Units="SI", 0.0007854, 0.0408)',
    { unit: "pipeVolume" },
  );
  steps.worked("By function", "=IRRIG.DRAIN.VOLUME(Insides, Lengths, Units)", {
    unit: "pipeVolume",
  });
  steps.worked("It weighs", '=LineVolume*IF(Units="SI", 1, 8.34)', { unit: "weight" });
  steps.gap();
  steps.heading("To flush the widest tubing first");
  steps.worked(
    "Flow for 2 ft/s (0.6 m/s)",
    '=IRRIG.FLUSH.FLOW(MAX(Insides), Units, IF(Units="SI", 0.6, 2))',
    {
      name: "LessonFlush",
      unit: "flow",
    },
  );
  steps.worked(
    "Minutes to change the water twice",
    "=IRRIG.FLUSH.TIME(LessonFlush, Insides, Lengths, Units, 2)",
    { unit: { word: "minutes" }, format: "0.0" },
  );
  page.below(steps);
  page.safety("pressure");
}
