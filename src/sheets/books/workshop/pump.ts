import type { PageBuilder } from "../../kit/builder";
import { pressure } from "../../parts/limits";
import type { Field } from "../../parts/bluestem-flat";
import { unitText } from "../../kit/builder";
import type { Lesson } from "./lesson";

export const pump: Lesson = { id: "pump", answer: { formula: "TotalHead", unit: "length" }, write };

function write(page: PageBuilder, field: Field): void {
  const steps = page.block("A", 1);
  steps.heading("From the line back to the pond, numbers of the page Base");
  steps.worked("Lateral inlet", "=PlannedInlet", { unit: "pressure" });
  steps.worked("Feeder with its rise takes", "=RiserPressure-PlannedInlet", { unit: "pressure" });
  steps.worked("Main and filter take", "=MainLosses", { unit: "pressure" });
  steps.worked("Head, by hand", '=(RiserPressure+MainLosses)*IF(Units="SI", 1/9.789, 2.311)+Lift', {
    unit: "length",
  });
  steps.worked("By function", "=IRRIG.PUMP.TDH(RiserPressure, Lift, MainLosses, Units)", {
    unit: "length",
  });
  steps.gap();
  steps.heading("Power");
  steps.worked("By hand", '=AllFlow*PumpHead/IF(Units="SI", 367.1, 3960)/PumpEfficiency', {
    unit: "power",
    format: "0.00",
  });
  steps.worked("By function", "=IRRIG.PUMP.POWER(AllFlow, PumpHead, PumpEfficiency, Units)", {
    unit: "power",
    format: "0.00",
  });
  steps.gap();
  steps.heading("A gauge in other units");
  steps.input("It reads", field.system === "US" ? 60 : 4.1, {
    name: "GaugeReading",
    allowed: { ...pressure, low: 0 },
  });
  steps.input("in", field.system === "US" ? "psi" : "bar", {
    name: "GaugeUnit",
    allowed: { list: ["psi", "kPa", "bar"] },
  });
  steps.worked(
    "For the functions",
    `=IRRIG.UNIT.CONVERT(GaugeReading, GaugeUnit, ${unitText("pressure")})`,
    { unit: "pressure", format: "0.0" },
  );
  page.below(steps);
  page.heading("The pump's curve");
  const top = page.row;
  const rows = field.pumpCurve.map((_, i) => top + 1 + i);
  page.table("A", [
    {
      header: "Flow",
      unit: "flow",
      role: "result",
      rows: rows.map((_, i) => `=INDEX(PumpCurve, ${i + 1}, 1)`),
    },
    {
      header: "Head",
      unit: "length",
      role: "result",
      rows: rows.map((_, i) => `=INDEX(PumpCurve, ${i + 1}, 2)`),
    },
  ]);
  page.chart({
    title: "Less flow, more head",
    x: { range: `A${rows[0]}:A${rows[rows.length - 1]}`, title: "Flow" },
    yTitle: "Head",
    series: [{ range: `B${rows[0]}:B${rows[rows.length - 1]}`, titleAt: `B${top}` }],
    place: { from: `D${top}`, to: `D${rows[rows.length - 1] + 4}` },
    description: "Head of the pump against its flow; the numbers stand beside it.",
  });
  page.row += 4;
  page.safety("pressure");
}
