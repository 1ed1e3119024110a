import { callNumber, callTable } from "../support/host";
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

published(
  {
    source: "Plane geometry",
    where: "near ends 50 apart in a row: a reach of 100 serves five, 99 four; 3-4-5 triangles",
    seen: "closed form",
  },
  () => {
    const row = (count: number) => Array.from({ length: count }, (_, i) => [30 * i, 40 * i]);
    const hydrants = callTable("FEEDER.HYDRANTS", row(7), 100).slice(1);
    expect(hydrants.map((hydrant) => [hydrant[3], hydrant[4]])).toEqual([
      [1, 5],
      [6, 7],
    ]);
    expectWithin(hydrants[0][1], 60, 1e-6);
    expectWithin(hydrants[0][2], 80, 1e-6);
    expectWithin(hydrants[0][5], 100, 1e-6);
    expectWithin(hydrants[1][1], 165, 1e-6);
    expectWithin(hydrants[1][5], 25, 1e-6);
    const shorter = callTable("FEEDER.HYDRANTS", row(7), 99).slice(1);
    expect(shorter.map((hydrant) => [hydrant[3], hydrant[4]])).toEqual([
      [1, 4],
      [5, 7],
    ]);
    const reach = callTable(
      "FEEDER.REACH",
      row(3),
      [
        [0, 0],
        [90, 40],
      ],
      45,
    ).slice(1);
    [
      [1, 1, 0, 45],
      [2, 1, 50, -5],
      [3, 2, 50, -5],
    ].forEach((expected, i) =>
      expected.forEach((value, j) => expectWithin(reach[i][j], value, 1e-9)),
    );
  },
);
