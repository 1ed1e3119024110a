import type { FunctionHelp } from "../reference";
import { type LiteralArgument, literalArguments } from "../formula-text/dialect";
import { localeFor } from "../words/chosen";
import { errorIn, saidIn } from "../words/errors";
import type { Language } from "../words/language";
import { referenceWords } from "../words/words";
import { type CallError, type CellValue, FunctionHost, type Outcome } from "../screen/host";

/** More than any plan needs, few enough to read. */
const DIGITS = 7;

/**
 * The example of a function's page, live: one field an argument, written as in a formula, and the
 * result of the built functions.js below.
 */
export async function startExample(
  help: FunctionHelp,
  functions: URL,
  language: Language,
): Promise<void> {
  const words = referenceWords[language].page;
  const form = document.getElementById("try-it") as HTMLFormElement;
  const output = document.getElementById("result") as HTMLElement;
  const formula = document.getElementById("formula") as HTMLElement;
  const fields = help.arguments.map(
    ({ name }) => form.elements.namedItem(name) as HTMLInputElement | HTMLSelectElement,
  );
  let host: FunctionHost;
  try {
    host = await FunctionHost.load(functions);
  } catch {
    output.textContent = words.notLoaded;
    return;
  }

  const recompute = () => {
    const texts = fields.map((field) => field.value.trim());
    const last = texts.reduce((found, text, place) => (text === "" ? found : place), -1);
    const written = texts.slice(0, last + 1).join(", ");
    formula.textContent = `=${formula.dataset.function}(${written})`;
    let cells: LiteralArgument[];
    try {
      cells = texts.map((text) => (text === "" ? null : literalArguments(`=F(${text})`)[0]));
    } catch {
      output.replaceChildren(paragraph(words.howToWrite, "error"));
      return;
    }
    output.replaceChildren(resultOf(host.call(help.id, ...cells), language));
  };

  form.addEventListener("input", recompute);
  form.addEventListener("submit", (event) => event.preventDefault());
  for (const field of fields) field.disabled = false;
  recompute();
}

function resultOf(outcome: Outcome, language: Language): HTMLElement {
  if (outcome.error !== undefined) return errorOf(outcome.error, language);
  if (Array.isArray(outcome.value)) return tableOf(outcome.value, language);
  return paragraph(shown(outcome.value, language), "value");
}

function errorOf({ code, message }: CallError, language: Language): HTMLElement {
  return paragraph(`${code} ${errorIn(message, language)}`, "error");
}

function tableOf(rows: CellValue[][], language: Language): HTMLElement {
  const table = document.createElement("table");
  for (const row of rows) {
    const line = table.insertRow();
    for (const value of row) {
      const cell = line.insertCell();
      cell.textContent = shown(value, language);
      if (typeof value === "number") cell.className = "number";
    }
  }
  const frame = document.createElement("div");
  frame.className = "scroll";
  // A wide table scrolls, which must be possible from the keyboard too.
  frame.tabIndex = 0;
  frame.setAttribute("role", "region");
  frame.setAttribute("aria-label", referenceWords[language].page.result);
  frame.append(table);
  return frame;
}

function shown(value: CellValue, language: Language): string {
  if (typeof value === "number") return written(Number(value.toPrecision(DIGITS)), language);
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  return value === null ? "" : saidIn(value, language);
}

/** With the reader's own decimal sign, and all digits that the number has. */
function written(value: number, language: Language): string {
  const plain = String(value);
  return language === "en" || plain.includes("e")
    ? plain
    : value.toLocaleString(localeFor(language), { maximumFractionDigits: 20, useGrouping: false });
}

function paragraph(text: string, kind: string): HTMLElement {
  const element = document.createElement("p");
  element.className = kind;
  element.textContent = text;
  return element;
}
