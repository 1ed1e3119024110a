import { execFileSync } from "node:child_process";
import { readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { XMLParser, XMLValidator } from "fast-xml-parser";
import type { Browser, Page } from "playwright-core";
import type { Grid } from "../../src/trial/grid";
import { launchBrowser, openPage, serve, type Misdeeds, type Served } from "../support/browser";

declare const trialGrid: Grid;

const PATIENCE = { timeout: 120000 };

/** Some eight acres, six corners, rising to the north. */
const CORNERS = [
  [0, 0],
  [590, 0],
  [620, 330],
  [520, 640],
  [140, 690],
  [0, 400],
];
const TREES = { x: 300, y: 300, radius: 30 };
const SPOTS = [
  [0, 0, 0],
  [590, 0, 4],
  [620, 330, 5],
  [520, 640, 7],
  [140, 690, 6],
  [0, 400, 3],
  [300, 300, 4],
];
const ORIGIN = { latitude: 40.5, longitude: -98.5 };

let browser: Browser;
let site: Served;
let page: Page;
let misdeeds: Misdeeds;

beforeAll(async () => {
  browser = await launchBrowser();
  site = await serve();
  ({ page, misdeeds } = await openPage(browser, `${site.address}#plan/us/Field`, {
    viewport: { width: 1280, height: 800 },
    acceptDownloads: true,
  }));
  await page.waitForSelector('html[data-grid="ready"]', PATIENCE);
});

afterAll(async () => {
  await browser?.close();
  await site?.close();
});

async function show(name: string): Promise<void> {
  await page.locator(".tabs").getByRole("button", { name, exact: true }).click();
}

/** As with the keys, each field left by the next. */
async function type(values: Readonly<Record<string, string | number>>): Promise<void> {
  for (const [label, value] of Object.entries(values))
    await page.getByLabel(label, { exact: true }).first().fill(String(value));
  await page.evaluate(() => (document.activeElement as HTMLElement).blur());
  await settled();
}

async function settled(): Promise<void> {
  await page.waitForTimeout(300);
  await page.evaluate(() => trialGrid.quiet());
}

function typedCorners(): Record<string, number> {
  return Object.fromEntries(
    CORNERS.flatMap(([x, y], i) => [
      [`Corner ${i + 1}: x east, or latitude`, x],
      [`Corner ${i + 1}: y north, or longitude`, y],
    ]),
  );
}

function typedSpots(): Record<string, number> {
  return Object.fromEntries(
    SPOTS.flatMap(([x, y, ground], i) => [
      [`Spot ${i + 1}: x`, x],
      [`Spot ${i + 1}: y`, y],
      [`Spot ${i + 1}: Ground`, ground],
    ]),
  );
}

async function answers(): Promise<string> {
  await show("Plan");
  return page.locator(".answers").innerText();
}

/** The words of each sheet of paper. */
async function paper(): Promise<string[]> {
  const pdf = join(tmpdir(), `fieldsum-plan-${process.pid}.pdf`);
  writeFileSync(pdf, await page.pdf({ format: "Letter", landscape: true }));
  try {
    const text = execFileSync("pdftotext", ["-layout", pdf, "-"], { encoding: "utf8" });
    return text.split("\f").filter((sheet) => sheet.trim() !== "");
  } finally {
    rmSync(pdf);
  }
}

/** Rows of the table of flags: two ends of every run, and the hydrants. */
async function flagCount(): Promise<number> {
  const first = await page
    .locator("#reading table tbody tr")
    .evaluateAll((rows) => rows.map((row) => row.firstElementChild?.textContent ?? ""));
  return first.filter((name) => /^(position|hydrant) \d/.test(name)).length;
}

test("a rectangle needs two numbers only", async () => {
  await type({
    "Rectangle: length from west to east": 500,
    "Rectangle: length from south to north": 600,
  });
  expect(await answers()).toContain("All 20 checks pass.");
  await expect(page.locator(".plan-picture").isVisible()).resolves.toBe(true);
});

describe("on the drawing", () => {
  const corner = (number: number) =>
    page.getByRole("button", { name: new RegExp(`^Corner ${number}, `) });

  async function placeOf(number: number): Promise<number[]> {
    const name = (await corner(number).getAttribute("aria-label")) ?? "";
    return [...name.matchAll(/(\d+) ft (?:east|north)/g)].map(([, length]) => Number(length));
  }

  /** Area, as the plan says it, and runs. */
  async function said(): Promise<number[]> {
    const text = await page.locator("#reading").innerText();
    const found = /([\d.]+) acres?, \d+ positions, (\d+) runs/.exec(text);
    return [Number(found?.[1]), Number(found?.[2])];
  }

  const acres = (corners: readonly (readonly number[])[]) => shoelace(corners) / 2 / 43560;

  test("a corner is dragged: the rectangle becomes corners when asked, area and runs follow, Undo takes it back whole", async () => {
    await show("Plan");
    const [, before] = await said();
    expect(await placeOf(3)).toEqual([500, 600]);
    await corner(3).scrollIntoViewIfNeeded();
    const box = await corner(3).boundingBox();
    const [x, y] = [(box?.x ?? 0) + (box?.width ?? 0) / 2, (box?.y ?? 0) + (box?.height ?? 0) / 2];
    const drag = async () => {
      await page.mouse.move(x, y);
      await page.mouse.down();
      await page.mouse.move(x - 60, y + 100, { steps: 3 });
      await page.mouse.up();
    };
    await drag();
    await page.getByRole("button", { name: "Leave the rectangle" }).click();
    expect(await placeOf(3)).toEqual([500, 600]);
    await drag();
    await page.getByRole("button", { name: "Turn it into corners" }).click();
    const moved = await placeOf(3);
    // Sixty pixels of some five hundred, and a hundred, in whole feet.
    expect(moved[0]).toBeGreaterThan(350);
    expect(moved[0]).toBeLessThan(460);
    expect(moved[1]).toBeLessThan(540);
    await settled();
    const corners = [[0, 0], [500, 0], moved, [0, 600]];
    const [area, runs] = await said();
    expect(area).toBeCloseTo(acres(corners), 2);
    expect(runs).toBeLessThanOrEqual(before);
    // The arrow keys move it, Escape takes it back before anything is worked out.
    await corner(3).focus();
    await page.keyboard.press("Shift+ArrowLeft");
    await page.keyboard.press("ArrowUp");
    expect(await placeOf(3)).toEqual([moved[0] - 10, moved[1] + 1]);
    await page.keyboard.press("Escape");
    expect(await placeOf(3)).toEqual(moved);
    await page.getByRole("button", { name: "Undo" }).click();
    await settled();
    // The page with the cells that were taken back comes to the front, and has the drawing too.
    expect(await placeOf(3)).toEqual([500, 600]);
    await show("Plan");
    expect(await said()).toEqual([expect.closeTo((500 * 600) / 43560, 2), before]);
  });

  test("lines turn with the bearing", async () => {
    const bearing = page.getByLabel("Lines bear (degrees from north)");
    // Aslant, this small rectangle would not be covered, and there would be no plan to draw.
    for (const degrees of [0, 90]) {
      await bearing.fill(String(degrees));
      await bearing.blur();
      await settled();
      const path = (await page.locator(".drawn-line").first().getAttribute("d")) ?? "";
      const [near, far] = path
        .slice(1)
        .split("L")
        .map((point) => point.split(" ").map(Number));
      // From the near end, clockwise from north; the picture's y is down.
      const turned = (Math.atan2(far[0] - near[0], near[1] - far[1]) * 180) / Math.PI;
      expect(turned).toBeCloseTo(degrees, 0);
    }
  });
});

test("six corners, a clump of trees and spot heights become a plan that holds", async () => {
  await show("Field");
  await type({
    ...typedCorners(),
    "Obstacle 1: x": TREES.x,
    "Obstacle 1: y": TREES.y,
    "Obstacle 1: Radius": TREES.radius,
    ...typedSpots(),
    "Latitude of x 0, y 0": ORIGIN.latitude,
    "Longitude of x 0, y 0": ORIGIN.longitude,
  });
  const said = await answers();
  expect(said).toContain("All 20 checks pass.");
  expect(said).toMatch(/\d lines? of \d+ sprinklers every \d+ ft/);
});

test("it is printed: drawing, specification, runs, checks, cost in its parts and signature", async () => {
  await show("Plan");
  const svg = page.locator(".plan-picture");
  // The edge as typed, closed: shoelace area over the drawing's square against that of the corners.
  const drawn = await svg
    .locator(".drawn-edge")
    .first()
    .evaluate((path) =>
      (path.getAttribute("d") ?? "")
        .slice(1)
        .split("L")
        .map((point) => point.split(" ").map(Number)),
    );
  const six = drawn.slice(0, CORNERS.length);
  const ratio = Math.hypot(six[1][0] - six[0][0], six[1][1] - six[0][1]) / 590;
  expect(shoelace(six) / ratio ** 2 / shoelace(CORNERS)).toBeCloseTo(-1, 2);
  const sheets = (await paper()).join("\n");
  for (const words of [
    "Plan of Bluestem Flat",
    "All 20 checks pass.",
    "north is up, the bar is",
    "Best plans",
    "capital, energy and labor",
    "Lowest nozzle",
    "Static pressure and the rating",
    "What holds the plan back",
    "As installed",
    "Test pressure",
  ])
    expect(sheets).toContain(words);
});

test("the quote follows: a bill of that plan, with a total", async () => {
  await show("Quote");
  await settled();
  const text = await page.locator("#reading").innerText();
  const total = /Total[^\d]*([\d,]+\.\d\d|[\d,]+)/.exec(text)?.[1];
  expect(Number(total?.replace(/,/g, ""))).toBeGreaterThan(1000);
  expect(text).toMatch(/Made for\s+2 lines of 13 sprinklers/);
  expect(text).toContain("hydrant connection with valve, gauge and screen");
  const cells = await page
    .locator("#reading table")
    .first()
    .locator("tbody tr")
    .evaluateAll((rows) =>
      rows.map((row) => [...row.children].map((cell) => cell.textContent ?? "")),
    );
  const lines = cells
    .map((row) => Number((row.at(-1) ?? "").replace(/,/g, "")))
    .filter((value) => value > 0);
  expect(lines.length).toBeGreaterThan(8);
});

describe("Save flags", () => {
  interface Flag {
    readonly name: string;
    readonly latitude: number;
    readonly longitude: number;
  }

  const xml = new XMLParser({
    ignoreAttributes: false,
    attributeNamePrefix: "@",
    isArray: (tag) => tag === "wpt" || tag === "Placemark",
  });
  const READERS: Readonly<Record<string, (text: string) => Flag[]>> = {
    GPX: (text) => {
      expect(XMLValidator.validate(text)).toBe(true);
      const { gpx } = xml.parse(text) as {
        gpx: { wpt: { name: string; "@lat": string; "@lon": string }[] };
      };
      return gpx.wpt.map((point) => ({
        name: point.name,
        latitude: Number(point["@lat"]),
        longitude: Number(point["@lon"]),
      }));
    },
    KML: (text) => {
      expect(XMLValidator.validate(text)).toBe(true);
      const { kml } = xml.parse(text) as {
        kml: { Document: { Placemark: { name: string; Point: { coordinates: string } }[] } };
      };
      return kml.Document.Placemark.map(({ name, Point }) => {
        const [longitude, latitude] = Point.coordinates.split(",").map(Number);
        return { name, latitude, longitude };
      });
    },
    GeoJSON: (text) => {
      const { type, features } = JSON.parse(text) as {
        type: string;
        features: {
          properties: { name: string };
          geometry: { type: string; coordinates: [number, number] };
        }[];
      };
      expect(type).toBe("FeatureCollection");
      return features.map(({ properties, geometry }) => ({
        name: properties.name,
        latitude: geometry.coordinates[1],
        longitude: geometry.coordinates[0],
      }));
    },
  };
  const seen: Flag[][] = [];

  test.each(Object.keys(READERS))(
    "%s is saved, and read back by a general parser",
    async (format) => {
      await show("Flags");
      await page.getByLabel("Format of the map file").selectOption(format);
      await settled();
      const [download] = await Promise.all([
        page.waitForEvent("download", PATIENCE),
        page.getByRole("button", { name: "Save flags" }).click(),
      ]);
      expect(download.suggestedFilename()).toBe(`flags.${format.toLowerCase()}`);
      const flags = READERS[format](readFileSync(await download.path(), "utf8"));
      expect(flags.length).toBe(await flagCount());
      for (const { latitude, longitude } of flags) {
        // 700 ft are 0.00192 degrees of latitude and, at 40.5 degrees, 0.00252 of longitude (a degree
        // of latitude is 111 km long); hydrants stand at the edge.
        expect(latitude).toBeGreaterThan(ORIGIN.latitude - 0.0002);
        expect(latitude).toBeLessThan(ORIGIN.latitude + 0.0021);
        expect(longitude).toBeGreaterThan(ORIGIN.longitude - 0.0002);
        expect(longitude).toBeLessThan(ORIGIN.longitude + 0.0024);
      }
      expect(flags.map(({ name }) => name).join()).toMatch(/position 1, near end.*hydrant 1/);
      seen.push(flags);
      for (const [i, flag] of flags.entries()) {
        expect(flag.name).toBe(seen[0][i].name);
        expect(flag.latitude).toBeCloseTo(seen[0][i].latitude, 6);
        expect(flag.longitude).toBeCloseTo(seen[0][i].longitude, 6);
      }
    },
  );
});

test("a plan that cannot be had says which limit to move, and moving it gives the plan", async () => {
  await show("Field");
  await type({ speed: 3 });
  const said = await answers();
  const limit =
    /No plan keeps to every limit\. Move this one: speed \(ft\/s\) is 3, and the cheapest plan without that limit comes to ([\d.]+)\./.exec(
      said,
    );
  expect(limit).not.toBeNull();
  // The cause is not hidden behind the checks that wait for it.
  expect(said).not.toContain("Row chosen");
  await show("Field");
  await type({ speed: Number(limit?.[1]) + 0.01 });
  expect(await answers()).not.toContain("No plan keeps");
  await show("Field");
  await type({ speed: 5 });
});

describe("corners in degrees", () => {
  /** No whole number of moves high, so that a hair of the degrees makes no position more. */
  const PLACES = CORNERS.map(([x, y]) => [x, Math.min(y, 688)]);
  /** Degrees of a foot at the origin, by the radii of WGS 84 (semi-axis and eccentricity as published). */
  const sine = Math.sin((ORIGIN.latitude * Math.PI) / 180);
  const across = 6378137 / Math.sqrt(1 - 0.00669437999014 * sine ** 2);
  const along = (across * (1 - 0.00669437999014)) / (1 - 0.00669437999014 * sine ** 2);
  const degreesOfFoot = {
    north: ((0.3048 / along) * 180) / Math.PI,
    east: ((0.3048 / (across * Math.sqrt(1 - sine ** 2))) * 180) / Math.PI,
  };
  const inDegrees = ([x, y]: readonly number[]) => [
    Number((ORIGIN.latitude + y * degreesOfFoot.north).toFixed(8)),
    Number((ORIGIN.longitude + x * degreesOfFoot.east).toFixed(8)),
  ];
  const corner = (number: number) =>
    page.getByRole("button", { name: new RegExp(`^Corner ${number}, `) });

  async function typedCorner(number: number): Promise<number[]> {
    await show("Field");
    const read = (label: string) =>
      page.getByLabel(`Corner ${number}: ${label}`, { exact: true }).first().inputValue();
    return [Number(await read("x east, or latitude")), Number(await read("y north, or longitude"))];
  }

  async function feet(number: number): Promise<number[]> {
    const name = (await corner(number).getAttribute("aria-label")) ?? "";
    return [...name.matchAll(/([\d.]+) ft (?:east|north)/g)].map(([, length]) => Number(length));
  }

  test("are drawn where x and y would be", async () => {
    await show("Field");
    await page.getByLabel("Corners below are typed as").selectOption("degrees");
    // No row just touches the trees: a hair of the degrees would make one run two.
    await type({ "Obstacle 1: Radius": TREES.radius - 1 });
    await type(
      Object.fromEntries(
        PLACES.flatMap((place, i) => {
          const [latitude, longitude] = inDegrees(place);
          return [
            [`Corner ${i + 1}: x east, or latitude`, latitude],
            [`Corner ${i + 1}: y north, or longitude`, longitude],
          ];
        }),
      ),
    );
    expect(await answers()).toContain("All 20 checks pass.");
    for (const [i, place] of PLACES.entries()) expect(await feet(i + 1)).toEqual(place);
  });

  test("one is dragged and moved by keys: its row is typed in degrees, the others keep their digits, Undo takes it back", async () => {
    await show("Plan");
    await corner(3).scrollIntoViewIfNeeded();
    const box = await corner(3).boundingBox();
    const [x, y] = [(box?.x ?? 0) + (box?.width ?? 0) / 2, (box?.y ?? 0) + (box?.height ?? 0) / 2];
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x - 40, y + 30, { steps: 3 });
    await page.mouse.up();
    await settled();
    const dragged = await feet(3);
    expect(dragged[0]).toBeLessThan(PLACES[2][0] - 20);
    expect(dragged[1]).toBeLessThan(PLACES[2][1] - 15);
    await corner(3).focus();
    await page.keyboard.press("Shift+ArrowUp");
    await page.keyboard.press("ArrowLeft");
    await page.evaluate(() => (document.activeElement as SVGElement).blur());
    await settled();
    const moved = await feet(3);
    expect(moved).toEqual([dragged[0] - 1, dragged[1] + 10]);
    const [latitude, longitude] = await typedCorner(3);
    const due = inDegrees(moved);
    // Half of the last digit typed, and what the flat radii leave out.
    expect(Math.abs(latitude - due[0])).toBeLessThan(1e-7);
    expect(Math.abs(longitude - due[1])).toBeLessThan(1e-7);
    expect(String(latitude)).toMatch(/^40\.\d{1,7}$/);
    expect(await typedCorner(2)).toEqual(inDegrees(PLACES[1]));
    await page.getByRole("button", { name: "Undo" }).click();
    await page.getByRole("button", { name: "Undo" }).click();
    await settled();
    expect(await typedCorner(3)).toEqual(inDegrees(PLACES[2]));
  });

  test("one is typed beside the drawing as latitude and longitude, and one that is nowhere near is refused", async () => {
    await show("Plan");
    await corner(3).focus();
    await page.keyboard.press("Enter");
    const latitude = page.getByLabel("Latitude", { exact: true });
    await expect(latitude.evaluate((input) => input === document.activeElement)).resolves.toBe(
      true,
    );
    const [due] = inDegrees([0, PLACES[2][1] - 20]);
    await latitude.fill(String(due));
    await latitude.blur();
    await settled();
    expect((await typedCorner(3))[0]).toBe(due);
    await show("Plan");
    expect(await feet(3)).toEqual([PLACES[2][0], PLACES[2][1] - 20]);
    await corner(3).focus();
    await latitude.fill("41.5");
    await latitude.blur();
    expect(await latitude.getAttribute("aria-invalid")).toBe("true");
    expect(await page.locator(".drawing-said").innerText()).toContain("km from the origin");
    expect((await typedCorner(3))[0]).toBe(due);
  });
});

test("the page asked nobody else and reported no error", () => {
  expect(misdeeds).toEqual({ errors: [], outside: [] });
});

/** Twice the area, positive counterclockwise. */
function shoelace(points: readonly (readonly number[])[]): number {
  return points.reduce((sum, [x, y], i) => {
    const [nextX, nextY] = points[(i + 1) % points.length];
    return sum + x * nextY - nextX * y;
  }, 0);
}
