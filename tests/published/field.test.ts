import { Geodesic } from "geographiclib-geodesic";
import { Chance } from "../support/chance";
import { callNumber, callTable } from "../support/host";
import { commonArea, freeGround, freePieces } from "../support/polygon-library";
import { expectClose, expectWithin, published } from "../support/published";

const SQUARE_METERS = 10_000;
/** Six corners, one of them turned inwards, in meters. */
const sixCorners = [
  [0, 0],
  [190, 12],
  [204, 150],
  [130, 118],
  [95, 221],
  [-14, 160],
];
const clump = [[60, 90, 14]];
const points = (pairs: number[][]) => pairs.map(([x, y]) => ({ x, y }));
const numbers = (table: (string | number)[][]) => table.slice(1).map((row) => row.map(Number));

published(
  {
    source: "Surveyor's formula",
    where: "a furlong by a chain is an acre; right-angled triangles; an L of 5 squares",
    seen: "closed form",
  },
  () => {
    // 660 ft by 66 ft, 43 560 ft² an acre.
    const acre = [
      [0, 0],
      [660, 0],
      [660, 66],
      [0, 66],
    ];
    expectClose(callNumber("FIELD.AREA", acre), 1, 1e-12);
    expectClose(callNumber("FIELD.AREA", [...acre].reverse(), "US"), 1, 1e-12);
    const triangle = [
      [-100, 50],
      [200, 50],
      [-100, 450],
    ];
    expectClose(callNumber("FIELD.AREA", triangle, "SI"), 6, 1e-12);
    const el = [
      [0, 0],
      [300, 0],
      [300, 100],
      [100, 100],
      [100, 300],
      [0, 300],
    ];
    expectClose(callNumber("FIELD.AREA", el, "SI"), 5, 1e-12);
  },
);

published(
  {
    source: "geographiclib-geodesic 2.2.0, area of a polygon on the WGS 84 ellipsoid (Karney 2013)",
    where:
      "60 seeded fields from a third of a hectare to 50 ha between 60° S and 60° N: within 5e-8",
    seen: "independent engine",
    guards: ["FIELD.LOCAL", "FIELD.AREA", "FIELD.DEGREES"],
  },
  () => {
    const chance = new Chance(84);
    for (let n = 0; n < 60; n++) {
      const origin = [120 * chance.next() - 60, 360 * chance.next() - 180];
      const size = 20 + 500 * chance.next();
      const corners = Array.from({ length: 7 }, (_, i) => {
        const angle = ((i + 0.6 * chance.next()) / 7) * 2 * Math.PI;
        const radius = size * (0.5 + chance.next());
        return [radius * Math.cos(angle), radius * Math.sin(angle)];
      });
      const places = numbers(callTable("FIELD.DEGREES", corners, ...origin, "SI"));
      const ellipsoid = Geodesic.WGS84.Polygon(false);
      for (const [latitude, longitude] of places) ellipsoid.AddPoint(latitude, longitude);
      const expected = Math.abs(ellipsoid.Compute(false, true).area as number) / SQUARE_METERS;
      const local = callTable("FIELD.LOCAL", places, ...origin, "SI");
      expectClose(callNumber("FIELD.AREA", local, "SI"), expected, 5e-8);
    }
  },
);

published(
  {
    source: "SciPy 1.17.1, DOP853 on the geodesic's differential equations (WGS 84)",
    where: "2000 m at 60° from 41.5° N, 97.25° W, both ways",
    seen: "independent engine",
  },
  () => {
    const radians = Math.PI / 3;
    const [[latitude, longitude]] = numbers(
      callTable(
        "FIELD.DEGREES",
        [[2000 * Math.sin(radians), 2000 * Math.cos(radians)]],
        41.5,
        -97.25,
        "SI",
      ),
    );
    expectWithin(latitude, 41.509001973191644, 1e-9);
    expectWithin(longitude, -97.22925305133565, 1e-9);
    const [[x, y]] = numbers(
      callTable("FIELD.LOCAL", [[41.509001973191644, -97.22925305133565]], 41.5, -97.25, "SI"),
    );
    expectWithin(x, 2000 * Math.sin(radians), 1e-4);
    expectWithin(y, 2000 * Math.cos(radians), 1e-4);
  },
);

published(
  {
    source: "clipper2-ts 2.0.1, offsets and clipping of polygons",
    where:
      "six corners, a clump kept clear, setback 4 m, 24 bearings: near and far ends, area covered",
    seen: "independent engine",
  },
  () => {
    const field = {
      corners: points(sixCorners),
      obstacles: clump.map(([x, y, radius]) => ({ x, y, radius })),
      setback: 4,
    };
    const ground = freeGround(field);
    for (let bearing = 7; bearing < 360; bearing += 15) {
      const layout = [sixCorners, bearing, 12, 15, "SI", null, 4, clump] as const;
      const runs = numbers(callTable("FIELD.RUNS", ...layout));
      const heads = numbers(callTable("FIELD.HEADS", ...layout));
      expect(heads).toHaveLength(runs.reduce((sum, run) => sum + run[7], 0));
      const radians = (bearing * Math.PI) / 180;
      const [east, north] = [Math.sin(radians), Math.cos(radians)];
      const from = (x: number, y: number, forward: number, left: number) => ({
        x: x + forward * east - left * north,
        y: y + forward * north + left * east,
      });
      let covered = 0;
      for (const run of runs) {
        const [position, number, nearX, nearY, farX, farY, length, count] = run;
        expectWithin(Math.hypot(farX - nearX, farY - nearY), length, 1e-9);
        const pieces = freePieces(
          ground,
          from(nearX, nearY, -1000, 0),
          from(nearX, nearY, 1000, 0),
        );
        const piece = pieces.find(([begins]) => Math.abs(begins - 1000) < 0.01);
        expectWithin(piece?.[1], 1000 + length, 0.01);
        const own = heads.filter((head) => head[0] === position && head[1] === number);
        expect(own).toHaveLength(count);
        const [, , , , x, y] = own[0];
        const strip = [
          from(x, y, -6, -7.5),
          from(x, y, 12 * count - 6, -7.5),
          from(x, y, 12 * count - 6, 7.5),
          from(x, y, -6, 7.5),
        ];
        const watered = commonArea(strip, field.corners) / SQUARE_METERS;
        covered += run[8];
        // Two runs of a row may share what both reach.
        if (runs.filter((other) => other[0] === position).length === 1) {
          expectWithin(run[8], watered, 1e-6);
          expectWithin(run[8] + run[9], (count * 12 * 15) / SQUARE_METERS, 1e-9);
        } else {
          expect(run[8]).toBeLessThanOrEqual(watered + 1e-6);
        }
      }
      const summary = callTable("FIELD.SUMMARY", ...layout).map(([, value]) => value);
      const area = commonArea(field.corners, field.corners) / SQUARE_METERS;
      expectWithin(summary[5], covered / area, 1e-6);
    }
  },
);

published(
  {
    source: "Plane geometry",
    where: "a rectangle of 600 by 400 ft: 8 rows 50 ft apart of 13 heads 45 ft apart",
    seen: "closed form",
  },
  () => {
    const rectangle = [
      [0, 0],
      [600, 0],
      [600, 400],
      [0, 400],
    ];
    // Due west from the east edge, so positions advance to the south: the first is at y = 375.
    const heads = numbers(callTable("FIELD.HEADS", rectangle, 270, 45, 50));
    expect(heads).toHaveLength(8 * 13);
    heads.forEach(([position, run, head, along, x, y], i) => {
      expect([position, run, head]).toEqual([1 + Math.floor(i / 13), 1, 1 + (i % 13)]);
      expectWithin(along, 22.5 + 45 * (i % 13), 1e-9);
      expectWithin(x, 600 - along, 1e-9);
      expectWithin(y, 375 - 50 * Math.floor(i / 13), 1e-9);
    });
    const summary = callTable("FIELD.SUMMARY", rectangle, 270, 45, 50).map(([, value]) => value);
    const acres = 240_000 / 43_560;
    [acres, 8, 8, 13, 104, (13 * 45) / 600, 0, 0].forEach((expected, i) =>
      expectWithin(summary[i], expected, 1e-9),
    );
    // Along the long side 8 runs; along the short side 12 of 9 heads each: fewest first.
    const bearings = numbers(
      callTable("FIELD.BEARINGS", rectangle, 45, 50, "US", null, null, null, null, null, 90),
    );
    expect(bearings.map(([bearing, runs, count]) => [bearing, runs, count])).toEqual([
      [90, 8, 104],
      [0, 12, 108],
    ]);
    // Nine heads water 405 ft: 2.5 ft beyond either edge.
    expectWithin(bearings[1][3], 1, 1e-9);
  },
);

const spots = [
  [12, -8, 103.2],
  [640, 5, 109.9],
  [655, 512, 118.4],
  [402, 731, 121.7],
  [-15, 690, 112.3],
  [310, 350, 114.0],
  [150, 480, 110.1],
  [480, 220, 113.6],
  [90, 210, 105.5],
];

published(
  {
    source: "SciPy 1.17.1, LinearNDInterpolator (Delaunay triangles by Qhull)",
    where: "nine spots, seven points",
    seen: "independent engine",
  },
  () => {
    const expected = [
      [100, 100, 105.36058879392212],
      [300, 200, 109.8131054131054],
      [500, 400, 115.94319657411245],
      [200, 600, 114.23842158265755],
      [350, 500, 117.0454089118851],
      [60, 400, 108.26692913385827],
      [600, 60, 110.84597782915407],
    ];
    const table = callTable(
      "FIELD.HEIGHT",
      expected.map(([x, y]) => [x, y]),
      spots,
    );
    expected.forEach(([, , height], i) => expectClose(table[i + 1][0], height, 1e-12));
  },
);

published(
  {
    source: "Plane geometry",
    where:
      "on a plane z = 3 + 0.02 x − 0.01 y: heights above the near end, steepest along each bearing",
    seen: "closed form",
  },
  () => {
    const plane = (x: number, y: number) => 3 + 0.02 * x - 0.01 * y;
    const field = [
      [0, 0],
      [300, 0],
      [340, 240],
      [20, 260],
    ];
    const ground = [
      [-50, -60],
      [400, -70],
      [420, 300],
      [-40, 310],
      [150, 90],
    ].map(([x, y]) => [x, y, plane(x, y)]);
    const table = callTable(
      "FIELD.HEADS",
      field,
      65,
      12,
      15,
      "SI",
      null,
      3,
      null,
      null,
      null,
      ground,
    );
    expect(table[0][6]).toBe("height (m)");
    const radians = (65 * Math.PI) / 180;
    const rise = 0.02 * Math.sin(radians) - 0.01 * Math.cos(radians);
    for (const [, , , along, , , height] of numbers(table)) {
      expectWithin(height, rise * along, 1e-9);
    }
    const bearings = callTable(
      "FIELD.BEARINGS",
      field,
      12,
      15,
      "SI",
      null,
      3,
      null,
      null,
      ground,
      30,
    );
    for (const [bearing, , , , steepest] of numbers(bearings)) {
      const angle = (bearing * Math.PI) / 180;
      const slope = Math.abs(0.02 * Math.sin(angle) - 0.01 * Math.cos(angle));
      expectWithin(steepest, 100 * slope, 1e-9);
    }
  },
);
