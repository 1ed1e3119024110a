import { readdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";
import { messagesIn, screenWordsIn, workbookWordsIn } from "../../src/words/load";
import { hasEnglish } from "../support/english-left";

const root = join(__dirname, "../../src");

/** Filled in with words that have forms of their own, or said in every language where they stand. */
const STAYS = [
  "Left out: the can at 7: 7.7",
  "Sprinkler chart, 7, row 7",
  "Needs the Fieldsum add-in; the values here were computed on ",
  "Values only, computed on ",
];

function files(folder: string): string[] {
  return readdirSync(folder).flatMap((name) => {
    const path = join(folder, name);
    if (statSync(path).isDirectory()) return files(path);
    return path.endsWith(".ts") ? [path] : [];
  });
}

/** What is written for people: sentences of two words or more that are no part of a message to developers. */
function sentences(path: string): string[] {
  const source = ts.createSourceFile(
    path,
    readFileSync(path, "utf8"),
    ts.ScriptTarget.Latest,
    true,
  );
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isNewExpression(node) && node.expression.getText() === "Error") return;
    if (ts.isImportDeclaration(node) || ts.isTypeNode(node)) return;
    if (
      ts.isPropertyAssignment(node) &&
      /^("?class"?|d|viewBox|type|accept|href)$/.test(node.name.getText())
    )
      return;
    if (ts.isStringLiteralLike(node)) found.push(node.text);
    else if (ts.isTemplateExpression(node))
      found.push(
        node.head.text + node.templateSpans.map(({ literal }) => `7${literal.text}`).join(""),
      );
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found.filter(
    (text) => /^[ A-Z"7].*[a-z] [a-z]/.test(text) && hasEnglish(text) && !text.startsWith("="),
  );
}

test("what the trial page and the pictures say is said in Spanish", async () => {
  const [screen, messages, workbook] = await Promise.all([
    screenWordsIn("es"),
    messagesIn("es"),
    workbookWordsIn("es"),
  ]);
  const left = (said: string) => hasEnglish(said.replace(/\{\w+\}/g, "7"));
  const unsaid = ["trial", "screen"].flatMap((room) =>
    files(join(root, room)).flatMap((path) =>
      sentences(path)
        .filter(
          (text) =>
            !STAYS.includes(text) &&
            [screen, messages.error, workbook].every((say) => left(say(text))),
        )
        .map((text) => `${path.slice(root.length)}: ${text}`),
    ),
  );
  expect(unsaid).toEqual([]);
});
