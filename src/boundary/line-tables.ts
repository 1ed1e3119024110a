import { meanSpeed } from "../formulas/mean-speed";
import type { PricedTubing } from "../solver/changeover";
import { dryHeads, firstInAir, waterAt } from "../solver/dry-heads";
import { greatestSpeed } from "../solver/line-limits";
import { highestInLine, lowestUnderRegulator } from "../solver/line-pressures";
import type { SolvedLine } from "../solver/solve-line";
import { spreadOf } from "../solver/spread";
import type { LineWithoutTubing } from "./line";
import type { Asked } from "./solved-line";
import { type Spill, spillPairs, spillTable } from "./table";
import type { Measures } from "./units";

/** One row a head: what the water does from the inlet to the far end. */
export function profileTable({ u, solved }: Asked): Spill {
  const { line } = solved;
  let distance = 0;
  return spillTable(
    [
      { header: "head" },
      { header: "distance", unit: u.length.unit },
      { header: "elevation", unit: u.length.unit },
      { header: "inside diameter", unit: u.diameter.unit },
      { header: "line pressure", unit: u.pressure.unit },
      { header: "nozzle pressure", unit: u.pressure.unit },
      { header: "head flow", unit: u.flow.unit },
      { header: "segment flow", unit: u.flow.unit },
      { header: "speed", unit: u.speed.unit },
      { header: "friction loss", unit: u.pressure.unit },
      { header: "water" },
    ],
    solved.headFlow.map((headFlow, i) => {
      distance += line.segmentLength[i];
      return [
        i + 1,
        u.length.give(distance),
        u.length.give(line.elevation[i]),
        u.diameter.give(line.bore[i]),
        u.pressure.give(solved.linePressure[i]),
        u.pressure.give(solved.nozzlePressure[i]),
        u.flow.give(headFlow),
        u.flow.give(solved.segmentFlow[i]),
        u.speed.give(meanSpeed(solved.segmentFlow[i], line.bore[i])),
        u.pressure.give(solved.segmentLoss[i]),
        waterAt(solved, i),
      ];
    }),
  );
}

/** Label and value: the line at a glance. */
export function summaryTable({ u, solved }: Asked): Spill {
  const { line, nozzlePressure } = solved;
  const pressure = spreadOf(nozzlePressure);
  const flow = spreadOf(solved.headFlow);
  const { lowest, highest } = line.discharge;
  const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
  const outside = nozzlePressure.filter((value) => value < lowest || value > highest);
  const inLine = highestInLine(solved);
  const underRegulator = lowestUnderRegulator(solved);
  return spillPairs([
    [{ header: "flow into the lateral", unit: u.flow.unit }, u.flow.give(solved.inflow)],
    [{ header: "lowest nozzle pressure", unit: u.pressure.unit }, u.pressure.give(pressure.lowest)],
    [{ header: "lowest at head" }, pressure.lowestAt + 1],
    [
      { header: "highest nozzle pressure", unit: u.pressure.unit },
      u.pressure.give(pressure.highest),
    ],
    [{ header: "highest at head" }, pressure.highestAt + 1],
    [
      { header: "average nozzle pressure", unit: u.pressure.unit },
      u.pressure.give(pressure.average),
    ],
    [{ header: "pressure variation" }, orNothing(pressure.variation)],
    [{ header: "flow variation" }, orNothing(flow.variation)],
    [{ header: "friction lost", unit: u.pressure.unit }, u.pressure.give(sum(solved.segmentLoss))],
    [{ header: "greatest speed", unit: u.speed.unit }, u.speed.give(greatestSpeed(solved))],
    [{ header: "length", unit: u.length.unit }, u.length.give(sum(line.segmentLength))],
    [{ header: "heads outside the chart's pressures" }, outside.length],
    [{ header: "heads without pressure" }, dryHeads(solved.headFlow)],
    [{ header: "highest line pressure", unit: u.pressure.unit }, u.pressure.give(inLine.pressure)],
    [
      { header: "highest line pressure at head" },
      inLine.head === undefined ? "inlet" : inLine.head + 1,
    ],
    [
      { header: "lowest pressure under a regulator", unit: u.pressure.unit },
      underRegulator === undefined ? "" : u.pressure.give(underRegulator),
    ],
    [{ header: "air in the line" }, airInWords(solved)],
  ]);
}

/** Where the line stops being a full pipe, and why. */
function airInWords(solved: SolvedLine): string {
  const head = firstInAir(solved);
  if (head < 0) return "none";
  return waterAt(solved, head) === "part full"
    ? `gets in at head ${head + 1}: beyond it the water runs down part full, not as in a siphon`
    : `from head ${head + 1} on: it stands above what is left of the pressure, and no water passes it`;
}

/** A line that is dry all along has no average to vary from. */
function orNothing(variation: number): number | string {
  return Number.isNaN(variation) ? "" : variation;
}

/** One row a size, large to small from the inlet, those not used too: how much of each to lay. */
export function layoutTable(
  u: Measures,
  line: LineWithoutTubing,
  sizes: readonly PricedTubing[],
  layout: readonly number[],
): Spill {
  let laid = 0;
  return spillTable(
    [
      { header: "inside diameter", unit: u.diameter.unit },
      { header: "segments" },
      { header: "length", unit: u.length.unit },
      { header: "cost" },
    ],
    sizes.map(({ bore, price }, i) => {
      const lengths = line.segmentLength.slice(laid, laid + layout[i]);
      laid += layout[i];
      const length = lengths.reduce((total, part) => total + part, 0);
      return [u.diameter.give(bore), layout[i], u.length.give(length), length * price];
    }),
  );
}
