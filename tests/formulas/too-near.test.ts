import { tooNear } from "../../src/formulas/too-near";
import { expectClose } from "../support/published";

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
