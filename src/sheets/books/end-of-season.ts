import type { Field } from "../parts/bluestem-flat";
import { PageBuilder } from "../kit/builder";
import type { Page } from "../kit/definition";
import { COLUMNS, SENTENCE_COLUMNS } from "../parts/line-blocks";
import { LINE_WITHOUT_INLET } from "../parts/line-inputs";

/** Flush, drain, tow, and what else must be emptied before the frost. */
export function endOfSeasonPage(field: Field): Page {
  const page = new PageBuilder("End of season", field.system, COLUMNS, true);
  page.title("End of season: flush, drain, tow, empty the rest");
  page.freeze();
  page.purpose(
    "For the line on the page Water source. Give the ground that it lies on, and what the tubing's maker says of its strength.",
  );
  page.gap();

  page.heading("1  Flush, with the end cap off");
  const flush = page.block("A");
  flush.input("Speed that carries grit out", field.flushSpeed, {
    name: "FlushSpeed",
    unit: "speed",
  });
  flush.input("Times to change the water", 3, { name: "Changes" });
  const flushed = page.block("G");
  const far = (range: string) => `=INDEX(${range}, IF(INDEX(Lengths, 2)=0, 1, 2))`;
  flushed.result("Size at the far end (mm)", far("Sizes"), { name: "FarSize", format: "0" });
  flushed.result("SDR there", far("SDRs"), { name: "FarSDR", format: "0.0" });
  flushed.result("Inside there", far("Insides"), { name: "FarInside", unit: "diameter" });
  flushed.result("Flow at the far end", "=IRRIG.FLUSH.FLOW(FarInside, Units, FlushSpeed)", {
    name: "FlushFlow",
    unit: "flow",
  });
  flushed.result(
    "Pressure where the line begins",
    `=IRRIG.FLUSH.PRESSURE(FlushSpeed, ${LINE_WITHOUT_INLET})`,
    { name: "FlushPressure", unit: "pressure" },
  );
  flushed.result(
    "Run it open, at least",
    "=IRRIG.FLUSH.TIME(FlushFlow, Insides, Lengths, Units, Changes)",
    { name: "FlushMinutes", unit: { word: "minutes" }, format: "0.0" },
  );
  page.below(flush, flushed);

  page.heading("2  Drain, by the ground it lies on");
  const start = page.row;
  const [distances] = page.table(
    "A",
    [
      {
        header: "Distance",
        unit: "length",
        role: "input",
        rows: field.ground.map(([distance]) => distance),
      },
      {
        header: "Ground",
        unit: "length",
        role: "input",
        rows: field.ground.map(([, height]) => height),
      },
    ],
    start,
  );
  const [from, to] = distances.split(":").map((at) => Number(at.slice(1)));
  page.nameRange("GroundDistance", `A${from}:A${to}`);
  page.nameRange("Ground", `B${from}:B${to}`);
  const afterGround = page.row;
  page.chart({
    title: "The ground under the line",
    x: { range: `A${from}:A${to}`, title: "Distance from the inlet" },
    yTitle: "Height",
    series: [{ range: `B${from}:B${to}`, titleAt: `B${start}` }],
    place: { from: `D${start}`, to: `F${to}` },
    description: "Height of the ground against distance; the numbers stand beside it.",
  });
  page.row = start;
  const drained = page.block("G");
  drained.input("Ends that are open", "both", {
    name: "Ends",
    allowed: { list: ["both", "start", "end"] },
  });
  drained.input("Opening (blank: the whole end)", undefined, { name: "Opening", unit: "diameter" });
  drained.result("Water in the line", "=IRRIG.DRAIN.VOLUME(Insides, Lengths, Units)", {
    name: "LineVolume",
    unit: "pipeVolume",
  });
  drained.result(
    "Stays in the dips, at most",
    "=IRRIG.DRAIN.TRAPPED(GroundDistance, Ground, MAX(Insides), Units, Ends)",
    { name: "Trapped", unit: "pipeVolume" },
  );
  drained.result(
    "Runs out in",
    '=IF(INDEX(Ground, ROWS(Ground))=INDEX(Ground, 1), "never: it lies level", IRRIG.DRAIN.TIME(FarInside, INDEX(GroundDistance, ROWS(Ground)), ABS(INDEX(Ground, ROWS(Ground))-INDEX(Ground, 1)), Units, Opening))',
    { name: "DrainMinutes", unit: { word: "minutes" }, format: "0.0" },
  );
  page.row = afterGround;
  page.text(
    "What stays in the dips can freeze: lift the tubing there by hand, walking from the high end to an open one, or lower the ends and open a joint at the dip.",
  );
  page.gap();

  page.heading("3  Tow");
  const tow = page.block("A");
  tow.input("Weight of a head on its stand", field.headWeight, {
    name: "HeadWeight",
    unit: "weight",
  });
  tow.input("The line is", "drained", { name: "Contents", allowed: { list: ["drained", "full"] } });
  tow.input("Drag on the ground", 0.45, {
    name: "Drag",
    note: "Pull over weight: 0.3 to 0.6 is common on grass, without a published source. Measure it with a scale in the tow rope.",
  });
  tow.input("Slope of the pull", field.slope, { name: "TowSlope", unit: { word: "%" } });
  tow.input("Yield strength of the tubing", field.yield, { name: "Yield", unit: "pressure" });
  tow.input("Tubing wall, that day", field.towTemperature, {
    name: "TowTemperature",
    unit: "temperature",
  });
  tow.input("Minutes of towing", 30, { name: "TowMinutes", unit: { word: "minutes" } });
  tow.input("Tested pull of a joint (blank: none)", undefined, { name: "JointPull", unit: "pull" });
  const towed = page.block("G");
  towed.result(
    "Outside of the tubing at the hitch",
    `=IRRIG.UNIT.CONVERT(INDEX(Sizes, 1), "mm", IF(Units="SI", "mm", "in"))`,
    {
      name: "HitchOutside",
      unit: "diameter",
    },
  );
  towed.result(
    "Outside at the far end",
    `=IRRIG.UNIT.CONVERT(FarSize, "mm", IF(Units="SI", "mm", "in"))`,
    {
      name: "FarOutside",
      unit: "diameter",
    },
  );
  towed.result(
    "Weight on the ground",
    "=IRRIG.TOW.WEIGHT(HitchOutside, INDEX(Insides, 1), INDEX(Lengths, 1), INDEX(Tubing, 1, 2), HeadWeight, Units, Contents)" +
      "+IF(INDEX(Lengths, 2)=0, 0, IRRIG.TOW.WEIGHT(FarOutside, FarInside, INDEX(Lengths, 2), INDEX(Tubing, 2, 2), HeadWeight, Units, Contents))",
    { name: "TowWeight", unit: "weight" },
  );
  towed.result("Pull at the hitch", "=IRRIG.TOW.PULL(TowWeight, Drag, Units, TowSlope)", {
    name: "Pull",
    unit: "pull",
  });
  towed.result(
    "Safe pull of the smallest tubing",
    "=IRRIG.TOW.SAFEPULL(FarOutside, FarSDR, Yield, Units, TowTemperature, TowMinutes, JointPull)",
    { name: "SafePull", unit: "pull" },
  );
  towed.result(
    "Turn no tighter than a radius of",
    '=IRRIG.TOW.BEND(HitchOutside, FarSDR)*IF(Units="SI", 0.001, 1/12)',
    {
      name: "BendRadius",
      unit: "length",
    },
  );
  page.below(tow, towed);
  const check = page.block("A");
  check.check("Pull and the tubing", "=IRRIG.CHECK.PULL(Pull, SafePull)", SENTENCE_COLUMNS);
  page.below(check);

  page.heading("4  Before the frost, empty these too");
  for (const text of [
    "Trapped water breaks metal first. In this order, with the power locked out and every gauge at zero:",
    "Pump: take out the drain plugs of the casing and of the suction side; turn the shaft by hand once; leave the plugs with the key.",
    "Filter and screens: open the drain, lift the element out, leave the lid loose.",
    "Valves: half open, so that none holds water behind it; take backflow devices and gauges in.",
    "Risers and the main: open the lowest drain and the highest vent; a main without a fall needs a licensed crew with low-pressure air, never through a pump, a regulator or a relief valve.",
    "Line: end caps off, quick connects open, heads lying down so that risers empty.",
  ]) {
    page.text(text);
  }
  page.gap();
  page.cautionsFor("pressure", "towing", "compressed air", "electricity", "overhead wires");
  page.printOnOnePage();
  return page.build();
}
