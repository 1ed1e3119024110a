import { catchSamples } from "../../src/sheets/parts/catch-samples";
import { loadWorkbooks } from "../support/open-workbook";

const systems = ["US", "SI"] as const;

/** mL over the area of the opening, in inches or millimeters of depth: geometry. */
function depth(volume: number, opening: number, system: "US" | "SI"): number {
  const radius = (opening * (system === "US" ? 2.54 : 0.1)) / 2;
  const centimeters = volume / (Math.PI * radius ** 2);
  return system === "US" ? centimeters / 2.54 : centimeters * 10;
}

const mean = (all: readonly number[]) => all.reduce((sum, one) => sum + one, 0) / all.length;

/** Christiansen's uniformity. */
function cu(all: readonly number[]): number {
  return 1 - mean(all.map((one) => Math.abs(one - mean(all)))) / mean(all);
}

/** The mean of the lowest quarter over the mean; a can that the quarter cuts counts in part. */
function du(all: readonly number[]): number {
  const quarter = all.length / 4;
  const low = [...all]
    .sort((one, other) => one - other)
    .reduce((sum, one, i) => sum + one * Math.min(1, Math.max(0, quarter - i)), 0);
  return low / quarter / mean(all);
}

describe.each(systems)("the catch cans of the workshop's workbook, %s", (system) => {
  const { block, row, opening, hours } = catchSamples(system);
  const asTheyStand = {
    Cans: block,
    RowCans: row.map((caught) => [caught]),
    CanReading: "mL",
    CanOpening: opening,
  };
  // Opening takes seconds: one workbook, set anew by each test.
  let book: Awaited<ReturnType<ReturnType<typeof loadWorkbooks>["openWorkbook"]>>;
  beforeAll(async () => {
    book = await loadWorkbooks().openWorkbook("workshop", system);
  });
  afterAll(() => book?.close());

  test("as they stand, depth, rate and both uniformities are those of another calculation", async () => {
    await book.set(asTheyStand);
    const values = book.values();
    const caught = block.flat();
    expect(values.CansLeftOut).toBe("No can: all 16 count.");
    expect(values.MeanDepth).toBeCloseTo(depth(mean(caught), opening, system), 4);
    expect(values.CanRate).toBeCloseTo(depth(mean(caught), opening, system) / hours, 4);
    expect(values.CanDU).toBeCloseTo(du(caught), 9);
    expect(values.CanCU).toBeCloseTo(cu(caught), 9);
  });

  test("a can that was knocked over is left out by name, and is no dry can", async () => {
    const cans = block.map((line, r) =>
      line.map((caught, c) => (r === 2 && c === 1 ? null : caught)),
    );
    await book.set({ ...asTheyStand, Cans: cans });
    const values = book.values();
    expect(book.errors()).toEqual([]);
    const caught = cans.flat().filter((one) => one !== null);
    expect(values.CanCount).toBe(15);
    expect(values.CansLeftOut).toBe("Blank, and so left out: row 3, column 2.");
    expect(values.MeanDepth).toBeCloseTo(depth(mean(caught), opening, system), 4);
    expect(values.CanDU).toBeCloseTo(du(caught), 9);
    expect(values.CanCU).toBeCloseTo(cu(caught), 9);
  });

  test.each(["in", "mm"] as const)(
    "read with a ruler in %s, the readings are the depths, whatever the opening",
    async (ruler) => {
      const readings = block.map((line) =>
        line.map((caught) => Number((caught / (ruler === "in" ? 200 : 8)).toFixed(2))),
      );
      const across = row.map((caught) => [caught / (ruler === "in" ? 200 : 8)]);
      await book.set({ CanReading: ruler, CanOpening: 7, Cans: readings, RowCans: across });
      const values = book.values();
      expect(book.errors()).toEqual([]);
      const own = system === "US" ? "in" : "mm";
      const into = ruler === own ? 1 : ruler === "in" ? 25.4 : 1 / 25.4;
      expect(values.MeanDepth).toBeCloseTo(mean(readings.flat()) * into, 9);
      expect(values.CanDU).toBeCloseTo(du(readings.flat()), 9);
      const depths = values.Across as number[][];
      across.forEach(([reading], i) => expect(depths[i][0]).toBeCloseTo(reading * into, 9));
    },
  );

  test("in the row a blank can takes the middle of its neighbors; a blank end is an error, not a dry can", async () => {
    const across = row.map((caught, i) => [i === 4 ? null : caught]);
    await book.set({ ...asTheyStand, RowCans: across });
    const middle = (book.values().Across as number[][])[4][0];
    expect(middle).toBeCloseTo(depth((row[3] + row[5]) / 2, opening, system), 4);
    expect(book.errors()).toEqual([]);
    await book.set({ ...asTheyStand, RowCans: row.map((caught, i) => [i === 0 ? null : caught]) });
    expect(book.errors().map(({ code }) => code)).toContain("#VALUE!");
    await book.set({
      ...asTheyStand,
      RowCans: row.map((caught, i) => [i === 4 || i === 5 ? null : caught]),
    });
    expect(book.errors().map(({ code }) => code)).toContain("#VALUE!");
  });
});
