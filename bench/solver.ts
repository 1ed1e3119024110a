import { orificeLaw } from "../src/formulas/discharge-law";
import { hazenWilliamsCoefficient } from "../src/formulas/hazen-williams";
import { WATER_WEIGHT } from "../src/ground/constants";
import type { Line } from "../src/solver/line";
import { solveLine } from "../src/solver/solve-line";
import { networkEngine, type NetworkLine } from "../tests/support/network-engine";
import { compare, microseconds, type Row } from "./measure";

const HEADS = 50;
const alike = (value: number) => new Array<number>(HEADS).fill(value);

/** Fifty heads at 40 ft in a 3.5 in bore, 55 psi: an ordinary long line. */
export const fiftyHeads: Line = {
  inletPressure: 55 * 6894.757,
  segmentLength: alike(40 * 0.3048),
  bore: alike(3.5 * 0.0254),
  elevation: alike(0),
  riser: 0.5,
  discharge: orificeLaw(2.6e-4 / Math.sqrt(3e5)),
  regulatorSet: alike(Infinity),
  regulatorLoss: alike(0),
  friction: { law: "Hazen–Williams", c: 150 },
};

/** The same line for the network engine, in its units. */
export const networkLine: NetworkLine = {
  inletHead: 55 * 2.311,
  segmentLength: alike(40),
  bore: alike(3.5),
  elevation: alike(1.64),
  coefficient: (2.6e-4 / 6.309e-5) * Math.sqrt(6894.757 / 3e5),
  exponent: 0.5,
  friction: { c: 150 },
};

/** The floor: one march along the line in plain arithmetic, the far end's pressure known. */
function plainMarch(from: Line, lastPressure: number): number {
  const coefficient = from.discharge.coefficients[0];
  const friction = WATER_WEIGHT * hazenWilliamsCoefficient(150, from.bore[0]);
  const riser = WATER_WEIGHT * from.riser;
  let pressure = lastPressure;
  let flow = 0;
  for (let i = HEADS - 1; i >= 0; i--) {
    flow += coefficient * Math.sqrt(pressure - riser);
    pressure += friction * from.segmentLength[i] * flow ** 1.852;
  }
  return pressure;
}

export async function solverRows(): Promise<Row[]> {
  const engine = await networkEngine();
  const lastPressure = solveLine(fiftyHeads).linePressure[HEADS - 1];
  const solve = microseconds(() => solveLine(fiftyHeads));
  const network = microseconds(() => engine.solve(networkLine), 1500);
  const march = microseconds(() => plainMarch(fiftyHeads, lastPressure));
  const darcy: Line = { ...fiftyHeads, friction: { law: "Darcy" } };
  const solveDarcy = microseconds(() => solveLine(darcy));
  return [
    compare(
      "times faster: a 50-head solve against building and solving it in the network engine, warm",
      ["engine", network],
      ["solve", solve],
      { bound: "at least", value: 50 },
    ),
    compare("times a plain march: a 50-head solve", ["solve", solve], ["march", march], {
      bound: "at most",
      value: 8,
    }),
    compare(
      "times Hazen–Williams: a 50-head solve by Darcy–Weisbach",
      ["Darcy–Weisbach", solveDarcy],
      ["Hazen–Williams", solve],
    ),
  ];
}
