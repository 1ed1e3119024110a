import { groundOf } from "../../src/formulas/ground-height";
import { FieldLayouts } from "../../src/solver/laid-field";
import { expectClose } from "../support/published";

const corner = (x: number, y: number) => ({ x, y });
const rectangle = [corner(0, 0), corner(100, 0), corner(100, 120), corner(0, 120)];
const open = { corners: rectangle, obstacles: [], setback: 0 };

test("a rectangle has one kind of run", () => {
  const laid = new FieldLayouts(open, 90, { slope: 0.02 }).at(10, 12);
  expect(laid).toMatchObject({ sets: 10, heads: 100, coverage: 1, highestNearEnd: 0 });
  expect(laid?.segmentLength).toEqual([5, ...new Array<number>(9).fill(10)]);
  expect(laid?.kinds).toHaveLength(1);
  const [kind] = laid?.kinds ?? [];
  expect(kind).toMatchObject({ heads: 10, count: 10, first: 5, nearHeight: 0 });
  expectClose(kind.elevation[0], 0.1, 1e-12);
  expectClose(kind.elevation[9], 1.9, 1e-12);
  expect(laid?.lowestGround).toBe(0);
});

test("downhill the lowest ground is at the far end", () => {
  const laid = new FieldLayouts(open, 90, { slope: -0.02 }).at(10, 12);
  expectClose(laid?.lowestGround, -1.9, 1e-12);
});

test("a feeder reaches the block of its line from amid it, and never less than half way across it", () => {
  const laid = new FieldLayouts(open, 90, { slope: 0 }).at(10, 12);
  // Ten positions; five and five; four, three and three; one each.
  for (const [lines, reach] of [
    [1, 54],
    [2, 24],
    [3, 18],
    [10, 0],
  ]) {
    expectClose(laid?.feeder(lines), reach, 1e-9);
    expectClose(laid?.leastFeeder(lines), reach, 1e-9);
  }
});

test("runs that differ are told apart, the longest first, and near ends rise with the slope", () => {
  // A triangle with its long side along x: rows get shorter to the north, from both ends.
  const corners = [corner(0, 0), corner(200, 0), corner(100, 100)];
  const laid = new FieldLayouts({ corners, obstacles: [], setback: 0 }, 90, { slope: 0.01 }).at(
    10,
    20,
  );
  expect(laid?.kinds.map(({ heads, count }) => [heads, count])).toEqual([
    [18, 1],
    [14, 1],
    [10, 1],
    [6, 1],
    [2, 1],
  ]);
  // The row 90 up enters 90 along, 80 after the first.
  expectClose(laid?.highestNearEnd, 0.8, 1e-9);
  const feeder = laid?.feeder(1) ?? 0;
  expect(feeder).toBeGreaterThanOrEqual((laid?.leastFeeder(1) ?? 0) * (1 - 1e-12));
});

test("heights are those of the spots, above the near end and above height 0", () => {
  const spot = (x: number, y: number, height: number) => ({ x, y, height });
  const heights = groundOf([spot(-50, -50, 1), spot(550, -50, 7), spot(-50, 550, 13)]);
  const laid = new FieldLayouts(open, 90, { heights }).at(10, 12);
  // On a plane: 0.01 m a meter east, 0.02 north; at the origin 1 + 0.5 + 1.
  const [kind] = laid?.kinds ?? [];
  expect(kind.heads).toBe(10);
  expectClose(kind.elevation[9], 0.95, 1e-9);
  expectClose(laid?.highestNearEnd, 2.5 + 0.02 * 114, 1e-9);
  expectClose(laid?.lowestGround, 2.5 + 0.02 * 6, 1e-9);
  // The feeder is straight on the map: from the middle of ten positions to the last.
  expectClose(laid?.feeder(1), 54, 1e-9);
});

test("layouts that press alike are one to the solver, others are not", () => {
  const layouts = new FieldLayouts(open, 90, { slope: 0 });
  expect(layouts.at(10, 12)?.hydraulics).toBe(layouts.at(10, 15)?.hydraulics);
  expect(layouts.at(10, 12)?.hydraulics).not.toBe(layouts.at(9, 12)?.hydraulics);
  expect(layouts.at(10, 12)).toBe(layouts.at(10, 12));
});

test("without room for a head there is no layout; too many layouts are refused", () => {
  const narrow = {
    corners: rectangle.map(({ x, y }) => corner(x / 25, y)),
    obstacles: [],
    setback: 0,
  };
  expect(new FieldLayouts(narrow, 90, { slope: 0 }).at(10, 12)).toBeUndefined();
  const round = Array.from({ length: 200 }, (_, i) => {
    const angle = (2 * Math.PI * i) / 200;
    return corner(300 * Math.cos(angle), 300 * Math.sin(angle));
  });
  const layouts = new FieldLayouts({ corners: round, obstacles: [], setback: 0 }, 90, { slope: 0 });
  expect(() => {
    for (let i = 0; i < 1000; i++) layouts.at(20 + i / 1000, 3);
  }).toThrow("spacings and moves lay this field out in too many ways to try");
});

test("names the place whose height is not known", () => {
  const spot = (x: number, y: number) => ({ x, y, height: 1 });
  const message = (...spots: [number, number][]) => {
    const heights = groundOf(spots.map(([x, y]) => spot(x, y)));
    try {
      new FieldLayouts(open, 90, { heights }).at(10, 12);
    } catch (error) {
      return (error as Error).message;
    }
    return "";
  };
  // Ground known in the south only: the rows from 54 m north on lie outside.
  expect(message([-50, -50], [150, -50], [150, 50], [-50, 50])).toContain(
    "the near end of position 5, run 1",
  );
  // And in the west only: the head at 65 m is the first outside, from the first row on.
  expect(message([-50, -50], [60, -50], [60, 150], [-50, 150])).toContain(
    "head 7 of position 1, run 1",
  );
});

test("of runs with as many heads the one whose last head is highest comes first", () => {
  const spot = (x: number, y: number, height: number) => ({ x, y, height });
  // A hollow: the far end rises the more, the farther north the row.
  const heights = groundOf([
    spot(-10, -10, 0),
    spot(-10, 130, 0),
    spot(110, -10, 0),
    spot(110, 130, 12),
  ]);
  const laid = new FieldLayouts(open, 90, { heights }).at(10, 12);
  const last = laid?.kinds.map(({ elevation }) => elevation[elevation.length - 1]) ?? [];
  expect(last).toHaveLength(10);
  expect(last).toEqual([...last].sort((a, b) => b - a));
  expect(last[0]).toBeGreaterThan(last[9] + 1);
});

test("rows in two runs: the second ones are moved through after all first ones", () => {
  // Ponds side by side across the middle part every row: one line has the west, the other the east.
  const ponds = Array.from({ length: 13 }, (_, i) => ({ x: 50, y: 10 * i, radius: 10 }));
  const laid = new FieldLayouts({ ...open, obstacles: ponds }, 90, { slope: 0 }).at(10, 12);
  expect(laid?.sets).toBe(20);
  // From the middle of ten rows to the outermost, 54 up and down; the rows of both by halves, from
  // amid five rows to two corners, would take some 38.
  expect(laid?.feeder(2) ?? 0).toBeGreaterThanOrEqual(54 * (1 - 1e-12));
  expect(laid?.feeder(2) ?? 0).toBeLessThan(56);
  expectClose(laid?.feeder(20), 0, 1e-12);
});

test("other kinds of runs press otherwise", () => {
  const corners = [corner(0, 0), corner(200, 0), corner(100, 100)];
  const layouts = new FieldLayouts({ corners, obstacles: [], setback: 0 }, 90, { slope: 0.01 });
  expect(layouts.at(10, 20)?.hydraulics).not.toBe(layouts.at(10, 30)?.hydraulics);
  expect(layouts.at(10, 20)?.hydraulics).toBe(layouts.at(10, 20)?.hydraulics);
});

test("the first segment is as long as the longest of all runs", () => {
  // The setback is longer along the rows where the edge lies aslant.
  const corners = [
    [0, 0],
    [200, 0],
    [200, 100],
    [60, 100],
    [0, 40],
  ].map(([x, y]) => corner(x, y));
  const laid = new FieldLayouts({ corners, obstacles: [], setback: 3 }, 90, { slope: 0 }).at(
    10,
    20,
  );
  const firsts = laid?.kinds.map(({ first }) => first) ?? [];
  expect(new Set(firsts).size).toBeGreaterThan(1);
  // Half a spacing behind the edge, less what the setback takes: 3 across an upright edge, 3√2 aslant.
  expectClose(Math.max(...firsts), 5 - 3, 1e-9);
  expectClose(Math.min(...firsts), 5 - 3 * Math.SQRT2, 1e-9);
  expect(laid?.segmentLength[0]).toBe(Math.max(...firsts));
});
