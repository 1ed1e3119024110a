import { execFileSync } from "node:child_process";
import { readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { read as readBook } from "@e965/xlsx";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import readSheets from "read-excel-file/node";
import { writeAddress } from "../../src/sheets/kit/address";
import { builtSheets, hasCommand } from "../support/sheet-files";

/** Programs that read the format by themselves must open the workbooks and find the same in them. */
type Value = string | number | boolean;
type Values = Record<string, Record<string, Value>>;

/** Debian's own Python, which is where its package of the reader is. */
const PYTHON = "/usr/bin/python3";

let folder: string;
let names: string[];
const pathOf = (name: string) => join(folder, name);

beforeAll(() => {
  ({ folder, names } = builtSheets());
}, 300000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** The first reader throws at whatever it would otherwise pass over. */
function firstReader(name: string): Values {
  const book = readBook(readFileSync(pathOf(name)), { WTF: true, cellFormula: true });
  return Object.fromEntries(
    book.SheetNames.map((sheet) => {
      const values: Record<string, Value> = {};
      for (const [at, cell] of Object.entries(book.Sheets[sheet])) {
        if (at.startsWith("!")) continue;
        const { v } = cell as { v?: Value };
        if (v !== undefined && v !== "") values[at] = v;
      }
      return [sheet, values];
    }),
  );
}

async function secondReader(name: string): Promise<Values> {
  const sheets = await readSheets(pathOf(name), { trim: false });
  return Object.fromEntries(
    sheets.map(({ sheet, data }) => {
      const values: Record<string, Value> = {};
      data.forEach((cells, row) =>
        cells.forEach((value, column) => {
          if (value !== null && value !== "")
            values[writeAddress({ row, column })] = value as Value;
        }),
      );
      return [sheet, values];
    }),
  );
}

function validatorFinds(paths: readonly string[]): Record<string, string[]> {
  const script = join(__dirname, "../support/open-xml-errors.mjs");
  const printed = execFileSync(process.execPath, [script, ...paths], { encoding: "utf8" });
  return JSON.parse(printed) as Record<string, string[]>;
}

test("the Open XML SDK's validator finds nothing wrong with any workbook", () => {
  expect(names.length).toBeGreaterThan(0);
  expect(validatorFinds(names.map(pathOf))).toEqual(
    Object.fromEntries(names.map((name) => [pathOf(name), []])),
  );
}, 120000);

test("the validator would find a font's parts in the wrong order", () => {
  const parts = unzipSync(readFileSync(pathOf(names[0])));
  const styles = strFromU8(parts["xl/styles.xml"]);
  const spoilt = styles.replace(/(<sz [^>]*\/>)(<color [^>]*\/>)/, "$2$1");
  expect(spoilt).not.toBe(styles);
  const path = join(folder, "spoilt.xlsx");
  writeFileSync(path, zipSync({ ...parts, "xl/styles.xml": strToU8(spoilt) }));
  expect(validatorFinds([path])[path].join()).toContain("unexpected child element");
}, 60000);

test("two readers find the same values in every workbook", async () => {
  for (const name of names) {
    const first = firstReader(name);
    const count = Object.values(first).flatMap((sheet) => Object.keys(sheet)).length;
    expect(count).toBeGreaterThan(200);
    expect([name, await secondReader(name)]).toEqual([name, first]);
  }
}, 120000);

const third = hasCommand(PYTHON, "-c", "import openpyxl") ? test : test.skip;
third(
  "a third, of another language, warns of nothing and finds the same (needs python3-openpyxl)",
  () => {
    const script = join(__dirname, "../support/read-workbooks.py");
    const printed = execFileSync(PYTHON, [script, ...names.map(pathOf)], {
      encoding: "utf8",
      maxBuffer: 2 ** 28,
    });
    const found = JSON.parse(printed) as Record<string, Values>;
    for (const name of names)
      expect([name, found[pathOf(name)]]).toEqual([name, firstReader(name)]);
  },
  120000,
);
