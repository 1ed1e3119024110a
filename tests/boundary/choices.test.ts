import { readChoice, readOptionalChoice, readYesNo } from "../../src/boundary/choices";

const entries = ["silt loam", "clay"] as const;

test("case, spaces, hyphens and underscores do not matter", () => {
  for (const text of ["Silt-Loam", "SILTLOAM", "silt_loam", " silt  loam "]) {
    expect(readChoice("texture", text, entries)).toBe("silt loam");
  }
});

test("further spellings", () => {
  expect(readChoice("texture", "Heavy Clay", entries, { "heavy clay": "clay" })).toBe("clay");
});

test.each([[null], [""], [0], ["0"], [[[""]]]])("%p is a blank", (cell) => {
  expect(readOptionalChoice("texture", cell, entries)).toBeUndefined();
  expect(() => readChoice("texture", cell, entries)).toThrow(
    'texture is missing: it must be one of "silt loam", "clay"',
  );
});

test.each([["loam"], [5], [true], ["toString"]])("%p is refused, the entries listed", (cell) => {
  expect(() => readChoice("texture", cell, entries)).toThrow(
    /^texture must be one of "silt loam", "clay"; got /,
  );
});

describe("a list too long to read at a glance", () => {
  const crops = ["corn, field", "corn, sweet", "alfalfa", "beans", "peas", "oats", "rye", "hay"];
  const long = [...crops, "turf"] as const;
  const all = long.map((entry) => `"${entry}"`).join(", ");

  test("what came stands first, then what may be meant, then the list", () => {
    expect(() => readChoice("crop", "Corn for silage", long)).toThrow(
      `unknown crop "Corn for silage". Did you mean: "corn, field", "corn, sweet"? It must be one of ${all}`,
    );
    expect(() => readChoice("crop", "maize", long)).toThrow(
      `unknown crop "maize". It must be one of ${all}`,
    );
    expect(() => readChoice("crop", 7, long)).toThrow(`unknown crop 7. It must be one of ${all}`);
  });

  test("two letters in common are no likeness", () => {
    expect(() => readChoice("crop", "ry", long)).toThrow(/^unknown crop "ry"\. It must/);
  });

  test("a list of eight still stands before what came", () => {
    expect(() => readChoice("crop", "maize", crops)).toThrow(
      /^crop must be one of .*; got "maize"$/,
    );
  });
});

test("yes or no", () => {
  expect([true, false, null, 0, ""].map((cell) => readYesNo("compact", cell))).toEqual([
    true,
    false,
    false,
    false,
    false,
  ]);
  expect(["TRUE", " true ", "FALSE", "False"].map((cell) => readYesNo("compact", cell))).toEqual([
    true,
    true,
    false,
    false,
  ]);
  expect(() => readYesNo("compact", "yes")).toThrow('compact must be TRUE or FALSE; got "yes"');
  expect(() => readYesNo("compact", 1)).toThrow("compact must be TRUE or FALSE; got 1");
});
