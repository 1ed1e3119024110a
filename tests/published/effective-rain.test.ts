import { callNumber } from "../support/host";
import { expectClose, expectWithin, published } from "../support/published";

published(
  {
    source: "USDA-SCS, National Engineering Handbook, Part 623 Chapter 2 (1993)",
    where: "equations 2-84 and 2-85, as an open package for effective precipitation quotes them",
    seen: "read in a secondary text",
  },
  () => {
    const factor = (d: number) => 0.531747 + 0.295164 * d - 0.057697 * d ** 2 + 0.003804 * d ** 3;
    for (const [rain, use, net] of [
      [3, 6, 3],
      [4, 8, 1.5],
      [2, 5, 2],
      [6, 9, 4],
    ]) {
      const quoted = factor(net) * (rain ** 0.82416 * 0.70917 - 0.11556) * 10 ** (use * 0.02426);
      expectClose(callNumber("SOIL.RAIN", rain, use, net, "US"), quoted, 1e-9);
    }
  },
);

published(
  {
    source:
      "USDA-SCS Technical Release 21 in millimeters, after FAO Irrigation and Drainage Paper 25",
    where: "SF (1.25 P^0.824 − 2.93) 10^(0.000955 E), SF 1.000674 at 3 in: another rounding of it",
    seen: "read in a secondary text",
  },
  () => {
    for (const [rain, use] of [
      [25, 50],
      [50, 100],
      [100, 200],
      [150, 250],
    ]) {
      const quoted = 1.000674 * (1.25 * rain ** 0.824 - 2.93) * 10 ** (0.000955 * use);
      expectClose(callNumber("SOIL.RAIN", rain, use, 76.2, "SI"), quoted, 0.005);
    }
  },
);

published(
  {
    source: "USDA-SCS Technical Release 21, Irrigation Water Requirements (revised 1970)",
    where:
      "table of average monthly effective rain at a net depth of 3 in, the row of 1 in of rain",
    seen: "from memory",
  },
  () => {
    // From a use of 1 in on: below it the use itself is the limit.
    const printed = [0.63, 0.66, 0.7, 0.74, 0.78, 0.83, 0.88, 0.93, 0.98, 1];
    printed.forEach((effective, i) => {
      expectWithin(callNumber("SOIL.RAIN", 1, i + 1, 3, "US"), effective, 0.006);
    });
  },
);

published(
  {
    source: "USDA-SCS Technical Release 21, Irrigation Water Requirements (revised 1970)",
    where: "factors for net depths other than 3 in",
    seen: "from memory",
  },
  () => {
    const printed = [
      [0.75, 0.72],
      [1, 0.77],
      [1.5, 0.86],
      [2, 0.93],
      [2.5, 0.97],
      [3, 1],
      [4, 1.02],
      [5, 1.04],
      [6, 1.06],
      [7, 1.07],
    ];
    const standard = callNumber("SOIL.RAIN", 4, 5, 3, "US");
    for (const [net, factor] of printed) {
      expectWithin(callNumber("SOIL.RAIN", 4, 5, net, "US") / standard, factor, 0.0135);
    }
  },
);
