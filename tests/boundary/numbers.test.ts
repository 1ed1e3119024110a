import {
  above,
  anyNumber,
  atLeast,
  between,
  headCount,
  readNumber,
  readNumbers,
  readOptionalNumber,
  wholeNumber,
} from "../../src/boundary/numbers";

const message = (read: () => unknown): string => {
  try {
    read();
  } catch (error) {
    return (error as Error).message;
  }
  throw new Error("nothing was thrown");
};

test.each([
  [above(0), 0, "in", "inside must be above 0 in; got 0"],
  [above(0), -1.2, "in", "inside must be above 0 in; got -1.2"],
  [atLeast(0), -1, "ft", "inside must be 0 ft or more; got -1"],
  [between(50, 200), 20, "", "inside must be from 50 to 200; got 20"],
  [above(0, 30), 31, "", "inside must be above 0 and at most 30; got 31"],
  [headCount, 501, "", "inside must be a whole number from 1 to 500; got 501"],
  [headCount, 2.5, "", "inside must be a whole number from 1 to 500; got 2.5"],
  [wholeNumber(1, 1e12), 0, "", "inside must be a whole number, 1 or more; got 0"],
  [anyNumber, 2e12, "ft", "inside must be at most 1000000000000 either way; got 2000000000000"],
  [anyNumber, "5", "ft", 'inside must be a number in ft; got "5"'],
  [headCount, "x", "", 'inside must be a whole number from 1 to 500; got "x"'],
  [above(0), true, "ft", "inside must be a number, above 0 ft; got TRUE"],
  [above(0), NaN, "ft", "inside must be a number, above 0 ft; got not a number"],
  [above(0), null, "ft", "inside is missing: it must be above 0 ft"],
])("limit %j refuses %p", (limit, value, unit, expected) => {
  expect(message(() => readNumber("inside", value, limit, unit))).toBe(expected);
});

test("bounds themselves", () => {
  expect(readNumber("n", 0, atLeast(0))).toBe(0);
  expect(readNumber("n", 50, between(50, 200))).toBe(50);
  expect(readNumber("n", 200, between(50, 200))).toBe(200);
  expect(readNumber("n", 500, headCount)).toBe(500);
  expect(readNumber("n", [[1]], headCount)).toBe(1);
});

test("0 is a blank only where 0 is impossible", () => {
  expect(readOptionalNumber("first", 0, above(0))).toBeUndefined();
  expect(readOptionalNumber("rise", 0, anyNumber)).toBe(0);
  for (const blank of [null, undefined, "", [[null]]]) {
    expect(readOptionalNumber("rise", blank, anyNumber)).toBeUndefined();
  }
});

test("a column or a row of numbers drops blanks at its end only", () => {
  expect(readNumbers("spacing", [[1], [2], [0], [null]], above(0))).toEqual([1, 2]);
  expect(readNumbers("spacing", [[1, 2, ""]], above(0))).toEqual([1, 2]);
  expect(readNumbers("rise", [[1], [0], [null]], anyNumber)).toEqual([1, 0]);
  expect(readNumbers("spacing", 7, above(0))).toEqual([7]);
  expect(message(() => readNumbers("spacing", [[1], [null], [3]], above(0), "ft"))).toBe(
    "spacing value 2 is missing: it must be above 0 ft",
  );
  expect(
    message(() =>
      readNumbers(
        "spacing",
        [
          [1, 2],
          [3, 4],
        ],
        above(0),
      ),
    ),
  ).toBe("spacing takes one row or one column; got a range of 2 rows and 2 columns");
  expect(message(() => readNumbers("spacing", [[0]], above(0), "ft"))).toBe(
    "spacing is missing: it must be above 0 ft",
  );
  expect(message(() => readNumbers("spacing", [[-1]], above(0), "ft"))).toBe(
    "spacing must be above 0 ft; got -1",
  );
});
