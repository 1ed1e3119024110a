import { readCorners, readFieldHeads, readObstacles } from "../boundary/field";
import { above, headCount, readOptionalNumber, wholeNumber } from "../boundary/numbers";
import { readOptionalHydrants } from "../boundary/map";
import { spillTable } from "../boundary/table";
import { anyLength } from "../boundary/units";
import { drawnPlan } from "../formulas/plan-drawing";

/** Room for a hundred runs; a chart in a file has a fixed number of rows. */
const DEFAULT_ROWS = 300;
const ROWS = wholeNumber(2, 5000);

/**
 * Spills the plan of a field as pairs of columns, x and y, for a native XY chart.
 * @customfunction PLAN_DRAWING PLAN.DRAWING
 * @param heads The table of FIELD.HEADS: position, run, head, along, x, y and maybe height (any length unit), in its order; up to 5,000 rows.
 * @param corners Corners of the field (same unit): two columns, x and y, 3 to 200 rows.
 * @param [change] Head at which the tubing changes to a smaller size: the segments laid in the larger, 1 to 500. Blank or 0: none shown.
 * @param [hydrants] Hydrants (same unit): two columns, x and y; or the table of FEEDER.HYDRANTS. Blank: none shown.
 * @param [obstacles] Circles that are kept clear (same unit): three columns, x, y and radius, up to 50 rows. Blank: none shown.
 * @param [rows] Rows that every column is padded to with its last point, 2 to 5000 (blank or 0: 300).
 * @param [side] Side of the square that the drawing is scaled to, above 0, for axes that are fixed. Blank or 0: as long as it is in the field.
 * @returns A header row, then 18 columns, x and y of: edge, lines, heads, change, feeders, hydrants, keep clear, frame, and lines apart, the runs beyond the first of their row. Draw edge, lines and feeders as lines without markers, the others as markers without lines (lines apart and keep clear as small dots), and the frame not at all.
 * @remarks Everything lies in a square from 0 to the frame's second corner, north up: with a square plot area both axes have one scale. Lines are one comb, near end, last head, back, next near end: the strokes that join near ends are no pipe. Feeders are straight, to the nearest hydrant. Columns have no gaps, because hosts draw those differently: what is not there lies on the frame's first corner. A drawing is no survey.
 * @source Plane geometry.
 * @errors #VALUE! for a blank or wrong table, corners that bound no field, or fewer rows than a column needs; it says how many.
 * @cautions plan on the ground, overhead wires, buried lines, roads and buildings, pressure
 * @task how do I draw the plan of the field?
 * @example =IRRIG.PLAN.DRAWING({1,1,1,22.5,22.5,25;1,1,2,67.5,67.5,25;2,1,1,22.5,22.5,75;2,1,2,67.5,67.5,75}, {0,0;90,0;90,100;0,100}, 1, {0,50}, {80,95,4}, 40)
 */
export function planDrawing(
  heads: any[][],
  corners: any[][],
  change?: any,
  hydrants?: any[][],
  obstacles?: any[][],
  rows?: any,
  side?: any,
): any[][] {
  const runs = readFieldHeads(anyLength, heads);
  const series = drawnPlan(
    {
      runs,
      corners: readCorners(anyLength, corners),
      change: readOptionalNumber("change", change, headCount),
      hydrants: readOptionalHydrants(hydrants),
      obstacles: readObstacles(anyLength, obstacles),
      side: readOptionalNumber("side", side, above(0)),
    },
    readOptionalNumber("rows", rows, ROWS) ?? DEFAULT_ROWS,
  );
  return spillTable(
    series.flatMap(({ name }) => [{ header: `${name} x` }, { header: `${name} y` }]),
    series[0].points.map((_, i) => series.flatMap(({ points }) => [points[i].x, points[i].y])),
  );
}
