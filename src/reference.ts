import type { Caution, CautionSubject } from "./cautions";

/**
 * What the build reads from the doc comments beyond the host's metadata: the one text behind the
 * reference pages, the trial page and the task pane. Written to dist/reference.json.
 */
export interface Reference {
  /** Namespace of this build, as it stands before every function's name in a formula. */
  readonly namespace: string;
  readonly version: string;
  /** By family as in the catalogue, then as in the catalogue. */
  readonly functions: readonly FunctionHelp[];
  /** In an edition other than English: its own. */
  readonly cautions?: Readonly<Record<CautionSubject, Caution>>;
}

/**
 * What of it has to be known to call the functions and to say the cautions: a tenth of it, which a
 * page can load before its first answer. Written to dist/callables.json.
 */
export interface Callables {
  readonly namespace: string;
  readonly functions: readonly {
    readonly id: string;
    readonly name: string;
    readonly arguments: readonly { readonly name: string; readonly range: boolean }[];
  }[];
  readonly cautions?: Reference["cautions"];
}

export function callablesOf({ namespace, functions, cautions }: Reference): Callables {
  return {
    namespace,
    functions: functions.map((help) => ({
      id: help.id,
      name: help.name,
      arguments: help.arguments.map(({ name, range }) => ({ name, range })),
    })),
    ...(cautions && { cautions }),
  };
}

export interface FunctionHelp {
  /** "PIPE_FRICTION": what the host and a saved workbook know it by. */
  readonly id: string;
  /** "PIPE.FRICTION": what a user types behind the namespace. */
  readonly name: string;
  /** "PIPE" */
  readonly family: string;
  /** One sentence. */
  readonly short: string;
  readonly arguments: readonly ArgumentHelp[];
  readonly returns: string;
  /** True where the result fills more than one cell. */
  readonly spills: boolean;
  /** Method, limits, editions. */
  readonly remarks: string;
  /** From where the formula is. */
  readonly source: string;
  readonly errors: string;
  /** Subjects of src/cautions.ts; empty for most. */
  readonly cautions: readonly string[];
  /** A phrase that a user would search for. */
  readonly task: string;
  /** A formula with plain values, written with the default namespace whatever this build's is. */
  readonly example: string;
  /** Address of its reference page, relative to the folder of the pages. */
  readonly page: string;
}

export interface ArgumentHelp {
  readonly name: string;
  readonly help: string;
  readonly optional: boolean;
  /** True where the argument takes a range of cells. */
  readonly range: boolean;
  /** True where it takes TRUE or FALSE, which some hosts hand over as 1 and 0. */
  readonly yesNo?: boolean;
  /** The entries of a choice; undefined where there is no list. */
  readonly choices?: readonly Choice[];
}

export interface Choice {
  readonly value: string;
  readonly help: string;
}
