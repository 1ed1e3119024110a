import { callError, callTable } from "../support/host";

const CORNERS = [
  [0, 0],
  [630, 0],
  [630, 520],
  [400, 700],
  [0, 700],
];
const CLUMP = [[300, 400, 40]];
const heads = callTable("FIELD.HEADS", CORNERS, 90, 45, 50, "US", 22.5, 10, CLUMP, 14, 25);
const runs = callTable("FIELD.RUNS", CORNERS, 90, 45, 50, "US", 22.5, 10, CLUMP, 14, 25);
const hydrants = callTable("FEEDER.HYDRANTS", runs, 130);
const drawing = (...more: unknown[]) => callTable("PLAN.DRAWING", heads, CORNERS, ...more);

type Place = [number, number];
/** The points of a series, without what pads it. */
function series(table: (string | number)[][], name: string): Place[] {
  const column = table[0].indexOf(`${name} x`);
  const points = table.slice(1).map((row): Place => [Number(row[column]), Number(row[column + 1])]);
  const [x, y] = points[points.length - 1];
  let count = points.length;
  while (count > 1 && points[count - 2][0] === x && points[count - 2][1] === y) count--;
  return points.slice(0, count);
}

/** The least distance from a straight stroke to a place. */
function strokeDistance([x, y]: Place, [ax, ay]: Place, [bx, by]: Place): number {
  const square = (bx - ax) ** 2 + (by - ay) ** 2;
  const share = square === 0 ? 0 : ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / square;
  const held = Math.min(1, Math.max(0, share));
  return Math.hypot(ax + held * (bx - ax) - x, ay + held * (by - ay) - y);
}

const table = drawing(7, hydrants, CLUMP);
/** The field is 630 by 700, so everything is 35 farther east in the square. */
const SHIFT = 35;

test("has 18 columns of 300 rows, plain numbers, all in the square", () => {
  expect(table).toHaveLength(301);
  for (const row of table.slice(1)) {
    expect(row).toHaveLength(18);
    for (const value of row) {
      expect(typeof value).toBe("number");
      expect(Number(value)).toBeGreaterThanOrEqual(-1e-9);
      expect(Number(value)).toBeLessThanOrEqual(700 + 1e-9);
    }
  }
  expect(series(table, "frame")).toEqual([
    [0, 0],
    [700, 700],
  ]);
  expect(series(table, "edge")).toEqual([...CORNERS, CORNERS[0]].map(([x, y]) => [x + SHIFT, y]));
});

test("marks every head and hydrant where it stands", () => {
  const expected = heads.slice(1).map(([, , , , x, y]) => [Number(x) + SHIFT, Number(y)]);
  series(table, "heads").forEach(([x, y], i) => {
    expect(x).toBeCloseTo(expected[i][0], 9);
    expect(y).toBeCloseTo(expected[i][1], 9);
  });
  expect(series(table, "heads")).toHaveLength(expected.length);
  expect(series(table, "hydrants")).toHaveLength(hydrants.length - 1);
});

test("draws no stroke across the clump; the runs behind it are dots from near end to last head", () => {
  const middle: Place = [300 + SHIFT, 400];
  const lines = series(table, "lines");
  for (let i = 1; i < lines.length; i++) {
    expect(strokeDistance(middle, lines[i - 1], lines[i])).toBeGreaterThan(39.9);
  }
  const dots = series(table, "lines apart");
  expect(dots).toHaveLength(2 * 36);
  runs
    .slice(1)
    .filter(([, run]) => run === 2)
    .forEach(([position, , x, y], i) => {
      const own = heads.slice(1).filter((head) => head[0] === position && head[1] === 2);
      expect(dots[36 * i][0]).toBeCloseTo(Number(x) + SHIFT, 9);
      expect(dots[36 * i + 35][0]).toBeCloseTo(Number(own[own.length - 1][4]) + SHIFT, 9);
      for (const dot of dots.slice(36 * i, 36 * i + 36)) expect(dot[1]).toBeCloseTo(Number(y), 9);
    });
});

test("lines go from near end to last head, feeders from every near end to its nearest hydrant", () => {
  const first = runs.slice(1).filter(([, run]) => run === 1);
  const lines = series(table, "lines");
  first.forEach(([position, , x, y], i) => {
    expect(lines[3 * i][0]).toBeCloseTo(Number(x) + SHIFT, 9);
    expect(lines[3 * i][1]).toBeCloseTo(Number(y), 9);
    const own = heads.slice(1).filter((head) => head[0] === position && head[1] === 1);
    expect(lines[3 * i + 1][0]).toBeCloseTo(Number(own[own.length - 1][4]) + SHIFT, 9);
  });
  const reach = callTable("FEEDER.REACH", runs, hydrants, 130).slice(1);
  const outlets = series(table, "hydrants");
  const strokes = series(table, "feeders");
  reach.forEach(([, hydrant], i) => {
    const near = [Number(runs[i + 1][2]) + SHIFT, Number(runs[i + 1][3])];
    const outlet = outlets[Number(hydrant) - 1];
    const close = (a: number[], b: number[]) => Math.hypot(a[0] - b[0], a[1] - b[1]) < 1e-6;
    const drawn = strokes.some(
      (point, j) =>
        j > 0 &&
        ((close(point, near) && close(strokes[j - 1], outlet)) ||
          (close(point, outlet) && close(strokes[j - 1], near))),
    );
    expect([i, drawn || close(near, outlet)]).toEqual([i, true]);
  });
});

test("the change stands at its head in every run that goes on; keep clear is a circle of dots", () => {
  const longer = runs.slice(1).filter((run) => Number(run[7]) > 7);
  expect(series(table, "change")).toHaveLength(longer.length);
  for (const [x, y] of series(table, "keep clear")) {
    expect(Math.hypot(x - 300 - SHIFT, y - 400)).toBeCloseTo(40, 9);
  }
  expect(series(table, "keep clear").length).toBe(36);
});

test("what is not given lies on the frame's corner", () => {
  const bare = drawing();
  for (const name of ["change", "feeders", "hydrants", "keep clear"]) {
    expect(series(bare, name)).toEqual([[0, 0]]);
  }
  expect(drawing(0, null, "", 0)).toEqual(bare);
  expect(drawing(14)[1].slice(6, 8)).toEqual([0, 0]);
});

test("single heads have lines without length", () => {
  const one = [
    [1, 1, 1, 20, 20, 25],
    [2, 1, 1, 20, 20, 75],
  ];
  const small = callTable("PLAN.DRAWING", one, [
    [0, 0],
    [50, 0],
    [50, 100],
  ]);
  expect(series(small, "lines")).toEqual([
    [45, 25],
    [45, 25],
    [45, 25],
    [45, 75],
  ]);
});

test("fewer rows than points are refused with the number needed", () => {
  expect(callError("PLAN.DRAWING", heads, CORNERS, null, null, null, 100).message).toBe(
    `rows must be at least ${heads.length - 1}, as many points as "heads" has; got 100`,
  );
  expect(callError("PLAN.DRAWING", heads, CORNERS, null, null, null, 5).message).toMatch(
    /^rows must be at least 6, as many points as "edge" has/,
  );
  expect(drawing(null, null, null, heads.length - 1)).toHaveLength(heads.length);
  const error = (...cells: unknown[]) => callError("PLAN.DRAWING", ...cells).message;
  expect(error(heads, CORNERS, 501)).toBe("change must be a whole number from 1 to 500; got 501");
  expect(error(heads, CORNERS, null, null, null, 5001)).toBe(
    "rows must be a whole number from 2 to 5000; got 5001",
  );
  expect(error([[1, 2, 3]], CORNERS)).toMatch(/^heads must be six or seven columns/);
  expect(error(heads, CORNERS, null, null, [[1, 2]])).toMatch(
    /^obstacles must be three columns, x, y and radius/,
  );
});

test("a side scales the square and all in it", () => {
  const field = drawing(7, hydrants, CLUMP, 300);
  const scaled = drawing(7, hydrants, CLUMP, 300, 1);
  const side = Number(field[2][field[0].indexOf("frame x")]);
  expect(scaled[2][scaled[0].indexOf("frame x")]).toBeCloseTo(1, 12);
  for (const [i, row] of scaled.slice(1).entries())
    row.forEach((value, column) =>
      expect(Number(value) * side).toBeCloseTo(Number(field[i + 1][column]), 8),
    );
});
