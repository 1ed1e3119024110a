import { callNumber } from "../support/host";
import { expectClose, expectWithin, published } from "../support/published";

published(
  {
    source: "Pythagoras' theorem",
    where: "9 positions 20 apart, riser 60 off their ends: 80 along, 60 across, 100 straight",
    seen: "closed form",
  },
  () => {
    expectWithin(callNumber("FEEDER.LENGTH", 9, 20, 60), 100, 1e-9);
    expectWithin(callNumber("FEEDER.LENGTH", 9, 20), 80, 1e-9);
    expectWithin(callNumber("FEEDER.LENGTH", 1, 20, 60), 60, 1e-9);
  },
);

published(
  {
    source: "USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11 (2016)",
    where: "friction equation, velocity head and 2.31 ft a psi, summed by hand",
    seen: "from memory",
  },
  () => {
    // 50 gpm in 2.067 in: 1.730 psi in 100 ft; 4.781 ft/s is 0.1537 psi; 11.55 ft is 5 psi.
    const byHand = 45 + 3 * 1.7302 + 5 * 0.1537 + 5;
    expectClose(
      callNumber("FEEDER.PRESSURE", 45, 50, 2.067, 300, "US", 11.55, 150, 5),
      byHand,
      0.0002,
    );
  },
);
