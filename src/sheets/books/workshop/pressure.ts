import { amount, length } from "../../parts/limits";
import type { Field } from "../../parts/bluestem-flat";
import { type PageBuilder, unitText } from "../../kit/builder";
import type { Lesson } from "./lesson";

export const pressure: Lesson = {
  id: "pressure",
  answer: { formula: "FunctionPressure", unit: "pressure" },
  write,
};

function write(page: PageBuilder, field: Field): void {
  const given = page.block("A", 1);
  given.heading("One pipe");
  given.input("Flow, as you have it", field.lesson.flow, {
    name: "FlowGiven",
    allowed: amount(0, 100000),
  });
  given.input("It is in", field.system === "US" ? "gpm" : "m³/h", {
    name: "FlowUnit",
    allowed: { list: ["gpm", "m³/h", "L/s"] },
  });
  given.worked("Flow", `=IRRIG.UNIT.CONVERT(FlowGiven, FlowUnit, ${unitText("flow")})`, {
    name: "PipeFlow",
    unit: "flow",
  });
  given.input("Inside diameter", field.lesson.inside, {
    name: "PipeInside",
    unit: "diameter",
    allowed: amount(0.1, 2000),
  });
  given.input("Length", field.lesson.length, {
    name: "PipeLength",
    unit: "length",
    allowed: length,
  });
  given.input("C: how smooth", 150, { name: "PipeC", allowed: { low: 50, high: 200 } });
  given.gap();
  given.heading("By hand");
  given.worked("Flow for the equation", '=IF(Units="SI", PipeFlow/3.6, PipeFlow)', {
    name: "HandFlow",
    unit: { us: "gpm", si: "L/s" },
    format: "0.00",
  });
  given.worked(
    "Lost in every hundred lengths",
    '=IF(Units="SI", 1.217*10^12, 1050)*(HandFlow/PipeC)^1.852*PipeInside^-4.87',
    {
      name: "HandLoss",
      unit: { us: "ft per 100 ft", si: "m per 100 m" },
      format: "0.000",
    },
  );
  given.worked("Over this length", "=HandLoss*PipeLength/100", {
    name: "HandHead",
    unit: "length",
    format: "0.000",
  });
  given.worked("As pressure", '=IF(Units="SI", HandHead*9.789, HandHead/2.311)', {
    name: "HandPressure",
    unit: "pressure",
    format: "0.00",
  });
  given.gap();
  given.heading("By function");
  given.worked("The same", "=IRRIG.PIPE.FRICTION(PipeFlow, PipeInside, PipeLength, Units, PipeC)", {
    name: "FunctionPressure",
    unit: "pressure",
    format: "0.00",
  });
  given.worked("In bar", `=IRRIG.UNIT.CONVERT(FunctionPressure, ${unitText("pressure")}, "bar")`, {
    unit: { word: "bar" },
    format: "0.000",
  });
  given.worked("Speed of the water", "=IRRIG.PIPE.VELOCITY(PipeFlow, PipeInside, Units)", {
    unit: "speed",
  });
  given.gap();
  given.heading("What moves it most");
  const times = (label: string, formula: string) =>
    given.worked(label, formula, { format: '0.00" ×"' });
  times(
    "Twice the flow: the loss becomes",
    "=IRRIG.PIPE.FRICTION(2*PipeFlow, PipeInside, PipeLength, Units, PipeC)/FunctionPressure",
  );
  times(
    "A tenth more diameter: the loss becomes",
    "=IRRIG.PIPE.FRICTION(PipeFlow, 1.1*PipeInside, PipeLength, Units, PipeC)/FunctionPressure",
  );
  times(
    "Rougher, C 130: the loss becomes",
    "=IRRIG.PIPE.FRICTION(PipeFlow, PipeInside, PipeLength, Units, 130)/FunctionPressure",
  );
  page.below(given);
}
