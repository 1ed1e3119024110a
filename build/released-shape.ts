import { existsSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { catalogue } from "../src/catalogue";
import { functionFiles, generate, type HostMetadata } from "./metadata";
import { root, VERSION } from "./settings";

/**
 * What saved workbooks and hosts with a stale functions.json rely on: ids, names, the order and
 * kind of arguments, the entries of choices. Texts may change from release to release; these may
 * only grow at the end.
 */
export interface ReleasedShape {
  readonly functions: readonly {
    readonly id: string;
    readonly name: string;
    readonly arguments: readonly {
      readonly name: string;
      readonly kind: string;
      readonly optional: boolean;
    }[];
    readonly spills: boolean;
  }[];
  readonly choices: Readonly<Record<string, readonly string[]>>;
}

export function shapeOf({ functions, enums }: HostMetadata): ReleasedShape {
  return {
    functions: functions.map(({ id, name, parameters, result }) => ({
      id,
      name,
      arguments: parameters.map((parameter) => ({
        name: parameter.name,
        kind: parameter.customEnumId ?? (parameter.dimensionality === "matrix" ? "range" : "cell"),
        optional: parameter.optional === true,
      })),
      spills: result?.dimensionality === "matrix",
    })),
    choices: Object.fromEntries(
      enums.map(({ id, values }) => [id, values.map(({ stringValue = "" }) => stringValue)]),
    ),
  };
}

/** How `now` would break a workbook or a host that knows `released`. */
export function breaksOf(released: ReleasedShape, now: ReleasedShape): string[] {
  const breaks: string[] = [];
  for (const old of released.functions) {
    const current = now.functions.find(({ id }) => id === old.id);
    if (current === undefined) {
      breaks.push(`${old.id} is gone`);
      continue;
    }
    if (current.name !== old.name) breaks.push(`${old.id} is now named ${current.name}`);
    if (current.spills !== old.spills) breaks.push(`${old.id}: its result changed shape`);
    for (const [place, { name, kind, optional }] of old.arguments.entries()) {
      const argument = current.arguments[place];
      if (argument?.name !== name) {
        breaks.push(`${old.id}: argument ${place + 1} was ${name}, is ${argument?.name}`);
      } else if (argument.kind !== kind) {
        breaks.push(`${old.id}: ${name} was a ${kind}, is a ${argument.kind}`);
      } else if (optional && !argument.optional) {
        breaks.push(`${old.id}: ${name} was optional`);
      }
    }
    for (const { name, optional } of current.arguments.slice(old.arguments.length)) {
      if (!optional) breaks.push(`${old.id}: the new argument ${name} is required`);
    }
  }
  for (const [choice, entries] of Object.entries(released.choices)) {
    const gone = entries.filter((entry) => !(now.choices[choice] ?? []).includes(entry));
    if (gone.length > 0) breaks.push(`${choice} lost ${gone.join(", ")}`);
  }
  return breaks;
}

export const releasedFolder = join(root, "tests", "generic", "released");

/** Written once, when a version is released; never again under the same version. */
function main(): void {
  const path = join(releasedFolder, `${VERSION}.json`);
  if (existsSync(path)) throw new Error(`${VERSION} is released: raise the version first`);
  const { metadata } = generate(functionFiles(), catalogue);
  writeFileSync(path, `${JSON.stringify(shapeOf(metadata), null, 1)}\n`);
  console.log(
    `tests/generic/released/${VERSION}.json holds ${metadata.functions.length} functions`,
  );
}

if (require.main === module) main();
