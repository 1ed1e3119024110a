import type { Obstacle } from "../../src/formulas/turned-field";
import type { Point } from "../../src/formulas/polygon";
import type { Chance } from "./chance";

/** A field of any shape around a middle: its edges never cross, and many turn inwards. */
export function randomCorners(chance: Chance, middle: Point = { x: 0, y: 0 }): Point[] {
  const count = 3 + chance.whole(12);
  const turn = chance.next() * 2 * Math.PI;
  return Array.from({ length: count }, (_, i) => {
    const angle = turn + ((i + 0.7 * chance.next()) / count) * 2 * Math.PI;
    const radius = 60 + 140 * chance.next();
    return { x: middle.x + radius * Math.cos(angle), y: middle.y + radius * Math.sin(angle) };
  });
}

export function randomObstacles(chance: Chance, most = 3): Obstacle[] {
  return Array.from({ length: chance.whole(most + 1) }, () => ({
    x: 120 * (chance.next() - 0.5),
    y: 120 * (chance.next() - 0.5),
    radius: 3 + 20 * chance.next(),
  }));
}
