import type { Design } from "../../src/solver/plan-design";
import { BestPlans, compareDesigns } from "../../src/solver/best-plans";
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

test("however small, a cost is not the same as none", () => {
  expect(compareDesigns(design({ cost: 0, ...worse }), design({ cost: 1e-30 }))).toBeLessThan(0);
});

describe("the best of those that are found", () => {
  const found = (
    count: number,
    plans: readonly (readonly [string, number])[],
    below = Infinity,
  ) => {
    const best = new BestPlans(count, below);
    for (const [kind, cost] of plans) best.add(kind, design({ cost }));
    return best;
  };
  const costs = (best: BestPlans) => best.plans().map(({ year }) => year.total);
  const four = [["a", 40] as const, ["b", 20] as const, ["c", 30] as const, ["d", 10] as const];

  test("stand in the order of their costs, whichever is found first", () => {
    expect(costs(found(4, four))).toEqual([10, 20, 30, 40]);
    expect(costs(found(4, [...four].reverse()))).toEqual([10, 20, 30, 40]);
  });

  test("as many as are wanted: the dearest leaves", () => {
    expect(costs(found(3, four))).toEqual([10, 20, 30]);
    expect(costs(found(1, four))).toEqual([10]);
    expect(costs(found(1, [...four].reverse()))).toEqual([10]);
  });

  test("one of each kind: the cheaper, wherever the dearer stood", () => {
    expect(costs(found(4, [...four, ["a", 5]]))).toEqual([5, 10, 20, 30]);
    expect(costs(found(4, [...four, ["c", 29]]))).toEqual([10, 20, 29, 40]);
    expect(costs(found(4, [...four, ["c", 31]]))).toEqual([10, 20, 30, 40]);
    expect(costs(found(4, [...four, ["d", 39], ["d", 9]]))).toEqual([9, 20, 30, 40]);
  });

  test("of equal ones in a kind the first in the lists, or the first found", () => {
    const best = new BestPlans(2, Infinity);
    const [late, early, same] = [{ pressure: 2 }, {}, {}].map(design);
    best.add("a", late);
    best.add("a", early);
    best.add("a", same);
    expect(best.plans()).toEqual([early]);
    expect(best.plans()[0]).toBe(early);
  });

  test("of different kinds that cost the same, as the lists have them", () => {
    const best = new BestPlans(3, Infinity);
    const plans = [{ spacing: 10 }, { spacing: 8 }, {}].map(design);
    plans.forEach((plan, i) => best.add(`${i}`, plan));
    expect(best.plans()).toEqual([plans[1], plans[2], plans[0]]);
  });

  test("only below a cost", () => {
    expect(costs(found(4, four, 30))).toEqual([10, 20]);
    expect(costs(found(4, four, 30 * (1 + 1e-15)))).toEqual([10, 20, 30]);
  });

  test("the bar of a new kind is what the dearest that is wanted costs and a tie, once there are as many", () => {
    const tie = 1 + 1e-9;
    expect(found(3, [], 77).bar("e")).toBe(77);
    expect(found(5, four, 77).bar("e")).toBe(77);
    expect(found(4, four).bar("e")).toBe(40 * tie);
    expect(found(2, four).bar("e")).toBe(20 * tie);
  });

  test("for a kind that is found, what that costs", () => {
    const tie = 1 + 1e-9;
    expect(found(5, four, 77).bar("c")).toBe(30 * tie);
    expect(found(5, four, 77).bar("e")).toBe(77);
    expect(found(4, four).bar("b")).toBe(20 * tie);
    expect(found(4, four).bar("e")).toBe(40 * tie);
  });
});
