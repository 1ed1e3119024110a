import { cautions, type Caution, type CautionSubject } from "../cautions";
import type { Reference } from "../reference";

let own: Reference["cautions"] = undefined;

/** The cautions of an edition come with its help. */
export function takeCautions(reference: Reference): void {
  own = reference.cautions;
}

export function cautionOf(subject: CautionSubject): Caution {
  return own?.[subject] ?? cautions[subject];
}
