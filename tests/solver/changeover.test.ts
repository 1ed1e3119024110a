import { chartLaw, orificeLaw } from "../../src/formulas/discharge-law";
import { NoAnswer } from "../../src/ground/domain-error";
import { cheapestLayout, type Layout, type PricedTubing } from "../../src/solver/changeover";
import type { Line } from "../../src/solver/line";
import { keepsWithin, type LineLimits } from "../../src/solver/line-limits";
import { solveLine } from "../../src/solver/solve-line";
import { Chance } from "../support/chance";
import { March } from "../../src/solver/march";
import { linesSolved } from "../support/lines-solved";

/** Every way to split the segments over the sizes, in order. */
function* layouts(segments: number, sizes: number): Generator<number[]> {
  if (sizes === 1) {
    yield [segments];
    return;
  }
  for (let first = 0; first <= segments; first++) {
    for (const rest of layouts(segments - first, sizes - 1)) yield [first, ...rest];
  }
}

function costOf(line: Line, sizes: readonly PricedTubing[], layout: Layout): number {
  const prices = layout.flatMap((segments, i) => new Array<number>(segments).fill(sizes[i].price));
  return line.segmentLength.reduce((sum, length, i) => sum + length * prices[i], 0);
}

/** The least by trying all: cost, then fewer sizes, then more of the larger. */
function byExhaustion(
  line: Line,
  sizes: readonly PricedTubing[],
  limits: LineLimits,
): Layout | null {
  const passing = [...layouts(line.segmentLength.length, sizes.length)].filter((layout) => {
    const bore = layout.flatMap((segments, i) => new Array<number>(segments).fill(sizes[i].bore));
    return keepsWithin(limits, solveLine({ ...line, bore }));
  });
  const used = (layout: Layout) => layout.filter((segments) => segments > 0).length;
  passing.sort((a, b) => {
    const [costA, costB] = [costOf(line, sizes, a), costOf(line, sizes, b)];
    if (Math.abs(costA - costB) > 1e-9 * costA) return costA - costB;
    if (used(a) !== used(b)) return used(a) - used(b);
    const differs = a.findIndex((segments, i) => segments !== b[i]);
    return differs < 0 ? 0 : b[differs] - a[differs];
  });
  return passing[0] ?? null;
}

function randomCase(chance: Chance) {
  const between = (low: number, high: number) => low + (high - low) * chance.next();
  const heads = 1 + chance.whole(8);
  const spacing = between(6, 18);
  const uneven = chance.happens(0.4);
  const segmentLength = new Array<number>(heads)
    .fill(0)
    .map(() => (uneven ? between(4, 20) : spacing));
  const flow = between(1.5e-4, 4e-4);
  const largest = Math.sqrt((flow * heads) / between(1, 3.5) / 0.785);
  const count = 1 + chance.whole(4);
  const bores = [1, 0.85, 0.72, 0.6].slice(0, count).map((share) => share * largest);
  // Prices mostly fall with the size, but not always, and are often equal.
  const prices = bores.map((_, i) =>
    chance.happens(0.2) ? 2 : chance.happens(0.2) ? between(1, 3) : 3 - 0.5 * i,
  );
  const slope = chance.happens(0.4) ? 0 : between(-0.12, 0.05);
  const regulated = chance.happens(0.25);
  let elevation = 0;
  const line: Line = {
    inletPressure: between(2.5e5, 4.5e5),
    segmentLength,
    bore: [],
    elevation: segmentLength.map((length) => {
      elevation += slope * length + (uneven ? between(-0.5, 0.5) : 0);
      return elevation;
    }),
    riser: chance.pick([0, 0.5]),
    discharge: chance.happens(0.5)
      ? orificeLaw(flow / Math.sqrt(3e5))
      : chartLaw([2e5, 3e5, 4e5], [flow * 0.8, flow, flow * 1.12]),
    regulatorSet: segmentLength.map(() => (regulated && chance.happens(0.8) ? 2.4e5 : Infinity)),
    regulatorLoss: segmentLength.map(() => (regulated ? 34500 : 0)),
    friction: chance.happens(0.7) ? { law: "Hazen–Williams", c: 145 } : { law: "Darcy" },
  };
  const limits: LineLimits = {
    variation: chance.pick([0.05, 0.1, 0.2, 0.3]),
    lowest: chance.happens(0.3) ? between(1.5e5, 3e5) : 0,
    speed: chance.happens(0.3) ? between(1, 2.5) : Infinity,
  };
  const sizes = bores.map((bore, i): PricedTubing => ({ bore, price: prices[i] }));
  return { line, sizes, limits };
}

test("the cheapest layout is the one that trying all of them finds", () => {
  const chance = new Chance(77);
  const seen = { none: 0, one: 0, more: 0 };
  for (let i = 0; i < 150; i++) {
    const { line, sizes, limits } = randomCase(chance);
    const expected = byExhaustion(line, sizes, limits);
    if (expected === null) {
      seen.none++;
      expect(() => cheapestLayout(line, sizes, limits)).toThrow(NoAnswer);
    } else {
      seen[expected.filter((segments) => segments > 0).length > 1 ? "more" : "one"]++;
      expect(cheapestLayout(line, sizes, limits)).toEqual(expected);
    }
  }
  // Worth something only if all kinds came up.
  expect(seen.none).toBeGreaterThan(10);
  expect(seen.one).toBeGreaterThan(10);
  expect(seen.more).toBeGreaterThan(10);
});

test("where many layouts cost the same, and steep falls ask for small tubing, it is that one too", () => {
  const chance = new Chance(78);
  const seen = { none: 0, tied: 0 };
  for (let i = 0; i < 400; i++) {
    const { line: random, limits } = randomCase(chance);
    const heads = 2 + chance.whole(3);
    const slope = chance.pick([0, -0.1, -0.3, -0.6]);
    const segmentLength = new Array<number>(heads).fill(10);
    const line: Line = {
      ...random,
      segmentLength,
      elevation: segmentLength.map((length, head) => slope * length * (head + 1)),
      regulatorSet: segmentLength.map(() => Infinity),
      regulatorLoss: segmentLength.map(() => 0),
      friction: { law: "Hazen–Williams", c: 145 },
    };
    const sizes = [0.03, 0.024, 0.02, 0.016]
      .slice(0, 3 + chance.whole(2))
      .map((bore): PricedTubing => ({ bore, price: 1 + chance.whole(3) }));
    const expected = byExhaustion(line, sizes, limits);
    if (expected === null) {
      seen.none++;
      expect(() => cheapestLayout(line, sizes, limits)).toThrow(
        "no layout of these sizes keeps within the limits: raise the inlet pressure, use larger tubing, fewer heads or looser limits",
      );
      continue;
    }
    const cost = costOf(line, sizes, expected);
    const alikes = [...layouts(heads, sizes.length)].filter(
      (layout) => Math.abs(costOf(line, sizes, layout) - cost) < 1e-9,
    );
    if (alikes.length > 1) seen.tied++;
    expect(cheapestLayout(line, sizes, limits)).toEqual(expected);
  }
  expect(seen.none).toBeGreaterThan(30);
  expect(seen.tied).toBeGreaterThan(50);
});

const alike = <T>(count: number, value: T) => new Array<T>(count).fill(value);

function longLine(heads: number): Line {
  return {
    inletPressure: 4e5,
    segmentLength: alike(heads, 12),
    bore: [],
    elevation: alike(heads, 0),
    riser: 0,
    discharge: orificeLaw(2.6e-4 / Math.sqrt(3e5)),
    regulatorSet: alike(heads, Infinity),
    regulatorLoss: alike(heads, 0),
    friction: { law: "Hazen–Williams", c: 150 },
  };
}

test("two sizes on 200 heads are searched to the end", () => {
  const sizes = [
    { bore: 0.24, price: 3 },
    { bore: 0.2, price: 2 },
  ];
  const layout = cheapestLayout(longLine(200), sizes, {
    variation: 0.2,
    lowest: 0,
    speed: Infinity,
  });
  expect(layout[0] + layout[1]).toBe(200);
  expect(layout[0]).toBeGreaterThan(0);
  expect(layout[1]).toBeGreaterThan(0);
});

/** Heads that a search passes on all its walks. */
function headsPassed(search: () => unknown): number {
  const walk = jest.spyOn(March.prototype, "walk");
  try {
    search();
    const marches = new Set(walk.mock.contexts as March[]);
    return [...marches].reduce((sum, { passed }) => sum + passed, 0);
  } finally {
    walk.mockRestore();
  }
}

test("too many sizes on too long a line are refused, after as much work by any friction", () => {
  const sizes = alike(12, 0).map((_, i) => ({ bore: 0.35 - 0.012 * i, price: 3 - 0.2 * i }));
  // On falling ground no bound bites.
  const line = { ...longLine(400), elevation: alike(400, 0).map((_, i) => -0.2 * i) };
  const limits = { variation: 0.01, lowest: 0, speed: 1 };
  const passed = (friction: Line["friction"]) =>
    headsPassed(() =>
      expect(() => cheapestLayout({ ...line, friction }, sizes, limits, 40000)).toThrow(
        "12 sizes on 400 heads can be laid in too many ways to try: use fewer sizes",
      ),
    );
  // The line that goes over the bound is solved to its end: some thousands of heads.
  const byPower = passed({ law: "Hazen–Williams", c: 150 });
  expect(byPower).toBeGreaterThan(40000);
  expect(byPower).toBeLessThan(40000 + 400 * 12);
  // By Darcy–Weisbach a head takes four times as long.
  const byDarcy = passed({ law: "Darcy" });
  expect(byDarcy).toBeGreaterThan(10000);
  expect(byDarcy).toBeLessThan(10000 + 400 * 12);
});

test("of layouts that cost the same, fewer sizes win, then more of the larger", () => {
  const sizes = [
    { bore: 0.08, price: 2 },
    { bore: 0.07, price: 2 },
    { bore: 0.06, price: 2 },
  ];
  const limits = { variation: 0.5, lowest: 0, speed: Infinity };
  expect(cheapestLayout(longLine(8), sizes, limits)).toEqual([8, 0, 0]);
});

test("most layouts of two sizes are never solved: halving drops them", () => {
  const sizes = [
    { bore: 0.085, price: 3 },
    { bore: 0.07, price: 2 },
  ];
  const search = (limits: Partial<LineLimits>) =>
    linesSolved(() => {
      try {
        cheapestLayout(longLine(40), sizes, {
          variation: 5,
          lowest: 0,
          speed: Infinity,
          ...limits,
        });
      } catch (error) {
        expect(error).toBeInstanceOf(NoAnswer);
      }
    });
  // 2⁶ is above the 40 places where the size may change, and a layout or two are judged beside.
  expect(search({ lowest: 3.2e5 })).toBeLessThanOrEqual(6 + 8);
  expect(search({ variation: 0.2 })).toBeLessThanOrEqual(6 + 8);
});

test("what is dearer than the best so far is left out", () => {
  // The first that is tried passes: all of the smallest, which is the cheapest.
  const sizes = [
    { bore: 0.3, price: 4 },
    { bore: 0.24, price: 3 },
    { bore: 0.28, price: 2 },
  ];
  const limits = { variation: 0.5, lowest: 0, speed: Infinity };
  expect(cheapestLayout(longLine(30), sizes, limits)).toEqual([0, 0, 30]);
  // Halving at two levels (two times five), and one layout judged.
  expect(linesSolved(() => cheapestLayout(longLine(30), sizes, limits))).toBeLessThanOrEqual(13);
  // The other way round the cheapest is all of the largest, and is tried first.
  const rising = sizes.map(({ bore }, i) => ({ bore, price: 2 + i }));
  expect(cheapestLayout(longLine(30), rising, limits)).toEqual([30, 0, 0]);
  expect(linesSolved(() => cheapestLayout(longLine(30), rising, limits))).toBeLessThanOrEqual(13);
});
