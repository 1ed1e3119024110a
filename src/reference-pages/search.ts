import type { FunctionHelp } from "../reference";
import { functionSearch } from "../screen/search";
import type { Language } from "../words/language";
import { referenceWords } from "../words/words";

/** Shows the functions that a question finds, the best first; all by family when it is empty. */
export function startSearch(functions: readonly FunctionHelp[], language: Language): void {
  const words = referenceWords[language].list;
  const field = document.getElementById("search") as HTMLInputElement;
  const families = document.getElementById("families") as HTMLElement;
  const found = document.getElementById("found") as HTMLElement;
  const count = document.getElementById("found-count") as HTMLElement;
  const find = functionSearch(functions);
  const entryOf = new Map(
    [...families.querySelectorAll<HTMLElement>("[data-id]")].map((entry) => [
      entry.dataset.id,
      entry,
    ]),
  );

  const show = () => {
    const question = field.value.trim();
    families.hidden = question !== "";
    found.hidden = question === "";
    if (question === "") {
      count.textContent = "";
      return;
    }
    const entries = find(question).flatMap(({ id }) => entryOf.get(id)?.cloneNode(true) ?? []);
    found.replaceChildren(...entries);
    count.textContent =
      entries.length === 0 ? words.none : words.found(entries.length, functions.length);
  };

  field.addEventListener("input", show);
  // A question may come with the address, and stands in the field again after going back.
  const asked = new URLSearchParams(location.search).get("q");
  if (asked !== null) field.value = asked;
  (document.getElementById("search-form") as HTMLElement).hidden = false;
  show();
}
