import { cautions, type CautionSubject } from "../cautions";
import { make } from "./dom";

/** A caution's points under its title. */
export function cautionText(subject: CautionSubject): HTMLElement {
  const { title, points } = cautions[subject];
  return make(
    "details",
    { class: "caution" },
    make("summary", {}, title),
    make("ul", {}, ...points.map((point) => make("li", {}, point))),
  );
}
