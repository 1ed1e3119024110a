import ts from "typescript";
import { METHODS } from "./built-ins";
import type { Declared } from "./declared";
import { isOnly, type Kinds } from "./kinds";
import type { Loops } from "./loops";
import type { Program } from "./program";
import { bare, isScript, isWholeLiteral, writtenTarget } from "./syntax";

type Taker = ts.FunctionDeclaration | ts.MethodDeclaration;

/**
 * Which numbers surely are whole and not negative: places in lists, which Python can be asked for as
 * they are. The whole program is read: of every variable, private field, argument and result, all that
 * it can be. What was taken for a place stays one until something it can be is none.
 */
export class Places {
  /** All that a declaration can be; for a function, all that it returns. */
  private readonly sources = new Map<ts.Node, ts.Expression[]>();
  private readonly methods = new Map<string, ts.MethodDeclaration[]>();

  constructor(
    program: Program,
    private readonly checker: ts.TypeChecker,
    private readonly kinds: Kinds,
    private readonly declared: Declared,
    private readonly loops: Loops,
  ) {
    const files = program.files.filter((file) => !isScript(file));
    for (const file of files) this.each(file, (node) => this.consider(node));
    for (const file of files) this.each(file, (node) => this.readSources(node));
    this.settle();
  }

  isPlace(written: ts.Expression): boolean {
    const node = bare(written);
    if (ts.isNumericLiteral(node)) return isWholeLiteral(node);
    if (ts.isIdentifier(node)) {
      if (this.isCounterFrom(node, 0)) return true;
      const declaration = this.declared.at(node);
      return declaration !== undefined && this.sources.has(declaration);
    }
    if (ts.isPropertyAccessExpression(node)) {
      const { name } = node;
      if (name.text === "length") return isOnly(this.kinds.of(node.expression), "array", "string");
      if (name.text === "size") return isOnly(this.kinds.of(node.expression), "map", "set");
      const field = this.checker.getSymbolAtLocation(name)?.valueDeclaration;
      return field !== undefined && ts.isPropertyDeclaration(field) && this.sources.has(field);
    }
    if (ts.isBinaryExpression(node)) {
      const { kind } = node.operatorToken;
      if (kind === ts.SyntaxKind.PlusToken || kind === ts.SyntaxKind.AsteriskToken) {
        return this.isPlace(node.left) && this.isPlace(node.right);
      }
      const isLess = kind === ts.SyntaxKind.MinusToken && isWholeLiteral(node.right);
      return isLess && this.isCounterFrom(node.left, Number(node.right.text));
    }
    if (ts.isConditionalExpression(node)) {
      return this.isPlace(node.whenTrue) && this.isPlace(node.whenFalse);
    }
    if (ts.isCallExpression(node) && ts.isIdentifier(node.expression)) {
      const called = this.declared.at(node.expression);
      return called !== undefined && ts.isFunctionDeclaration(called) && this.sources.has(called);
    }
    return false;
  }

  /** Whether an expression is a loop's counter that never falls below `least`. */
  isCounterFrom(written: ts.Expression, least: number): boolean {
    const node = bare(written);
    if (!ts.isIdentifier(node)) return false;
    const declaration = this.declared.at(node);
    const counting = declaration && this.loops.countedBy(declaration);
    if (counting === undefined) return false;
    const { start, stop, isUp, isWithEnd } = counting;
    if (!isUp) {
      const end = bare(stop);
      return ts.isNumericLiteral(end) && Number(end.text) + (isWithEnd ? 0 : 1) >= least;
    }
    const from = bare(start);
    if (ts.isNumericLiteral(from)) return Number(from.text) >= least;
    if (ts.isBinaryExpression(from) && from.operatorToken.kind === ts.SyntaxKind.PlusToken) {
      const { left, right } = from;
      // From one behind another counter.
      if (ts.isNumericLiteral(right)) return this.isCounterFrom(left, least - Number(right.text));
    }
    return false;
  }

  private each(node: ts.Node, run: (node: ts.Node) => void): void {
    if (ts.isTypeNode(node) || ts.isInterfaceDeclaration(node)) return;
    if (ts.isTypeAliasDeclaration(node) || ts.isImportDeclaration(node)) return;
    run(node);
    ts.forEachChild(node, (child) => this.each(child, run));
  }

  /** Everything that could be a place. */
  private consider(node: ts.Node): void {
    if (ts.isVariableDeclaration(node)) {
      const isGiven = ts.isCatchClause(node.parent) || ts.isForOfStatement(node.parent.parent);
      if (ts.isIdentifier(node.name) && !isGiven) this.take(node, node.initializer);
    } else if (ts.isPropertyDeclaration(node)) {
      // Nothing but its own class writes to a private field.
      const isPrivate = (ts.getCombinedModifierFlags(node) & ts.ModifierFlags.Private) !== 0;
      if (isPrivate) this.take(node, node.initializer);
    } else if (ts.isFunctionDeclaration(node) || ts.isMethodDeclaration(node)) {
      if (node.body === undefined || node.name === undefined) return;
      // Of a function with several signatures, its calls name the first.
      if (ts.isIdentifier(node.name) && this.declared.at(node.name) !== node) return;
      for (const parameter of node.parameters) {
        const isPlain = ts.isIdentifier(parameter.name) && parameter.dotDotDotToken === undefined;
        if (isPlain) this.take(parameter, parameter.initializer);
      }
      if (ts.isMethodDeclaration(node)) {
        const name = node.name.getText();
        this.methods.set(name, [...(this.methods.get(name) ?? []), node]);
      } else if (this.givesNumber(node)) {
        this.sources.set(node, []);
      }
    } else if (ts.isArrowFunction(node) && this.isVisitor(node)) {
      const second = node.parameters[1];
      if (second !== undefined && ts.isIdentifier(second.name)) this.take(second, undefined);
    }
  }

  private take(declaration: ts.Node, first: ts.Expression | undefined): void {
    if (!isOnly(this.kinds.of(declaration), "number")) return;
    this.sources.set(declaration, first === undefined ? [] : [first]);
  }

  private givesNumber(node: ts.FunctionDeclaration): boolean {
    const signature = this.checker.getSignatureFromDeclaration(node);
    return (
      signature !== undefined &&
      isOnly(this.kinds.ofType(this.checker.getReturnTypeOfSignature(signature)), "number")
    );
  }

  /** A function that a list's method hands each value and its place. */
  private isVisitor(node: ts.ArrowFunction): boolean {
    const call = node.parent;
    if (!ts.isCallExpression(call) || call.arguments[0] !== node) return false;
    const callee = bare(call.expression);
    return (
      ts.isPropertyAccessExpression(callee) &&
      isOnly(this.kinds.of(callee.expression), "array") &&
      METHODS.array?.get(callee.name.text)?.gives === 3
    );
  }

  private readSources(node: ts.Node): void {
    const target = writtenTarget(node);
    if (target !== undefined) this.readWriting(node, target);
    if (ts.isIdentifier(node)) this.readFunction(node);
    else if (ts.isPropertyAccessExpression(node)) this.readMethod(node);
    else if (ts.isElementAccessExpression(node)) this.readByName(node);
    else if (ts.isBindingElement(node) && this.canBeCalled(node)) {
      this.refuseMethods((node.propertyName ?? node.name).getText());
    } else if (ts.isReturnStatement(node) && node.expression !== undefined) {
      const giver = ts.findAncestor(node, ts.isFunctionLike);
      if (giver !== undefined) this.sources.get(giver)?.push(node.expression);
    }
  }

  private readWriting(node: ts.Node, target: ts.Node): void {
    const written = ts.isExpression(target) ? bare(target) : target;
    if (ts.isArrayLiteralExpression(written)) {
      for (const part of written.elements) this.refuse(part);
      return;
    }
    const sources = this.sourcesOf(written);
    if (sources === undefined) return;
    if (ts.isBinaryExpression(node)) {
      const { EqualsToken, PlusEqualsToken, AsteriskEqualsToken } = ts.SyntaxKind;
      const { kind } = node.operatorToken;
      if (kind === EqualsToken || kind === PlusEqualsToken || kind === AsteriskEqualsToken) {
        sources.push(node.right);
        return;
      }
    }
    const isStepUp =
      (ts.isPrefixUnaryExpression(node) || ts.isPostfixUnaryExpression(node)) &&
      node.operator === ts.SyntaxKind.PlusPlusToken;
    if (!isStepUp) this.refuse(written);
  }

  private writtenDeclaration(target: ts.Node): ts.Node | undefined {
    if (ts.isIdentifier(target)) return this.declared.at(target);
    if (!ts.isPropertyAccessExpression(target)) return undefined;
    return this.checker.getSymbolAtLocation(target.name)?.valueDeclaration;
  }

  private sourcesOf(target: ts.Node): ts.Expression[] | undefined {
    const declaration = this.writtenDeclaration(target);
    return declaration && this.sources.get(declaration);
  }

  private refuse(target: ts.Node): void {
    const declaration = this.writtenDeclaration(target);
    if (declaration !== undefined) this.sources.delete(declaration);
  }

  /** A named function's arguments: those of its calls, as long as it is only called. */
  private readFunction(node: ts.Identifier): void {
    const declaration = this.declared.at(node);
    if (declaration === undefined || !ts.isFunctionDeclaration(declaration)) return;
    if (declaration.name === node || ts.isExportSpecifier(node.parent)) return;
    const { parent } = node;
    const isMember = ts.isPropertyAccessExpression(parent) && parent.name === node;
    this.readCall(declaration, isMember ? parent : node);
  }

  /** A method's arguments: those of whatever has its name. */
  private readMethod(node: ts.PropertyAccessExpression): void {
    if (!this.canBeCalled(node)) return;
    for (const method of this.methods.get(node.name.text) ?? []) this.readCall(method, node);
  }

  /** A number of some other object may have a method's name. */
  private canBeCalled(node: ts.Node): boolean {
    const type = this.checker.getTypeAtLocation(node);
    // What may be anything is called as nothing before it is told what it is.
    if ((type.flags & ts.TypeFlags.Unknown) !== 0) return false;
    const kinds = this.kinds.ofType(type);
    return kinds.has("function") || kinds.has("anything");
  }

  private readByName(node: ts.ElementAccessExpression): void {
    const index = bare(node.argumentExpression);
    if (isOnly(this.kinds.of(index), "number")) return;
    if (ts.isStringLiteralLike(index)) this.refuseMethods(index.text);
    else {
      const members = this.checker.getTypeAtLocation(node.expression).getProperties();
      for (const { name } of members) this.refuseMethods(name);
    }
  }

  private refuseMethods(name: string): void {
    for (const method of this.methods.get(name) ?? []) this.refuseArguments(method);
  }

  private refuseArguments({ parameters }: Taker): void {
    for (const parameter of parameters) this.sources.delete(parameter);
  }

  private readCall(taker: Taker, reference: ts.Expression): void {
    const call = reference.parent;
    if (!ts.isCallExpression(call) || call.expression !== reference) {
      this.refuseArguments(taker);
      return;
    }
    const firstSpread = call.arguments.findIndex(ts.isSpreadElement);
    taker.parameters.forEach((parameter, i) => {
      const given = call.arguments[i];
      const isHidden = firstSpread !== -1 && firstSpread <= i;
      if (isHidden || (given === undefined && parameter.initializer === undefined)) {
        this.sources.delete(parameter);
      } else if (given !== undefined) {
        this.sources.get(parameter)?.push(given);
      }
    });
  }

  /** Strikes out what can be other than a place, until nothing is left to strike out. */
  private settle(): void {
    let isSettled = false;
    while (!isSettled) {
      isSettled = true;
      for (const [declaration, sources] of this.sources) {
        if (sources.every((source) => this.isPlace(source))) continue;
        this.sources.delete(declaration);
        isSettled = false;
      }
    }
  }
}
