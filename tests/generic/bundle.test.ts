import { catalogue } from "../../src/catalogue";
import { functionsIn, literalArguments } from "../../src/formula-text/dialect";
import { builtMetadata, builtReference, runBuiltFunctions } from "../support/built";

const functions = runBuiltFunctions();
const reference = builtReference();

test("the built script hands over exactly the catalogue, under the ids of the metadata", () => {
  expect([...functions.keys()]).toEqual([...catalogue]);
  expect(builtMetadata().functions.map(({ id }) => id)).toEqual([...catalogue]);
  expect(reference.functions.map(({ id }) => id)).toEqual([...catalogue]);
});

describe("answers its own example, run as a host runs it", () => {
  test.each(reference.functions.map((help) => [help.name, help] as const))("%s", (name, help) => {
    expect(functionsIn(help.example)).toEqual([name]);
    const cells = literalArguments(help.example);
    expect(cells.length).toBeLessThanOrEqual(help.arguments.length);
    const result = functions.get(help.id)?.(...cells);
    // The runtime's arrays are not of this realm, so they are told by what they hold.
    expect(Array.isArray(result)).toBe(help.spills);
    const rows = Array.isArray(result) ? (result as unknown[][]) : [[result]];
    expect(rows.length).toBeGreaterThan(0);
    expect(new Set(rows.map((row) => row.length)).size).toBe(1);
    for (const cell of rows.flat()) {
      if (typeof cell === "number") expect(Number.isFinite(cell)).toBe(true);
      else expect(typeof cell).toBe("string");
    }
  });
});

test("an example's fields left to the end as blanks change nothing", () => {
  for (const help of reference.functions) {
    const cells = literalArguments(help.example);
    const padded = help.arguments.map((_, place) => cells[place] ?? null);
    expect(functions.get(help.id)?.(...padded)).toEqual(functions.get(help.id)?.(...cells));
  }
});
