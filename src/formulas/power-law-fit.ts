/** q = coefficient · p^exponent. */
export interface PowerLaw {
  readonly coefficient: number;
  readonly exponent: number;
}

/** Torricelli's exponent: flow of an orifice goes with the square root of the pressure. */
const ORIFICE_EXPONENT = 0.5;

/**
 * The power law that fits a chart best: least squares on logarithms,
 *
 *     x = Σ(ln p − mean)(ln q − mean) / Σ(ln p − mean)²,   ln K = mean ln q − x · mean ln p
 *
 * as any statistics textbook has it. A chart of one row cannot tell an exponent: it gets the
 * orifice's own ½. Example: (25, 10) and (100, 20) give K = 2 and x = ½.
 */
export function fitPowerLaw(pressures: readonly number[], flows: readonly number[]): PowerLaw {
  const logPressures = pressures.map(Math.log);
  const logFlows = flows.map(Math.log);
  const meanPressure = mean(logPressures);
  const meanFlow = mean(logFlows);
  let together = 0;
  let spread = 0;
  logPressures.forEach((logPressure, i) => {
    together += (logPressure - meanPressure) * (logFlows[i] - meanFlow);
    spread += (logPressure - meanPressure) ** 2;
  });
  const exponent = pressures.length === 1 ? ORIFICE_EXPONENT : together / spread;
  return { coefficient: Math.exp(meanFlow - exponent * meanPressure), exponent };
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
