import { InvalidInput } from "../ground/domain-error";
import type { Cell } from "./cell";
import { above, atLeast } from "./limits";
import type { Units } from "./units";

/** A length of pipe of one size, SI. */
export interface Section {
  readonly bore: number;
  readonly length: number;
}

/**
 * Reads pipe of one size or of several: `inside` and `length` are one value each, or a row or
 * column each with a value per section. A section of no length is allowed (a size that is listed
 * and not used), and the sizes give the count, since hosts hand blank lengths over as 0.
 */
export function readSections(u: Units, inside: Cell, length: Cell): Section[] {
  const bores = u.diameter.readValues("inside", inside, above(0));
  const lengths = u.length.readValues("length", length, atLeast(0));
  while (lengths.length > bores.length && lengths[lengths.length - 1] === 0) lengths.pop();
  if (lengths.length !== bores.length) {
    throw new InvalidInput(
      `inside and length must have the same number of values; got ${bores.length} and ${lengths.length}`,
    );
  }
  return bores.map((bore, i) => ({ bore, length: lengths[i] }));
}
