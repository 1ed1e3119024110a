import { above, MOST_POSITIONS, wholeNumber } from "../boundary/limits";
import { readHeads, readSegmentLengths } from "../boundary/line";
import { readNumber } from "../boundary/numbers";
import { readStart } from "../boundary/start-place";
import { type Column, spillTable } from "../boundary/table";
import { readUnits } from "../boundary/units";
import { headFlags, positionFlags } from "../formulas/stakes";

/** @customenum {string} */
enum Units {
  /** feet, inches, psi, gpm */
  US = "US",
  /** meters, millimeters, kPa, m³/h */
  SI = "SI",
}

const MAP_COLUMNS: readonly Column[] = [
  { header: "latitude", unit: "degrees" },
  { header: "longitude", unit: "degrees" },
];

/**
 * Spills where to put a flag for every head of a line.
 * @customfunction STAKE_FLAGS STAKE.FLAGS
 * @param heads Heads on the line, a whole number from 1 to 500.
 * @param spacing Distance between heads (ft, m), above 0: one value, or a row or column with one per segment from the inlet end on.
 * @param [units] "US" (blank) or "SI".
 * @param [first] Distance from the inlet end to head 1 (ft, m), above 0; blank or 0: the spacing.
 * @param [latitude] Latitude of the inlet end, decimal degrees, north positive. Latitude and longitude both blank or 0: distances only.
 * @param [longitude] Longitude of the inlet end, decimal degrees, east positive.
 * @param [bearing] Direction of the line, degrees clockwise from true north, −360 to 360; needed with a latitude and longitude. A blank cell may count as 0, due north.
 * @returns A header row, then a row per head: head, distance from the inlet end (ft, m) and, with a start, latitude and longitude (degrees, WGS 84).
 * @remarks A straight line over level ground, on the WGS 84 ellipsoid by Karney's geodesic, good to far less than any receiver. On a slope the ground distance is a little longer. It is a layout for flags, not a survey; magnetic north is not true north.
 * @source C. F. F. Karney (2013), Algorithms for geodesics, Journal of Geodesy 87.
 * @errors #VALUE! for a blank or wrong count or spacing, ranges that do not fit the heads, or a latitude, longitude or bearing that is missing or out of range.
 * @cautions buried lines, overhead wires, roads and buildings
 * @task where do I put the flags for the heads?
 * @example =IRRIG.STAKE.FLAGS(14, 45, "US", 22.5, 41.5, -97.25, 85)
 */
export function stakeFlags(
  heads: any,
  spacing: any[][],
  units?: Units,
  first?: any,
  latitude?: any,
  longitude?: any,
  bearing?: any,
): any[][] {
  const u = readUnits(units);
  const segments = readSegmentLengths(u, readHeads(heads), { spacing, first });
  const start = readStart(latitude, longitude, bearing);
  const columns = [{ header: "head" }, { header: "distance", unit: u.length.unit }];
  return spillTable(
    start ? [...columns, ...MAP_COLUMNS] : columns,
    headFlags(segments, start).map(({ number, along, place }) => [
      number,
      u.length.give(along),
      ...(place ? [place.latitude, place.longitude] : []),
    ]),
  );
}

/**
 * Spills where to put the flags for the two ends of every position of a line.
 * @customfunction STAKE_POSITIONS STAKE.POSITIONS
 * @param positions Positions that the line moves through, a whole number from 1 to 500.
 * @param move Distance between positions (ft, m), above 0.
 * @param [units] "US" (blank) or "SI".
 * @param [length] Length of the line (ft, m), above 0; blank or 0: flags for the near ends only.
 * @param [latitude] Latitude of the near end of position 1, decimal degrees, north positive. Latitude and longitude both blank or 0: distances only.
 * @param [longitude] Longitude of the near end of position 1, decimal degrees, east positive.
 * @param [bearing] Direction in which the positions advance, degrees clockwise from true north, −360 to 360; the line lies 90° to its right. Needed with a latitude and longitude. A blank cell may count as 0, due north.
 * @returns A header row, then for every position a row for its near end (across 0) and one for its far end (across the length): position, along, across (ft, m) and, with a start, latitude and longitude (degrees, WGS 84).
 * @remarks Straight lines over level ground, on the WGS 84 ellipsoid by Karney's geodesic. It is a layout for flags, not a survey; magnetic north is not true north.
 * @source C. F. F. Karney (2013), Algorithms for geodesics, Journal of Geodesy 87.
 * @errors #VALUE! for a blank or wrong count, move or length, or a latitude, longitude or bearing that is missing or out of range.
 * @cautions buried lines, overhead wires, roads and buildings
 * @task where do I put the flags for every position?
 * @example =IRRIG.STAKE.POSITIONS(14, 50, "US", 630, 41.5, -97.25, 355)
 */
export function stakePositions(
  positions: any,
  move: any,
  units?: Units,
  length?: any,
  latitude?: any,
  longitude?: any,
  bearing?: any,
): any[][] {
  const u = readUnits(units);
  const start = readStart(latitude, longitude, bearing);
  const lineLength = u.length.readOptional("length", length, above(0));
  const flags = positionFlags(
    readNumber("positions", positions, wholeNumber(1, MOST_POSITIONS)),
    u.length.read("move", move, above(0)),
    lineLength,
    start,
  );
  const columns = [
    { header: "position" },
    { header: "along", unit: u.length.unit },
    { header: "across", unit: u.length.unit },
  ];
  return spillTable(
    start ? [...columns, ...MAP_COLUMNS] : columns,
    flags.map(({ number, along, across, place }) => [
      number,
      u.length.give(along),
      u.length.give(across),
      ...(place ? [place.latitude, place.longitude] : []),
    ]),
  );
}
