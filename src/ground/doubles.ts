/** Filled with fractions first, then with 0: a list of fractions stays one. */
const READY = new Array<number>(512).fill(0.5).fill(0);

/**
 * A list of zeros, to be written over. The engine keeps lists of whole numbers and of fractions
 * apart, and copies one anew when the first fraction is written to it: a slice of a list of
 * fractions has room for them from the start.
 */
export function zeros(count: number): number[] {
  return count <= READY.length ? READY.slice(0, count) : new Array<number>(count).fill(0);
}

/** A list of one number over and over. */
export function alike(value: number, count: number): number[] {
  return zeros(count).fill(value);
}
