import { readyMadeSheets } from "../../src/sheets";
import { readAddress, readRange } from "../../src/sheets/kit/address";
import type { Allowed, UnitSystem } from "../../src/sheets/kit/definition";
import { Chance } from "../support/chance";
import {
  ask,
  closeWorkbook,
  inputsOf,
  pagesOf,
  STATIC,
  SURGE,
  type Typed,
} from "../support/asked-workbook";

/** A plan is searched anew for every value that is tried. */
jest.setTimeout(400000);

afterAll(closeWorkbook);

const plans = readyMadeSheets.flatMap(({ id }) =>
  (["US", "SI"] as const).map((system) => ({ id, system })),
);

/** Those about one line, whose inputs have the same names; a plan's own cases stand in worst-case-plan. */
const lines = plans.filter(({ id }) => id !== "plan");

describe.each(lines)("$id ($system)", ({ id, system }) => {
  test("the demo passes, and one thin wall anywhere fails it", async () => {
    const demo = await ask(id, system, {});
    expect(demo.failed).toEqual([]);
    expect(demo.answers[0]).toMatch(/^All \d+ checks pass\.$/);
    const thinner: readonly Readonly<Record<string, Typed>>[] = [
      { MainSDR: 26 },
      { FeederSDR: 26 },
      { SDRs: [[26], [17]] },
      { SDRs: [[17], [26]] },
    ];
    for (const thin of thinner) {
      const { failed, answers } = await ask(id, system, thin);
      expect([thin, failed.includes(STATIC)]).toEqual([thin, true]);
      expect(answers[0]).toContain(STATIC);
    }
  });

  test("a weaker material fails what the stronger one passes, and the label says which it is", async () => {
    const { failed, value } = await ask(id, system, { Material: "PE2708" });
    expect(failed).toContain(STATIC);
    expect(value("PipeRating")).toBeLessThan(
      (await ask(id, system, {})).value("PipeRating") as number,
    );
  });

  test("the line's own fall adds to the static pressure, and surge to that", async () => {
    const level = await ask(id, system, {});
    const fall = system === "US" ? 60 : 18;
    const down = await ask(id, system, { Rise: -fall });
    const drop = level.value("DeepestFall") as number;
    expect(down.value("DeepestFall")).toBeGreaterThan(Math.max(drop, fall - 1));
    expect(down.value("StaticPressure")).toBeGreaterThan(level.value("StaticPressure") as number);
    for (const { value } of [level, down]) {
      expect(value("WithSurge")).toBeGreaterThan(value("StaticPressure") as number);
    }
    const slammed = await ask(id, system, { Closure: 0 });
    expect(slammed.value("WithSurge")).toBeGreaterThan(level.value("WithSurge") as number);
    expect(slammed.failed).toContain(SURGE);
  });

  test("a pump with more shut-off head raises the static pressure", async () => {
    const curve = inputsOf(id, system, "PumpCurve");
    const higher = curve.map(([flow, head]) => [flow, flow === 0 ? head * 1.5 : head]);
    const { failed } = await ask(id, system, { PumpCurve: higher });
    expect(failed).toContain(STATIC);
  });

  test("a stronger wind fails the spacing", async () => {
    const windy: Readonly<Record<string, Typed>> =
      id === "season" ? { WeatherWind: 30 } : { Wind: 30 };
    expect((await ask(id, system, windy)).failed).toContain("Spacing and the wind");
  });

  test("a set that does not fit the day says so, and nothing follows from it", async () => {
    const { answers, value, says } = await ask(id, system, { DayHours: 5 });
    expect(says("Set and the day")).toMatch(
      /^A set of \d+\.\d hours and its move of 0\.75 do not fit/,
    );
    // The line at the top tells the cause, not a check that only waits for it.
    expect(answers[0]).toMatch(/\. A set of \d+\.\d hours and its move/);
    expect(says("Days and the crop")).toBe("Not judged: the set does not fit the day.");
    expect(value("RoundDays")).toBe("set too long");
    for (const answer of answers)
      expect(String(answer)).not.toMatch(/0 sets? a day|0 days|too long lines/);
  });
});

/** The first number of a range. */
function first(range: unknown): number {
  return Number((range as readonly (readonly unknown[])[])[0][0]);
}

test("a pump curve that no pump can have passes no check of the pump", async () => {
  const twice = await ask("line-layout", "US", {
    PumpCurve: [
      [0, 168],
      [0, 166],
    ],
  });
  expect(twice.failed).toEqual(expect.arrayContaining(["Pump and lines", STATIC, SURGE]));
  const unshut = await ask("line-layout", "US", { PumpCurve: [[10, 168]] });
  expect(unshut.failed).toEqual([STATIC, SURGE]);
  expect(unshut.says(STATIC)).toBe(
    "The pump curve has no point at zero flow: type the shut-off head in its first row.",
  );
  const short = await ask("line-layout", "US", { Lines: 4 });
  expect(short.says("Pump and lines")).toContain("the pump gives");
  const spent = await ask("line-layout", "US", { Lines: 8 });
  expect(spent.failed).toContain("Pump and lines");
});

test("a pump that is asked too much or too little, or drives more than its motor, fails", async () => {
  const checks = async (typed: Readonly<Record<string, Typed>>) =>
    (await ask("season", "US", typed)).failed;
  expect(await checks({ Motor: 7.5 })).toEqual(["Motor and the pump"]);
  expect(await checks({ LeastPumpFlow: 70 })).toEqual(["Least flow, fewest lines"]);
  // The pond falls: the suction gives out first where the flow is highest.
  expect(await checks({ SuctionLift: 11 })).toEqual(["Suction, a cap off"]);
  expect(await checks({ SuctionLift: 20 })).toContain("Suction, any number of lines");
  expect(await checks({ PumpEfficiency: 0.75 })).toContain("Efficiency and the sheet");
  expect(await checks({ RequiredSuction: 5 })).toContain("NPSH required and the sheet");
  expect(await checks({ CleanLoss: 3 })).toContain("Filter clean and dirty");
  expect(await checks({ MainSDR: 26 })).toContain("Check valve and the rating");
});

test("a pond that falls short in one month is short, and the month is named", async () => {
  const { failed, says } = await ask("season", "US", { Pond: 2500000 });
  expect(failed).toEqual(["Pond and the season", "Pond, month by month"]);
  expect(says("Pond, month by month")).toMatch(/^The pond is short of .+ gal, most in \w+:/);
  const dry = await ask("season", "US", { SeasonNet: 10 });
  expect(dry.failed).toEqual(["Season and the months"]);
  const hot = await ask("season", "US", { MonthUse: [[2.4], [3.9], [4.8], [7.5]] });
  expect(hot.failed).toContain("Peak use and the plan");
});

test("days are rounded up: thirteen positions for four lines take four days", async () => {
  const { value } = await ask("line-layout", "US", { Positions: 13, Lines: 4 });
  expect(value("RoundDays")).toBe(4);
});

test("the pond that does not last the season fails it", async () => {
  const { failed, says } = await ask("season", "US", { Pond: 2600000 });
  expect(failed).toContain("Pond and the season");
  expect(says("Pond and the season")).toMatch(
    /^The pond lasts \d+ days of irrigating; the season needs \d+ days/,
  );
});

test("what stays in the low spots is towed", async () => {
  const { value } = await ask("season", "US", {});
  const dry = await ask("season", "US", {
    Ground: [[3], [2.8], [2.6], [1.9], [1.1], [0.9], [0.7], [0]],
  });
  expect(dry.value("Trapped")).toBe(0);
  const water = (value("TowWeight") as number) - (dry.value("TowWeight") as number);
  // A US gallon of water weighs 8.34 lb at its densest.
  expect(water / (value("Trapped") as number)).toBeCloseTo(8.345, 2);
});

test("flushing reaches its velocity in the widest tubing, and turns by the stiffest size", async () => {
  const { value } = await ask("season", "US", {});
  expect(value("FarVelocity")).toBeGreaterThan(value("FlushSpeed") as number);
  const thin = await ask("season", "US", { SDRs: [[26], [17]] });
  expect(thin.value("BendRadius")).toBeGreaterThan(value("BendRadius") as number);
  expect(value("FittedBendRadius")).toBeGreaterThan(value("BendRadius") as number);
});

test("most sprinklers in one size keep every limit: slope, lowest pressure, velocity", async () => {
  const most = async (typed: Readonly<Record<string, Typed>>) =>
    (await ask("line-layout", "US", typed)).value("MostHeads");
  const asLaid = first(await most({}));
  expect(first(await most({ Rise: 10 }))).toBeLessThan(asLaid);
  expect(first(await most({ GreatestSpeed: 3 }))).toBeLessThan(asLaid);
  expect(first(await most({ Lowest: 44 }))).toBeLessThan(asLaid);
});

test("an item without a price stops the quote, is named, and leaves no figure", async () => {
  const { failed, says, value, answers } = await ask("quote", "US", {
    Costs: [[465], [null]],
  });
  expect(failed).toEqual(["Prices"]);
  expect(says("Prices")).toMatch(/^There is no price for tubing, 63 mm, roll of 300 ft: type it/);
  expect(typeof value("QuoteTotal") === "number").toBe(false);
  expect(answers.join(" ")).not.toMatch(/Total [\d,]+/);
});

test("where two workbooks answer one question they answer alike", async () => {
  const asked: Awaited<ReturnType<typeof ask>>[] = [];
  for (const { id } of readyMadeSheets) asked.push(await ask(id, "US", {}));
  // A plan has a line of its own, and the field, the pump and the day in common.
  const shown = (name: string, digits: number) =>
    new Set(
      asked
        .filter(({ values }) => name in values)
        .map(({ value }) => (value(name) as number).toFixed(digits)),
    );
  for (const [name, digits] of [
    ["SetHours", 1],
    ["FarPressure", 1],
    ["Inlet", 1],
    ["LineCU", 2],
    ["Efficiency", 2],
    ["Energy", 1],
    ["StaticPressure", 1],
    ["RoundDays", 0],
    ["NetDepth", 1],
    ["SeasonDepth", 1],
  ] as const) {
    expect([name, [...shown(name, digits)]]).toEqual([name, [expect.any(String)]]);
  }
});

/** What can be made weaker, deeper or windier, and how far: each value worse than the one before. */
const WORSE: Readonly<Record<string, { US: readonly Typed[]; SI: readonly Typed[] }>> = {
  MainSDR: { US: [21, 26, 33], SI: [21, 26, 33] },
  FeederSDR: { US: [21, 26, 33], SI: [21, 26, 33] },
  SDRs: {
    US: [
      [[21], [21]],
      [[33], [33]],
    ],
    SI: [
      [[21], [21]],
      [[33], [33]],
    ],
  },
  Material: { US: ["PE80", "PE2708"], SI: ["PE80", "PE2708"] },
  WallTemperature: { US: [110, 130], SI: [40, 50] },
  Drop: { US: [40, 60], SI: [12, 20] },
  LowestRise: { US: [-40, -60], SI: [-12, -20] },
  Rise: { US: [-30, -70], SI: [-9, -20] },
  Wind: { US: [12, 40], SI: [20, 65] },
};
const WATCHED = [STATIC, SURGE, "Spacing and the wind"];

/** Weaker, deeper, windier, one after the other in seeded orders: what has failed still fails. */
test.each(plans)(
  "$id ($system): no weakening turns a failed check into OK",
  async ({ id, system }) => {
    const chance = new Chance(20261127);
    const pages = pagesOf(id, system);
    const names = new Set(
      pages.flatMap((page) => [
        ...page.cells.flatMap(({ name, role }) => (role === "input" && name ? [name] : [])),
        ...(page.names ?? []).map(({ name }) => name),
      ]),
    );
    const steps = Object.entries(WORSE).filter(([name]) => names.has(name));
    expect(steps.length).toBeGreaterThan(4);
    let failures = 0;
    for (let walk = 0; walk < (system === "US" ? 2 : 1); walk++) {
      const typed: Record<string, Typed> = {};
      const at = new Map<string, number>();
      let before: readonly string[] = [];
      for (let step = 0; step < 6; step++) {
        const [name, worse] = chance.pick(steps);
        const next = Math.min((at.get(name) ?? -1) + 1, worse[system].length - 1);
        at.set(name, next);
        typed[name] = worse[system][next];
        const now = (await ask(id, system, typed)).failed.filter((check) =>
          WATCHED.includes(check),
        );
        expect([typed, now]).toEqual([typed, expect.arrayContaining([...before])]);
        before = now;
      }
      failures += before.length;
    }
    expect(failures).toBeGreaterThan(0);
  },
);

/** Figures in money, by name. */
const MONEY = [
  "TubingTotal",
  "QuoteTotal",
  "UnitCost",
  "EnergyCost",
  "LabourCost",
  "WaterCost",
  "CheapestOK",
];

interface Bad {
  readonly name: string;
  readonly label: string;
  readonly value: Typed;
}

/** Every input of a workbook, those of a table too, with values that it must refuse. */
function bad(id: string, system: UnitSystem): Bad[] {
  return pagesOf(id, system).flatMap((page) => {
    const ranges = (page.names ?? []).map(({ name, range }) => ({ name, ...readRange(range) }));
    return page.cells.flatMap(({ at, role, name, label = "", allowed }): Bad[] => {
      if (role !== "input" || allowed === undefined) return [];
      const place = readAddress(at);
      const own = name ?? `${page.name}!${at}`;
      const range = ranges.find(
        (one) =>
          place.row >= one.row &&
          place.row < one.row + one.rows &&
          place.column >= one.column &&
          place.column < one.column + one.columns,
      );
      // The cells of a named range are set through it: those above keep what they hold.
      if (name === undefined && range !== undefined) {
        if (place.row !== range.row || place.column !== range.column) return [];
        return refused(allowed).map((value) => ({ name: range.name, label, value: [[value]] }));
      }
      return refused(allowed).map((value) => ({ name: own, label, value }));
    });
  });
}

function refused(allowed: Allowed): (string | number | null)[] {
  if ("text" in allowed) return allowed.optional === true ? [] : [null];
  if ("list" in allowed) return ["no such thing", ...(allowed.optional === true ? [] : [null])];
  return [
    // An optional 0 is a blank, as hosts hand blanks over.
    ...(allowed.optional === true && allowed.low === 1 ? [] : [allowed.low - 1]),
    allowed.high + 1,
    "22 acres",
    ...(allowed.whole === true ? [allowed.low + 0.5] : []),
    ...(allowed.optional === true ? [] : [null]),
  ];
}

function expectRefused(
  what: unknown,
  labels: readonly string[],
  { answers, failed, values }: Awaited<ReturnType<typeof ask>>,
  checks: number,
): void {
  const fault = String(values.InputFault);
  expect([what, labels.some((label) => fault.startsWith(`${label} must be `))]).toEqual([
    what,
    true,
  ]);
  expect([what, failed.length]).toEqual([what, checks]);
  expect([what, answers[0]]).toEqual([what, `Fix first: ${fault}`]);
  for (const answer of answers.slice(1))
    expect([what, answer]).toEqual([what, "Fix the input first."]);
  for (const name of MONEY) {
    if (name in values)
      expect([what, name, typeof values[name]]).not.toEqual([what, name, "number"]);
  }
}

describe.each(plans)("$id ($system): an input outside its limits", ({ id, system }) => {
  const all = bad(id, system);
  const checks = pagesOf(id, system).flatMap(({ cells }) =>
    cells.filter(({ role }) => role === "check"),
  ).length;

  test("is named once, first; nothing is judged and no money shown", async () => {
    const chance = new Chance(system === "US" ? 20261126 : 20261127);
    // One bad value for each input; which one differs from input to input.
    const names = [...new Set(all.map(({ name }) => name))];
    const each = names.map((name) => chance.pick(all.filter((one) => one.name === name)));
    for (const { name, label, value } of each) {
      expectRefused([name, value], [label], await ask(id, system, { [name]: value }), checks);
    }
    for (let pair = 0; pair < 4; pair++) {
      const two = [0, 1].map(() => chance.pick(all));
      const typed = Object.fromEntries(two.map(({ name, value }) => [name, value]));
      expectRefused(
        typed,
        two.map(({ label }) => label),
        await ask(id, system, typed),
        checks,
      );
    }
  });
});
