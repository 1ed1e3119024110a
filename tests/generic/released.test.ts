import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { functionFiles, generate } from "../../build/metadata";
import { breaksOf, type ReleasedShape, releasedFolder, shapeOf } from "../../build/released-shape";
import { builtReference, runBuiltFunctions } from "../support/built";
import { catalogue } from "../../src/catalogue";
import { literalArguments } from "../../src/formula-text/dialect";

const versions = readdirSync(releasedFolder).filter((file) => file.endsWith(".json"));
const read = (file: string) =>
  JSON.parse(readFileSync(join(releasedFolder, file), "utf8")) as ReleasedShape;

test("there is a released version to hold to", () => {
  expect(versions.length).toBeGreaterThan(0);
});

describe.each(versions)("calls shaped by %s", (file) => {
  const released = read(file);

  test("still fit: arguments are only added at the end, and only optional ones", () => {
    const { metadata } = generate(functionFiles(), catalogue);
    expect(breaksOf(released, shapeOf(metadata))).toEqual([]);
  });

  test("are answered by this build, with an invocation object behind them as stale hosts do", () => {
    const functions = runBuiltFunctions();
    const examples = new Map(
      builtReference().functions.map(({ id, example }) => [id, literalArguments(example)]),
    );
    for (const { id, arguments: known } of released.functions) {
      const cells = known.map((_, place) => examples.get(id)?.[place] ?? null);
      const plain = functions.get(id)?.(...cells);
      expect([id, plain]).not.toEqual([id, undefined]);
      expect([id, functions.get(id)?.(...cells, { functionName: id })]).toEqual([id, plain]);
    }
  });
});

test("tells every kind of break", () => {
  const cell = (name: string, optional = false) => ({ name, kind: "cell", optional });
  const shape = (
    id: string,
    name: string,
    given: ReleasedShape["functions"][number]["arguments"],
    spills = false,
  ) => ({ id, name, arguments: given, spills });
  const released: ReleasedShape = {
    functions: [
      shape("A", "A.A", [cell("one"), cell("two", true)]),
      shape("B", "B.B", [cell("one")]),
      shape("C", "C.C", [cell("one")]),
    ],
    choices: { Units: ["US", "SI"] },
  };
  const now: ReleasedShape = {
    functions: [
      shape("A", "A.B", [cell("one"), cell("two"), cell("three")], true),
      shape("B", "B.B", [{ name: "one", kind: "range", optional: false }]),
    ],
    choices: { Units: ["US"] },
  };
  expect(breaksOf(released, now)).toEqual([
    "A is now named A.B",
    "A: its result changed shape",
    "A: two was optional",
    "A: the new argument three is required",
    "B: one was a cell, is a range",
    "C is gone",
    "Units lost SI",
  ]);
  expect(
    breaksOf(
      { functions: [shape("A", "A.A", [cell("one")])], choices: {} },
      { functions: [shape("A", "A.A", [cell("uno"), cell("two", true)])], choices: {} },
    ),
  ).toEqual(["A: argument 1 was one, is uno"]);
  expect(breaksOf(released, released)).toEqual([]);
});
