import "../screen/palette.css";
import "../screen/result-table.css";
import "./style.css";
import type { FunctionHelp, Reference } from "../reference";
import { chosenLanguage, keepLanguage } from "../words/chosen";
import { isLanguage, type Language } from "../words/language";
import { startSearch } from "./search";
import { startExample } from "./try-it";

/** Known only while the script is read for the first time: the folder that everything stands in. */
const root = new URL("..", (document.currentScript as HTMLScriptElement).src);

/** One script for every static page: the list gets its search, a function's page its example. */
async function start(): Promise<void> {
  const lang = document.documentElement.lang;
  const language: Language = isLanguage(lang) ? lang : "en";
  if (goesElsewhere(language)) return;
  const functionHelp = document.getElementById("function-help");
  if (functionHelp !== null) {
    const help = JSON.parse(functionHelp.textContent ?? "") as FunctionHelp;
    await startExample(help, new URL("functions.js", root), language);
    return;
  }
  if (document.getElementById("search") === null) return;
  // Each edition of the pages has its own, beside its folder.
  const response = await fetch("../reference.json");
  if (response.ok) startSearch(((await response.json()) as Reference).functions, language);
}

/**
 * A page that there is in the reader's language is left for that one. A link between the languages
 * is a choice, which is kept and goes before the browser's.
 */
function goesElsewhere(language: Language): boolean {
  const links = [...document.querySelectorAll<HTMLAnchorElement>("a[data-language]")];
  for (const link of links)
    link.addEventListener("click", () => keepLanguage(link.dataset.language as Language));
  const wanted = chosenLanguage();
  const other = links.find((link) => link.dataset.language === wanted);
  if (wanted === language || other === undefined) return false;
  const address = new URL(other.href);
  address.search = location.search;
  address.hash = location.hash;
  location.replace(address);
  return true;
}

void start();
