import { exercises, type Exercise } from "../../src/sheets/books/workshop/exercises";
import { en } from "../../src/sheets/books/workshop/words/en";
import { bluestemFlat } from "../../src/sheets/parts/bluestem-flat";
import { catchSamples } from "../../src/sheets/parts/catch-samples";
import { call, callNumber } from "../support/host";

const systems = ["US", "SI"] as const;

/** Each answer worked again from the exercise's numbers, by an equation and not by the function. */
const GPM = 0.003785411784 / 60;
const FOOT = 0.3048;
const WATER = 9789;

/** The handbook's equation in its own units: ft lost in ft, from gpm and inches. */
function handbookLoss(gpm: number, inches: number, feet: number, c: number): number {
  return (1050 / 100) * (gpm / c) ** 1.852 * inches ** -4.87 * feet;
}

function frictionOf(g: Given, system: string): number {
  return system === "US"
    ? (handbookLoss(g.flow, g.bore, g.length, g.c) * FOOT * WATER) / 6894.757
    : (handbookLoss(g.flow / 3600 / GPM, g.bore / 25.4, g.length / FOOT, g.c) * FOOT * WATER) /
        1000;
}

/** The exact sum of N segments, the first a full spacing long. */
function outletFactor(outlets: number): number {
  let sum = 0;
  for (let left = 1; left <= outlets; left++) sum += (left / outlets) ** 1.852;
  return sum / outlets;
}

/** The line from its far end back: pressure at the last nozzle guessed, then bisected. */
function variationOf(g: Given, system: string, heads: number): number {
  const walk = (far: number) => {
    let pressure = far;
    let flow = 0;
    let sum = 0;
    for (let i = 0; i < heads; i++) {
      sum += pressure;
      flow += g.k * Math.sqrt(pressure);
      const top = pressure;
      pressure += frictionOf({ ...g, flow, length: g.spacing }, system);
      if (i === heads - 1) return { inlet: pressure, spread: top - far, mean: sum / heads };
    }
    throw new Error("no heads");
  };
  let [low, high] = [0, g.inlet];
  for (let i = 0; i < 100; i++) {
    const middle = (low + high) / 2;
    if (walk(middle).inlet > g.inlet) high = middle;
    else low = middle;
  }
  const { spread, mean } = walk(low);
  return spread / mean;
}

type Given = Record<string, number>;
const cansOf = (g: Given) => [..."abcdefgh"].map((name) => g[name]);

const independent: Record<Exercise["id"], (g: Given, system: "US" | "SI") => number> = {
  catchDepth: (g, system) => {
    const radius = (g.opening * (system === "US" ? 2.54 : 0.1)) / 2;
    const centimeters = g.volume / (Math.PI * radius ** 2);
    return system === "US" ? centimeters / 2.54 : centimeters * 10;
  },
  uniformity: (g) => {
    const caught = cansOf(g);
    const sum = caught.reduce((total, one) => total + one, 0);
    const off = caught.reduce((total, one) => total + Math.abs(one - sum / 8), 0);
    return 1 - off / sum;
  },
  driestQuarter: (g) => {
    const caught = cansOf(g).sort((one, other) => one - other);
    return (caught[0] + caught[1]) / 2 / (caught.reduce((total, one) => total + one, 0) / 8);
  },
  // A gallon is 231 cubic inches, an hour 60 minutes.
  rate: (g, system) =>
    system === "US"
      ? (g.flow * 60 * 231) / (g.spacing * g.move * 144)
      : (g.flow * 1000) / (g.spacing * g.move),
  netDepth: (g) => g.holds * g.root * g.share,
  hours: (g) => g.depth / g.rate / g.efficiency,
  setsADay: (g) => Math.floor(g.day / (g.hours + g.move)),
  // The standard's class up to 5 mph.
  widestMove: (g) => 0.6 * g.wetted,
  friction: frictionOf,
  headFlow: (g) => g.k * Math.sqrt(g.pressure),
  factor: (g) => outletFactor(g.outlets),
  shortcut: (g, system) => frictionOf(g, system) * outletFactor(g.outlets),
  mostHeads: (g, system) => {
    let heads = 1;
    while (variationOf(g, system, heads + 1) <= g.limit) heads++;
    return heads;
  },
  // The standard's wall of 50 mm pipe at SDR 17 is 3.0 mm at least.
  bore: (_, system) => (50 - 2 * 3) / (system === "US" ? 25.4 : 1),
  segment: frictionOf,
  pumpHead: (g, system) =>
    g.lift +
    (system === "US"
      ? ((g.pressure + g.losses) * 6894.757) / WATER / FOOT
      : ((g.pressure + g.losses) * 1000) / WATER),
  power: (g, system) =>
    system === "US"
      ? (g.flow * GPM * g.head * FOOT * WATER) / g.efficiency / 745.7
      : ((g.flow / 3600) * g.head * WATER) / g.efficiency / 1000,
  water: (g, system) =>
    system === "US"
      ? (((Math.PI / 4) * g.bore ** 2 * 12) / 231) * g.length
      : ((Math.PI / 4) * g.bore ** 2 * g.length) / 1000,
};

describe.each(systems)("exercises, %s", (system) => {
  test.each(exercises(system).map((exercise) => [exercise.id, exercise] as const))(
    "%s: the answer is that of another calculation",
    (id, { call: { name, arguments: cells, pick }, given, whole }) => {
      const value = call(
        name,
        ...cells.map((cell) => (typeof cell === "object" ? [[...cell]] : cell)),
      );
      const right = pick === undefined ? value : (value as number[][])[pick[0] - 1][pick[1] - 1];
      const other = independent[id](given as Given, system);
      expect(typeof right).toBe("number");
      // The bore is by the least wall, and the function's by the middle of its tolerance.
      const within = whole ? 0 : id === "bore" ? 0.006 : 0.001;
      expect(Math.abs((right as number) / other - 1)).toBeLessThanOrEqual(within);
    },
  );

  test("every lesson has one, all have words, and every number named is there", () => {
    const all = exercises(system);
    expect(all.length).toBeGreaterThanOrEqual(12);
    expect(new Set(all.map(({ lesson }) => lesson))).toEqual(
      new Set(en.lessons.map(({ id }) => id)),
    );
    for (const { id, given } of all) {
      for (const words of Object.values(en.exercises[id])) {
        const text = typeof words === "string" ? words : words[system];
        for (const [, name] of text.matchAll(/\{(\w+)\}/g)) expect(given).toHaveProperty(name);
      }
    }
  });

  test("one field, one truth: every catch test has the uniformity and the rate of the plan", () => {
    const { block, leg, row, step, opening, hours } = catchSamples(system);
    const { spotUniformity, spacing, move, lesson } = bluestemFlat(system);
    const patterns = {
      block: block.map((line) => [...line]),
      leg: call("APPLICATION.OVERLAP", [[...leg]], step, spacing, move) as number[][],
      row: call("APPLICATION.FOLD", [[...row]], step, move) as number[][],
    };
    const poured = callNumber("APPLICATION.RATE", lesson.head, spacing, move, system);
    for (const pattern of Object.values(patterns)) {
      expect(Math.abs(callNumber("APPLICATION.CU", pattern) - spotUniformity)).toBeLessThan(0.005);
      const caught = pattern.flat().reduce((sum, one) => sum + one, 0) / pattern.flat().length;
      const rate = callNumber("APPLICATION.CATCH", caught, opening, system) / hours;
      // Less a twentieth in the air, a few hundredths for whole milliliters.
      expect(rate / poured).toBeGreaterThan(0.92);
      expect(rate / poured).toBeLessThan(0.98);
    }
  });
});
