import { cautions, type Caution, type CautionSubject } from "../cautions";
import type { Callables } from "../reference";

let own: Callables["cautions"] = undefined;

/** The cautions of an edition come with its help. */
export function takeCautions({ cautions: said }: Pick<Callables, "cautions">): void {
  own = said;
}

export function cautionOf(subject: CautionSubject): Caution {
  return own?.[subject] ?? cautions[subject];
}
