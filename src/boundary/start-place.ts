import type { Heading } from "../formulas/geodesic";
import { type Cell, isBlank, single } from "./cell";
import { between } from "./limits";
import { readNumber } from "./numbers";

/**
 * Where a layout starts on the map and which way it runs. Latitude and longitude both blank (or 0,
 * as hosts hand blanks over) are no start: then only distances are asked for.
 */
export function readStart(latitude: Cell, longitude: Cell, bearing: Cell): Heading | undefined {
  if (isNone("latitude", latitude) && isNone("longitude", longitude)) return undefined;
  return {
    latitude: readNumber("latitude", latitude, between(-90, 90), "degrees"),
    longitude: readNumber("longitude", longitude, between(-180, 180), "degrees"),
    bearing: readNumber("bearing", bearing, between(-360, 360), "degrees"),
  };
}

function isNone(name: string, cell: Cell): boolean {
  const value = single(name, cell);
  return isBlank(value) || value === 0;
}
