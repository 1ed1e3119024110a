import type { OpenWorkbook, Setting } from "../../build/open-workbook";
import { readyMadeSheets } from "../../src/sheets";
import type { Page, UnitSystem } from "../../src/sheets/kit/definition";
import { Chance } from "../support/chance";
import { loadWorkbooks } from "../support/open-workbook";

const { openWorkbook } = loadWorkbooks();

type Typed = Setting;

/** One workbook is open at a time: the next one asked closes it. */
let open: { readonly key: string; readonly book: OpenWorkbook } | undefined;

async function ask(id: string, system: UnitSystem, typed: Readonly<Record<string, Typed>>) {
  const key = `${id} ${system}`;
  if (open?.key !== key) {
    open?.book.close();
    open = { key, book: await openWorkbook(id, system) };
  }
  const { book } = open;
  await book.set(typed);
  const checks = book.checks();
  const values = book.values();
  return {
    answers: book.answers(),
    values,
    value: (name: string) => values[name],
    failed: checks.filter(({ ok }) => !ok).map(({ name }) => name),
    says: (name: string) => checks.find((check) => check.name === name)?.text,
  };
}

afterAll(() => open?.book.close());

function pagesOf(id: string, system: UnitSystem): readonly Page[] {
  const sheet = readyMadeSheets.find((one) => one.id === id);
  if (sheet === undefined) throw new Error(`no sheet ${id}`);
  return sheet.pages(system);
}

const STATIC = "Static pressure and the rating";
const SURGE = "With surge, against the whole rating";

const plans = readyMadeSheets.flatMap(({ id }) =>
  (["US", "SI"] as const).map((system) => ({ id, system })),
);

describe.each(plans)("$id ($system)", ({ id, system }) => {
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
    const curve = level(id, system, "PumpCurve");
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

/** What stands in a range of inputs, from the definition. */
function level(id: string, system: UnitSystem, name: string): number[][] {
  const pages = pagesOf(id, system);
  for (const page of pages) {
    const range = page.names?.find((one) => one.name === name)?.range;
    if (range === undefined) continue;
    const [, from, top, to, bottom] = /^([A-Z])(\d+):([A-Z])(\d+)$/.exec(range) ?? [];
    return Array.from({ length: Number(bottom) - Number(top) + 1 }, (_, i) =>
      [from, to].map((letter) =>
        Number(page.cells.find(({ at }) => at === `${letter}${Number(top) + i}`)?.value),
      ),
    );
  }
  throw new Error(`no range ${name}`);
}

test("days are rounded up: thirteen positions for four lines take four days", async () => {
  const { value } = await ask("line-layout", "US", { Positions: 13, Lines: 4 });
  expect(value("RoundDays")).toBe(4);
});

test("the pond that does not last the season fails it", async () => {
  const { failed, says } = await ask("season", "US", { Pond: 2600000 });
  expect(failed).toEqual(["Pond and the season"]);
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
  const shown = (name: string, digits: number) =>
    new Set(asked.map(({ value }) => (value(name) as number).toFixed(digits)));
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
  ] as const) {
    expect([name, [...shown(name, digits)]]).toEqual([name, [expect.any(String)]]);
  }
});

/** Weaker, deeper, windier: what failed before still fails. */
test("no weakening turns a failed check into OK", async () => {
  const weaker: readonly Readonly<Record<string, Typed>>[] = [
    { MainSDR: 33 },
    { FeederSDR: 33 },
    { SDRs: [[33], [33]] },
    { Material: "PE2708" },
    { WallTemperature: 120 },
    { Drop: 60 },
    { LowestRise: -50 },
    { Rise: -70 },
    { Wind: 40 },
  ];
  const watched = [STATIC, SURGE, "Spacing and the wind"];
  const starts = [{ FeederSDR: 26 }, { Drop: 50 }, { Wind: 12 }] as const;
  for (const start of starts) {
    const before = (await ask("line-layout", "US", start)).failed.filter((name) =>
      watched.includes(name),
    );
    expect(before.length).toBeGreaterThan(0);
    for (const more of weaker) {
      // Along the same cell the worse of the two stands already.
      if (Object.keys(more).some((name) => name in start)) continue;
      const after = (await ask("line-layout", "US", { ...start, ...more })).failed;
      expect([start, more, after]).toEqual([start, more, expect.arrayContaining(before)]);
    }
  }
});

/** Figures in money, by name. */
const MONEY = ["TubingTotal", "QuoteTotal", "UnitCost", "EnergyCost", "LabourCost", "CheapestOK"];

/** Every named input of a workbook with values that it must refuse. */
function bad(id: string): { name: string; label: string; value: Typed }[] {
  const pages = pagesOf(id, "US");
  return pages.flatMap(({ cells }) =>
    cells.flatMap(({ role, name, label = "", allowed }) => {
      if (role !== "input" || name === undefined || allowed === undefined) return [];
      if ("text" in allowed) return [{ name, label, value: null }];
      const values: Typed[] =
        "list" in allowed
          ? ["no such thing", null]
          : [
              // An optional 0 is a blank, as hosts hand blanks over.
              ...(allowed.optional === true && allowed.low === 1 ? [] : [allowed.low - 1]),
              allowed.high + 1,
              "22 acres",
              ...(allowed.whole === true ? [allowed.low + 0.5] : []),
              ...(allowed.optional === true ? [] : [null]),
            ];
      return values.map((value) => ({ name, label, value }));
    }),
  );
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

describe.each(readyMadeSheets.map(({ id }) => id))("%s: an input outside its limits", (id) => {
  const all = bad(id);
  const checks = pagesOf(id, "US").flatMap(({ cells }) =>
    cells.filter(({ role }) => role === "check"),
  ).length;

  test("is named once, first; nothing is judged and no money shown", async () => {
    const chance = new Chance(20261126);
    // One bad value for each input; which one differs from input to input.
    const each = [...new Set(all.map(({ name }) => name))].map((name) => {
      const own = all.filter((one) => one.name === name);
      return chance.pick(own);
    });
    for (const { name, label, value } of each) {
      expectRefused([name, value], [label], await ask(id, "US", { [name]: value }), checks);
    }
    for (let pair = 0; pair < 6; pair++) {
      const two = [0, 1].map(() => chance.pick(all));
      const typed = Object.fromEntries(two.map(({ name, value }) => [name, value]));
      expectRefused(
        typed,
        two.map(({ label }) => label),
        await ask(id, "US", typed),
        checks,
      );
    }
  });
});
