import { NoAnswer } from "../../src/ground/domain-error";
import { MOST_WORK, PlanWork, TooMuchWork } from "../../src/solver/plan-work";

const HAZEN_WILLIAMS = { law: "Hazen–Williams", c: 150 } as const;

describe("work of a search for a plan", () => {
  test("adds up until it is too much", () => {
    const work = new PlanWork(HAZEN_WILLIAMS);
    work.count(MOST_WORK - 10);
    work.count(10);
    expect(() => work.count(1)).toThrow(TooMuchWork);
    expect(() => work.count(1)).toThrow(NoAnswer);
    expect(() => work.count(1)).toThrow(
      "spacings, moves, pressures, sprinklers, tubing and feeders make more plans to tell apart than a cell can wait for: give fewer of them",
    );
  });

  test("heads passed count too, those by Darcy–Weisbach as many times as they take longer", () => {
    for (const [friction, times] of [
      [HAZEN_WILLIAMS, 1],
      [{ law: "given", gradient: () => 0 }, 1],
      [{ law: "Darcy" }, 4],
    ] as const) {
      const work = new PlanWork(friction);
      work.passed = (MOST_WORK - 100) / times;
      work.count(100);
      expect(() => work.count(1)).toThrow(TooMuchWork);
    }
  });

  test("begins again", () => {
    const work = new PlanWork(HAZEN_WILLIAMS);
    work.passed = MOST_WORK;
    expect(() => work.count(1)).toThrow(TooMuchWork);
    work.renew();
    work.count(MOST_WORK);
    expect(() => work.count(1)).toThrow(TooMuchWork);
    work.renew();
    expect(work.passed).toBe(0);
  });
});
