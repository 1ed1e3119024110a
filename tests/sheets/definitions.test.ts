import { catalogue } from "../../src/catalogue";
import { cautions } from "../../src/cautions";
import { readyMadeSheets } from "../../src/sheets";
import { readAddress, readRange, writeAddress } from "../../src/sheets/kit/address";
import type { Page, UnitSystem } from "../../src/sheets/kit/definition";
import { functionsIn, nativeFunctionsIn } from "../../src/formula-text/dialect";

const systems: readonly UnitSystem[] = ["US", "SI"];

const every = readyMadeSheets.flatMap((sheet) =>
  systems.map((system) => ({
    what: `${sheet.title} (${system})`,
    sheet,
    system,
    pages: sheet.pages(system),
  })),
);

/** Those that Excel 365 and the trial grid share, as far as the sheets use them. */
const SHARED = new Set(
  (
    "ABS AND AVERAGE COS COUNT COUNTA COUNTIF FILTER FIXED FORMULATEXT HSTACK IF IFNA INDEX INT ISERROR ISNUMBER " +
    "LAMBDA MATCH MAX MID MIN MINIFS MOD N NOT OR RADIANS ROUND ROUNDUP ROWS SIN SMALL SUM SUMIF SUMPRODUCT"
  ).split(" "),
);

function formulas(pages: readonly Page[]): string[] {
  return pages.flatMap((page) => [
    ...page.cells.flatMap(({ formula }) => formula ?? []),
    ...(page.functions ?? []).map(({ formula }) => formula),
  ]);
}

function headers(at: string, columns: number): string[] {
  const { row, column } = readAddress(at);
  return Array.from({ length: columns }, (_, i) => writeAddress({ row, column: column + i }));
}

function names(pages: readonly Page[]): string[] {
  return pages.flatMap((page) => [
    ...page.cells.flatMap(({ name }) => name ?? []),
    ...(page.names ?? []).map(({ name }) => name),
    ...(page.functions ?? []).map(({ name }) => name),
  ]);
}

test("each has an id and a title of its own", () => {
  const count = readyMadeSheets.length;
  expect(count).toBeGreaterThanOrEqual(6);
  expect(new Set(readyMadeSheets.map(({ id }) => id)).size).toBe(count);
  expect(new Set(readyMadeSheets.map(({ title }) => title)).size).toBe(count);
});

describe.each(every)("$what", ({ pages, system }) => {
  test("opens with the first questions, each with an answer beside it", () => {
    const [first] = pages;
    const asked = first.cells.filter(({ role }) => role === "question");
    // Whether the plan holds comes first: no answer below it is worth more.
    expect(asked[0].value).toBe("Does the plan hold?");
    expect(asked.length).toBeGreaterThan(1);
    const answered = first.cells.filter(({ role }) => role === "answer").map(({ at }) => at);
    for (const { at } of asked) {
      const { row } = readAddress(at);
      expect(answered.map((answer) => readAddress(answer).row)).toContain(row);
    }
  });

  test("no two cells want one place, rows kept for a spill and merged columns included", () => {
    for (const page of pages) {
      const taken = new Map<string, string>();
      for (const { at, span = 1, spill } of page.cells) {
        const { row, column } = readAddress(at);
        for (let down = 0; down < (spill?.reserved ?? 1); down++) {
          for (let across = 0; across < (spill?.formats.length ?? span); across++) {
            const place = writeAddress({ row: row + down, column: column + across });
            expect([page.name, place, taken.get(place)]).toEqual([page.name, place, undefined]);
            taken.set(place, at);
          }
        }
      }
    }
  });

  test("a spill fits its rows and formats", () => {
    for (const { spill } of pages.flatMap(({ cells }) => cells)) {
      if (spill === undefined) continue;
      expect(spill.rows).toBeLessThanOrEqual(spill.reserved);
      expect(spill.columns).toBeLessThanOrEqual(spill.formats.length);
    }
  });

  test("names are unlike each other and cell addresses, and every name that is used exists", () => {
    const given = names(pages).map((name) => name.toUpperCase());
    expect(new Set(given).size).toBe(given.length);
    for (const name of given) {
      expect(name).toMatch(/^[A-Z][A-Z0-9]*$/);
      expect(name).not.toMatch(/^[A-Z]{1,3}\d+$|^[RC]\d*$/);
    }
    const known = new Set([...given, "TRUE", "FALSE"]);
    for (const formula of formulas(pages)) {
      const bare = formula
        .replace(/"(?:[^"]|"")*"/g, "")
        .replace(/'[^']*'!/g, "")
        .replace(/LAMBDA\(.*/s, "");
      for (const [word] of bare.matchAll(/[A-Za-z_][\w.]*(?![\w.]*\()/g)) {
        if (/^[A-Z]{1,3}\d+$/.test(word) || bare.includes(`${word}(`)) continue;
        expect([formula, known.has(word.toUpperCase()) ? word : `no name ${word}`]).toEqual([
          formula,
          word,
        ]);
      }
    }
  });

  test("only functions that there are, and native ones that the hosts share", () => {
    const ids: readonly string[] = catalogue;
    const own = names(pages).map((name) => name.toUpperCase());
    for (const formula of formulas(pages)) {
      for (const name of functionsIn(formula)) expect(ids).toContain(name.replace(/\./g, "_"));
      for (const name of nativeFunctionsIn(formula)) {
        expect([formula, SHARED.has(name) || own.includes(name)]).toEqual([formula, true]);
      }
      // No reference to a spill by its first cell; inside a text the mark is only a letter.
      expect(formula.replace(/"(?:[^"]|"")*"/g, "")).not.toMatch(/#/);
    }
  });

  test("inputs hold what they allow", () => {
    for (const { role, allowed, value, at } of pages.flatMap(({ cells }) => cells)) {
      if (allowed === undefined) continue;
      expect([at, role]).toEqual([at, "input"]);
      if (value === undefined) continue;
      if ("list" in allowed) {
        expect(allowed.list).toContain(
          String(value).replace(/^(true|false)$/, (v) => v.toUpperCase()),
        );
      } else if ("low" in allowed) {
        expect(value).toBeGreaterThanOrEqual(allowed.low);
        expect(value).toBeLessThanOrEqual(allowed.high);
        if (allowed.whole === true) expect(Number.isInteger(value)).toBe(true);
      }
    }
  });

  test("every input has limits and a name for the sentence that tells them; every check has one", () => {
    for (const { role, at, allowed, label } of pages.flatMap(({ cells }) => cells)) {
      if (role === "input")
        expect([at, allowed !== undefined && label !== undefined]).toEqual([at, true]);
      if (role === "check") expect([at, label === undefined]).toEqual([at, false]);
    }
  });

  test("only an error that means no answer is put into words", () => {
    for (const formula of formulas(pages)) expect(formula).not.toMatch(/IFERROR/);
  });

  test("every page that goes to the field states its cautions in full sentences", () => {
    for (const page of pages) {
      for (const subject of page.name === "Cautions" ? [] : (page.cautions ?? [])) {
        const { title, points } = cautions[subject as keyof typeof cautions];
        expect(page.cells.map(({ value }) => value)).toContain(`${title}: ${points[0]}`);
      }
    }
    const withCautions = pages.filter(({ cautions: named }) => named !== undefined);
    expect(withCautions.length).toBeGreaterThan(1);
  });

  test("one cell states the units, with a list", () => {
    const units = pages.flatMap(({ cells }) => cells).filter(({ name }) => name === "Units");
    expect(units).toHaveLength(1);
    expect(units[0]).toMatchObject({ value: system, allowed: { list: ["US", "SI"] } });
  });

  test("charts, marks, named ranges and print areas lie on their pages", () => {
    for (const page of pages) {
      const area = readRange(page.printArea);
      expect([area.row, area.column]).toEqual([0, 0]);
      expect(area.columns).toBe(page.widths.length);
      for (const { series, page: source = page.name } of page.charts ?? []) {
        const cells = new Set(
          pages
            .filter(({ name }) => name === source)
            .flatMap((one) => one.cells)
            .flatMap(({ at, spill }) => headers(at, spill?.columns ?? 1)),
        );
        for (const { titleAt, range } of series) {
          expect(cells.has(titleAt)).toBe(true);
          expect(readRange(range).columns).toBe(1);
        }
      }
      for (const { range, by } of page.marks ?? []) {
        expect(readRange(range)).toMatchObject({
          rows: readRange(by).rows,
          columns: readRange(by).columns,
        });
      }
      for (const { range } of page.names ?? []) {
        const { column, columns } = readRange(range);
        expect(column + columns).toBeLessThanOrEqual(page.widths.length);
      }
    }
  });

  test("cautions stand in full on a page of their own, all that the other pages name", () => {
    const named = new Set(pages.flatMap((page) => page.cautions ?? []));
    const [last] = pages.slice(-1);
    expect(last.name).toBe("Cautions");
    const text = last.cells.map(({ value }) => String(value));
    for (const subject of named) {
      const { title, points } = cautions[subject as keyof typeof cautions];
      expect(text).toContain(title);
      for (const point of points) expect(text).toContain(`• ${point}`);
    }
  });

  test("names of one's own stand alone: no other page uses one", () => {
    const functions = pages.flatMap((page) => page.functions ?? []);
    expect(functions.length).toBeGreaterThan(0);
    for (const page of pages.filter(({ name }) => name !== "Names")) {
      for (const formula of formulas([page])) {
        for (const { name } of functions) expect(formula).not.toContain(name);
      }
    }
  });

  test("pages have names that a workbook takes", () => {
    const given = pages.map(({ name }) => name);
    expect(new Set(given.map((name) => name.toLowerCase())).size).toBe(given.length);
    for (const name of given) expect(name).toMatch(/^[^[\]:*?/\\']{1,31}$/);
  });
});

test("the two systems have the same pages, cells and formulas; inputs are each their own", () => {
  for (const sheet of readyMadeSheets) {
    const [us, si] = systems.map((system) => sheet.pages(system));
    expect(si.map(({ name }) => name)).toEqual(us.map(({ name }) => name));
    us.forEach((page, i) => {
      if (["Names", "Exercise"].includes(page.name)) return;
      const shape = ({ cells }: Page) =>
        // How many digits a sentence gives of a quantity is each system's own.
        cells.map(({ at, role, name, formula }) => ({
          at,
          role,
          name,
          formula: formula?.replace(/^(=.*FIXED\(AllFlow, )\d/, "$1n"),
        }));
      expect(shape(si[i])).toEqual(shape(page));
    });
  }
});
