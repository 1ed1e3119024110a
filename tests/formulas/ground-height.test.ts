import fc from "fast-check";
import { groundOf, requireHeight, type Spot } from "../../src/formulas/ground-height";
import { NoAnswer } from "../../src/ground/domain-error";

const spot = (x: number, y: number, height: number): Spot => ({ x, y, height });
const triangle = [spot(0, 0, 1), spot(10, 0, 2), spot(0, 10, 4)];

test("a flat triangle between three spots", () => {
  const ground = groundOf(triangle);
  expect(ground({ x: 2, y: 3 })).toBeCloseTo(2.1, 12);
  expect(ground({ x: 0, y: 10 })).toBe(4);
  expect(ground({ x: 5, y: 5 })).toBeCloseTo(3, 12);
});

test("outside the triangles there is no height; a hair outside is on the edge", () => {
  const ground = groundOf(triangle);
  expect(ground({ x: 5, y: -1e-9 })).toBeCloseTo(1.5, 8);
  expect(ground({ x: 5, y: -1e-6 })).toBeUndefined();
  expect(ground({ x: 6, y: 6 })).toBeUndefined();
  expect(requireHeight(ground, { x: 0, y: 10 }, "points row 3")).toBe(4);
  expect(() => requireHeight(ground, { x: 6, y: 6 }, "points row 3")).toThrow(NoAnswer);
  expect(() => requireHeight(ground, { x: 6, y: 6 }, "points row 3")).toThrow(
    "spots do not reach points row 3: take heights farther out, beyond it",
  );
});

test("of four spots the shorter diagonal joins: no circle through three holds the fourth", () => {
  // A flat kite: the triangles on either side of the short way from (5, −1) to (5, 1).
  const kite = [spot(0, 0, 0), spot(10, 0, 0), spot(5, 1, 8), spot(5, -1, 8)];
  expect(groundOf(kite)({ x: 5, y: 0 })).toBeCloseTo(8, 12);
});

test("on a plane it is the plane, whatever the spots; and where the triangles are does not hang on the order", () => {
  const place = fc.double({ min: -300, max: 300, noNaN: true });
  fc.assert(
    fc.property(
      fc.array(fc.record({ x: place, y: place }), { minLength: 8, maxLength: 40 }),
      place,
      place,
      (places, x, y) => {
        const plane = (p: { x: number; y: number }) => 3 + 0.02 * p.x - 0.05 * p.y;
        const spots = places.map((p) => ({ ...p, height: plane(p) }));
        const far = [spot(-1000, -1000, 0), spot(1000, -1100, 0), spot(0, 1200, 0)].map((p) => ({
          ...p,
          height: plane(p),
        }));
        let ground;
        try {
          ground = groundOf([...spots, ...far]);
        } catch {
          return;
        }
        expect(ground({ x, y })).toBeCloseTo(plane({ x, y }), 8);
      },
    ),
  );
});

test("spots along a straight fence, but for rounding, do no harm", () => {
  const fence = [0, 0.1, 0.2, 0.30000000000000004, 0.7, 1].map((share, i) =>
    spot(100 * share, 50 * share, i % 2 === 0 ? 0 : 5),
  );
  const ground = groundOf([...fence, spot(0, 80, 1), spot(100, 90, 2)]);
  expect(ground({ x: 15, y: 7.5 })).toBeCloseTo(2.5, 6);
  expect(ground({ x: 50, y: 60 })).toBeLessThanOrEqual(5);
});

/** Every order of some things. */
function* orders<T>(things: readonly T[]): Generator<T[]> {
  if (things.length === 0) yield [];
  for (const thing of things) {
    for (const rest of orders(things.filter((other) => other !== thing))) yield [thing, ...rest];
  }
}

test("a spot that stands off a fence by less than counts gives the fence its height all the same", () => {
  // On a field 100 m wide 1e-7 m is no distance. Next to a corner of the fence, and in its middle.
  for (const along of [1, 50, 99]) {
    const field = [spot(0, 0, 0), spot(along, 5e-8, 12), spot(100, 0, 0), spot(50, 50, 0)];
    for (const spots of orders(field)) {
      const ground = groundOf(spots);
      expect(ground({ x: along / 2, y: 0 })).toBeCloseTo(6, 6);
      expect(ground({ x: (along + 100) / 2, y: 0 })).toBeCloseTo(6, 6);
    }
  }
});

test("beside a thin triangle, a hair outside, the ground is level where its edge is", () => {
  // The spot in the middle stands off by 4e-7 m: a triangle, and half a hair below it its edge.
  const field = [spot(0, 0, 10), spot(50, 4e-7, 20), spot(100, 0, 10), spot(50, 50, 10)];
  for (const spots of orders(field)) {
    expect(groundOf(spots)({ x: 50, y: -5e-8 })).toBeCloseTo(10, 9);
  }
});

test("spots at one place or on one line are refused", () => {
  expect(() => groundOf([...triangle, spot(10, 0, 2)])).toThrow("spots 2 and 4 are the same place");
  expect(() => groundOf([spot(0, 0, 1), spot(5, 5, 2), spot(9, 9, 3)])).toThrow(
    "spots lie on one line: three of them must form a triangle",
  );
});
