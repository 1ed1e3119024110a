import type { Design } from "../../src/solver/plan-design";
import { compareDesigns } from "../../src/solver/plan-search";
import type { TubingChoice } from "../../src/solver/plan-tubing";

const whole: TubingChoice = { larger: 1, smaller: 1, change: 9, price: 0 };

interface Told {
  readonly cost?: number;
  readonly spacing?: number;
  readonly move?: number;
  readonly sprinkler?: number;
  readonly pressure?: number;
  readonly feeder?: number;
  readonly tubing?: TubingChoice;
}

/** A design by what the order looks at. */
function design(told: Told): Design {
  const { cost = 100, spacing = 9, move = 12, tubing = whole } = told;
  const { sprinkler = 1, pressure = 1, feeder = 1 } = told;
  return {
    choice: { laid: { spacing, move }, sprinkler, pressure, tubing, feeder },
    year: { total: cost },
  } as unknown as Design;
}

/** Each of these goes before a design with nothing told, whatever stands behind it in the order. */
const worse: Told = { spacing: 10, move: 13, sprinkler: 2, pressure: 2, feeder: 2 };
const before: readonly (readonly [string, Told])[] = [
  ["cheaper by more than a tie", { ...worse, cost: 100 * (1 - 1.1e-9) }],
  ["more of the larger size", { ...worse, tubing: { ...whole, larger: 0, smaller: 0 } }],
  ["a smaller spacing", { ...worse, spacing: 8 }],
  ["a smaller move", { ...worse, spacing: 9, move: 11 }],
  ["an earlier sprinkler", { sprinkler: 0, pressure: 2, feeder: 2 }],
  ["an earlier pressure", { pressure: 0, feeder: 2 }],
  ["an earlier feeder", { feeder: 0 }],
];

test.each(before)("%s goes first", (_, told) => {
  expect(compareDesigns(design(told), design({}))).toBeLessThan(0);
  expect(compareDesigns(design({}), design(told))).toBeGreaterThan(0);
});

test("costs within a tie do not count, and one design is as good as itself", () => {
  const tied = design({ cost: 100 * (1 - 0.9e-9), feeder: 2 });
  expect(compareDesigns(tied, design({}))).toBeGreaterThan(0);
  expect(compareDesigns(design({}), design({}))).toBe(0);
});
