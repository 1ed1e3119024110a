import { multipleOutletLoss } from "../../src/formulas/multiple-outlet-loss";
import { multipleOutletFactor } from "../../src/formulas/multiple-outlet-factor";
import { expectClose } from "../support/published";

const line = { flow: 0.003, bore: 0.05, length: 180, outlets: 12, firstRatio: 0.5 };

test("a given law is summed over the segments, as Hazen–Williams is by its factor", () => {
  const power = {
    law: "given",
    gradient: (flow: number, bore: number) => flow ** 1.852 / bore,
  } as const;
  const spacing = 180 / 11.5;
  let expected = 0.5 * spacing * 0.003 ** 1.852;
  for (let i = 1; i < 12; i++) expected += spacing * ((0.003 * i) / 12) ** 1.852;
  const metersOfWater = multipleOutletLoss({ ...line, friction: power }) / (998.2 * 9.80665);
  expectClose(metersOfWater, expected / 0.05, 1e-12);
  expectClose(
    metersOfWater,
    (multipleOutletFactor(12, 1.852, 0.5) * 180 * 0.003 ** 1.852) / 0.05,
    1e-12,
  );
});

test("no flow loses nothing under a law that cannot take 0", () => {
  const friction = { law: "given", gradient: (flow: number) => 1 / flow } as const;
  expect(multipleOutletLoss({ ...line, flow: 0, friction })).toBe(0);
});
