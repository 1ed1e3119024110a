import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { cautions, type Caution, type CautionSubject } from "../src/cautions";
import type { ArgumentHelp, Choice, FunctionHelp, Reference } from "../src/reference";
import { cautions as spanishCautions } from "../src/words/es/cautions";
import { arguments_ } from "../src/words/es/help/arguments";
import { choices } from "../src/words/es/help/choices";
import { functions as functionTexts } from "../src/words/es/help/functions";
import { remarks } from "../src/words/es/help/remarks";
import { sources } from "../src/words/es/help/sources";
import type { Language } from "../src/words/language";
import { type Texts, translated, translation } from "../src/words/translate";
import { editionFolder } from "./html";
import { writeReference } from "./metadata";
import { dist, NAMESPACE, VERSION } from "./settings";

/** The functions' help in a language, and the cautions beside it. */
export interface Edition {
  readonly language: Language;
  readonly functions: readonly FunctionHelp[];
  readonly cautions: Readonly<Record<CautionSubject, Caution>>;
}

/** What stands in the doc comments, in Spanish. What has no translation yet stays in English. */
export function spanishEdition(functions: readonly FunctionHelp[]): Edition {
  return {
    language: "es",
    functions: functions.map(inSpanish),
    cautions: Object.fromEntries(
      Object.entries(cautions).map(([subject, { title, brief, points }]) => [
        subject,
        {
          title: translated(title, spanishCautions),
          brief: translated(brief, spanishCautions),
          points: points.map((point) => translated(point, spanishCautions)),
        },
      ]),
    ) as unknown as Edition["cautions"],
  };
}

function inSpanish(help: FunctionHelp): FunctionHelp {
  const say = (text: string) => translated(text, functionTexts);
  return {
    ...help,
    short: say(help.short),
    task: say(help.task),
    returns: say(help.returns),
    errors: say(help.errors),
    remarks: translated(help.remarks, remarks),
    source: translated(help.source, sources),
    arguments: help.arguments.map(argumentInSpanish),
    page: `${editionFolder("es")}${help.page}`,
  };
}

function argumentInSpanish(argument: ArgumentHelp): ArgumentHelp {
  return {
    ...argument,
    help: translated(argument.help, arguments_),
    ...(argument.choices && { choices: argument.choices.map(choiceInSpanish) }),
  };
}

/** By its own help, which tells two entries of one name apart; else by the entry. */
function choiceInSpanish({ value, help }: Choice): Choice {
  return { value, help: translation(help, choices) ?? translation(value, choices) ?? help };
}

/** Every text that an edition has to say, and its translation where there is one. */
export function textsToSay(
  functions: readonly FunctionHelp[],
): readonly (readonly [text: string, said: string | undefined])[] {
  const said = new Map<string, string | undefined>();
  const add = (text: string, texts: Texts) => {
    if (text !== "") said.set(text, translation(text, texts));
  };
  for (const help of functions) {
    for (const text of [help.short, help.task, help.returns, help.errors]) add(text, functionTexts);
    add(help.remarks, remarks);
    // Many are a title and nothing else.
    if (translation(help.source, sources) !== undefined) add(help.source, sources);
    for (const argument of help.arguments) {
      add(argument.help, arguments_);
      for (const { value, help: text } of argument.choices ?? [])
        said.set(text, translation(text, choices) ?? translation(value, choices));
    }
  }
  for (const { title, brief, points } of Object.values(cautions))
    for (const text of [title, brief, ...points]) add(text, spanishCautions);
  return [...said];
}

/** Beside the edition's pages, for its search and for the screens that show it. */
export function writeEditionReference({ language, functions, cautions }: Edition): void {
  const folder = join(dist, editionFolder(language));
  mkdirSync(folder, { recursive: true });
  const reference: Reference = { namespace: NAMESPACE, version: VERSION, functions, cautions };
  writeReference(folder, reference);
}
