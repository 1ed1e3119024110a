import { type PageBuilder } from "../kit/builder";
import type { PagePlan } from "../kit/workbook";
import type { Field } from "../parts/bluestem-flat";
import { amount, optional, percent, pressure, temperature } from "../parts/limits";
import { COLUMNS } from "../parts/line-blocks";
import { LINE_WITHOUT_INLET } from "../parts/line-inputs";
import { SENTENCE_COLUMNS } from "../parts/sentences";
import { outside } from "../parts/supply";

/** Flush, drain, tow, and what else must be emptied before the frost. */
export function endOfSeasonPage(field: Field): PagePlan {
  return {
    name: "End of season",
    title: "End of season: flush, drain, tow, empty the rest",
    purpose:
      "For the line on the page Water source. Give the ground that it lies on, and what the tubing's manufacturer says of its strength.",
    widths: COLUMNS,
    landscape: true,
    onePage: true,
    write: (page) => endOfSeason(page, field),
  };
}

function endOfSeason(page: PageBuilder, field: Field): void {
  page.heading("1  Flush, with the end cap off");
  const flush = page.block("A");
  flush.input("Flushing velocity", field.flushSpeed, {
    name: "FlushSpeed",
    unit: "speed",
    allowed: amount(0.1, 20),
  });
  flush.input("Times to change the water", 3, { name: "Changes", allowed: amount(0.5, 100) });
  const flushed = page.block("G");
  const far = (range: string) => `=INDEX(${range}, IF(INDEX(Lengths, 2)=0, 1, 2))`;
  flushed.result("Size at the far end (mm)", far("Sizes"), { name: "FarSize", format: "0" });
  flushed.result("SDR there", far("SDRs"), { name: "FarSDR", format: "0.0" });
  flushed.result("Inside there", far("Insides"), { name: "FarInside", unit: "diameter" });
  // Grit settles where the water is slowest: in the widest tubing, not at the far end.
  flushed.result("Flow at the far end", "=IRRIG.FLUSH.FLOW(MAX(Insides), Units, FlushSpeed)", {
    name: "FlushFlow",
    unit: "flow",
    note: "Enough for the flushing velocity in the widest tubing of the line.",
  });
  flushed.result("Velocity there", "=IRRIG.PIPE.VELOCITY(FlushFlow, FarInside, Units)", {
    name: "FarVelocity",
    unit: "speed",
  });
  flushed.result(
    "Lateral inlet pressure",
    `=IRRIG.FLUSH.PRESSURE(FarVelocity, ${LINE_WITHOUT_INLET})`,
    { name: "FlushPressure", unit: "pressure" },
  );
  flushed.result(
    "Run it open, at least",
    "=IRRIG.FLUSH.TIME(FlushFlow, Insides, Lengths, Units, Changes)",
    { name: "FlushMinutes", unit: { word: "minutes" }, format: "0.0" },
  );
  page.below(flush, flushed);
  page.safety("pressure");
  page.gap();

  page.heading("2  Drain, by the ground it lies on");
  const start = page.row;
  const [distances] = page.table(
    "A",
    [
      {
        header: "Distance",
        unit: "length",
        role: "input",
        allowed: amount(0, 100000),
        rows: field.ground.map(([distance]) => distance),
      },
      {
        header: "Ground",
        unit: "length",
        role: "input",
        allowed: amount(-10000, 10000),
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
  drained.input("Opening (blank: the whole end)", undefined, {
    name: "Opening",
    unit: "diameter",
    allowed: optional(amount(0, 2000)),
  });
  drained.result("Water in the line", "=IRRIG.DRAIN.VOLUME(Insides, Lengths, Units)", {
    name: "LineVolume",
    unit: "pipeVolume",
  });
  drained.result(
    "Water left in low spots (at most)",
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
  tow.input("Weight of a sprinkler on its stand", field.headWeight, {
    name: "HeadWeight",
    unit: "weight",
    allowed: amount(0, 1000),
  });
  tow.input("The line is", "drained", { name: "Contents", allowed: { list: ["drained", "full"] } });
  tow.input("Drag on the ground", 0.45, {
    name: "Drag",
    allowed: amount(0, 2),
    note: "Pull over weight: 0.3 to 0.6 is common on grass, without a published source. Measure it with a scale in the tow rope.",
  });
  tow.input("Slope of the pull", field.slope, {
    name: "TowSlope",
    unit: { word: "%" },
    allowed: percent,
  });
  tow.input("Yield strength of the tubing", field.yield, {
    name: "Yield",
    unit: "pressure",
    allowed: { ...pressure, high: 100000 },
  });
  tow.input("Tubing wall, that day", field.towTemperature, {
    name: "TowTemperature",
    unit: "temperature",
    allowed: temperature,
  });
  tow.input("Minutes of towing", 30, {
    name: "TowMinutes",
    unit: { word: "minutes" },
    allowed: amount(0.1, 1440),
  });
  tow.input("Tested pull of a joint (blank: none)", undefined, {
    name: "JointPull",
    unit: "pull",
    allowed: optional(amount(0, 1000000)),
  });
  const towed = page.block("G");
  towed.result("Outside of the tubing at the hitch", `=${outside("INDEX(Sizes, 1)")}`, {
    name: "HitchOutside",
    unit: "diameter",
  });
  towed.result("Outside at the far end", `=${outside("FarSize")}`, {
    name: "FarOutside",
    unit: "diameter",
  });
  towed.result(
    "Weight of the water left in low spots",
    '=IF(Contents="drained", Trapped*IRRIG.WATER.DENSITY(IF(Units="SI", 4, 39.2), Units)*IF(Units="SI", 0.001, 231/1728), 0)',
    { name: "TrappedWeight", unit: "weight" },
  );
  towed.result(
    "Weight on the ground",
    "=IRRIG.TOW.WEIGHT(HitchOutside, INDEX(Insides, 1), INDEX(Lengths, 1), INDEX(Tubing, 1, 2), HeadWeight, Units, Contents)" +
      "+IF(INDEX(Lengths, 2)=0, 0, IRRIG.TOW.WEIGHT(FarOutside, FarInside, INDEX(Lengths, 2), INDEX(Tubing, 2, 2), HeadWeight, Units, Contents))+TrappedWeight",
    { name: "TowWeight", unit: "weight" },
  );
  towed.result("Pull at the hitch", "=IRRIG.TOW.PULL(TowWeight, Drag, Units, TowSlope)", {
    name: "Pull",
    unit: "pull",
  });
  const bears = (outsideOf: string, sdr: string) =>
    `IRRIG.TOW.SAFEPULL(${outsideOf}, ${sdr}, Yield, Units, TowTemperature, TowMinutes, JointPull)`;
  towed.result(
    "Allowable pull of the weakest tubing",
    `=MIN(${bears("HitchOutside", "INDEX(SDRs, 1)")}, ${bears("FarOutside", "FarSDR")})`,
    { name: "SafePull", unit: "pull" },
  );
  const toLength = '*IF(Units="SI", 0.001, 1/12)';
  towed.result(
    "Turn no tighter than a radius of",
    `=MAX(IRRIG.TOW.BEND(HitchOutside, INDEX(SDRs, 1)), IRRIG.TOW.BEND(FarOutside, FarSDR))${toLength}`,
    { name: "BendRadius", unit: "length" },
  );
  towed.result(
    "With a saddle or coupler in the bend",
    `=100*MAX(HitchOutside, FarOutside)${toLength}`,
    {
      name: "FittedBendRadius",
      unit: "length",
      note: "A hundred outside diameters: published guidance for polyethylene, from memory.",
    },
  );
  page.below(tow, towed);
  const check = page.block("A");
  check.check("Pull and the tubing", "=IRRIG.CHECK.PULL(Pull, SafePull)", SENTENCE_COLUMNS);
  page.below(check);
  page.safety("towing", "overhead wires");
  page.gap();

  page.heading("4  Before the frost, empty these too");
  for (const text of [
    "Trapped water breaks metal first. In this order, with the power locked out and the lowest drain open until nothing runs (a gauge at zero is no proof):",
    "Pump: take out the drain plugs of the casing and of the suction side; turn the shaft by hand once; leave the plugs with the key.",
    "Filter and screens: open the drain, lift the element out, leave the lid loose.",
    "Valves: half open, so that none holds water behind it; take backflow devices and gauges in.",
    "Risers and the main: open the lowest drain and the highest vent; a main without a fall needs a qualified contractor with low-pressure air, never through a pump, a regulator or a relief valve.",
    "Line: end caps off, quick connects open, sprinklers lying down so that risers empty.",
  ]) {
    page.text(text);
  }
  page.gap();
  page.safety("compressed air", "electricity");
}
