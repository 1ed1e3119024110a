import { functionFiles, generate } from "../../build/metadata";
import { catalogue } from "../../src/catalogue";
import type { ArgumentHelp, FunctionHelp } from "../../src/reference";
import { literalArguments } from "../../src/formula-text/dialect";
import { call, HostError } from "./host";

/** A sheet function with a call that is known to be sound: its own example. */
export interface Sample {
  readonly help: FunctionHelp;
  /** One cell for every argument; null where the example leaves it out. */
  readonly cells: readonly unknown[];
}

export function samplesOf(functions: readonly FunctionHelp[]): Sample[] {
  return functions.map((help) => {
    const given = literalArguments(help.example);
    return { help, cells: help.arguments.map((_, place) => given[place] ?? null) };
  });
}

/** From the sources as they stand; a build is not needed. */
export const samples: readonly Sample[] = samplesOf(generate(functionFiles(), catalogue).functions);

/** Each argument of each function, named "FAMILY.WHAT argument". */
export const sampleArguments: readonly (readonly [string, Sample, ArgumentHelp, number])[] =
  samples.flatMap((sample) =>
    sample.help.arguments.map(
      (argument, place) =>
        [`${sample.help.name} ${argument.name}`, sample, argument, place] as const,
    ),
  );

export function withCell(cells: readonly unknown[], place: number, cell: unknown): unknown[] {
  return cells.map((other, i) => (i === place ? cell : other));
}

export type Outcome =
  { readonly result: unknown; readonly error?: undefined } | { readonly error: HostError };

/** Result or host error; anything else that is thrown goes through. */
export function outcomeOfCall(run: () => unknown): Outcome {
  try {
    return { result: run() };
  } catch (error) {
    if (error instanceof HostError) return { error };
    throw error;
  }
}

export function outcomeOf(name: string, cells: readonly unknown[]): Outcome {
  return outcomeOfCall(() => call(name, ...cells));
}

/** What is wrong with an outcome whatever the arguments were; undefined when nothing is. */
export function faultOf(outcome: Outcome, spills: boolean): string | undefined {
  if (outcome.error !== undefined) {
    const { code, message } = outcome.error;
    if (code !== "#VALUE!" && code !== "#N/A") return `gives ${code}`;
    if (message === "") return "gives an error without a message";
    if (message.startsWith("the function failed")) return message;
    return undefined;
  }
  const { result } = outcome;
  if (Array.isArray(result) !== spills) return `gives ${String(result)}`;
  const cells = Array.isArray(result) ? (result as unknown[][]).flat() : [result];
  const wrong = cells.find(
    (cell) => typeof cell !== "string" && !(typeof cell === "number" && Number.isFinite(cell)),
  );
  if (wrong !== undefined || cells.length === 0) return `gives ${String(wrong)}`;
  return undefined;
}
