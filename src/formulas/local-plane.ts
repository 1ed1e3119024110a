import { InvalidInput } from "../ground/domain-error";
import { between, type Place, travel } from "./geodesic";
import type { Point } from "./polygon";

/** Farther than this from its origin a plan is no longer flat, and no field is so large, m. */
export const FARTHEST = 20_000;

/**
 * The plane around an origin on the WGS 84 ellipsoid: every place by its true distance and bearing
 * from the origin (the azimuthal equidistant plane). Lengths across the way to the origin come out
 * long by d²/6R² of themselves: 7 parts in ten thousand million 400 m out, 2 in a million at 20 km.
 *
 * Example: 0.001 degrees east of (0, 0) is x = 111.319 491 m, y = 0.
 */
export function toPlane(origin: Place, place: Place, name: string): Point {
  const { distance, bearing } = between(origin, place);
  requireNear(distance, name);
  const angle = (bearing * Math.PI) / 180;
  return { x: distance * Math.sin(angle), y: distance * Math.cos(angle) };
}

/** The way back. */
export function toDegrees(origin: Place, { x, y }: Point, name: string): Place {
  const distance = Math.hypot(x, y);
  requireNear(distance, name);
  const bearing = (Math.atan2(x, y) * 180) / Math.PI;
  const { latitude, longitude } = travel({ ...origin, bearing }, distance);
  return { latitude, longitude };
}

function requireNear(distance: number, name: string): void {
  if (!(distance <= FARTHEST)) {
    throw new InvalidInput(
      `${name} is ${Math.round(distance / 1000)} km from the origin; at most ${FARTHEST / 1000} km is flat enough for a plan`,
    );
  }
}
