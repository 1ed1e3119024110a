import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";
import type { FunctionHelp } from "../src/reference";
import type { Seen } from "../tests/support/published";
import { escaped, plainPage } from "./html";
import { dist, NAMESPACE, root } from "./settings";

/** A check against the outside, as its test states it. */
export interface Check {
  readonly source: string;
  readonly where: string;
  readonly seen: Seen;
  /** "PIPE.FRICTION": what the check calls or says that it guards. */
  readonly functions: readonly string[];
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
        file,
      });
    }
    ts.forEachChild(node, visit);
  };
  visit(tree);
  return checks;
}

type Declared = ReadonlyMap<string, ts.Node>;

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

export function sourcesPage(functions: readonly FunctionHelp[], checks: readonly Check[]): string {
  const unverified = functions.filter(({ name }) =>
    standingOf(name, checks)?.endsWith("unverified"),
  );
  const body = `<h1>Sources, and what the numbers are held against</h1>
<p>${functions.length} functions and ${checks.length} published checks, read from the tests
themselves. Each check runs before a version is released. How sure a check is:</p>
<dl>
${SURENESS.map(([seen, meaning]) => `<dt>${seen}</dt><dd>${meaning}</dd>`).join("\n")}
</dl>
<p>${
    unverified.length === 0
      ? "Every function has at least one check that does not rest on memory or practice alone."
      : `These rest on memory or common practice alone, and want a second look before work depends on
them: ${unverified.map((help) => `<a href="#${help.id}">${escaped(help.name)}</a>`).join(", ")}.`
  }</p>
${functions.map((help) => section(help, checks)).join("\n")}`;
  return plainPage({
    title: "Fieldsum: sources",
    description: "Where every formula comes from, and the published values it is checked against.",
    body,
    up: "",
    script: false,
  });
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
