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

  test("two roots between neighbouring points are both found", () => {
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
