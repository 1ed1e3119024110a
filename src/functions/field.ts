import {
  bearingsTable,
  headsTable,
  readCorners,
  readGround,
  readLayout,
  readOptionalGround,
  readPoints,
  runsTable,
  summaryTable,
} from "../boundary/field";
import { between, readOptionalNumber } from "../boundary/numbers";
import { readOrigin, readPlaces } from "../boundary/map";
import { spillTable } from "../boundary/table";
import { anyLength, readUnits } from "../boundary/units";
import { rankBearings } from "../formulas/bearings";
import { layField } from "../formulas/field-layout";
import { requireHeight } from "../formulas/ground-height";
import { toDegrees, toPlane } from "../formulas/local-plane";
import { polygonArea } from "../formulas/polygon";
import type { Units } from "./units";

/** What a line may be turned by from one bearing to the next, degrees. */
const STEP = between(1, 90);
const DEFAULT_STEP = 5;

/**
 * Spills places given in degrees as x and y about an origin.
 * @customfunction FIELD_LOCAL FIELD.LOCAL
 * @arguments field
 * @param points Places: two columns, latitude and longitude in decimal degrees, north and east positive, 1 to 5,000 rows.
 * @returns A header row, then x east and y north (ft, m) of each place.
 * @remarks Distance and bearing of each place from the origin along the WGS 84 ellipsoid, by Karney's geodesic, laid on a plane. Take the origin in or at the field: 400 m out areas are right to 7 parts in ten thousand million. A receiver's own error is far greater, and a plan is no survey.
 * @source C. F. F. Karney (2013), Algorithms for geodesics, Journal of Geodesy 87.
 * @errors #VALUE! for a blank or wrong place or origin, or a place more than 20 km from the origin; the message names the row.
 * @task how do I bring corners from a map or a receiver into the plan?
 * @example =IRRIG.FIELD.LOCAL({41.5,-97.25;41.5,-97.2477;41.5019,-97.2477}, 41.5, -97.25, "US")
 */
export function fieldLocal(points: any[][], latitude: any, longitude: any, units?: Units): any[][] {
  const u = readUnits(units);
  const places = readPlaces(points);
  const origin = readOrigin(latitude, longitude);
  return spillTable(
    [
      { header: "x", unit: u.length.unit },
      { header: "y", unit: u.length.unit },
    ],
    places.map((place, i) => {
      const { x, y } = toPlane(origin, place, `points row ${i + 1}`);
      return [u.length.give(x), u.length.give(y)];
    }),
  );
}

/**
 * Spills latitude and longitude of places given as x and y about an origin.
 * @customfunction FIELD_DEGREES FIELD.DEGREES
 * @arguments field
 * @param points Places: two columns, x east and y north of the origin (ft, m), 1 to 5,000 rows.
 * @returns A header row, then latitude and longitude of each place, decimal degrees (WGS 84).
 * @remarks The way back from FIELD.LOCAL, to 1e-9 degree, a tenth of a millimeter.
 * @source C. F. F. Karney (2013), Algorithms for geodesics, Journal of Geodesy 87.
 * @errors #VALUE! for a blank or wrong place or origin, or a place more than 20 km from the origin; the message names the row.
 * @task where on the map is a place of the plan?
 * @example =IRRIG.FIELD.DEGREES({0,0;630,0;630,700}, 41.5, -97.25, "US")
 */
export function fieldDegrees(
  points: any[][],
  latitude: any,
  longitude: any,
  units?: Units,
): any[][] {
  const u = readUnits(units);
  const places = readPoints(u.length, points);
  const origin = readOrigin(latitude, longitude);
  return spillTable(
    [
      { header: "latitude", unit: "degrees" },
      { header: "longitude", unit: "degrees" },
    ],
    places.map((point, i) => {
      const place = toDegrees(origin, point, `points row ${i + 1}`);
      return [place.latitude, place.longitude];
    }),
  );
}

/**
 * Area of a field from its corners.
 * @customfunction FIELD_AREA FIELD.AREA
 * @arguments field
 * @returns Area (acre, ha), on the level.
 * @remarks The surveyor's formula. On a slope the ground is a little more than its area on a map.
 * @source Surveyor's (shoelace) formula.
 * @errors #VALUE! for a blank or wrong corner, corners that are the same place or lie on one line, and edges that cross or touch; the message names them.
 * @task how large is the field?
 * @example =IRRIG.FIELD.AREA({0,0;630,0;630,520;400,700;0,700}, "US")
 */
export function fieldArea(corners: any[][], units?: Units): any {
  const u = readUnits(units);
  return u.area.give(polygonArea(readCorners(u.length, corners)));
}

/**
 * Spills the runs of a line over a field of any shape: where the line lies in each position, and what it waters.
 * @customfunction FIELD_RUNS FIELD.RUNS
 * @arguments field
 * @returns A header row, then a row per run: position, run (more than one where a row is cut), x and y of its near end and far end (ft, m), length (ft, m), heads, area covered inside the edge and area thrown beyond it (acre, ha).
 * @remarks What a row has left inside the corners, outside the setback of every edge and every obstacle, falls into runs; a run with no head is left out, and a row without a run is no position. A line or head exactly at the setback is allowed. The near and far end bound what is free; the line itself ends at its last head, which FIELD.HEADS gives. A run waters a strip, a move wide and half a spacing longer than its heads at either end; of the strips of two runs on a row each takes half of what they share; obstacles count as field. Lengths are on the level. A plan is no survey.
 * @source Plane geometry: rows cut by edges, edges widened by the setback; area in a strip by Sutherland and Hodgman (1974), Communications of the ACM 17.
 * @errors #VALUE! for a blank or wrong number, corners that are the same place, lie on one line, or have edges that cross or touch (named by their corners), and for more than 500 positions, 1,000 runs or 5,000 heads. #N/A where no row has room for a head.
 * @cautions overhead wires, roads and buildings
 * @task where does the line lie in a field that is no rectangle?
 * @example =IRRIG.FIELD.RUNS({0,0;630,0;630,520;400,700;0,700}, 90, 45, 50, "US", 22.5, 10, {300,400,40}, 14)
 */
export function fieldRuns(
  corners: any[][],
  bearing: any,
  spacing: any,
  move: any,
  units?: Units,
  first?: any,
  setback?: any,
  obstacles?: any[][],
  most?: any,
  start?: any,
): any[][] {
  const { u, field, choice } = readLayout({
    corners,
    bearing,
    spacing,
    move,
    units,
    first,
    setback,
    obstacles,
    most,
    start,
  });
  return runsTable(u, layField(field, choice));
}

/**
 * Spills every head of every run of a field: where it stands and, with spots, how high.
 * @customfunction FIELD_HEADS FIELD.HEADS
 * @arguments field
 * @returns A header row, then a row per head: position, run, head from the near end, distance along the run from its near end, x and y (ft, m) and, with spots, height of the ground above the run's near end (ft, m).
 * @remarks What a row has left inside the corners, outside the setback of every edge and every obstacle, falls into runs; a run with no head is left out, and a row without a run is no position. A line or head exactly at the setback is allowed. Heights are linear in the triangles of the spots (Delaunay).
 * @source Plane geometry; Delaunay triangles.
 * @errors #VALUE! for a blank or wrong number, corners that are the same place, lie on one line, or have edges that cross or touch (named by their corners), and for more than 500 positions, 1,000 runs or 5,000 heads. #N/A where no row has room for a head, or where spots do not reach a head or a near end.
 * @cautions overhead wires, roads and buildings
 * @task where does every head stand?
 * @example =IRRIG.FIELD.HEADS({0,0;630,0;630,520;400,700;0,700}, 90, 45, 50, "US", 22.5, 10, {300,400,40}, 14, 25, {-10,-10,4;640,-10,9;640,710,16;-10,710,12})
 */
export function fieldHeads(
  corners: any[][],
  bearing: any,
  spacing: any,
  move: any,
  units?: Units,
  first?: any,
  setback?: any,
  obstacles?: any[][],
  most?: any,
  start?: any,
  spots?: any[][],
): any[][] {
  const { u, field, choice } = readLayout({
    corners,
    bearing,
    spacing,
    move,
    units,
    first,
    setback,
    obstacles,
    most,
    start,
  });
  const ground = readOptionalGround(u.length, spots);
  return headsTable(u, layField(field, choice), choice.spacing, ground);
}

/**
 * Spills label and value: a layout of lines in a field at a glance.
 * @customfunction FIELD_SUMMARY FIELD.SUMMARY
 * @arguments field
 * @returns Two columns, label and value: area (acre, ha), positions, runs, heads of the longest run, heads in all, share of the area covered, area thrown beyond the edge (acre, ha), and most heads to shut off: how many fewer the shortest run has.
 * @remarks What a row has left inside the corners, outside the setback of every edge and every obstacle, falls into runs; a run with no head is left out, and a row without a run is no position. A line or head exactly at the setback is allowed. The share covered counts the strips of the runs, a move wide; obstacles count as field.
 * @source Plane geometry.
 * @errors #VALUE! for a blank or wrong number, corners that are the same place, lie on one line, or have edges that cross or touch (named by their corners), and for more than 500 positions, 1,000 runs or 5,000 heads. #N/A where no row has room for a head.
 * @cautions overhead wires, roads and buildings
 * @task how many runs does the field take, and what is left dry?
 * @example =IRRIG.FIELD.SUMMARY({0,0;630,0;630,520;400,700;0,700}, 90, 45, 50, "US", 22.5, 10, {300,400,40}, 14)
 */
export function fieldSummary(
  corners: any[][],
  bearing: any,
  spacing: any,
  move: any,
  units?: Units,
  first?: any,
  setback?: any,
  obstacles?: any[][],
  most?: any,
  start?: any,
): any[][] {
  const { u, field, choice } = readLayout({
    corners,
    bearing,
    spacing,
    move,
    units,
    first,
    setback,
    obstacles,
    most,
    start,
  });
  return summaryTable(u, layField(field, choice));
}

/**
 * Spills the ways a line can lie in a field, bearing by bearing, fewest runs first.
 * @customfunction FIELD_BEARINGS FIELD.BEARINGS
 * @arguments field
 * @param [step] From one bearing to the next, degrees, 1 to 90 (blank or 0: 5).
 * @returns A header row, then a row per bearing from 0 to below 180 degrees: bearing, runs, heads, share of the area covered and, with spots, the steepest ground along the line from head to head (percent, uphill or downhill). Fewest runs first, then the greater share covered. Bearings at which no head fits are left out.
 * @remarks It ranks, it does not choose: power lines, the way water is brought, and towing downhill decide too. A bearing 180 more has the same rows with their near ends on the other side.
 * @source Plane geometry; Delaunay triangles for heights.
 * @errors #VALUE! for a blank or wrong number, corners that are the same place, lie on one line, or have edges that cross or touch (named by their corners), and for more than 500 positions, 1,000 runs or 5,000 heads. #N/A where no row has room for a head at any bearing, or where spots do not reach a head.
 * @cautions overhead wires, roads and buildings
 * @task which way should the lines run?
 * @example =IRRIG.FIELD.BEARINGS({0,0;630,0;630,520;400,700;0,700}, 45, 50, "US", 22.5, 10, {300,400,40}, 14, {-10,-10,4;640,-10,9;640,710,16;-10,710,12}, 15)
 */
export function fieldBearings(
  corners: any[][],
  spacing: any,
  move: any,
  units?: Units,
  first?: any,
  setback?: any,
  obstacles?: any[][],
  most?: any,
  spots?: any[][],
  step?: any,
): any[][] {
  const { u, field, choice } = readLayout({
    corners,
    bearing: 0,
    spacing,
    move,
    units,
    first,
    setback,
    obstacles,
    most,
  });
  const ground = readOptionalGround(u.length, spots);
  const turn = readOptionalNumber("step", step, STEP, "degrees") ?? DEFAULT_STEP;
  return bearingsTable(rankBearings(field, choice, turn, ground), ground !== undefined);
}

/**
 * Spills the height of the ground at points, from spots whose height was taken.
 * @customfunction FIELD_HEIGHT FIELD.HEIGHT
 * @param points Places: two columns, x and y (any length unit), 1 to 5,000 rows.
 * @param spots Heights of the ground: three columns, x, y and height (same unit), 3 to 100 rows.
 * @returns A header row, then the height at each point, in the unit of the spots.
 * @remarks Linear in the triangles of the spots: at a spot its own height, on even ground exact. Where four spots lie on one circle, as a square's corners do, either of two pairs of triangles is right, and one is taken. Take spots at the corners, and wherever the slope changes.
 * @source B. Delaunay (1934), Sur la sphère vide: the triangles whose circles hold no other spot.
 * @errors #N/A where a point lies outside the triangles of the spots; it names the row. #VALUE! for a blank or wrong point or spot, spots at the same place, or spots on one line.
 * @task how high is the ground between the places I measured?
 * @example =IRRIG.FIELD.HEIGHT({120,80;300,410}, {0,0,4;630,0,9;630,700,16;0,700,12;310,350,11})
 */
export function fieldHeight(points: any[][], spots: any[][]): any[][] {
  const places = readPoints(anyLength, points);
  const ground = readGround(anyLength, spots);
  return spillTable(
    [{ header: "height" }],
    places.map((point, i) => [requireHeight(ground, point, `points row ${i + 1}`)]),
  );
}
