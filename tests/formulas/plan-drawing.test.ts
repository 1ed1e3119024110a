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

const named = (drawing: readonly { name: string; points: readonly object[] }[], name: string) =>
  drawing.find((each) => each.name === name)?.points ?? [];

test("near ends of single heads lie along the bearing of any longer run", () => {
  // Head 1 of the single ones is 10 from their near end, 3 east for every 4 north of it.
  const single = [0, 1].map((row) => ({
    run: 1,
    along: [10],
    places: [{ x: 490 + 6 + 30 * row, y: 770 + 8 }],
  }));
  const bare = { ...parts, hydrants: [], obstacles: [] };
  const lines = (drawnRuns: PlanParts["runs"]) =>
    named(drawnPlan({ ...bare, runs: drawnRuns }, 60), "lines");
  const starts = single.map((_, row) => ({ x: 490 + 30 * row, y: 770 }));
  const ends = single.map(({ places }) => places[0]);
  expectPoints(lines([...single, runs[0]]), [
    ...[starts[0], ends[0], starts[0]],
    ...[starts[1], ends[1], starts[1]],
    ...[near(0), runs[0].places[2], near(0)],
  ]);
  // Where no run has two heads there is no bearing to show: the near end is the head.
  expectPoints(lines(single), [...[ends[0], ends[0], ends[0]], ...[ends[1], ends[1], ends[1]]]);
});

test("the change is left out where a run ends at or before it", () => {
  const short = { ...runs[1], along: [5, 15], places: runs[1].places.slice(0, 2) };
  const change = (at: number) =>
    named(drawnPlan({ ...parts, runs: [runs[0], short], change: at }, 60), "change");
  expectPoints(change(1), [runs[0].places[0], short.places[0]]);
  expectPoints(change(2), [runs[0].places[1]]);
  expect(change(3)).toEqual(new Array(60).fill({ x: 0, y: 0 }));
});

test("every series is as long as rows, its last point again and again, and none longer", () => {
  // Three for each of two lines and the run apart: nine points of feeders are the most.
  const bare = { ...parts, obstacles: [] };
  const drawing = drawnPlan(bare, 36);
  for (const { points } of drawing) expect(points).toHaveLength(36);
  expect(named(drawing, "edge").slice(4)).toEqual(new Array(32).fill({ x: 0, y: 10 }));
  expect(named(drawing, "frame").slice(1)).toEqual(new Array(35).fill({ x: 80, y: 80 }));
  expect(named(drawing, "keep clear")).toEqual(new Array(36).fill({ x: 0, y: 0 }));
  expect(drawnPlan({ ...bare, runs: runs.slice(0, 2) }, 6)[1].points).toHaveLength(6);
  expect(() => drawnPlan({ ...bare, runs: runs.slice(0, 2) }, 5)).toThrow(
    'rows must be at least 6, as many points as "lines" has; got 5',
  );
});

test("runs apart have two dots at least, and share the room", () => {
  const apart = runs.map((run) => ({ ...run, run: 2 }));
  const bare = { ...parts, runs: apart, hydrants: [], obstacles: [] };
  const dots = named(drawnPlan(bare, 60), "lines apart");
  // Twenty each: the first, one in the middle of nothing, the last.
  apart.forEach(({ places }, row) => {
    const share = (i: number) => {
      const { x, y } = near(row);
      return { x: x + (i / 19) * (places[2].x - x), y: y + (i / 19) * (places[2].y - y) };
    };
    for (let i = 0; i < 20; i++) {
      const { x, y } = shifted(share(i));
      expect((dots[20 * row + i] as { x: number }).x).toBeCloseTo(x, 9);
      expect((dots[20 * row + i] as { y: number }).y).toBeCloseTo(y, 9);
    }
  });
  // Nine heads ask for nine rows; three runs then have three each, and no fewer than two in six.
  expect(named(drawnPlan(bare, 9), "lines apart")).toHaveLength(9);
  const few = { ...bare, runs: apart.map((run) => ({ ...run, places: run.places.slice(0, 1) })) };
  expect(named(drawnPlan(few, 6), "lines apart")).toHaveLength(6);
  expect(() => drawnPlan(few, 5)).toThrow("rows must be at least 6");
});

test("runs apart whose hydrants serve no first run are visited from one another", () => {
  const [west, east] = parts.hydrants;
  const all = runs.map((run) => ({ ...run, run: 2 }));
  // All of them apart: the first brings those of its hydrant, the others follow.
  const feeders = named(drawnPlan({ ...parts, runs: all, obstacles: [] }, 60), "feeders");
  expectPoints(feeders, [...[near(0), west, near(1), west, near(0)], ...[near(2), east, near(2)]]);
});

test("drawn to a side of its own everything is scaled alike", () => {
  const wide = drawnPlan({ ...parts, side: 20 }, 60);
  wide.forEach(({ points }, which) => {
    points.forEach(({ x, y }, i) => {
      expect(x).toBeCloseTo(drawn[which].points[i].x / 4, 9);
      expect(y).toBeCloseTo(drawn[which].points[i].y / 4, 9);
    });
  });
});
