/**
 * What the host allows as a workbook name, so that a refusal comes with its reason and before the
 * host is asked. The host's rules: letter, underscore or backslash first; then letters, digits,
 * periods, underscores, backslashes, question marks; no cell address in either style; 255 at most.
 */
const LONGEST = 255;
const ALLOWED = /^[\p{L}_\\][\p{L}\p{N}_.\\?]*$/u;
const A1 = /^([A-Z]{1,3})([1-9][0-9]*)$/i;
const R1C1 = /^(R[0-9]*C[0-9]*|R[0-9]*|C[0-9]*)$/i;
/** XFD, the last of the host's 16 384 columns, and its 1 048 576 rows. */
const LAST_COLUMN = 16384;
const LAST_ROW = 1048576;

export type NameFault =
  | "empty"
  | "too long"
  | "first character"
  | "characters"
  | "cell address"
  | "true or false"
  | "taken"
  | "namespace";

/** Why the host (or the workbook) would refuse a name; undefined where it would not. */
export function nameFault(
  name: string,
  taken: readonly string[],
  namespace: string,
): NameFault | undefined {
  if (name === "") return "empty";
  if (name.length > LONGEST) return "too long";
  if (!ALLOWED.test(name)) return /^[\p{L}_\\]/u.test(name) ? "characters" : "first character";
  if (isCellAddress(name)) return "cell address";
  if (/^(true|false)$/i.test(name)) return "true or false";
  // The add-in's own functions stand under its namespace; a name there would read like one of them.
  if (name.toUpperCase().startsWith(`${namespace.toUpperCase()}.`)) return "namespace";
  if (taken.some((other) => other.toUpperCase() === name.toUpperCase())) return "taken";
  return undefined;
}

function isCellAddress(name: string): boolean {
  if (R1C1.test(name)) return true;
  const match = A1.exec(name);
  if (match === null) return false;
  let column = 0;
  for (const letter of match[1].toUpperCase()) column = column * 26 + letter.charCodeAt(0) - 64;
  return column <= LAST_COLUMN && Number(match[2]) <= LAST_ROW;
}
