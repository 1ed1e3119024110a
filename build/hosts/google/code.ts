import { readyMadeSheets } from "../../../src/sheets";
import type { ArgumentHelp, FunctionHelp, Reference } from "../../../src/reference";
import { literalArguments } from "../../../src/formula-text/dialect";
import { inComment, parameterName } from "../script-text";

/** IRRIG_LATERAL_PRESSURE: a name of a script's function has no dots. */
export function googleName(namespace: string, id: string): string {
  return `${namespace}_${id}`;
}

/** Code.gs: every function declared with its help, and the menu. */
export function codeText({ namespace, functions }: Reference): string {
  return [
    "// Made from the catalogue of the functions: not to be edited by hand.",
    ...functions.map((help) => declaration(namespace, help)),
    menuText(),
  ].join("\n\n");
}

function declaration(namespace: string, help: FunctionHelp): string {
  const names = help.arguments.map(({ name }) => parameterName(name));
  const given = literalArguments(help.example);
  return [
    "/**",
    ` * ${inComment(`${help.short} Gives: ${help.returns}`)}`,
    " *",
    ...help.arguments.map(
      (argument, i) =>
        ` * @param {${typeOf(argument, given[i])}} ${argument.optional ? `[${names[i]}]` : names[i]} ${inComment(argument.help)}`,
    ),
    ` * @return ${inComment(help.returns)}`,
    " * @customfunction",
    " */",
    `function ${googleName(namespace, help.id)}(${names.join(", ")}) {`,
    `  return FieldsumEngine_.call("${help.id}", [${names.join(", ")}]);`,
    "}",
  ].join("\n");
}

/** What the help says an argument is; of what may be text or a number, what the example gives. */
function typeOf({ range, choices, yesNo, help }: ArgumentHelp, given: unknown): string {
  if (range) return "range";
  if (yesNo === true) return "boolean";
  if (choices !== undefined || typeof given === "string") return "string";
  // A number, or a word that the help has in quotes.
  return typeof given === "number" && !/"\w/.test(help) ? "number" : "any";
}

/** The page of the project that holds a workbook as text. */
export function workbookFile(id: string, system: string): string {
  return `${id}-${system}`;
}

/** "addLineLayoutUS": the menu calls functions of the script by name. */
function commandOf(id: string, system: string): string {
  const words = id.split("-").map((word) => word[0].toUpperCase() + word.slice(1));
  return `add${words.join("")}${system}`;
}

function menuText(): string {
  const entries = readyMadeSheets.flatMap(({ id, title }) =>
    (["US", "SI"] as const).map((system) => ({ id, system, title: `${title} (${system})` })),
  );
  const items = entries.map(
    ({ id, system, title }) => `    .addItem(${JSON.stringify(title)}, "${commandOf(id, system)}")`,
  );
  return [
    `function onOpen() {\n  SpreadsheetApp.getUi()\n    .createMenu("Fieldsum")\n${items.join("\n")}\n    .addToUi();\n}`,
    ...entries.map(
      ({ id, system }) =>
        `function ${commandOf(id, system)}() {\n  FieldsumWriter_.add(SpreadsheetApp, HtmlService, "${workbookFile(id, system)}");\n}`,
    ),
  ].join("\n\n");
}
