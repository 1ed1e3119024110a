/** A function's value and slope at a point. A value that overflows is Infinity (or NaN). */
export interface Sample {
  value: number;
  slope: number;
}

/**
 * The root of a function that rises from below 0 at `low` to 0 or more at `high`: Newton's method
 * kept inside a bracket that every step narrows, with the bracket halved instead wherever Newton
 * leaves it, has no finite value to go by, or fails to halve the residual. So it ends for every
 * input, in three or four steps for an ordinary one.
 *
 * Gives the point whose value is within `tolerance`, or the lower of two neighbouring numbers
 * between which the value jumps over the tolerance; `sample` was last asked for the point given.
 */
export function increasingRoot(
  sample: (x: number) => Sample,
  low: number,
  high: number,
  guess: number,
  tolerance: number,
): number {
  let below = low;
  let above = high;
  let x = guess > below && guess < above ? guess : middle(below, above);
  let previous = Infinity;
  while (x > below && x < above) {
    const { value, slope } = sample(x);
    const size = Math.abs(value);
    if (size <= tolerance) return x;
    if (value < 0) below = x;
    else above = x;
    const newton = x - value / slope;
    const trusted = size <= previous / 2 && newton > below && newton < above;
    x = trusted ? newton : middle(below, above);
    previous = size;
  }
  // The ends were not sampled, or not last. The upper one may be the root itself.
  if (Math.abs(sample(above).value) <= tolerance) return above;
  sample(below);
  return below;
}

/** Halves without overflow; equal to an end once no number lies between. */
function middle(below: number, above: number): number {
  return below + (above - below) / 2;
}
