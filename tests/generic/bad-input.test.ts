import type { ArgumentHelp } from "../../src/reference";
import { faultOf, outcomeOf, sampleArguments, withCell } from "../support/samples";

/** What no argument takes, whatever it is for. */
const neverTaken: readonly (readonly [string, unknown])[] = [
  ["an unknown text", "no such entry"],
  ["not a number", NaN],
  ["infinity", Infinity],
  ["minus infinity", -Infinity],
  ["a data type of the host", { type: "Entity", text: "a" }],
];

function wrongKinds(argument: ArgumentHelp): (readonly [string, unknown])[] {
  const alone = [...neverTaken];
  if (argument.yesNo !== true) alone.push(["TRUE", true]);
  const inRange = alone.map(([kind, cell]) => [`${kind} in a range`, [[cell]]] as const);
  const wrong = [...alone, ...inRange];
  if (!argument.range) {
    wrong.push([
      "a range of 2 rows and 3 columns",
      [
        [1, 2, 3],
        [4, 5, 6],
      ],
    ]);
  }
  if (!argument.optional) {
    wrong.push(["an omitted one", null], ["an empty text", ""], ["an empty cell", [[""]]]);
  }
  return wrong;
}

describe("wrong kinds are refused with a message that names the argument", () => {
  test.each(sampleArguments)("%s", (_, { help, cells }, argument, place) => {
    const name = new RegExp(`\\b${argument.name}\\b`);
    const offences = wrongKinds(argument).flatMap(([kind, cell]) => {
      const outcome = outcomeOf(help.name, withCell(cells, place, cell));
      if (outcome.error === undefined) return [`${kind} is taken`];
      const { code, message } = outcome.error;
      if (code !== "#VALUE!") return [`${kind} gives ${code} ${message}`];
      if (!name.test(message)) return [`${kind} is refused without the name: ${message}`];
      return faultOf(outcome, help.spills) ?? [];
    });
    expect(offences).toEqual([]);
  });
});

/** Numbers that one argument takes and another refuses. */
const strangeNumbers = [
  -1,
  -1e6,
  0,
  1e-9,
  0.5,
  1.5,
  7,
  499,
  501,
  1e6,
  1e11,
  1e12,
  1e13,
  -1e13,
  1e300,
  -1e300,
  5e-324,
  Number.MAX_VALUE,
];

describe("any number gives a finite result or an error with a message", () => {
  test.each(sampleArguments)("%s", (_, { help, cells }, __, place) => {
    const offences = strangeNumbers.flatMap((number) =>
      [number, [[number]]].flatMap((cell) => {
        const fault = faultOf(outcomeOf(help.name, withCell(cells, place, cell)), help.spills);
        return fault === undefined ? [] : [`${number} ${fault}`];
      }),
    );
    expect(offences).toEqual([]);
  });
});

const tooMuch = (cells: number) => Array.from({ length: cells }, () => [1]);
const strangeRanges: readonly unknown[][][] = [
  [],
  [[]],
  [[null]],
  [[null, null]],
  [[0, 0]],
  [[1, 2]],
  [[2, 1]],
  [[1], [2]],
  [[1], [null], [2]],
  [
    [1, 2],
    [1, 2],
  ],
  [
    [1, 2],
    [2, 1],
  ],
  [
    [1, "a"],
    [2, "b"],
  ],
  [[1, 2, 3]],
  [
    [1, 2, 3],
    [4, 5, 6],
    [7, 8, 9],
  ],
  [[1, 2], [3]],
  tooMuch(501),
  tooMuch(2000),
];

describe("any range gives a finite result or an error with a message", () => {
  test.each(sampleArguments)("%s", (_, { help, cells }, __, place) => {
    const offences = strangeRanges.flatMap((range) => {
      const fault = faultOf(outcomeOf(help.name, withCell(cells, place, range)), help.spills);
      return fault === undefined ? [] : [`${JSON.stringify(range).slice(0, 60)} ${fault}`];
    });
    expect(offences).toEqual([]);
  });
});

/** Every host must know which they are: some hand TRUE over as 1. */
test("the arguments that are marked as yes or no are those that ask for TRUE or FALSE", () => {
  const asking = sampleArguments.filter(([, { help, cells }, , place]) => {
    const outcome = outcomeOf(help.name, withCell(cells, place, "no such entry"));
    return outcome.error?.message.includes("must be TRUE or FALSE");
  });
  const marked = sampleArguments.filter(([, , argument]) => argument.yesNo === true);
  expect(marked.map(([name]) => name)).toEqual(asking.map(([name]) => name));
  expect(marked.length).toBeGreaterThan(0);
});
