import fc from "fast-check";
import { coverOf } from "../../src/formulas/covered-area";
import { type FieldRow, openRows } from "../../src/formulas/field-rows";
import { placeRuns } from "../../src/formulas/field-runs";
import type { Point } from "../../src/formulas/polygon";
import { type Field, turnField } from "../../src/formulas/turned-field";
import { Chance } from "../support/chance";
import { commonArea, freeGround, freePieces } from "../support/polygon-library";
import { randomCorners, randomObstacles } from "../support/random-field";

const rectangle: Point[] = [
  { x: 0, y: 0 },
  { x: 300, y: 0 },
  { x: 300, y: 200 },
  { x: 0, y: 200 },
];
const bare = (corners: Point[], setback = 0): Field => ({ corners, obstacles: [], setback });
const acrossOf = (rows: FieldRow[]) => rows.map(({ across }) => across);
/** Due east: along is x, across is y. */
const EAST = 90;

describe("rows", () => {
  test("as many as moves fit across, rounded, in the middle", () => {
    expect(acrossOf(openRows(turnField(bare(rectangle), EAST), 50))).toEqual([25, 75, 125, 175]);
    expect(acrossOf(openRows(turnField(bare(rectangle), EAST), 58))).toEqual([42, 100, 158]);
    // 3.5 moves are four rows, a quarter of a move from the edge; a little less is three.
    expect(openRows(turnField(bare(rectangle), EAST), 200 / 3.5)).toHaveLength(4);
    expect(openRows(turnField(bare(rectangle), EAST), 200 / 3.49)).toHaveLength(3);
    expect(acrossOf(openRows(turnField(bare(rectangle), EAST), 1e6))).toEqual([100]);
  });

  test("never nearer to the corners across than the setback", () => {
    const rows = openRows(turnField(bare(rectangle, 30), EAST), 50);
    expect(acrossOf(rows)).toEqual([50, 100, 150]);
    // Exactly at the setback is allowed.
    expect(acrossOf(openRows(turnField(bare(rectangle, 25), EAST), 50))).toHaveLength(4);
  });

  test("from a start on, as long as they lie in the field", () => {
    const rows = (start: number, setback = 0) =>
      acrossOf(openRows(turnField(bare(rectangle, setback), EAST), 50, start));
    expect(rows(10)).toEqual([10, 60, 110, 160]);
    expect(rows(60)).toEqual([60, 110, 160]);
    expect(rows(10, 40)).toEqual([10, 60, 110, 160]);
    expect(rows(10, 41)).toEqual([10, 60, 110]);
    expect(rows(201)).toEqual([]);
  });

  test("advance to the left of the line, from its near end", () => {
    const turned = turnField(bare(rectangle), 0);
    const [row] = openRows(turned, 100);
    // Due north the line begins at y = 0, and positions advance to the west: the first is the eastmost.
    expect(turned.place(row.free[0].from, row.across)).toEqual({ x: 250, y: 0 });
    expect(turned.place(row.free[0].to, row.across)).toEqual({ x: 250, y: 200 });
  });

  test("a row along an inner edge or through a corner is not cut by it", () => {
    const step: Point[] = [
      { x: 0, y: 0 },
      { x: 300, y: 0 },
      { x: 300, y: 100 },
      { x: 150, y: 100 },
      { x: 150, y: 200 },
      { x: 0, y: 200 },
    ];
    const notch: Point[] = [...rectangle.slice(0, 3), { x: 150, y: 100 }, rectangle[3]];
    for (const corners of [step, notch]) {
      const [row] = openRows(turnField(bare(corners), EAST), 1e6, 100);
      expect(row.free).toHaveLength(1);
      expect(row.free[0].from).toBeCloseTo(0, 6);
      expect(row.free[0].to).toBeCloseTo(300, 6);
    }
  });

  test("a row along an inner edge takes the wider side, whichever it is", () => {
    const wideAbove: Point[] = [
      { x: 150, y: 0 },
      { x: 300, y: 0 },
      { x: 300, y: 200 },
      { x: 0, y: 200 },
      { x: 0, y: 100 },
      { x: 150, y: 100 },
    ];
    for (const corners of [wideAbove, wideAbove.map(({ x, y }) => ({ x: 300 - x, y }))]) {
      const turned = turnField(bare(corners), EAST);
      const [{ across, free }] = openRows(turned, 1e6, 100);
      expect(free).toHaveLength(1);
      expect(turned.place(free[0].from, across).x).toBeCloseTo(0, 6);
      expect(turned.place(free[0].to, across).x).toBeCloseTo(300, 6);
    }
  });

  test("a row through the tip between two legs has three parts, in their order", () => {
    const legs = [
      [0, 200],
      [0, 0],
      [10, 0],
      [10, 150],
      [20, 150],
      [25, 100],
      [30, 150],
      [40, 150],
      [40, 0],
      [50, 0],
      [50, 200],
    ].map(([x, y]) => ({ x, y }));
    for (const corners of [legs, legs.map(({ x, y }) => ({ x, y: 200 - y }))]) {
      const [{ free }] = openRows(turnField(bare(corners), EAST), 1e6, 100);
      const ends = free.map(({ from, to }) => [from, to].map((end) => Math.round(end * 1e3) / 1e3));
      expect(ends).toEqual([
        [0, 10],
        [25, 25],
        [40, 50],
      ]);
    }
  });

  test("a row between corners meets a slanted edge where that is, to the last digits", () => {
    const corners = [
      { x: 0, y: 0 },
      { x: 100, y: 0 },
      { x: 0, y: 100 },
    ];
    const [row] = openRows(turnField(bare(corners), EAST), 1e6, 10);
    expect(row.free).toHaveLength(1);
    expect(row.free[0].to).toBeCloseTo(90, 10);
  });

  test("each part tells where the row comes into the field before it", () => {
    const spike = [
      { x: 160, y: 200 },
      { x: 150, y: 100 },
      { x: 140, y: 200 },
    ];
    const corners = [...rectangle.slice(0, 3), ...spike, rectangle[3]];
    // At 120 the spike is 4 wide, and 20 off its sides is 20·√1.01 along the row.
    const [{ free }] = openRows(turnField(bare(corners, 20), EAST), 1e6, 120);
    const off = 20 * Math.sqrt(1.01);
    [
      [0, 20, 148 - off],
      [152, 152 + off, 280],
    ].forEach(([entry, from, to], i) => {
      expect(free[i].entry).toBeCloseTo(entry, 6);
      expect(free[i].from).toBeCloseTo(from, 6);
      expect(free[i].to).toBeCloseTo(to, 6);
    });
    expect(free).toHaveLength(2);
  });

  test("are refused beyond 500 positions and 1,000 runs", () => {
    // Two legs, 500 rows across both of them: a thousand runs.
    const legs = [
      [0, -0.1],
      [50, -0.1],
      [50, 200],
      [40, 200],
      [40, 0],
      [10, 0],
      [10, 200],
      [0, 200],
    ].map(([x, y]) => ({ x, y }));
    const rows = openRows(turnField(bare(legs), EAST), 0.4002);
    expect(rows.reduce((sum, { free }) => sum + free.length, 0)).toBe(1000);
    expect(openRows(turnField(bare(rectangle), EAST), 0.4)).toHaveLength(500);
    expect(() => openRows(turnField(bare(rectangle), EAST), 0.398)).toThrow(
      "move gives more than 500 positions across the corners",
    );
    const comb: Point[] = [{ x: 0, y: -1 }];
    for (let tooth = 0; tooth < 3; tooth++) {
      comb.push(
        { x: 20 * tooth, y: 100 },
        { x: 20 * tooth + 10, y: 100 },
        { x: 20 * tooth + 11, y: 0 },
        { x: 20 * tooth + 19, y: 0 },
      );
    }
    comb.push({ x: 60, y: -1 });
    expect(() => openRows(turnField(bare(comb), EAST), 101 / 400)).toThrow(
      "corners, obstacles and setback cut the rows into more than 1000 runs",
    );
  });

  test("a setback from a slanted edge is measured square to it", () => {
    // A right-angled triangle; at y = 10 the slanted edge is at x = 90, and 7 off it is 7·√2 before.
    const corners = [
      { x: 0, y: 0 },
      { x: 100, y: 0 },
      { x: 0, y: 100 },
    ];
    const [row] = openRows(turnField(bare(corners, 7), EAST), 1e6, 10);
    expect(row.free[0].from).toBeCloseTo(7, 9);
    expect(row.free[0].to).toBeCloseTo(90 - 7 * Math.SQRT2, 9);
    expect(row.free[0].entry).toBeCloseTo(0, 9);
  });

  test("keep off a corner that points into the field by its circle", () => {
    const spike = [
      { x: 160, y: 200 },
      { x: 150, y: 100 },
      { x: 140, y: 200 },
    ];
    const corners = [...rectangle.slice(0, 3), ...spike, rectangle[3]];
    const [row] = openRows(turnField(bare(corners, 20), EAST), 1e6, 88);
    const half = Math.sqrt(20 ** 2 - 12 ** 2);
    expect(row.free).toHaveLength(2);
    expect(row.free[0].to).toBeCloseTo(150 - half, 9);
    expect(row.free[1].from).toBeCloseTo(150 + half, 9);
  });
});

describe("free pieces of rows and what they water, against a polygon library", () => {
  test("on 100 fields of any shape, with setbacks and obstacles", () => {
    const chance = new Chance(20261125);
    let rows = 0;
    for (let n = 0; n < 100; n++) {
      const middle = { x: 1000 * (chance.next() - 0.5), y: 1000 * (chance.next() - 0.5) };
      const field: Field = {
        corners: randomCorners(chance, middle),
        obstacles: randomObstacles(chance).map((circle) => ({
          ...circle,
          x: circle.x + middle.x,
          y: circle.y + middle.y,
        })),
        setback: chance.happens(0.3) ? 0 : 15 * chance.next(),
      };
      const turned = turnField(field, 360 * chance.next());
      const found = openRows(turned, 20);
      const ground = freeGround(field);
      for (const { across, free } of found) {
        rows++;
        const [from, to] = [turned.place(-1000, across), turned.place(1000, across)];
        // A piece so short that a circle's corners decide about it is no piece.
        const long = ([a, b]: readonly [number, number]) => b - a > 0.1;
        const expected = freePieces(ground, from, to).filter(long);
        const pieces = free.map((piece): [number, number] => [piece.from + 1000, piece.to + 1000]);
        expect([n, across, pieces.filter(long).length]).toEqual([n, across, expected.length]);
        pieces.filter(long).forEach((piece, i) => {
          expect(Math.abs(piece[0] - expected[i][0])).toBeLessThan(1e-3);
          expect(Math.abs(piece[1] - expected[i][1])).toBeLessThan(1e-3);
        });
      }
      for (const run of placeRuns(found, { spacing: 13 })) {
        const corner = (along: number, way: number) => turned.place(along, run.across + way * 10);
        const strip = [
          corner(run.wetFrom, -1),
          corner(run.wetTo, -1),
          corner(run.wetTo, 1),
          corner(run.wetFrom, 1),
        ];
        const { covered, beyond } = coverOf(turned, run, 20);
        expect(Math.abs(covered - commonArea(strip, field.corners))).toBeLessThan(0.01);
        expect(covered + beyond).toBeCloseTo((run.wetTo - run.wetFrom) * 20, 6);
      }
    }
    expect(rows).toBeGreaterThan(1000);
  });
});

describe("however the field is given", () => {
  const field = fc
    .record({
      seed: fc.integer(),
      setback: fc.constantFrom(0, 4.5),
      bearing: fc.double({ min: 0, max: 360, noNaN: true }),
    })
    .map(({ seed, setback, bearing }) => {
      const chance = new Chance(seed);
      return {
        bearing,
        field: { corners: randomCorners(chance), obstacles: randomObstacles(chance, 2), setback },
      };
    });

  const outcome = (given: Field, bearing: number) => {
    const turned = turnField(given, bearing);
    return placeRuns(openRows(turned, 17), { spacing: 12 }).map((run) => {
      const { covered } = coverOf(turned, run, 17);
      return { ...run, length: run.far - run.near, covered };
    });
  };
  const expectAlike = (a: ReturnType<typeof outcome>, b: ReturnType<typeof outcome>) => {
    expect(b.map(({ position, run }) => [position, run])).toEqual(
      a.map(({ position, run }) => [position, run]),
    );
    a.forEach((run, i) => {
      expect(b[i].length).toBeCloseTo(run.length, 6);
      expect(b[i].covered).toBeCloseTo(run.covered, 4);
      expect(b[i].heads).toBe(run.heads);
    });
  };

  test("turned, moved, the other way round or from another corner, the runs are the same", () => {
    fc.assert(
      fc.property(
        field,
        fc.double({ min: 0, max: 360, noNaN: true }),
        fc.integer({ min: 0, max: 14 }),
        ({ field: given, bearing }, turn, from) => {
          const runs = outcome(given, bearing);
          const radians = (turn * Math.PI) / 180;
          // Clockwise, as bearings go, and away from the origin.
          const turned = <P extends Point>(point: P): P => ({
            ...point,
            x: 5000 + point.x * Math.cos(radians) + point.y * Math.sin(radians),
            y: -300 - point.x * Math.sin(radians) + point.y * Math.cos(radians),
          });
          const { corners, obstacles } = given;
          const start = from % corners.length;
          const others = [...corners.slice(start), ...corners.slice(0, start)].reverse();
          expectAlike(
            runs,
            outcome(
              { ...given, corners: others.map(turned), obstacles: obstacles.map(turned) },
              bearing + turn,
            ),
          );
        },
      ),
      { numRuns: 60 },
    );
  });

  test("in a mirror, along the mirrored line, the rows come in the opposite order", () => {
    fc.assert(
      fc.property(field, ({ field: given, bearing }) => {
        const mirrored = <P extends Point>(point: P): P => ({ ...point, x: -point.x });
        const runs = outcome(given, bearing);
        const seen = outcome(
          {
            ...given,
            corners: given.corners.map(mirrored),
            obstacles: given.obstacles.map(mirrored),
          },
          -bearing,
        );
        const rowsOf = (all: typeof runs) => {
          const rows: string[][] = [];
          for (const { position, length, heads, covered } of all) {
            (rows[position - 1] ??= []).push(`${length.toFixed(4)} ${heads} ${covered.toFixed(2)}`);
          }
          return rows;
        };
        expect(rowsOf(seen).reverse()).toEqual(rowsOf(runs));
      }),
      { numRuns: 60 },
    );
  });
});
