import { callNumber } from "../support/host";
import { expectClose, published } from "../support/published";

/** gpm, bore in inches: ft lost in 100 ft at C 150 by J = 1050 (Q/C)^1.852 D^-4.87. */
const HANDBOOK: readonly [flow: number, bore: number, headLoss: number][] = [
  [5, 0.824, 4.954],
  [10, 1.049, 5.519],
  [20, 1.38, 5.24],
  [30, 1.61, 5.242],
  [50, 2.067, 3.998],
  [100, 3.068, 2.109],
];
/** 1 psi is 2.311 ft of water at 998.2 kg/m³. */
const PSI_PER_FOOT = 1 / 2.3108;

published(
  {
    source: "USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11 (2016)",
    where: "friction equation J = 1050 (Q/C)^1.852 D^-4.87, recomputed for six pipes",
    seen: "from memory",
  },
  () => {
    for (const [flow, bore, headLoss] of HANDBOOK) {
      const psi = headLoss * PSI_PER_FOOT;
      expectClose(callNumber("PIPE.FRICTION", flow, bore, 100, "US", 150), psi, 0.0005);
    }
    const loss = callNumber("PIPE.FRICTION", 40, 1.917, 100, "US", 140);
    expectClose(loss, 4.337 * PSI_PER_FOOT, 0.0005);
  },
);

published(
  {
    source: "NFPA 13, Standard for the Installation of Sprinkler Systems",
    where: "p = 4.52 Q^1.85/(C^1.85 d^4.87) psi a foot, as open fire-flow calculators quote it",
    seen: "read in a secondary text",
  },
  () => {
    for (const [flow, bore] of HANDBOOK) {
      const psi = (100 * 4.52 * flow ** 1.85) / (150 ** 1.85 * bore ** 4.87);
      expectClose(callNumber("PIPE.FRICTION", flow, bore, 100, "US", 150), psi, 0.01);
    }
  },
);

published(
  {
    source: "EPANET 2.2 Users Manual, draft (2019)",
    where: "table 3.1: Hazen–Williams head loss 4.727 C^−1.852 d^−4.871 L q^1.852 (cfs, ft)",
    seen: "read",
  },
  () => {
    for (const [flow, bore] of HANDBOOK) {
      const feet = (4.727 * 100 * (flow / 448.831 / 150) ** 1.852) / (bore / 12) ** 4.871;
      const loss = callNumber("PIPE.FRICTION", flow, bore, 100, "US", 150);
      expectClose(loss, feet * PSI_PER_FOOT, 0.006);
    }
  },
);

published(
  {
    source:
      "J = 1050 (Q/C)^1.852 D^−4.87 turned into L/s and mm by the definitions of gallon and inch",
    where: "1.5 L/s in 44 mm at C 150: 2.3855 m in 100 m",
    seen: "closed form",
  },
  () => {
    const gallonsAMinute = (1.5 / 3.785411784) * 60;
    const meters = 1050 * (gallonsAMinute / 150) ** 1.852 * (44 / 25.4) ** -4.87;
    expectClose(meters, 2.3855, 0.0001);
    const kilopascals = callNumber("PIPE.FRICTION", 5.4, 44, 100, "SI", 150);
    expectClose(kilopascals / 9.789, meters, 0.0002);
  },
);

published(
  {
    source: "USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11 (2016)",
    where: "J = 0.133 Q^1.75 D^-4.75 ft in 100 ft, smooth plastic pipe under 5 in",
    seen: "from memory",
  },
  () => {
    for (const [flow, bore] of HANDBOOK) {
      const psi = 0.133 * flow ** 1.75 * bore ** -4.75 * PSI_PER_FOOT;
      expectClose(callNumber("PIPE.FRICTION", flow, bore, 100, "US", "Darcy"), psi, 0.04);
    }
  },
);
