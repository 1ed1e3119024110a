import { readChoice } from "../boundary/choices";
import { above, MOST_POSITIONS, readNumber, wholeNumber } from "../boundary/numbers";
import { readHeads, readSegmentLengths } from "../boundary/line";
import { readNamedPoints, readOrigin, readStart } from "../boundary/map";
import { type Column, spillTable } from "../boundary/table";
import { readUnits } from "../boundary/units";
import { toDegrees } from "../formulas/local-plane";
import { mapFile } from "../formulas/map-file";
import { headFlags, positionFlags } from "../formulas/stakes";
import type { Units } from "./units";

/** @customenum {string} */
enum MapFormat {
  /** the exchange format of receivers (GPX 1.1) */
  gpx = "GPX",
  /** placemarks for maps and globes (OGC KML 2.2) */
  kml = "KML",
  /** points for map programs (RFC 7946) */
  geoJson = "GeoJSON",
}

const FORMATS = [MapFormat.gpx, MapFormat.kml, MapFormat.geoJson];

const MAP_COLUMNS: readonly Column[] = [
  { header: "latitude", unit: "degrees" },
  { header: "longitude", unit: "degrees" },
];

/**
 * Spills where to put a flag for every head of a line.
 * @customfunction STAKE_FLAGS STAKE.FLAGS
 * @param heads Heads on the line, a whole number from 1 to 500.
 * @param spacing Distance between heads (ft, m), above 0: one value, or a row or column with one per segment from the inlet end on.
 * @param [first] Distance from the inlet end to head 1 (ft, m), above 0; blank or 0: the spacing.
 * @param [latitude] Latitude of the inlet end, decimal degrees, north positive. Latitude and longitude both blank or 0: distances only.
 * @param [longitude] Longitude of the inlet end, decimal degrees, east positive.
 * @param [bearing] Direction of the line, degrees clockwise from true north, −360 to 360; needed with a latitude and longitude. A blank cell may count as 0, due north.
 * @returns A header row, then a row per head: head, distance from the inlet end (ft, m) and, with a start, latitude and longitude (degrees, WGS 84).
 * @remarks A straight line over level ground, on the WGS 84 ellipsoid by Karney's geodesic, good to far less than any receiver. On a slope the ground distance is a little longer. It is a layout for flags, not a survey; magnetic north is not true north.
 * @source C. F. F. Karney (2013), Algorithms for geodesics, Journal of Geodesy 87.
 * @errors #VALUE! for a blank or wrong count or spacing, ranges that do not fit the heads, or a latitude, longitude or bearing that is missing or out of range.
 * @cautions buried lines, overhead wires, lightning, roads and buildings
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
 * @param [length] Length of the line (ft, m), above 0; blank or 0: flags for the near ends only.
 * @param [latitude] Latitude of the near end of position 1, decimal degrees, north positive. Latitude and longitude both blank or 0: distances only.
 * @param [longitude] Longitude of the near end of position 1, decimal degrees, east positive.
 * @param [bearing] Direction in which the positions advance, degrees clockwise from true north, −360 to 360; the line lies 90° to its right. Needed with a latitude and longitude. A blank cell may count as 0, due north.
 * @returns A header row, then for every position a row for its near end (across 0) and one for its far end (across the length): position, along, across (ft, m) and, with a start, latitude and longitude (degrees, WGS 84).
 * @remarks Straight lines over level ground, on the WGS 84 ellipsoid by Karney's geodesic. It is a layout for flags, not a survey; magnetic north is not true north.
 * @source C. F. F. Karney (2013), Algorithms for geodesics, Journal of Geodesy 87.
 * @errors #VALUE! for a blank or wrong count, move or length, or a latitude, longitude or bearing that is missing or out of range.
 * @cautions buried lines, overhead wires, lightning, roads and buildings
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

/**
 * Spills the lines of a map file for flags: a GPX, KML or GeoJSON file's text, a line a row.
 * @customfunction STAKE_MAP STAKE.MAP
 * @arguments field
 * @param points Flags: three columns, name (text or a number), x east and y north of the origin (ft, m), 1 to 5,000 rows.
 * @param format "GPX" for receivers, "KML" or "GeoJSON" for maps.
 * @returns One column of text, the file from its first line to its last. Copy it into a plain text editor and save it in UTF-8 under a name that ends in .gpx, .kml or .geojson.
 * @remarks Degrees on WGS 84 with 9 decimals, a tenth of a millimeter; KML and GeoJSON put longitude first, as they must. A receiver's own error is far greater than the file's. A layout for flags, not a survey.
 * @source GPX 1.1 schema; OGC 07-147r2 (KML 2.2); RFC 7946 (GeoJSON); geodesic of C. F. F. Karney (2013).
 * @errors #VALUE! for an unknown format, a blank or wrong point, a name with a line break, or a point more than 20 km from the origin; the message names the row.
 * @cautions buried lines, overhead wires, roads and buildings
 * @task how do I load the flags into a receiver?
 * @example =IRRIG.STAKE.MAP({"position 1",0,25;"position 2",0,75}, "GPX", 41.5, -97.25, "US")
 */
export function stakeMap(
  points: any[][],
  format: MapFormat,
  latitude: any,
  longitude: any,
  units?: Units,
): any[][] {
  const u = readUnits(units);
  const named = readNamedPoints(u, points);
  const chosen = readChoice("format", format, FORMATS);
  const origin = readOrigin(latitude, longitude);
  const waypoints = named.map(({ name, ...point }, i) => ({
    name,
    ...toDegrees(origin, point, `points row ${i + 1}`),
  }));
  return mapFile(chosen, waypoints).map((line) => [line]);
}
