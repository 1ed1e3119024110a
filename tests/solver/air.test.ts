import fc from "fast-check";
import { orificeLaw } from "../../src/formulas/discharge-law";
import { hazenWilliamsCoefficient } from "../../src/formulas/hazen-williams";
import { WATER_WEIGHT } from "../../src/ground/constants";
import { waterAt } from "../../src/solver/dry-heads";
import { pressureToFlush } from "../../src/solver/flush-line";
import { firstHeads, type Line } from "../../src/solver/line";
import { highestInLine, lowestUnderRegulator } from "../../src/solver/line-pressures";
import { type SolvedLine, solveLine } from "../../src/solver/solve-line";
import { expectClose } from "../support/published";
import { randomLine } from "../support/random-line";

const FLOW_AT_300_KPA = 3e-4;

/** Heads 12 m apart on 40 mm tubing, on this ground, m above the inlet. */
function line(inletPressure: number, elevation: readonly number[], more: Partial<Line> = {}): Line {
  const each = (value: number) => elevation.map(() => value);
  return {
    inletPressure,
    segmentLength: each(12),
    bore: each(0.04),
    elevation,
    riser: 0,
    discharge: orificeLaw(FLOW_AT_300_KPA / Math.sqrt(3e5)),
    regulatorSet: each(Infinity),
    regulatorLoss: each(0),
    friction: { law: "Hazen–Williams", c: 150 },
    ...more,
  };
}

const words = (solved: SolvedLine) => solved.headFlow.map((_, i) => waterAt(solved, i));

/** m of water as Pa. */
const meters = (height: number) => WATER_WEIGHT * height;

describe("by hand: a crest at head 1, a head below it", () => {
  // Beyond head 1 the ground falls by 10 m.
  const over = (inletPressure: number) => solveLine(line(inletPressure, [10, 0]));
  const perFlow = meters(12) * hazenWilliamsCoefficient(150, 0.04);

  test("no water passes until the inlet has the height of the crest", () => {
    const below = over(meters(10) - 1);
    expect(words(below)).toEqual(["empty", "empty"]);
    expect(below.inflow).toBe(0);
    expect(below.linePressure).toEqual([0, 0]);
    expect(over(meters(10) + 1).inflow).toBeGreaterThan(0);
  });

  test("above it what is over drives the flow, and the head below takes that and no more", () => {
    const solved = over(meters(10) + 20);
    expect(words(solved)).toEqual(["part full", "runs"]);
    const flow = (20 / perFlow) ** (1 / 1.852);
    expectClose(solved.inflow, flow, 1e-8);
    expectClose(solved.headFlow[1], flow, 1e-8);
    expectClose(solved.linePressure[1], 3e5 * (flow / FLOW_AT_300_KPA) ** 2, 1e-8);
    // Down the hill the water loses all that its fall gives.
    expectClose(solved.segmentLoss[1], meters(10) - solved.linePressure[1], 1e-9);
    expect(solved.segmentLoss[1]).toBeGreaterThan(perFlow * flow ** 1.852);
  });

  test("as much as fills the fall up to the crest closes the air out", () => {
    const solved = over(meters(10) + 2e4);
    expect(words(solved)).toEqual(["runs", "runs"]);
    expectClose(solved.segmentLoss[1], perFlow * solved.segmentFlow[1] ** 1.852, 1e-9);
  });

  test("flow and pressure go over from one to the other without a jump", () => {
    let before = over(meters(10));
    for (let more = 25; more <= 2000; more += 25) {
      const after = over(meters(10) + more);
      expect(after.inflow).toBeGreaterThan(before.inflow);
      expect(after.inflow - before.inflow).toBeLessThan(1.2e-4);
      before = after;
    }
  });
});

describe("a crest inside a line", () => {
  const ground = (top: number) => [0, 0, 0, 0, 0, top, 0, 0, -2, -4];

  test("that no water passes: the heads before it are a line of their own", () => {
    const solved = solveLine(line(1e5, ground(12)));
    expect(words(solved)).toEqual([
      ...new Array<string>(5).fill("runs"),
      ...new Array<string>(5).fill("empty"),
    ]);
    const alone = solveLine(firstHeads(line(1e5, ground(12)), 5));
    alone.linePressure.forEach((pressure, i) => {
      expectClose(solved.linePressure[i], pressure, 1e-9);
      expectClose(solved.headFlow[i], alone.headFlow[i], 1e-9);
    });
    for (const beyond of [solved.linePressure, solved.segmentFlow, solved.segmentLoss]) {
      expect(beyond.slice(6)).toEqual([0, 0, 0, 0]);
    }
  });

  test("that water passes runs at the air's pressure, and the heads beyond share what passes", () => {
    const solved = solveLine(line(1e5, ground(9)));
    expect(words(solved)).toEqual([
      ...new Array<string>(5).fill("runs"),
      "part full",
      ...new Array<string>(4).fill("runs"),
    ]);
    expect(solved.linePressure[5]).toBe(0);
    expect(solved.linePressure[4]).toBeGreaterThan(meters(9));
    // Ten meters lower a siphon would give them more; the crest lets no more pass.
    const lower = solveLine(line(1e5, [...ground(9).slice(0, 6), -10, -10, -12, -14]));
    expectClose(lower.inflow, solved.inflow, 1e-9);
    expectClose(lower.segmentFlow[6], solved.segmentFlow[6], 1e-9);
  });

  test("the first of several that is too high ends the line", () => {
    const crests = [0, 5, 0, 11, 0, 4, 0, 20, -30, -30];
    const solved = solveLine(line(1e5, crests));
    expect(words(solved)[2]).toBe("runs");
    expect(words(solved).slice(3)).toEqual(new Array<string>(7).fill("empty"));
  });

  test("water over a first crest need not pass a lower second one", () => {
    // A trickle comes over 9 m and stands below 8.5 m in the dip.
    const trickle = solveLine(line(meters(9) + 10, [9, 0, 0, 8.5, -20]));
    expect(words(trickle)).toEqual(["part full", "runs", "runs", "empty", "empty"]);
    // Over a lower second crest it goes on, part full again, into the third valley.
    const low = solveLine(line(meters(9) + 10, [9, 0, 0, 0.01, -20]));
    expect(words(low)).toEqual(["part full", "runs", "runs", "part full", "runs"]);
  });

  test("down a hillside the tubing stays part full as far as the water does not back up", () => {
    const solved = solveLine(line(meters(10) + 20, [10, 8, 6, 4, 2, 0]));
    const seen = words(solved);
    expect(seen[0]).toBe("part full");
    expect(seen.lastIndexOf("part full")).toBe(seen.indexOf("runs") - 1);
    expect(seen[5]).toBe("runs");
  });
});

test("a nozzle that stands too high lets no air into full tubing: what lies beyond runs", () => {
  // The tubing at head 3 has some 2 m of water, its nozzle stands 3 m above it.
  const solved = solveLine(line(meters(10), [0, 0, 7, 0, 0], { riser: 3 }));
  expect(words(solved)).toEqual(["runs", "runs", "dry", "runs", "runs"]);
  expect(solved.linePressure[2]).toBeGreaterThan(0);
  expect(solved.nozzlePressure[2]).toBe(0);
});

test("a regulator's loss does not let air in either, and a regulated valley takes what its heads let through", () => {
  const regulated = { regulatorSet: [Infinity, 1e5, 1e5], regulatorLoss: [0, 34500, 34500] };
  const dry = solveLine(line(meters(5), [0, 4, 0], regulated));
  expect(words(dry)).toEqual(["runs", "dry", "runs"]);
  // Both at their set pressure, 30 m below the crest: the rest of the inlet's pressure is not used.
  const solved = solveLine(line(meters(30) + 3000, [30, 0, 0], regulated));
  expect(solved.headFlow[1]).toBe(solved.headFlow[2]);
  expectClose(solved.nozzlePressure[2], 1e5, 1e-12);
});

test("one head above the inlet's pressure is empty; below it, it runs", () => {
  expect(words(solveLine(line(meters(10), [10.1])))).toEqual(["empty"]);
  expect(words(solveLine(line(meters(10), [9.9])))).toEqual(["runs"]);
});

test("five hundred heads over fifty hills", () => {
  const hills = Array.from({ length: 500 }, (_, i) => 6 * Math.sin(i / 1.6) + 0.02 * i);
  const bore = hills.map(() => 0.2);
  for (const inlet of [3e4, 6e4, 9e4, 1.2e5, 2e5, 4e5]) {
    const solved = solveLine(line(inlet, hills, { bore }));
    expect(solved.residual).toBeLessThan(1e-9);
    expect(Math.min(...solved.linePressure)).toBeGreaterThanOrEqual(0);
    expect(solved.passed).toBeLessThan(500 * 200);
  }
});

test("what a head beyond the air gets never falls as the inlet pressure rises", () => {
  fc.assert(
    fc.property(randomLine, fc.double({ min: 1.0001, max: 1.5, noNaN: true }), (any, factor) => {
      const less = solveLine(any);
      const more = solveLine({ ...any, inletPressure: any.inletPressure * factor });
      const rank = { empty: 0, "part full": 1, dry: 2, runs: 2 };
      less.headFlow.forEach((flow, i) => {
        if (flow * (1 - 1e-7) - 1e-12 > more.headFlow[i])
          throw new Error(`head ${i + 1} lost flow`);
        if (rank[waterAt(less, i)] > rank[waterAt(more, i)])
          throw new Error(`head ${i + 1} drained`);
      });
    }),
    { numRuns: 200, seed: 31 },
  );
});

test("lines without air are those of a closed pipe: no pressure below the air's was cut off", () => {
  let crests = 0;
  fc.assert(
    fc.property(randomLine, (any) => {
      const solved = solveLine(any);
      // Wherever water runs on part full, it came over a head that is at the air's pressure.
      words(solved).forEach((water, i) => {
        if (water !== "part full") return;
        crests++;
        if (solved.linePressure[i] !== 0 || solved.headFlow[i] !== 0)
          throw new Error("no air there");
        if (!(solved.segmentFlow[i + 1] > 0)) throw new Error("nothing runs on");
      });
    }),
    { numRuns: 200, seed: 32 },
  );
  expect(crests).toBeGreaterThan(5);
});

test("flushing over a crest: the heads there let air in, and the pump need only lift the water over", () => {
  const heights = [0, 8, 4, 0];
  const speed = 0.6;
  const flow = (speed * Math.PI * 0.04 ** 2) / 4;
  const lost = (q: number) => meters(12) * hazenWilliamsCoefficient(150, 0.04) * q ** 1.852;
  const found = pressureToFlush(line(0, heights), speed);
  // At the crest the air's pressure; before it head 1 runs with what is lost in between and the climb.
  const atFirst = meters(8) + lost(flow);
  const first = FLOW_AT_300_KPA * Math.sqrt(atFirst / 3e5);
  expectClose(found, atFirst + lost(flow + first), 1e-9);
});

describe("pressures in the line", () => {
  test("the highest is the inlet's on level ground, a low head's where the ground falls", () => {
    const level = solveLine(line(2e5, [0, 0, 0]));
    expect(highestInLine(level)).toEqual({ pressure: 2e5, head: undefined });
    const falling = solveLine(line(2e5, [-5, -20, -10]));
    expect(highestInLine(falling)).toEqual({ pressure: falling.linePressure[1], head: 1 });
    expect(falling.linePressure[1]).toBeGreaterThan(2e5);
    // A head that has the inlet's own pressure does not stand out.
    expect(highestInLine({ ...level, linePressure: [2e5, 1e5, 2e5] })).toEqual({
      pressure: 2e5,
      head: undefined,
    });
  });

  test("the lowest under a regulator has the riser taken off, counts no other head, and is never below 0", () => {
    const some = { regulatorSet: [Infinity, 1e5, 1e5], regulatorLoss: [0, 34500, 34500], riser: 1 };
    const solved = solveLine(line(3e5, [10, 0, 1], some));
    expectClose(lowestUnderRegulator(solved) ?? NaN, solved.linePressure[2] - meters(1), 1e-12);
    expect(lowestUnderRegulator(solveLine(line(1e4, [0, 0, 30], some)))).toBe(0);
    expect(lowestUnderRegulator(solveLine(line(3e5, [0, 0, 0])))).toBeUndefined();
  });
});
