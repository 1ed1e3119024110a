import { outcomeOf, sampleArguments, samples, withCell } from "../support/samples";

const optionalArguments = sampleArguments.filter(([, , argument]) => argument.optional);

describe("a blank optional argument is its default, however the host hands a blank over", () => {
  test.each(optionalArguments)("%s", (_, { help, cells }, argument, place) => {
    const omitted = outcomeOf(help.name, withCell(cells, place, null));
    // A choice's blank may also come as a 0 or its text.
    const blanks =
      argument.choices === undefined
        ? [undefined, "", "  ", [[null]], [[""]]]
        : [undefined, "", "  ", [[null]], [[""]], 0, "0", [[0]]];
    for (const blank of blanks) {
      expect([blank, outcomeOf(help.name, withCell(cells, place, blank))]).toEqual([
        blank,
        omitted,
      ]);
    }
  });
});

test("arguments left off at the end are blanks", () => {
  for (const { help, cells } of samples) {
    const required = help.arguments.filter(({ optional }) => !optional).length;
    for (let count = required; count < cells.length; count++) {
      const blanksBehind = cells.map((cell, place) => (place < count ? cell : null));
      expect([help.name, count, outcomeOf(help.name, cells.slice(0, count))]).toEqual([
        help.name,
        count,
        outcomeOf(help.name, blanksBehind),
      ]);
    }
  }
});

test("the host's invocation object in the place of a newer argument is a blank", () => {
  for (const { help, cells } of samples) {
    const required = help.arguments.filter(({ optional }) => !optional).length;
    if (required === cells.length) continue;
    const given = cells.slice(0, required);
    expect([help.name, outcomeOf(help.name, [...given, { functionName: help.id }])]).toEqual([
      help.name,
      outcomeOf(help.name, given),
    ]);
  }
});

test("choices are read in any case and spelling", () => {
  for (const { help, cells } of samples) {
    for (const [place, { choices = [] }] of help.arguments.entries()) {
      for (const { value } of choices) {
        const plain = outcomeOf(help.name, withCell(cells, place, value));
        const loud = outcomeOf(help.name, withCell(cells, place, ` ${value.toUpperCase()} `));
        expect([help.name, value, loud]).toEqual([help.name, value, plain]);
      }
    }
  }
});
