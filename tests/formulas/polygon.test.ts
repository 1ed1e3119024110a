import {
  distanceToEdge,
  noDistance,
  polygonArea,
  requireField,
  signedArea,
} from "../../src/formulas/polygon";
import { Chance } from "../support/chance";
import { randomCorners } from "../support/random-field";

const points = (...pairs: [number, number][]) => pairs.map(([x, y]) => ({ x, y }));
const fault = (...pairs: [number, number][]) => {
  try {
    requireField(points(...pairs));
  } catch (error) {
    return (error as Error).message;
  }
  return "none";
};

test("area by the surveyor's formula, signed by the way round", () => {
  const triangle = points([0, 0], [40, 0], [40, 30]);
  expect(signedArea(triangle)).toBe(600);
  expect(signedArea([...triangle].reverse())).toBe(-600);
  expect(polygonArea([...triangle].reverse())).toBe(600);
  // On a survey grid, a hundred thousand times farther out than the field is wide.
  expect(polygonArea(triangle.map(({ x, y }) => ({ x: x + 4e6, y: y + 5e6 })))).toBe(600);
});

test("what counts as no distance goes by the greater side, wherever the field lies", () => {
  const wide = points([100, 50], [140, 53], [120, 60]);
  const tall = wide.map(({ x, y }) => ({ x: y, y: x }));
  for (const corners of [wide, tall, [...wide].reverse()]) {
    expect(noDistance(corners)).toBeCloseTo(40e-9, 20);
  }
});

test("distance to an edge: beside it, and to its ends beyond them", () => {
  const [a, b] = points([10, 20], [40, 60]);
  // 3–4–5 triangles: the edge is 50 long.
  expect(distanceToEdge({ x: 25 - 8, y: 40 + 6 }, a, b)).toBeCloseTo(10, 12);
  expect(distanceToEdge({ x: 25 + 8, y: 40 - 6 }, a, b)).toBeCloseTo(10, 12);
  expect(distanceToEdge({ x: 10 - 5, y: 20 - 12 }, a, b)).toBeCloseTo(13, 12);
  expect(distanceToEdge({ x: 40 + 5, y: 60 + 12 }, a, b)).toBeCloseTo(13, 12);
});

describe("corners that bound no field are named", () => {
  test("neighbors at the same place, the last and the first too", () => {
    expect(fault([0, 0], [9, 0], [9, 0], [0, 9])).toMatch(/^corners 2 and 3 are the same place/);
    expect(fault([0, 0], [9, 0], [0, 9], [0, 0])).toMatch(/^corners 4 and 1 are the same place/);
    expect(fault([0, 0], [9, 0], [9 + 8e-9, 0], [0, 9])).toMatch(/^corners 2 and 3/);
    expect(fault([0, 0], [9, 0], [9 + 2e-8, 0], [0, 9])).toBe("none");
  });

  test("all on one line", () => {
    expect(fault([0, 0], [3, 3], [7, 7])).toBe("corners lie on one line: the area is 0");
    expect(fault([0, 0], [7, 7], [3, 3], [5, 5])).toMatch(/^corners lie on one line/);
  });

  test("edges that cross", () => {
    expect(fault([0, 0], [9, 9], [9, 0], [0, 9])).toBe("corners: edge 1–2 crosses edge 3–4");
    expect(fault([0, 0], [9, 0], [9, 9], [3, 9], [3, -1])).toBe(
      "corners: edge 1–2 crosses edge 4–5",
    );
  });

  test("edges that touch: a corner on an edge, a corner on a corner", () => {
    expect(fault([0, 0], [9, 0], [9, 9], [4, 0], [0, 9])).toBe(
      "corners: edge 1–2 touches edge 3–4",
    );
    expect(fault([0, 0], [9, 0], [9, 9], [4, 1e-9], [0, 9])).toMatch(/touches/);
    expect(fault([0, 0], [9, 0], [9, 9], [4, 1e-7], [0, 9])).toBe("none");
    expect(fault([0, 0], [4, 4], [8, 0], [8, 8], [4, 4], [0, 8])).toMatch(/touches/);
  });

  test("whichever corner touches whichever edge, the first pair is named", () => {
    // One corner, at (5, 0), on the edge from (10, 0) to (0, 0): as corner 1, 2, 4 and 5 of the list.
    expect(fault([5, 0], [8, 5], [10, 0], [0, 0], [2, 5])).toBe(
      "corners: edge 1–2 touches edge 3–4",
    );
    expect(fault([2, 5], [5, 0], [8, 5], [10, 0], [0, 0])).toBe(
      "corners: edge 1–2 touches edge 4–5",
    );
    expect(fault([10, 0], [0, 0], [2, 5], [5, 0], [8, 5])).toBe(
      "corners: edge 1–2 touches edge 3–4",
    );
    expect(fault([0, 0], [2, 5], [5, 0], [8, 5], [10, 0])).toBe(
      "corners: edge 2–3 touches edge 5–1",
    );
  });

  test("the last edge crosses one in the middle, or lies on the first", () => {
    expect(fault([0, 0], [4, -4], [4, 4], [12, 4], [10, 0])).toBe(
      "corners: edge 2–3 crosses edge 5–1",
    );
    expect(fault([0, 0], [5, 0], [5, 5], [10, 0])).toBe("corners: edge 1–2 lies on edge 4–1");
    expect(fault([5, 0], [10, 0], [0, 0], [3, 5])).toBe("corners: edge 1–2 lies on edge 2–3");
  });

  test("an edge that runs back over the one before, at the end of the list too", () => {
    expect(fault([0, 0], [9, 0], [4, 0], [0, 9])).toMatch(/edge 1–2 lies on edge 2–3$/);
    expect(fault([0, 0], [9, 0], [9, 9], [-5, 0])).toBe("none");
    expect(fault([0, 0], [9, 0], [9, 9], [5, 0])).toMatch(/edge 1–2 (lies on|touches)/);
  });

  test("corners on a straight edge are no fault", () => {
    expect(fault([0, 0], [4, 0], [9, 0], [9, 9], [0, 9])).toBe("none");
  });

  test("fields of any shape pass, wherever they begin and whichever way they run", () => {
    const chance = new Chance(5);
    for (let n = 0; n < 200; n++) {
      const corners = randomCorners(chance);
      requireField(corners);
      requireField([...corners.slice(1), corners[0]].reverse());
    }
  });
});
