import { callNumber } from "../support/host";
import { expectClose, published } from "../support/published";

published(
  {
    source: "USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11 (2016)",
    where: "friction equation J = 1050 (Q/C)^1.852 D^-4.87, recomputed by hand",
    seen: "from memory",
  },
  () => {
    expectClose(callNumber("PIPE.FRICTION", 50, 2.067, 100, "US", 150), 1.7302, 0.001);
  },
);
