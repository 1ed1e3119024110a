import { NoAnswer } from "../../src/ground/domain-error";
import { coverOf } from "../../src/formulas/covered-area";
import { layField } from "../../src/formulas/field-layout";
import type { FieldRow } from "../../src/formulas/field-rows";
import { placeRuns } from "../../src/formulas/field-runs";
import { turnField } from "../../src/formulas/turned-field";

const row = (...free: [entry: number, from: number, to: number][]): FieldRow => ({
  across: 0,
  free: free.map(([entry, from, to]) => ({ entry, from, to })),
});

describe("heads on the free stretches of rows", () => {
  test("head 1 stands half a spacing in, the others by the spacing", () => {
    const [run] = placeRuns([row([0, 0, 100])], { spacing: 20 });
    expect(run).toMatchObject({ firstHead: 10, heads: 5, wetFrom: 0, wetTo: 100 });
  });

  test("head 1 counts from where the row enters, and never stands nearer than the setback", () => {
    expect(placeRuns([row([0, 4, 96])], { spacing: 20 })[0]).toMatchObject({
      firstHead: 10,
      heads: 5,
    });
    expect(placeRuns([row([0, 14, 96])], { spacing: 20 })[0]).toMatchObject({
      firstHead: 14,
      heads: 5,
    });
    expect(placeRuns([row([0, 4, 96])], { spacing: 20, first: 30 })[0]).toMatchObject({
      firstHead: 30,
      heads: 4,
    });
  });

  test("a last head exactly at the far end is one, whatever binary numbers make of it", () => {
    expect(placeRuns([row([0, 0, 0.7])], { spacing: 0.1, first: 0.1 })[0].heads).toBe(7);
    expect(placeRuns([row([0, 0, 0.69])], { spacing: 0.1, first: 0.1 })[0].heads).toBe(6);
  });

  test("at most as many heads as the line has", () => {
    expect(placeRuns([row([0, 0, 100])], { spacing: 20, most: 3 })[0]).toMatchObject({
      heads: 3,
      wetTo: 60,
    });
    expect(placeRuns([row([0, 0, 1000])], { spacing: 1 })[0].heads).toBe(500);
  });

  test("a stretch without a head is no run, a row without a run no position", () => {
    const runs = placeRuns([row([0, 0, 9]), row([0, 0, 9], [50, 50, 100]), row([0, 0, 30])], {
      spacing: 20,
    });
    expect(runs.map(({ position, run, heads }) => [position, run, heads])).toEqual([
      [1, 1, 3],
      [2, 1, 2],
    ]);
  });

  test("two strips of one row that overlap share what both reach", () => {
    // Heads at 10 and 30, strip to 40; the next stretch is kept in to 36: strip from 26.
    const [first, second] = placeRuns([row([0, 0, 32], [34, 36, 60])], { spacing: 20, first: 1 });
    expect(first.wetTo).toBe(second.wetFrom);
    expect(first).toMatchObject({ firstHead: 1, heads: 2, wetFrom: -9, wetTo: 28.5 });
    expect(second).toMatchObject({ firstHead: 36, heads: 2, wetTo: 66 });
  });

  test("are refused beyond 5,000", () => {
    const rows = Array.from({ length: 10 }, () => row([0, 0, 500]));
    expect(placeRuns(rows, { spacing: 1 })).toHaveLength(10);
    expect(() => placeRuns([...rows, row([0, 0, 1])], { spacing: 1 })).toThrow(
      "spacing and move give more than 5000 heads",
    );
  });

  test("none at all is no answer", () => {
    const corners = [
      { x: 0, y: 0 },
      { x: 10, y: 0 },
      { x: 10, y: 10 },
    ];
    const field = { corners, obstacles: [], setback: 5 };
    expect(() => layField(field, { bearing: 90, spacing: 4, move: 4 })).toThrow(NoAnswer);
  });
});

test("a strip covers what of it lies inside the corners, in a field that turns inwards too", () => {
  // A U, open to the north, arms of 20; the strip crosses both arms and the gap.
  const corners = [
    { x: 0, y: 0 },
    { x: 60, y: 0 },
    { x: 60, y: 50 },
    { x: 40, y: 50 },
    { x: 40, y: 20 },
    { x: 20, y: 20 },
    { x: 20, y: 50 },
    { x: 0, y: 50 },
  ];
  const turned = turnField({ corners, obstacles: [], setback: 0 }, 90);
  const run = {
    position: 1,
    run: 1,
    across: 30,
    near: 0,
    far: 20,
    firstHead: 5,
    heads: 1,
    wetFrom: -5,
    wetTo: 65,
  };
  expect(coverOf(turned, run, 10)).toEqual({ covered: 400, beyond: 300 });
  expect(coverOf(turned, { ...run, across: 200 }, 10)).toEqual({ covered: 0, beyond: 700 });
});
