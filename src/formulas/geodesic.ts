import { Geodesic } from "geographiclib-geodesic";

/** A place on the WGS 84 ellipsoid, in degrees as receivers give and take them. */
export interface Place {
  /** North positive. */
  readonly latitude: number;
  /** East positive. */
  readonly longitude: number;
}

/** A place and a direction. */
export interface Heading extends Place {
  /** Clockwise from true north. */
  readonly bearing: number;
}

/**
 * Where a straight line on the ground leads: the direct geodesic problem on WGS 84, by C. F. F.
 * Karney, Algorithms for geodesics, Journal of Geodesy 87 (2013), good to nanometers. The bearing
 * of the result is that of the line at its end, a little turned as the meridians draw together.
 * Example: 2000 m due east along the equator are 0.017 966 31 degrees of longitude.
 */
export function travel(start: Heading, distance: number): Heading {
  const end = Geodesic.WGS84.Direct(start.latitude, start.longitude, start.bearing, distance);
  return {
    latitude: end.lat2 as number,
    longitude: end.lon2 as number,
    bearing: end.azi2 as number,
  };
}

/** The same place, turned to the right by an angle in degrees. */
export function turnRight(heading: Heading, angle: number): Heading {
  return { ...heading, bearing: heading.bearing + angle };
}

/** Distance, m, and bearing, degrees, of the shortest line from one place to another (the inverse problem). */
export function between(
  from: Place,
  to: Place,
): { readonly distance: number; readonly bearing: number } {
  const line = Geodesic.WGS84.Inverse(from.latitude, from.longitude, to.latitude, to.longitude);
  return { distance: line.s12 as number, bearing: line.azi1 as number };
}
