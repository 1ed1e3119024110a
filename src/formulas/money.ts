import { InvalidInput } from "../ground/domain-error";

/** Digits of a number that a cell shows and a person types; the rest is dust of binary fractions. */
const SHOWN_DIGITS = 15;

/** Beyond this a number of cents is no longer every whole number, so a total could be a cent out. */
const MOST_CENTS = BigInt(Number.MAX_SAFE_INTEGER);

/**
 * The product of some numbers, 0 or more, in whole cents, half a cent up.
 *
 * Each number counts as the decimal that a cell shows, multiplied without rounding: 1.005 is 1.01,
 * though the nearest binary number lies below it, and 3 × 0.335 is 1.01 too.
 */
export function toCents(...factors: readonly number[]): bigint {
  let digits = 1n;
  let exponent = 2;
  for (const factor of factors) {
    // "1.00500000000000e+0": 15 digits and a power of ten.
    const [mantissa, power] = factor.toExponential(SHOWN_DIGITS - 1).split("e");
    digits *= BigInt(mantissa.replace(".", ""));
    exponent += Number(power) - (SHOWN_DIGITS - 1);
  }
  const cents =
    exponent >= 0 ? digits * 10n ** BigInt(exponent) : halfUp(digits, 10n ** BigInt(-exponent));
  return checked(cents);
}

/** A sum of cents that still is exact as a number. */
export function sumOfCents(...parts: readonly bigint[]): bigint {
  return checked(parts.reduce((sum, part) => sum + part, 0n));
}

/** The number that a cell shows with two decimals. */
export function fromCents(cents: bigint): number {
  return Number(cents) / 100;
}

function halfUp(dividend: bigint, divisor: bigint): bigint {
  return (2n * dividend + divisor) / (2n * divisor);
}

function checked(cents: bigint): bigint {
  if (cents > MOST_CENTS) throw new InvalidInput("an amount is too large to give to the cent");
  return cents;
}
