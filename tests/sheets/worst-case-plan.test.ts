import { ask, closeWorkbook, inputsOf, STATIC, SURGE, type Typed } from "../support/asked-workbook";

/** A plan is searched anew for every value that is tried. */
jest.setTimeout(400000);

afterAll(closeWorkbook);

describe.each(["US", "SI"] as const)("plan (%s)", (system) => {
  const us = system === "US";

  test("the demo passes; a wall too thin for the valves shut fails, in main and in all that is offered", async () => {
    const demo = await ask("plan", system, {});
    expect(demo.failed).toEqual([]);
    expect(demo.answers[0]).toMatch(/^All \d+ checks pass\.$/);
    const main = await ask("plan", system, { MainSDR: 33 });
    expect(main.failed).toContain(STATIC);
    // The search leaves a weak size out; where all are weak it says which limit is in the way.
    const all = await ask("plan", system, {
      LineSDRs: [[41], [41], [41]],
      FeederSDRs: [[41], [41]],
    });
    expect(all.failed).toContain(STATIC);
  });

  test("the pump's shut-off head, a deep point and low ground raise the static pressure", async () => {
    const before = (await ask("plan", system, {})).value("StaticPressure") as number;
    const curve = inputsOf("plan", system, "PumpCurve");
    const higher = curve.map(([flow, head]) => [flow, flow === 0 ? head * 1.6 : head]);
    expect((await ask("plan", system, { PumpCurve: higher })).failed).toContain(STATIC);
    const deep = await ask("plan", system, { Drop: us ? 80 : 25 });
    expect(deep.value("StaticPressure")).toBeGreaterThan(before);
    const downhill = await ask("plan", system, { Slope: -4 });
    expect(downhill.value("StaticPressure")).toBeGreaterThan(before);
    const slammed = await ask("plan", system, { Closure: 0 });
    expect(slammed.failed).toContain(SURGE);
  });

  test("a plan that cannot be had says which limit to move, once, and nothing else is judged", async () => {
    const tight: readonly Readonly<Record<string, Typed>>[] = [
      { Limit: 0.02 },
      { Wind: us ? 30 : 48 },
    ];
    for (const typed of tight) {
      const { answers, failed, says, values } = await ask("plan", system, typed);
      expect(says("A plan within every limit")).toMatch(
        /^No plan keeps to every limit\. Move this one: .+ is [\d.]+, and the cheapest plan without that limit comes to [\d.]+\.$/,
      );
      expect(answers[0]).toContain("Move this one");
      for (const name of failed.slice(1).filter((other) => other !== "Prices"))
        expect(says(name)).toBe("Not judged: there is no plan.");
      expect(typeof values.QuoteTotal).toBe("string");
      for (const answer of answers.slice(1)) expect(answer).toMatch(/^No answer/);
    }
    const none = await ask("plan", system, { Limit: 0.02, Wind: us ? 30 : 48 });
    expect(none.says("A plan within every limit")).toMatch(
      /leaving out any one of them gives none/,
    );
  });

  test("a row that there is not is named; drawing, bill and flags follow the row that is", async () => {
    const beyond = await ask("plan", system, { Chosen: 5 });
    expect(beyond.says("Row chosen")).toMatch(
      new RegExp(`^Row 5 is chosen and there are ${us ? 3 : 4} plans`),
    );
    // A main that carries three lines, so that a row has another number of them.
    const main = { MainSize: 110 };
    const first = await ask("plan", system, main);
    const third = await ask("plan", system, { ...main, Chosen: us ? 4 : 3 });
    for (const name of ["ChosenLines", "QuoteTotal", "FlagRows", "BillTubing", "Turns"])
      expect([name, third.value(name)]).not.toEqual([name, first.value(name)]);
  });

  test("a round of one day asks for more lines than the main carries: no such plan is offered, and the main is named", async () => {
    const hurried = await ask("plan", system, { RoundLimit: 1 });
    expect(hurried.says("A plan within every limit")).toMatch(
      /^No plan keeps to every limit\..+Or move this one: flow in the main \((gpm|m³\/h)\) is [\d.]+, /,
    );
    for (const name of hurried.failed.slice(1))
      expect(hurried.says(name)).toBe("Not judged: there is no plan.");
    // Bore area by the speed allowed (continuity); the main's bore stands on the page.
    const { value } = hurried;
    const bore = (value("MainInside") as number) * (us ? 0.0254 : 0.001);
    const speed = us ? 5 * 0.3048 : 1.5;
    const carried = (Math.PI / 4) * bore ** 2 * speed * (us ? 15850.323 : 3600);
    expect(value("FlowLimit")).toBeCloseTo(carried, 2);
    const limits = hurried.value("PlanLimits") as (string | number | null)[][];
    const main = limits.find(([name]) => String(name).startsWith("pump flow"));
    expect(main?.[2]).toBeGreaterThan(3 * carried);
  });

  test("a pump that gives less than the main carries is the limit, and is named", async () => {
    const most = us ? 60 : 13;
    const weak = await ask("plan", system, { MostPumpFlow: most });
    expect(weak.value("FlowLimit")).toBe(most);
    expect(weak.says("A plan within every limit")).toMatch(
      /this one: pump flow \((gpm|m³\/h)\) is (60|13),/,
    );
    expect(weak.says("A plan within every limit")).not.toContain("main");
  });

  test("a lower speed in the lines is a limit of theirs alone, and is named by itself", async () => {
    const slow = await ask("plan", system, { GreatestSpeed: us ? 3 : 0.9 });
    expect(slow.value("FlowLimit")).toBe((await ask("plan", system, {})).value("FlowLimit"));
    expect(slow.says("A plan within every limit")).toMatch(/Move this one: speed \((ft|m)\/s\) is/);
  });

  test("spot heights that leave a corner out name the corner, not a limit", async () => {
    const [east, north] = us ? [630, 700] : [196, 210];
    const short = await ask("plan", system, {
      SpotsTyped: [
        [0, 0, 2],
        [east - 30, 0, 1],
        [east - 30, north, 3],
        [0, north, 4],
      ],
    });
    expect(short.says("A plan within every limit")).toBe(
      "Spot heights do not reach corner 2 and 1 more: on the page Field, type a height there or farther out, or leave all heights blank.",
    );
    expect(short.answers[0]).toContain("do not reach corner 2");
  });

  test("an irregular field with trees and heights: every run on its own ground", async () => {
    const k = us ? 1 : 0.3;
    const round = (rows: readonly (readonly number[])[]) =>
      rows.map((row) => row.map((value) => Math.round(value * k)));
    const plan = await ask("plan", system, {
      CornersTyped: round([
        [0, 0],
        [640, 20],
        [700, 380],
        [520, 660],
        [180, 700],
        [-40, 300],
      ]),
      Obstacles: round([[330, 340, 40]]),
      SpotsTyped: round([
        [-200, -200, 4],
        [900, -200, 0],
        [900, 900, 8],
        [-200, 900, 10],
        [330, 330, 7],
      ]),
      LeastCoverage: 0.8,
      MainSize: 110,
      GreatestSpeed: us ? 6 : 1.8,
      MainSpeed: us ? 6 : 1.8,
    });
    expect(plan.says("A plan within every limit")).toBe("OK");
    const solved = (plan.value("Solved") as (number | null)[][]).filter(([at]) => at !== null);
    const runs = (plan.value("Runs") as (number | null)[][]).filter(([at]) => at !== null);
    expect(solved.map((row) => row.slice(0, 2))).toEqual(runs.map((row) => row.slice(0, 2)));
    expect(runs.some(([, run]) => run === 2)).toBe(true);
    expect(new Set(solved.map((row) => Number(row[4]).toFixed(2))).size).toBeGreaterThan(3);
    expect(Math.min(...solved.map((row) => Number(row[4])))).toBeGreaterThan(
      (plan.value("ChosenLowest") as number) - (us ? 0.05 : 0.5),
    );
  });
});
