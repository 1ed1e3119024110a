import ts from "typescript";

/** What the translator does not know it refuses, with the place: a guess could be a wrong number. */
export class Refusal extends Error {
  override name = "Refusal";

  constructor(node: ts.Node, why: string) {
    const file = node.getSourceFile();
    const { line, character } = file.getLineAndCharacterOfPosition(node.getStart());
    const snippet = node.getText().replace(/\s+/g, " ").slice(0, 80);
    super(`${file.fileName}:${line + 1}:${character + 1}: ${why}: ${snippet}`);
  }
}
