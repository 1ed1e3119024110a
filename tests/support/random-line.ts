import fc from "fast-check";
import { chartLaw, type DischargeLaw, orificeLaw } from "../../src/formulas/discharge-law";
import type { FrictionLaw } from "../../src/formulas/friction";
import type { Line } from "../../src/solver/line";

/** A chart in SI: pressures rising, flows never falling, exponents from 0 to 2 or so. */
const chart: fc.Arbitrary<DischargeLaw> = fc
  .array(
    fc.tuple(
      fc.double({ min: 1.05, max: 2, noNaN: true }),
      fc.double({ min: 0, max: 2, noNaN: true }),
    ),
    {
      minLength: 1,
      maxLength: 4,
    },
  )
  .map((steps) => {
    const pressures = [1e5];
    const flows = [2e-4];
    for (const [ratio, exponent] of steps) {
      pressures.push(pressures[pressures.length - 1] * ratio);
      flows.push(flows[flows.length - 1] * ratio ** exponent);
    }
    return chartLaw(pressures, flows);
  });

const orifice: fc.Arbitrary<DischargeLaw> = fc
  .double({ min: 1e-5, max: 1e-3, noNaN: true })
  .map((flow) => orificeLaw(flow / Math.sqrt(3e5)));

const friction: fc.Arbitrary<FrictionLaw> = fc.oneof(
  fc.integer({ min: 50, max: 200 }).map((c): FrictionLaw => ({ law: "Hazen–Williams", c })),
  fc.constant<FrictionLaw>({ law: "Darcy" }),
);

/**
 * Lines as a field has them and worse: 1 to 60 heads, level, up and down with crests, regulators or
 * none, tubing that may be far too small, inlet pressures that may run out.
 */
export const randomLine: fc.Arbitrary<Line> = fc
  .record({
    heads: fc.integer({ min: 1, max: 60 }),
    inletPressure: fc.double({ min: 1e4, max: 1e6, noNaN: true }),
    discharge: fc.oneof(orifice, chart),
    friction,
    riser: fc.constantFrom(0, 0.6),
    regulated: fc.constantFrom("none", "all", "some"),
    level: fc.boolean(),
  })
  .chain(({ heads, regulated, level, ...alike }) => {
    const perHead = (min: number, max: number) =>
      fc.array(fc.double({ min, max, noNaN: true }), { minLength: heads, maxLength: heads });
    return fc
      .record({
        segmentLength: perHead(1, 30),
        bore: perHead(0.015, 0.1),
        elevation: level ? fc.constant(new Array<number>(heads).fill(0)) : perHead(-15, 15),
        set: perHead(1e5, 4e5),
        has: fc.array(fc.boolean(), { minLength: heads, maxLength: heads }),
      })
      .map(({ set, has, ...line }) => {
        const on = has.map((some) => regulated === "all" || (regulated === "some" && some));
        return {
          ...alike,
          ...line,
          regulatorSet: set.map((pressure, i) => (on[i] ? pressure : Infinity)),
          regulatorLoss: set.map((_, i) => (on[i] ? 34500 : 0)),
        };
      });
  });
