import fc from "fast-check";
import { fitPowerLaw } from "../../src/formulas/power-law-fit";

test("no other exponent and coefficient lie closer to the points, on logarithms", () => {
  const positive = fc.double({ min: 0.5, max: 50, noNaN: true });
  fc.assert(
    fc.property(
      fc.uniqueArray(fc.integer({ min: 1, max: 90 }), { minLength: 2, maxLength: 6 }),
      fc.array(positive, { minLength: 6, maxLength: 6 }),
      (pressures, someFlows) => {
        const flows = someFlows.slice(0, pressures.length);
        const { coefficient, exponent } = fitPowerLaw(pressures, flows);
        const misfit = (k: number, x: number) =>
          pressures.reduce(
            (sum, pressure, i) =>
              sum + (Math.log(flows[i]) - Math.log(k) - x * Math.log(pressure)) ** 2,
            0,
          );
        const best = misfit(coefficient, exponent);
        for (const [k, x] of [
          [1.01, 0],
          [0.99, 0],
          [1, 0.01],
          [1, -0.01],
        ]) {
          expect(misfit(coefficient * k, exponent + x)).toBeGreaterThan(best);
        }
      },
    ),
  );
});
