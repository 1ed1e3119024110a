import ts from "typescript";
import type { Declared } from "./declared";
import { ASSIGNMENTS, bare } from "./syntax";

/** A loop that counts by one from `start` to a bound that stays, and whose variable nothing else writes to. */
export interface Counting {
  readonly declaration: ts.VariableDeclaration;
  readonly name: ts.Identifier;
  readonly start: ts.Expression;
  readonly stop: ts.Expression;
  readonly isUp: boolean;
  /** Whether the bound itself is a round. */
  readonly isWithEnd: boolean;
}

/** Tells the loops that Python can have as a range. */
export class Loops {
  private readonly known = new Map<ts.ForStatement, Counting | undefined>();

  constructor(private readonly declared: Declared) {}

  counting(node: ts.ForStatement): Counting | undefined {
    if (!this.known.has(node)) this.known.set(node, this.read(node));
    return this.known.get(node);
  }

  /** The loop that a variable counts. */
  countedBy(declaration: ts.Node): Counting | undefined {
    const loop = declaration.parent?.parent;
    if (loop === undefined || !ts.isForStatement(loop)) return undefined;
    const counting = this.counting(loop);
    return counting?.declaration === declaration ? counting : undefined;
  }

  private read({ initializer, condition, incrementor, statement }: ts.ForStatement) {
    if (initializer === undefined || condition === undefined || incrementor === undefined)
      return undefined;
    if (!ts.isVariableDeclarationList(initializer) || initializer.declarations.length !== 1)
      return undefined;
    if ((initializer.flags & ts.NodeFlags.BlockScoped) === 0) return undefined;
    const [declaration] = initializer.declarations;
    const { name, initializer: start } = declaration;
    if (!ts.isIdentifier(name) || start === undefined) return undefined;
    const isCounter = (one: ts.Expression) =>
      ts.isIdentifier(one) && this.declared.symbolAt(one)?.valueDeclaration === declaration;
    if (!ts.isPostfixUnaryExpression(incrementor) && !ts.isPrefixUnaryExpression(incrementor))
      return undefined;
    if (!isCounter(incrementor.operand)) return undefined;
    const isUp = incrementor.operator === ts.SyntaxKind.PlusPlusToken;
    if (!isUp && incrementor.operator !== ts.SyntaxKind.MinusMinusToken) return undefined;
    if (!ts.isBinaryExpression(condition) || !isCounter(condition.left)) return undefined;
    const { kind } = condition.operatorToken;
    const { LessThanToken, LessThanEqualsToken, GreaterThanToken, GreaterThanEqualsToken } =
      ts.SyntaxKind;
    const isWithEnd = kind === (isUp ? LessThanEqualsToken : GreaterThanEqualsToken);
    if (!isWithEnd && kind !== (isUp ? LessThanToken : GreaterThanToken)) return undefined;
    const stop = condition.right;
    if (this.declared.isWrittenTo(declaration, statement)) return undefined;
    if (this.mentions(stop, declaration) || !this.stays(stop, statement)) return undefined;
    return { declaration, name, start, stop, isUp, isWithEnd };
  }

  private mentions(node: ts.Node, declaration: ts.Node): boolean {
    if (ts.isIdentifier(node) && this.declared.at(node) === declaration) return true;
    return ts.forEachChild(node, (child) => this.mentions(child, declaration)) ?? false;
  }

  /** Whether an expression surely has the same value in every round of a loop. */
  private stays(written: ts.Expression, body: ts.Statement): boolean {
    const node = bare(written);
    if (ts.isNumericLiteral(node)) return true;
    if (ts.isIdentifier(node)) {
      const declaration = this.declared.at(node);
      return declaration !== undefined && !this.declared.isWrittenTo(declaration, body);
    }
    if (ts.isBinaryExpression(node) && !(node.operatorToken.kind in ASSIGNMENTS)) {
      return this.stays(node.left, body) && this.stays(node.right, body);
    }
    if (ts.isPropertyAccessExpression(node)) {
      if (node.name.text === "length") {
        return this.stays(node.expression, body) && !changesLengths(body);
      }
      const isThis = node.expression.kind === ts.SyntaxKind.ThisKeyword;
      const isStill = isThis || this.stays(node.expression, body);
      return isStill && this.declared.isReadonly(node);
    }
    return false;
  }
}

/** Whether a loop's body could change how long a list is. */
function changesLengths(node: ts.Node): boolean {
  if (
    ts.isCallExpression(node) &&
    ts.isPropertyAccessExpression(node.expression) &&
    ["push", "pop", "shift", "unshift", "splice"].includes(node.expression.name.text)
  ) {
    return true;
  }
  return ts.forEachChild(node, changesLengths) ?? false;
}
