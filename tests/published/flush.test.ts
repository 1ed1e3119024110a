import { callNumber } from "../support/host";
import { expectClose, published } from "../support/published";

published(
  {
    source: "Velocity in a full pipe, v = 0.4085 Q/d², as open waterworks calculators print it",
    where: "ft/s, gpm and in, solved for Q at 2 and at 3 ft/s",
    seen: "read in a secondary text",
  },
  () => {
    expectClose(callNumber("FLUSH.FLOW", 2.067, "US"), (2 * 2.067 ** 2) / 0.4085, 0.0005);
    expectClose(callNumber("FLUSH.FLOW", 1.5, "US", 3), (3 * 1.5 ** 2) / 0.4085, 0.0005);
  },
);

published(
  {
    source: "Extension table of water in pipe",
    where: "2 in holds 16.32 gal a 100 ft, 1 in 4.08: minutes to change it once and twice",
    seen: "read in a secondary text",
  },
  () => {
    expectClose(callNumber("FLUSH.TIME", 8, 2, 100, "US"), 16.32 / 8, 0.0005);
    expectClose(
      callNumber("FLUSH.TIME", 8, [[2], [1]], [[100], [200]], "US", 2),
      (2 * (16.32 + 8.16)) / 8,
      0.0005,
    );
  },
);
