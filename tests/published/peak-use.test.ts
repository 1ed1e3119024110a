import { callNumber } from "../support/host";
import { expectWithin, published } from "../support/published";

published(
  {
    source: "USDA-SCS Technical Release 21, Irrigation Water Requirements (revised 1970)",
    where:
      "peak period use at a net depth of 1 in, months of 4 to 8 in, u_p = 0.034 u_m^1.09 I^−0.09",
    seen: "from memory",
  },
  () => {
    const printed = [
      [4, 0.15],
      [5, 0.2],
      [6, 0.24],
      [7, 0.28],
      [8, 0.33],
    ];
    for (const [month, day] of printed) {
      expectWithin(callNumber("ET.PEAK", month, 1, "US"), day, 0.0051);
    }
  },
);

published(
  {
    source: "USDA-NRCS, Part 683, Water Requirements, Colorado supplement",
    where:
      "C0683.12, average daily and peak period consumptive use: a period as long as one net irrigation lasts; the shorter, the greater its rate",
    seen: "read",
  },
  () => {
    const rates = [1, 2, 3, 4].map((net) => callNumber("ET.PEAK", 7, net, "US"));
    expect(rates).toEqual([...rates].sort((a, b) => b - a));
    expect(Math.min(...rates)).toBeGreaterThan(7 / 31);
  },
);
