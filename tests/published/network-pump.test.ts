import { NodeProperty, LinkProperty } from "epanet-js";
import { callNumber, callTable } from "../support/host";
import {
  type Engine,
  matchedC,
  matchedK,
  networkEngine,
  optionsText,
  OUR_PSI_PER_FOOT,
} from "../support/network-engine";
import { expectClose, published } from "../support/published";

const ENGINE = "EPANET 2.3 pipe-network engine (public domain), through epanet-js 0.9";

let engine: Engine;
beforeAll(async () => {
  engine = await networkEngine();
});

/** One pump on lines of 8 heads; lengths and heights ft, bores in, gpm. */
const HEADS = 8;
const SPACING = 35;
const BORE = 1.6;
const K = 0.65;
const C = 140;
const LIFT = 14;
const RISE = 4;
const MAIN = [
  [3.1, 180],
  [2.6, 120],
];
const FEEDER = [[2, 150]];
/** A falling parabola in so many points that straight lines and a cubic between them agree. */
const CURVE = Array.from({ length: 45 }, (_, i) => [5 * i, 150 - 0.0016 * (5 * i) ** 2]);

function numbers(count: number): number[] {
  return Array.from({ length: count }, (_, i) => i + 1);
}

function networkOf(running: number): string {
  const pipes: string[] = [`M1 PUMPED MID ${MAIN[0][1]} ${MAIN[0][0]} ${C} 0 Open`];
  pipes.push(`M2 MID RISER ${MAIN[1][1]} ${MAIN[1][0]} ${C} 0 Open`);
  const junctions = ["PUMPED 0 0", "MID 0 0", `RISER ${LIFT} 0`];
  const emitters: string[] = [];
  for (const line of numbers(running)) {
    junctions.push(`L${line}H0 ${LIFT} 0`);
    pipes.push(`F${line} RISER L${line}H0 ${FEEDER[0][1]} ${FEEDER[0][0]} ${C} 0 Open`);
    for (const head of numbers(HEADS)) {
      junctions.push(`L${line}H${head} ${LIFT + (RISE * head) / HEADS} 0`);
      pipes.push(
        `L${line}P${head} L${line}H${head - 1} L${line}H${head} ${SPACING} ${BORE} ${C} 0 Open`,
      );
      emitters.push(`L${line}H${head} ${K}`);
    }
  }
  return `[RESERVOIRS]
POND 0
[JUNCTIONS]
${junctions.join("\n")}
[PIPES]
${pipes.join("\n")}
[PUMPS]
PUMP POND PUMPED HEAD 1
[CURVES]
${CURVE.map(([flow, head]) => `1 ${flow} ${head}`).join("\n")}
[EMITTERS]
${emitters.join("\n")}
${optionsText(0.5, "H-W")}`;
}

/** Flow, pump head, pressures at riser, inlet and lowest head (our psi), average head flow. */
function byEngine(running: number): number[] {
  return engine.run(networkOf(running), (project) => {
    const head = (id: string) => project.getNodeValue(project.getNodeIndex(id), NodeProperty.Head);
    const psi = (id: string, height: number) => (head(id) - height) * OUR_PSI_PER_FOOT;
    const flow = project.getLinkValue(project.getLinkIndex("PUMP"), LinkProperty.Flow);
    const lowest = numbers(HEADS).map((n) => psi(`L1H${n}`, LIFT + (RISE * n) / HEADS));
    return [
      flow,
      head("PUMPED"),
      psi("RISER", LIFT),
      psi("L1H0", LIFT),
      Math.min(...lowest),
      flow / running / HEADS,
    ];
  });
}

function bySheet(running: number): number[] {
  const table = callTable(
    "PUMP.LINES",
    CURVE,
    LIFT,
    running,
    MAIN,
    FEEDER,
    HEADS,
    SPACING,
    BORE,
    matchedK(K, 0.5),
    "US",
    RISE,
    null,
    matchedC(C, BORE),
  );
  return table.map((row) => row[1] as number);
}

published(
  {
    source: ENGINE,
    where:
      "one to four lines on one pump, main of two sizes, feeders, uphill: every value within 0.2 %",
    seen: "independent engine",
  },
  () => {
    for (const running of [1, 2, 3, 4]) {
      const theirs = byEngine(running);
      bySheet(running).forEach((value, i) => expectClose(value, theirs[i], 0.002));
    }
  },
);

published(
  {
    source: ENGINE,
    where:
      "from two lines to three every pressure falls by what the engine says, within 1 % of the fall",
    seen: "independent engine",
    guards: ["PUMP.LINES"],
  },
  () => {
    const [two, three] = [bySheet(2), bySheet(3)];
    const [twoTheirs, threeTheirs] = [byEngine(2), byEngine(3)];
    two.forEach((value, i) => {
      const change = three[i] - value;
      const theirChange = threeTheirs[i] - twoTheirs[i];
      expectClose(change, theirChange, 0.01);
      // The flow of all rises, everything else falls.
      expect(Math.sign(change)).toBe(i === 0 ? 1 : -1);
    });
  },
);

published(
  {
    source: ENGINE,
    where:
      "a line with its end open, the inlet pressure of FLUSH.PRESSURE given: the speed at the end",
    seen: "independent engine",
  },
  () => {
    const speed = 3;
    const inlet = callNumber(
      "FLUSH.PRESSURE",
      speed,
      HEADS,
      SPACING,
      BORE,
      matchedK(K, 0.5),
      "US",
      RISE,
      null,
      matchedC(C, BORE),
    );
    const height = (head: number) => (RISE * head) / HEADS;
    const inner = numbers(HEADS - 1);
    const network = `[RESERVOIRS]
H0 ${inlet / OUR_PSI_PER_FOOT}
H${HEADS} ${height(HEADS)}
[JUNCTIONS]
${inner.map((head) => `H${head} ${height(head)} 0`).join("\n")}
[PIPES]
${numbers(HEADS)
  .map((head) => `P${head} H${head - 1} H${head} ${SPACING} ${BORE} ${C} 0 Open`)
  .join("\n")}
[EMITTERS]
${inner.map((head) => `H${head} ${K}`).join("\n")}
${optionsText(0.5, "H-W")}`;
    const found = engine.run(network, (project) =>
      project.getLinkValue(project.getLinkIndex(`P${HEADS}`), LinkProperty.Velocity),
    );
    expectClose(found, speed, 0.002);
  },
);

published(
  {
    source: "Energy along an open line whose heads stay dry",
    where: "risers so high that no head runs: friction of one flow, and the rise",
    seen: "closed form",
  },
  () => {
    // 2.5 ft/s in a 1.5 in bore is 2.5 · 1.5²/0.4085 gpm; 300 ft of it, 10 ft uphill.
    const flow = (2.5 * 1.5 ** 2) / 0.4085;
    const feet = ((1050 * (flow / 150) ** 1.852 * 1.5 ** -4.87) / 100) * 300 + 10;
    const inlet = callNumber(
      "FLUSH.PRESSURE",
      2.5,
      10,
      30,
      1.5,
      0.6,
      "US",
      10,
      null,
      null,
      null,
      50,
    );
    expectClose(inlet, feet / 2.311, 0.0005);
  },
);
