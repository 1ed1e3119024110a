import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { functionFiles, generate, withCaution } from "../../build/metadata";
import { BASE_URL } from "../../build/settings";
import { catalogue } from "../../src/catalogue";
import { cautions } from "../../src/cautions";
import { sharedArguments, sharedSentences } from "../../src/functions/shared-texts";

const fixture = (name: string) => join(__dirname, "fixtures", `${name}.ts`);
const sound = fixture("sound");
const ids = ["SAMPLE_DOUBLE", "SAMPLE_BOTH"];

test("writes what a host reads: names, texts, choices, ranges, help addresses", () => {
  const { metadata, problems } = generate([sound], ids);
  expect(problems).toEqual([]);
  expect(metadata).toEqual({
    allowCustomDataForDataTypeAny: false,
    functions: [
      {
        id: "SAMPLE_DOUBLE",
        name: "SAMPLE.DOUBLE",
        description: `Twice a length. Caution: ${cautions.towing.brief}`,
        helpUrl: `${BASE_URL}/reference/sample-double.html`,
        parameters: [
          { name: "length", description: "Length (ft, m).", type: "any" },
          {
            name: "units",
            description: '"US" (blank) or "SI".',
            type: "string",
            customEnumId: "Units",
            optional: true,
          },
        ],
        result: {},
      },
      {
        id: "SAMPLE_BOTH",
        name: "SAMPLE.BOTH",
        description: "Spills a length and its double.",
        helpUrl: `${BASE_URL}/reference/sample-both.html`,
        parameters: [
          {
            name: "yield",
            description: "Lengths (ft, m).",
            type: "any",
            dimensionality: "matrix",
          },
        ],
        result: { dimensionality: "matrix" },
      },
    ],
    enums: [
      {
        id: "Units",
        type: "string",
        values: [
          { name: "US", stringValue: "US", tooltip: "feet" },
          { name: "SI", stringValue: "SI", tooltip: "meters" },
        ],
      },
    ],
  });
});

test("keeps the catalogue's order, whatever the files' is", () => {
  const { metadata, functions } = generate([sound], [...ids].reverse());
  expect(metadata.functions.map(({ id }) => id)).toEqual([...ids].reverse());
  expect(functions.map(({ id }) => id)).toEqual([...ids].reverse());
});

test("reads the rest of the doc comment for the pages", () => {
  const [double, both] = generate([sound], ids).functions;
  expect(double).toEqual({
    id: "SAMPLE_DOUBLE",
    name: "SAMPLE.DOUBLE",
    family: "SAMPLE",
    short: "Twice a length.",
    arguments: [
      { name: "length", help: "Length (ft, m).", optional: false, range: false },
      {
        name: "units",
        help: '"US" (blank) or "SI".',
        optional: true,
        range: false,
        choices: [
          { value: "US", help: "feet" },
          { value: "SI", help: "meters" },
        ],
      },
    ],
    returns: "Length (ft, m).",
    spills: false,
    remarks: "Twice it is.",
    source: "Arithmetic.",
    errors: "#VALUE! for text.",
    cautions: ["towing", "roads and buildings"],
    task: "how long are two?",
    example: '=IRRIG.SAMPLE.DOUBLE(2, "US")',
    page: "reference/sample-double.html",
  });
  expect(both.spills).toBe(true);
  expect(both.arguments[0].range).toBe(true);
  // A reserved word carries a "_" in the code alone.
  expect(both.arguments[0].name).toBe("yield");
  expect(both.cautions).toEqual([]);
  expect(both.example).toBe("=IRRIG.SAMPLE.BOTH({1;2})");
});

describe("texts that several functions share", () => {
  const { metadata, functions, problems } = generate([fixture("shared")], ["SAMPLE_HALF"]);

  test("stand in for what a comment does not say; what it says comes first", () => {
    expect(problems).toEqual([]);
    expect(
      functions[0].arguments.map(({ name, help, optional }) => [name, help, optional]),
    ).toEqual([
      ["inlet", sharedArguments.line.inlet, false],
      ["heads", "Number of heads on half of it.", false],
      ["units", sharedArguments.every.units, true],
    ]);
    expect(functions[0].remarks).toBe(`${sharedSentences.lineSolved} Half of it.`);
    expect(metadata.functions[0].parameters.map(({ description }) => description)).toEqual(
      functions[0].arguments.map(({ help }) => help),
    );
  });

  test("and choices too: an enum that is imported as a type", () => {
    expect(functions[0].arguments[2].choices?.map(({ value }) => value)).toEqual(["US", "SI"]);
    expect(metadata.enums.map(({ id }) => id)).toEqual(["Units"]);
  });

  test("and arguments that another file lists, each with its type", () => {
    const { functions: listed, problems: found } = generate([fixture("listed")], ["SAMPLE_HALF"]);
    expect(found).toEqual([]);
    expect(
      listed[0].arguments.map(({ name, help, optional, range }) => [name, help, optional, range]),
    ).toEqual([
      ["inlet", sharedArguments.line.inlet, false, false],
      ["heads", sharedArguments.line.heads, false, false],
      ["spacing", sharedArguments.line.spacing, false, true],
      ["units", "Units of its own.", true, false],
    ]);
  });

  test("a group or a text that there is not is named", () => {
    expect(generate([fixture("shared-unknown")], ["SAMPLE_HALF"]).problems).toEqual(
      [
        "@arguments is not a known tag",
        "{@text nowhere} is no shared text",
        "the @param lines () are not the arguments (heads)",
        "@param heads has no text",
      ].map((problem) => `shared-unknown.ts: SAMPLE_HALF: ${problem}`),
    );
  });

  test("are each said by two functions or more, and by no comment of its own", () => {
    const help = generate(functionFiles(), catalogue).functions;
    const all = help.flatMap((entry) =>
      entry.arguments.map(({ name, help: text }) => [name, text]),
    );
    const said = (name: string, text: string) =>
      all.filter(([known, help]) => known === name && help === text).length;
    const lonely = Object.entries(sharedArguments).flatMap(([group, texts]) =>
      Object.entries(texts)
        .filter(([name, text]) => said(name, text) < 2)
        .map(([name]) => `${group}.${name}`),
    );
    expect(lonely).toEqual([]);
    const comments = functionFiles()
      .filter((path) => !path.endsWith("shared-texts.ts"))
      .map((path) => readFileSync(path, "utf8"))
      .join("\n");
    const again = Object.values(sharedSentences).filter((text) => comments.includes(text));
    expect(again).toEqual([]);
    expect(
      Object.keys(sharedSentences).filter((name) => !comments.includes(`{@text ${name}}`)),
    ).toEqual([]);
  });
});

describe("refuses", () => {
  test("a function that the metadata tool passes over because it is a const", () => {
    const { problems } = generate([sound, fixture("skipped-const")], [...ids, "SAMPLE_HALF"]);
    expect(problems).toEqual([
      "skipped-const.ts: line 1: the @customfunction comment (SAMPLE_HALF) does not stand on an exported function declaration",
      "SAMPLE_HALF is in the catalogue, but no exported function declares it",
    ]);
  });

  test("a function that is not exported", () => {
    expect(generate([fixture("not-exported")], ["SAMPLE_HALF"]).problems).toEqual([
      "not-exported.ts: line 1: the @customfunction comment (SAMPLE_HALF) does not stand on an exported function declaration",
    ]);
  });

  test("two enums of one name that differ", () => {
    const { problems } = generate([sound, fixture("differing-enum")], [...ids, "SAMPLE_HALF"]);
    expect(problems).toEqual([
      "differing-enum.ts: the enum Units differs from another of its name",
    ]);
  });

  test("an id that the catalogue does not list, and one that it lists alone", () => {
    expect(generate([sound], ["SAMPLE_DOUBLE", "SAMPLE_LOST"]).problems).toEqual([
      "SAMPLE_LOST is in the catalogue, but no exported function declares it",
      "SAMPLE_BOTH is declared, but not in src/catalogue.ts",
    ]);
  });

  test("an id declared twice", () => {
    const { problems } = generate([sound, sound], ids);
    expect(problems).toEqual(["SAMPLE_DOUBLE is declared twice", "SAMPLE_BOTH is declared twice"]);
  });

  test("missing, misspelt and contradictory parts, each by name", () => {
    const { problems } = generate([fixture("slovenly")], ["SAMPLE_HALF", "SAMPLE_LONG"]);
    expect(problems).toEqual(
      expect.arrayContaining(
        [
          "@volatile is not a known tag",
          "@remarks is missing",
          "@source is missing",
          "@errors is missing",
          "@task is missing",
          'the id must be the name SAMPLE.HALVES with "_" for "."',
          "it must be exported as sampleHalf, not half",
          'the short help begins with "Spills" where, and only where, the result is any[][]',
          "the result must be declared any or any[][], not number",
          "@cautions names an unknown subject, falling pianos",
          "the example must begin =IRRIG.SAMPLE.HALVES(",
          "the @param lines (length, width) are not the arguments (length, units, last)",
          "@param length has no text",
          "@param units has no text",
          "length must be declared any, any[][] or a @customenum, not string",
          "a required argument stands behind an optional one",
        ].map((problem) => `slovenly.ts: SAMPLE_HALF: ${problem}`),
      ),
    );
    expect(problems).toContain("slovenly.ts: sample_long: @remarks stands more than once");
    expect(problems).toContain("SAMPLE_LONG: length is a repeating argument");
  });

  test("texts and names longer than hosts allow", () => {
    const folder = mkdtempSync(join(tmpdir(), "metadata-"));
    try {
      const path = join(folder, "long.ts");
      writeFileSync(
        path,
        readFileSync(fixture("slovenly"), "utf8")
          .replace("* TOO LONG", `* ${"x".repeat(1025)}`)
          .replace("@param length TOO LONG", `@param length ${"x".repeat(513)}`),
      );
      const { problems } = generate([path], ["SAMPLE_HALF", "SAMPLE_LONG"]);
      expect(problems).toContain("SAMPLE_LONG: the short help has 1025 of 1 to 1024 characters");
      expect(problems).toContain(
        "SAMPLE_LONG: the text of length has 513 characters, at most 512 are allowed",
      );
      expect(problems).toContain(
        "SAMPLE_LONG: the name SAMPLELONG is not words joined by dots, at most 64 long",
      );
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
});

test("finds nothing wrong with the functions of this project", () => {
  expect(generate(functionFiles(), catalogue).problems).toEqual([]);
});

test("the help in a cell carries a caution where one is named and there is room", () => {
  const { metadata, functions } = generate(functionFiles(), catalogue);
  for (const { id, short, cautions: subjects } of functions) {
    const { description } = metadata.functions.find((one) => one.id === id) ?? {};
    const first = Object.entries(cautions).find(([subject]) => subject === subjects[0])?.[1];
    expect(description).toBe(first === undefined ? short : `${short} Caution: ${first.brief}`);
  }
  expect(withCaution("x".repeat(1000), ["pressure"])).toBe("x".repeat(1000));
});
