import fc from "fast-check";
import { fromCents, sumOfCents, toCents } from "../../src/formulas/money";

describe("money in whole cents", () => {
  test("decimals multiply as by hand, half a cent up", () => {
    // Hundredths times thousandths: cents are the thousandth part of a whole product.
    const hundredths = fc.integer({ min: 0, max: 10_000_000 });
    const thousandths = fc.integer({ min: 0, max: 1_000_000 });
    fc.assert(
      fc.property(hundredths, thousandths, (quantity, price) => {
        const byHand = (BigInt(quantity) * BigInt(price) + 500n) / 1000n;
        expect(toCents(quantity / 100, price / 1000)).toBe(byHand);
      }),
    );
  });

  test("very large and very small factors", () => {
    expect(toCents(1e12, 10)).toBe(1_000_000_000_000_000n);
    expect(toCents(1e-300, 1)).toBe(0n);
    expect(toCents(2e-300, 3e300)).toBe(600n);
    expect(toCents(0.005)).toBe(1n);
    expect(toCents(0.00499999999999999)).toBe(0n);
    expect(() => toCents(1e12, 1e12)).toThrow("an amount is too large to give to the cent");
  });

  test("sums stay exact, or say that they cannot", () => {
    expect(fromCents(sumOfCents(10n, 20n, 3n))).toBe(0.33);
    expect(sumOfCents()).toBe(0n);
    const most = BigInt(Number.MAX_SAFE_INTEGER);
    expect(sumOfCents(most - 1n, 1n)).toBe(most);
    expect(() => sumOfCents(most, 1n)).toThrow("too large");
  });
});

test("amounts whose cents have no fraction left to round", () => {
  expect(toCents(1e12)).toBe(10n ** 14n);
  expect(toCents(1.5e13)).toBe(15n * 10n ** 14n);
});
