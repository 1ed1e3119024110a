import type { Argument, CellValue } from "../../../src/screen/host";
import {
  around,
  fitted,
  inSteps,
  stepOf,
  toDrawing,
  toField,
} from "../../../src/trial/plan-drawing/mapping";
import { host } from "../../support/page-functions";

const FIELD = [
  { x: -40, y: 10 },
  { x: 560, y: 30 },
  { x: 620, y: 330 },
  { x: 500, y: 710 },
];

test("the drawing is the field, scaled alike both ways and shifted", () => {
  // By hand: 660 wide, 700 high, so that one unit is 1/700 and 20 are left over at each side.
  const mapping = around(FIELD);
  expect(toDrawing(mapping, { x: -40, y: 10 })).toEqual({ x: 20 / 700, y: 0 });
  expect(toDrawing(mapping, { x: 620, y: 710 }).x).toBeCloseTo(680 / 700, 12);
  expect(toDrawing(mapping, { x: 620, y: 710 }).y).toBeCloseTo(1, 12);
  for (const point of FIELD) {
    const back = toField(mapping, toDrawing(mapping, point));
    expect(back.x).toBeCloseTo(point.x, 9);
    expect(back.y).toBeCloseTo(point.y, 9);
  }
});

test("the mapping is found again from what PLAN.DRAWING drew, either way round and padded", () => {
  // The drawing's own square is wider than the field: a hydrant lies outside.
  const heads = [
    [1, 1, 1, 20, 20, 50],
    [1, 1, 2, 60, 60, 50],
  ];
  for (const corners of [FIELD, [...FIELD].reverse()]) {
    const given = corners.map(({ x, y }) => [x, y]);
    const spilled = call("PLAN_DRAWING", heads, given, 0, [[-140, 50]], null, 60, 1);
    const edge = spilled.slice(1).map(([x, y]) => ({ x: Number(x), y: Number(y) }));
    const mapping = fitted(corners, edge);
    // By hand: from x -140 to 620 is the longer side, 760.
    expect(mapping?.scale).toBeCloseTo(1 / 760, 9);
    expect(mapping?.left).toBeCloseTo(-140, 6);
    expect(mapping?.low).toBeCloseTo(10 - (760 - 700) / 2, 6);
  }
});

test("an edge of other corners is not theirs, and nothing is no edge", () => {
  const edge = FIELD.map((point) => toDrawing(around(FIELD), point));
  expect(fitted(FIELD, edge)).toBeDefined();
  const moved = [{ x: 100, y: 100 }, ...FIELD.slice(1)];
  expect(fitted(moved, edge)).toBeUndefined();
  expect(fitted(FIELD, [])).toBeUndefined();
  expect(fitted(FIELD, Array(9).fill({ x: 0, y: 0 }))).toBeUndefined();
});

test("numbers are no finer than the hand that points", () => {
  expect([1.3, 0.39, 1, 12, 0.009].map(stepOf)).toEqual([1, 0.1, 1, 10, 0.001]);
  expect(inSteps({ x: 123.4567, y: -0.04 }, 0.1)).toEqual({ x: 123.5, y: 0 });
  expect(inSteps({ x: 623.51, y: 1.7 }, 10)).toEqual({ x: 620, y: 0 });
  expect(inSteps({ x: 0.30000000000000004, y: 2.675 }, 0.01)).toEqual({ x: 0.3, y: 2.68 });
});

function call(id: string, ...given: Argument[]): CellValue[][] {
  const answer = host.call(id, ...given);
  if (answer.error !== undefined) throw new Error(answer.error.message);
  return answer.value as CellValue[][];
}
