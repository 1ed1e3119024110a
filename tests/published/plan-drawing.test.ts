import { callTable } from "../support/host";
import { expectWithin, published } from "../support/published";

published(
  {
    source: "Plane geometry",
    where: "two lines on a rectangle of 90 by 100: every point of the drawing by hand",
    seen: "closed form",
  },
  () => {
    const heads = [
      [1, 1, 1, 20, 20, 25],
      [1, 1, 2, 60, 60, 25],
      [2, 1, 1, 20, 20, 75],
      [2, 1, 2, 60, 60, 75],
    ];
    const corners = [
      [0, 0],
      [90, 0],
      [90, 100],
      [0, 100],
    ];
    const table = callTable("PLAN.DRAWING", heads, corners, 1, [[-10, 50]], null, 9);
    // 100 by 100 with the hydrant 10 to the west: the edge begins 10 in.
    const drawn = {
      edge: "10,0 100,0 100,100 10,100 10,0 10,0 10,0 10,0 10,0",
      lines: "10,25 70,25 10,25 10,75 70,75 10,75 10,75 10,75 10,75",
      heads: "30,25 70,25 30,75 70,75 70,75 70,75 70,75 70,75 70,75",
      change: "30,25 30,75 30,75 30,75 30,75 30,75 30,75 30,75 30,75",
      feeders: "10,25 0,50 10,25 10,75 0,50 10,75 10,75 10,75 10,75",
      hydrants: "0,50 0,50 0,50 0,50 0,50 0,50 0,50 0,50 0,50",
      "keep clear": "0,0 0,0 0,0 0,0 0,0 0,0 0,0 0,0 0,0",
      frame: "0,0 100,100 100,100 100,100 100,100 100,100 100,100 100,100 100,100",
      "lines apart": "0,0 0,0 0,0 0,0 0,0 0,0 0,0 0,0 0,0",
    };
    expect(table[0]).toEqual(Object.keys(drawn).flatMap((name) => [`${name} x`, `${name} y`]));
    Object.values(drawn).forEach((text, series) => {
      text.split(" ").forEach((point, row) => {
        point
          .split(",")
          .forEach((value, i) => expectWithin(table[row + 1][2 * series + i], Number(value), 1e-9));
      });
    });
  },
);
