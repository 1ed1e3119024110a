import { readFileSync } from "node:fs";
import { basename } from "node:path";
import ts from "typescript";
import { cautions as cautionTexts } from "../src/cautions";
import { exportNameOf } from "../src/functions/export-name";
import type { ArgumentHelp, Choice, FunctionHelp } from "../src/reference";
import { expandComments } from "./expand-comments";

/** What a file of sheet functions says of itself, and what is wrong with how it says it. */
export interface DocComments {
  readonly functions: FunctionHelp[];
  readonly problems: string[];
}

/** Tags with one text each that every function must have. */
const REQUIRED_TAGS = ["returns", "remarks", "source", "errors", "task", "example"] as const;
const OTHER_TAGS = ["customfunction", "param", "cautions", "yesno"];

export function readDocComments(path: string): DocComments {
  const text = readFileSync(path, "utf8");
  const parse = (source: string) => ts.createSourceFile(path, source, ts.ScriptTarget.Latest, true);
  const written = parse(text);
  const file = parse(expandComments(path));
  const choices = readChoices(file);
  const functions: FunctionHelp[] = [];
  const problems: string[] = [];
  const seen = new Set(declared(written).map(({ comment }) => comment.getStart()));

  for (const { statement, comment } of declared(file)) {
    const found = readFunction(statement, comment, choices);
    functions.push(found.help);
    problems.push(...found.problems.map((p) => `${basename(path)}: ${found.help.id}: ${p}`));
  }

  // The metadata tool passes over anything but a function declaration without a word, so a comment
  // that stands on a const or on nothing is looked for in the plain text.
  for (const match of text.matchAll(/\/\*\*[\s\S]*?\*\//g)) {
    if (!isFunctionComment(match[0]) || seen.has(match.index)) continue;
    const line = written.getLineAndCharacterOfPosition(match.index).line + 1;
    const id = /@customfunction\s+(\S+)/i.exec(match[0])?.[1] ?? "without an id";
    problems.push(
      `${basename(path)}: line ${line}: the @customfunction comment (${id}) does not stand on an exported function declaration`,
    );
  }
  return { functions, problems };
}

/** The exported functions of a file that a sheet gets, each with its comment. */
function declared(file: ts.SourceFile): { statement: ts.FunctionDeclaration; comment: ts.JSDoc }[] {
  return file.statements.flatMap((statement) => {
    if (!ts.isFunctionDeclaration(statement) || !isExported(statement)) return [];
    const comment = ts.getJSDocCommentsAndTags(statement).find(ts.isJSDoc);
    if (comment === undefined || !isFunctionComment(comment.getText())) return [];
    return [{ statement, comment }];
  });
}

function isFunctionComment(comment: string): boolean {
  return /@customfunction\b/i.test(comment);
}

function isExported(node: ts.FunctionDeclaration): boolean {
  return node.modifiers?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword) ?? false;
}

function readFunction(
  node: ts.FunctionDeclaration,
  comment: ts.JSDoc,
  choices: ReadonlyMap<string, readonly Choice[]>,
): { help: FunctionHelp; problems: string[] } {
  const problems: string[] = [];
  const tags = comment.tags ?? ts.factory.createNodeArray<ts.JSDocTag>();
  const textOf = (tagName: string) => {
    const found = tags.filter((tag) => tag.tagName.text === tagName);
    if (found.length > 1) problems.push(`@${tagName} stands more than once`);
    return found.length === 0 ? "" : plain(found[0].comment);
  };

  const [id = "", name = ""] = textOf("customfunction").split(" ");
  const known = new Set<string>([...REQUIRED_TAGS, ...OTHER_TAGS]);
  for (const tag of tags) {
    if (!known.has(tag.tagName.text)) problems.push(`@${tag.tagName.text} is not a known tag`);
  }
  for (const [, unknown] of comment.getText().matchAll(/\{@text (\w+)\}/g)) {
    problems.push(`{@text ${unknown}} is no shared text`);
  }
  for (const tagName of REQUIRED_TAGS) {
    if (textOf(tagName) === "") problems.push(`@${tagName} is missing`);
  }
  const short = plain(comment.comment);
  if (short === "") problems.push("the short help is missing");
  if (id !== name.replace(/\./g, "_")) {
    problems.push(`the id must be the name ${name} with "_" for "."`);
  }
  const exportName = node.name?.text ?? "";
  if (exportName !== exportNameOf(id)) {
    problems.push(`it must be exported as ${exportNameOf(id)}, not ${exportName}`);
  }

  const spills = node.type !== undefined && ts.isArrayTypeNode(node.type);
  if (spills !== short.startsWith("Spills ")) {
    problems.push(
      'the short help begins with "Spills" where, and only where, the result is any[][]',
    );
  }
  const resultType = node.type?.getText();
  if (resultType !== "any" && resultType !== "any[][]") {
    problems.push(`the result must be declared any or any[][], not ${resultType}`);
  }
  const cautions = textOf("cautions")
    .split(",")
    .map((subject) => subject.trim())
    .filter((subject) => subject !== "");
  for (const subject of cautions) {
    if (!(subject in cautionTexts)) problems.push(`@cautions names an unknown subject, ${subject}`);
  }
  const example = textOf("example");
  if (example !== "" && !example.startsWith(`=IRRIG.${name}(`)) {
    problems.push(`the example must begin =IRRIG.${name}(`);
  }

  const yesNo = textOf("yesno")
    .split(",")
    .map((argument) => argument.trim())
    .filter((argument) => argument !== "");
  const described = readArguments(node, tags, choices, problems);
  for (const argument of yesNo) {
    if (!described.some(({ name: known }) => known === argument)) {
      problems.push(`@yesno names an unknown argument, ${argument}`);
    }
  }

  return {
    help: {
      id,
      name,
      family: name.split(".")[0],
      short,
      arguments: described.map((argument) =>
        yesNo.includes(argument.name) ? { ...argument, yesNo: true } : argument,
      ),
      returns: textOf("returns"),
      spills,
      remarks: textOf("remarks"),
      source: textOf("source"),
      errors: textOf("errors"),
      cautions,
      task: textOf("task"),
      example,
      page: `reference/${pageName(name)}`,
    },
    problems: [...new Set(problems)],
  };
}

/** "pipe-friction.html" */
export function pageName(name: string): string {
  return `${name.toLowerCase().replace(/\./g, "-")}.html`;
}

/** A word that the language keeps for itself stands with a "_" behind it in the code, not in the help. */
export function argumentName(written: string): string {
  return written.replace(/_$/, "");
}

function readArguments(
  node: ts.FunctionDeclaration,
  tags: ts.NodeArray<ts.JSDocTag>,
  choices: ReadonlyMap<string, readonly Choice[]>,
  problems: string[],
): ArgumentHelp[] {
  const described = tags.filter(ts.isJSDocParameterTag);
  const names = node.parameters.map((parameter) => parameter.name.getText());
  const describedNames = described.map((tag) => tag.name.getText());
  if (names.join() !== describedNames.join()) {
    problems.push(
      `the @param lines (${describedNames.join(", ")}) are not the arguments (${names.join(", ")})`,
    );
  }
  const found = node.parameters.map((parameter, i): ArgumentHelp => {
    const name = argumentName(names[i]);
    const tag = described.find((candidate) => candidate.name.getText() === names[i]);
    const help = plain(tag?.comment);
    if (help === "") problems.push(`@param ${name} has no text`);
    const optional = parameter.questionToken !== undefined;
    if (tag !== undefined && tag.isBracketed !== optional) {
      problems.push(`${name} is optional in the comment or in the code, not in both`);
    }
    const type = parameter.type?.getText() ?? "";
    const listed = choices.get(type);
    if (listed === undefined && type !== "any" && type !== "any[][]") {
      problems.push(`${name} must be declared any, any[][] or a @customenum, not ${type}`);
    }
    return {
      name,
      help,
      optional,
      range: type === "any[][]",
      ...(listed === undefined ? {} : { choices: listed }),
    };
  });
  const firstOptional = found.findIndex((argument) => argument.optional);
  if (firstOptional >= 0 && found.slice(firstOptional).some((argument) => !argument.optional)) {
    problems.push("a required argument stands behind an optional one");
  }
  return found;
}

/** The entries of every @customenum of a file, by its name. */
function readChoices(file: ts.SourceFile): Map<string, readonly Choice[]> {
  const choices = new Map<string, readonly Choice[]>();
  for (const statement of file.statements) {
    if (!ts.isEnumDeclaration(statement)) continue;
    if (!ts.getJSDocTags(statement).some(({ tagName }) => tagName.text === "customenum")) continue;
    choices.set(
      statement.name.text,
      statement.members.map((member) => ({
        value:
          member.initializer !== undefined && ts.isStringLiteral(member.initializer)
            ? member.initializer.text
            : "",
        help: plain(ts.getJSDocCommentsAndTags(member).find(ts.isJSDoc)?.comment),
      })),
    );
  }
  return choices;
}

function plain(comment: string | ts.NodeArray<ts.JSDocComment> | undefined): string {
  return (ts.getTextOfJSDocComment(comment) ?? "").replace(/\s+/g, " ").trim();
}
