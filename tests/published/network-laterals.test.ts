import { LinkProperty, NodeProperty } from "epanet-js";
import { solveLine } from "../../src/solver/solve-line";
import { WATER_WEIGHT } from "../../src/ground/constants";
import { Chance } from "../support/chance";
import { call, callNumber, callTable } from "../support/host";
import {
  type Engine,
  engineDischarge,
  engineFriction,
  FOOT,
  GPM,
  matchedC,
  matchedK,
  type NetworkAnswer,
  networkEngine,
  type NetworkLine,
  OUR_PSI_PER_FOOT,
  optionsText,
  PSI_PER_FOOT,
} from "../support/network-engine";
import { expectClose, published } from "../support/published";

const ENGINE = "EPANET 2.3 pipe-network engine (public domain), through epanet-js 0.9";

let engine: Engine;
beforeAll(async () => {
  engine = await networkEngine();
});

const repeat = (count: number, value: number) => new Array<number>(count).fill(value);

/** The three reference lines, with the answers that an earlier release of the engine gave. */
const L1: NetworkLine = {
  inletHead: 115.4,
  segmentLength: repeat(10, 30),
  bore: repeat(10, 1.5),
  elevation: repeat(10, 0),
  coefficient: 0.6,
  exponent: 0.5,
  friction: { c: 150 },
};
const L2: NetworkLine = {
  inletHead: 120,
  segmentLength: repeat(12, 40),
  bore: repeat(12, 2.067),
  elevation: repeat(12, 0).map((_, i) => 0.01 * 40 * (i + 1)),
  coefficient: 0.7036,
  exponent: 0.5,
  friction: { c: 150 },
};
const L3: NetworkLine = { ...L1, friction: { roughnessFeet: 5e-6 } };
const REFERENCE = [
  { name: "L1", line: L1, flow: 40.2055, first: 48.355, last: 43.463, q1: 4.1723, qn: 3.9556 },
  { name: "L2", line: L2, flow: 58.2298, first: 50.908, last: 45.653, q1: 5.0202, qn: 4.754 },
  { name: "L3", line: L3, flow: 40.2144, first: 48.385, last: 43.444, q1: 4.1735, qn: 3.9547 },
];

/** 200 lines that a seed makes: power-law heads, both friction laws, uneven, sloped, one to three sizes. */
function randomLine(chance: Chance): NetworkLine {
  const between = (low: number, high: number) => low + (high - low) * chance.next();
  const heads = 1 + chance.whole(40);
  const spacing = between(20, 60);
  const uneven = chance.happens(0.5);
  const segmentLength = repeat(heads, 0).map(() => (uneven ? between(10, 60) : spacing));
  const exponent = chance.pick([0.4, 0.5, 0.5, 0.6, 0.75]);
  const flow = between(1, 8);
  const coefficient = flow / 45 ** exponent;
  const sizes = 1 + chance.whole(3);
  // Speeds at the inlet of some 4 to 8 ft/s, so that friction matters and the last head still runs.
  const largest = Math.sqrt((0.4085 * flow * heads) / between(4, 8));
  const bore = segmentLength.map((_, i) => largest * 0.85 ** Math.floor((i * sizes) / heads));
  const slope = chance.happens(0.3) ? 0 : between(-0.02, 0.02);
  let elevation = 0;
  return {
    inletHead: between(110, 200),
    segmentLength,
    bore,
    elevation: segmentLength.map((length) => {
      elevation += (slope + (uneven ? between(-0.02, 0.02) : 0)) * length;
      return elevation;
    }),
    coefficient,
    exponent,
    friction: chance.happens(0.5)
      ? { c: chance.pick([120, 130, 140, 150]) }
      : { roughnessFeet: chance.pick([5e-6, 1e-4]) },
  };
}

/** The same line for our solver, with the engine's own friction and discharge. */
function solveOurs(line: NetworkLine) {
  const heads = line.bore.length;
  return solveLine({
    inletPressure: line.inletHead * FOOT * WATER_WEIGHT,
    segmentLength: line.segmentLength.map((length) => length * FOOT),
    bore: line.bore.map((bore) => (bore / 12) * FOOT),
    elevation: line.elevation.map((height) => height * FOOT),
    riser: 0,
    discharge: engineDischarge(line.coefficient, line.exponent),
    regulatorSet: repeat(heads, Infinity),
    regulatorLoss: repeat(heads, 0),
    friction: engineFriction(line.friction),
  });
}

function expectSame(line: NetworkLine, relative: number): NetworkAnswer {
  const ours = solveOurs(line);
  const theirs = engine.solve(line);
  line.bore.forEach((_, i) => {
    expectClose(ours.linePressure[i] / WATER_WEIGHT / FOOT, theirs.pressureHead[i], relative);
    expectClose(ours.headFlow[i] / GPM, theirs.headFlow[i], relative);
    expectClose(ours.segmentFlow[i] / GPM, theirs.segmentFlow[i], relative);
  });
  return theirs;
}

published(
  {
    source: ENGINE,
    where: "200 seeded random laterals, constants matched, every pressure and flow within 0.1 %",
    seen: "independent engine",
    guards: ["LATERAL.PRESSURE", "LATERAL.HEADFLOW", "LATERAL.FLOW", "LATERAL.PROFILE"],
  },
  () => {
    const chance = new Chance(20);
    let darcy = 0;
    let lowest = Infinity;
    for (let i = 0; i < 200; i++) {
      const line = randomLine(chance);
      if (!("c" in line.friction)) darcy++;
      lowest = Math.min(lowest, ...expectSame(line, 0.001).pressureHead);
    }
    // The comparison is worth something only if it meets both laws and no dry head.
    expect(darcy).toBeGreaterThan(70);
    expect(lowest).toBeGreaterThan(0);
  },
);

test.each(REFERENCE)("$name agrees with the engine and its recorded answers", (reference) => {
  expectSame(reference.line, 0.0001);
  const ours = solveOurs(reference.line);
  const psi = (head: number) => (ours.linePressure[head] / WATER_WEIGHT / FOOT) * PSI_PER_FOOT;
  const last = reference.line.bore.length - 1;
  expectClose(ours.inflow / GPM, reference.flow, 0.0001);
  expectClose(psi(0), reference.first, 0.0001);
  expectClose(psi(last), reference.last, 0.0001);
  expectClose(ours.headFlow[0] / GPM, reference.q1, 0.0001);
  expectClose(ours.headFlow[last] / GPM, reference.qn, 0.0001);
});

/**
 * The same reference lines as a sheet asks for them. A sheet cannot set constants, so they are
 * carried over into its arguments: the engine's psi is 0.4333 of a foot and ours 1/2.311, and its
 * C gives the loss of our handbook form with a slightly different one.
 */
function sheetLine(line: NetworkLine, friction: unknown): unknown[] {
  return [
    line.inletHead * OUR_PSI_PER_FOOT,
    line.bore.length,
    line.segmentLength[0],
    line.bore[0],
    matchedK(line.coefficient, line.exponent),
    "US",
    line.elevation[line.elevation.length - 1],
    null,
    friction,
  ];
}

function expectReference(
  [, ...line]: [string, ...unknown[]],
  reference: (typeof REFERENCE)[number],
  relative: number,
): void {
  const heads = reference.line.bore.length;
  const psi = OUR_PSI_PER_FOOT / PSI_PER_FOOT;
  expectClose(callNumber("LATERAL.FLOW", ...line), reference.flow, relative);
  expectClose(callNumber("LATERAL.PRESSURE", 1, ...line), reference.first * psi, relative);
  expectClose(callNumber("LATERAL.PRESSURE", heads, ...line), reference.last * psi, relative);
  expectClose(callNumber("LATERAL.HEADFLOW", 1, ...line), reference.q1, relative);
  expectClose(callNumber("LATERAL.HEADFLOW", heads, ...line), reference.qn, relative);
}

published(
  {
    source: ENGINE,
    where:
      "reference laterals L1 (level) and L2 (1 % uphill), constants carried into the arguments",
    seen: "independent engine",
  },
  () => {
    for (const reference of REFERENCE.slice(0, 2)) {
      const line = sheetLine(reference.line, matchedC(150, reference.line.bore[0]));
      expectReference([reference.name, ...line], reference, 0.0002);
    }
  },
);

published(
  {
    source: ENGINE,
    where: "reference laterals L1 to L3 with the handbook's own constants (0.5 % of the friction)",
    seen: "independent engine",
  },
  () => {
    for (const reference of REFERENCE) {
      const friction = "c" in reference.line.friction ? reference.line.friction.c : "Darcy";
      expectReference([reference.name, ...sheetLine(reference.line, friction)], reference, 0.002);
    }
  },
);

published(
  {
    source: ENGINE,
    where: "reference lateral L1: profile, summary, variation and the inlet sought back",
    seen: "independent engine",
  },
  () => {
    const line = sheetLine(L1, matchedC(150, 1.5));
    const theirs = engine.solve(L1);
    const psi = theirs.pressureHead.map((head) => head * OUR_PSI_PER_FOOT);
    const average = psi.reduce((sum, pressure) => sum + pressure, 0) / psi.length;

    const profile = callTable("LATERAL.PROFILE", ...line).slice(1);
    profile.forEach((row, i) => {
      expectClose(row[4], psi[i], 0.0002);
      expectClose(row[6], theirs.headFlow[i], 0.0002);
      expectClose(row[7], theirs.segmentFlow[i], 0.0002);
    });

    const variation = (psi[0] - psi[9]) / average;
    expectClose(callNumber("LATERAL.VARIATION", ...line), variation, 0.001);
    const summary = new Map(callTable("LATERAL.SUMMARY", ...line) as [string, number][]);
    expectClose(summary.get("average nozzle pressure (psi)"), average, 0.0002);
    expectClose(summary.get("pressure variation"), variation, 0.001);
    expectClose(summary.get("greatest speed (ft/s)"), 7.299, 0.0003);
    expectClose(summary.get("friction lost (psi)"), 15.094 * OUR_PSI_PER_FOOT, 0.0005);

    const inlet = 115.4 * OUR_PSI_PER_FOOT;
    const [, , ...tail] = line;
    const sought = (target: number, basis: string) =>
      callNumber("LATERAL.INLET", target, 10, ...tail, null, null, basis);
    expectClose(sought(psi[9], "lowest"), inlet, 0.0002);
    expectClose(sought(average, "average"), inlet, 0.0002);
    expectClose(sought(psi[9], "last"), inlet, 0.0002);
  },
);

published(
  {
    source: ENGINE,
    where: "longest line and cheapest changeover by solving every one in the engine",
    seen: "independent engine",
  },
  () => {
    const limit = 0.2;
    const lineOf = (bores: readonly number[]): NetworkLine => ({
      ...L1,
      bore: bores,
      segmentLength: repeat(bores.length, 30),
      elevation: repeat(bores.length, 0),
    });
    const passes = (bores: readonly number[]) => {
      const heads = engine.solve(lineOf(bores)).pressureHead;
      const average = heads.reduce((sum, head) => sum + head, 0) / heads.length;
      return (Math.max(...heads) - Math.min(...heads)) / average <= limit;
    };
    let most = 0;
    while (passes(repeat(most + 1, 1.5))) most++;

    const [inlet, , spacing, bore, k, units] = sheetLine(L1, 150);
    const c = matchedC(150, 1.5);
    const tail = [units, null, null, c];
    expect(call("LATERAL.MAXHEADS", limit, inlet, spacing, bore, k, ...tail)).toBe(most);

    // 1.2 in tubing at half the price of 1.5 in: as few segments of the larger as pass.
    const heads = 9;
    let large = 0;
    while (!passes([...repeat(large, 1.5), ...repeat(heads - large, 1.2)])) large++;
    const tubing = [
      [1.2, 0.5],
      [1.5, 1],
    ];
    const table = callTable("LATERAL.CHANGEOVER", limit, inlet, heads, spacing, tubing, k, ...tail);
    expect(table.slice(1).map((row) => row[1])).toEqual([large, heads - large]);
    expect(large).toBeGreaterThan(0);
    expect(large).toBeLessThan(heads);
  },
);

/** A crest at head 6, ft above an otherwise level line, that the inlet's head only just raises water over. */
const crest = (height: number): NetworkLine => ({
  ...L1,
  elevation: repeat(10, 0).map((_, i) => (i === 5 ? height : 0)),
});

published(
  {
    source: ENGINE,
    where:
      "a crest that lets air in: the line up to it with a free outfall there, and the heads beyond fed with what passes",
    seen: "independent engine",
    guards: ["LATERAL.PROFILE", "LATERAL.SUMMARY"],
  },
  () => {
    const line = crest(105);
    const ours = solveOurs(line);
    // Up to the crest: an outfall at the air's pressure is a reservoir whose level is the tubing's.
    const heads = [1, 2, 3, 4, 5];
    const network = `[RESERVOIRS]
R ${line.inletHead}
C ${line.elevation[5]}
[JUNCTIONS]
${heads.map((i) => `J${i} 0 0`).join("\n")}
[PIPES]
${heads.map((i) => `P${i} ${i === 1 ? "R" : `J${i - 1}`} J${i} 30 1.5 150 0 Open`).join("\n")}
P6 J5 C 30 1.5 150 0 Open
[EMITTERS]
${heads.map((i) => `J${i} ${line.coefficient}`).join("\n")}
${optionsText(line.exponent, "H-W")}`;
    const upstream = engine.run(network, (project) => ({
      pressureHead: heads.map((i) =>
        project.getNodeValue(project.getNodeIndex(`J${i}`), NodeProperty.Head),
      ),
      passing: project.getLinkValue(project.getLinkIndex("P6"), LinkProperty.Flow),
    }));
    expect(upstream.passing).toBeGreaterThan(1);
    expect(ours.linePressure[5]).toBe(0);
    upstream.pressureHead.forEach((head, i) => {
      expectClose(ours.linePressure[i] / WATER_WEIGHT / FOOT, head, 0.0005);
    });
    expectClose(ours.segmentFlow[6] / GPM, upstream.passing, 0.0005);

    // Beyond it: heads 8 to 10 fed from the pressure at head 7, and head 7's own flow, take what passes.
    const seventh = ours.linePressure[6] / WATER_WEIGHT / FOOT;
    expect(seventh).toBeLessThan(105);
    const beyond = engine.solve({
      ...L1,
      inletHead: seventh,
      segmentLength: repeat(3, 30),
      bore: repeat(3, 1.5),
      elevation: repeat(3, 0),
    });
    const own = line.coefficient * (seventh * PSI_PER_FOOT) ** line.exponent;
    expectClose(own + beyond.segmentFlow[0], upstream.passing, 0.0005);
    beyond.headFlow.forEach((flow, i) => expectClose(ours.headFlow[7 + i] / GPM, flow, 0.001));
  },
);

published(
  {
    source: ENGINE,
    where: "a crest that no water passes: the heads before it as a line of their own",
    seen: "independent engine",
    guards: ["LATERAL.PROFILE", "LATERAL.SUMMARY"],
  },
  () => {
    const line = crest(130);
    const ours = solveOurs(line);
    const theirs = engine.solve({
      ...L1,
      segmentLength: repeat(5, 30),
      bore: repeat(5, 1.5),
      elevation: repeat(5, 0),
    });
    theirs.pressureHead.forEach((head, i) => {
      expectClose(ours.linePressure[i] / WATER_WEIGHT / FOOT, head, 0.0005);
      expectClose(ours.headFlow[i] / GPM, theirs.headFlow[i], 0.0005);
    });
    expect(ours.headFlow.slice(5)).toEqual(repeat(5, 0));
    expect(ours.linePressure.slice(5)).toEqual(repeat(5, 0));
  },
);
