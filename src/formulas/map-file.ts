import type { Place } from "./geodesic";

/** A named place for a receiver or a map. */
export interface Waypoint extends Place {
  readonly name: string;
}

export type MapFormat = "GPX" | "KML" | "GeoJSON";

/** The lines of a map file, in its text's order. */
export function mapFile(format: MapFormat, waypoints: readonly Waypoint[]): string[] {
  return WRITERS[format](waypoints);
}

const WRITERS: Readonly<Record<MapFormat, (waypoints: readonly Waypoint[]) => string[]>> = {
  GPX: gpx,
  KML: kml,
  GeoJSON: geoJson,
};

const XML = '<?xml version="1.0" encoding="UTF-8"?>';

/** GPX 1.1, the exchange format of receivers: a waypoint each. */
function gpx(waypoints: readonly Waypoint[]): string[] {
  return [
    XML,
    '<gpx version="1.1" creator="Fieldsum" xmlns="http://www.topografix.com/GPX/1/1">',
    ...waypoints.map(
      (waypoint) =>
        `  <wpt lat="${latitudeOf(waypoint)}" lon="${longitudeOf(waypoint)}"><name>${escaped(waypoint.name)}</name></wpt>`,
    ),
    "</gpx>",
  ];
}

/** KML 2.2 (OGC 07-147r2): a placemark each, longitude first. */
function kml(waypoints: readonly Waypoint[]): string[] {
  return [
    XML,
    '<kml xmlns="http://www.opengis.net/kml/2.2">',
    "  <Document>",
    ...waypoints.map(
      (waypoint) =>
        `    <Placemark><name>${escaped(waypoint.name)}</name><Point><coordinates>${longitudeOf(waypoint)},${latitudeOf(waypoint)}</coordinates></Point></Placemark>`,
    ),
    "  </Document>",
    "</kml>",
  ];
}

/** GeoJSON (RFC 7946): a feature each, longitude first. */
function geoJson(waypoints: readonly Waypoint[]): string[] {
  return [
    '{"type":"FeatureCollection","features":[',
    ...waypoints.map((waypoint, i) => {
      const comma = i + 1 < waypoints.length ? "," : "";
      const point = `{"type":"Point","coordinates":[${longitudeOf(waypoint)},${latitudeOf(waypoint)}]}`;
      const name = JSON.stringify(waypoint.name);
      return `{"type":"Feature","properties":{"name":${name}},"geometry":${point}}${comma}`;
    }),
    "]}",
  ];
}

/** A tenth of a millimeter, and no power of ten in the text, which readers of these files refuse. */
const DECIMALS = 9;

function latitudeOf({ latitude }: Place): string {
  return plain(latitude);
}

/** GPX counts longitude from −180 to below 180. */
function longitudeOf({ longitude }: Place): string {
  const text = plain(longitude);
  return Number(text) === 180 ? `-${text}` : text;
}

function plain(value: number): string {
  const text = value.toFixed(DECIMALS);
  return Number(text) === 0 ? (0).toFixed(DECIMALS) : text;
}

const ENTITIES: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&apos;",
};

function escaped(text: string): string {
  return text.replace(/[&<>"']/g, (sign) => ENTITIES[sign]);
}
