import { ask, closeWorkbook, STATIC } from "../support/asked-workbook";

/** The row that is chosen of a plan, and what hangs on it. */
jest.setTimeout(400000);

afterAll(closeWorkbook);

describe.each(["US", "SI"] as const)("row chosen of a plan (%s)", (system) => {
  const us = system === "US";
  const [east, north] = us ? [630, 700] : [196, 210];
  const rows = (value: unknown) =>
    (value as (number | string | null)[][]).filter(([at]) => typeof at === "number");

  test("blank, zero, a half and one too many are named, and leave no plan, bill or money", async () => {
    for (const [chosen, got] of [
      [null, "a blank"],
      [0, "0"],
      [1.5, "1.5"],
      [6, "6"],
    ] as const) {
      const { answers, value } = await ask("plan", system, { Chosen: chosen });
      expect(answers[0]).toBe(
        `Fix first: Row of the best plans that is chosen must be a whole number from 1 to 5; got ${got}.`,
      );
      expect(answers.slice(1)).toEqual(["Fix the input first.", "Fix the input first."]);
      expect(typeof value("QuoteTotal")).toBe("string");
    }
  });

  test("a row that was there goes stale when an input leaves fewer plans", async () => {
    const last = rows((await ask("plan", system, {})).value("PlanNumbers")).length;
    const before = await ask("plan", system, { Chosen: last });
    expect(before.says("Row chosen")).toBe("OK");
    expect(typeof before.value("QuoteTotal")).toBe("number");
    // The closest spacing and move alone are offered.
    const first = (name: string) =>
      (before.value(name) as number[][]).map((row, at) => (at === 0 ? row : [null]));
    const after = await ask("plan", system, {
      Chosen: last,
      Spacings: first("Spacings"),
      Moves: first("Moves"),
    });
    const left = rows(after.value("PlanNumbers")).length;
    expect(left).toBeLessThan(last);
    expect(after.says("Row chosen")).toMatch(
      left === 0
        ? /^Not judged: there is no plan\.$/
        : new RegExp(`^Row ${last} is chosen and there are ${left} plans`),
    );
    expect(typeof after.value("QuoteTotal")).toBe("string");
    expect(after.answers[1]).toMatch(/^No answer/);
  });

  test("a price left blank shows no money in the quote and names the item", async () => {
    const { value } = await ask("plan", system, {});
    const [items, costs] = [value("Items") as string[][], value("Costs") as number[][]];
    const head = items.findIndex(([item]) => item.startsWith("sprinkler"));
    const quote = await ask("plan", system, {
      Costs: costs.map((row, at) => (at === head ? [null] : row)),
    });
    expect(quote.failed).toEqual(["Prices"]);
    expect(quote.says("Prices")).toMatch(/^There is no price for sprinkler/);
    expect(quote.value("QuoteTotal")).toBe("#N/A");
    // A price that the search counts with is an input of its page.
    for (const name of ["HeadPrice", "LinePrice", "EnergyPrice", "Wage"]) {
      const { answers } = await ask("plan", system, { [name]: null });
      expect([name, answers[0]]).toEqual([name, expect.stringMatching(/^Fix first: /)]);
      expect(answers[1]).toBe("Fix the input first.");
    }
  });

  test("the lowest corner's static pressure counts, also where no line lies, and may be more than the pipe bears", async () => {
    const spots = (low: number) => [
      [-10, -10, low],
      [2 * east, -10, 0],
      [2 * east, 2 * north, 0],
      [-10, 2 * north, 0],
    ];
    const { value } = await ask("plan", system, {});
    const drop = value("Drop") as number;
    const level = value("StaticPressure") as number;
    for (const deep of us ? [40, 60] : [12, 18]) {
      const { value: now } = await ask("plan", system, { SpotsTyped: spots(-deep) });
      // 2.311 ft of water a psi; 9.789 kPa a meter at 20 °C.
      const column = (deep - drop) * (us ? 1 / 2.311 : 9.789);
      expect((now("StaticPressure") as number) - level).toBeCloseTo(column, us ? 1 : 0);
    }
    const deepest = await ask("plan", system, { SpotsTyped: spots(us ? -320 : -100) });
    expect(deepest.failed).not.toEqual([]);
    expect(deepest.says(STATIC)).not.toBe("OK");
  });

  test("the weakest run decides: the checks are of the lowest, highest and most uneven of all runs", async () => {
    const plan = await ask("plan", system, {
      SpotsTyped: [
        [-10, -10, 0],
        [2 * east, -10, 0],
        [2 * east, 2 * north, us ? 12 : 4],
        [-10, 2 * north, 0],
      ],
    });
    const solved = rows(plan.value("Solved"));
    const column = (at: number) => solved.map((row) => Number(row[at - 1]));
    expect(Math.max(...column(10)) - Math.min(...column(10))).toBeGreaterThan(us ? 0.5 : 3);
    const [lowest, chosen] = [Math.min(...column(5)), plan.value("ChosenLowest") as number];
    expect(lowest).toBeGreaterThan(chosen - (us ? 0.05 : 0.5));
    // The inlet is that which the run that asks for most wants.
    expect(plan.value("ChosenInlet")).toBeCloseTo(Math.max(...column(10)), us ? 1 : 0);
    const uneven = Math.max(...column(8));
    const tight = await ask("plan", system, { Chosen: 1, Limit: uneven - 0.005 });
    const now = rows(tight.value("Solved")).map((row) => Number(row[7]));
    if (now.length > 0) expect(Math.max(...now)).toBeLessThanOrEqual(uneven - 0.005);
    else expect(tight.says("A plan within every limit")).toMatch(/Move this one/);
  });

  test("water that is thrown beyond the edge is said with its area, on the page that warns of roads", async () => {
    const { value } = await ask("plan", system, {
      CornersTyped: [
        [0, 0],
        [east, north / 10],
        [east, north],
        [0, north],
      ],
      LeastCoverage: 0.8,
    });
    const summary = value("Summary") as [string, number][];
    const [label, thrown] = summary[6];
    expect(label).toMatch(/^thrown beyond the edge/);
    const of = rows(value("Runs")).map((row) => Number(row[9]));
    expect(thrown).toBeGreaterThan(0);
    expect(thrown).toBeCloseTo(
      of.reduce((sum, area) => sum + area, 0),
      9,
    );
  });
});
