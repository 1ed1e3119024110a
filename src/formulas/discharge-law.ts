import { InvalidInput, NoAnswer } from "../ground/domain-error";

/**
 * How a sprinkler head's flow follows from its pressure: q = K·p^x, in pieces.
 *
 * A sprinkler's sheet prints a chart of pressure and flow; between two printed rows the flow is a
 * power law through both, and beyond the ends the end piece goes on. One row (or one coefficient)
 * is the orifice's own law, x = ½. Torricelli's theorem gives the ½; a chart's own exponents catch
 * what a real nozzle does.
 */
export interface DischargeLaw {
  /** Lowest pressure of each piece but the first, Pa, rising. */
  readonly breaks: readonly number[];
  /** K of each piece, m³/s per Pa^x. */
  readonly coefficients: readonly number[];
  readonly exponents: readonly number[];
  /** The chart's own range of pressures, Pa; 0 to Infinity where there is no chart. */
  readonly lowest: number;
  readonly highest: number;
}

/**
 * Steeper than this is a slip in the chart, not a nozzle: an orifice has ½, a worn or flexing one
 * somewhat more. The bound also keeps p^x far from overflow.
 */
const STEEPEST_EXPONENT = 10;

/** The law of one coefficient: q = K √p (SI). */
export function orificeLaw(coefficient: number): DischargeLaw {
  return {
    breaks: [],
    coefficients: [coefficient],
    exponents: [0.5],
    lowest: 0,
    highest: Infinity,
  };
}

/** The law through a chart's rows: pressures rising, flows never falling, all above 0 (SI). */
export function chartLaw(pressures: readonly number[], flows: readonly number[]): DischargeLaw {
  if (pressures.length === 1) {
    const law = orificeLaw(flows[0] / Math.sqrt(pressures[0]));
    return { ...law, lowest: pressures[0], highest: pressures[0] };
  }
  const exponents: number[] = [];
  const coefficients: number[] = [];
  for (let i = 1; i < pressures.length; i++) {
    const exponent = Math.log(flows[i] / flows[i - 1]) / Math.log(pressures[i] / pressures[i - 1]);
    if (exponent > STEEPEST_EXPONENT) {
      throw new InvalidInput(
        `discharge rises too steeply between rows ${i} and ${i + 1} (by rising pressure): check the chart`,
      );
    }
    exponents.push(exponent);
    coefficients.push(flows[i] / pressures[i] ** exponent);
  }
  return {
    breaks: pressures.slice(1, -1),
    coefficients,
    exponents,
    lowest: pressures[0],
    highest: pressures[pressures.length - 1],
  };
}

/** Which piece of the chart a pressure is on: at a break, the one above it. */
export function pieceAt(law: DischargeLaw, pressure: number): number {
  let piece = 0;
  while (piece < law.breaks.length && pressure >= law.breaks[piece]) piece++;
  return piece;
}

/** Flow of a head, m³/s; none without pressure. */
export function headFlow(law: DischargeLaw, pressure: number): number {
  if (pressure <= 0) return 0;
  const piece = pieceAt(law, pressure);
  const exponent = law.exponents[piece];
  // A square root is several times faster than a power, and this is the solver's inner loop.
  const power = exponent === 0.5 ? Math.sqrt(pressure) : pressure ** exponent;
  return law.coefficients[piece] * power;
}

/** A flow this near to a flat piece's own came from it, through units and back. */
const SAME_FLOW = 1e-9;

/**
 * Pressure, Pa, at which a head gives a flow (m³/s): headFlow turned round.
 *
 * Where the chart is flat (exponent 0, as with a flow-controlled nozzle) one flow belongs to many
 * pressures and any other to none.
 */
export function pressureForFlow(law: DischargeLaw, flow: number): number {
  if (flow === 0) return 0;
  const isFlatHere = (exponent: number, piece: number) =>
    exponent === 0 && Math.abs(flow / law.coefficients[piece] - 1) <= SAME_FLOW;
  if (law.exponents.some(isFlatHere)) {
    throw new NoAnswer(
      "discharge does not change with the pressure at this flow, so the flow does not tell the pressure",
    );
  }
  let piece = 0;
  while (piece < law.breaks.length && flow >= headFlow(law, law.breaks[piece])) piece++;
  if (law.exponents[piece] === 0) {
    throw new NoAnswer("discharge gives this flow at no pressure: its chart is flat there");
  }
  return (flow / law.coefficients[piece]) ** (1 / law.exponents[piece]);
}
