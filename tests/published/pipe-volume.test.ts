import { callNumber } from "../support/host";
import { expectClose, expectWithin, published } from "../support/published";

/** Bore in inches and US gallons in 100 ft, as printed. */
const PRINTED: readonly [number, number][] = [
  [0.5, 1.02],
  [1, 4.08],
  [1.5, 9.18],
  [2, 16.32],
  [2.5, 25.5],
  [3, 36.72],
  [4, 65.28],
  [6, 146.9],
];

published(
  {
    source: "Farm and Garden Rule-Book, Capacities of Pipes and Tanks",
    where: "table of the quantity of water held by pipes of various sizes, gallons in 100 ft",
    seen: "read",
  },
  () => {
    for (const [bore, gallons] of PRINTED) {
      expectClose(callNumber("DRAIN.VOLUME", bore, 100, "US"), gallons, 0.0005);
    }
    const bores = PRINTED.map(([bore]) => [bore]);
    const lengths = PRINTED.map(() => [100]);
    expectClose(callNumber("DRAIN.VOLUME", bores, lengths, "US"), 305.1, 0.0005);
  },
);

published(
  {
    source: "Volume of a cylinder, π/4 D² L",
    where: "a bore of 100 mm holds 7.854 L in each meter",
    seen: "closed form",
  },
  () => {
    expectWithin(callNumber("DRAIN.VOLUME", 100, 1, "SI"), 7.853981634, 1e-9);
  },
);
