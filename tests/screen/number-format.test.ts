import { formatValue } from "../../src/screen/number-format";

test.each([
  [46.137, "0.0", "46.1"],
  [46.137, "0.00", "46.14"],
  [45, "0.##", "45"],
  [45.5, "0.##", "45.5"],
  [0.126, "0.0%", "12.6%"],
  [1234567.8, "#,##0", "1,234,568"],
  [1234.5, "0.0", "1234.5"],
  [-0.004, "0.00", "0.00"],
  [-1.5, "0.0", "-1.5"],
  [7, '0 "days"', "7"],
  // By its decimals, as a spreadsheet rounds it, not by the binary number behind them.
  [2.675, "0.00", "2.68"],
])("%p in %p is %p", (value, code, shown) => {
  expect(formatValue(value, code)).toBe(shown);
});

test("without a code, a number shows the digits it has, ten at most", () => {
  expect(formatValue(0.1 + 0.2)).toBe("0.3");
  expect(formatValue(1 / 3)).toBe("0.3333333333");
});

test("text, truth and nothing show as in a cell", () => {
  expect(formatValue("US", "0.0")).toBe("US");
  expect(formatValue(true)).toBe("TRUE");
  expect(formatValue(null)).toBe("");
});
