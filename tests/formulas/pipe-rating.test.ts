import { temperatureFactor } from "../../src/formulas/pipe-rating";
import { INCH_FACTORS, METRIC_FACTORS } from "../../src/tables/temperature-factors";

test.each([
  ["ISO PE", METRIC_FACTORS],
  ["IPS PE", INCH_FACTORS],
  ["SIDR", INCH_FACTORS],
] as const)(
  "%s goes through every row of its table, by straight lines between",
  (series, table) => {
    table.forEach(([temperature, factor], row) => {
      expect(temperatureFactor(series, temperature)).toBeCloseTo(factor, 12);
      if (row === 0) return;
      const [cooler, coolerFactor] = table[row - 1];
      expect(temperatureFactor(series, (temperature + cooler) / 2)).toBeCloseTo(
        (factor + coolerFactor) / 2,
        12,
      );
    });
  },
);

test("the tables stand in kelvin", () => {
  expect(METRIC_FACTORS.map(([temperature]) => temperature)).toEqual([293.15, 303.15, 313.15]);
  expect(INCH_FACTORS[0][0]).toBeCloseTo(295.928, 3);
  expect(INCH_FACTORS[7][0]).toBeCloseTo(333.15, 9);
});
