import { describe as say, isBlank, rows, single } from "../../src/boundary/cell";
import { InvalidInput } from "../../src/ground/domain-error";

test("null, undefined, empty and white text are blank; 0 and FALSE are not", () => {
  for (const blank of [null, undefined, "", "  "]) expect(isBlank(blank)).toBe(true);
  for (const value of [0, false, "0", "a", [], [[null]]]) expect(isBlank(value)).toBe(false);
});

test("a range of one cell stands for its cell", () => {
  expect(single("flow", 5)).toBe(5);
  expect(single("flow", [[5]])).toBe(5);
  expect(single("flow", [5])).toBe(5);
});

test.each([
  [[[1, 2]], "flow takes one cell; got a range of 1 row and 2 columns"],
  [[[1], [2]], "flow takes one cell; got a range of 2 rows and 1 column"],
  [[], "flow takes one cell; got a range of 0 rows and 0 columns"],
])("a larger range for one cell is refused by name: %j", (range, message) => {
  expect(() => single("flow", range)).toThrow(new InvalidInput(message));
});

test("rows of a range, of a value, of nothing", () => {
  expect(rows(null)).toEqual([]);
  expect(rows("")).toEqual([]);
  expect(rows(3)).toEqual([[3]]);
  expect(rows([[1, 2]])).toEqual([[1, 2]]);
  expect(rows([1, 2])).toEqual([[1], [2]]);
});

test("a message names what came, and cuts long text", () => {
  expect(say(null)).toBe("a blank");
  expect(say(1.5)).toBe("1.5");
  expect(say(NaN)).toBe("not a number");
  expect(say(true)).toBe("TRUE");
  expect(say(false)).toBe("FALSE");
  expect(say("loam")).toBe('"loam"');
  expect(say("x".repeat(40))).toBe(`"${"x".repeat(40)}"`);
  expect(say("x".repeat(41))).toBe(`"${"x".repeat(40)}…"`);
  expect(say({})).toBe("a value that is neither number nor text");
});
