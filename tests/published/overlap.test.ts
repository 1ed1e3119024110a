import { callTable } from "../support/host";
import { expectClose, published } from "../support/published";

function mean(depths: (string | number)[][]): number {
  const cells = depths.flat() as number[];
  return cells.reduce((sum, depth) => sum + depth, 0) / cells.length;
}

/** Mean depth of overlapped cones, depth 1 at the head: volume over the area of a head. */
function coneMean(reach: number, spacing: number, move: number): number {
  return (Math.PI * reach ** 2) / (3 * spacing * move);
}

published(
  {
    source: "Volume of a cone, πR²d/3, over the area of a head",
    where:
      "a cone of throw 40 on 40 by 40 is 1.04720 times its depth at the head, on 40 by 60 0.69813",
    seen: "closed form",
  },
  () => {
    for (const [move, expected] of [
      [40, 1.0472],
      [60, 0.69813],
    ]) {
      expectClose(
        mean(callTable("APPLICATION.OVERLAP", [[1], [0]], 40, 40, move)),
        expected,
        0.002,
      );
      expectClose(
        mean(callTable("APPLICATION.OVERLAP", [[1], [0]], 40, 40, move, 100)),
        expected,
        0.0001,
      );
    }
  },
);

published(
  {
    source: "Volume of a cone, πR²d/3, over the area of a head",
    where: "throws from half the spacing to ten times the spacing, spacing and move unequal",
    seen: "closed form",
  },
  () => {
    for (const [reach, spacing, move] of [
      [40, 80, 80],
      [40, 45, 50],
      [60, 45, 50],
      [43, 41, 57],
      [120, 40, 60],
      [400, 40, 60],
    ]) {
      const expected = coneMean(reach, spacing, move);
      // Cone and its straight pieces are one profile: eight steps must give what one step gives.
      const radial = Array.from({ length: 9 }, (_, i) => [1 - i / 8]);
      const coarse = callTable("APPLICATION.OVERLAP", radial, reach / 8, spacing, move, 10);
      expectClose(mean(coarse), expected, 0.002);
      if (reach <= 60) {
        const fine = callTable("APPLICATION.OVERLAP", [[1], [0]], reach, spacing, move, 100);
        expectClose(mean(fine), expected, 0.0001);
      }
    }
  },
);

published(
  {
    source: "Volume of a cone, πR²d/3, over the area of a head",
    where: "a line of cones caught across the line and folded at the move keeps the mean depth",
    seen: "closed form",
  },
  () => {
    // Mean along the line of a row of cones, spacing apart: one cone cut at a distance from the line.
    const reach = 40;
    const step = 1;
    const spacing = 45;
    const slice = (y: number) => {
      const half = Math.sqrt(reach ** 2 - y ** 2);
      if (half === 0) return 0;
      const edge = y === 0 ? 0 : (y ** 2 * Math.log((half + reach) / Math.abs(y))) / reach;
      return (half - edge) / spacing;
    };
    const across = Array.from({ length: 2 * reach + 1 }, (_, i) => [slice(i - reach)]);
    for (const move of [25, 50, 60]) {
      const folded = callTable("APPLICATION.FOLD", across, step, move);
      expect(folded).toHaveLength(move);
      expectClose(mean(folded), coneMean(reach, spacing, move), 0.001);
    }
  },
);
