import ts from "typescript";

/** What the names of the file's own constants and functions stand for. */
export type Declared = ReadonlyMap<string, ts.Node>;

/** Comparisons with an expected value; the second argument is what is expected. */
const COMPARISONS = new Set(["expectClose", "expectWithin"]);
/** Matchers that hold a value against an expected one, which is their first argument. */
const MATCHERS = new Set(["toBe", "toBeCloseTo", "toEqual"]);

/** Comparisons that stand one after the other, and those in loops over tables. */
interface Count {
  readonly straight: number;
  readonly looped: number;
}

const NONE: Count = { straight: 0, looped: 0 };

/**
 * How many different expected values a check holds the product against, read without running it. A
 * comparison outside loops is one; a loop over a table that is written out in the test is one for
 * each row, however often the row is compared. What cannot be told without running is one row, and
 * a verdict in words is nothing, so that the count is rather too low; no check counts as less than one.
 */
export function valuesIn(check: ts.Node, declared: Declared): number {
  const entered = new Set<string>();
  const sumOf = (nodes: readonly ts.Node[], names: Declared): Count =>
    nodes.map((node) => count(node, names)).reduce(plus, NONE);
  const loop = (rows: number, nodes: readonly ts.Node[], names: Declared): Count => {
    const { straight, looped } = sumOf(nodes, names);
    return { straight: 0, looped: rows * (Math.min(1, straight) + looped) };
  };
  const count = (node: ts.Node, outer: Declared): Count => {
    const names = new Map([...outer, ...declaredIn(node)]);
    const inside = () => sumOf(childrenOf(node), names);
    if (ts.isForOfStatement(node)) {
      return loop(rowsOf(node.expression, names), [node.statement], names);
    }
    if (!ts.isCallExpression(node)) return inside();
    const called = node.expression;
    if (ts.isPropertyAccessExpression(called) && called.name.text === "forEach") {
      return loop(rowsOf(called.expression, names), node.arguments, names);
    }
    if (ts.isPropertyAccessExpression(called) && MATCHERS.has(called.name.text)) {
      const compares = isValue(node.arguments[0]) && !called.getText().includes(".not.");
      return compares ? { straight: 1, looped: 0 } : NONE;
    }
    if (!ts.isIdentifier(called)) return inside();
    if (COMPARISONS.has(called.text)) return { straight: 1, looped: 0 };
    const own = declared.get(called.text);
    if (own === undefined || entered.has(called.text)) return inside();
    entered.add(called.text);
    const sum = plus(count(own, names), inside());
    entered.delete(called.text);
    return sum;
  };
  const { straight, looped } = count(check, declared);
  return Math.max(1, straight + looped);
}

function plus(a: Count, b: Count): Count {
  return { straight: a.straight + b.straight, looped: a.looped + b.looped };
}

function childrenOf(node: ts.Node): ts.Node[] {
  const children: ts.Node[] = [];
  ts.forEachChild(node, (child) => {
    children.push(child);
  });
  return children;
}

/** The constants that a block declares. */
function declaredIn(node: ts.Node): [string, ts.Node][] {
  if (!ts.isBlock(node)) return [];
  return node.statements
    .filter(ts.isVariableStatement)
    .flatMap(({ declarationList }) =>
      declarationList.declarations.flatMap(({ name, initializer }): [string, ts.Node][] =>
        ts.isIdentifier(name) && initializer !== undefined ? [[name.text, initializer]] : [],
      ),
    );
}

/** Rows of a table that is written out in the test; 1 where it is not. */
function rowsOf(table: ts.Node, names: Declared): number {
  if (ts.isArrayLiteralExpression(table)) {
    return table.elements.some(ts.isSpreadElement) ? 1 : table.elements.length;
  }
  if (ts.isObjectLiteralExpression(table)) return table.properties.length;
  if (ts.isIdentifier(table)) {
    const declared = names.get(table.text);
    return declared === undefined || declared === table ? 1 : rowsOf(declared, names);
  }
  const inner = /^Object\.(entries|keys|values)$/.test(
    ts.isCallExpression(table) ? table.expression.getText() : "",
  );
  return inner ? rowsOf((table as ts.CallExpression).arguments[0], names) : 1;
}

/** Words and yes or no are verdicts, not values. */
function isValue(expected: ts.Node | undefined): boolean {
  return (
    expected !== undefined &&
    !ts.isStringLiteralLike(expected) &&
    expected.kind !== ts.SyntaxKind.TrueKeyword &&
    expected.kind !== ts.SyntaxKind.FalseKeyword
  );
}
