import { callError, callNumber, callTable } from "../support/host";
import { expectClose } from "../support/published";

type Cells = Record<string, unknown>;

const TERMS: Readonly<Record<string, unknown>> = {
  friction: 140,
  intake: 0.5,
  "net depth": 1.4,
  efficiency: 0.75,
  days: 7,
  "day hours": 12,
  "move hours": 0.75,
  "season depth": 14,
  lift: 18,
  "main loss": 4,
  "head price": 40,
  "line price": 170,
  years: 12,
  interest: 0.06,
  upkeep: 0.02,
  escalation: 0.03,
  "energy price": 0.14,
  wage: 18,
};

const CHART = [
  [35, 3.7],
  [45, 4.2],
  [55, 4.6],
];

const base: Cells = {
  field: [[630, 700]],
  spacings: [[40, 45]],
  moves: [[45, 50]],
  pressures: [[38, 42]],
  sprinklers: CHART.map(([p, q], i) => ["medium", p, q, [90, 94, 96][i]]),
  tubing: [
    ["50 mm", 1.72, 0.7, 145],
    ["63 mm", 2.16, 1.1, 145],
  ],
  feeders: [["75 mm", 2.58, 1.55, 145]],
};

const termsWith = (changed: Cells = {}) =>
  Object.entries({ ...TERMS, ...changed }).filter(([, value]) => value !== undefined);

function cellsOf(changed: Cells): unknown[] {
  const { terms = {}, ...others } = changed as { terms?: Cells };
  const all: Cells = { ...base, ...others };
  const order = ["field", "spacings", "moves", "pressures", "sprinklers", "tubing", "feeders"];
  return [...order.map((name) => all[name]), termsWith(terms)];
}

/** The plans, a record each by the header without its unit. */
function search(changed: Cells = {}, units = "US", ...tail: unknown[]): Cells[] {
  const [headers, ...rows] = callTable("PLAN.SEARCH", ...cellsOf(changed), units, ...tail);
  const names = headers.map((header) => String(header).replace(/ \(.*\)$/, ""));
  return rows.map((row) => Object.fromEntries(row.map((cell, i) => [names[i], cell])));
}

function limits(changed: Cells = {}, ...tail: unknown[]): Map<string, (string | number)[]> {
  const [, ...rows] = callTable("PLAN.LIMITS", ...cellsOf(changed), "US", ...tail);
  return new Map(rows.map(([name, ...values]) => [String(name).replace(/ \(.*\)$/, ""), values]));
}

const error = (changed: Cells, ...tail: unknown[]) =>
  callError("PLAN.SEARCH", ...cellsOf(changed), "US", ...tail);
const message = (changed: Cells, ...tail: unknown[]) => error(changed, ...tail).message;

describe("the best plan of a rectangle, worked out again by the functions for each step", () => {
  const [best] = search();
  const heads = Number(best.heads);
  const line = [
    heads,
    [22.5, ...new Array<number>(heads - 1).fill(45)],
    [
      [2.16, best["larger segments"]],
      [1.72, best["smaller segments"]],
    ],
    CHART,
    "US",
    0,
    null,
    140,
  ];
  const flow = callNumber("LATERAL.FLOW", best.inlet, ...line);

  test("what it is", () => {
    expect(best).toMatchObject({ spacing: 45, move: 50, sprinkler: "medium", lines: 2, heads: 14 });
    expect(best["larger tubing"]).toBe("63 mm");
    expect(best["smaller tubing"]).toBe("50 mm");
    expect(Number(best["larger segments"]) + Number(best["smaller segments"])).toBe(14);
  });

  test("pressures, flow and variation of the line", () => {
    const inlet = callNumber("LATERAL.INLET", best["lowest nozzle pressure"], ...line);
    expectClose(best.inlet, inlet, 1e-8);
    expectClose(best["flow of a line"], flow, 1e-8);
    expectClose(best["flow in all"], 2 * flow, 1e-8);
    const summary = callTable("LATERAL.SUMMARY", best.inlet, ...line);
    const value = (label: string) => summary.find(([name]) => String(name).startsWith(label))?.[1];
    expectClose(best.variation, Number(value("pressure variation")), 1e-7);
    expectClose(best["highest nozzle pressure"], Number(value("highest nozzle")), 1e-8);
  });

  test("sets, hours and lines", () => {
    const rate = callNumber("APPLICATION.RATE", flow / 14, 45, 50);
    expectClose(best.rate, rate, 1e-8);
    expectClose(best.set, callNumber("SET.TIME", 1.4, rate, 0.75), 1e-8);
    expect(best.sets).toBe(callNumber("SET.POSITIONS", 700, 50));
    expect(best["sets a day"]).toBe(callNumber("SET.PERDAY", best.set, 0.75, 12));
    expect(best.lines).toBe(callNumber("SYSTEM.LINES", 14, best["sets a day"], 7));
    expect(best["feeder length"]).toBe(callNumber("FEEDER.LENGTH", 7, 50));
  });

  test("the pump's head and the year's cost", () => {
    const hydrant = callNumber("FEEDER.PRESSURE", best.inlet, flow, 2.58, 150, "US", 0, 140);
    const head = callNumber("PUMP.TDH", hydrant, 18, 4);
    expectClose(best["pump head"], head, 1e-8);
    // Fourteen sets, ten times a season.
    const hours = 14 * 10 * Number(best.set);
    const energy = 0.14 * callNumber("PUMP.ENERGY", flow, head, hours, "electric");
    const labor = 14 * 10 * 0.75 * 18;
    const near = Number(best["larger segments"]) * 45 - 22.5;
    const tubing = 1.1 * near + 0.7 * 45 * Number(best["smaller segments"]);
    const capital = 2 * (tubing + 14 * 40 + 170 + 150 * 1.55);
    const year = Object.fromEntries(
      callTable("COST.YEARLY", capital, 12, 0.06, 0, 0.02, energy, 0.03, labor),
    );
    const threeDigits = (value: unknown) => Number(Number(value).toPrecision(3));
    expect(best.capital).toBe(threeDigits(capital));
    expect(best["capital a year"]).toBe(
      threeDigits(Number(year["capital recovery"]) + Number(year.upkeep)),
    );
    expect(best["energy a year"]).toBe(threeDigits(year.energy));
    expect(best["labor a year"]).toBe(threeDigits(year.labor));
    expect(best["cost a year"]).toBe(threeDigits(year.total));
  });
});

describe("a field of any shape", () => {
  const corners = [
    [0, 0],
    [640, 40],
    [700, 420],
    [420, 640],
    [60, 600],
    [-60, 260],
  ];
  const clump = [[330, 300, 30]];
  const irregular = {
    field: corners,
    terms: { bearing: 80, coverage: 0.6, variation: 0.4, speed: 7 },
  };

  test("is laid out as FIELD.RUNS lays it", () => {
    const [best] = search(irregular, "US", 1, clump);
    const runs = callTable(
      "FIELD.RUNS",
      corners,
      80,
      best.spacing,
      best.move,
      "US",
      null,
      null,
      clump,
    ).slice(1);
    expect(best.sets).toBe(runs.length);
    expect(best.heads).toBe(Math.max(...runs.map((row) => Number(row[7]))));
    const covered = runs.reduce((sum, row) => sum + Number(row[8]), 0);
    expectClose(best["share covered"], covered / callNumber("FIELD.AREA", corners), 1e-9);
  });

  test("is checked over all runs, each on its own ground", () => {
    const spots = [
      [-300, -300, 0],
      [1000, -300, 6],
      [1000, 1000, 14],
      [-300, 1000, 5],
      [300, 300, 2],
    ];
    const [best] = search(irregular, "US", 1, clump, spots);
    const heads = callTable(
      "FIELD.HEADS",
      corners,
      80,
      best.spacing,
      best.move,
      "US",
      null,
      null,
      clump,
      null,
      null,
      spots,
    );
    const solved = callTable(
      "LATERAL.RUNS",
      best.inlet,
      heads,
      best.spacing,
      [
        [2.16, best["larger segments"]],
        [1.72, best["smaller segments"]],
      ],
      CHART,
      "US",
      null,
      140,
    ).slice(1);
    const column = (place: number) => solved.map((row) => Number(row[place]));
    expectClose(Math.min(...column(4)), Number(best["lowest nozzle pressure"]), 1e-7);
    expectClose(best["flow of a line"], Math.max(...column(3)), 1e-7);
    // With fewer lines running the main loses less, so the highest is above this, by no more than that.
    const highest = Math.max(...column(5));
    expect(Number(best["highest nozzle pressure"])).toBeGreaterThanOrEqual(highest - 1e-7);
    expect(Number(best["highest nozzle pressure"])).toBeLessThanOrEqual(highest + 4);
  });

  test("spots that do not reach the lines are named, and so are spots beside a slope", () => {
    const near = [
      [0, 0, 1],
      [100, 0, 1],
      [0, 100, 2],
    ];
    expect(error(irregular, 1, null, near)).toMatchObject({ code: "#N/A" });
    expect(message(irregular, 1, null, near)).toMatch(/^spots do not reach/);
    expect(message({ ...irregular, terms: { slope: 2 } }, 1, null, near)).toBe(
      "terms give a slope and spots give heights: leave one of them blank",
    );
  });
});

describe("the rows", () => {
  test("one for each different plan, cheapest first, those within 3% marked", () => {
    const plans = search(
      { pressures: [[36, 38, 40, 42, 44]], moves: [[45, 47, 48, 49, 50]] },
      "US",
      20,
    );
    expect(plans.length).toBeGreaterThan(3);
    const kinds = plans.map((plan) => [plan.spacing, plan.move, plan.sprinkler, plan.lines].join());
    expect(new Set(kinds).size).toBe(plans.length);
    const costs = plans.map((plan) => Number(plan["cost a year"]));
    expect(costs).toEqual([...costs].sort((a, b) => a - b));
    expect(plans[0]["same as the best"]).toBe("yes");
    plans.forEach((plan, i) => {
      // Costs are shown to three digits, so one at the edge may be either.
      if (Math.abs(costs[i] / costs[0] - 1.03) < 0.005) return;
      expect(plan["same as the best"]).toBe(costs[i] <= 1.03 * costs[0] ? "yes" : "no");
    });
  });

  test("as many as are asked for, five when blank", () => {
    const many = { moves: [[42, 43, 44, 45, 46, 47, 48, 50]] };
    expect(search(many)).toHaveLength(5);
    expect(search(many, "US", 0)).toHaveLength(5);
    expect(search(many, "US", 2)).toEqual(search(many, "US", 7).slice(0, 2));
    expect(message(many, 21)).toBe("count must be a whole number from 1 to 20; got 21");
  });

  test("one size alone leaves the second blank", () => {
    const [plan] = search({ tubing: [["63 mm", 2.3, 1.1, 145]] });
    expect(plan).toMatchObject({
      "larger segments": 14,
      "smaller tubing": "",
      "smaller segments": 0,
    });
  });

  test("SI gives the same plan where all is converted", () => {
    const si: Cells = {
      field: [[630 * 0.3048, 700 * 0.3048]],
      spacings: [[40, 45].map((ft) => ft * 0.3048)],
      moves: [[45, 50].map((ft) => ft * 0.3048)],
      pressures: [[38, 42].map((psi) => psi * 6.894757293168361)],
      sprinklers: CHART.map(([p, q], i) => [
        "medium",
        p * 6.894757293168361,
        q * 0.22712470704,
        [90, 94, 96][i] * 0.3048,
      ]),
      tubing: [
        ["50 mm", 1.72 * 25.4, 0.7 / 0.3048, 145 * 6.894757293168361],
        ["63 mm", 2.16 * 25.4, 1.1 / 0.3048, 145 * 6.894757293168361],
      ],
      feeders: [["75 mm", 2.58 * 25.4, 1.55 / 0.3048, 145 * 6.894757293168361]],
      terms: {
        intake: 12.7,
        "net depth": 1.4 * 25.4,
        "season depth": 14 * 25.4,
        lift: 18 * 0.3048,
        "main loss": 4 * 6.894757293168361,
        speed: 5 * 0.3048,
      },
    };
    const [us] = search({ terms: { speed: 5 } });
    const [metric] = search(si, "SI");
    for (const name of [
      "lines",
      "heads",
      "larger segments",
      "capital",
      "cost a year",
      "held back by",
    ]) {
      expect([name, metric[name]]).toEqual([name, us[name]]);
    }
    expectClose(metric["pump head"], Number(us["pump head"]) * 0.3048, 1e-8);
    expectClose(metric.variation, Number(us.variation), 1e-8);
  });
});

describe("limits", () => {
  test("what each costs; a limit that saves nothing shows the best plan", () => {
    const [best] = search();
    const table = limits();
    expect([...table.keys()]).toEqual([
      "variation",
      "speed",
      "intake",
      "spacing, share of the wetted diameter",
      "move, share of the wetted diameter",
      "pressure beyond the chart",
      "day hours",
      "days",
      "share of rating",
      "share covered",
    ]);
    expect(table.get("intake")?.slice(2)).toEqual([best["cost a year"], 0]);
    const [now, needed, cost, saving] = table.get("day hours") as number[];
    expect(now).toBe(12);
    expect(needed).toBeGreaterThan(12);
    expect(saving).toBeGreaterThan(0);
    // And the plan with that day costs just that.
    const [looser] = search({ terms: { "day hours": Math.ceil(needed) } });
    expect(looser["cost a year"]).toBe(cost);
    expect(best["held back by"]).toBe("day hours");
  });

  test("a plan that cannot be had says which limit to move, and to what", () => {
    const tight = { terms: { intake: 0.1 } };
    const text = message(tight);
    expect(error(tight).code).toBe("#N/A");
    expect(text).toMatch(
      /^no plan keeps to every limit; without "intake" there is one: intake 0\.\d+ in\/h, and the limit is 0\.1 in\/h/,
    );
    const [, needed] = limits(tight).get("intake") as number[];
    expect(search({ terms: { intake: needed * (1 + 1e-9) } }).length).toBeGreaterThan(0);
  });

  test("two limits in the way are told as such", () => {
    const text =
      "no plan keeps to every limit, and leaving out any one of them gives none: at least two must move";
    const twice = { terms: { intake: 0.1, "pump head": 50 } };
    expect(message(twice)).toBe(text);
    expect(callError("PLAN.LIMITS", ...cellsOf(twice), "US").message).toBe(text);
  });

  test.each([
    ["variation", { variation: 0.05 }, /variation 0\.\d+, and the limit is 0\.05/],
    ["speed", { speed: 4 }, /speed \d\.\d+ ft\/s, and the limit is 4 ft\/s/],
    ["spacing", {}, /share of the wetted diameter 0\.\d+, and the limit is 0\.5/],
    ["move", { wind: 11 }, /share of the wetted diameter 0\.\d+, and the limit is 0\.45/],
    ["days", { days: 0.9 }, /days \d+, and the limit is 0\.9/],
    ["pump flow", { "pump flow": 60 }, /pump flow \d+ gpm, and the limit is 60 gpm/],
    ["pump head", { "pump head": 100 }, /pump head \d+ ft, and the limit is 100 ft/],
    ["set hours", { "set hours": 5 }, /set hours [\d.]+ h, and the limit is 5 h/],
    ["coverage", { coverage: 0.999999 }, /share covered/],
    [
      "share of rating",
      { "share of rating": 0.2 },
      /share of rating 0\.\d+, and the limit is 0\.2/,
    ],
  ] as const)("%s is named where it alone stands in the way", (name, terms, what) => {
    const changed: Cells = { terms };
    if (name === "spacing") changed.spacings = [[48]];
    if (name === "move") changed.moves = [[45]];
    if (name === "coverage")
      changed.field = [
        [
          [0, 0],
          [630, 0],
          [600, 700],
          [0, 700],
        ][0],
        [630, 0],
        [600, 700],
        [0, 700],
      ];
    if (name === "coverage") (changed.terms as Cells) = { ...terms, bearing: 90 };
    const text = message(changed);
    expect(text).toMatch(new RegExp(`without "${name}" there is one|without .*"${name}"`));
    if (text.includes(`without "${name}" there is one`)) expect(text).toMatch(what);
  });

  test("chart: no pressure beyond it", () => {
    const text = message({ pressures: [[30]] });
    expect(text).toMatch(
      /without "chart" there is one: pressure beyond the chart 5 psi, and the limit is 0 psi/,
    );
  });
});

describe("terms", () => {
  test("any order, any case, a unit in parentheses, blank rows and headers", () => {
    const plans = search();
    const terms = termsWith();
    const cells = cellsOf({});
    const asked = (given: unknown) => callTable("PLAN.SEARCH", ...cells.slice(0, -1), given, "US");
    const plain = asked(terms);
    expect(plain.length).toBe(plans.length + 1);
    expect(asked([...terms].reverse())).toEqual(plain);
    expect(asked(terms.map(([name, value]) => [String(name).toUpperCase(), value]))).toEqual(plain);
    expect(asked(terms.map(([name, value]) => [`${name} (unit)`, value]))).toEqual(plain);
    expect(asked([["term", "value"], ["", null], ...terms, [null, 0]])).toEqual(plain);
    // Given as they are by default, or blank.
    expect(asked([...terms, ["bearing", 0], ["variation", 0.2], ["uniformity", null]])).toEqual(
      plain,
    );
    expect(asked([...terms, ["speed", 0], ["set hours", 0], ["coverage", ""]])).toEqual(plain);
  });

  test("unknown, double and missing ones are named", () => {
    expect(message({ terms: { prise: 3 } })).toMatch(
      /^terms row 19 must name a term, one of .*; got "prise"$/,
    );
    const cells = cellsOf({});
    const asked = (given: unknown) =>
      callError("PLAN.SEARCH", ...cells.slice(0, -1), given, "US").message;
    expect(asked([...termsWith(), ["WAGE", 18]])).toBe('terms gives "wage" twice');
    expect(message({ terms: { days: undefined, wage: undefined, intake: 0 } })).toBe(
      'terms must give a value for "intake", "days", "wage"',
    );
  });

  test("each is held to its range, in its unit", () => {
    const wrong = (name: string, value: unknown) => message({ terms: { [name]: value } });
    expect(wrong("net depth", -1)).toBe("terms: net depth must be above 0 in; got -1");
    expect(wrong("efficiency", 1.2)).toBe(
      "terms: efficiency must be above 0 and at most 1; got 1.2",
    );
    expect(wrong("day hours", 25)).toBe(
      "terms: day hours must be above 0 and at most 24 h; got 25",
    );
    expect(wrong("lift", "deep")).toMatch(/^terms: lift must be a number/);
    expect(wrong("friction", 20)).toMatch(/^terms: friction must be a Hazen–Williams C/);
    expect(wrong("years", 1.5)).toMatch(/^terms: years must be a whole number/);
  });

  test("each changes what it should", () => {
    const [plan] = search();
    const one = (terms: Cells) => search({ terms })[0];
    expectClose(one({ lift: 28 })["pump head"], Number(plan["pump head"]) + 10, 1e-9);
    expectClose(one({ riser: 2 }).inlet, Number(plan.inlet) + 2 / 2.3108, 1e-4);
    const even = one({ uniformity: 0.9, "day hours": 14 });
    expectClose(Number(even.set) * Number(even.rate), 1.4 / 0.75 / 0.9, 1e-8);
    expect(Number(one({ "energy price": 0 })["energy a year"])).toBe(0);
    expect(Number(one({ wage: 0 })["labor a year"])).toBe(0);
    expectClose(
      one({ performance: 0.5 })["energy a year"],
      2 * Number(plan["energy a year"]),
      0.03,
    );
    expect(one({ "set hours": 11.25 }).set).toBe(11.25);
    expect(one({ friction: "Darcy" }).inlet).not.toBe(plan.inlet);
    // Uphill the inlet asks for more, downhill for less.
    expect(Number(one({ slope: 0.3, variation: 0.4 }).inlet)).toBeGreaterThan(Number(plan.inlet));
    expect(Number(one({ slope: -0.3, variation: 0.4 }).inlet)).toBeLessThan(Number(plan.inlet));
    // With a setback the heads stand farther in.
    expect(one({ setback: 30, coverage: 0.5 }).heads).toBeLessThan(Number(plan.heads));
  });
});

describe("the arguments", () => {
  test("are refused by name", () => {
    expect(message({ field: [[630]] })).toMatch(/^field must be one row/);
    expect(message({ field: [[630, -1]] })).toBe("field width must be above 0 ft; got -1");
    expect(
      message({
        field: [
          [0, 0],
          [1, 1],
          [2, 2],
        ],
      }),
    ).toBe("field: corners lie on one line: the area is 0");
    expect(message({ spacings: [new Array(26).fill(0).map((_, i) => 40 + i)] })).toBe(
      "spacings must have at most 25 values; got 26",
    );
    expect(
      message({
        sprinklers: [
          ["a", 35, 4, 90],
          ["A", 35, 5, 91],
        ],
      }),
    ).toBe('sprinklers lists "a" at 35 psi twice');
    expect(
      message({
        sprinklers: [
          ["a", 35, 4, 90],
          ["a", 45, 3, 91],
        ],
      }),
    ).toMatch(/^sprinklers: the flow of "a" must not fall as the pressure rises; at 45 psi/);
    expect(
      message({
        sprinklers: [
          ["a", 35, 4, 90],
          ["a", 35.1, 9, 91],
        ],
      }),
    ).toMatch(/^sprinklers, "a": discharge rises too steeply/);
    expect(
      message({
        tubing: [
          ["a", 2, 1, 100],
          ["b", 2, 1.2, 100],
        ],
      }),
    ).toBe("tubing lists the inside diameter 2 in twice");
    expect(message({ feeders: [["a", 2, 1]] })).toMatch(/^feeders must be four columns/);
  });

  test("a value given twice is one value", () => {
    expect(search({ spacings: [[45, 40, 45]] })).toEqual(search());
  });

  test("a field in which no head has room says so", () => {
    expect(error({ field: [[10, 700]] })).toMatchObject({ code: "#N/A" });
    expect(message({ field: [[10, 700]] })).toMatch(/^no row has room for a head/);
  });

  test("too many designs are refused, soon", () => {
    const few = (from: number, step: number) => [
      new Array(25).fill(0).map((_, i) => from + step * i),
    ];
    const sizes = new Array(25)
      .fill(0)
      .map((_, i) => [`${i}`, 1 + 0.05 * i, 0.3 + 0.05 * i, 145] as const);
    const huge = {
      spacings: few(30, 1),
      moves: few(30, 1),
      pressures: few(35, 0.5),
      tubing: sizes,
    };
    expect(error(huge)).toMatchObject({ code: "#N/A" });
    expect(message(huge)).toMatch(/make more than 10 million designs: give fewer of them$/);
  });
});
