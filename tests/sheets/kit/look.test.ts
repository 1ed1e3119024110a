import { verdictOf, WAITING } from "../../../src/sheets/kit/look";

test.each([
  ["OK", "passed"],
  [`${WAITING[0]}your answer`, "waiting"],
  ["Not judged: there is no plan.", "waiting"],
  ["", "waiting"],
  [null, "waiting"],
  ["speed of 7 ft/s is 2 ft/s above the limit", "failed"],
  ["Not checked: fix the input first", "failed"],
  ["#VALUE!", "failed"],
  ["ok", "failed"],
  [true, "failed"],
])("a check that says %p has %s", (value, verdict) => {
  expect(verdictOf(value)).toBe(verdict);
});
