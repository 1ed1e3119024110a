import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { XMLParser, XMLValidator } from "fast-xml-parser";
import { strFromU8, unzipSync } from "fflate";
import { readyMadeSheets } from "../../src/sheets";
import { readAddress, readRange, writeAddress } from "../../src/sheets/kit/address";
import type { SheetCell, UnitSystem } from "../../src/sheets/kit/definition";
import { catalogue } from "../../src/catalogue";
import { toFile, tokens } from "../../src/formula-text/dialect";
import { fillingCells } from "../../src/sheets/kit/filling";
import { printedParts } from "../../src/sheets/kit/print";
import { unmerged } from "../../src/sheets/kit/unmerged";
import { nameFault } from "../../src/taskpane/name-rules";
import { palette } from "../../src/palette";

const folder = mkdtempSync(join(tmpdir(), "fieldsum-sheets-"));
const script = join(__dirname, "../../build/sheets.ts");

function build(to: string, words: readonly string[] = [], namespace?: string): void {
  execFileSync(process.execPath, ["--import", "tsx", script, "--to", to, ...words], {
    env: {
      ...process.env,
      SOURCE_DATE_EPOCH: "1790000000",
      ...(namespace !== undefined && { NAMESPACE: namespace }),
    },
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
    ["row", "c", "si", "definedName", "sheet", "dataValidation", "xf", "mergeCell"].includes(name),
});

/** What was worked out once for a key is there the next time: each file is read by many tests. */
function kept<Key, Result>(work: (key: Key) => Result): (key: Key) => Result {
  const results = new Map<Key, Result>();
  return (key) => {
    if (!results.has(key)) results.set(key, work(key));
    return results.get(key) as Result;
  };
}

const openAt = kept(read);

function open(name: string, from = folder): Workbook {
  return openAt(join(from, `${name}.xlsx`));
}

function read(path: string): Workbook {
  const parts = unzipSync(readFileSync(path));
  const text = kept((part: string) => strFromU8(parts[part]));
  const xml = kept((part: string) => parser.parse(text(part)) as Record<string, unknown>);
  const strings = (
    xml("xl/sharedStrings.xml") as { sst: { si: { t: string | { "#text": string } }[] } }
  ).sst.si.map(({ t }) => (typeof t === "string" ? t : (t?.["#text"] ?? "")));
  return {
    parts,
    text,
    xml,
    cells: kept((page: number) => {
      const sheet = xml(`xl/worksheets/sheet${page + 1}.xml`) as {
        worksheet: { sheetData: { row: { c?: FileCell[] }[] } };
      };
      const all = sheet.worksheet.sheetData.row.flatMap(({ c }) => c ?? []);
      return new Map(all.map((cell) => [cell["@r"], cell]));
    }),
    shown: ({ v, "@t": type }) => (type === "s" ? strings[Number(v)] : v),
  };
}

const every = readyMadeSheets.flatMap((sheet) =>
  (["US", "SI"] as const).map((system: UnitSystem) => ({
    name: `${sheet.id}-${system.toLowerCase()}`,
    sheet,
    system,
    // As they stand in a file.
    pages: unmerged(sheet.pages(system)),
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

/** The day of SOURCE_DATE_EPOCH above. */
const DAY = "2026-09-21";

interface StoredName {
  readonly "@name": string;
  readonly "@localSheetId"?: string;
  readonly "#text": string;
}

interface StoredList {
  readonly "@sqref": string;
  readonly "@type": string;
  readonly "@prompt"?: string;
  readonly "@error"?: string;
  readonly "@errorTitle"?: string;
  readonly formula1?: string;
}

const plain = (text: string) => text.replace(/&(lt|gt|amp|quot|apos);/g, entity);

function sheetNames(book: Workbook): string[] {
  const { workbook } = book.xml("xl/workbook.xml") as {
    workbook: { sheets: { sheet: { "@name": string }[] } };
  };
  return workbook.sheets.sheet.map((sheet) => sheet["@name"]);
}

function definedNames(book: Workbook): StoredName[] {
  const { workbook } = book.xml("xl/workbook.xml") as {
    workbook: { definedNames: { definedName: StoredName[] } };
  };
  return workbook.definedNames.definedName.map((one) => ({ ...one, "#text": plain(one["#text"]) }));
}

function validations(book: Workbook, sheet: number): StoredList[] {
  const { worksheet } = book.xml(`xl/worksheets/sheet${sheet + 1}.xml`) as {
    worksheet: { dataValidations?: { dataValidation: StoredList[] } };
  };
  return worksheet.dataValidations?.dataValidation ?? [];
}

/** 'Sheet'!$A$1 or 'Sheet'!$A$1:$B$9; the sheet and the range. */
function area(text: string): { sheet: string; range: string } {
  const match = /^'((?:[^']|'')+)'!(\$[A-Z]{1,3}\$[1-9]\d*(?::\$[A-Z]{1,3}\$[1-9]\d*)?)$/.exec(
    text,
  );
  if (match === null) throw new Error(`${text} is no quoted reference that stays where it is`);
  return { sheet: match[1].replace(/''/g, "'"), range: match[2].replace(/\$/g, "") };
}

describe.each(every)("$name.xlsx", ({ name, pages, sheet, system }) => {
  let book: Workbook;
  const fills = fillingCells(pages);
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
        const isOurs = fills(cell);
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
    // There are tens of thousands of cells: what is wrong is gathered and expected once.
    const wrong = pages.flatMap((_, i) =>
      [...book.cells(i).values()].filter((cell) => {
        const text = typeof cell.f === "object" ? cell.f["#text"] : (cell.f ?? "");
        const onScreen = /\bIRRIG\./.test(text.replace(/"[^"]*"/g, "")) || text.startsWith("=");
        return cell["@t"] === "e" || onScreen;
      }),
    );
    expect(wrong).toEqual([]);
  });

  test("a spill's other cells hold values and no formula", () => {
    const wrong: unknown[] = [];
    pages.forEach((page, i) => {
      const cells = book.cells(i);
      for (const cell of page.cells.filter(({ spill }) => spill !== undefined)) {
        const { row, column } = readAddress(cell.at);
        for (let down = 0; down < (cell.spill?.rows ?? 0); down++) {
          for (let across = down === 0 ? 1 : 0; across < (cell.spill?.columns ?? 0); across++) {
            const at = writeAddress({ row: row + down, column: column + across });
            const stored = cells.get(at);
            if (stored?.f !== undefined || typeof stored?.v !== "string")
              wrong.push([page.name, at, stored]);
          }
        }
      }
    });
    expect(wrong).toEqual([]);
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

  test("each defined name leads to cells of a sheet that is there, in quotes, or is a function", () => {
    const sheets = sheetNames(book);
    const names = definedNames(book);
    const areas = names.filter((one) => !one["#text"].startsWith("_xlfn.LAMBDA("));
    for (const { "@name": own, "#text": text } of areas) {
      for (const part of text.split(/,(?=')/)) expect(sheets).toContain(area(part).sheet);
      if (!own.startsWith("_xlnm."))
        expect([own, nameFault(own, [], "IRRIG")]).toEqual([own, undefined]);
    }
    const stored = new Map(names.map((one) => [one["@name"], one["#text"]]));
    const wanted = pages.flatMap((page) => [
      ...page.cells.flatMap(({ name: own, at }) =>
        own === undefined ? [] : [{ own, page: page.name, range: at }],
      ),
      ...(page.names ?? []).map(({ name: own, range }) => ({ own, page: page.name, range })),
    ]);
    for (const { own, page, range } of wanted) {
      expect([own, area(stored.get(own) ?? "")]).toEqual([own, { sheet: page, range }]);
    }
    for (const { name: own, formula } of pages.flatMap((page) => page.functions ?? [])) {
      expect(stored.get(own)).toBe(toFile(formula));
      expect(stored.get(own)).toMatch(/^_xlfn\.LAMBDA\(_xlpm\.\w+,.*_xldudf_IRRIG_/);
    }
    const every = names
      .filter((one) => one["@localSheetId"] === undefined)
      .map((one) => one["@name"].toUpperCase());
    expect(new Set(every).size).toBe(every.length);
  });

  test("each reference of a formula leads somewhere", () => {
    const sheets = sheetNames(book);
    const names = new Set(definedNames(book).map((one) => one["@name"].toUpperCase()));
    const ids = new Set(catalogue.map((id) => `_XLDUDF_IRRIG_${id}`));
    const wrong: unknown[] = [];
    pages.forEach((page, i) => {
      for (const stored of book.cells(i).values()) {
        const text = plain(typeof stored.f === "object" ? stored.f["#text"] : (stored.f ?? ""));
        const all = tokens(text).filter((token) => token.text.trim() !== "");
        all.forEach((token, at) => {
          const place = `${page.name}!${stored["@r"]} ${token.text}`;
          const next = all[at + 1]?.text;
          const name = token.text.toUpperCase();
          if (!leads(token, name, next)) wrong.push(place);
        });
      }
    });
    expect(wrong).toEqual([]);

    function leads({ kind, text }: { kind: string; text: string }, name: string, next?: string) {
      if (kind === "other") return false;
      if (kind === "sheet") return sheets.includes(text.slice(1, -1).replace(/''/g, "'"));
      if (kind !== "name" || name.startsWith("_XLPM.")) return true;
      if (next === "!") return sheets.includes(text);
      if (next === "(") return !name.startsWith("_XLDUDF_") || ids.has(name);
      return /^\$?[A-Z]{1,3}\$?[1-9]\d*$|^(TRUE|FALSE)$/.test(name) || names.has(name);
    }
  });

  test("each list is one that the host takes: 255 characters typed, or cells that hold it", () => {
    const sheets = sheetNames(book);
    pages.forEach((page, i) => {
      const stored = new Map(validations(book, i).map((one) => [one["@sqref"], one]));
      for (const { at, allowed, note } of page.cells) {
        const one = stored.get(at);
        if (note !== undefined) expect(plain(one?.["@prompt"] ?? "")).toBe(note);
        expect((one?.["@prompt"] ?? "").length).toBeLessThanOrEqual(255);
        if (allowed === undefined || !("list" in allowed)) continue;
        const source = plain(one?.formula1 ?? "");
        if (source.startsWith('"')) {
          expect(source.length - 2).toBeLessThanOrEqual(255);
          expect(source.slice(1, -1).split(",")).toEqual(allowed.list);
          continue;
        }
        const { sheet: on, range } = area(source);
        const { row, column } = readAddress(range.split(":")[0]);
        const cells = book.cells(sheets.indexOf(on));
        const entries = allowed.list.map((_, down) => {
          const cell = cells.get(writeAddress({ row: row + down, column }));
          return cell && plain(book.shown(cell) ?? "");
        });
        expect(entries).toEqual(allowed.list);
      }
    });
  });

  test("no formula that may fill cells stands in merged cells", () => {
    pages.forEach((_, i) => {
      const { worksheet } = book.xml(`xl/worksheets/sheet${i + 1}.xml`) as {
        worksheet: { mergeCells?: { mergeCell: { "@ref": string }[] } };
      };
      const merges = (worksheet.mergeCells?.mergeCell ?? []).map((one) => readRange(one["@ref"]));
      for (const stored of book.cells(i).values()) {
        if (typeof stored.f !== "object" || stored.f["@t"] !== "array") continue;
        const filled = readRange(stored.f["@ref"] ?? "");
        const over = merges.filter(
          (merge) =>
            merge.row < filled.row + filled.rows &&
            filled.row < merge.row + merge.rows &&
            merge.column < filled.column + filled.columns &&
            filled.column < merge.column + merge.columns,
        );
        expect([stored["@r"], over]).toEqual([stored["@r"], []]);
      }
    });
  });

  test("each page says what its values need, and when they were computed", () => {
    const copy = open(`${name}-values`);
    pages.forEach((page, i) => {
      const said = (from: Workbook) =>
        [...from.cells(i).values()].map((cell) => from.shown(cell) ?? "");
      expect(said(book)).toContain(
        `Needs the Fieldsum add-in; the values here were computed on ${DAY}.`,
      );
      expect(said(copy)).toContain(
        `Values only, computed on ${DAY}. The formulas are in ${name}.xlsx.`,
      );
      expect(page.name.length).toBeLessThanOrEqual(31);
      expect(page.name).not.toMatch(/[[\]:*?/\\]|^'|'$|^history$/i);
    });
  });

  test("the copy for people without the add-in shows the same values and has no formula", () => {
    const copy = open(`${name}-values`);
    const wrong: unknown[] = [];
    pages.forEach((page, i) => {
      const [cells, values] = [book.cells(i), copy.cells(i)];
      const { row: noticeRow } = readAddress(page.cells[0].at);
      for (const [at, cell] of cells) {
        const other = values.get(at);
        if (other?.f !== undefined) wrong.push([page.name, at, other.f]);
        const isNotice = (book.shown(cell) ?? "").startsWith("Needs the Fieldsum add-in;");
        if (isNotice || readAddress(at).row === noticeRow) continue;
        const truth = cell["@t"] === "b" && (cell.v === "1" ? "TRUE" : "FALSE");
        const wanted = truth || book.shown(cell);
        const shown = other && copy.shown(other);
        if (shown !== wanted) wrong.push([page.name, at, shown, wanted]);
      }
      expect(validations(copy, i)).toEqual([]);
    });
    expect(wrong).toEqual([]);
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
        const isFree =
          allowed === undefined || "text" in allowed || ("low" in allowed && allowed.orText);
        const isLimited = new RegExp(`<dataValidation [^>]*sqref="${at}"`).test(sheetText);
        if (!isFree) expect([page.name, at, isLimited]).toEqual([page.name, at, true]);
      }
      expect(sheetText.includes("<sheetProtection")).toBe(false);
    });
  });

  test("headings stay in view, and each printed part fits one sheet of paper by itself", () => {
    const areas = new Map(
      definedNames(book)
        .filter((one) => one["@name"] === "_xlnm.Print_Area")
        .map((one) => [Number(one["@localSheetId"]), one["#text"].split(/,(?=')/).map(area)]),
    );
    pages.forEach((page, i) => {
      const text = book.text(`xl/worksheets/sheet${i + 1}.xml`);
      expect(text).toContain(`ySplit="${page.frozenRows}"`);
      expect(text).toContain('state="frozen"');
      expect(text).toMatch(/<pageSetUpPr[^>]*fitToPage="(1|true)"/);
      expect(text).toMatch(/<pageSetup [^>]*fitToWidth="1" fitToHeight="1"/);
      expect(text).not.toContain("<rowBreaks");
      const wanted = printedParts(page, system).map((range) => ({ sheet: page.name, range }));
      // Below a page whose title leaves no room, one row says where the values come from.
      const { sheet: on, range } = wanted.pop()!;
      const longer = range.replace(/\d+$/, (row) => String(Number(row) + 1));
      const last = areas.get(i)?.pop();
      expect(areas.get(i)).toEqual(wanted);
      expect([
        { sheet: on, range },
        { sheet: on, range: longer },
      ]).toContainEqual(last);
    });
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
      const series = book.text(path).match(/<c:ser>.*?<\/c:ser>/g) ?? [];
      for (const one of series) {
        expect(one).toContain('<c:smooth val="0"/></c:ser>');
        expect(one.match(/<c:numCache>.*?<c:pt idx="0"><c:v>-?[\d.]/g)).toHaveLength(2);
      }
    }
  });

  test("the file says whose it is, and nothing of the machine that made it", () => {
    expect(book.text("docProps/app.xml")).toContain("<Application>Fieldsum</Application>");
    const core = book.text("docProps/core.xml");
    expect(core).toContain(`<dc:title>${sheet.title}</dc:title>`);
    expect(core).toContain(`>${DAY}T12:00:00Z</dcterms:modified>`);
    expect(core).toContain("<dc:creator>Fieldsum</dc:creator>");
  });
});

test("a long list of choices stands in cells, for a validation holds 255 characters", () => {
  const book = open("season-us");
  const text = book.text("xl/worksheets/sheet1.xml");
  expect(text).toMatch(/<formula1>(?:'|&apos;)Lists(?:'|&apos;)!\$A\$1:\$A\$\d+<\/formula1>/);
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
  build(again, ["--only", "line-layout", "--fresh"]);
  for (const name of ["line-layout-us", "line-layout-si"]) {
    const [first, second] = [folder, again].map((from) => readFileSync(join(from, `${name}.xlsx`)));
    expect(second.equals(first)).toBe(true);
  }
  const other = join(folder, "other");
  build(other, ["--only", "line-layout"], "FIELDTEST");
  const book = open("line-layout-us", other);
  const text = Object.keys(book.parts)
    .map((path) => book.text(path))
    .join("");
  expect(text.includes("_xldudf_FIELDTEST_LATERAL_PROFILE(")).toBe(true);
  expect(text.includes("IRRIG")).toBe(false);
}, 300000);

test("an unknown sheet is refused by name", () => {
  expect(() => build(folder, ["--only", "no-such"])).toThrow(
    /no sheet no-such; there are line-layout/,
  );
});

function entity(_: string, name: string): string {
  return { lt: "<", gt: ">", amp: "&", quot: '"', apos: "'" }[name] as string;
}
