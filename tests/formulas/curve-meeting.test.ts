import { curveMeetings } from "../../src/formulas/curve-meeting";
import { monotoneCurve } from "../../src/formulas/monotone-curve";

const level = (height: number, from = 0, to = 10) => monotoneCurve([from, to], [height, height]);

describe("where two curves meet", () => {
  test("one crossing, and who is above on either side", () => {
    const found = curveMeetings(monotoneCurve([0, 10], [10, 0]), monotoneCurve([0, 10], [0, 10]));
    expect(found).toMatchObject({ from: 0, to: 10, together: false, above: 1 });
    expect(found.meetings).toHaveLength(1);
    expect(found.meetings[0]).toMatchObject({ before: 1, after: -1 });
    expect(found.meetings[0].x).toBeCloseTo(5, 12);
    expect(found.meetings[0].y).toBeCloseTo(5, 12);
  });

  test("a hump crosses a level twice, within one piece of the other curve", () => {
    const hump = monotoneCurve([0, 2, 5, 8, 10], [0, 8, 10, 8, 0]);
    const found = curveMeetings(hump, level(8));
    expect(found.meetings.map(({ x }) => Math.round(x * 1e9) / 1e9)).toEqual([2, 8]);
    expect(found.meetings.map(({ before, after }) => [before, after])).toEqual([
      [-1, 1],
      [1, -1],
    ]);
  });

  test("two roots between neighboring points are both found", () => {
    // Two cubics over the same three points' flows: their gap turns inside a piece.
    const bowed = monotoneCurve([0, 1, 2], [0, 9, 10]);
    const straight = monotoneCurve([0, 2], [0.5, 10.2]);
    const found = curveMeetings(bowed, straight);
    expect(found.meetings).toHaveLength(2);
    expect(found.meetings[0].x).toBeLessThan(1);
    expect(found.meetings[1].x).toBeGreaterThan(1);
  });

  test("a touch counts as a meeting, on the same side before and after", () => {
    const hump = monotoneCurve([0, 5, 10], [0, 10, 0]);
    const found = curveMeetings(hump, level(10));
    expect(found.meetings).toEqual([{ x: 5, y: 10, before: -1, after: -1 }]);
    expect(found.together).toBe(false);
  });

  test("a meeting at an end of the range has one side only", () => {
    const found = curveMeetings(monotoneCurve([0, 10], [10, 0]), monotoneCurve([0, 10], [10, 20]));
    expect(found.meetings).toEqual([{ x: 0, y: 10, before: 0, after: -1 }]);
    const atTheEnd = curveMeetings(monotoneCurve([0, 10], [10, 5]), monotoneCurve([0, 10], [0, 5]));
    expect(atTheEnd.meetings).toEqual([{ x: 10, y: 5, before: 1, after: 0 }]);
  });

  test("curves that run together are not one crossing", () => {
    const bent = monotoneCurve([0, 5, 10], [10, 10, 0]);
    expect(curveMeetings(bent, level(10)).together).toBe(true);
  });

  test("only the range that both cover counts", () => {
    const found = curveMeetings(monotoneCurve([0, 6], [10, 4]), monotoneCurve([4, 10], [5, 11]));
    expect(found).toMatchObject({ from: 4, to: 6 });
    expect(found.meetings[0].x).toBeCloseTo(4.5, 12);
    expect(curveMeetings(level(10, 0, 3), level(8, 4, 9))).toMatchObject({
      from: 4,
      to: 3,
      meetings: [],
    });
  });

  test("no meeting says which is above", () => {
    expect(curveMeetings(level(10), level(8))).toMatchObject({ meetings: [], above: 1 });
    expect(curveMeetings(level(8), level(10))).toMatchObject({ meetings: [], above: -1 });
  });

  test("the size of the numbers does not matter", () => {
    for (const scale of [1e-9, 1, 1e9]) {
      const found = curveMeetings(
        monotoneCurve([0, 10 * scale, 20 * scale], [30 * scale, 25 * scale, 0]),
        monotoneCurve([0, 20 * scale], [10 * scale, 40 * scale]),
      );
      expect(found.meetings).toHaveLength(1);
      expect(found.meetings[0].x / scale).toBeCloseTo(10, 9);
    }
  });
});

/** One piece that is exactly a polynomial of the third degree or less, by its ends and slopes. */
const exactly = (
  from: number,
  to: number,
  height: (x: number) => number,
  slope: (x: number) => number,
) => ({ x: [from, to], y: [height(from), height(to)], slope: [slope(from), slope(to)] });

/** Where they meet, as [x, before, after]; x to nine digits, as bisection ends on the last binary one. */
const meetingsOf = (...[first, second]: Parameters<typeof curveMeetings>) =>
  curveMeetings(first, second).meetings.map(({ x, before, after }) => [
    Number(x.toFixed(9)),
    before,
    after,
  ]);

// (x − 1)(x − 2)(x − 4) = x³ − 7x² + 14x − 8, turning at 1.45 and 3.22.
const product = (x: number) => (x - 1) * (x - 2) * (x - 4);
const productSlope = (x: number) => 3 * x * x - 14 * x + 14;

describe("polynomials with known roots as their gap", () => {
  test("three roots inside one piece of both curves", () => {
    const roots = [
      [1, -1, 1],
      [2, 1, -1],
      [4, -1, 1],
    ];
    const line = exactly(
      0,
      5,
      (x) => 2 * x + 1,
      () => 2,
    );
    const bent = exactly(
      0,
      5,
      (x) => product(x) + 2 * x + 1,
      (x) => productSlope(x) + 2,
    );
    expect(meetingsOf(bent, line)).toEqual(roots);
    expect(meetingsOf(line, bent)).toEqual(
      roots.map(([x, ...sides]) => [x, ...sides.map((s) => -s)]),
    );
    // Both bend: halves of the third power and of the second on either side.
    const half = exactly(
      0,
      5,
      (x) => x ** 3 / 2 + 7 * x * x,
      (x) => (3 * x * x) / 2 + 14 * x,
    );
    const other = exactly(
      0,
      5,
      (x) => -(x ** 3) / 2 + 14 * x * x - 14 * x + 8,
      (x) => (-3 * x * x) / 2 + 28 * x - 14,
    );
    expect(meetingsOf(half, other)).toEqual(roots);
  });

  test("turned round from left to right, so that the second derivative begins above 0", () => {
    const level0 = level(0, -5, 0);
    const turned = exactly(
      -5,
      0,
      (x) => product(-x),
      (x) => -productSlope(-x),
    );
    expect(meetingsOf(turned, level0)).toEqual([
      [-4, 1, -1],
      [-2, -1, 1],
      [-1, 1, -1],
    ]);
  });

  test("two roots of a parabola, opening upwards and downwards, near zero and far from it", () => {
    for (const sign of [1, -1]) {
      for (const start of [0, 1000]) {
        const parabola = exactly(
          start,
          start + 3,
          (x) => sign * (x - start - 1) * (x - start - 2),
          (x) => sign * (2 * (x - start) - 3),
        );
        expect(meetingsOf(parabola, level(0, start, start + 3))).toEqual([
          [start + 1, sign, -sign],
          [start + 2, -sign, sign],
        ]);
      }
    }
  });

  test("roots beyond a point of the other curve, inside a piece of its own", () => {
    const bent = exactly(0, 5, product, productSlope);
    const floor = { x: [0, 0.5, 5], y: [0, 0, 0], slope: [0, 0, 0] };
    const roots = [
      [1, -1, 1],
      [2, 1, -1],
      [4, -1, 1],
    ];
    expect(meetingsOf(bent, floor)).toEqual(roots);
    expect(meetingsOf(floor, bent)).toEqual(roots.map(([x, a, b]) => [x, -a, -b]));
  });

  test("a piece's turning points beyond its ends are none of its own", () => {
    const late = exactly(2.5, 5, product, productSlope);
    expect(meetingsOf(late, level(0, 2.5, 5))).toEqual([[4, -1, 1]]);
    const early = exactly(0, 1.2, product, productSlope);
    expect(meetingsOf(early, level(0, 0, 1.2))).toEqual([[1, -1, 1]]);
  });

  test("a gap without turning points", () => {
    // x³ + x − 10 is 0 at 2 and rises throughout.
    const rising = exactly(
      0,
      3,
      (x) => x ** 3 + x - 10,
      (x) => 3 * x * x + 1,
    );
    expect(meetingsOf(rising, level(0, 0, 3))).toEqual([[2, -1, 1]]);
  });
});

describe("the range that both curves cover", () => {
  test("none at all: no side is above", () => {
    expect(curveMeetings(level(10, 0, 3), level(8, 4, 9))).toEqual({
      from: 4,
      to: 3,
      meetings: [],
      together: false,
      above: 0,
    });
  });

  test("a single place", () => {
    expect(curveMeetings(level(10, 0, 5), level(10, 5, 9))).toEqual({
      from: 5,
      to: 5,
      meetings: [{ x: 5, y: 10, before: 0, after: 0 }],
      together: false,
      above: 0,
    });
  });

  test("lines that would meet only where one of them has ended", () => {
    // y = 4 − x to 6 and y = x from 4 would meet at 2.
    const falling = monotoneCurve([0, 1, 6], [4, 3, -2]);
    expect(meetingsOf(falling, monotoneCurve([4, 10], [4, 10]))).toEqual([]);
    // y = x to 6 and y = 16 − x from 4 would meet at 8.
    const rising = monotoneCurve([0, 6], [0, 6]);
    expect(meetingsOf(rising, monotoneCurve([4, 9, 10], [12, 7, 6]))).toEqual([]);
  });

  test("points of the two curves are taken in order", () => {
    const line = monotoneCurve([0, 8, 10], [0, 8, 10]);
    const five = monotoneCurve([0, 3, 10], [5, 5, 5]);
    expect(meetingsOf(line, five)).toEqual([[5, -1, 1]]);
  });
});

test("a gap of less than a million-millionth of the tallest point is rounding", () => {
  const line = monotoneCurve([0, 10], [0, 10]);
  const beside = (gap: number) => monotoneCurve([0, 10], [5, 10 + gap]);
  expect(meetingsOf(line, beside(4e-12))).toEqual([[10, -1, 0]]);
  expect(meetingsOf(line, beside(4e-11))).toEqual([]);
});
