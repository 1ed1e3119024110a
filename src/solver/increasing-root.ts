/** A function's value and slope at a point. A value that overflows is Infinity (or NaN). */
export interface Sample {
  value: number;
  slope: number;
}

/** Where a root lies; `found` where the value at `low` is within the tolerance. */
export interface Root {
  readonly found: boolean;
  readonly low: number;
  readonly high: number;
}

/**
 * The root of a function that rises from below 0 at `low` to above 0 at `high`: Newton's method
 * kept inside a bracket that every step narrows, with the bracket halved instead wherever Newton
 * leaves it, has no finite value to go by, or fails to halve the residual. So it ends for every
 * input, in three or four steps for an ordinary one.
 *
 * Where the value jumps over the tolerance between two neighboring numbers, these two are given.
 * `sample` was last asked for the `low` of the answer. Without a guess the middle is tried first.
 */
export function closeOnRoot(
  sample: (x: number) => Sample,
  low: number,
  high: number,
  guess: number | undefined,
  tolerance: number,
): Root {
  let below = low;
  let above = high;
  const start = guess ?? NaN;
  let x = start > below && start < above ? start : middle(below, above);
  let previous = Infinity;
  while (x > below && x < above) {
    const { value, slope } = sample(x);
    const size = Math.abs(value);
    if (size <= tolerance) return { found: true, low: x, high: x };
    if (value < 0) below = x;
    else above = x;
    const newton = x - value / slope;
    const trusted = size <= previous / 2 && newton > below && newton < above;
    x = trusted ? newton : middle(below, above);
    previous = size;
  }
  const found = Math.abs(sample(below).value) <= tolerance;
  return { found, low: below, high: above };
}

/** As closeOnRoot, for a function that does not jump: the root alone. */
export function increasingRoot(
  sample: (x: number) => Sample,
  low: number,
  high: number,
  guess: number | undefined,
  tolerance: number,
): number {
  return closeOnRoot(sample, low, high, guess, tolerance).low;
}

/** Halves without overflow; equal to an end once no number lies between. */
function middle(below: number, above: number): number {
  return below + (above - below) / 2;
}
