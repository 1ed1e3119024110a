import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { XMLParser, XMLValidator } from "fast-xml-parser";
import { callTable } from "../support/host";
import { expectWithin, published } from "../support/published";
import { hasCommand } from "../support/sheet-files";

const NAMES = ["position 1", "A & <b> \"q\" 'x' é 😀", "]]>", 7];
const flags = [
  [NAMES[0], 0, 0],
  [NAMES[1], 2000 * Math.sin(Math.PI / 3), 1000],
  [NAMES[2], -250.5, 3],
  [NAMES[3], 1e-7, -400],
];
const file = (format: string, latitude: number, longitude: number) =>
  callTable("STAKE.MAP", flags, format, latitude, longitude, "SI")
    .map(([line]) => line)
    .join("\n");
const degrees = (latitude: number, longitude: number) =>
  callTable(
    "FIELD.DEGREES",
    flags.map(([, x, y]) => [x, y]),
    latitude,
    longitude,
    "SI",
  ).slice(1) as number[][];

const xml = new XMLParser({
  ignoreAttributes: false,
  attributeNamePrefix: "@",
  parseTagValue: false,
  parseAttributeValue: false,
  isArray: (name) => ["wpt", "Placemark"].includes(name),
});
const names = NAMES.map(String);

/** What libxml2's validator finds in a file, by the schemas in tests/support/map-schemas. */
function schemaErrors(schema: "gpx" | "kml", text: string): string {
  const path = join(__dirname, "../support/map-schemas", `${schema}.xsd`);
  const { status, stderr } = spawnSync("xmllint", ["--noout", "--nonet", "--schema", path, "-"], {
    input: text,
    encoding: "utf8",
  });
  return status === 0 ? "" : stderr;
}

/** At most 9 decimals and no power of ten: xsd:decimal takes none. */
const DECIMAL = /^-?\d{1,3}\.\d{9}$/;

/** Every place read back is the flag's, to the last decimal. */
function expectPlaces(read: readonly [string, string][], latitude: number, longitude: number) {
  const expected = degrees(latitude, longitude);
  expect(read).toHaveLength(expected.length);
  read.forEach(([readLatitude, readLongitude], i) => {
    expect(readLatitude).toMatch(DECIMAL);
    expect(readLongitude).toMatch(DECIMAL);
    expectWithin(Number(readLatitude), expected[i][0], 5.1e-10);
    expectWithin(Number(readLongitude), expected[i][1], 5.1e-10);
  });
}

published(
  {
    // Read whole in copies that public repositories keep, not in the publisher's own file.
    source: "GPX 1.1 schema (gpx.xsd), in copies",
    where:
      "gpxType, wptType, latitudeType, longitudeType: root, version, creator, waypoints of a name each, -180 ≤ lon < 180; read back by fast-xml-parser",
    seen: "read in a secondary text",
  },
  () => {
    const origins: [number, number][] = [
      [41.5, -97.25],
      [-33, 179.9999],
      [0, 0],
    ];
    for (const origin of origins) {
      const text = file("GPX", ...origin);
      expect(XMLValidator.validate(text)).toBe(true);
      const { "?xml": declared, gpx, ...others } = xml.parse(text);
      expect(others).toEqual({});
      expect(declared).toEqual({ "@version": "1.0", "@encoding": "UTF-8" });
      const { wpt, ...attributes } = gpx;
      expect(attributes).toEqual({
        "@version": "1.1",
        "@creator": "Fieldsum",
        "@xmlns": "http://www.topografix.com/GPX/1/1",
      });
      const waypoints = wpt as Record<string, string>[];
      for (const waypoint of waypoints) {
        expect(Object.keys(waypoint).sort()).toEqual(["@lat", "@lon", "name"]);
        const longitude = Number(waypoint["@lon"]);
        expect(longitude >= -180 && longitude < 180).toBe(true);
      }
      expect(waypoints.map(({ name }) => name)).toEqual(names);
      expectPlaces(
        waypoints.map((waypoint) => [waypoint["@lat"], waypoint["@lon"]]),
        ...origin,
      );
    }
    // Half a nanodegree east of it, the 180th meridian would round to what the schema leaves out.
    const edge = callTable("STAKE.MAP", [["east", 0, 0]], "GPX", 0, 179.9999999999)[2][0];
    expect(edge).toContain('lon="-180.000000000"');
  },
);

published(
  {
    // Read in the copy that a library for such files keeps; that longitude comes first is the
    // standard's text (OGC 07-147r2), read in references to it and not in the standard.
    source: "OGC KML 2.2 schema (ogckml22.xsd of 2008-01-23), in a copy",
    where:
      "KmlType, DocumentType, AbstractFeatureType, PlacemarkType, PointType, coordinatesType: kml, Document, Placemark of name and Point, coordinates lon,lat; read back by fast-xml-parser",
    seen: "read in a secondary text",
  },
  () => {
    const text = file("KML", 41.5, -97.25);
    expect(XMLValidator.validate(text)).toBe(true);
    const { "?xml": declared, kml, ...others } = xml.parse(text);
    expect(others).toEqual({});
    expect(declared).toEqual({ "@version": "1.0", "@encoding": "UTF-8" });
    expect(Object.keys(kml).sort()).toEqual(["@xmlns", "Document"]);
    expect(kml["@xmlns"]).toBe("http://www.opengis.net/kml/2.2");
    expect(Object.keys(kml.Document)).toEqual(["Placemark"]);
    const placemarks = kml.Document.Placemark as { name: string; Point: { coordinates: string } }[];
    for (const placemark of placemarks) {
      // The schema's order: what a feature is called stands before its geometry.
      expect(Object.keys(placemark)).toEqual(["name", "Point"]);
      expect(Object.keys(placemark.Point)).toEqual(["coordinates"]);
    }
    expect(placemarks.map(({ name }) => name)).toEqual(names);
    expectPlaces(
      placemarks.map(({ Point }) => {
        const [longitude, latitude] = Point.coordinates.split(",");
        return [latitude, longitude];
      }),
      41.5,
      -97.25,
    );
  },
);

published(
  {
    source: "RFC 7946, The GeoJSON Format",
    where:
      "sections 3.1.1, 3.1.2, 3.2, 3.3 and 4: a collection of point features, longitude first; read back by JSON.parse",
    seen: "read",
  },
  () => {
    const text = file("GeoJSON", 41.5, -97.25);
    const collection = JSON.parse(text);
    expect(Object.keys(collection).sort()).toEqual(["features", "type"]);
    expect(collection.type).toBe("FeatureCollection");
    const expected = degrees(41.5, -97.25);
    expect(collection.features).toHaveLength(expected.length);
    collection.features.forEach((feature: unknown, i: number) => {
      expect(feature).toEqual({
        type: "Feature",
        properties: { name: names[i] },
        geometry: {
          type: "Point",
          coordinates: [expect.closeTo(expected[i][1], 9), expect.closeTo(expected[i][0], 9)],
        },
      });
    });
  },
);

(hasCommand("xmllint", "--version") ? describe : describe.skip)(
  "by libxml2's validator (needs xmllint)",
  () => {
    const SCHEMAS = { GPX: "gpx", KML: "kml" } as const;
    const formats = ["GPX", "KML"] as const;

    test.each(formats)(
      "%s is valid, names of any letters and either side of the globe",
      (format) => {
        for (const [latitude, longitude] of [
          [41.5, -97.25],
          [-33, 179.9999],
          [0, 0],
          [89.9, 12],
        ])
          expect(schemaErrors(SCHEMAS[format], file(format, latitude, longitude))).toBe("");
      },
    );

    // That the schemas here would say so.
    const wrong: [(typeof formats)[number], string, (text: string) => string][] = [
      ["GPX", "version", (text) => text.replace('version="1.1"', 'version="1.0"')],
      ["GPX", "lat", (text) => text.replace(/lat="[^"]*"/, 'lat="90.1"')],
      ["GPX", "lon", (text) => text.replace(/lon="[^"]*"/, 'lon="180.0"')],
      ["GPX", "lat", (text) => text.replace(/lat="[^"]*"/, 'lat="1e-7"')],
      ["GPX", "creator", (text) => text.replace(' creator="Fieldsum"', "")],
      ["GPX", "gpx", (text) => text.replace("/GPX/1/1", "/GPX/1/0")],
      ["KML", "Point", (text) => text.replace(/(<name>.*?<\/name>)(<Point>.*?<\/Point>)/, "$2$1")],
      ["KML", "coordinates", (text) => text.replace(/(\d),(-?\d)/, "$1, $2")],
      [
        "KML",
        "coordinates",
        (text) => text.replace(/<coordinates>[^,]*,/, "<coordinates>-197.25,"),
      ],
      ["KML", "kml", (text) => text.replace("kml/2.2", "kml/2.1")],
    ];
    test.each(wrong)("a wrong %s file is found by its %s (case %#)", (format, place, spoil) => {
      const text = file(format, 41.5, -97.25);
      expect(spoil(text)).not.toBe(text);
      expect(schemaErrors(SCHEMAS[format], spoil(text))).toContain(place);
    });
  },
);
