import { keepLanguage } from "../words/chosen";
import { type Language, LANGUAGES, OWN_NAMES } from "../words/language";
import { make } from "./dom";

/** The other languages, each by its own name: one that is chosen is kept, and loads the page anew. */
export function languageChoice(label: string, spoken: Language): HTMLElement {
  const buttons = LANGUAGES.filter((language) => language !== spoken).map((language) => {
    const press = make("button", { type: "button", lang: language }, OWN_NAMES[language]);
    press.addEventListener("click", () => {
      keepLanguage(language);
      location.reload();
    });
    return press;
  });
  return make("div", { class: "languages", role: "group", "aria-label": label }, ...buttons);
}
