import ts from "typescript";
import { valuesIn } from "../../build/published-values";

/** Values of the last statement, with what the text declares before it. */
function valuesOf(text: string): number {
  const tree = ts.createSourceFile("sample.ts", text, ts.ScriptTarget.Latest, true);
  const declared = new Map<string, ts.Node>();
  for (const statement of tree.statements) {
    if (ts.isFunctionDeclaration(statement) && statement.name) {
      declared.set(statement.name.text, statement);
    }
    if (!ts.isVariableStatement(statement)) continue;
    for (const { name, initializer } of statement.declarationList.declarations) {
      if (initializer && ts.isIdentifier(name)) declared.set(name.text, initializer);
    }
  }
  return valuesIn(tree.statements[tree.statements.length - 1], declared);
}

test("each comparison outside loops is a value", () => {
  expect(
    valuesOf(`{ expectClose(f(1), 2, 0.1); expect(f(2)).toBe(3); expectWithin(f(3), 4, 1); }`),
  ).toBe(3);
});

test("a verdict in words, a denial and an order are none; a check is never less than one", () => {
  expect(
    valuesOf(`{ expect(f()).toBe("OK"); expect(f()).toBe(true); expect(f()).not.toBe(3); }`),
  ).toBe(1);
  expect(
    valuesOf(`{ expect(f()).toBeLessThan(3); expect(f()).toBe(3); expect(g()).toBe(4); }`),
  ).toBe(2);
});

test("a row of a table is one value, however often it is compared", () => {
  const table = "const TABLE = [[1, 2], [3, 4], [5, 6]];";
  const body = "expectClose(f(a), b, 0.1); expectClose(g(b), a, 0.1);";
  expect(valuesOf(`${table} { for (const [a, b] of TABLE) { ${body} } }`)).toBe(3);
  expect(
    valuesOf(`${table} { TABLE.forEach(([a, b]) => { ${body} }); expect(h()).toBe(7); }`),
  ).toBe(4);
});

test("loops in loops multiply; a table inside the check and an object's rows are seen", () => {
  expect(
    valuesOf(`const P = [1, 2]; {
      const flows = { a: [1, 2], b: [3, 4], c: [5, 6] };
      for (const [name, row] of Object.entries(flows)) { P.forEach((p, i) => { expectClose(f(name, p), row[i], 0.1); }); }
    }`),
  ).toBe(6);
});

test("what cannot be told without running is one row", () => {
  expect(valuesOf(`{ for (const x of rows()) { expectClose(f(x), x, 0.1); } }`)).toBe(1);
  expect(
    valuesOf(`const A = [...rows(), 2, 3]; { for (const x of A) { expectClose(f(x), x, 0.1); } }`),
  ).toBe(1);
});

test("the file's own functions are entered, and do not go round in circles", () => {
  expect(
    valuesOf(
      `function both(x) { expectClose(f(x), 1, 0.1); expectClose(g(x), 2, 0.1); } { both(1); both(2); }`,
    ),
  ).toBe(4);
  expect(valuesOf(`function again(x) { expectClose(f(x), 1, 0.1); again(x); } { again(1); }`)).toBe(
    1,
  );
});
