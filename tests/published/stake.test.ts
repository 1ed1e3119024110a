import { callTable } from "../support/host";
import { published } from "../support/published";

/** Distance on the ground between two places a few meters apart at most, m. */
function apart(place: (string | number)[], latitude: number, longitude: number): number {
  const [found, foundLongitude] = place.slice(-2).map(Number);
  const radians = Math.PI / 180;
  const north = (found - latitude) * 111132;
  const east = (foundLongitude - longitude) * 111320 * Math.cos(latitude * radians);
  return Math.hypot(north, east);
}

function expectWithinCentimetre(place: (string | number)[], latitude: number, longitude: number) {
  const distance = apart(place, latitude, longitude);
  if (!(distance <= 0.01)) throw new Error(`${distance * 100} cm away`);
}

published(
  {
    source: "Geoscience Australia, GDA Technical Manual",
    where:
      "worked example of Vincenty's formulae: from 37°57′03.72030″ S, 144°25′29.52440″ E at 306°52′05.37″, 54 972.271 m, to 37°39′10.15610″ S, 143°55′35.38390″ E (GRS 80, the same within 0.1 mm)",
    seen: "read in a secondary text",
  },
  () => {
    const dms = (degrees: number, minutes: number, seconds: number) =>
      degrees + minutes / 60 + seconds / 3600;
    const table = callTable(
      "STAKE.FLAGS",
      1,
      54972.271,
      "SI",
      null,
      -dms(37, 57, 3.7203),
      dms(144, 25, 29.5244),
      dms(306, 52, 5.37),
    );
    expectWithinCentimetre(table[1], -dms(37, 39, 10.1561), dms(143, 55, 35.3839));
  },
);

published(
  {
    source: "SciPy 1.17.1, DOP853 on the geodesic's differential equations (WGS 84)",
    where: "2000 m and 1234.5 m from two places",
    seen: "independent engine",
  },
  () => {
    const far = callTable("STAKE.FLAGS", 40, 50, "SI", null, 41.5, -97.25, 60);
    expectWithinCentimetre(far[40], 41.509001973191644, -97.22925305133565);
    const south = callTable("STAKE.FLAGS", 1, 1234.5, "SI", null, -33.25, 148.75, 215.5);
    expectWithinCentimetre(south[1], -33.25906147619825, 148.74230645692356);
  },
);

published(
  {
    source: "WGS 84 ellipsoid, a 6 378 137 m, 1/f 298.257 223 563",
    where: "2 km along the equator, s = a Δλ, and along the meridian, its radius of curvature",
    seen: "closed form",
  },
  () => {
    const degrees = 180 / Math.PI;
    const east = callTable("STAKE.FLAGS", 1, 2000, "SI", null, 0, 12, 90);
    expectWithinCentimetre(east[1], 0, 12 + (2000 / 6378137) * degrees);
    const e2 = (2 - 1 / 298.257223563) / 298.257223563;
    const middle = 45.009 / degrees; // the radius hardly changes over 2 km
    const radius = (6378137 * (1 - e2)) / (1 - e2 * Math.sin(middle) ** 2) ** 1.5;
    const north = callTable("STAKE.FLAGS", 1, 2000, "SI", null, 45, 10, 0);
    expectWithinCentimetre(north[1], 45 + (2000 / radius) * degrees, 10);
  },
);

published(
  {
    source: "SciPy 1.17.1, DOP853 on the geodesic's differential equations (WGS 84)",
    where: "two positions 90 m apart, a line of 190 m at 90° to the right",
    seen: "independent engine",
  },
  () => {
    const table = callTable("STAKE.POSITIONS", 2, 90, "SI", 190, 52.125, -1.5, 20);
    expectWithinCentimetre(table[1], 52.125, -1.5);
    expectWithinCentimetre(table[3], 52.12576006508967, -1.49955053465849);
    expectWithinCentimetre(table[4], 52.125176005655426, -1.496943572209117);
  },
);
