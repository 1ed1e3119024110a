import type { ArgumentHelp } from "../../src/reference";
import type { Chance } from "../support/chance";

/** What a cell might hold that nobody meant to hand over. */
const oddities: readonly unknown[] = [
  null,
  undefined,
  "",
  " ",
  0,
  -0,
  "0",
  "no such entry",
  "1e3",
  "x".repeat(5000),
  "__proto__",
  "constructor",
  "={1}",
  true,
  false,
  NaN,
  Infinity,
  -Infinity,
  5e-324,
  Number.MAX_VALUE,
  -Number.MAX_VALUE,
  Number.MAX_SAFE_INTEGER,
  1e12,
  1e-12,
  { type: "Entity", text: "a" },
  { type: "Error", basicValue: "#N/A" },
  [],
  [[]],
  [[null]],
];

/** One argument: the example's cell, the same a little or a lot changed, or something hostile. */
export function hostile(chance: Chance, example: unknown, argument: ArgumentHelp): unknown {
  if (chance.happens(0.55)) return example;
  if (chance.happens(0.25)) return chance.pick(oddities);
  if (argument.choices !== undefined && chance.happens(0.7)) {
    return chance.pick(argument.choices).value;
  }
  if (Array.isArray(example) || argument.range || chance.happens(0.15)) {
    return range(chance, example);
  }
  return varied(chance, example);
}

/** A number of another size or sign, or an oddity. */
function varied(chance: Chance, example: unknown): unknown {
  if (typeof example !== "number") {
    return chance.happens(0.5) ? example : chance.pick([1, 2, 10, 100, -1, 0.5, "US", "SI"]);
  }
  if (chance.happens(0.1)) return chance.pick(oddities);
  if (chance.happens(0.4)) return example * (0.5 + chance.next());
  const size = 10 ** (chance.next() * 16 - 8);
  const sign = chance.happens(0.2) ? -1 : 1;
  const number = sign * size * (example === 0 ? 1 : example);
  return chance.happens(0.3) ? Math.round(number) : number;
}

function range(chance: Chance, example: unknown): unknown[][] {
  const rows = Array.isArray(example) ? (example as unknown[][]) : [[example]];
  const cells = rows.flat();
  const height = chance.happens(0.05) ? 1 + chance.whole(700) : 1 + chance.whole(16);
  const width = chance.happens(0.7) ? Math.max(rows[0]?.length ?? 1, 1) : 1 + chance.whole(5);
  const tidy = chance.happens(0.6);
  return Array.from({ length: height }, (_, row) =>
    Array.from({ length: tidy ? width : Math.max(0, width + chance.whole(3) - 1) }, (_, column) => {
      const cell = rows[row % rows.length]?.[column] ?? chance.pick(cells);
      if (chance.happens(tidy ? 0.02 : 0.1)) return chance.pick(oddities);
      return typeof cell === "number" ? varied(chance, cell) : cell;
    }),
  );
}
