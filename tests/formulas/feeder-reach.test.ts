import { leavesField, nearestHydrant } from "../../src/formulas/feeder-reach";

test("the nearest hydrant, of two as near the first", () => {
  const hydrants = [
    { x: 0, y: 0 },
    { x: 10, y: 0 },
  ];
  expect(nearestHydrant({ x: 7, y: 4 }, hydrants)).toEqual({ hydrant: 1, distance: 5 });
  expect(nearestHydrant({ x: 5, y: 0 }, hydrants)).toEqual({ hydrant: 0, distance: 5 });
});

test("a straight way leaves a field where a piece of it lies outside", () => {
  const el = [
    [0, 0],
    [20, 0],
    [20, 10],
    [10, 10],
    [10, 20],
    [0, 20],
  ].map(([x, y]) => ({ x, y }));
  // The field turned over, upside down, on its side, and far from the origin: the answer stays.
  const views: ((x: number, y: number) => { x: number; y: number })[] = [
    (x, y) => ({ x, y }),
    (x, y) => ({ x: -x, y }),
    (x, y) => ({ x, y: -y }),
    (x, y) => ({ x: y, y: x }),
    (x, y) => ({ x: 300 - y, y: 200 + x }),
    (x, y) => ({ x: x - 400, y: -500 - y }),
  ];
  const leaves = (x: number, y: number, X: number, Y: number) => {
    const answers = views.map((view) => {
      const corners = el.map((corner) => view(corner.x, corner.y));
      const [from, to] = [view(x, y), view(X, Y)];
      const answer = leavesField(corners, from, to);
      expect(leavesField([...corners].reverse(), to, from)).toBe(answer);
      return answer;
    });
    expect(new Set(answers).size).toBe(1);
    return answers[0];
  };
  expect(leaves(1, 1, 19, 9)).toBe(false);
  // Across the inner corner.
  expect(leaves(5, 19, 19, 5)).toBe(true);
  expect(leaves(5, 19, 5, 21)).toBe(true);
  expect(leaves(-1, 5, 1, 5)).toBe(true);
  // Along an edge, on an edge, through the inner corner.
  expect(leaves(0, 0, 0, 20)).toBe(false);
  expect(leaves(0, 3, 20, 3)).toBe(false);
  expect(leaves(5, 15, 15, 5)).toBe(false);
  expect(leaves(10, 12, 10, 18)).toBe(false);
  // Past the inner corner on the outside, and in and out again.
  expect(leaves(9, 19, 11, 19)).toBe(true);
  expect(leaves(11, 11, 19, 19)).toBe(true);
  expect(leaves(2, 18, 18, 2)).toBe(false);
  expect(leaves(1, 19.5, 19.5, 1)).toBe(true);
  // No way at all.
  expect(leaves(3, 3, 3, 3)).toBe(false);
  expect(leaves(15, 15, 15, 15)).toBe(true);
});

test("inside and outside of a field whose edges lean, level with its corners too", () => {
  const diamond = [
    [0, -10],
    [10, 0],
    [0, 10],
    [-10, 0],
  ].map(([x, y]) => ({ x, y }));
  const wrong: number[][] = [];
  for (const [shiftX, shiftY] of [
    [0, 0],
    [70, 30],
    [-40, -90],
  ]) {
    const corners = diamond.map(({ x, y }) => ({ x: x + shiftX, y: y + shiftY }));
    for (const turn of [0, 1, 2, 3]) {
      const field = [...corners.slice(turn), ...corners.slice(0, turn)];
      for (const around of [field, [...field].reverse()]) {
        // |x| + |y| is 10 on the edges.
        for (let x = -11; x <= 11; x++) {
          for (let y = -11; y <= 11; y++) {
            const place = { x: x + shiftX, y: y + shiftY };
            const isOutside = Math.abs(x) + Math.abs(y) > 10;
            if (leavesField(around, place, place) !== isOutside) wrong.push([x, y]);
          }
        }
      }
    }
  }
  expect(wrong).toEqual([]);
});
