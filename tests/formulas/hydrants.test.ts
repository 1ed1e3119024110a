import { fewestHydrants, type Hydrant, type NearEnd } from "../../src/formulas/hydrants";
import { Chance } from "../support/chance";

const ends = (places: readonly (readonly [number, number])[], run = 1): NearEnd[] =>
  places.map(([x, y], i) => ({ position: i + 1, run, x, y }));

/** A row of near ends along an edge that bends, or folds back on itself where it turns more. */
function randomRow(chance: Chance, count: number, turn = 0.8): [number, number][] {
  let [x, y, heading] = [0, 0, 0];
  return Array.from({ length: count }, () => {
    heading += turn * (chance.next() - 0.5);
    x += 50 * Math.sin(heading);
    y += 50 * Math.cos(heading);
    return [x, y];
  });
}

describe("fewest hydrants", () => {
  test("reach every near end that they serve, and stand where the farthest is nearest", () => {
    const chance = new Chance(11);
    for (let n = 0; n < 90; n++) {
      const row = ends(randomRow(chance, 2 + chance.whole(20), n % 2 === 0 ? 0.8 : 6));
      const reach = 20 + 200 * chance.next();
      const hydrants = fewestHydrants(row, reach);
      let next = 1;
      for (const hydrant of hydrants) {
        expect(hydrant.firstPosition).toBe(next);
        next = hydrant.lastPosition + 1;
        const group = row.slice(hydrant.firstPosition - 1, hydrant.lastPosition);
        const farthest = (x: number, y: number) =>
          Math.max(...group.map((end) => Math.hypot(end.x - x, end.y - y)));
        expect(hydrant.farthest).toBeCloseTo(farthest(hydrant.x, hydrant.y), 9);
        expect(hydrant.farthest).toBeLessThanOrEqual(reach * (1 + 1e-8));
        // No place on the pieces between the near ends is better.
        let best = Infinity;
        for (let piece = 0; piece + 1 < row.length; piece++) {
          for (let share = 0; share <= 1; share += 0.04) {
            const x = row[piece].x + share * (row[piece + 1].x - row[piece].x);
            const y = row[piece].y + share * (row[piece + 1].y - row[piece].y);
            best = Math.min(best, farthest(x, y));
          }
        }
        expect(best).toBeGreaterThan(hydrant.farthest - 1e-6);
      }
      expect(next).toBe(row.length + 1);
    }
  });

  test("are as few as trying every way to split the row gives", () => {
    const chance = new Chance(12);
    const STEPS = 200;
    for (let n = 0; n < 40; n++) {
      const places = randomRow(chance, 2 + chance.whole(8));
      const row = ends(places);
      const reach = 40 + 120 * chance.next();
      const candidates = places.slice(1).flatMap(([x, y], i) =>
        Array.from({ length: STEPS + 1 }, (_, step) => {
          const share = step / STEPS;
          return [
            places[i][0] + share * (x - places[i][0]),
            places[i][1] + share * (y - places[i][1]),
          ];
        }),
      );
      const serves = (from: number, to: number, slack: number) =>
        candidates.some(([x, y]) =>
          places
            .slice(from, to)
            .every((end) => Math.hypot(end[0] - x, end[1] - y) <= reach + slack),
        );
      // fewest[k]: hydrants for the first k near ends; a slack of half a step's length bounds from below.
      const fewest = (slack: number) => {
        const least = [0];
        for (let to = 1; to <= row.length; to++) {
          least[to] = Infinity;
          for (let from = 0; from < to; from++) {
            if (serves(from, to, slack)) least[to] = Math.min(least[to], least[from] + 1);
          }
        }
        return least[row.length];
      };
      const found = fewestHydrants(row, reach).length;
      expect(found).toBeLessThanOrEqual(fewest(0));
      expect(found).toBeGreaterThanOrEqual(fewest(50 / STEPS));
    }
  });

  test("one near end has its own; second runs have hydrants of their own", () => {
    expect(fewestHydrants(ends([[3, 4]]), 1)).toEqual([
      { x: 3, y: 4, farthest: 0, firstPosition: 1, lastPosition: 1, run: 1 },
    ]);
    const both = [
      ...ends([
        [0, 0],
        [0, 10],
      ]),
      ...ends(
        [
          [90, 0],
          [90, 10],
        ],
        2,
      ),
    ];
    expect(
      fewestHydrants(both, 6).map(({ x, y, run }) => [x, Math.round(y * 1e6) / 1e6, run]),
    ).toEqual([
      [0, 5, 1],
      [90, 5, 2],
    ]);
  });

  test("by hand: where the farthest is nearest, and what is just in reach", () => {
    // Seven near ends 50 apart: five from 0 to 200 by one at 100, two from 250 to 300 by one at 275.
    const row = ends(Array.from({ length: 7 }, (_, i) => [0, 50 * i] as const));
    const two = fewestHydrants(row, 100);
    expect(two).toMatchObject([
      { firstPosition: 1, lastPosition: 5, run: 1, x: 0 },
      { firstPosition: 6, lastPosition: 7, run: 1, x: 0 },
    ]);
    expect(two.map(({ y }) => Math.round(y * 1e6) / 1e6)).toEqual([100, 275]);
    expect(two[0].farthest).toBeCloseTo(100, 9);
    expect(two[1].farthest).toBeCloseTo(25, 9);
    // A little less reach serves four of them; rounding is not a little.
    expect(fewestHydrants(row, 99.999)[0].lastPosition).toBe(4);
    expect(fewestHydrants(row, 100 * (1 - 1e-10))[0].lastPosition).toBe(5);
    expect(fewestHydrants(row, 0)).toHaveLength(7);
    // Legs of 80 and 60 at a right angle: on the longer one, s from the corner, both ends are as far
    // where 80 - s = sqrt(s^2 + 60^2), so s = 17.5, and they are 62.5 away.
    const corner = ends([
      [80, 0],
      [0, 0],
      [0, 60],
    ]);
    const [one, ...rest] = fewestHydrants(corner, 63);
    expect(rest).toEqual([]);
    expect(one.x).toBeCloseTo(17.5, 6);
    expect(one.y).toBeCloseTo(0, 9);
    expect(one.farthest).toBeCloseTo(62.5, 6);
    expect(fewestHydrants(corner, 62.4)).toHaveLength(2);
    // The same corner turned about and away from the origin.
    const [turned] = fewestHydrants(
      corner.map((end) => ({ ...end, x: 500 - end.y, y: -200 - end.x })),
      63,
    );
    expect(turned.x).toBeCloseTo(500, 6);
    expect(turned.y).toBeCloseTo(-217.5, 6);
  });

  test("near ends at one place are out of reach of those at another", () => {
    const row = ends([
      [0, 0],
      [0, 0],
      [0, 100],
      [0, 100],
    ]);
    const place = ({ y, firstPosition, lastPosition }: Hydrant) => [y, firstPosition, lastPosition];
    expect(fewestHydrants(row, 49).map(place)).toEqual([
      [0, 1, 2],
      [100, 3, 4],
    ]);
    expect(fewestHydrants(row, 50).map(place)).toEqual([[50, 1, 4]]);
  });

  test("round three sides the side from which the farthest is nearest", () => {
    // From the left side the farthest of the right one's ends is √(60² + 40²) away at its best, from
    // the right one √(60² + 50²), from the top more than √(30² + 100²).
    const sides = ends([
      [60, 20],
      [60, 100],
      [0, 100],
      [0, 0],
    ]);
    for (const row of [sides, ends([...sides].reverse().map(({ x, y }) => [x, y] as const))]) {
      const [hydrant, ...others] = fewestHydrants(row, 1000);
      expect(others).toEqual([]);
      expect(hydrant.x).toBeCloseTo(0, 9);
      expect(hydrant.y).toBeCloseTo(60, 6);
      expect(hydrant.farthest).toBeCloseTo(Math.sqrt(5200), 9);
    }
  });

  test("near ends at one place share one", () => {
    const row = ends([
      [5, 5],
      [5, 5],
      [5, 5],
    ]);
    expect(fewestHydrants(row, 1)).toMatchObject([
      { firstPosition: 1, lastPosition: 3, farthest: 0 },
    ]);
  });
});

test("hydrants of first runs come first, however the near ends are listed", () => {
  const ends = [
    { x: 0, y: 0, position: 1, run: 2 },
    { x: 100, y: 0, position: 2, run: 1 },
    { x: 300, y: 0, position: 3, run: 3 },
  ];
  expect(fewestHydrants(ends, 10).map(({ x }) => x)).toEqual([100, 0, 300]);
});
