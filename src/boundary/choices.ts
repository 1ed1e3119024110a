import { InvalidInput } from "../ground/domain-error";
import { type Cell, describe, isBlank, single } from "./cell";

/** Case, spaces, hyphens, underscores and dots do not tell two entries apart. */
export function spelling(text: string): string {
  return text.toLowerCase().replace(/[\s\-_./,()]+/g, "");
}

/** Blank for a choice: hosts may hand an empty cell over as 0, "0" or "". */
function isBlankChoice(value: Cell): boolean {
  return isBlank(value) || value === 0 || value === "0";
}

/**
 * Reads a choice from a list of allowed entries, in any reasonable spelling. `aliases` maps
 * further spellings to entries.
 */
export function readChoice<T extends string>(
  name: string,
  cell: Cell,
  allowed: readonly T[],
  aliases: Readonly<Record<string, T>> = {},
): T {
  const found = readOptionalChoice(name, cell, allowed, aliases);
  if (found === undefined) {
    throw new InvalidInput(`${name} is missing: it must be one of ${listed(allowed)}`);
  }
  return found;
}

/** As readChoice, but undefined when blank. */
export function readOptionalChoice<T extends string>(
  name: string,
  cell: Cell,
  allowed: readonly T[],
  aliases: Readonly<Record<string, T>> = {},
): T | undefined {
  const value = single(name, cell);
  if (isBlankChoice(value)) return undefined;
  if (typeof value === "string") {
    const wanted = spelling(value);
    const entry = allowed.find((candidate) => spelling(candidate) === wanted);
    if (entry !== undefined) return entry;
    for (const [alias, target] of Object.entries(aliases)) {
      if (spelling(alias) === wanted) return target;
    }
  }
  throw new InvalidInput(refusal(name, value, allowed));
}

/** Up to here a list is read at a glance, and may stand before what came. */
const SHORT_LIST = 8;

/** A long list would bury what came: that stands first, then the entries that may be meant. */
function refusal(name: string, value: Cell, allowed: readonly string[]): string {
  const came = describe(value);
  if (allowed.length <= SHORT_LIST) return `${name} must be one of ${listed(allowed)}; got ${came}`;
  const close = typeof value === "string" ? allowed.filter((entry) => isLike(entry, value)) : [];
  const hint = close.length === 0 ? "" : ` Did you mean: ${listed(close)}?`;
  return `unknown ${name} ${came}.${hint} It must be one of ${listed(allowed)}`;
}

/** Whether two texts share a word of three letters or more. */
function isLike(entry: string, typed: string): boolean {
  const words = (text: string) => text.toLowerCase().match(/[a-z]{3,}/g) ?? [];
  const wanted = new Set(words(typed));
  return words(entry).some((word) => wanted.has(word));
}

/** Reads TRUE or FALSE; a blank (or a 0, as hosts hand blanks over) is FALSE. */
export function readYesNo(name: string, cell: Cell): boolean {
  const value = single(name, cell);
  if (isBlankChoice(value)) return false;
  if (typeof value === "boolean") return value;
  // A cell that is formatted as text, or that another program filled, holds the word.
  const word = typeof value === "string" ? value.trim().toUpperCase() : "";
  if (word === "TRUE" || word === "FALSE") return word === "TRUE";
  throw new InvalidInput(`${name} must be TRUE or FALSE; got ${describe(value)}`);
}

function listed(allowed: readonly string[]): string {
  return allowed.map((entry) => `"${entry}"`).join(", ");
}
