import { InvalidInput } from "../ground/domain-error";
import type { Tubing } from "../formulas/tubing-weight";
import type { Cell } from "./cell";
import { above } from "./limits";
import { readSections } from "./sections";
import type { Units } from "./units";

/** Reads tubing of one size or of several: outside, inside and length, a value of each per section. */
export function readTubing(u: Units, outside: Cell, inside: Cell, length: Cell): Tubing[] {
  const outsides = u.diameter.readValues("outside", outside, above(0));
  const sections = readSections(u, inside, length);
  if (outsides.length !== sections.length) {
    throw new InvalidInput(
      `outside and inside must have the same number of values; got ${outsides.length} and ${sections.length}`,
    );
  }
  return sections.map(({ bore, length: part }, i) => {
    if (bore >= outsides[i]) {
      throw new InvalidInput(
        `inside must be below outside; got ${u.diameter.say(bore)} in tubing of ${u.diameter.say(outsides[i])}`,
      );
    }
    return { outside: outsides[i], inside: bore, length: part };
  });
}
