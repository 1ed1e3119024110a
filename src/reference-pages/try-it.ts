import type { FunctionHelp } from "../reference";
import { type LiteralArgument, literalArguments } from "../formula-text/dialect";
import { type CallError, type CellValue, FunctionHost, type Outcome } from "../screen/host";

/** More than any plan needs, few enough to read. */
const DIGITS = 7;

/**
 * The example of a function's page, live: one field an argument, written as in a formula, and the
 * result of the built functions.js below.
 */
export async function startExample(help: FunctionHelp): Promise<void> {
  const form = document.getElementById("try-it") as HTMLFormElement;
  const output = document.getElementById("result") as HTMLElement;
  const formula = document.getElementById("formula") as HTMLElement;
  const fields = help.arguments.map(
    ({ name }) => form.elements.namedItem(name) as HTMLInputElement | HTMLSelectElement,
  );
  let host: FunctionHost;
  try {
    host = await FunctionHost.load(new URL("../functions.js", location.href));
  } catch {
    output.textContent = "The functions could not be loaded, so the example stands still.";
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
      output.replaceChildren(
        paragraph(
          "Write a number, a text in double quotes, TRUE or FALSE, or rows in braces: {35,3.7;45,4.2}",
          "error",
        ),
      );
      return;
    }
    output.replaceChildren(resultOf(host.call(help.id, ...cells)));
  };

  form.addEventListener("input", recompute);
  form.addEventListener("submit", (event) => event.preventDefault());
  for (const field of fields) field.disabled = false;
  recompute();
}

function resultOf(outcome: Outcome): HTMLElement {
  if (outcome.error !== undefined) return errorOf(outcome.error);
  if (Array.isArray(outcome.value)) return tableOf(outcome.value);
  return paragraph(shown(outcome.value), "value");
}

function errorOf({ code, message }: CallError): HTMLElement {
  return paragraph(`${code} ${message}`, "error");
}

function tableOf(rows: CellValue[][]): HTMLElement {
  const table = document.createElement("table");
  for (const row of rows) {
    const line = table.insertRow();
    for (const value of row) {
      const cell = line.insertCell();
      cell.textContent = shown(value);
      if (typeof value === "number") cell.className = "number";
    }
  }
  const frame = document.createElement("div");
  frame.className = "scroll";
  // A wide table scrolls, which must be possible from the keyboard too.
  frame.tabIndex = 0;
  frame.setAttribute("role", "region");
  frame.setAttribute("aria-label", "Result");
  frame.append(table);
  return frame;
}

function shown(value: CellValue): string {
  if (typeof value === "number") return String(Number(value.toPrecision(DIGITS)));
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  return value ?? "";
}

function paragraph(text: string, kind: string): HTMLElement {
  const element = document.createElement("p");
  element.className = kind;
  element.textContent = text;
  return element;
}
