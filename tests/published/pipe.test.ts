import { callNumber } from "../support/host";
import { expectClose, expectWithin, published } from "../support/published";

/** gpm, bore in inches, ft/s. */
const HANDBOOK: readonly [flow: number, bore: number, speed: number][] = [
  [5, 0.824, 3.008],
  [10, 1.049, 3.712],
  [20, 1.38, 4.29],
  [30, 1.61, 4.728],
  [50, 2.067, 4.781],
  [100, 3.068, 4.34],
];
const PSI_PER_FOOT = 1 / 2.3108;

published(
  {
    source: "Velocity in a full pipe, v = 0.4085 Q/d², as open waterworks calculators print it",
    where: "ft/s, gpm and in, by hand for six pipes",
    seen: "read in a secondary text",
  },
  () => {
    for (const [flow, bore, speed] of HANDBOOK) {
      expectWithin(callNumber("PIPE.VELOCITY", flow, bore, "US"), speed, 0.001);
      expectClose(callNumber("PIPE.MAXFLOW", bore, "US", speed), flow, 0.0003);
    }
    expectClose(callNumber("PIPE.MAXFLOW", 2.067, "US"), (5 * 2.067 ** 2) / 0.4085, 0.0002);
  },
);

published(
  {
    source: "EPANET 2.2 Users Manual, draft (2019)",
    where:
      "table 3.3: short-radius elbow 0.9, swing check valve 2.5 and exit 1.0 of v²/2g, by hand for 50 gpm in 2.067 in",
    seen: "read",
  },
  () => {
    // 50 gpm in 2.067 in run at 4.7806 ft/s: v²/2g = 0.35520 ft.
    for (const k of [0.9, 2.5, 1]) {
      const psi = callNumber("PIPE.FITTING", 50, 2.067, k, "US");
      expectClose(psi, k * 0.3552 * PSI_PER_FOOT, 0.0005);
    }
  },
);

published(
  {
    source: "Velocity head, V²/2g",
    where: "at 2 m/s, 0.2039 m or 1.9964 kPa in water of 998.2 kg/m³",
    seen: "closed form",
  },
  () => {
    // 2 m/s in a bore of 100 mm is 56.549 m³/h.
    const flow = (2 * Math.PI * 0.1 ** 2 * 3600) / 4;
    expectClose(callNumber("PIPE.FITTING", flow, 100, 1, "SI"), (998.2 * 2 ** 2) / 2 / 1000, 1e-12);
    expectClose(callNumber("PIPE.VELOCITY", flow, 100, "SI"), 2, 1e-12);
  },
);

published(
  {
    source: "EPANET 2.2 Users Manual, draft (2019)",
    where:
      "table 3.1: smallest pipe by its Hazen–Williams loss and 5 ft/s, worked by hand for three limits",
    seen: "read",
  },
  () => {
    const insides = [[3.068], [1.38], [2.469], [1.61], [2.067]];
    // 50 gpm in 2.067 in: 1.723 psi (ours 1.730) in 100 ft at 4.78 ft/s; in 1.610 in it would be 5.84 psi at 7.88.
    expectWithin(callNumber("PIPE.SIZE", 50, 100, 1.74, insides, "US"), 2.067, 0);
    expectWithin(callNumber("PIPE.SIZE", 50, 100, 1.72, insides, "US"), 2.469, 0);
    // 60 gpm loses 2.425 psi in 2.067 in but runs at 5.74 ft/s there.
    expectWithin(callNumber("PIPE.SIZE", 60, 100, 3, insides, "US"), 2.469, 0);
    expectWithin(callNumber("PIPE.SIZE", 60, 100, 3, insides, "US", 150, 6), 2.067, 0);
  },
);

published(
  {
    source: "Farm and Garden Rule-Book, Capacities of Pipes and Tanks",
    where: "table of the quantity of water held by pipes of various sizes, gallons in 100 ft",
    seen: "read in a secondary text",
  },
  () => {
    const printed: readonly [number, number][] = [
      [0.5, 1.02],
      [1, 4.08],
      [1.5, 9.18],
      [2, 16.32],
      [2.5, 25.5],
    ];
    for (const [bore, gallons] of printed) {
      expectClose(callNumber("PIPE.VOLUME", bore, 100, "US"), gallons, 0.0005);
    }
  },
);

published(
  {
    source: "Volume of a cylinder, π/4 D² L",
    where: "a bore of 100 mm holds 7.854 L in each meter",
    seen: "closed form",
  },
  () => {
    expectClose(callNumber("PIPE.VOLUME", 100, 1, "SI"), 7.853981634, 1e-9);
  },
);
