import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { addIn, interfaceText, methodOf } from "../../build/hosts/calc/parts";
import { codeText, googleName } from "../../build/hosts/google/code";
import { libraryFiles } from "../../build/hosts/library";
import { parameterName } from "../../build/hosts/script-text";
import { type ReleasedShape, releasedFolder } from "../../build/released-shape";
import { exportNameOf } from "../../src/functions/export-name";
import type { FunctionHelp } from "../../src/reference";
import { builtReference } from "../support/built";

/**
 * What saved sheets and scripts of the other editions rely on, against each released shape: the
 * name, and of the arguments the order and which may be left out. New ones stand behind, and may.
 */
const reference = builtReference();

interface Edition {
  readonly name: string;
  /** Of a released function: each argument, and whether it may be left out; undefined where it is gone. */
  shapeOf(help: FunctionHelp): readonly Argument[] | undefined;
}

interface Argument {
  readonly name: string;
  readonly optional: boolean;
}

const idl = interfaceText(reference);
const shown = addIn(reference);
const script = codeText(reference);
const types = String(libraryFiles(reference).get("index.d.ts"));

/** Names that the program shows, in the order of the interface's arguments; "any" may be left out. */
function inCalc(help: FunctionHelp): Argument[] | undefined {
  const declared = new RegExp(` ${methodOf(help)}\\(([^)]*)\\);`).exec(idl)?.[1];
  const node = shown
    .split(`<node oor:name="${methodOf(help)}" oor:op="replace">`)[1]
    ?.split('<prop oor:name="Category">');
  if (declared === undefined || node === undefined) return undefined;
  if (!node[0].includes(`>${reference.namespace}.${help.name}<`)) return undefined;
  const names = [...node[1].split('oor:op="replace"><prop oor:name="DisplayName"').slice(1)].map(
    (part) => /<value xml:lang="en-US">([^<]*)</.exec(part)?.[1] ?? "",
  );
  const kinds = declared === "" ? [] : declared.split(/, (?=\[in\])/);
  return kinds.map((kind, i) => ({ name: names[i], optional: kind.startsWith("[in] any ") }));
}

/** What may be left out has its mark in the help; the language itself lets all be left out. */
function inGoogle(help: FunctionHelp): Argument[] | undefined {
  const name = googleName(reference.namespace, help.id);
  const [before, after] = script.split(`function ${name}(`);
  if (after === undefined) return undefined;
  const comment = before.slice(before.lastIndexOf("/**"));
  return list(after.slice(0, after.indexOf(")"))).map((argument) => ({
    name: argument,
    optional: comment.includes(` [${argument}] `),
  }));
}

function inLibrary({ id }: FunctionHelp): Argument[] | undefined {
  const [, after] = types.split(`export declare function ${exportNameOf(id)}(`);
  if (after === undefined) return undefined;
  return list(after.slice(0, after.indexOf("):"))).map((part) => {
    const [name] = part.split(":");
    return { name: name.replace("?", ""), optional: name.endsWith("?") };
  });
}

function list(text: string): string[] {
  return text.split(/,\s*(?=\w+\??(?::|,|$))/).filter((part) => part !== "");
}

const editions: readonly Edition[] = [
  { name: "Calc", shapeOf: inCalc },
  { name: "Google Sheets", shapeOf: inGoogle },
  { name: "the library", shapeOf: inLibrary },
];

const versions = readdirSync(releasedFolder).filter((file) => file.endsWith(".json"));

test("there is a released version to hold to", () => {
  expect(versions.length).toBeGreaterThan(0);
});

describe.each(versions)("calls shaped by %s", (file) => {
  const released = JSON.parse(readFileSync(join(releasedFolder, file), "utf8")) as ReleasedShape;

  test.each(editions)("still fit $name", ({ shapeOf }) => {
    for (const old of released.functions) {
      const help = reference.functions.find(({ id }) => id === old.id);
      const now = help === undefined ? undefined : shapeOf(help);
      const begins = now?.slice(0, old.arguments.length);
      const wanted = old.arguments.map(({ name, optional }, i) => ({
        name: shapeOf === inCalc ? name : parameterName(name),
        // What had to be given may become optional.
        optional: optional || now?.[i]?.optional === true,
      }));
      expect([old.id, begins]).toEqual([old.id, wanted]);
      const added = now?.slice(old.arguments.length) ?? [];
      expect([old.id, added.filter(({ optional }) => !optional)]).toEqual([old.id, []]);
    }
  });
});
