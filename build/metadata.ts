import { readdirSync, writeFileSync } from "node:fs";
import { basename, join } from "node:path";
import { parseTree } from "custom-functions-metadata";
import { catalogue } from "../src/catalogue";
import { cautions, type CautionSubject } from "../src/cautions";
import { callablesOf, type FunctionHelp, type Reference } from "../src/reference";
import { argumentName, readDocComments } from "./doc-comments";
import { expandComments } from "./expand-comments";
import { BASE_URL, dist, NAMESPACE, root, VERSION } from "./settings";

type HostFunction = ReturnType<typeof parseTree>["functions"][number];
type HostEnum = ReturnType<typeof parseTree>["enums"][number];

/** dist/functions.json, as hosts read it. */
export interface HostMetadata {
  readonly allowCustomDataForDataTypeAny: boolean;
  readonly functions: readonly HostFunction[];
  readonly enums: readonly HostEnum[];
}

export interface Generated {
  readonly metadata: HostMetadata;
  readonly functions: readonly FunctionHelp[];
  /** Every reason why the two may not be used; empty when all is well. */
  readonly problems: readonly string[];
}

/** What hosts allow; names are held to the strictest of the manifest forms. */
const MOST_DESCRIPTION = 1024;
const MOST_ARGUMENT_DESCRIPTION = 512;
const MOST_ARGUMENT_NAME = 64;
const LEAST_NAME = 3;
const MOST_NAME = 64;
const MOST_BYTES = 500_000;
/** Words joined by dots: a dot keeps a name from ever being a cell's address. */
const NAME = /^[A-Z][A-Z0-9]*(\.[A-Z][A-Z0-9]*)+$/;

/** Reads the doc comments of the files; `ids` is what must be found, in this order. */
export function generate(paths: readonly string[], ids: readonly string[]): Generated {
  const functions: HostFunction[] = [];
  const enums = new Map<string, HostEnum>();
  const help: FunctionHelp[] = [];
  const problems: string[] = [];

  for (const path of paths) {
    const parsed = parseTree(expandComments(path), path);
    for (const { errors } of parsed.extras) {
      problems.push(...errors.map((error) => `${basename(path)}: ${error}`));
    }
    functions.push(
      ...parsed.functions.map((entry) => ({
        ...entry,
        parameters: entry.parameters.map((parameter) => ({
          ...parameter,
          name: argumentName(parameter.name),
        })),
      })),
    );
    for (const listed of parsed.enums) {
      const known = enums.get(listed.id);
      if (known !== undefined && JSON.stringify(known) !== JSON.stringify(listed)) {
        problems.push(`${basename(path)}: the enum ${listed.id} differs from another of its name`);
      }
      enums.set(listed.id, listed);
    }
    const comments = readDocComments(path);
    help.push(...comments.functions);
    problems.push(...comments.problems);
  }

  problems.push(...outOfCatalogue(functions, ids), ...twice(functions), ...tooLong(functions));
  const rank = (entry: { readonly id: string }) => ids.indexOf(entry.id);
  const inOrder = <T extends { readonly id: string }>(list: T[]) =>
    [...list].sort((a, b) => rank(a) - rank(b));
  const metadata: HostMetadata = {
    // Cells with data types would reach an `any` argument as objects; we take plain values.
    allowCustomDataForDataTypeAny: false,
    functions: inOrder(functions).map((entry) => {
      const own = help.find(({ id }) => id === entry.id);
      if (own === undefined) return entry;
      const description = withCaution(entry.description ?? "", own.cautions);
      return { ...entry, description, helpUrl: `${BASE_URL}/${own.page}` };
    }),
    enums: [...enums.values()].sort((a, b) => (a.id < b.id ? -1 : 1)),
  };
  if (JSON.stringify(metadata).length > MOST_BYTES) {
    problems.push(`the metadata is larger than ${MOST_BYTES} bytes`);
  }
  return { metadata, functions: inOrder(help), problems };
}

/** The help in a host's cell has room for one sentence: that of the first subject. */
export function withCaution(description: string, subjects: readonly string[]): string {
  // A subject that there is not is among the problems.
  const first = subjects.find((subject): subject is CautionSubject => subject in cautions);
  if (first === undefined) return description;
  const whole = `${description} Caution: ${cautions[first].brief}`;
  return whole.length <= MOST_DESCRIPTION ? whole : description;
}

function outOfCatalogue(functions: readonly HostFunction[], ids: readonly string[]): string[] {
  const found = new Set(functions.map(({ id }) => id));
  return [
    ...ids
      .filter((id) => !found.has(id))
      .map((id) => `${id} is in the catalogue, but no exported function declares it`),
    ...[...found]
      .filter((id) => !ids.includes(id))
      .map((id) => `${id} is declared, but not in src/catalogue.ts`),
  ];
}

function twice(functions: readonly HostFunction[]): string[] {
  const ids = functions.map(({ id }) => id);
  return [...new Set(ids.filter((id, i) => ids.indexOf(id) !== i))].map(
    (id) => `${id} is declared twice`,
  );
}

function tooLong(functions: readonly HostFunction[]): string[] {
  return functions.flatMap(({ id, name, description = "", parameters }) => {
    const problems: string[] = [];
    if (!NAME.test(name) || name.length < LEAST_NAME || name.length > MOST_NAME) {
      problems.push(
        `${id}: the name ${name} is not words joined by dots, at most ${MOST_NAME} long`,
      );
    }
    if (description.length < 1 || description.length > MOST_DESCRIPTION) {
      problems.push(
        `${id}: the short help has ${description.length} of 1 to ${MOST_DESCRIPTION} characters`,
      );
    }
    for (const parameter of parameters) {
      const length = parameter.description?.length ?? 0;
      if (length > MOST_ARGUMENT_DESCRIPTION) {
        problems.push(
          `${id}: the text of ${parameter.name} has ${length} characters, at most ${MOST_ARGUMENT_DESCRIPTION} are allowed`,
        );
      }
      if (parameter.name.length > MOST_ARGUMENT_NAME) {
        problems.push(`${id}: the argument name ${parameter.name} is too long`);
      }
      if (parameter.repeating) problems.push(`${id}: ${parameter.name} is a repeating argument`);
    }
    return problems;
  });
}

export function functionFiles(): string[] {
  const folder = join(root, "src", "functions");
  return readdirSync(folder)
    .filter((file) => file.endsWith(".ts"))
    .sort()
    .map((file) => join(folder, file));
}

/** The metadata of the functions as they stand, or an error with the whole list of problems. */
export function readMetadata(): Generated {
  const generated = generate(functionFiles(), catalogue);
  if (generated.problems.length > 0) {
    throw new Error(
      `functions.json was not written:\n${generated.problems.map((problem) => `  ${problem}`).join("\n")}`,
    );
  }
  return generated;
}

/** All that is known of the functions, and the little of it that calling them takes. */
export function writeReference(folder: string, reference: Reference): void {
  writeFileSync(join(folder, "reference.json"), `${JSON.stringify(reference, null, 1)}\n`);
  writeFileSync(join(folder, "callables.json"), JSON.stringify(callablesOf(reference)));
}

/** Writes dist/functions.json, dist/reference.json and dist/callables.json. */
export function writeMetadata({ metadata, functions }: Generated): void {
  const reference: Reference = { namespace: NAMESPACE, version: VERSION, functions };
  writeFileSync(join(dist, "functions.json"), `${JSON.stringify(metadata, null, 1)}\n`);
  writeReference(dist, reference);
  console.log(`functions.json: ${functions.length} functions`);
}
