import type { Place } from "../formulas/geodesic";
import type { Cell } from "./cell";
import { MOST_POINTS } from "./field";
import { between } from "./limits";
import { checked, readNumber } from "./numbers";
import { readTable } from "./rows-of-table";

const LATITUDE = between(-90, 90);
const LONGITUDE = between(-180, 180);

/** Where x and y are counted from, on the map. */
export function readOrigin(latitude: Cell, longitude: Cell): Place {
  return {
    latitude: readNumber("latitude", latitude, LATITUDE, "degrees"),
    longitude: readNumber("longitude", longitude, LONGITUDE, "degrees"),
  };
}

/** Places on the map. */
export function readPlaces(cell: Cell): Place[] {
  return readTable("points", cell, {
    columns: "two columns, latitude (degrees) and longitude (degrees)",
    widths: [2],
    least: 1,
    most: MOST_POINTS,
  }).map(([latitude, longitude], i) => ({
    latitude: checked(`points row ${i + 1} latitude`, latitude, LATITUDE, "degrees"),
    longitude: checked(`points row ${i + 1} longitude`, longitude, LONGITUDE, "degrees"),
  }));
}
