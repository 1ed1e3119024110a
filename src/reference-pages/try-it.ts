import type { FunctionHelp } from "../reference";
import { type LiteralArgument, literalArguments } from "../formula-text/dialect";
import { localeFor, withPoint } from "../words/chosen";
import { errorSaid, speak, textSaid } from "../words/spoken";
import type { Language } from "../words/language";
import { referenceWords } from "../words/words";
import { formatResult } from "../screen/number-format";
import { resultTable } from "../screen/result-table";
import { type CallError, type CellValue, FunctionHost, type Outcome } from "../screen/host";

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
  const locale = localeFor(language);
  const form = document.getElementById("try-it") as HTMLFormElement;
  const output = document.getElementById("result") as HTMLElement;
  const formula = document.getElementById("formula") as HTMLElement;
  const fields = help.arguments.map(
    ({ name }) => form.elements.namedItem(name) as HTMLInputElement | HTMLSelectElement,
  );
  let host: FunctionHost;
  try {
    [host] = await Promise.all([FunctionHost.load(functions), speak(language)]);
  } catch {
    output.textContent = words.notLoaded;
    return;
  }

  const recompute = () => {
    const texts = fields.map((field) => withPoint(field.value.trim(), locale));
    const last = texts.reduce((found, text, place) => (text === "" ? found : place), -1);
    const written = texts.slice(0, last + 1).join(", ");
    formula.textContent = `=${formula.dataset.function}(${written})`;
    let cells: LiteralArgument[];
    try {
      cells = texts.map(cellOf);
    } catch {
      output.replaceChildren(paragraph(words.howToWrite, "error"));
      return;
    }
    output.replaceChildren(resultOf(host.call(help.id, ...cells), words.result));
  };

  form.addEventListener("input", recompute);
  form.addEventListener("submit", (event) => event.preventDefault());
  for (const field of fields) field.disabled = false;
  recompute();
}

/** "1,5" would be two arguments, of which nobody sees that the second is dropped. */
function cellOf(text: string): LiteralArgument {
  if (text === "") return null;
  const [cell, ...others] = literalArguments(`=F(${text})`);
  if (others.length > 0) throw new Error("more than one argument");
  return cell;
}

function resultOf(outcome: Outcome, title: string): HTMLElement {
  if (outcome.error !== undefined) return errorOf(outcome.error);
  if (Array.isArray(outcome.value)) return resultTable(outcome.value, { label: title });
  return paragraph(shown(outcome.value), "value");
}

function errorOf({ code, message }: CallError): HTMLElement {
  return paragraph(`${code} ${errorSaid(message)}`, "error");
}

function shown(value: CellValue): string {
  return typeof value === "string" ? textSaid(value) : formatResult(value);
}

function paragraph(text: string, kind: string): HTMLElement {
  const element = document.createElement("p");
  element.className = kind;
  element.textContent = text;
  return element;
}
