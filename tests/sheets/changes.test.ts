import type { EvaluatedSheet } from "../../build/sheet-evaluator";
import { readyMadeSheets } from "../../src/sheets";
import { readAddress } from "../../src/sheets/kit/address";
import { DEFAULT_NAMESPACE } from "../../src/formula-text/dialect";
import type { Page, SheetCell, UnitSystem } from "../../src/sheets/kit/definition";
import { loadEvaluator } from "../support/sheet-evaluator";

const evaluate = loadEvaluator();

type Typed = Readonly<Record<string, string | number | boolean>>;

/** The sheet as it is once someone has typed into cells, by their names. A spill may then fill more or less. */
function typed(pages: readonly Page[], values: Typed): Page[] {
  const left = new Set(Object.keys(values));
  const changed = pages.map((page) => ({
    ...page,
    cells: page.cells.map((cell): SheetCell => {
      const { spill, ...rest } = cell;
      if (cell.name === undefined || !(cell.name in values)) return spill ? rest : cell;
      left.delete(cell.name);
      expect(cell.role).toBe("input");
      return { ...cell, value: values[cell.name] };
    }),
  }));
  expect([...left]).toEqual([]);
  return changed;
}

async function withTyped(id: string, system: UnitSystem, values: Typed) {
  const sheet = readyMadeSheets.find((one) => one.id === id);
  if (sheet === undefined) throw new Error(`no sheet ${id}`);
  const pages = typed(sheet.pages(system), values);
  const shown = await evaluate(pages, DEFAULT_NAMESPACE);
  return { pages, shown, read: (name: string) => named(pages, shown, name) };
}

function named(pages: readonly Page[], shown: EvaluatedSheet, name: string) {
  for (const page of pages) {
    const cell = page.cells.find((one) => one.name === name);
    if (cell !== undefined) {
      const { row, column } = readAddress(cell.at);
      return shown.value(page.name, row, column);
    }
  }
  throw new Error(`no cell ${name}`);
}

function labelled(pages: readonly Page[], shown: EvaluatedSheet, label: string) {
  for (const page of pages) {
    const cell = page.cells.find((one) => one.value === label);
    if (cell !== undefined) {
      const { row } = readAddress(cell.at);
      const check = page.cells.find(
        (one) =>
          ["check", "mark", "sentence"].includes(one.role) && readAddress(one.at).row === row,
      );
      if (check !== undefined) return shown.value(page.name, row, readAddress(check.at).column);
    }
  }
  throw new Error(`no check ${label}`);
}

/** What people change first; none may leave an error on any page. */
const changes: readonly { readonly why: string; readonly values: Typed }[] = [
  { why: "more heads", values: { Heads: 18 } },
  { why: "few heads, so one size is enough", values: { Heads: 5 } },
  { why: "one size all the way", values: { Changeover: 14 } },
  { why: "a short first segment", values: { First: 5 } },
  { why: "uphill", values: { Rise: 4 } },
  { why: "regulators", values: { Regulator: 38 } },
  { why: "Darcy–Weisbach", values: { Friction: "Darcy" } },
];

describe.each(["line-layout", "quote", "spacing-what-if", "workshop", "season"])("%s", (id) => {
  test.each(changes)("$why", async ({ values }) => {
    // A regulator's set pressure must be above the lowest pressure that is asked for.
    const more: Typed = "Regulator" in values ? { Lowest: 30 } : {};
    const { shown } = await withTyped(id, "US", { ...values, ...more });
    expect(shown.errors).toEqual([]);
  });
});

describe("the line layout", () => {
  test("passes the 20 percent rule along the contour and fails it 2 percent uphill", async () => {
    const level = await withTyped("line-layout", "US", { Rise: 0 });
    expect(labelled(level.pages, level.shown, "Pressure along the line")).toBe("OK");
    const uphill = await withTyped("line-layout", "US", { Rise: 12.6 });
    expect(labelled(uphill.pages, uphill.shown, "Pressure along the line")).toMatch(
      /^Pressure var/,
    );
  });

  test("says what the gauges point to", async () => {
    const says = async (inlet: number, far: number) => {
      const { pages, shown } = await withTyped("line-layout", "US", {
        InletReading: inlet,
        FarReading: far,
      });
      return labelled(pages, shown, "What the readings point to");
    };
    expect(await says(47, 41)).toBe("The line runs as planned.");
    expect(await says(47, 36)).toMatch(/^Lower than planned: .*leak/);
    expect(await says(47, 45)).toMatch(/^Higher than planned: .*plugged nozzles/);
    expect(await says(40, 34)).toMatch(/^The inlet has 7.0 psi less than planned/);
  });

  test("the other system relabels and converts nothing that was typed", async () => {
    const { read, pages, shown } = await withTyped("line-layout", "US", {
      Units: "SI",
      Spacing: 14,
      Move: 15,
      Lowest: 275,
    });
    expect(read("Spacing")).toBe(14);
    const units = pages[0].cells.filter(({ role, formula }) => role === "unit" && formula);
    const texts = units.map(({ at }) => {
      const { row, column } = readAddress(at);
      return shown.value(pages[0].name, row, column);
    });
    expect(texts).toContain("kPa");
    expect(texts).not.toContain("psi");
  });

  test("a start gives every flag its place", async () => {
    const { pages, shown } = await withTyped("line-layout", "US", {
      Latitude: 41.5,
      Longitude: -97.25,
      LineBearing: 85,
    });
    expect(shown.errors).toEqual([]);
    const stake = pages.find(({ name }) => name === "Stake") as Page;
    const flags = stake.cells.find(({ formula }) => formula?.includes("STAKE.FLAGS")) as SheetCell;
    const { row, column } = readAddress(flags.at);
    expect(shown.value("Stake", row + 14, column + 2)).toBeCloseTo(41.5, 2);
    expect(shown.value("Stake", row + 14, column + 3)).toBeCloseTo(-97.25, 2);
  });
});

describe("the season", () => {
  test("a third line moves every pressure down", async () => {
    const two = await withTyped("season", "US", { Running: 2 });
    const three = await withTyped("season", "US", { Running: 3 });
    for (const name of ["PumpHead", "RiserPressure", "Inlet", "LeastPressure", "FarPressure"]) {
      expect(three.read(name)).toBeLessThan(two.read(name) as number);
    }
    expect(three.read("AllFlow")).toBeGreaterThan(two.read("AllFlow") as number);
  });

  test("a light soil asks for shorter rounds, and the check says how short", async () => {
    const { pages, shown } = await withTyped("season", "US", { Texture: "coarse sand" });
    expect(labelled(pages, shown, "Depth and the soil")).toMatch(
      /^The crop uses 1\.4\d in between irrigations; the soil gives \d\.\d\d in: irrigate every \d days\.$/,
    );
  });
});

describe("the quote", () => {
  test("a dearer head moves the total by its price with markup and tax, times their number", async () => {
    const sheet = readyMadeSheets.find(({ id }) => id === "quote");
    const before = await withTyped("quote", "US", {});
    const pages = (sheet?.pages("US") ?? []).map((page) => ({
      ...page,
      cells: page.cells.map((cell) => {
        const item = page.cells.find(({ value }) => value === "sprinkler head");
        const isPrice = item !== undefined && cell.at === item.at.replace("A", "B");
        return isPrice ? { ...cell, value: 20 } : cell;
      }),
    }));
    const after = await evaluate(pages, DEFAULT_NAMESPACE);
    const total = named(pages, after, "QuoteTotal") as number;
    // 28 heads, 16 to 20 each, a quarter more for markup, 6 % tax.
    expect(total - (before.read("QuoteTotal") as number)).toBeCloseTo(28 * 4 * 1.25 * 1.06, 6);
  });
});

describe("the exercises", () => {
  const answered = (number: number, answer: number) =>
    (readyMadeSheets.find(({ id }) => id === "workshop")?.pages("US") ?? []).map((page) => ({
      ...page,
      cells: page.cells.map((cell) =>
        page.name === "Exercise" && cell.label === `Exercise ${number}`
          ? { ...cell, value: answer }
          : cell,
      ),
    }));
  const says = async (number: number, answer: number) => {
    const pages = answered(number, answer);
    const { value } = await evaluate(pages, DEFAULT_NAMESPACE);
    const input = pages
      .find(({ name }) => name === "Exercise")
      ?.cells.find(({ label }) => label === `Exercise ${number}`);
    return value("Exercise", readAddress(input?.at ?? "").row, 3);
  };

  test("tell right, close and not yet apart", async () => {
    // Christiansen's factor for 14 outlets, exponent 1.852: between 0.393 (12) and 0.382 (16).
    await expect(says(11, 0.387)).resolves.toBe("OK");
    await expect(says(11, 0.4)).resolves.toMatch(/^Close\. /);
    await expect(says(11, 0.3)).resolves.toMatch(/^Not yet\. /);
  });

  test("percent in the place of a fraction is told apart, and a count has no near", async () => {
    await expect(says(2, 85)).resolves.toMatch(/^Close: that is percent/);
    await expect(says(7, 1)).resolves.toMatch(/^Not yet/);
  });
});
