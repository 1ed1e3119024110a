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
    source: "EPANET 2.2 Users Manual, draft (2019)",
    where:
      "tables 3.1 and 3.3: Hazen–Williams 4.727 C^−1.852 d^−4.871 L q^1.852 and K v²/2g, summed by hand with 2.31 ft a psi",
    seen: "read",
  },
  () => {
    // 50 gpm in 2.067 in: 1.723 psi in 100 ft; 4.781 ft/s is 0.1538 psi; 11.55 ft is 5 psi.
    const byHand = 45 + 3 * 1.7228 + 5 * 0.1538 + 5;
    expectClose(
      callNumber("FEEDER.PRESSURE", 45, 50, 2.067, 300, "US", 11.55, 150, 5),
      byHand,
      0.0006,
    );
  },
);
