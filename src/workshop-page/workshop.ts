import type { FunctionHost } from "../screen/host";
import { make } from "../screen/dom";
import { workbookSaid } from "../words/spoken";
import { type CautionSubject, cautions } from "../cautions";
import type { LessonId, WorkshopWords } from "../sheets/books/workshop/words/shape";
import type { UnitSystem } from "../sheets/kit/definition";

/** What every view of the workshop speaks from. */
export interface Workshop {
  readonly words: WorkshopWords;
  readonly host: FunctionHost;
  readonly system: UnitSystem;
}

/** The address that opens a lesson on somebody's phone, in the units of this page. */
export function lessonAddress({ system }: Workshop, number: number): string {
  const units = system === "SI" ? "?units=SI" : "";
  return `${location.origin}${location.pathname}${units}#lesson-${number}`;
}

/** Where what a lesson teaches can hurt someone. */
const subjects: Readonly<Partial<Record<LessonId, readonly CautionSubject[]>>> = {
  hours: ["overhead wires", "towing"],
  pump: ["pressure", "electricity", "water edge"],
  end: ["pressure", "towing", "compressed air"],
};

export function lessonCautions(id: LessonId): HTMLElement[] {
  return (subjects[id] ?? []).map((subject) =>
    make(
      "p",
      { class: "caution" },
      make("strong", {}, `${workbookSaid(cautions[subject].title)}: `),
      workbookSaid(cautions[subject].brief),
    ),
  );
}

export function printButton({ words }: Workshop): HTMLElement {
  const button = make("button", { type: "button", class: "on-screen" }, words.page.print);
  button.addEventListener("click", () => window.print());
  return button;
}
