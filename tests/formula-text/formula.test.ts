import { readFormula } from "../../src/formula-text/formula";

const value = (number: number) => ({ kind: "value", value: number });

test("products bind tighter than sums, sums tighter than joins, joins tighter than comparisons", () => {
  expect(readFormula("=1+2*3&4>5")).toEqual({
    kind: "operation",
    operator: ">",
    left: {
      kind: "operation",
      operator: "&",
      left: {
        kind: "operation",
        operator: "+",
        left: value(1),
        right: { kind: "operation", operator: "*", left: value(2), right: value(3) },
      },
      right: value(4),
    },
    right: value(5),
  });
});

test("equal operators go from left to right", () => {
  expect(readFormula("=8-4-2")).toMatchObject({ left: { operator: "-" }, right: value(2) });
});

test("a sign binds tighter than a power, as in sheets", () => {
  expect(readFormula("=-2^2")).toMatchObject({
    operator: "^",
    left: { kind: "negative", of: value(2) },
  });
});

test("omitted arguments stay omitted", () => {
  expect(readFormula('=IRRIG.LATERAL.F(14,,"a ""b""")')).toEqual({
    kind: "call",
    name: "IRRIG.LATERAL.F",
    arguments: [value(14), undefined, { kind: "value", value: 'a "b"' }],
  });
});

test("cells, ranges, cells of other pages, names and tables", () => {
  expect(readFormula("=$B$4")).toEqual({ kind: "range", range: "B4" });
  expect(readFormula("='What if'!B4:C5")).toEqual({
    kind: "range",
    page: "What if",
    range: "B4:C5",
  });
  expect(readFormula("=Units")).toEqual({ kind: "name", name: "Units" });
  expect(readFormula("=TRUE")).toEqual({ kind: "value", value: true });
  expect(readFormula("={1,2;3,4}")).toEqual({
    kind: "table",
    rows: [
      [value(1), value(2)],
      [value(3), value(4)],
    ],
  });
  expect(readFormula("=50%")).toEqual({ kind: "percent", of: value(50) });
});

test("what is no formula is refused", () => {
  expect(() => readFormula("=1+")).toThrow();
  expect(() => readFormula("=(1")).toThrow();
  expect(() => readFormula("=1 2")).toThrow();
});
