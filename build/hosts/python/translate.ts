import { relative } from "node:path";
import ts from "typescript";
import { root } from "../../settings";
import { CONSTRUCTORS, GLOBALS, type Method, METHODS, NAMESPACES, STAND_INS } from "./built-ins";
import { Binds, type Code, code, Lines, quoted, within } from "./code";
import { Declared } from "./declared";
import { isOnly, type Kind, Kinds } from "./kinds";
import { Loops } from "./loops";
import { attribute, plainName, Scope } from "./names";
import { translatedPattern } from "./pattern";
import { Places } from "./places";
import { isForTypes, type Program } from "./program";
import { Refusal } from "./refusal";
import { ASSIGNMENTS, bare, isScript, isWholeLiteral, writtenTarget } from "./syntax";

/** Where a piece is being written. */
interface Place {
  readonly scope: Scope;
  readonly out: Lines;
  /** What must be written before a `continue` of the loop around. */
  readonly beforeContinue?: (place: Place) => void;
  /** Inside a `switch`, whose own `break` is not the loop's. */
  readonly inSwitch?: boolean;
}

type FunctionNode =
  | ts.FunctionDeclaration
  | ts.FunctionExpression
  | ts.ArrowFunction
  | ts.MethodDeclaration
  | ts.ConstructorDeclaration
  | ts.AccessorDeclaration;

/** Pieces of Python longer than this are not written twice. */
const LONGEST_TWICE = 100;

const COMPARISONS: Partial<Record<ts.SyntaxKind, string>> = {
  [ts.SyntaxKind.LessThanToken]: "<",
  [ts.SyntaxKind.LessThanEqualsToken]: "<=",
  [ts.SyntaxKind.GreaterThanToken]: ">",
  [ts.SyntaxKind.GreaterThanEqualsToken]: ">=",
};

const ARITHMETIC = new Set<ts.SyntaxKind>([
  ts.SyntaxKind.PlusToken,
  ts.SyntaxKind.MinusToken,
  ts.SyntaxKind.AsteriskToken,
  ts.SyntaxKind.SlashToken,
]);

const BITWISE: Partial<Record<ts.SyntaxKind, string>> = {
  [ts.SyntaxKind.BarToken]: "|",
  [ts.SyntaxKind.AmpersandToken]: "&",
  [ts.SyntaxKind.CaretToken]: "^",
};

const SHIFTS: Partial<Record<ts.SyntaxKind, string>> = {
  [ts.SyntaxKind.LessThanLessThanToken]: "_shift_left",
  [ts.SyntaxKind.GreaterThanGreaterThanToken]: "_shift_right",
  [ts.SyntaxKind.GreaterThanGreaterThanGreaterThanToken]: "_shift_right_unsigned",
};

/**
 * Writes a typed program out as plain Python 3.8: every operation by the types of what it is done
 * to. What is not known is refused.
 */
export class Translator {
  private readonly checker: ts.TypeChecker;
  private readonly kinds: Kinds;
  private readonly declared: Declared;
  private readonly loops: Loops;
  private readonly places: Places;
  /** The Python for each variable, by its declaration. */
  private readonly names = new Map<ts.Node, string>();
  private readonly owners = new Map<ts.Node, Scope>();
  /** The closures being written, innermost last, and what each takes from outside. */
  private readonly closures: { readonly scope: Scope; readonly taken: Set<ts.Node> }[] = [];
  /** Pieces of an optional chain that are at hand under a name already. */
  private readonly atHand = new Map<ts.Node, string>();
  private readonly module: Scope;

  constructor(
    private readonly program: Program,
    /** Names that the runtime has. */
    private readonly runtime: ReadonlySet<string>,
  ) {
    this.checker = program.checker;
    this.kinds = new Kinds(program.checker);
    this.declared = new Declared(program.checker);
    this.loops = new Loops(this.declared);
    this.places = new Places(program, this.checker, this.kinds, this.declared, this.loops);
    this.module = new Scope(undefined, program.files[0]);
  }

  translate(): string {
    const out = new Lines();
    const place: Place = { scope: this.module, out };
    for (const file of this.program.files) this.nameDeclarations(file, this.module);
    const written = this.program.files.map((file) => ({
      file,
      statements: file.statements.filter((statement) => !this.isStoodFor(statement)),
    }));
    // Functions and what they are called by may stand in any order and in circles of files.
    for (const { file, statements } of written) {
      out.add("");
      out.add(`# ${relative(root, file.fileName)}`);
      if (this.program.handsOver(file)) out.add(`${this.handedOver(file)} = _Obj(exports=_Obj())`);
      for (const statement of statements) {
        if (ts.isFunctionDeclaration(statement)) this.statement(statement, place);
      }
      for (const statement of statements) {
        if (!ts.isFunctionDeclaration(statement)) this.statement(statement, place);
      }
    }
    return out.lines.join("\n");
  }

  /** The Python for what a file exports under a name. */
  exported(path: string, name: string): string {
    const file = this.program.files.find(({ fileName }) => relative(root, fileName) === path);
    const symbol =
      file && this.checker.getSymbolAtLocation(file)?.exports?.get(name as ts.__String);
    const declaration = symbol && this.declared.of(symbol);
    const found = declaration && this.names.get(declaration);
    if (found === undefined) throw new Error(`${path} exports no ${name}`);
    return found;
  }

  private isStoodFor(statement: ts.Statement): boolean {
    const path = relative(root, statement.getSourceFile().fileName);
    const gone = Object.entries(STAND_INS)
      .filter(([, { file }]) => file === path)
      .flatMap(([name, { leftOut }]) => [name, ...leftOut]);
    if (ts.isFunctionDeclaration(statement)) return gone.includes(statement.name?.text ?? "");
    return (
      ts.isVariableStatement(statement) &&
      statement.declarationList.declarations.every(
        ({ name }) => ts.isIdentifier(name) && gone.includes(name.text),
      )
    );
  }

  private handedOver(file: ts.SourceFile): string {
    const known = this.names.get(file);
    if (known !== undefined) return known;
    const name = this.module.take("library");
    this.names.set(file, name);
    return name;
  }

  // Names

  /** Gives every variable of a function its name before any of its body is written. */
  private nameDeclarations(node: ts.Node, scope: Scope): void {
    const visit = (child: ts.Node): void => {
      if (ts.isTypeNode(child) || ts.isInterfaceDeclaration(child)) return;
      if (ts.isTypeAliasDeclaration(child) || ts.isImportDeclaration(child)) return;
      if (ts.isFunctionDeclaration(child)) {
        if (child.name !== undefined) this.nameOnce(child.name, scope);
        return;
      }
      if (ts.isClassDeclaration(child)) {
        if (child.name !== undefined) this.nameOnce(child.name, scope);
        return;
      }
      if (ts.isFunctionLike(child)) return;
      if (ts.isVariableDeclaration(child) || ts.isBindingElement(child)) {
        if (ts.isIdentifier(child.name)) this.nameOnce(child.name, scope);
      }
      ts.forEachChild(child, visit);
    };
    ts.forEachChild(node, visit);
  }

  private nameOnce(identifier: ts.Identifier, scope: Scope): string {
    const symbol = this.checker.getSymbolAtLocation(identifier);
    const declaration = symbol && this.declared.of(symbol);
    if (declaration === undefined) throw new Refusal(identifier, "a name without a declaration");
    const known = this.names.get(declaration);
    if (known !== undefined) return known;
    const stand = STAND_INS[identifier.text];
    const file = relative(root, identifier.getSourceFile().fileName);
    const name =
      stand?.file === file ? `_${identifier.text}` : scope.take(plainName(identifier.text));
    this.names.set(declaration, name);
    this.owners.set(declaration, scope);
    return name;
  }

  /** An export of a library that hands its exports over; undefined for any other name. */
  private fromLibrary(symbol: ts.Symbol | undefined): string | undefined {
    const specifier = symbol?.declarations?.[0];
    if (specifier === undefined || !ts.isImportSpecifier(specifier)) return undefined;
    const file = this.program.fileOf(specifier.parent.parent.parent.moduleSpecifier);
    if (file === undefined || !this.program.handsOver(file)) return undefined;
    return `${this.handedOver(file)}.exports.${attribute((specifier.propertyName ?? specifier.name).text)}`;
  }

  private identifier(node: ts.Identifier, place: Place): Code {
    const symbol = this.declared.symbolAt(node);
    const library = this.fromLibrary(symbol);
    if (library !== undefined) return code(library);
    const file = node.getSourceFile();
    if (node.text === "module" && this.program.handsOver(file)) return code(this.handedOver(file));
    const declaration = symbol && this.declared.of(symbol);
    const name = declaration && this.names.get(declaration);
    if (declaration !== undefined && name !== undefined) {
      this.noteTaken(declaration, place.scope);
      return code(name);
    }
    const global = GLOBALS.get(node.text);
    if (global !== undefined) return code(global);
    if (declaration !== undefined && ts.isEnumDeclaration(declaration)) {
      return code(`_Obj(${this.enumEntries(declaration).join(", ")})`);
    }
    if (this.program.handsOver(file)) {
      if (node.text === "define" || node.text === "window") return code("_absent");
    }
    throw new Refusal(node, `the name ${node.text} is not known`);
  }

  private enumEntries(declaration: ts.EnumDeclaration): string[] {
    return declaration.members.map((member) => {
      const value = this.checker.getConstantValue(member);
      if (typeof value !== "string" || !ts.isIdentifier(member.name)) {
        throw new Refusal(member, "an entry of an enum that is no text");
      }
      return `${attribute(member.name.text)}=${quoted(value)}`;
    });
  }

  private noteTaken(declaration: ts.Node, scope: Scope): void {
    const owner = this.owners.get(declaration);
    if (owner === undefined || owner === scope || owner.isModule) return;
    for (const closure of this.closures) {
      if (isInside(closure.scope, owner)) closure.taken.add(declaration);
    }
  }

  /** The name of a variable that is written to here. */
  private target(node: ts.Identifier, place: Place): string {
    const symbol = this.declared.symbolAt(node);
    const declaration = symbol && this.declared.of(symbol);
    const name = declaration && this.names.get(declaration);
    if (declaration === undefined || name === undefined) {
      throw new Refusal(node, "writes to a name that is not known");
    }
    if (!/^\w+$/.test(name)) throw new Refusal(node, "writes to a part of an argument");
    const owner = this.owners.get(declaration);
    if (owner !== place.scope) {
      place.scope.writesOutside.add(`${owner?.isModule ? "global" : "nonlocal"} ${name}`);
      this.noteTaken(declaration, place.scope);
    }
    return name;
  }

  // Expressions

  private is(node: ts.Node, ...allowed: readonly Kind[]): boolean {
    return isOnly(this.kinds.of(node), ...allowed);
  }

  private text(node: ts.Expression, place: Place, loosest = Binds.Choice): string {
    return within(this.expression(node, place), loosest);
  }

  private expression(written: ts.Expression, place: Place): Code {
    const node = bare(written);
    const known = this.atHand.get(node);
    if (known !== undefined) return code(known);
    if (ts.isIdentifier(node)) return this.identifier(node, place);
    if (ts.isNumericLiteral(node)) return code(numberText(node));
    if (ts.isStringLiteralLike(node)) return code(quoted(node.text));
    if (ts.isBigIntLiteral(node)) return code(node.text.replace(/[n_]/g, ""));
    if (ts.isTemplateExpression(node)) return this.template(node, place);
    if (ts.isBinaryExpression(node)) return this.binary(node, place);
    if (ts.isPropertyAccessExpression(node)) return this.property(node, place);
    if (ts.isElementAccessExpression(node)) return this.element(node, place);
    if (ts.isCallExpression(node)) return this.call(node, place);
    if (ts.isNewExpression(node)) return this.construction(node, place);
    if (ts.isPrefixUnaryExpression(node)) return this.prefix(node, place);
    if (ts.isPostfixUnaryExpression(node)) return this.postfix(node, place);
    if (ts.isConditionalExpression(node)) {
      const then = this.text(node.whenTrue, place, Binds.Or);
      const test = within(this.test(node.condition, place), Binds.Or);
      const otherwise = this.text(node.whenFalse, place, Binds.Choice);
      return code(`${then} if ${test} else ${otherwise}`, Binds.Choice);
    }
    if (ts.isArrayLiteralExpression(node)) return this.list(node, place);
    if (ts.isObjectLiteralExpression(node)) return this.object(node, place);
    if (ts.isArrowFunction(node) || ts.isFunctionExpression(node)) {
      return this.functionValue(node, place);
    }
    if (ts.isRegularExpressionLiteral(node)) {
      const { pattern, flags } = translatedPattern(node);
      return code(`_regexp(${quoted(pattern)}, ${quoted(flags)})`);
    }
    if (ts.isTypeOfExpression(node)) return code(`_typeof(${this.tried(node.expression, place)})`);
    if (ts.isVoidExpression(node)) return code("None");
    switch (node.kind) {
      case ts.SyntaxKind.TrueKeyword:
        return code("True");
      case ts.SyntaxKind.FalseKeyword:
        return code("False");
      case ts.SyntaxKind.NullKeyword:
        return code("None");
      case ts.SyntaxKind.ThisKeyword:
        return code("self");
      case ts.SyntaxKind.OmittedExpression:
        return code("None");
      default:
        throw new Refusal(node, `${ts.SyntaxKind[node.kind]} is not known`);
    }
  }

  /** `typeof` may be asked about a name that no script has. */
  private tried(node: ts.Expression, place: Place): string {
    return this.text(node, place);
  }

  private template(node: ts.TemplateExpression, place: Place): Code {
    const parts = node.head.text === "" ? [] : [quoted(node.head.text)];
    for (const span of node.templateSpans) {
      parts.push(this.asText(span.expression, place));
      if (span.literal.text !== "") parts.push(quoted(span.literal.text));
    }
    return parts.length === 1 ? code(parts[0]) : code(parts.join(" + "), Binds.Sum);
  }

  private asText(node: ts.Expression, place: Place): string {
    return this.is(node, "string")
      ? this.text(node, place, Binds.Product)
      : `_str(${this.text(node, place)})`;
  }

  /** An expression where only its truth counts. */
  private test(written: ts.Expression, place: Place): Code {
    const node = bare(written);
    if (ts.isPrefixUnaryExpression(node) && node.operator === ts.SyntaxKind.ExclamationToken) {
      return code(`not ${within(this.test(node.operand, place), Binds.Not)}`, Binds.Not);
    }
    if (ts.isBinaryExpression(node)) {
      const { kind } = node.operatorToken;
      if (kind === ts.SyntaxKind.AmpersandAmpersandToken || kind === ts.SyntaxKind.BarBarToken) {
        const [word, binds] =
          kind === ts.SyntaxKind.BarBarToken ? ["or", Binds.Or] : ["and", Binds.And];
        const left = within(this.test(node.left, place), binds as Binds);
        const right = within(this.test(node.right, place), binds as Binds);
        return code(`${left} ${word} ${right}`, binds as Binds);
      }
    }
    const value = this.expression(node, place);
    const kinds = this.kinds.of(node);
    if (isOnly(kinds, "boolean", "string", "nothing") || isOnly(kinds, "bigint")) return value;
    if (isOnly(kinds, "array", "object", "map", "set", "function", "regexp", "nothing")) {
      return code(`${within(value, Binds.Sum)} is not None`, Binds.Compare);
    }
    return code(`_truthy(${value.text})`);
  }

  private binary(node: ts.BinaryExpression, place: Place): Code {
    const { kind } = node.operatorToken;
    if (kind === ts.SyntaxKind.EqualsToken || kind in ASSIGNMENTS) {
      return this.assignment(node, place);
    }
    switch (kind) {
      case ts.SyntaxKind.EqualsEqualsEqualsToken:
        return this.equality(node, place, true);
      case ts.SyntaxKind.ExclamationEqualsEqualsToken:
        return this.equality(node, place, false);
      case ts.SyntaxKind.EqualsEqualsToken:
      case ts.SyntaxKind.ExclamationEqualsToken:
        // Between two numbers, and for nothing of either kind, it is the strict one.
        if (!this.is(node.left, "number") && node.right.kind !== ts.SyntaxKind.NullKeyword) {
          throw new Refusal(node, "compares without regard to kinds");
        }
        return this.equality(node, place, kind === ts.SyntaxKind.EqualsEqualsToken);
      case ts.SyntaxKind.AmpersandAmpersandToken:
      case ts.SyntaxKind.BarBarToken:
      case ts.SyntaxKind.QuestionQuestionToken:
        return this.either(node, place);
      case ts.SyntaxKind.CommaToken:
        return code(`(${this.text(node.left, place)}, ${this.text(node.right, place)})[1]`);
      case ts.SyntaxKind.InstanceOfKeyword:
        return code(`isinstance(${this.text(node.left, place)}, ${this.text(node.right, place)})`);
      case ts.SyntaxKind.InKeyword:
        return code(`_has(${this.text(node.right, place)}, ${this.text(node.left, place)})`);
      default:
        return this.operation(kind, node.left, node.right, node, place);
    }
  }

  /** An operation on numbers, or on text where it is "+" or a comparison. */
  private operation(
    kind: ts.SyntaxKind,
    left: ts.Expression,
    right: ts.Expression,
    node: ts.Node,
    place: Place,
  ): Code {
    const bothAre = (...kinds: readonly Kind[]) =>
      this.is(left, ...kinds) && this.is(right, ...kinds);
    // A library's script, which says little of its types, reckons with numbers.
    const areNumbers =
      bothAre("number") ||
      (isScript(node) && bothAre("number", "anything", "nothing", "object", "boolean"));
    const areWhole = bothAre("bigint");
    const comparison = COMPARISONS[kind];
    if (comparison !== undefined) {
      if (!areNumbers && !areWhole && !bothAre("string")) {
        throw new Refusal(node, "compares what may be other than two numbers or two texts");
      }
      const a = this.text(left, place, Binds.Sum);
      return code(`${a} ${comparison} ${this.text(right, place, Binds.Sum)}`, Binds.Compare);
    }
    if (kind === ts.SyntaxKind.PlusToken && !areNumbers && !areWhole) {
      if (
        bothAre("string", "number", "boolean") &&
        (this.is(left, "string") || this.is(right, "string"))
      ) {
        return code(`${this.asText(left, place)} + ${this.asText(right, place)}`, Binds.Sum);
      }
      throw new Refusal(node, "adds what may be other than two numbers or two texts");
    }
    if (!areNumbers && !areWhole) throw new Refusal(node, "reckons with what may be no number");
    const a = (loosest: Binds) => this.text(left, place, loosest);
    const b = (loosest: Binds) => this.text(right, place, loosest);
    switch (kind) {
      case ts.SyntaxKind.PlusToken:
        return code(`${a(Binds.Sum)} + ${b(Binds.Product)}`, Binds.Sum);
      case ts.SyntaxKind.MinusToken:
        return code(`${a(Binds.Sum)} - ${b(Binds.Product)}`, Binds.Sum);
      case ts.SyntaxKind.AsteriskToken:
        return code(`${a(Binds.Product)} * ${b(Binds.Sign)}`, Binds.Product);
      case ts.SyntaxKind.SlashToken:
        return areWhole
          ? code(`_quotient(${a(Binds.Choice)}, ${b(Binds.Choice)})`)
          : this.division(left, right, place);
      case ts.SyntaxKind.PercentToken:
        if (areWhole) break;
        return code(`_mod(${a(Binds.Choice)}, ${b(Binds.Choice)})`);
      case ts.SyntaxKind.AsteriskAsteriskToken:
        return areWhole
          ? code(`${a(Binds.Atom)} ** ${b(Binds.Atom)}`, Binds.Sign)
          : code(`_pow(${a(Binds.Choice)}, ${b(Binds.Choice)})`);
    }
    const bitwise = BITWISE[kind];
    if (bitwise !== undefined && !areWhole) {
      const [one, other] = [a(Binds.Choice), b(Binds.Choice)];
      return code(`_int32(_int32(${one}) ${bitwise} _int32(${other}))`);
    }
    const shift = SHIFTS[kind];
    if (shift !== undefined && !areWhole) {
      return code(`${shift}(${a(Binds.Choice)}, ${b(Binds.Choice)})`);
    }
    throw new Refusal(node, "an operation that is not known");
  }

  /** Python raises where the language gives infinity or no number. */
  private division(left: ts.Expression, right: ts.Expression, place: Place): Code {
    const over = bare(right);
    const a = this.text(left, place, Binds.Product);
    const b = this.text(over, place, Binds.Sign);
    if (this.isSurelyNotZero(over)) return code(`${a} / ${b}`, Binds.Product);
    // Only one of the two is worked out, whatever it is, once; it must not change the divisor.
    if (isSimple(b) && isRepeatable(over) && !doesSomething(left) && a.length <= LONGEST_TWICE) {
      return code(`${a} / ${b} if ${b} else _by_zero(${a}, ${b})`, Binds.Choice);
    }
    return code(`_div(${this.text(left, place)}, ${this.text(over, place)})`);
  }

  private isSurelyNotZero(node: ts.Expression): boolean {
    if (ts.isNumericLiteral(node)) return Number(node.text) !== 0;
    if (ts.isPropertyAccessExpression(node) && this.namespaceOf(node.expression) === "Math") {
      return true;
    }
    const type = this.checker.getTypeAtLocation(node);
    if (type.isNumberLiteral()) return type.value !== 0 && this.isConstant(node);
    if (!ts.isIdentifier(node) || !this.isConstant(node)) return false;
    // A constant of a file that is made of literals alone.
    const symbol = this.declared.symbolAt(node);
    const declaration = symbol && this.declared.of(symbol);
    const value =
      declaration !== undefined && ts.isVariableDeclaration(declaration)
        ? declaration.initializer
        : undefined;
    const number = value === undefined ? undefined : this.valueOf(value);
    return number !== undefined && number !== 0 && Number.isFinite(number);
  }

  private isConstant(node: ts.Expression): boolean {
    if (!ts.isIdentifier(node)) return false;
    const symbol = this.declared.symbolAt(node);
    const declaration = symbol && this.declared.of(symbol);
    return (
      declaration !== undefined &&
      ts.isVariableDeclaration(declaration) &&
      (ts.getCombinedNodeFlags(declaration) & ts.NodeFlags.Const) !== 0
    );
  }

  /** The value of an expression made of literals and constants alone; undefined for any other. */
  private valueOf(written: ts.Expression): number | undefined {
    const node = bare(written);
    if (ts.isNumericLiteral(node)) return Number(node.text);
    if (ts.isBinaryExpression(node)) {
      const a = this.valueOf(node.left);
      const b = this.valueOf(node.right);
      if (a === undefined || b === undefined) return undefined;
      switch (node.operatorToken.kind) {
        case ts.SyntaxKind.AsteriskToken:
          return a * b;
        case ts.SyntaxKind.SlashToken:
          return a / b;
        case ts.SyntaxKind.PlusToken:
          return a + b;
        case ts.SyntaxKind.MinusToken:
          return a - b;
        case ts.SyntaxKind.AsteriskAsteriskToken:
          return a ** b;
        default:
          return undefined;
      }
    }
    if (ts.isIdentifier(node) && this.isConstant(node)) {
      const symbol = this.declared.symbolAt(node);
      const declaration = symbol && (this.declared.of(symbol) as ts.VariableDeclaration);
      return declaration?.initializer === undefined
        ? undefined
        : this.valueOf(declaration.initializer);
    }
    return undefined;
  }

  private equality(node: ts.BinaryExpression, place: Place, equal: boolean): Code {
    const [left, right] = [bare(node.left), bare(node.right)];
    if (ts.isTypeOfExpression(left) && ts.isStringLiteral(right)) {
      return this.typeTest(left.expression, right.text, place, equal);
    }
    const both = new Set([...this.kinds.of(left), ...this.kinds.of(right)]);
    const a = this.text(left, place, Binds.Sum);
    const b = this.text(right, place, Binds.Sum);
    const isLiteral = (expression: ts.Expression) =>
      [ts.SyntaxKind.TrueKeyword, ts.SyntaxKind.FalseKeyword].includes(expression.kind) ||
      this.is(expression, "nothing");
    if (isLiteral(left) || isLiteral(right)) {
      return code(`${a} ${equal ? "is" : "is not"} ${b}`, Binds.Compare);
    }
    if (
      isOnly(both, "number", "nothing") ||
      isOnly(both, "string", "nothing") ||
      isOnly(both, "bigint") ||
      ts.isStringLiteralLike(left) ||
      ts.isStringLiteralLike(right)
    ) {
      return code(`${a} ${equal ? "==" : "!="} ${b}`, Binds.Compare);
    }
    if (
      isOnly(both, "boolean", "nothing") ||
      isOnly(both, "array", "map", "set", "object", "function", "nothing")
    ) {
      return code(`${a} ${equal ? "is" : "is not"} ${b}`, Binds.Compare);
    }
    const same = `_same(${this.text(left, place)}, ${this.text(right, place)})`;
    return equal ? code(same) : code(`not ${same}`, Binds.Not);
  }

  private typeTest(tested: ts.Expression, type: string, place: Place, equal: boolean): Code {
    const value = this.text(tested, place);
    const positive = (text: string, binds = Binds.Atom) =>
      equal ? code(text, binds) : code(`not ${within({ text, binds }, Binds.Not)}`, Binds.Not);
    switch (type) {
      case "number":
        return positive(`_is_number(${value})`);
      case "string":
        return code(`type(${value}) ${equal ? "is" : "is not"} str`, Binds.Compare);
      case "boolean":
        return code(`type(${value}) ${equal ? "is" : "is not"} bool`, Binds.Compare);
      case "undefined":
      case "object":
      case "function":
        return code(`_typeof(${value}) ${equal ? "==" : "!="} ${quoted(type)}`, Binds.Compare);
      default:
        throw new Refusal(tested, `typeof ${type} is not known`);
    }
  }

  /** `&&`, `||` and `??` for their value. */
  private either(node: ts.BinaryExpression, place: Place): Code {
    const { kind } = node.operatorToken;
    const right = this.text(node.right, place, Binds.Or);
    if (kind !== ts.SyntaxKind.QuestionQuestionToken && this.is(node.left, "boolean")) {
      const [word, binds] =
        kind === ts.SyntaxKind.BarBarToken ? ["or", Binds.Or] : ["and", Binds.And];
      const left = within(this.test(node.left, place), binds as Binds);
      return code(
        `${left} ${word} ${this.text(node.right, place, binds as Binds)}`,
        binds as Binds,
      );
    }
    const left = this.expression(node.left, place);
    const simple = isSimple(left.text);
    const name = simple ? left.text : this.fresh(place);
    const first = simple ? left.text : `(${name} := ${left.text})`;
    if (kind === ts.SyntaxKind.QuestionQuestionToken) {
      return code(`${name} if ${first} is not None else ${right}`, Binds.Choice);
    }
    const [then, otherwise] = kind === ts.SyntaxKind.BarBarToken ? [name, right] : [right, name];
    return code(`${then} if _truthy(${first}) else ${otherwise}`, Binds.Choice);
  }

  private fresh(place: Place): string {
    return place.scope.take("kept");
  }

  private assignment(node: ts.BinaryExpression, place: Place): Code {
    const left = bare(node.left);
    if (ts.isIdentifier(left)) {
      const value = this.assigned(node, place);
      return code(`(${this.target(left, place)} := ${value.text})`);
    }
    if (ts.isPropertyAccessExpression(left)) {
      const target = this.text(left.expression, place);
      if (left.name.text === "length")
        throw new Refusal(node, "sets a length inside an expression");
      const name = quoted(attribute(left.name.text));
      if (node.operatorToken.kind !== ts.SyntaxKind.EqualsToken && !isSimple(target)) {
        throw new Refusal(node, "changes a property of what would be worked out twice");
      }
      return code(`_set_attribute(${target}, ${name}, ${this.assigned(node, place).text})`);
    }
    if (ts.isElementAccessExpression(left)) {
      const target = this.text(left.expression, place);
      const index = this.text(left.argumentExpression, place);
      const isPlain = node.operatorToken.kind === ts.SyntaxKind.EqualsToken;
      if (!isPlain && !(isRepeatable(left.expression) && isRepeatable(left.argumentExpression))) {
        throw new Refusal(node, "changes an entry of what would be worked out twice");
      }
      return code(`_put(${target}, ${index}, ${this.assigned(node, place).text})`);
    }
    throw new Refusal(node, "an assignment that is not known");
  }

  /** What an assignment of any kind puts in place. */
  private assigned(node: ts.BinaryExpression, place: Place): Code {
    const operator = ASSIGNMENTS[node.operatorToken.kind];
    if (operator === undefined) return this.expression(node.right, place);
    if (
      operator === ts.SyntaxKind.QuestionQuestionToken ||
      operator === ts.SyntaxKind.BarBarToken ||
      operator === ts.SyntaxKind.AmpersandAmpersandToken
    ) {
      throw new Refusal(node, "an assignment that may not take place");
    }
    return this.operation(operator, node.left, node.right, node, place);
  }

  private prefix(node: ts.PrefixUnaryExpression, place: Place): Code {
    switch (node.operator) {
      case ts.SyntaxKind.ExclamationToken:
        return this.test(node, place);
      case ts.SyntaxKind.MinusToken: {
        const operand = bare(node.operand);
        if (ts.isNumericLiteral(operand) && Number(operand.text) === 0)
          return code("-0.0", Binds.Sign);
        return code(`-${this.text(operand, place, Binds.Atom)}`, Binds.Sign);
      }
      case ts.SyntaxKind.PlusToken:
        return code(`_Number(${this.text(node.operand, place)})`);
      case ts.SyntaxKind.TildeToken:
        return code(`~_int32(${this.text(node.operand, place)})`, Binds.Sign);
      case ts.SyntaxKind.PlusPlusToken:
      case ts.SyntaxKind.MinusMinusToken:
        return code(this.stepped(node.operand, node.operator, place));
    }
  }

  private postfix(node: ts.PostfixUnaryExpression, place: Place): Code {
    const stepped = this.stepped(node.operand, node.operator, place);
    const back = node.operator === ts.SyntaxKind.PlusPlusToken ? "-" : "+";
    return code(`${stepped} ${back} 1`, Binds.Sum);
  }

  private stepped(written: ts.Expression, operator: ts.SyntaxKind, place: Place): string {
    const operand = bare(written);
    const sign = operator === ts.SyntaxKind.PlusPlusToken ? "+" : "-";
    if (ts.isIdentifier(operand)) {
      const name = this.target(operand, place);
      return `(${name} := ${name} ${sign} 1)`;
    }
    if (ts.isPropertyAccessExpression(operand)) {
      const target = this.text(operand.expression, place);
      if (!isSimple(target)) throw new Refusal(operand, "steps what would be worked out twice");
      const name = attribute(operand.name.text);
      return `_set_attribute(${target}, ${quoted(name)}, ${target}.${name} ${sign} 1)`;
    }
    throw new Refusal(operand, "steps what is not known");
  }

  // Parts of values

  /** Writes an optional chain: nothing as soon as what is asked is nothing. */
  private optional(
    node: ts.PropertyAccessExpression | ts.ElementAccessExpression | ts.CallExpression,
    place: Place,
  ): Code | undefined {
    if (!ts.isOptionalChain(node)) return undefined;
    let link: ts.Expression = node;
    while (!hasQuestion(link)) {
      link = (link as ts.PropertyAccessExpression).expression;
    }
    const base = bare((link as ts.PropertyAccessExpression).expression);
    if (this.atHand.has(base)) return undefined;
    const value = this.expression(base, place);
    const simple = isSimple(value.text);
    const name = simple ? value.text : this.fresh(place);
    const first = simple ? value.text : `(${name} := ${value.text})`;
    this.atHand.set(base, name);
    const rest = this.text(node, place, Binds.Choice);
    this.atHand.delete(base);
    return code(`None if ${first} is None else ${rest}`, Binds.Choice);
  }

  private property(node: ts.PropertyAccessExpression, place: Place): Code {
    const optional = this.optional(node, place);
    if (optional !== undefined) return optional;
    const name = node.name.text;
    const namespace = this.namespaceOf(node.expression);
    if (namespace !== undefined) return code(this.ofRuntime(`_${namespace}_${name}`, node));
    const constant = this.checker.getConstantValue(node);
    if (constant !== undefined) {
      return code(typeof constant === "string" ? quoted(constant) : String(constant));
    }
    if (this.isNamespaceImport(node.expression))
      return this.identifier(node.name as ts.Identifier, place);
    const value = this.text(node.expression, place, Binds.Atom);
    const kinds = this.givenKinds(node.expression);
    if (name === "length" && !isOnly(kinds, "object")) {
      return code(isOnly(kinds, "array", "string") ? `len(${value})` : `_len(${value})`);
    }
    if (name === "size" && isOnly(kinds, "map", "set")) return code(`len(${value})`);
    if (!isOnly(kinds, "object", "anything", "function")) {
      throw new Refusal(node, `the property ${name} of this kind of value is not known`);
    }
    if (isOnly(kinds, "function") && !isScript(node)) {
      throw new Refusal(node, "a property of a function");
    }
    if (this.isOfTheLanguage(node.name)) throw new Refusal(node, `${name} is not known`);
    return code(`${value}.${attribute(name)}`);
  }

  /** Kinds without "nothing": where a part is asked for, there is something. */
  private givenKinds(node: ts.Expression): ReadonlySet<Kind> {
    return new Set([...this.kinds.of(node)].filter((kind) => kind !== "nothing"));
  }

  private isOfTheLanguage(name: ts.Node): boolean {
    const symbol = this.checker.getSymbolAtLocation(name);
    const files = symbol?.declarations?.map((declaration) => declaration.getSourceFile().fileName);
    const isLib = (file: string) => /\/typescript\/lib\/lib\.[\w.]+\.d\.ts$/.test(file);
    if (files?.some(isLib) !== true) return false;
    // Errors have a name and a message here too.
    return !(symbol?.name === "message" || symbol?.name === "name");
  }

  private namespaceOf(node: ts.Expression): string | undefined {
    if (!ts.isIdentifier(node) || !NAMESPACES.has(node.text)) return undefined;
    const symbol = this.checker.getSymbolAtLocation(node);
    const isOwn = symbol?.declarations?.some((one) => !one.getSourceFile().isDeclarationFile);
    return isOwn ? undefined : node.text;
  }

  private isNamespaceImport(node: ts.Expression): boolean {
    if (!ts.isIdentifier(node)) return false;
    const declaration = this.checker.getSymbolAtLocation(node)?.declarations?.[0];
    return declaration !== undefined && ts.isNamespaceImport(declaration);
  }

  private ofRuntime(name: string, node: ts.Node): string {
    if (!this.runtime.has(name)) throw new Refusal(node, "the runtime has nothing for this");
    return name;
  }

  private element(node: ts.ElementAccessExpression, place: Place): Code {
    const optional = this.optional(node, place);
    if (optional !== undefined) return optional;
    const kinds = this.givenKinds(node.expression);
    const index = bare(node.argumentExpression);
    if (isOnly(kinds, "array") && this.isSafePlace(index, node)) {
      const value = this.text(node.expression, place, Binds.Atom);
      return code(`${value}[${this.text(index, place)}]`);
    }
    const value = this.text(node.expression, place);
    const isNumber = isOnly(kinds, "array") && this.is(node, "number") && isReckonedWith(node);
    const text = this.text(index, place);
    if (isOnly(kinds, "array") && this.places.isPlace(index) && isSimple(value)) {
      if (this.isOfTuple(node.expression, index)) return code(`${value}[${text}]`);
      if (isRepeatable(index)) return entryOf(value, text, isNumber ? "_nan" : "None");
    }
    if (isNumber) return code(`_number_at(${value}, ${text})`);
    const at = isOnly(kinds, "array", "string") ? "_at" : "_get";
    return code(`${at}(${value}, ${text})`);
  }

  /** Whether a list, by its type, surely has an entry at a place. */
  private isOfTuple(list: ts.Expression, index: ts.Expression): boolean {
    const type = this.checker.getTypeAtLocation(list);
    return (
      ts.isNumericLiteral(index) &&
      this.checker.isTupleType(type) &&
      Number(index.text) < (type as ts.TupleTypeReference).target.minLength
    );
  }

  /** A place in a list that is surely no negative one, and that nobody asks whether it is there. */
  private isSafePlace(index: ts.Expression, node: ts.ElementAccessExpression): boolean {
    const { parent } = node;
    if (ts.isOptionalChain(parent)) return false;
    if (ts.isBinaryExpression(parent)) {
      const { kind } = parent.operatorToken;
      if (
        kind === ts.SyntaxKind.QuestionQuestionToken ||
        kind === ts.SyntaxKind.EqualsEqualsEqualsToken ||
        kind === ts.SyntaxKind.ExclamationEqualsEqualsToken
      ) {
        return false;
      }
    }
    if (ts.isIdentifier(index)) return this.places.isCounterFrom(index, 0);
    return (
      ts.isBinaryExpression(index) &&
      index.operatorToken.kind === ts.SyntaxKind.MinusToken &&
      ts.isNumericLiteral(index.right) &&
      this.places.isCounterFrom(index.left, Number(index.right.text))
    );
  }

  private list(node: ts.ArrayLiteralExpression, place: Place): Code {
    const parts = node.elements.map((element) => {
      if (!ts.isSpreadElement(element)) return this.text(element, place);
      const value = this.text(element.expression, place, Binds.Sum);
      return this.is(element.expression, "array", "set") ? `*${value}` : `*_iter(${value})`;
    });
    return code(`[${parts.join(", ")}]`);
  }

  private object(node: ts.ObjectLiteralExpression, place: Place): Code {
    const entries: { readonly key?: string; readonly text: string }[] = [];
    for (const property of node.properties) {
      if (ts.isSpreadAssignment(property)) {
        entries.push({ text: `**${this.spreadEntries(property.expression, place)}` });
      } else if (ts.isShorthandPropertyAssignment(property)) {
        const value = this.identifier(property.name, place).text;
        entries.push({ key: attribute(property.name.text), text: value });
      } else if (ts.isPropertyAssignment(property)) {
        const value = this.text(property.initializer, place);
        const { name } = property;
        if (ts.isComputedPropertyName(name)) {
          entries.push({ text: `_key(${this.text(name.expression, place)}): ${value}` });
        } else if (ts.isNumericLiteral(name)) {
          entries.push({ key: String(Number(name.text)), text: value });
        } else {
          entries.push({
            key: attribute((name as ts.Identifier | ts.StringLiteral).text),
            text: value,
          });
        }
      } else if (ts.isMethodDeclaration(property) && ts.isIdentifier(property.name)) {
        const name = this.hoisted(property, plainName(property.name.text), place, false);
        entries.push({ key: attribute(property.name.text), text: name });
      } else {
        throw new Refusal(property, "an entry of an object that is not known");
      }
    }
    const isPlain = entries.every(({ key }) => key !== undefined && /^[A-Za-z_$][\w$]*$/.test(key));
    if (isPlain && new Set(entries.map(({ key }) => key)).size === entries.length) {
      return code(`_Obj(${entries.map(({ key, text }) => `${key}=${text}`).join(", ")})`);
    }
    const pairs = entries.map(({ key, text }) =>
      key === undefined ? text : `${quoted(key)}: ${text}`,
    );
    return code(`_Obj(**{${pairs.join(", ")}})`);
  }

  private spreadEntries(node: ts.Expression, place: Place): string {
    const written = bare(node);
    if (!this.isNamespaceImport(written)) return `_own(${this.text(written, place)})`;
    const symbol = this.checker.getSymbolAtLocation(written);
    const file = symbol && this.checker.getAliasedSymbol(symbol);
    const exports = file === undefined ? [] : this.checker.getExportsOfModule(file);
    const pairs = exports.flatMap((one) => {
      const declaration = this.declared.of(one);
      const name = declaration && this.names.get(declaration);
      return name === undefined ? [] : [`${quoted(attribute(one.name))}: ${name}`];
    });
    return `{${pairs.join(", ")}}`;
  }

  // Calls

  private argumentsOf(node: ts.CallExpression | ts.NewExpression, place: Place): string[] {
    return (node.arguments ?? []).map((argument) => this.argument(argument, place));
  }

  private argument(node: ts.Expression, place: Place): string {
    if (ts.isSpreadElement(node)) {
      const value = this.text(node.expression, place, Binds.Sum);
      return this.is(node.expression, "array", "set") ? `*${value}` : `*_iter(${value})`;
    }
    return this.asGiven(node, place);
  }

  /** A named function that is given more than it takes must be told to drop the rest. */
  private asGiven(node: ts.Expression, place: Place): string {
    const text = this.text(node, place);
    const written = bare(node);
    if (!ts.isIdentifier(written) && !ts.isPropertyAccessExpression(written)) return text;
    if (!this.is(written, "function")) return text;
    const taken = this.countTaken(written);
    const given = this.countGiven(written);
    return given !== undefined && taken < given ? `_fewer(${text}, ${taken})` : text;
  }

  /** How many arguments a function takes. */
  private countTaken(node: ts.Expression): number {
    const [signature] = this.checker.getTypeAtLocation(node).getCallSignatures();
    if (signature === undefined) return 1;
    const declaration = signature.getDeclaration() as ts.SignatureDeclaration | undefined;
    const hasRest = declaration?.parameters.some((one) => one.dotDotDotToken !== undefined);
    return hasRest ? Infinity : signature.getParameters().length;
  }

  /** How many arguments a function will be given where it stands, as far as the types say. */
  private countGiven(node: ts.Expression): number | undefined {
    const type = this.checker.getContextualType(node);
    const [signature] =
      type === undefined ? [] : this.checker.getNonNullableType(type).getCallSignatures();
    if (signature === undefined) return undefined;
    const declaration = signature.getDeclaration() as ts.SignatureDeclaration | undefined;
    const hasRest = declaration?.parameters.some((one) => one.dotDotDotToken !== undefined);
    return hasRest ? undefined : signature.getParameters().length;
  }

  private call(node: ts.CallExpression, place: Place): Code {
    const optional = this.optional(node, place);
    if (optional !== undefined) return optional;
    const callee = bare(node.expression);
    if (callee.kind === ts.SyntaxKind.SuperKeyword) {
      return code(`super().__init__(${this.argumentsOf(node, place).join(", ")})`);
    }
    if (ts.isPropertyAccessExpression(callee)) {
      const method = this.method(node, callee, place);
      if (method !== undefined) return method;
    }
    const called = this.text(callee, place, Binds.Atom);
    return code(`${called}(${this.argumentsOf(node, place).join(", ")})`);
  }

  private method(
    node: ts.CallExpression,
    callee: ts.PropertyAccessExpression,
    place: Place,
  ): Code | undefined {
    const name = callee.name.text;
    const namespace = this.namespaceOf(callee.expression);
    if (namespace !== undefined) return this.ofNamespace(node, namespace, name, place);
    if (this.isNamespaceImport(callee.expression)) return undefined;
    const kinds = this.givenKinds(callee.expression);
    const [kind] = kinds;
    const methods = kinds.size === 1 ? METHODS[kind] : undefined;
    if (methods !== undefined) {
      const known = methods.get(name);
      if (known === undefined) throw new Refusal(node, `the method ${name} is not known`);
      return this.builtIn(node, callee, known, place);
    }
    if (isOnly(kinds, "object") && !isScript(node)) {
      if (this.isOfTheLanguage(callee.name)) throw new Refusal(node, `${name} is not known`);
      return undefined;
    }
    const isLibrary = isScript(node) || this.isOfLibrary(callee.expression);
    if (isLibrary && isOnly(kinds, "object", "anything", "function")) {
      if (callee.expression.kind === ts.SyntaxKind.ThisKeyword && this.isInClass(node)) {
        return undefined;
      }
      const given = [this.text(callee.expression, place), quoted(attribute(name))];
      return code(`_call(${[...given, ...this.argumentsOf(node, place)].join(", ")})`);
    }
    throw new Refusal(node, `the method ${name} of what may be several kinds of value`);
  }

  /** Whether a value is a part of what a library hands over. */
  private isOfLibrary(node: ts.Expression): boolean {
    let root = node;
    while (ts.isPropertyAccessExpression(root)) root = root.expression;
    return ts.isIdentifier(root) && this.fromLibrary(this.declared.symbolAt(root)) !== undefined;
  }

  private isInClass(node: ts.Node): boolean {
    return ts.findAncestor(node, ts.isClassLike) !== undefined;
  }

  private ofNamespace(
    node: ts.CallExpression,
    namespace: string,
    name: string,
    place: Place,
  ): Code {
    const runtime = this.ofRuntime(`_${namespace}_${name}`, node);
    const given = this.argumentsOf(node, place);
    const isSpread = node.arguments.some(ts.isSpreadElement);
    if ((runtime === "_Math_max" || runtime === "_Math_min") && given.length === 2 && !isSpread) {
      return code(`_${name}2(${given.join(", ")})`);
    }
    if (runtime === "_Array_from" && node.arguments.length === 2) {
      const count = this.countTaken(node.arguments[1]);
      if (count === 1) return code(`${runtime}(${given.join(", ")})`);
      return code(`${runtime}(${given.join(", ")}, ${Math.min(count, 2)})`);
    }
    return code(`${runtime}(${given.join(", ")})`);
  }

  private builtIn(
    node: ts.CallExpression,
    callee: ts.PropertyAccessExpression,
    { runtime, gives, countBehind }: Method,
    place: Place,
  ): Code {
    // The function that is handed over stands first, but in a replacement.
    const first = node.arguments[runtime === "_replace" ? 1 : 0];
    const inline = this.inlined(node, callee, runtime, place);
    if (inline !== undefined) return inline;
    const receiver = this.text(callee.expression, place);
    const given =
      gives === undefined || first === undefined
        ? this.argumentsOf(node, place)
        : node.arguments.map((argument) => this.text(argument, place));
    if (gives !== undefined && first !== undefined && countBehind !== undefined) {
      if (this.is(first, "function")) {
        const count = Math.min(this.countTaken(first), gives);
        const usual = runtime === "_reduce" || runtime === "_reduceRight" ? 2 : 1;
        if (count !== usual) given.push(`count=${count}`);
      } else if (runtime !== "_replace") {
        throw new Refusal(node, "hands over what may be no function");
      }
    }
    return code(`${runtime}(${[receiver, ...given].join(", ")})`);
  }

  /** A short function handed to a list's method is written into a comprehension. */
  private inlined(
    node: ts.CallExpression,
    callee: ts.PropertyAccessExpression,
    runtime: string,
    place: Place,
  ): Code | undefined {
    const written = bare(node.arguments[0] ?? node);
    if (!["_map", "_filter", "_some", "_every"].includes(runtime)) return undefined;
    if (node.arguments.length !== 1 || !ts.isArrowFunction(written)) return undefined;
    if (
      ts.isBlock(written.body) ||
      written.parameters.length > 2 ||
      written.parameters.length === 0
    ) {
      return undefined;
    }
    if (containsFunction(written.body)) return undefined;
    const scope = new Scope(place.scope, written);
    const parameters = written.parameters.map((parameter) =>
      this.simpleParameter(parameter, scope),
    );
    if (parameters.some((parameter) => parameter === undefined)) return undefined;
    const inner: Place = { scope, out: new Lines() };
    const result =
      runtime === "_map"
        ? this.text(written.body, inner)
        : within(this.test(written.body, inner), Binds.Or);
    if (result.includes(":=") || !inner.out.isEmpty) return undefined;
    const list = this.text(callee.expression, place, Binds.Or);
    if (list.includes(":=")) return undefined;
    const [value, index] = parameters;
    const over =
      index === undefined ? `${value} in ${list}` : `${index}, ${value} in enumerate(${list})`;
    switch (runtime) {
      case "_map":
        return code(`[${result} for ${over}]`);
      case "_filter":
        return code(`[${value} for ${over} if ${result}]`);
      case "_some":
        return code(`any(${result} for ${over})`);
      default:
        return code(`all(${result} for ${over})`);
    }
  }

  /** The name of a parameter that is a name, or a pattern whose parts can be asked for each time. */
  private simpleParameter(parameter: ts.ParameterDeclaration, scope: Scope): string | undefined {
    if (parameter.initializer !== undefined || parameter.dotDotDotToken !== undefined) {
      return undefined;
    }
    if (ts.isIdentifier(parameter.name)) return this.nameOnce(parameter.name, scope);
    const { elements } = parameter.name;
    const isPlain = elements.every(
      (element) =>
        ts.isOmittedExpression(element) ||
        (element.initializer === undefined &&
          element.dotDotDotToken === undefined &&
          ts.isIdentifier(element.name) &&
          (element.propertyName === undefined || ts.isIdentifier(element.propertyName)) &&
          (element.propertyName ?? element.name).getText() !== "length"),
    );
    if (!isPlain) return undefined;
    const name = scope.take("part");
    elements.forEach((element, i) => {
      if (ts.isOmittedExpression(element)) return;
      const key = (element.propertyName ?? element.name).getText();
      const isList = ts.isArrayBindingPattern(parameter.name);
      this.names.set(element, isList ? `_at(${name}, ${i})` : `${name}.${attribute(key)}`);
      this.owners.set(element, scope);
    });
    return name;
  }

  private construction(node: ts.NewExpression, place: Place): Code {
    const callee = bare(node.expression);
    const given = this.argumentsOf(node, place);
    if (ts.isIdentifier(callee)) {
      const declaration =
        this.declared.symbolAt(callee) &&
        this.declared.of(this.declared.symbolAt(callee) as ts.Symbol);
      const isOwn = declaration !== undefined && this.names.has(declaration);
      const constructor = CONSTRUCTORS.get(callee.text);
      if (!isOwn && constructor !== undefined) {
        if (callee.text === "Array" && given.length !== 1) {
          throw new Refusal(node, "a list made of its members");
        }
        return code(`${constructor}(${given.join(", ")})`);
      }
      if (isOwn) return code(`${this.text(callee, place)}(${given.join(", ")})`);
    }
    if (isScript(node)) {
      return code(`_construct(${[this.text(callee, place), ...given].join(", ")})`);
    }
    throw new Refusal(node, "makes what is not known");
  }

  // Functions

  /** A function as a value: a lambda where one expression says it, else a function written before. */
  private functionValue(node: ts.ArrowFunction | ts.FunctionExpression, place: Place): Code {
    const isArrow = ts.isArrowFunction(node);
    if (isArrow && !ts.isBlock(node.body)) {
      const lambda = this.lambda(node, node.body, place);
      if (lambda !== undefined) return lambda;
    }
    const wanted =
      ts.isVariableDeclaration(node.parent) && ts.isIdentifier(node.parent.name)
        ? `${plainName(node.parent.name.text)}_of`
        : "inner";
    const takesSelf = !isArrow && usesThis(node.body);
    const name = this.hoisted(node, wanted, place, takesSelf);
    return code(isArrow ? name : `_Function(${name}, ${takesSelf ? "True" : "False"})`);
  }

  private lambda(node: ts.ArrowFunction, body: ts.Expression, place: Place): Code | undefined {
    const scope = new Scope(place.scope, node);
    const names: string[] = [];
    for (const parameter of node.parameters) {
      const isRest = parameter.dotDotDotToken !== undefined;
      if (isRest && ts.isIdentifier(parameter.name)) return undefined;
      const name = this.simpleParameter(parameter, scope);
      if (name === undefined) return undefined;
      names.push(parameter.questionToken === undefined ? name : `${name}=None`);
    }
    const inner: Place = { scope, out: new Lines() };
    const taken = new Set<ts.Node>();
    this.closures.push({ scope, taken });
    const result = this.text(body, inner);
    this.closures.pop();
    if (!inner.out.isEmpty || scope.writesOutside.size > 0) return undefined;
    names.push(...this.surplus(node), ...this.boundByLoop(node, taken, place));
    const list = names.length === 0 ? "" : ` ${names.join(", ")}`;
    return code(`lambda${list}: ${result}`, Binds.Lambda);
  }

  /** What a function drops that is given more than it takes. */
  private surplus(node: ts.ArrowFunction | ts.FunctionExpression): string[] {
    const given = this.countGiven(node);
    const isMethodOfList =
      ts.isCallExpression(node.parent) &&
      ts.isPropertyAccessExpression(node.parent.expression) &&
      (this.givenKinds(node.parent.expression.expression).has("array") ||
        this.namespaceOf(node.parent.expression.expression) !== undefined);
    if (isMethodOfList || given === undefined || given <= node.parameters.length) return [];
    return node.parameters.some((one) => one.dotDotDotToken !== undefined) ? [] : ["*_unused"];
  }

  /**
   * The variables of a loop's round that a function keeps: Python would show it the last round's.
   * A function that a list's method calls at once needs no care.
   */
  private boundByLoop(node: FunctionNode, taken: ReadonlySet<ts.Node>, place: Place): string[] {
    const isCalledAtOnce =
      ts.isCallExpression(node.parent) &&
      ts.isPropertyAccessExpression(node.parent.expression) &&
      this.givenKinds(node.parent.expression.expression).has("array");
    if (isCalledAtOnce) return [];
    const bound: string[] = [];
    for (const declaration of taken) {
      const owner = this.owners.get(declaration);
      if (owner !== place.scope) continue;
      const loop = ts.findAncestor(
        node,
        (one): one is ts.IterationStatement =>
          ts.isIterationStatement(one, false) && isWithin(declaration, one),
      );
      if (loop === undefined || !isWithin(loop, owner.node)) continue;
      if (this.declared.isWrittenTo(declaration, loop)) {
        throw new Refusal(node, "keeps a variable of a loop that is written to");
      }
      const name = this.names.get(declaration);
      bound.push(`${name}=${name}`);
    }
    if (bound.length === 0) return [];
    const takesAll = "parameters" in node && this.surplus(node as ts.ArrowFunction).length > 0;
    return takesAll ? bound : ["*", ...bound];
  }

  /** Writes a function before the statement that needs it, and says its name. */
  private hoisted(node: FunctionNode, wanted: string, place: Place, takesSelf: boolean): string {
    const name = place.scope.take(wanted);
    this.define(node, name, place, takesSelf ? ["self"] : []);
    return name;
  }

  private define(
    node: FunctionNode,
    name: string,
    place: Place,
    first: readonly string[],
    before: (place: Place) => void = () => undefined,
  ): void {
    if (node.body === undefined) return;
    if (
      node.modifiers?.some(({ kind }) => kind === ts.SyntaxKind.AsyncKeyword) ||
      ("asteriskToken" in node && node.asteriskToken !== undefined)
    ) {
      throw new Refusal(node, "a function that waits or gives one after the other");
    }
    const scope = new Scope(place.scope, node);
    const body = new Lines(place.out.depth + 1);
    const inner: Place = { scope, out: body };
    const taken = new Set<ts.Node>();
    this.closures.push({ scope, taken });
    const parameters: string[] = [...first];
    const unpacked: (() => void)[] = [];
    for (const parameter of node.parameters) {
      const isRest = parameter.dotDotDotToken !== undefined;
      const own = ts.isIdentifier(parameter.name)
        ? this.nameOnce(parameter.name, scope)
        : scope.take("part");
      parameters.push(isRest ? `*${own}` : `${own}=None`);
      if (isRest) unpacked.push(() => body.add(`${own} = list(${own})`));
      const { initializer, name: pattern } = parameter;
      if (initializer !== undefined) {
        unpacked.push(() => {
          body.add(`if ${own} is None:`);
          const inside = { ...inner, out: new Lines(body.depth + 1) };
          inside.out.add(`${own} = ${this.text(initializer, inside)}`);
          body.take(inside.out);
        });
      }
      if (!ts.isIdentifier(pattern)) {
        this.nameDeclarations(parameter, scope);
        unpacked.push(() => this.unpack(pattern, own, inner));
      }
    }
    if (ts.isBlock(node.body)) this.nameDeclarations(node.body, scope);
    for (const run of unpacked) run();
    before(inner);
    if (ts.isBlock(node.body)) this.statements(node.body.statements, inner);
    else body.add(`return ${this.text(node.body, inner)}`);
    this.closures.pop();
    if (ts.isArrowFunction(node) || ts.isFunctionExpression(node)) {
      parameters.push(...this.surplus(node));
    }
    if (
      !ts.isMethodDeclaration(node) &&
      !ts.isConstructorDeclaration(node) &&
      !ts.isAccessor(node)
    ) {
      parameters.push(...this.boundByLoop(node, taken, place));
    }
    place.out.add(`def ${name}(${parameters.join(", ")}):`);
    for (const line of scope.writesOutside) {
      place.out.lines.push(`${"    ".repeat(body.depth)}${line}`);
    }
    if (body.isEmpty) body.add("pass");
    place.out.take(body);
  }

  /** Puts the parts of a value under the names of a pattern. */
  private unpack(pattern: ts.BindingPattern, value: string, place: Place): void {
    const { out } = place;
    const keys: string[] = [];
    pattern.elements.forEach((element, i) => {
      if (ts.isOmittedExpression(element)) return;
      let part: string;
      if (ts.isArrayBindingPattern(pattern)) {
        const isRest = element.dotDotDotToken !== undefined;
        if (isRest) part = `${value}[${i}:]`;
        else
          part = isSimple(value) ? entryOf(value, String(i), "None").text : `_at(${value}, ${i})`;
      } else if (element.dotDotDotToken !== undefined) {
        part = `_rest(${[value, ...keys].join(", ")})`;
      } else {
        const key = element.propertyName ?? element.name;
        if (!ts.isIdentifier(key)) throw new Refusal(element, "a part that is not known");
        keys.push(quoted(attribute(key.text)));
        part = key.text === "length" ? `_len(${value})` : `${value}.${attribute(key.text)}`;
      }
      const name = ts.isIdentifier(element.name)
        ? this.nameOnce(element.name, place.scope)
        : place.scope.take("part");
      out.add(`${name} = ${part}`);
      if (element.initializer !== undefined) {
        out.add(`if ${name} is None:`);
        const inside = { ...place, out: new Lines(out.depth + 1) };
        inside.out.add(`${name} = ${this.text(element.initializer, inside)}`);
        out.take(inside.out);
      }
      if (!ts.isIdentifier(element.name)) this.unpack(element.name, name, place);
    });
  }

  private classDefinition(node: ts.ClassDeclaration, place: Place): void {
    const { out } = place;
    const name = node.name === undefined ? undefined : this.nameOnce(node.name, place.scope);
    if (name === undefined) throw new Refusal(node, "a class without a name");
    const base = node.heritageClauses?.find(({ token }) => token === ts.SyntaxKind.ExtendsKeyword);
    const baseText = base === undefined ? "_Plain" : this.text(base.types[0].expression, place);
    out.add(`class ${name}(${baseText}):`);
    const inside: Place = { scope: place.scope, out: new Lines(out.depth + 1) };
    for (const unset of this.unsetNames(node)) inside.out.add(`${attribute(unset)} = None`);
    const fields = node.members.filter(
      (member): member is ts.PropertyDeclaration =>
        ts.isPropertyDeclaration(member) && !isStatic(member) && member.initializer !== undefined,
    );
    const written = node.members.find(
      (member): member is ts.ConstructorDeclaration =>
        ts.isConstructorDeclaration(member) && member.body !== undefined,
    );
    const setFields = (at: Place) => {
      for (const field of fields) {
        const key = attribute((field.name as ts.Identifier).text);
        at.out.add(`self.${key} = ${this.text(field.initializer as ts.Expression, at)}`);
      }
      for (const parameter of written?.parameters ?? []) {
        if (!ts.isParameterPropertyDeclaration(parameter, parameter.parent)) continue;
        const own = this.nameOnce(parameter.name as ts.Identifier, at.scope);
        at.out.add(`self.${attribute((parameter.name as ts.Identifier).text)} = ${own}`);
      }
    };
    if (written !== undefined) {
      // With a base, the fields are set as soon as it is made.
      this.afterSuper = base === undefined ? undefined : setFields;
      this.define(
        written,
        "__init__",
        inside,
        ["self"],
        base === undefined ? setFields : undefined,
      );
      this.afterSuper = undefined;
    } else if (fields.length > 0) {
      const scope = new Scope(place.scope, node);
      const body: Place = { scope, out: new Lines(inside.out.depth + 1) };
      body.out.add("super().__init__(*given)");
      setFields(body);
      inside.out.add("def __init__(self, *given):");
      inside.out.take(body.out);
    }
    for (const member of node.members) {
      if (ts.isConstructorDeclaration(member) || ts.isSemicolonClassElement(member)) continue;
      if (ts.isPropertyDeclaration(member)) {
        if (isStatic(member)) throw new Refusal(member, "a static field");
        continue;
      }
      const isMethod = ts.isMethodDeclaration(member);
      if (!isMethod && !ts.isGetAccessorDeclaration(member)) {
        throw new Refusal(member, "a member of a class that is not known");
      }
      if (member.body === undefined) continue;
      if (!isMethod) inside.out.add("@property");
      if (isStatic(member)) inside.out.add("@staticmethod");
      const own = attribute((member.name as ts.Identifier).text);
      this.define(member, own, inside, isStatic(member) ? [] : ["self"]);
    }
    if (inside.out.isEmpty) inside.out.add("pass");
    out.take(inside.out);
  }

  /**
   * What may be asked of an object of a class before, or without, its being set: it reads as nothing.
   * Everything else is there, by the types, and asking for what is not there fails.
   */
  private unsetNames(node: ts.ClassDeclaration): readonly string[] {
    const own = node.members.filter(
      (member) =>
        ts.isPropertyDeclaration(member) &&
        !isStatic(member) &&
        member.initializer === undefined &&
        // All others are set by the constructor, or the compiler says so.
        (member.exclamationToken !== undefined || this.kinds.of(member).has("nothing")),
    );
    const members = new Set(node.members.map((member) => member.name?.getText()));
    const asked = (node.heritageClauses ?? [])
      .flatMap(({ types }) => types)
      .flatMap((type) => this.checker.getTypeAtLocation(type).getProperties())
      .filter(({ flags, name }) => flags & ts.SymbolFlags.Optional && !members.has(name));
    return [...own.map((member) => member.name?.getText() ?? ""), ...asked.map(({ name }) => name)];
  }

  private afterSuper: ((place: Place) => void) | undefined;

  // Statements

  private statements(list: readonly ts.Statement[], place: Place): void {
    const isInLoop =
      list[0] !== undefined &&
      ts.findAncestor(list[0], (one) => ts.isIterationStatement(one, false)) !== undefined;
    const isFunction = (statement: ts.Statement) =>
      !isInLoop && ts.isFunctionDeclaration(statement);
    for (const statement of list) if (isFunction(statement)) this.statement(statement, place);
    for (const statement of list) if (!isFunction(statement)) this.statement(statement, place);
  }

  private block(statement: ts.Statement, place: Place): void {
    const inside: Place = { ...place, out: new Lines(place.out.depth + 1) };
    this.statements(ts.isBlock(statement) ? statement.statements : [statement], inside);
    if (inside.out.isEmpty) inside.out.add("pass");
    place.out.take(inside.out);
  }

  private statement(node: ts.Statement, place: Place): void {
    const { out } = place;
    if (ts.isVariableStatement(node)) {
      for (const one of node.declarationList.declarations) this.variable(one, place);
    } else if (ts.isExpressionStatement(node)) {
      this.expressionStatement(bare(node.expression), place);
    } else if (ts.isReturnStatement(node)) {
      const value = node.expression === undefined ? "" : ` ${this.text(node.expression, place)}`;
      out.add(`return${value}`);
    } else if (ts.isIfStatement(node)) {
      this.ifStatement(node, place, "if");
    } else if (ts.isForStatement(node)) {
      this.forStatement(node, place);
    } else if (ts.isForOfStatement(node)) {
      this.forOf(node, place);
    } else if (ts.isWhileStatement(node)) {
      this.whileLoop(node.expression, node.statement, undefined, place);
    } else if (ts.isDoStatement(node)) {
      const leave = (at: Place) => {
        const test = within(this.test(node.expression, at), Binds.Not);
        at.out.add(`if not ${test}:`);
        at.out.lines.push(`${"    ".repeat(at.out.depth + 1)}break`);
      };
      this.whileLoop(undefined, node.statement, leave, place);
    } else if (ts.isThrowStatement(node)) {
      const isError = this.is(node.expression, "object");
      const value = this.text(node.expression, place);
      out.add(isError ? `raise ${value}` : `raise _raisable(${value})`);
    } else if (ts.isFunctionDeclaration(node)) {
      if (node.body === undefined) return;
      if (node.name === undefined) throw new Refusal(node, "a function without a name");
      if (place.scope.isModule) {
        out.add("");
        out.add("");
      }
      this.define(node, this.nameOnce(node.name, place.scope), place, []);
    } else if (ts.isClassDeclaration(node)) {
      out.add("");
      out.add("");
      this.classDefinition(node, place);
    } else if (ts.isBlock(node)) {
      this.statements(node.statements, place);
    } else if (ts.isContinueStatement(node)) {
      if (node.label !== undefined) throw new Refusal(node, "a loop that is called by name");
      place.beforeContinue?.(place);
      out.add("continue");
    } else if (ts.isBreakStatement(node)) {
      if (node.label !== undefined) throw new Refusal(node, "a loop that is called by name");
      if (place.inSwitch) throw new Refusal(node, "leaves a switch from inside a case");
      out.add("break");
    } else if (ts.isTryStatement(node)) {
      this.tryStatement(node, place);
    } else if (ts.isSwitchStatement(node)) {
      this.switchStatement(node, place);
    } else if (ts.isExportDeclaration(node)) {
      if (
        !isForTypes(node) &&
        node.moduleSpecifier === undefined &&
        node.exportClause === undefined
      ) {
        throw new Refusal(node, "an export that is not known");
      }
    } else if (ts.isExportAssignment(node)) {
      throw new Refusal(node, "an export of an expression");
    } else if (
      !ts.isImportDeclaration(node) &&
      !ts.isInterfaceDeclaration(node) &&
      !ts.isTypeAliasDeclaration(node) &&
      !ts.isEnumDeclaration(node) &&
      !ts.isEmptyStatement(node)
    ) {
      throw new Refusal(node, `${ts.SyntaxKind[node.kind]} is not known`);
    }
  }

  private variable(node: ts.VariableDeclaration, place: Place): void {
    const { out } = place;
    if (ts.isIdentifier(node.name)) {
      const name = this.nameOnce(node.name, place.scope);
      const isVar = (ts.getCombinedNodeFlags(node) & ts.NodeFlags.BlockScoped) === 0;
      if (node.initializer === undefined) {
        if (!isVar || !ts.isForOfStatement(node.parent.parent)) out.add(`${name} = None`);
        return;
      }
      if (ts.isClassExpression(bare(node.initializer))) {
        throw new Refusal(node, "a class as a value");
      }
      out.add(`${name} = ${within(this.expression(node.initializer, place), Binds.Lambda)}`);
      return;
    }
    if (node.initializer === undefined) throw new Refusal(node, "a pattern without a value");
    const value = this.text(node.initializer, place);
    const isName = isSimple(value);
    const name = isName ? value : place.scope.take("part");
    if (!isName) out.add(`${name} = ${value}`);
    this.unpack(node.name, name, place);
  }

  private expressionStatement(node: ts.Expression, place: Place): void {
    const { out } = place;
    if (ts.isBinaryExpression(node)) {
      const { kind } = node.operatorToken;
      if (kind === ts.SyntaxKind.CommaToken) {
        this.expressionStatement(bare(node.left), place);
        this.expressionStatement(bare(node.right), place);
        return;
      }
      if (kind === ts.SyntaxKind.EqualsToken || kind in ASSIGNMENTS) {
        this.assignmentStatement(node, place);
        return;
      }
    }
    if (ts.isPrefixUnaryExpression(node) || ts.isPostfixUnaryExpression(node)) {
      const sign = node.operator === ts.SyntaxKind.PlusPlusToken ? "+" : "-";
      const isStep =
        node.operator === ts.SyntaxKind.PlusPlusToken ||
        node.operator === ts.SyntaxKind.MinusMinusToken;
      const operand = bare(node.operand);
      if (isStep && ts.isIdentifier(operand)) {
        const name = this.target(operand, place);
        out.add(`${name} = ${name} ${sign} 1`);
        return;
      }
      if (isStep && ts.isPropertyAccessExpression(operand)) {
        const target = this.text(operand.expression, place, Binds.Atom);
        out.add(`${target}.${attribute(operand.name.text)} ${sign}= 1`);
        return;
      }
    }
    out.add(within(this.expression(node, place), Binds.Choice));
    const called = ts.isCallExpression(node) ? bare(node.expression) : undefined;
    if (called?.kind === ts.SyntaxKind.SuperKeyword) this.afterSuper?.(place);
  }

  private assignmentStatement(node: ts.BinaryExpression, place: Place): void {
    const { out } = place;
    const left = bare(node.left);
    if (ts.isIdentifier(left)) {
      const value = this.assigned(node, place);
      out.add(`${this.target(left, place)} = ${within(value, Binds.Lambda)}`);
    } else if (ts.isPropertyAccessExpression(left)) {
      const target = this.text(left.expression, place, Binds.Atom);
      if (left.name.text === "length" && this.is(left.expression, "array")) {
        out.add(`_resize(${target}, ${this.assigned(node, place).text})`);
        return;
      }
      if (node.operatorToken.kind !== ts.SyntaxKind.EqualsToken && !isSimple(target)) {
        throw new Refusal(node, "changes a property of what would be worked out twice");
      }
      const value = within(this.assigned(node, place), Binds.Lambda);
      out.add(`${target}.${attribute(left.name.text)} = ${value}`);
    } else if (ts.isElementAccessExpression(left)) {
      this.putEntry(node, left, place);
    } else if (ts.isArrayLiteralExpression(left)) {
      const name = place.scope.take("part");
      out.add(`${name} = ${this.text(node.right, place)}`);
      left.elements.forEach((element, i) => {
        const target = bare(element);
        if (ts.isIdentifier(target)) {
          out.add(`${this.target(target, place)} = _at(${name}, ${i})`);
        } else if (ts.isPropertyAccessExpression(target)) {
          out.add(`${this.text(target, place)} = _at(${name}, ${i})`);
        } else {
          throw new Refusal(target, "writes to what is not known");
        }
      });
    } else {
      throw new Refusal(node, "an assignment that is not known");
    }
  }

  /** Writes to an entry: at once where it is there, or lets the list grow. */
  private putEntry(
    node: ts.BinaryExpression,
    left: ts.ElementAccessExpression,
    place: Place,
  ): void {
    const { out } = place;
    const index = bare(left.argumentExpression);
    const list = this.text(left.expression, place);
    const put = this.assignment(node, place).text;
    const isPlain =
      this.is(left.expression, "array") &&
      this.places.isPlace(index) &&
      isSimple(list) &&
      isRepeatable(index) &&
      (!doesSomething(node.right) || (this.isSettled(left.expression) && this.isSettled(index)));
    if (!isPlain) {
      out.add(put);
      return;
    }
    const at = this.text(index, place);
    out.add(`if ${within(code(at, Binds.Sum), Binds.Sum)} < len(${list}):`);
    out.lines.push(
      `${"    ".repeat(out.depth + 1)}${list}[${at}] = ${within(this.assigned(node, place), Binds.Lambda)}`,
    );
    out.add("else:");
    out.lines.push(`${"    ".repeat(out.depth + 1)}${put}`);
  }

  /** Whether an expression surely stays what it is, whatever is called meanwhile. */
  private isSettled(written: ts.Expression): boolean {
    const node = bare(written);
    if (ts.isNumericLiteral(node) || node.kind === ts.SyntaxKind.ThisKeyword) return true;
    if (ts.isIdentifier(node)) {
      const declaration = this.declared.at(node);
      if (declaration === undefined) return false;
      if (this.isConstant(node) || this.loops.countedBy(declaration) !== undefined) return true;
      return (
        ts.isParameter(declaration) && !this.declared.isWrittenTo(declaration, declaration.parent)
      );
    }
    if (ts.isPropertyAccessExpression(node)) {
      return this.declared.isReadonly(node) && this.isSettled(node.expression);
    }
    return ts.isBinaryExpression(node) && this.isSettled(node.left) && this.isSettled(node.right);
  }

  private ifStatement(node: ts.IfStatement, place: Place, word: "if" | "elif"): void {
    place.out.add(`${word} ${this.test(node.expression, place).text}:`);
    this.block(node.thenStatement, place);
    const otherwise = node.elseStatement;
    if (otherwise === undefined) return;
    if (ts.isIfStatement(otherwise) && !containsFunction(otherwise.expression)) {
      this.ifStatement(otherwise, place, "elif");
      return;
    }
    place.out.add("else:");
    this.block(otherwise, place);
  }

  private whileLoop(
    condition: ts.Expression | undefined,
    body: ts.Statement,
    update: ((place: Place) => void) | undefined,
    place: Place,
  ): void {
    const test = condition === undefined ? "True" : this.test(condition, place).text;
    place.out.add(`while ${test}:`);
    const inside: Place = {
      scope: place.scope,
      out: new Lines(place.out.depth + 1),
      beforeContinue: update,
    };
    this.statements(ts.isBlock(body) ? body.statements : [body], inside);
    update?.(inside);
    if (inside.out.isEmpty) inside.out.add("pass");
    place.out.take(inside.out);
  }

  private forStatement(node: ts.ForStatement, place: Place): void {
    if (this.countingLoop(node, place)) return;
    const { initializer, incrementor } = node;
    if (initializer !== undefined) {
      if (ts.isVariableDeclarationList(initializer)) {
        for (const one of initializer.declarations) this.variable(one, place);
      } else {
        this.expressionStatement(bare(initializer), place);
      }
    }
    const update =
      incrementor === undefined
        ? undefined
        : (at: Place) => this.expressionStatement(bare(incrementor), at);
    this.whileLoop(node.condition, node.statement, update, place);
  }

  /** A loop that counts by one between bounds that stay is a range. */
  private countingLoop(node: ts.ForStatement, place: Place): boolean {
    const counting = this.loops.counting(node);
    if (counting === undefined) return false;
    const { isUp, isWithEnd } = counting;
    const start = this.text(counting.start, place);
    let stop = this.text(counting.stop, place, isWithEnd ? Binds.Sum : Binds.Choice);
    if (isWithEnd) {
      // Whole steps: up to and with a bound is below the next whole number.
      stop = isUp ? `_Math_floor(${stop}) + 1` : `_Math_ceil(${stop}) - 1`;
    }
    const name = this.nameOnce(counting.name, place.scope);
    place.out.add(`for ${name} in ${isUp ? "_up" : "_down"}(${start}, ${stop}):`);
    this.block(node.statement, { scope: place.scope, out: place.out });
    return true;
  }

  private forOf(node: ts.ForOfStatement, place: Place): void {
    const { initializer } = node;
    if (!ts.isVariableDeclarationList(initializer))
      throw new Refusal(node, "a loop over a name outside");
    const [declaration] = initializer.declarations;
    const value = this.text(node.expression, place);
    const over = this.is(node.expression, "array", "set", "string") ? value : `_iter(${value})`;
    const pattern = declaration.name;
    const name = ts.isIdentifier(pattern)
      ? this.nameOnce(pattern, place.scope)
      : place.scope.take("part");
    place.out.add(`for ${name} in ${over}:`);
    const inside: Place = { scope: place.scope, out: new Lines(place.out.depth + 1) };
    if (!ts.isIdentifier(pattern)) this.unpack(pattern, name, inside);
    this.statements(
      ts.isBlock(node.statement) ? node.statement.statements : [node.statement],
      inside,
    );
    if (inside.out.isEmpty) inside.out.add("pass");
    place.out.take(inside.out);
  }

  private tryStatement(node: ts.TryStatement, place: Place): void {
    const { out } = place;
    out.add("try:");
    this.block(node.tryBlock, place);
    const clause = node.catchClause;
    if (clause !== undefined) {
      const raised = place.scope.take("raised");
      out.add(`except Exception as ${raised}:`);
      const inside: Place = { ...place, out: new Lines(out.depth + 1) };
      const variable = clause.variableDeclaration;
      if (variable !== undefined) {
        if (!ts.isIdentifier(variable.name)) throw new Refusal(variable, "a pattern of an error");
        inside.out.add(`${this.nameOnce(variable.name, place.scope)} = _caught(${raised})`);
      }
      this.statements(clause.block.statements, inside);
      if (inside.out.isEmpty) inside.out.add("pass");
      out.take(inside.out);
    }
    if (node.finallyBlock !== undefined) {
      out.add("finally:");
      this.block(node.finallyBlock, place);
    }
  }

  private switchStatement(node: ts.SwitchStatement, place: Place): void {
    const { out } = place;
    const value = this.text(node.expression, place);
    const isName = isSimple(value);
    const name = isName ? value : place.scope.take("kept");
    if (!isName) out.add(`${name} = ${value}`);
    const kinds = this.kinds.of(node.expression);
    let tests: string[] = [];
    let word = "if";
    node.caseBlock.clauses.forEach((clause, i) => {
      const isLast = i === node.caseBlock.clauses.length - 1;
      if (ts.isDefaultClause(clause)) {
        if (!isLast || tests.length > 0)
          throw new Refusal(clause, "a default that is not the last");
      } else {
        const both = new Set([...kinds, ...this.kinds.of(clause.expression)]);
        const tested = this.text(clause.expression, place, Binds.Sum);
        const isPlain = isOnly(both, "string") || isOnly(both, "number");
        tests.push(isPlain ? `${name} == ${tested}` : `_same(${name}, ${tested})`);
        if (clause.statements.length === 0 && !isLast) return;
      }
      const [only] = clause.statements;
      const statements =
        clause.statements.length === 1 && ts.isBlock(only)
          ? [...only.statements]
          : [...clause.statements];
      const last = statements[statements.length - 1];
      if (last !== undefined && ts.isBreakStatement(last)) statements.pop();
      else if (!isLast && !(last !== undefined && leaves(last))) {
        throw new Refusal(clause, "a case that runs on into the next");
      }
      if (ts.isDefaultClause(clause) && word === "if")
        throw new Refusal(node, "a switch of a default");
      out.add(ts.isDefaultClause(clause) ? "else:" : `${word} ${tests.join(" or ")}:`);
      tests = [];
      word = "elif";
      const inside: Place = { ...place, inSwitch: true, out: new Lines(out.depth + 1) };
      this.statements(statements, inside);
      if (inside.out.isEmpty) inside.out.add("pass");
      out.take(inside.out);
    });
  }
}

function numberText(node: ts.NumericLiteral): string {
  const value = Number(node.text);
  if (isWholeLiteral(node)) return String(value);
  const text = String(value);
  return /[.e]/.test(text) ? text : `${text}.0`;
}

/** Whether a value goes straight into arithmetic or a comparison, where nothing counts as no number. */
function isReckonedWith(node: ts.Expression): boolean {
  const { parent } = node;
  if (!ts.isBinaryExpression(parent)) return false;
  const { kind } = parent.operatorToken;
  return kind in COMPARISONS || ARITHMETIC.has(kind);
}

/** A name, or parts of one: nothing that has to be worked out. */
function isSimple(text: string): boolean {
  return /^[A-Za-z_]\w*(\.[A-Za-z_]\w*)*$|^-?\d+(\.\d+)?$/.test(text);
}

/** Whether an expression may be worked out twice: it reads, and does nothing else. */
function isRepeatable(written: ts.Expression): boolean {
  const node = bare(written);
  if (ts.isIdentifier(node) || ts.isNumericLiteral(node)) return true;
  if (node.kind === ts.SyntaxKind.ThisKeyword) return true;
  if (ts.isPropertyAccessExpression(node)) return isRepeatable(node.expression);
  if (!ts.isBinaryExpression(node) || writtenTarget(node) !== undefined) return false;
  return isRepeatable(node.left) && isRepeatable(node.right);
}

/** Whether working an expression out may do more than read. */
function doesSomething(node: ts.Node): boolean {
  if (ts.isCallExpression(node) || ts.isNewExpression(node) || writtenTarget(node) !== undefined) {
    return true;
  }
  return ts.forEachChild(node, doesSomething) ?? false;
}

/** An entry of a list at a place that is not negative. */
function entryOf(list: string, at: string, otherwise: string): Code {
  return code(`${list}[${at}] if ${at} < len(${list}) else ${otherwise}`, Binds.Choice);
}

function isInside(scope: Scope, outer: Scope): boolean {
  for (let one: Scope | undefined = scope.outer; one !== undefined; one = one.outer) {
    if (one === outer) return true;
  }
  return false;
}

function isWithin(node: ts.Node, outer: ts.Node): boolean {
  return ts.findAncestor(node, (one) => one === outer) !== undefined;
}

function isStatic(node: ts.ClassElement): boolean {
  return (ts.getCombinedModifierFlags(node) & ts.ModifierFlags.Static) !== 0;
}

function hasQuestion(node: ts.Node): boolean {
  return "questionDotToken" in node && node.questionDotToken !== undefined;
}

function containsFunction(node: ts.Node): boolean {
  return ts.isFunctionLike(node) || (ts.forEachChild(node, containsFunction) ?? false);
}

function usesThis(node: ts.Node): boolean {
  if (node.kind === ts.SyntaxKind.ThisKeyword) return true;
  if (ts.isFunctionExpression(node) || ts.isFunctionDeclaration(node)) return false;
  return ts.forEachChild(node, usesThis) ?? false;
}

/** Whether a statement always leaves the case it stands at the end of. */
function leaves(node: ts.Statement): boolean {
  if (ts.isBlock(node)) {
    const last = node.statements[node.statements.length - 1];
    return last !== undefined && leaves(last);
  }
  return ts.isReturnStatement(node) || ts.isThrowStatement(node) || ts.isContinueStatement(node);
}
