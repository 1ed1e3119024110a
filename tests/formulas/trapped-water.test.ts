import fc from "fast-check";
import { type OpenEnds, trappedWater } from "../../src/formulas/trapped-water";

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
/** Whole millimeters: no survey knows more, and heights within rounding of each other have no side. */
const ground = fc.integer({ min: -9000, max: 9000 }).map((millimeters) => millimeters / 1000);
const points = fc
  .array(fc.record({ step: number(0.5, 80), height: ground, bore: number(0.01, 0.1) }), {
    minLength: 2,
    maxLength: 12,
  })
  .map((points) => {
    let at = 0;
    return {
      distance: points.map(({ step }) => (at += step)),
      elevation: points.map(({ height }) => height),
      bore: points.slice(1).map((point) => point.bore),
    };
  });
const openEnds = fc.constantFrom<OpenEnds[]>("both", "start", "end");

const held = (distance: number[], bore: number[]) =>
  bore.reduce(
    (sum, width, i) => sum + (Math.PI / 4) * width ** 2 * (distance[i + 1] - distance[i]),
    0,
  );

describe("water left in the dips", () => {
  test("is never more than the line holds, never below nothing", () => {
    fc.assert(
      fc.property(points, openEnds, ({ distance, elevation, bore }, ends) => {
        const left = trappedWater(distance, elevation, bore, ends);
        expect(left).toBeGreaterThanOrEqual(0);
        expect(left).toBeLessThanOrEqual(held(distance, bore) * (1 + 1e-12));
      }),
    );
  });

  test("is none on ground that never rises towards the open low end", () => {
    fc.assert(
      fc.property(points, ({ distance, elevation, bore }) => {
        const falling = [...elevation].sort((a, b) => b - a);
        expect(trappedWater(distance, falling, bore, "end")).toBe(0);
        expect(trappedWater(distance, falling, bore, "both")).toBe(0);
      }),
    );
  });

  test("is the same seen from the other end", () => {
    const mirrored: Record<OpenEnds, OpenEnds> = { both: "both", start: "end", end: "start" };
    fc.assert(
      fc.property(points, openEnds, ({ distance, elevation, bore }, ends) => {
        const length = distance[distance.length - 1];
        const here = trappedWater(distance, elevation, bore, ends);
        const there = trappedWater(
          [...distance].reverse().map((at) => length - at),
          [...elevation].reverse(),
          [...bore].reverse(),
          mirrored[ends],
        );
        expect(Math.abs(here - there)).toBeLessThanOrEqual(1e-9 * held(distance, bore));
      }),
    );
  });

  test("a second open end never leaves more, and lifting the whole field changes nothing", () => {
    fc.assert(
      fc.property(points, number(-50, 50), ({ distance, elevation, bore }, lift) => {
        const both = trappedWater(distance, elevation, bore, "both");
        const slack = 1e-9 * held(distance, bore);
        for (const ends of ["start", "end"] as const) {
          expect(both).toBeLessThanOrEqual(trappedWater(distance, elevation, bore, ends) + slack);
        }
        // Heights that lie within rounding of each other may change sides when lifted.
        const coarse = elevation.map((height) => Math.round(height * 8) / 8);
        const raised = coarse.map((height) => height + Math.round(lift));
        expect(trappedWater(distance, raised, bore, "both")).toBe(
          trappedWater(distance, coarse, bore, "both"),
        );
      }),
    );
  });

  test("agrees with the definition, point by point along the line", () => {
    const samples = 100;
    fc.assert(
      fc.property(points, openEnds, ({ distance, elevation, bore }, ends) => {
        let sampled = 0;
        let finest = 0;
        bore.forEach((width, run) => {
          const length = distance[run + 1] - distance[run];
          const piece = ((Math.PI / 4) * width ** 2 * length) / samples;
          for (let i = 0; i < samples; i++) {
            const share = (i + 0.5) / samples;
            const height = elevation[run] + share * (elevation[run + 1] - elevation[run]);
            const before = Math.max(...elevation.slice(0, run + 1), height);
            const after = Math.max(...elevation.slice(run + 1), height);
            const level =
              ends === "both" ? Math.min(before, after) : ends === "start" ? before : after;
            if (height < level) sampled += piece;
          }
          finest += piece;
        });
        // Each run is full on one stretch that starts or stops within one sample.
        const exact = trappedWater(distance, elevation, bore, ends);
        expect(Math.abs(exact - sampled)).toBeLessThanOrEqual(finest * (1 + 1e-9));
      }),
    );
  });
});
