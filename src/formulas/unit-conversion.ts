import type { ConversionUnit } from "../tables/conversion-units";
import { InvalidInput } from "../ground/domain-error";

/** Digits that a host's cell holds; beyond them stands only the dust of the two factors. */
const DIGITS = 15;
/** Of a temperature it is the difference of two offsets that leaves dust, whatever the size. */
const TEMPERATURE_DECIMALS = 9;

/**
 * A value in another unit of its quantity: out of `from` into SI, from SI into `to`. Factors are
 * those of NIST Special Publication 811 (2008). Example: 1 psi is 2.311 ft of water.
 */
export function convert(value: number, from: ConversionUnit, to: ConversionUnit): number {
  if (from === to) return value;
  const si = (value + from.offset) * from.scale;
  const converted = si / to.scale - to.offset;
  if (from.offset === 0 && to.offset === 0) return Number(converted.toPrecision(DIGITS));
  if (si < 0) throw new InvalidInput(`value is below absolute zero; got ${value} ${from.symbol}`);
  return Number(converted.toFixed(TEMPERATURE_DECIMALS));
}
