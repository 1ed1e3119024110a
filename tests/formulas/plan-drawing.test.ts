import { drawnPlan, type PlanParts } from "../../src/formulas/plan-drawing";

/** A wide field far from the origin, its lines running 3 east for every 4 north. */
const runs = [0, 1, 2].map((row) => ({
  run: row === 2 ? 2 : 1,
  along: [5, 15, 25],
  places: [5, 15, 25].map((along) => ({
    x: 500 + 20 * row + 0.6 * along,
    y: 800 - 10 * row + 0.8 * along,
  })),
}));
const parts: PlanParts = {
  corners: [
    { x: 490, y: 770 },
    { x: 570, y: 770 },
    { x: 570, y: 830 },
    { x: 490, y: 830 },
  ],
  runs,
  hydrants: [
    { x: 500, y: 790 },
    { x: 545, y: 780 },
  ],
  obstacles: [
    { x: 510, y: 780, radius: 5 },
    { x: 560, y: 820, radius: 4 },
  ],
};
// 80 by 60: the square has a side of 80, and ten to spare above and below.
const shifted = ({ x, y }: { x: number; y: number }) => ({ x: x - 490, y: y - 770 + 10 });
const drawn = drawnPlan(parts, 60);
const series = (name: string) => drawn.find((each) => each.name === name)?.points ?? [];
const near = (row: number) => ({ x: 500 + 20 * row, y: 800 - 10 * row });

function expectPoints(actual: readonly object[], expected: readonly { x: number; y: number }[]) {
  expect(actual).toHaveLength(60);
  expected.map(shifted).forEach(({ x, y }, i) => {
    expect((actual[i] as { x: number }).x).toBeCloseTo(x, 9);
    expect((actual[i] as { y: number }).y).toBeCloseTo(y, 9);
  });
}

test("a wide field lies in the middle of its square", () => {
  expectPoints(series("edge"), [...parts.corners, parts.corners[0]]);
  expect(series("frame").slice(0, 2)).toEqual([
    { x: 0, y: 0 },
    { x: 80, y: 80 },
  ]);
});

test("a tall one too", () => {
  const turned = { ...parts, corners: parts.corners.map(({ x, y }) => ({ x: y, y: x })) };
  const edge = drawnPlan({ ...turned, runs: [], hydrants: [], obstacles: [] }, 60)[0].points;
  expect(edge[0]).toEqual({ x: 10, y: 0 });
  expect(edge[2]).toEqual({ x: 70, y: 80 });
});

test("lines go from their near end, which lies behind head 1 by what stands before it", () => {
  const [first, second] = [runs[0].places[2], runs[1].places[2]];
  expectPoints(series("lines"), [near(0), first, near(0), near(1), second, near(1)]);
});

test("feeders go to the nearest hydrant and back, a run apart from where its hydrant is visited", () => {
  const [west, east] = parts.hydrants;
  expectPoints(series("feeders"), [
    ...[near(0), west, near(0)],
    ...[near(1), west, near(1)],
    ...[near(2), east, near(2)],
  ]);
  // With one hydrant for all, the run apart is visited from the first line's.
  const one = drawnPlan({ ...parts, hydrants: [east] }, 60);
  expectPoints(one.find(({ name }) => name === "feeders")?.points ?? [], [
    ...[near(0), east, near(2), east, near(0)],
    ...[near(1), east, near(1)],
  ]);
});

test("what is kept clear is a circle of dots, evenly round, as many as there is room for", () => {
  for (const [rows, each] of [
    [60, 30],
    [400, 36],
    [13, 6],
  ]) {
    const alone = { ...parts, runs: [], hydrants: [] };
    const dots = drawnPlan(alone, rows).find(({ name }) => name === "keep clear")?.points ?? [];
    parts.obstacles.forEach((obstacle, which) => {
      for (let i = 0; i < each; i++) {
        const angle = (2 * Math.PI * i) / each;
        const { x, y } = shifted({
          x: obstacle.x + obstacle.radius * Math.cos(angle),
          y: obstacle.y + obstacle.radius * Math.sin(angle),
        });
        expect(dots[which * each + i].x).toBeCloseTo(x, 9);
        expect(dots[which * each + i].y).toBeCloseTo(y, 9);
      }
    });
  }
});

test("a run apart is dots from its near end to its last head", () => {
  const dots = series("lines apart");
  const last = runs[2].places[2];
  for (let i = 0; i < 36; i++) {
    const share = i / 35;
    const { x, y } = shifted({
      x: near(2).x + share * (last.x - near(2).x),
      y: near(2).y + share * (last.y - near(2).y),
    });
    expect(dots[i].x).toBeCloseTo(x, 9);
    expect(dots[i].y).toBeCloseTo(y, 9);
  }
});

test("the change of tubing stands where it is given, and only there", () => {
  expectPoints(
    drawnPlan({ ...parts, change: 2 }, 60)[3].points,
    runs.map(({ places }) => places[1]),
  );
  expect(series("change")).toEqual(new Array(60).fill({ x: 0, y: 0 }));
});
