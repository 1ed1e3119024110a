import fc from "fast-check";
import { curveSlope, curveValue, monotoneCurve, pieceOf } from "../../src/formulas/monotone-curve";
import { expectClose } from "../support/published";

// Values of SciPy 1.17.1's PchipInterpolator.
const cases = [
  {
    shape: "a falling curve",
    x: [0, 20, 45, 60, 90],
    y: [148, 146, 131, 120, 80],
    slopes: [0, -0.1670103092783505, -0.6655462184873949, -0.9166666666666665, -1.7333333333333334],
    values: [
      [5, 147.84407216494844],
      [10, 147.41752577319588],
      [33, 139.7095750913974],
      [50, 127.687675070028],
      [75, 103.0625],
      [89, 81.72053703703705],
    ],
  },
  {
    shape: "a hump and a flat",
    x: [0, 1, 2, 4, 7],
    y: [10, 12, 11, 11, 3],
    slopes: [3.5, 0, 0, 0, -4.266666666666666],
    values: [
      [0.5, 11.4375],
      [1.5, 11.5],
      [3, 11],
      [5, 9.874074074074075],
      [6.5, 5.074074074074074],
    ],
  },
  {
    shape: "a turn, uneven widths",
    x: [0, 1, 3],
    y: [0, 5, 4],
    slopes: [6.833333333333333, 0, -1.5],
    values: [
      [0.5, 3.3541666666666665],
      [2, 4.875],
    ],
  },
  {
    shape: "an end slope that would point the wrong way",
    x: [0, 1, 3],
    y: [0, 1, 100],
    slopes: [0, 1.771371769383698, 81.83333333333331],
    values: [
      [0.5, 0.27857852882703776],
      [2, 30.48450960901259],
    ],
  },
  {
    shape: "an end slope held to three times its piece's",
    x: [0, 1, 2],
    y: [0, 0.1, -5],
    slopes: [0.30000000000000004, 0, -7.7],
    values: [
      [0.5, 0.0875],
      [1.5, -1.4875],
    ],
  },
];

describe.each(cases)("$shape", ({ x, y, slopes, values }) => {
  const curve = monotoneCurve(x, y);

  test("has the slopes of the reference", () => {
    slopes.forEach((slope, i) => expect(curveSlope(curve, x[i])).toBeCloseTo(slope, 12));
  });

  test("goes through its points and the reference's values between", () => {
    x.forEach((at, i) => expectClose(curveValue(curve, at), y[i], 1e-12));
    for (const [at, value] of values) expectClose(curveValue(curve, at), value, 1e-12);
  });
});

test("two points make a straight line", () => {
  const curve = monotoneCurve([10, 30], [100, 60]);
  expect(curveValue(curve, 15)).toBeCloseTo(90, 12);
  expect(curveSlope(curve, 29)).toBeCloseTo(-2, 12);
});

test("never leaves the heights of the two points beside it", () => {
  const points = fc.array(
    fc.tuple(
      fc.double({ min: 0.01, max: 9, noNaN: true }),
      fc.double({ min: -50, max: 50, noNaN: true }),
    ),
    {
      minLength: 2,
      maxLength: 8,
    },
  );
  fc.assert(
    fc.property(points, fc.double({ min: 0, max: 1, noNaN: true }), (steps, share) => {
      let at = 0;
      const x = steps.map(([step]) => (at += step));
      const y = steps.map(([, height]) => height);
      const curve = monotoneCurve(x, y);
      for (let i = 1; i < x.length; i++) {
        const value = curveValue(curve, x[i - 1] + share * (x[i] - x[i - 1]));
        const low = Math.min(y[i - 1], y[i]);
        const high = Math.max(y[i - 1], y[i]);
        const slack = 1e-9 * (1 + Math.abs(low) + Math.abs(high));
        expect(value).toBeGreaterThanOrEqual(low - slack);
        expect(value).toBeLessThanOrEqual(high + slack);
      }
    }),
  );
});

test("a level end piece ends level, whichever way the curve goes on", () => {
  expect(monotoneCurve([0, 1, 2], [5, 5, 6]).slope[0]).toBe(0);
  expect(monotoneCurve([0, 1, 2], [5, 5, 4]).slope[0]).toBeCloseTo(0, 15);
  expect(monotoneCurve([0, 1, 2], [6, 5, 5]).slope[2]).toBe(0);
});

test("a point belongs to the piece on its right, the last one to the last piece", () => {
  const curve = monotoneCurve([0, 1, 3], [0, 1, 2]);
  expect([0, 0.9, 1, 2, 3].map((at) => pieceOf(curve, at))).toEqual([0, 0, 1, 1, 1]);
});
