import { callNumber } from "../support/host";
import { expectClose, published } from "../support/published";

const G = 9.80665;

published(
  {
    source: "Falling head of a uniform tank, t = (A/(C a)) √(2h/g)",
    where: "tank of 2.5 m radius and 2 m depth, opening of 10 mm radius: 39 909 s at C 1",
    seen: "read in a secondary text",
  },
  () => {
    // Ours has the opening's coefficient of 0.61, and g 9.80665 where the example has 9.81.
    expectClose(callNumber("DRAIN.TIME", 5000, 2, 2, "SI", 20) * 60, 39909 / 0.61, 0.0003);
  },
);

published(
  {
    source: "Torricelli's falling head along a sloping line",
    where: "t = L √(2k/(g F)), k = (A/(C a))² − 1, where friction is nothing beside the jet",
    seen: "closed form",
  },
  () => {
    const k = ((50 / 2) ** 2 / 0.61) ** 2 - 1;
    expectClose(
      callNumber("DRAIN.TIME", 50, 40, 3, "SI", 2) * 60,
      40 * Math.sqrt((2 * k) / (G * 3)),
      0.0005,
    );
  },
);

published(
  {
    source: "Hazen–Williams and continuity",
    where:
      "whole end open: the fall is the friction at 20 gpm in 2 in, so 16.32 gal a 100 ft run out at 20 gpm",
    seen: "closed form",
  },
  () => {
    const fallPer100 = 1050 * (20 / 150) ** 1.852 * 2 ** -4.87;
    expectClose(callNumber("DRAIN.TIME", 2, 400, 4 * fallPer100, "US"), (4 * 16.32) / 20, 0.0005);
  },
);

published(
  {
    source: "SciPy 1.17.1, quad over the speed of the column and brentq",
    where: "t = L/V + (k/2g) ∫ dV/(F/L − J(V)) with Hazen–Williams, three lines",
    seen: "independent engine",
  },
  () => {
    expectClose(callNumber("DRAIN.TIME", 44, 100, 2, "SI", 20), 4.735077143446782, 1e-7);
    expectClose(
      callNumber("DRAIN.TIME", 55, 192.024, 3.84048, "SI", 55, 140),
      3.548766589467661,
      1e-7,
    );
    expectClose(callNumber("DRAIN.TIME", 1.94, 630, 12.6, "US", 0.75), 8.981000996823356, 1e-7);
  },
);

published(
  {
    source: "Communicating vessels",
    where: "a V of 10 m and 10 m stays full between equal ends; 4.08 D² gal a 100 ft in inches",
    seen: "closed form",
  },
  () => {
    expectClose(
      callNumber("DRAIN.TRAPPED", [[0], [10], [20]], [[0], [-1], [0]], 50, "SI"),
      (Math.PI / 4) * 0.05 ** 2 * 20 * 1000,
      1e-12,
    );
    // 100 ft down 2 ft, then 100 ft up 1 ft: the lower end lets the water down to its own level,
    // so half of the first run and the whole second one stay full.
    expectClose(
      callNumber("DRAIN.TRAPPED", [0, 100, 200], [2, 0, 1], 2, "US"),
      4.08 * 4 * 1.5,
      0.0005,
    );
  },
);
