import type { CautionSubject } from "../cautions";
import { cautionOf } from "../words/caution-texts";
import { make } from "./dom";

/** A caution's points under its title and a sentence that is read without opening it. */
export function cautionText(subject: CautionSubject): HTMLElement {
  const { title, brief, points } = cautionOf(subject);
  return make(
    "details",
    { class: "caution" },
    make("summary", {}, make("span", {}, make("strong", {}, title), make("span", {}, brief))),
    make("ul", {}, ...points.map((point) => make("li", {}, point))),
  );
}
