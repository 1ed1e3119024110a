import type { FunctionHelp } from "../../src/reference";
import { hostile } from "../fuzz/hostile";
import { HostError } from "../support/host";
import { Chance } from "../support/chance";
import { type Sample, samplesOf } from "../support/samples";

/** One call of the add-in's own script, and what it gave. */
export interface Called {
  readonly id: string;
  readonly cells: readonly unknown[];
  readonly outcome:
    { readonly value: unknown } | { readonly code: string; readonly message: string };
}

export const SEED = 18;
/** Calls of each function. */
const EACH = 320;

/** Calls of every function: its example, wrong kinds for each argument, values near and far. */
export function corpus(
  functions: readonly FunctionHelp[],
  call: (id: string, cells: readonly unknown[]) => unknown,
  each = EACH,
): Called[] {
  const chance = new Chance(SEED);
  return samplesOf(functions).flatMap((sample) => {
    const calls = [sample.cells, ...wrongKinds(sample)].slice(0, each / 2);
    while (calls.length < each) {
      calls.push(calls.length % 4 === 0 ? anything(chance, sample) : near(chance, sample));
    }
    return calls.map((cells) => {
      const given = cells.map(asHandedOver);
      return {
        id: sample.help.id,
        cells: given,
        outcome: outcome(() => call(sample.help.id, given)),
      };
    });
  });
}

function outcome(run: () => unknown): Called["outcome"] {
  try {
    return { value: run() };
  } catch (error) {
    if (error instanceof HostError) return { code: error.code, message: error.message };
    throw error;
  }
}

const WRONG: readonly unknown[] = [
  null,
  "no such entry",
  true,
  0,
  -1,
  1e9,
  "SI",
  [
    [1, 2],
    [3, 4],
  ],
];

function wrongKinds({ help, cells }: Sample): unknown[][] {
  return WRONG.flatMap((wrong) =>
    help.arguments.map((_, place) => cells.map((cell, i) => (i === place ? wrong : cell))),
  );
}

/** Calls that mostly have an answer: a few arguments a little changed, another choice here and there. */
function near(chance: Chance, { help, cells }: Sample): unknown[] {
  return help.arguments.map(({ choices, optional }, i) => {
    if (chance.happens(0.6)) return cells[i];
    if (choices !== undefined) return chance.pick(choices).value;
    if (optional && chance.happens(0.15)) return null;
    return changed(chance, cells[i]);
  });
}

function changed(chance: Chance, cell: unknown): unknown {
  if (Array.isArray(cell)) {
    const alike = 0.9 + 0.2 * chance.next();
    return cell.map((part) =>
      typeof part === "number" && chance.happens(0.7) ? part * alike : changed(chance, part),
    );
  }
  if (typeof cell !== "number") return cell;
  const way = chance.next();
  if (way < 0.6) return cell * (0.8 + 0.4 * chance.next());
  if (way < 0.9) return Math.round(cell * (0.7 + 0.6 * chance.next()));
  return chance.pick([0, -cell, cell * 10, cell / 10, cell * 2]);
}

function anything(chance: Chance, { help, cells }: Sample): unknown[] {
  return help.arguments.map((argument, i) => hostile(chance, cells[i], argument));
}

/** As a cell of this program can hold it: numbers are finite, and there are no other kinds. */
function asHandedOver(cell: unknown): unknown {
  if (Array.isArray(cell)) return cell.map(asHandedOver);
  if (typeof cell === "number") return Number.isFinite(cell) ? cell : null;
  return typeof cell === "string" || typeof cell === "boolean" ? cell : null;
}
