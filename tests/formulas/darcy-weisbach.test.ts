import {
  darcyWeisbach,
  frictionFactor,
  frictionFactorElasticity,
} from "../../src/formulas/darcy-weisbach";
import { expectClose } from "../support/published";

test.each([500, 1999, 2500, 3999, 4001, 1e4, 1e5, 1e7])(
  "the slope of the factor at Re %p",
  (reynolds) => {
    for (const roughness of [0, 3e-5, 1e-2]) {
      const factor = frictionFactor(reynolds, roughness);
      const step = 1e-6;
      const rise = Math.log(frictionFactor(reynolds * (1 + step), roughness) / factor);
      const elasticity = frictionFactorElasticity(reynolds, roughness, factor);
      expect(elasticity).toBeCloseTo(rise / Math.log1p(step), 3);
    }
  },
);

test("the transition joins both ends on a straight line", () => {
  const roughness = 1e-4;
  const ends = (frictionFactor(2000, roughness) + frictionFactor(4000, roughness)) / 2;
  expectClose(frictionFactor(3000, roughness), ends, 1e-12);
  expect(frictionFactor(2000, roughness)).toBe(0.032);
});

test("no flow loses nothing, and the loss never falls as the flow rises", () => {
  expect(darcyWeisbach(0, 0.05, 100)).toBe(0);
  let before = 0;
  for (let flow = 1e-6; flow < 1e-2; flow *= 1.05) {
    const loss = darcyWeisbach(flow, 0.05, 100);
    expect(loss).toBeGreaterThan(before);
    before = loss;
  }
});

test("at the ends of the transition the slope is that of the formula outside it", () => {
  expect(frictionFactorElasticity(2000, 0, 0.032)).toBe(-1);
  // Smooth pipe: x = −2 log₁₀(2.51 x/Re), so with t = 2/(x ln 10) the elasticity is −2t/(1 + t).
  const factor = frictionFactor(4000, 0);
  const t = 2 / (Math.LN10 / Math.sqrt(factor));
  expectClose(frictionFactorElasticity(4000, 0, factor), (-2 * t) / (1 + t), 1e-12);
});
