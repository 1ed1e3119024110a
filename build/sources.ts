import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";
import type { FunctionHelp } from "../src/reference";
import type { Seen } from "../tests/support/published";
import { escaped, plainPage } from "./html";
import { valuesIn, type Declared } from "./published-values";
import { dist, NAMESPACE, root } from "./settings";

/** A check against the outside, as its test states it. */
export interface Check {
  readonly source: string;
  readonly where: string;
  readonly seen: Seen;
  /** "PIPE.FRICTION": what the check calls or says that it guards. */
  readonly functions: readonly string[];
  /** Different expected values that it holds them against, at least. */
  readonly values: number;
  readonly file: string;
}

const folder = join(root, "tests", "published");

export function publishedChecks(): Check[] {
  return readdirSync(folder)
    .filter((file) => file.endsWith(".test.ts"))
    .sort()
    .flatMap((file) => checksOf(readFileSync(join(folder, file), "utf8"), file));
}

const CALLS = new Set(["call", "callNumber", "callTable", "callError"]);

/** Reads the checks of a test file without running it. */
export function checksOf(text: string, file: string): Check[] {
  const tree = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
  const declared = topLevelNames(tree);
  const checks: Check[] = [];
  const visit = (node: ts.Node) => {
    if (ts.isCallExpression(node) && node.expression.getText() === "published") {
      const [stated, check] = node.arguments;
      if (!ts.isObjectLiteralExpression(stated)) {
        throw new Error(`${file}: published() must be given its source as a plain object`);
      }
      const part = (name: string) => textOf(propertyOf(stated, name), declared, `${file}: ${name}`);
      const guards = propertyOf(stated, "guards");
      const guarded =
        guards !== undefined && ts.isArrayLiteralExpression(guards)
          ? guards.elements.map((element) => textOf(element, declared, `${file}: guards`))
          : [];
      checks.push({
        source: part("source"),
        where: part("where"),
        seen: part("seen") as Seen,
        functions: [...new Set([...calledIn(check, declared), ...guarded])],
        values: valuesIn(check, declared),
        file,
      });
    }
    ts.forEachChild(node, visit);
  };
  visit(tree);
  return checks;
}

/** What the names of the file's own constants and functions stand for. */
function topLevelNames(tree: ts.SourceFile): Declared {
  const names = new Map<string, ts.Node>();
  for (const statement of tree.statements) {
    if (ts.isFunctionDeclaration(statement) && statement.name !== undefined) {
      names.set(statement.name.text, statement);
    }
    if (!ts.isVariableStatement(statement)) continue;
    for (const { name, initializer } of statement.declarationList.declarations) {
      if (initializer !== undefined && ts.isIdentifier(name)) names.set(name.text, initializer);
    }
  }
  return names;
}

function propertyOf(stated: ts.ObjectLiteralExpression, name: string): ts.Expression | undefined {
  for (const property of stated.properties) {
    if (ts.isPropertyAssignment(property) && property.name.getText() === name) {
      return property.initializer;
    }
  }
  return undefined;
}

function textOf(node: ts.Node | undefined, declared: Declared, what: string): string {
  if (node !== undefined && ts.isStringLiteralLike(node)) return node.text;
  if (node !== undefined && ts.isIdentifier(node) && declared.has(node.text)) {
    return textOf(declared.get(node.text), declared, what);
  }
  throw new Error(`${what} must be a plain text`);
}

/** The functions that a check calls by name, itself or through the file's own functions. */
function calledIn(check: ts.Node, declared: Declared): string[] {
  const called: string[] = [];
  const entered = new Set<string>();
  const visit = (node: ts.Node) => {
    if (ts.isCallExpression(node) && CALLS.has(node.expression.getText())) {
      const [name] = node.arguments;
      if (name !== undefined && ts.isStringLiteralLike(name)) called.push(name.text);
    }
    if (ts.isIdentifier(node) && declared.has(node.text) && !entered.has(node.text)) {
      entered.add(node.text);
      visit(declared.get(node.text) as ts.Node);
    }
    ts.forEachChild(node, visit);
  };
  visit(check);
  return called;
}

/** From the surest on. */
const SURENESS: readonly (readonly [seen: Seen, meaning: string])[] = [
  ["read", "the source itself was read"],
  ["independent engine", "computed by other software, its constants matched"],
  ["closed form", "the exact answer follows from mathematics or definition"],
  ["read in a secondary text", "read in a text that quotes the source"],
  ["from memory", "known from the source, recomputed where arithmetic allows, not read again"],
  ["common practice, no source", "what the trade does; no published source"],
];

const UNVERIFIED: ReadonlySet<Seen> = new Set(["from memory", "common practice, no source"]);

/** How sure the surest of a function's checks is; undefined when there is none. */
export function standingOf(name: string, checks: readonly Check[]): string | undefined {
  const seen = checks
    .filter(({ functions }) => functions.includes(name))
    .map((check) => check.seen);
  const best = SURENESS.find(([candidate]) => seen.includes(candidate))?.[0];
  return best !== undefined && UNVERIFIED.has(best) ? `${best}, unverified` : best;
}

/** What rests on one degree of sureness. */
export interface Tally {
  readonly seen: Seen;
  readonly checks: number;
  readonly values: number;
  readonly sources: number;
}

/** Titles that differ in case, marks or what stands in brackets are one source. */
function sourceOf({ source }: Check): string {
  const title = source.replace(/\(.*?\)/g, " ").toLowerCase();
  return title.replace(/[^\p{L}\p{N}]+/gu, " ").trim();
}

/** Checks, values and different sources by how sure they are, the surest first. */
export function tallies(checks: readonly Check[]): Tally[] {
  return SURENESS.map(([seen]) => {
    const own = checks.filter((check) => check.seen === seen);
    return {
      seen,
      checks: own.length,
      values: own.reduce((sum, check) => sum + check.values, 0),
      sources: new Set(own.map(sourceOf)).size,
    };
  });
}

/** What came from outside and was read or computed there: neither memory, practice nor our own proof. */
const OUTSIDE: ReadonlySet<Seen> = new Set([
  "read",
  "read in a secondary text",
  "independent engine",
]);

export function outside(checks: readonly Check[]): { values: number; sources: number } {
  const own = checks.filter(({ seen }) => OUTSIDE.has(seen));
  return {
    values: own.reduce((sum, check) => sum + check.values, 0),
    sources: new Set(own.map(sourceOf)).size,
  };
}

function tallyTable(checks: readonly Check[]): string {
  const rows = tallies(checks).map(
    ({ seen, checks: count, values, sources }) =>
      `<tr><td>${seen}</td><td>${count}</td><td>${values}</td><td>${sources}</td></tr>`,
  );
  return `<table>
<thead><tr><th>how sure</th><th>checks</th><th>values, at least</th><th>sources</th></tr></thead>
<tbody>
${rows.join("\n")}
</tbody>
</table>`;
}

export function sourcesPage(functions: readonly FunctionHelp[], checks: readonly Check[]): string {
  const found = outside(checks);
  const body = `<h1>Sources, and what the numbers are held against</h1>
<p>${functions.length} functions and ${checks.length} published checks, read from the tests
themselves. Each check runs before a version is released. How sure a check is:</p>
<dl>
${SURENESS.map(([seen, meaning]) => `<dt>${seen}</dt><dd>${meaning}</dd>`).join("\n")}
</dl>
${tallyTable(checks)}
<p>At least ${found.values} values from ${found.sources} different sources were read or computed
outside. They are counted in the tests' own text: a comparison is one, a table that is written out
there is one for each row, a verdict in words is none, and no check is less than one. Titles that differ in what stands in
brackets are one source.</p>
${resting("memory", "from memory", functions, checks)}
${resting("common practice", "common practice, no source", functions, checks)}
${functions.map((help) => section(help, checks)).join("\n")}`;
  return plainPage({
    title: "Fieldsum: sources",
    description: "Where every formula comes from, and the published values it is checked against.",
    body,
    path: "sources.html",
    script: false,
  });
}

/** The functions whose surest check is no surer than this. */
export function restingOn(
  seen: Seen,
  functions: readonly FunctionHelp[],
  checks: readonly Check[],
): FunctionHelp[] {
  return functions.filter(({ name }) => standingOf(name, checks) === `${seen}, unverified`);
}

function resting(
  words: string,
  seen: Seen,
  functions: readonly FunctionHelp[],
  checks: readonly Check[],
): string {
  const names = restingOn(seen, functions, checks).map(
    ({ id, name }) => `<a href="#${id}">${escaped(name)}</a>`,
  );
  return names.length === 0
    ? `<p>No function rests on ${words} alone.</p>`
    : `<p>${names.length} of ${functions.length} functions rest on ${words} alone, and want a second
look before work depends on them: ${names.join(", ")}.</p>`;
}

function section(help: FunctionHelp, checks: readonly Check[]): string {
  const own = checks.filter(({ functions }) => functions.includes(help.name));
  return `<h2 id="${help.id}"><a href="${help.page}">${escaped(NAMESPACE)}.${escaped(help.name)}</a></h2>
<p>${escaped(help.short)} <span class="quiet">${escaped(standingOf(help.name, checks) ?? "no check")}</span></p>
<p><b>Formula from:</b> ${escaped(help.source)}</p>
<ul>
${own.map((check) => `<li>${escaped(check.source)}: ${escaped(check.where)} <span class="quiet">(${check.seen}; ${escaped(check.file)})</span></li>`).join("\n")}
</ul>`;
}

export function writeSourcesPage(functions: readonly FunctionHelp[]): void {
  writeFileSync(join(dist, "sources.html"), sourcesPage(functions, publishedChecks()));
}
