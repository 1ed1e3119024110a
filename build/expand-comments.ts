import { existsSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import ts from "typescript";
import { sharedArguments, sharedSentences } from "../src/functions/shared-texts";

/**
 * A file of sheet functions as the host's generator wants it, with nothing said elsewhere: the
 * shared texts of arguments and sentences stand in each comment, arguments that are listed in
 * another file (`...line: LineArguments`) in each signature, and the choices that the file imports
 * as types at its end. What is said nowhere stays out, and the readers name it.
 */
export function expandComments(path: string): string {
  const text = readFileSync(path, "utf8");
  const file = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true);
  const imported = importedTypes(file, dirname(path));
  let expanded = text;
  // From the end, so that the places before it stay where they are.
  for (const statement of [...file.statements].reverse()) {
    if (!ts.isFunctionDeclaration(statement)) continue;
    const comment = ts.getJSDocCommentsAndTags(statement).find(ts.isJSDoc);
    if (comment === undefined || !/@customfunction\b/i.test(comment.getText())) continue;
    const parameters = statement.parameters.flatMap((parameter) => listed(parameter, imported));
    const written = parameters.map((parameter) => parameter.getText()).join(", ");
    expanded =
      expanded.slice(0, comment.getStart()) +
      expandOne(comment.getText(), parameters) +
      expanded.slice(comment.getEnd(), statement.parameters.pos) +
      written +
      expanded.slice(statement.parameters.end);
  }
  const choices = imported.filter(ts.isEnumDeclaration).map((declared) => declared.getFullText());
  return expanded + choices.join("");
}

type Parameter = ts.ParameterDeclaration | ts.NamedTupleMember;

/** The arguments that `...line: LineArguments` stands for; any other stands for itself. */
function listed(
  parameter: ts.ParameterDeclaration,
  imported: readonly ts.Statement[],
): readonly Parameter[] {
  const list = imported
    .filter(ts.isTypeAliasDeclaration)
    .find(({ name }) => name.text === parameter.type?.getText());
  if (list === undefined || !ts.isTupleTypeNode(list.type)) return [parameter];
  return list.type.elements.filter(ts.isNamedTupleMember);
}

function expandOne(comment: string, parameters: readonly Parameter[]): string {
  const group = /^ \* @arguments (\S+)$/m.exec(comment)?.[1] ?? "every";
  const own = new Map<string, string>();
  for (const [line, written] of comment.matchAll(/^ \* @param \[?(\w+)\]?.*\n/gm)) {
    own.set(written, line);
  }
  const names = parameters.map((parameter) => parameter.name.getText());
  // Lines for no argument, or out of order, stay as they are: the reader names them.
  if ([...own.keys()].join() !== names.filter((name) => own.has(name)).join()) return comment;
  const lines = parameters.map((parameter, i) => {
    const said = own.get(names[i]);
    if (said !== undefined) return said;
    const shared = sharedArguments[group]?.[names[i]] ?? sharedArguments.every[names[i]];
    if (shared === undefined) return "";
    return ` * @param ${parameter.questionToken === undefined ? names[i] : `[${names[i]}]`} ${shared}\n`;
  });
  return comment
    .replace(/^ \* @param \[?\w+\]?.*\n/gm, "")
    .replace(/^ \* @arguments \S+\n/m, sharedArguments[group] === undefined ? "$&" : "")
    .replace(/^ \* @customfunction .*\n/m, (line) => line + lines.join(""))
    .replace(/\{@text (\w+)\}/g, (whole, name: string) => sharedSentences[name] ?? whole);
}

/** What `import type { Units } from "./units"` names: the generator reads one file only. */
function importedTypes(file: ts.SourceFile, folder: string): ts.Statement[] {
  return file.statements
    .filter(ts.isImportDeclaration)
    .filter((line) => line.importClause?.phaseModifier === ts.SyntaxKind.TypeKeyword)
    .flatMap((line) => {
      const bindings = line.importClause?.namedBindings;
      const path = join(folder, `${(line.moduleSpecifier as ts.StringLiteral).text}.ts`);
      if (bindings === undefined || !ts.isNamedImports(bindings) || !existsSync(path)) return [];
      const names = bindings.elements.map(({ name }) => name.text);
      const text = readFileSync(path, "utf8");
      return ts
        .createSourceFile(path, text, ts.ScriptTarget.Latest, true)
        .statements.filter(
          (one) =>
            (ts.isEnumDeclaration(one) || ts.isTypeAliasDeclaration(one)) &&
            names.includes(one.name.text),
        );
    });
}
