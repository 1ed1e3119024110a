import { callTable } from "../support/host";
import { matchedC, matchedK, networkEngine, OUR_PSI_PER_FOOT } from "../support/network-engine";
import { expectClose, published } from "../support/published";

const BORE = 2.16;
const COEFFICIENT = 0.62;

/** A field of 600 by 400 ft uphill, one size of tubing, one sprinkler whose row at 40 psi gives K. */
const choices = (k: number) => [
  [[600, 400]],
  [[40, 42.5]],
  [[40, 50]],
  [[36, 40]],
  [["one", 40, k * Math.sqrt(40), 92]],
  [["63 mm", BORE, 1.1, 145]],
  [["75 mm", 2.58, 1.55, 145]],
];

const terms = (friction: number): [string, number][] => [
  ["friction", friction],
  ["slope", 0.5],
  ["wind", 4],
  ["intake", 0.5],
  ["net depth", 1.4],
  ["efficiency", 0.75],
  ["days", 7],
  ["day hours", 12],
  ["move hours", 0.75],
  ["season depth", 14],
  ["lift", 18],
  ["main loss", 0],
  ["head price", 40],
  ["line price", 170],
  ["years", 12],
  ["interest", 0.06],
  ["energy price", 0.14],
  ["wage", 18],
];

published(
  {
    source: "EPANET 2.3 pipe-network engine (public domain), through epanet-js 0.9",
    where: "the lines of the best plans: lowest and highest nozzle pressure, flow within 0.05%",
    seen: "independent engine",
  },
  async () => {
    const engine = await networkEngine();
    const table = callTable(
      "PLAN.SEARCH",
      ...choices(matchedK(COEFFICIENT, 0.5)),
      terms(matchedC(140, BORE)),
    );
    const [headers, ...plans] = table;
    const place = (name: string) => headers.findIndex((header) => String(header).startsWith(name));
    expect(plans.length).toBeGreaterThan(1);
    for (const plan of plans) {
      const read = (name: string) => Number(plan[place(name)]);
      const heads = read("heads");
      const spacing = read("spacing");
      const segmentLength = Array.from({ length: heads }, (_, i) => (i === 0 ? 0.5 : 1) * spacing);
      const { pressureHead, segmentFlow } = engine.solve({
        inletHead: read("inlet") / OUR_PSI_PER_FOOT,
        segmentLength,
        bore: segmentLength.map(() => BORE),
        elevation: segmentLength.map((_, i) => 0.005 * spacing * (i + 0.5)),
        coefficient: COEFFICIENT,
        exponent: 0.5,
        friction: { c: 140 },
      });
      const psi = pressureHead.map((feet) => feet * OUR_PSI_PER_FOOT);
      expectClose(Math.min(...psi), read("lowest nozzle"), 0.0005);
      expectClose(Math.max(...psi), read("highest nozzle"), 0.0005);
      expectClose(segmentFlow[0], read("flow of a line"), 0.0005);
    }
  },
);

published(
  {
    source:
      "USDA-NRCS Conservation Practice Standards 442, Sprinkler System, and 430, Irrigation Pipeline",
    where:
      "pressure varies by 20% at most; working pressure 72% of the rating without surge analysis",
    seen: "read in a secondary text",
  },
  () => {
    const rows = callTable("PLAN.LIMITS", ...choices(0.62), terms(140));
    const now = (limit: string) => rows.find(([name]) => String(name).startsWith(limit))?.[1];
    expectClose(now("variation"), 0.2, 1e-12);
    expectClose(now("share of rating"), 0.72, 1e-12);
  },
);

published(
  {
    source: "SCS Conservation Practice Standard 442, Irrigation System, Sprinkler, older issues",
    where: "spacing 50% of the wetted diameter along the line; between lines 60% up to 5 mph",
    seen: "from memory",
  },
  () => {
    const rows = callTable("PLAN.LIMITS", ...choices(0.62), terms(140));
    const now = (limit: string) => rows.find(([name]) => String(name).startsWith(limit))?.[1];
    expectClose(now("spacing"), 0.5, 1e-12);
    expectClose(now("move"), 0.6, 1e-12);
  },
);
