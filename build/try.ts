import { readyMadeSheets } from "../src/sheets";
import type { UnitSystem } from "../src/sheets/kit/definition";
import { DEFAULT_NAMESPACE } from "../src/formula-text/dialect";
import { evaluate } from "./sheet-evaluator";
import { answersOf, inputsOf, type Typed, WrongInput, withTyped } from "./typed-sheet";

/**
 * Asks a ready-made sheet from the command line, as it ships, with other inputs:
 *
 *     npm run --silent try -- line-layout US Rise=-60 FeederSDR=26 'Sizes=[[75],[63]]'
 *     npm run --silent try -- list
 */
async function main([id, system, ...typed]: readonly string[]): Promise<void> {
  if (id === "list") {
    print(
      readyMadeSheets.map((sheet) => ({
        workbook: sheet.id,
        title: sheet.title,
        inputs: inputsOf(sheet.pages("US")).map(({ name }) => name),
      })),
    );
    return;
  }
  const sheet = readyMadeSheets.find((other) => other.id === id);
  if (sheet === undefined) {
    const known = readyMadeSheets.map((other) => other.id).join(", ");
    throw new WrongInput(`there is no workbook "${id ?? ""}"; there are: ${known}, and list`);
  }
  if (system !== "US" && system !== "SI") {
    throw new WrongInput(`units must be US or SI; got "${system ?? ""}"`);
  }
  const pages = withTyped(sheet.pages(system as UnitSystem), typed.map(readPair));
  print(answersOf(pages, await evaluate(pages, DEFAULT_NAMESPACE)));
}

/** "Name=value": the value as JSON, or as the text that it is. */
function readPair(pair: string): readonly [string, Typed] {
  const at = pair.indexOf("=");
  if (at < 1) throw new WrongInput(`"${pair}" is not of the form Name=value`);
  const text = pair.slice(at + 1);
  return [pair.slice(0, at), readValue(text)];
}

function readValue(text: string): Typed {
  try {
    return JSON.parse(text) as Typed;
  } catch {
    return text;
  }
}

function print(what: unknown): void {
  process.stdout.write(`${JSON.stringify(what, null, 2)}\n`);
}

main(process.argv.slice(2)).catch((error: unknown) => {
  if (!(error instanceof WrongInput)) throw error;
  process.stderr.write(`${error.message}\n`);
  process.exitCode = 2;
});
