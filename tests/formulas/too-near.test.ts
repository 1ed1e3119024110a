import { distanceToEdge } from "../../src/formulas/polygon";
import { tooNear } from "../../src/formulas/too-near";
import { Chance } from "../support/chance";
import { expectClose, expectWithin } from "../support/published";

const at = (along: number, across: number) => ({ along, across });

test("beside an upright edge a row is too near over its whole thickness", () => {
  const found = tooNear(at(7, 0), at(7, 10), 5, 3, 1e-9);
  expectClose(found?.from ?? NaN, 4, 1e-12);
  expectClose(found?.to ?? NaN, 10, 1e-12);
});

test("beyond the edge's ends the circles round them count, up to what counts as no distance", () => {
  for (const across of [12, -2]) {
    const found = tooNear(at(0, 0), at(0, 10), across, 3, 1e-9);
    expectClose(found?.to ?? NaN, Math.sqrt(5), 1e-12);
    expectClose(found?.from ?? NaN, -Math.sqrt(5), 1e-12);
  }
  // Here a tenth counts as none: 2.95 off is not too near, 2.85 is.
  for (const [across, near] of [
    [12.95, false],
    [12.85, true],
    [-2.95, false],
    [-2.85, true],
  ] as const) {
    expect(tooNear(at(0, 0), at(0, 10), across, 3, 0.1) !== undefined).toBe(near);
  }
});

test("aslant, the strip's two sides cut the row", () => {
  // 3–4–5: a strip of 2.5 either side of y = 4x/3 is 2.5 · 5/4 = 3.125 either way along a row.
  const found = tooNear(at(-30, -40), at(30, 40), 4, 2.5, 1e-9);
  expectClose(found?.from ?? NaN, 3 - 3.125, 1e-12);
  expectClose(found?.to ?? NaN, 3 + 3.125, 1e-12);
  const other = tooNear(at(30, 40), at(-30, -40), 4, 2.5, 1e-9);
  expectClose(other?.from ?? NaN, 3 - 3.125, 1e-12);
});

test("along a level edge, from circle to circle", () => {
  const found = tooNear(at(2, 1), at(12, 1), 4, 5, 1e-9);
  expectClose(found?.from ?? NaN, 2 - 4, 1e-12);
  expectClose(found?.to ?? NaN, 12 + 4, 1e-12);
});

test("by measuring: its ends lie at the radius from the edge, its inside nearer, all else farther", () => {
  const chance = new Chance(31);
  const between = (low: number, high: number) => low + (high - low) * chance.next();
  let [met, missed] = [0, 0];
  for (let n = 0; n < 4000; n++) {
    const a = at(between(-50, 50), between(-20, 20));
    // Aslant, level, upright, or one place.
    const kind = n % 4;
    const b = at(
      kind > 1 ? a.along : between(-50, 50),
      kind === 1 || kind === 3 ? a.across : between(-20, 20),
    );
    const [across, radius] = [between(-30, 30), between(1, 12)];
    const distance = (along: number) =>
      kind === 3
        ? Math.hypot(along - a.along, across - a.across)
        : distanceToEdge(
            { x: along, y: across },
            { x: a.along, y: a.across },
            { x: b.along, y: b.across },
          );
    const found = tooNear(a, b, across, radius, 1e-9);
    if (found === undefined) {
      missed++;
      const [least, most] = [Math.min(a.across, b.across), Math.max(a.across, b.across)];
      // The row's own least distance from the edge: none where it passes between the ends.
      const apart = Math.max(0, least - across, across - most);
      if (apart < radius - 1e-8) throw new Error(`${n}: ${apart} off is nearer than ${radius}`);
      continue;
    }
    met++;
    const { from, to } = found;
    expectWithin(distance(from), radius, 1e-6);
    expectWithin(distance(to), radius, 1e-6);
    for (const share of [0.01, 0.3, 0.5, 0.99]) {
      if (distance(from + share * (to - from)) >= radius) throw new Error(`${n}: too long`);
    }
    for (const beyond of [0.01, 1, 20]) {
      if (distance(from - beyond) <= radius || distance(to + beyond) <= radius)
        throw new Error(`${n}: too short`);
    }
  }
  expect(Math.min(met, missed)).toBeGreaterThan(500);
});

test("a row that only touches the circle, or the level edge's side, is not too near", () => {
  expect(tooNear(at(5, 0), at(5, 0), 3, 3, 0)).toBeUndefined();
  expect(tooNear(at(5, 0), at(5, 0), -3, 3, 0)).toBeUndefined();
  expect(tooNear(at(0, 0), at(9, 0), 3, 3, 0)).toBeUndefined();
  // Straight through the middle of a circle, and of an upright edge's end.
  expect(tooNear(at(5, 0), at(5, 0), 0, 3, 0)).toEqual({ from: 2, to: 8 });
  expect(tooNear(at(5, 0), at(5, 9), 9, 3, 0)).toEqual({ from: 2, to: 8 });
});
