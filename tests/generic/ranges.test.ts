import { literalArguments } from "../../src/formula-text/dialect";
import { readMetadata } from "../../build/metadata";

const { functions } = readMetadata();

/** Functions of a line, whose arguments take a range even where the example gives one value. */
const LINE = ["spacing", "inside", "discharge", "rise", "regulator"];
const ofALine = functions.filter(
  ({ arguments: all }) =>
    all.some(({ name }) => name === "discharge") &&
    all.some(({ name }) => name === "heads" || name === "inlet"),
);

test.each(functions.map((help) => [help.name, help] as const))(
  "%s: what its example gives as a table is declared a range, or the host refuses it",
  (_, help) => {
    const given = literalArguments(help.example);
    const tables = help.arguments.filter((__, i) => Array.isArray(given[i]));
    expect(tables.filter(({ range }) => !range).map(({ name }) => name)).toEqual([]);
  },
);

test.each(ofALine.map((help) => [help.name, help] as const))(
  "%s takes one value or a range for what may differ from head to head",
  (_, help) => {
    const single = help.arguments.filter(({ name, range }) => LINE.includes(name) && !range);
    expect(single.map(({ name }) => name)).toEqual([]);
  },
);
