import ts from "typescript";

/** Assignments that reckon, and what they reckon with. */
export const ASSIGNMENTS: Partial<Record<ts.SyntaxKind, ts.BinaryOperator>> = {
  [ts.SyntaxKind.PlusEqualsToken]: ts.SyntaxKind.PlusToken,
  [ts.SyntaxKind.MinusEqualsToken]: ts.SyntaxKind.MinusToken,
  [ts.SyntaxKind.AsteriskEqualsToken]: ts.SyntaxKind.AsteriskToken,
  [ts.SyntaxKind.SlashEqualsToken]: ts.SyntaxKind.SlashToken,
  [ts.SyntaxKind.PercentEqualsToken]: ts.SyntaxKind.PercentToken,
  [ts.SyntaxKind.AsteriskAsteriskEqualsToken]: ts.SyntaxKind.AsteriskAsteriskToken,
  [ts.SyntaxKind.BarEqualsToken]: ts.SyntaxKind.BarToken,
  [ts.SyntaxKind.AmpersandEqualsToken]: ts.SyntaxKind.AmpersandToken,
  [ts.SyntaxKind.CaretEqualsToken]: ts.SyntaxKind.CaretToken,
  [ts.SyntaxKind.QuestionQuestionEqualsToken]: ts.SyntaxKind.QuestionQuestionToken,
  [ts.SyntaxKind.BarBarEqualsToken]: ts.SyntaxKind.BarBarToken,
  [ts.SyntaxKind.AmpersandAmpersandEqualsToken]: ts.SyntaxKind.AmpersandAmpersandToken,
};

/** An expression without the parentheses and types around it. */
export function bare(node: ts.Expression): ts.Expression {
  let inner = node;
  while (
    ts.isParenthesizedExpression(inner) ||
    ts.isAsExpression(inner) ||
    ts.isNonNullExpression(inner) ||
    ts.isSatisfiesExpression(inner) ||
    ts.isTypeAssertionExpression(inner)
  ) {
    inner = inner.expression;
  }
  return inner;
}

/** What a node writes to; undefined for one that writes to nothing. */
export function writtenTarget(node: ts.Node): ts.Node | undefined {
  if (ts.isBinaryExpression(node)) {
    const { kind } = node.operatorToken;
    return kind === ts.SyntaxKind.EqualsToken || kind in ASSIGNMENTS ? node.left : undefined;
  }
  if (ts.isPrefixUnaryExpression(node) || ts.isPostfixUnaryExpression(node)) {
    const isStep =
      node.operator === ts.SyntaxKind.PlusPlusToken ||
      node.operator === ts.SyntaxKind.MinusMinusToken;
    return isStep ? node.operand : undefined;
  }
  return undefined;
}

export function identifiersOf(target: ts.Node): ts.Identifier[] {
  if (ts.isIdentifier(target)) return [target];
  if (ts.isArrayLiteralExpression(target)) return target.elements.flatMap(identifiersOf);
  return [];
}

/** A number that is written without a fraction or a power. */
export function isWholeLiteral(node: ts.Expression): node is ts.NumericLiteral {
  return (
    ts.isNumericLiteral(node) &&
    Number.isSafeInteger(Number(node.text)) &&
    /^(\d+|0x[\da-f]+)$/i.test(node.getText().replace(/_/g, ""))
  );
}

export function isScript(node: ts.Node): boolean {
  return node.getSourceFile().fileName.endsWith(".js");
}
