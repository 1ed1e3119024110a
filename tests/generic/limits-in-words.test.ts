import { outcomeOf, type Sample, sampleArguments, withCell } from "../support/samples";

interface Bounds {
  readonly low?: number;
  readonly high?: number;
  /** True where the low bound itself is not taken. */
  readonly open: boolean;
}

const NUMBER = "([−-]?\\d(?:[\\d,]*\\d)?(?:\\.\\d+)?)";
const numberOf = (text: string) => Number(text.replace("−", "-").replace(/,/g, ""));

/** "above 0 up to 24", "0 or more", "1 to 500": the first that an argument's help says, if any. */
function boundsInWords(help: string): Bounds | undefined {
  const found = new RegExp(
    `above ${NUMBER}(?: (?:up|and at most|to) (?:to )?${NUMBER})?|${NUMBER} or more|${NUMBER} to ${NUMBER}`,
  ).exec(help);
  if (found === null) return undefined;
  const [, above, most, atLeast, from, to] = found;
  if (above !== undefined) {
    return {
      low: numberOf(above),
      high: most === undefined ? undefined : numberOf(most),
      open: true,
    };
  }
  if (atLeast !== undefined) return { low: numberOf(atLeast), open: false };
  return { low: numberOf(from), high: numberOf(to), open: false };
}

/**
 * What the function says to a number far below, and far above, alone or first in a range: its limit
 * as the code has it.
 */
function boundsInCode(argument: string, { help, cells }: Sample, place: number): Bounds {
  let low: number | undefined;
  let high: number | undefined;
  let open = false;
  const refusal = new RegExp(`^${argument}(?: (?:value|row) 1[ a-z0-9]*)? must be (.*); got`);
  for (const probe of [-1e9, 1e11]) {
    const { error } = outcomeOf(help.name, withCell(cells, place, firstAs(probe, cells[place])));
    const limit = refusal.exec(error?.message ?? "")?.[1];
    if (limit === undefined) continue;
    const [first, second] = [...limit.matchAll(new RegExp(NUMBER, "g"))].map(([n]) => numberOf(n));
    low = first;
    high = second;
    open = limit.startsWith("above");
  }
  return { low, high, open };
}

function firstAs(value: number, cell: unknown): unknown {
  if (!Array.isArray(cell)) return value;
  const [[, ...others], ...rows] = cell as unknown[][];
  return [[value, ...others], ...rows];
}

const spoken = sampleArguments.flatMap(([name, sample, argument, place]) => {
  const words = argument.choices === undefined ? boundsInWords(argument.help) : undefined;
  return words === undefined || argument.range ? [] : ([[name, words, sample, place]] as const);
});

/** Ranges that say a limit for each number, or for that of their first column. */
const spokenRanges = sampleArguments.flatMap(([name, sample, argument, place]) => {
  const found = argument.range && /(?:above|and) \d|\d or more/.test(argument.help);
  const words = found ? boundsInWords(argument.help) : undefined;
  return words === undefined ? [] : ([[name, words, sample, place]] as const);
});

/** Where the first refusal of the code is not the first limit of the help, and why. */
const saidOtherwise: Readonly<Record<string, string>> = {
  "BILL.QUOTE bill": "the limit is that of the quantity, the second column",
  "ET.REFERENCE radiation": "the most depends on the day and the place",
  "LATERAL.SYSTEMCU lowest": "the range depends on the mean pressure beside it",
  "PIPE.EXPANSION change": "the help says warmer above 0 and then the limit, either way",
  "PIPE.INSIDE size": "the table's sizes are the limit, and the message lists them",
  "PIPE.OUTSIDE size": "the table's sizes are the limit, and the message lists them",
  "PUMP.NPSH altitude": "rounded to a whole foot in the help",
  "SOIL.NET awc": "the most stands in brackets, in both units",
  "TOW.BEND rating": "the table's ratings are the limit, and the message says so",
  "TOW.WEIGHT inside": "the most is the outside diameter beside it",
};

test("most arguments that are numbers say their limit", () => {
  expect(spoken.length).toBeGreaterThan(300);
  expect(spokenRanges.length).toBeGreaterThan(60);
});

const agreeing = [...spoken, ...spokenRanges].filter(([name]) => !(name in saidOtherwise));

test.each(agreeing)("%s: the help's limit is the code's", (_, words, sample, place) => {
  expect(boundsInCode(sample.help.arguments[place].name, sample, place)).toEqual(words);
});

test.each(Object.keys(saidOtherwise))("%s still needs its reason", (name) => {
  const [, words, sample, place] =
    [...spoken, ...spokenRanges].find(([known]) => known === name) ?? [];
  if (sample === undefined || place === undefined) throw new Error(`${name} states no limit`);
  expect(boundsInCode(sample.help.arguments[place].name, sample, place)).not.toEqual(words);
});

/** "3 to 200 rows", "up to 50 rows", "up to 25" of a list or table. */
const spokenSizes = sampleArguments.flatMap(([name, sample, argument, place]) => {
  const found = argument.range
    ? /(?:(\d+) to|up to) (\d[\d,]*)(?: rows|(?! names)(?=[.;]))/.exec(argument.help)
    : null;
  if (found === null) return [];
  const [, least = "1", most] = found;
  return [[name, numberOf(least), numberOf(most), sample, place]] as const;
});

test("tables say how many rows they may have", () => {
  expect(spokenSizes.length).toBeGreaterThan(30);
});

test.each(spokenSizes)("%s: %d to %d rows, in words and in code", (_, least, most, sample, at) => {
  const { name, help } = sample.help.arguments[at];
  const [row] = Array.isArray(sample.cells[at]) ? (sample.cells[at] as unknown[][]) : [[1, 2, 3]];
  const isTable = help.includes("columns") || help.startsWith("The table");
  // No two alike: a value that is given again is not counted.
  const numbers = Array.from({ length: 9999 }, (__, i) => i + 1);
  const tooMany = isTable ? numbers.map((by) => moved(row, by)) : [numbers];
  const { error } = outcomeOf(sample.help.name, withCell(sample.cells, at, tooMany));
  expect(error?.message).toMatch(
    new RegExp(`^${name}(?:: corners)? must have (?:${least} to|at most) ${most} (?:rows|values)`),
  );
});

function moved(row: readonly unknown[], by: number): unknown[] {
  return row.map((value) => (typeof value === "number" ? value + by : value));
}

test("ratings and sizes beyond the tables are refused", () => {
  for (const [name, beyond] of [
    ["TOW.BEND rating", [10, 27]],
    ["PIPE.INSIDE size", [19, 161]],
    ["PIPE.OUTSIDE size", [19, 161]],
  ] as const) {
    const [, sample, argument, at] = sampleArguments.find(([known]) => known === name) ?? [];
    if (sample === undefined || at === undefined || argument === undefined) throw new Error(name);
    for (const value of beyond) {
      const { error } = outcomeOf(sample.help.name, withCell(sample.cells, at, value));
      expect([name, value, error?.code]).not.toEqual([name, value, undefined]);
    }
  }
});
