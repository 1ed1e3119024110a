/**
 * The only place that spells a formula. A definition holds formulas as a user types them with the
 * default namespace; the screen and the workbook file each have a spelling of their own. The work is
 * done on tokens, so that text inside quotes is never touched.
 */
export const DEFAULT_NAMESPACE = "IRRIG";

export type TokenKind =
  "text" | "sheet" | "number" | "name" | "operator" | "open" | "close" | "comma" | "other";

export interface Token {
  readonly kind: TokenKind;
  readonly text: string;
}

/** In this order; the first that matches wins. Every character of a formula falls into one token. */
const PATTERNS: readonly (readonly [TokenKind, RegExp])[] = [
  ["text", /"(?:[^"]|"")*"/y],
  ["sheet", /'(?:[^']|'')*'/y],
  ["number", /(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?(?![\p{L}_$])/uy],
  ["name", /[\p{L}_$\\][\p{L}\p{N}_$.\\?]*/uy],
  ["open", /[({]/y],
  ["close", /[)}]/y],
  ["comma", /,/y],
  ["operator", /<=|>=|<>|[-+*/^&=<>%:!;@#]/y],
];

/** A formula in tokens, every character in one of them. */
export function tokens(formula: string): Token[] {
  const found: Token[] = [];
  let at = 0;
  while (at < formula.length) {
    const token = tokenAt(formula, at);
    found.push(token);
    at += token.text.length;
  }
  return found;
}

function tokenAt(formula: string, at: number): Token {
  for (const [kind, pattern] of PATTERNS) {
    pattern.lastIndex = at;
    const match = pattern.exec(formula);
    if (match !== null) return { kind, text: match[0] };
  }
  return { kind: "other", text: formula[at] };
}

/** Name tokens that a parenthesis follows. */
function isCall(all: readonly Token[], i: number): boolean {
  return all[i].kind === "name" && all[i + 1]?.text === "(";
}

/** "PIPE.FRICTION" of IRRIG.PIPE.FRICTION; undefined for a native function. */
function sheetName(text: string): string | undefined {
  const prefix = `${DEFAULT_NAMESPACE}.`;
  return text.toUpperCase().startsWith(prefix)
    ? text.slice(prefix.length).toUpperCase()
    : undefined;
}

function respell(formula: string, spell: (all: readonly Token[], i: number) => string): string {
  const all = tokens(formula);
  return all.map((_, i) => spell(all, i)).join("");
}

/** As a user sees and types it: IRRIG.PIPE.FRICTION(… with the namespace of this build. */
export function toScreen(formula: string, namespace = DEFAULT_NAMESPACE): string {
  return respell(formula, (all, i) => {
    const name = isCall(all, i) ? sheetName(all[i].text) : undefined;
    return name === undefined ? all[i].text : `${namespace}.${name}`;
  });
}

/**
 * As the host saves it: without the equals sign, our functions by id under _xldudf_, the host's
 * newer functions under _xlfn., names that LET and LAMBDA introduce under _xlpm.
 */
export function toFile(formula: string, namespace = DEFAULT_NAMESPACE): string {
  const introduced = introducedNames(tokens(formula));
  const spelt = respell(formula, (all, i) => {
    const { text } = all[i];
    if (introduced.has(i)) return `_xlpm.${text}`;
    if (!isCall(all, i)) return text;
    const name = sheetName(text);
    if (name !== undefined) return `_xldudf_${namespace}_${name.replace(/\./g, "_")}`;
    return `${filePrefix(text)}${text}`;
  });
  return spelt.replace(/^=/, "");
}

/** Functions newer than the file format, as far as sheets here may use them. */
const NEWER = new Set(
  (
    "BYCOL BYROW CHOOSECOLS CHOOSEROWS CONCAT DROP EXPAND FORMULATEXT HSTACK IFNA IFS LAMBDA LET " +
    "MAKEARRAY MAP MAXIFS MINIFS REDUCE SCAN SEQUENCE SWITCH TAKE TEXTJOIN TOCOL TOROW UNIQUE VSTACK " +
    "XLOOKUP XMATCH"
  ).split(" "),
);

/** Two of the newer ones carry a second prefix. */
const NEWER_SHEET = new Set(["FILTER", "SORT"]);

function filePrefix(native: string): string {
  const name = native.toUpperCase();
  if (NEWER_SHEET.has(name)) return "_xlfn._xlws.";
  return NEWER.has(name) ? "_xlfn." : "";
}

/** Indices of the tokens that are names which a LET or a LAMBDA around them introduces. */
function introducedNames(all: readonly Token[]): ReadonlySet<number> {
  const found = new Set<number>();
  for (let i = 0; i < all.length; i++) {
    const name = all[i].text.toUpperCase();
    if (!isCall(all, i) || (name !== "LET" && name !== "LAMBDA")) continue;
    const parts = argumentsOf(all, i + 1);
    const last = parts.length - 1;
    const introducing = parts.filter(
      (_, place) => place < last && (name === "LAMBDA" || place % 2 === 0),
    );
    const introduced = new Set(
      introducing.map((part) => all.slice(...part).find((token) => token.kind === "name")?.text),
    );
    for (let inside = parts[0][0]; inside < parts[last][1]; inside++) {
      if (all[inside].kind === "name" && introduced.has(all[inside].text)) found.add(inside);
    }
  }
  return found;
}

/** Start and end (exclusive) of each argument of the call whose parenthesis stands at `open`. */
function argumentsOf(all: readonly Token[], open: number): [number, number][] {
  const parts: [number, number][] = [];
  let depth = 0;
  let start = open + 1;
  for (let i = open; i < all.length; i++) {
    if (all[i].kind === "open") depth++;
    if (all[i].kind === "close") depth--;
    if (depth === 0 || (depth === 1 && all[i].kind === "comma")) {
      parts.push([start, i]);
      start = i + 1;
    }
    if (depth === 0) return parts;
  }
  throw new Error(`a parenthesis is not closed in ${all.map((token) => token.text).join("")}`);
}

/** Our functions that a formula calls, "PIPE.FRICTION", in order and as often as it calls them. */
export function functionsIn(formula: string): string[] {
  const all = tokens(formula);
  return all.flatMap((token, i) => (isCall(all, i) ? (sheetName(token.text) ?? []) : []));
}

/** The host's own functions that a formula calls. */
export function nativeFunctionsIn(formula: string): string[] {
  const all = tokens(formula);
  const introduced = introducedNames(all);
  return all.flatMap((token, i) =>
    isCall(all, i) && !introduced.has(i) && sheetName(token.text) === undefined
      ? token.text.toUpperCase()
      : [],
  );
}

export type Literal = string | number | boolean;

/** A literal, an array constant as rows, null where the argument is left out. */
export type LiteralArgument = Literal | Literal[][] | null;

/**
 * The arguments of a formula that is one call with literals only, as the doc comments' examples
 * are: =IRRIG.PIPE.SIZE(50, 100, 2, {1;2}, "US",, TRUE). Anything else is an error.
 */
export function literalArguments(formula: string): LiteralArgument[] {
  const all = tokens(formula).filter((token) => token.text.trim() !== "");
  if (all[0]?.text !== "=" || !isCall(all, 1)) throw new Error(`${formula} is not one call`);
  const parts = argumentsOf(all, 2);
  const end = parts[parts.length - 1][1];
  if (end !== all.length - 1) throw new Error(`${formula} is more than one call`);
  const cells = parts.map((part) => literalArgument(all.slice(...part)));
  return cells.length === 1 && cells[0] === null ? [] : cells;
}

function literalArgument(part: readonly Token[]): LiteralArgument {
  if (part.length === 0) return null;
  if (part[0].text !== "{") return literal(part);
  const rows: Literal[][] = [[]];
  let start = 1;
  for (let i = 1; i < part.length; i++) {
    const { text } = part[i];
    if (text !== "," && text !== ";" && text !== "}") continue;
    rows[rows.length - 1].push(literal(part.slice(start, i)));
    if (text === ";") rows.push([]);
    start = i + 1;
  }
  return rows;
}

function literal(part: readonly Token[]): Literal {
  const [first, second] = part;
  if (part.length === 1 && first.kind === "text")
    return first.text.slice(1, -1).replace(/""/g, '"');
  if (part.length === 1 && first.kind === "number") return Number(first.text);
  if (part.length === 1 && /^(true|false)$/i.test(first.text)) return /^true$/i.test(first.text);
  if (part.length === 2 && first.text === "-" && second.kind === "number")
    return -Number(second.text);
  throw new Error(`${part.map((token) => token.text).join("")} is not a literal`);
}

/** A formula that is one call: what it calls, as written, and its arguments as text. */
export interface Call {
  readonly name: string;
  readonly arguments: readonly string[];
}

/** Takes a formula that is one call apart; undefined where it is anything else. */
export function oneCall(formula: string): Call | undefined {
  const all = tokens(formula.trim().replace(/^=/, "").trim());
  if (all.length < 3 || !isCall(all, 0)) return undefined;
  let parts: [number, number][];
  try {
    parts = argumentsOf(all, 1);
  } catch {
    return undefined;
  }
  if (parts[parts.length - 1][1] !== all.length - 1) return undefined;
  const texts = parts.map((part) =>
    all
      .slice(...part)
      .map((token) => token.text)
      .join("")
      .trim(),
  );
  return { name: all[0].text, arguments: texts.length === 1 && texts[0] === "" ? [] : texts };
}

/**
 * Renames cells' names and worksheets in a formula: what a sheet needs when it is inserted into a
 * workbook that already has one of the same name. A name is matched whatever its case, as hosts do.
 */
export function rename(
  formula: string,
  names: ReadonlyMap<string, string>,
  sheets: ReadonlyMap<string, string>,
): string {
  const renamed = new Map([...names].map(([from, to]) => [from.toUpperCase(), to]));
  return respell(formula, (all, i) => {
    const { kind, text } = all[i];
    const beforeCell = all[i + 1]?.text === "!";
    if (kind === "sheet" || (kind === "name" && beforeCell)) {
      const sheet = kind === "sheet" ? text.slice(1, -1).replace(/''/g, "'") : text;
      const to = sheets.get(sheet);
      return to === undefined ? text : `'${to.replace(/'/g, "''")}'`;
    }
    if (kind !== "name" || isCall(all, i) || all[i - 1]?.text === "!") return text;
    return renamed.get(text.toUpperCase()) ?? text;
  });
}

/**
 * Back to the default namespace from a formula that a host gives: as its cells show it, or with the
 * prefixes of the file.
 */
export function fromHost(formula: string, namespace = DEFAULT_NAMESPACE): string {
  const shown = `${namespace}.`.toUpperCase();
  const stored = `_xldudf_${namespace}_`.toUpperCase();
  return respell(formula, (all, i) => {
    if (all[i].kind !== "name") return all[i].text;
    const text = all[i].text.replace(/^(?:_xlfn\.)?(?:_xlws\.)?(?:_xlpm\.)?/, "");
    const upper = text.toUpperCase();
    if (!isCall(all, i)) return text;
    if (upper.startsWith(shown)) return `${DEFAULT_NAMESPACE}.${upper.slice(shown.length)}`;
    if (!upper.startsWith(stored)) return text;
    return `${DEFAULT_NAMESPACE}.${upper.slice(stored.length).replace(/_/g, ".")}`;
  });
}
