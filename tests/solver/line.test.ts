import { orificeLaw } from "../../src/formulas/discharge-law";
import { firstHeads, type Line } from "../../src/solver/line";

test("a line cut off keeps what belongs to its heads and to the whole", () => {
  const line: Line = {
    inletPressure: 3e5,
    segmentLength: [1, 2, 3],
    bore: [4, 5, 6],
    elevation: [7, 8, 9],
    riser: 0.5,
    discharge: orificeLaw(1),
    regulatorSet: [10, 11, 12],
    regulatorLoss: [13, 14, 15],
    friction: { law: "Darcy" },
  };
  expect(firstHeads(line, 2)).toEqual({
    ...line,
    segmentLength: [1, 2],
    bore: [4, 5],
    elevation: [7, 8],
    regulatorSet: [10, 11],
    regulatorLoss: [13, 14],
  });
});
