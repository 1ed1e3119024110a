import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { XMLParser, XMLValidator } from "fast-xml-parser";
import { strFromU8, unzipSync } from "fflate";
import { readyMadeSheets } from "../../src/sheets";
import { readAddress, writeAddress } from "../../src/sheets/kit/address";
import type { Page, SheetCell, UnitSystem } from "../../src/sheets/kit/definition";
import { functionsIn, toFile } from "../../src/formula-text/dialect";
import { palette } from "../../src/sheets/kit/look";

const folder = mkdtempSync(join(tmpdir(), "fieldsum-sheets-"));
const script = join(__dirname, "../../build/sheets.ts");

function build(to: string, only: readonly string[] = [], namespace?: string): void {
  const choice = only.flatMap((id) => ["--only", id]);
  execFileSync(process.execPath, ["--import", "tsx", script, "--to", to, ...choice], {
    env: { ...process.env, ...(namespace !== undefined && { NAMESPACE: namespace }) },
    stdio: "pipe",
  });
}

interface FileCell {
  readonly "@r": string;
  readonly "@t"?: string;
  readonly "@cm"?: string;
  readonly "@s"?: string;
  readonly f?:
    string | { readonly "#text": string; readonly "@t"?: string; readonly "@ref"?: string };
  readonly v?: string;
}

interface Workbook {
  readonly parts: Record<string, Uint8Array>;
  text(path: string): string;
  xml(path: string): Record<string, unknown>;
  cells(page: number): ReadonlyMap<string, FileCell>;
  /** What a cell shows. */
  shown(cell: FileCell): string | undefined;
}

const parser = new XMLParser({
  ignoreAttributes: false,
  attributeNamePrefix: "@",
  parseTagValue: false,
  trimValues: false,
  isArray: (name) =>
    ["row", "c", "si", "definedName", "sheet", "dataValidation", "xf"].includes(name),
});

function open(name: string, from = folder): Workbook {
  const parts = unzipSync(readFileSync(join(from, `${name}.xlsx`)));
  const text = (path: string) => strFromU8(parts[path]);
  const xml = (path: string) => parser.parse(text(path)) as Record<string, unknown>;
  const strings = (
    xml("xl/sharedStrings.xml") as { sst: { si: { t: string | { "#text": string } }[] } }
  ).sst.si.map(({ t }) => (typeof t === "string" ? t : (t?.["#text"] ?? "")));
  return {
    parts,
    text,
    xml,
    cells: (page) => {
      const sheet = xml(`xl/worksheets/sheet${page + 1}.xml`) as {
        worksheet: { sheetData: { row: { c?: FileCell[] }[] } };
      };
      const all = sheet.worksheet.sheetData.row.flatMap(({ c }) => c ?? []);
      return new Map(all.map((cell) => [cell["@r"], cell]));
    },
    shown: ({ v, "@t": type }) => (type === "s" ? strings[Number(v)] : v),
  };
}

const every = readyMadeSheets.flatMap((sheet) =>
  (["US", "SI"] as const).map((system: UnitSystem) => ({
    name: `${sheet.id}-${system.toLowerCase()}`,
    sheet,
    pages: sheet.pages(system),
  })),
);

beforeAll(() => build(folder), 300000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function lastOf({ at, spill }: SheetCell): string {
  const { row, column } = readAddress(at);
  return writeAddress({
    row: row + (spill?.rows ?? 1) - 1,
    column: column + (spill?.columns ?? 1) - 1,
  });
}

function callsOurs(formula: string, page: Page): boolean {
  const own = (page.functions ?? []).some(({ name }) => formula.includes(`${name}(`));
  return own || functionsIn(formula).length > 0;
}

describe.each(every)("$name.xlsx", ({ name, pages, sheet }) => {
  let book: Workbook;
  beforeAll(() => {
    book = open(name);
  });

  test("every part is well-formed and known by its type", () => {
    const types = book.text("[Content_Types].xml");
    for (const path of Object.keys(book.parts)) {
      expect([path, XMLValidator.validate(book.text(path))]).toEqual([path, true]);
      const extension = path.slice(path.lastIndexOf(".") + 1);
      const isKnown =
        path === "[Content_Types].xml" ||
        types.includes(`PartName="/${path}"`) ||
        types.includes(`Extension="${extension}"`);
      expect([path, isKnown]).toEqual([path, true]);
    }
  });

  test("the relations lead to parts that are there", () => {
    for (const path of Object.keys(book.parts).filter((part) => part.endsWith(".rels"))) {
      const base = path.replace(/_rels\/[^/]*$/, "");
      for (const [, target] of book.text(path).matchAll(/Target="([^"]+)"/g)) {
        const resolved = target.startsWith("/")
          ? target.slice(1)
          : new URL(target, `file:///${base}`).pathname.slice(1);
        expect(Object.keys(book.parts)).toContain(resolved);
      }
    }
  });

  test("the pages stand in their order", () => {
    const { workbook } = book.xml("xl/workbook.xml") as {
      workbook: { sheets: { sheet: { "@name": string; "@state"?: string }[] } };
    };
    const visible = workbook.sheets.sheet.filter(({ "@state": state }) => state !== "hidden");
    expect(visible.map((one) => one["@name"])).toEqual(pages.map((page) => page.name));
  });

  test("each formula is spelt as the host stores it, with a value", () => {
    pages.forEach((page, i) => {
      const cells = book.cells(i);
      for (const cell of page.cells) {
        if (cell.formula === undefined) continue;
        const stored = cells.get(cell.at);
        const place = `${page.name}!${cell.at}`;
        const f = stored?.f;
        const text = (typeof f === "object" ? f["#text"] : f)?.replace(
          /&(lt|gt|amp|quot|apos);/g,
          entity,
        );
        expect([place, text]).toEqual([place, toFile(cell.formula)]);
        expect([place, stored?.v]).toEqual([place, expect.any(String)]);
        const last = lastOf(cell);
        const isOurs = callsOurs(cell.formula, page);
        expect([place, stored?.["@cm"], typeof f === "object" ? f["@t"] : undefined]).toEqual(
          isOurs ? [place, "1", "array"] : [place, undefined, undefined],
        );
        if (isOurs && typeof f === "object") {
          expect(f["@ref"]).toBe(last === cell.at ? cell.at : `${cell.at}:${last}`);
        }
      }
    });
  });

  test("no stored value is an error, and no formula is spelt as on the screen", () => {
    pages.forEach((_, i) => {
      for (const cell of book.cells(i).values()) {
        expect([cell["@r"], cell["@t"]]).not.toEqual([cell["@r"], "e"]);
        const text = typeof cell.f === "object" ? cell.f["#text"] : (cell.f ?? "");
        expect(text.replace(/"[^"]*"/g, "")).not.toMatch(/\bIRRIG\./);
        expect(text).not.toMatch(/^=/);
      }
    });
  });

  test("a spill's other cells hold values and no formula", () => {
    pages.forEach((page, i) => {
      const cells = book.cells(i);
      for (const cell of page.cells.filter(({ spill }) => spill !== undefined)) {
        const { row, column } = readAddress(cell.at);
        for (let down = 0; down < (cell.spill?.rows ?? 0); down++) {
          for (let across = down === 0 ? 1 : 0; across < (cell.spill?.columns ?? 0); across++) {
            const at = writeAddress({ row: row + down, column: column + across });
            const stored = cells.get(at);
            expect([page.name, at, stored?.f]).toEqual([page.name, at, undefined]);
            expect([page.name, at, stored?.v]).toEqual([page.name, at, expect.any(String)]);
          }
        }
      }
    });
  });

  test("fixed cells hold what the definition says", () => {
    pages.forEach((page, i) => {
      const cells = book.cells(i);
      for (const { at, value, formula } of page.cells) {
        if (formula !== undefined || value === undefined) continue;
        const stored = cells.get(at);
        const shown = stored && book.shown(stored)?.replace(/&(lt|gt|amp|quot|apos);/g, entity);
        const expected = typeof value === "boolean" ? String(Number(value)) : String(value);
        expect([page.name, at, shown]).toEqual([page.name, at, expected]);
      }
    });
  });

  test("the stored values stay: no full calculation on load", () => {
    const calculation = /<calcPr[^>]*>/.exec(book.text("xl/workbook.xml"))?.[0];
    expect(calculation).toBe('<calcPr calcId="191029"/>');
  });

  test("cells of custom functions have their metadata", () => {
    expect(book.text("xl/metadata.xml")).toMatch(
      /<metadataTypes count="1"><metadataType name="XLDAPR"[\s\S]*<cellMetadata count="1"><bk><rc t="1" v="0"\/><\/bk><\/cellMetadata>/,
    );
    expect(book.text("[Content_Types].xml")).toContain(
      'PartName="/xl/metadata.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheetMetadata+xml"',
    );
    expect(book.text("xl/_rels/workbook.xml.rels")).toMatch(/relationships\/sheetMetadata"/);
  });

  test("names of cells, ranges and functions", () => {
    const { workbook } = book.xml("xl/workbook.xml") as {
      workbook: { definedNames: { definedName: { "@name": string; "#text": string }[] } };
    };
    const stored = new Map(
      workbook.definedNames.definedName.map((entry) => [
        entry["@name"],
        entry["#text"].replace(/&(lt|gt|amp|quot|apos);/g, entity),
      ]),
    );
    for (const page of pages) {
      for (const cell of page.cells) {
        if (cell.name === undefined) continue;
        expect([cell.name, stored.get(cell.name)]).toEqual([
          cell.name,
          expect.stringMatching(/^('[^']+'|\w+)!\$[A-Z]+\$\d+$/),
        ]);
      }
      for (const { name: own, formula } of page.functions ?? []) {
        expect(stored.get(own)).toBe(toFile(formula));
        expect(stored.get(own)).toMatch(/^_xlfn\.LAMBDA\(_xlpm\.\w+,.*_xldudf_IRRIG_/);
      }
    }
  });

  test("inputs look like inputs, and say what they allow", () => {
    const styles = book.xml("xl/styles.xml") as {
      styleSheet: {
        cellXfs: { xf: { "@fillId": string }[] };
      };
    };
    const fills = [...book.text("xl/styles.xml").matchAll(/<fill>.*?<\/fill>/g)].map(
      ([fill]) => fill,
    );
    pages.forEach((page, i) => {
      const cells = book.cells(i);
      const sheetText = book.text(`xl/worksheets/sheet${i + 1}.xml`);
      for (const { at, role, allowed } of page.cells) {
        if (role !== "input") continue;
        const style = styles.styleSheet.cellXfs.xf[Number(cells.get(at)?.["@s"])];
        expect(fills[Number(style["@fillId"])]).toContain(
          palette.heatherTint.slice(1).toUpperCase(),
        );
        if (allowed !== undefined)
          expect(sheetText).toMatch(new RegExp(`<dataValidation [^>]*sqref="${at}"`));
      }
      expect(sheetText).not.toContain("<sheetProtection");
    });
  });

  test("headings stay in view, and the print area is set", () => {
    pages.forEach((page, i) => {
      const text = book.text(`xl/worksheets/sheet${i + 1}.xml`);
      expect(text).toContain(`ySplit="${page.frozenRows}"`);
      expect(text).toContain('state="frozen"');
    });
    expect(book.text("xl/workbook.xml").match(/_xlnm\.Print_Area/g)).toHaveLength(pages.length);
  });

  test("charts point to their cells, their titles too", () => {
    const charts = pages.flatMap((page) => page.charts ?? []);
    const paths = Object.keys(book.parts).filter((path) =>
      /^xl\/charts\/chart\d+\.xml$/.test(path),
    );
    expect(paths).toHaveLength(charts.length);
    for (const path of paths) {
      expect(book.text(path)).toMatch(/<c:tx><c:strRef><c:f>[^<]+\$[A-Z]+\$\d+<\/c:f>/);
      expect(book.text(path)).not.toContain("⟦");
    }
  });

  test("the file says whose it is, and nothing of the machine that made it", () => {
    expect(book.text("docProps/app.xml")).toContain("<Application>Fieldsum</Application>");
    const core = book.text("docProps/core.xml");
    expect(core).toContain(`<dc:title>${sheet.title}</dc:title>`);
    expect(core).toContain(">2025-01-01T12:00:00Z</dcterms:modified>");
    expect(core).toContain("<dc:creator>Fieldsum</dc:creator>");
  });
});

test("a long list of choices stands in cells, for a validation holds 255 characters", () => {
  const book = open("season-us");
  const text = book.text("xl/worksheets/sheet1.xml");
  expect(text).toMatch(/<formula1>Lists!\$A\$1:\$A\$\d+<\/formula1>/);
  for (const [, list] of text.matchAll(/<formula1>"([^"]*)"<\/formula1>/g)) {
    expect(list.length).toBeLessThanOrEqual(255);
  }
  expect(text).toContain("silt loam");
});

test("what stands in for an error in a sheet is not there with the sheet's own inputs", () => {
  const { pages } = every.find(({ name }) => name === "season-us")!;
  const index = pages.findIndex(({ name }) => name === "Water source");
  const book = open("season-us");
  const shown = [...book.cells(index).values()].map((cell) => book.shown(cell));
  expect(shown).not.toContain("none");
  expect(shown).not.toContain("always");
});

test("the same build gives the same bytes, and another namespace its own names", () => {
  const again = join(folder, "again");
  build(again, ["line-layout"]);
  for (const name of ["line-layout-us", "line-layout-si"]) {
    const [first, second] = [folder, again].map((from) => readFileSync(join(from, `${name}.xlsx`)));
    expect(second.equals(first)).toBe(true);
  }
  const other = join(folder, "other");
  build(other, ["line-layout"], "FIELDTEST");
  const book = open("line-layout-us", other);
  const text = Object.keys(book.parts)
    .map((path) => book.text(path))
    .join("");
  expect(text.includes("_xldudf_FIELDTEST_LATERAL_PROFILE(")).toBe(true);
  expect(text.includes("IRRIG")).toBe(false);
}, 300000);

test("an unknown sheet is refused by name", () => {
  expect(() => build(folder, ["no-such"])).toThrow(/no sheet no-such; there are line-layout/);
});

function entity(_: string, name: string): string {
  return { lt: "<", gt: ">", amp: "&", quot: '"', apos: "'" }[name] as string;
}
