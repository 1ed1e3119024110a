import type { Exercise } from "../../src/sheets/books/workshop/exercises";

type Given = Record<string, number>;

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
  // ISO 4427-2 with ISO 11922-1, grade V: outside 50.0 to 50.4 mm, wall 3.0 to 3.4 mm.
  bore: (_, system) => (50.2 - 2 * 3.2) / (system === "US" ? 25.4 : 1),
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

/** An exercise's answer worked again from its numbers, by an equation and not by the function. */
export function workedAnswer({ id, given }: Exercise, system: "US" | "SI"): number {
  return independent[id](given as Given, system);
}
