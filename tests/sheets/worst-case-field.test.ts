import { ask, closeWorkbook, type Typed } from "../support/asked-workbook";

/** What someone may type of a field, and what the plan then says. */
jest.setTimeout(400000);

afterAll(closeWorkbook);

const A_PLAN = "A plan within every limit";

describe.each(["US", "SI"] as const)("field of a plan (%s)", (system) => {
  const us = system === "US";
  const [east, north] = us ? [630, 700] : [196, 210];
  const rectangle = [
    [0, 0],
    [east, 0],
    [east, north],
    [0, north],
  ];
  const said = async (typed: Readonly<Record<string, Typed>>) => {
    const plan = await ask("plan", system, typed);
    return { plan, says: plan.says(A_PLAN) ?? "" };
  };
  const lengths = { EastLength: east, NorthLength: north };

  test("a rectangle needs two numbers only", async () => {
    const bare = {
      ...lengths,
      CornersTyped: [[null, null]],
      Obstacles: [[null, null, null]],
      SpotsTyped: [[null, null, null]],
      Latitude: null,
      Longitude: null,
    };
    const { plan, says } = await said(bare);
    expect(says).toBe("OK");
    expect(plan.failed).toEqual([]);
    const [[, area]] = plan.value("Summary") as [string, number][];
    expect(area).toBeCloseTo((east * north) / (us ? 43560 : 10000), 6);
    for (const name of ["EastLength", "NorthLength"]) {
      const { answers } = await ask("plan", system, { ...bare, [name]: null });
      expect(answers[0]).toMatch(/^Fix first: Rectangle: length from .*; got a blank\.$/);
    }
  });

  test("blank corners between are no corners, a corner half typed is named", async () => {
    const whole = await ask("plan", system, { CornersTyped: rectangle });
    const [first, second, ...others] = rectangle;
    const gaps = await ask("plan", system, {
      CornersTyped: [first, [null, null], second, [null, null], ...others],
    });
    expect(gaps.answers).toEqual(whole.answers);
    expect(gaps.value("Summary")).toEqual(whole.value("Summary"));
    for (const half of [
      [east, null],
      [null, north],
    ]) {
      const { plan, says } = await said({ CornersTyped: [first, half, ...rectangle.slice(2)] });
      expect(says).toMatch(/#VALUE!.*corners row 2 x must be a number/);
      expect(plan.value("QuoteTotal")).toBe("#N/A");
    }
    expect((await said({ CornersTyped: rectangle.slice(0, 2) })).says).toMatch(
      /corners must have 3 to 200 rows; got 2/,
    );
  });

  test("an outline that crosses itself names the edges", async () => {
    const [a, b, c, d] = rectangle;
    const { plan, says } = await said({ CornersTyped: [a, c, b, d] });
    expect(says).toMatch(/corners: edge 1–2 crosses edge 3–4/);
    // All but that of the prices, which wait for no plan.
    expect(plan.failed).toHaveLength(19);
    expect(plan.failed).not.toContain("Prices");
    expect(plan.value("QuoteTotal")).toBe("#N/A");
  });

  test("corners in degrees want an origin, and one that is near", async () => {
    const degrees = [
      [40.5, -98.5],
      [40.5, -98.4976],
      [40.5019, -98.4976],
      [40.5019, -98.5],
    ];
    const typed = { CornersAre: "degrees", CornersTyped: degrees };
    expect((await said(typed)).says).toMatch(/latitude is missing/);
    expect((await said({ ...typed, Latitude: 40.5 })).says).toMatch(/longitude is missing/);
    expect((await said({ ...typed, Latitude: 40.5, Longitude: 98.5 })).says).toMatch(
      /km from the origin/,
    );
    expect((await said({ ...typed, Latitude: 40.5, Longitude: -98.5 })).says).toBe("OK");
  });

  test("an obstacle beyond the edge changes nothing, one on the edge cuts within, one that covers all leaves no room", async () => {
    const none = await ask("plan", system, {});
    const beyond = await ask("plan", system, {
      Obstacles: [[1.5 * east, 1.5 * north, east / 10]],
    });
    expect(beyond.answers).toEqual(none.answers);
    expect(beyond.value("Runs")).toEqual(none.value("Runs"));
    const radius = east / 10;
    const astride = await ask("plan", system, { Obstacles: [[east, north / 2, radius]] });
    expect(astride.says(A_PLAN)).toBe("OK");
    const heads = (astride.value("Heads") as (number | null)[][]).filter(([at]) => at !== null);
    expect(heads.length).toBeGreaterThan(50);
    for (const [, , , , x, y] of heads)
      expect(Math.hypot(Number(x) - east, Number(y) - north / 2)).toBeGreaterThan(radius - 1e-6);
    expect(heads.length).toBeLessThan(
      (none.value("Heads") as (number | null)[][]).filter(([at]) => at !== null).length,
    );
    const { says } = await said({ Obstacles: [[east / 2, north / 2, 2 * east]] });
    expect(says).toBe(
      "No sprinkler has room in the field: on the page Field, look at corners, obstacles and setback.",
    );
  });

  test("an obstacle or a height half typed is named, whichever number is not there", async () => {
    const obstacle = [east / 2, north / 2, 20];
    const spots = [
      [0, 0, 2],
      [2 * east, 0, 1],
      [0, 2 * north, 3],
    ];
    for (const [at, name] of ["x", "y", "radius"].entries()) {
      const half = obstacle.map((value, i) => (i === at ? null : value));
      expect((await said({ Obstacles: [half] })).says).toMatch(
        new RegExp(`obstacles row 1 ${name} is missing`),
      );
    }
    for (const [at, name] of ["x", "y", "height"].entries()) {
      const half = spots[1].map((value, i) => (i === at ? null : value));
      expect((await said({ SpotsTyped: [spots[0], half, spots[2]] })).says).toMatch(
        new RegExp(`spots row 2 ${name} is missing`),
      );
    }
  });
});
