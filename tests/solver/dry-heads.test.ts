import { NoAnswer } from "../../src/ground/domain-error";
import { dryHeads, requireAllRunning } from "../../src/solver/dry-heads";

test("says which head is the first without flow, the first of all too", () => {
  expect(() => requireAllRunning([2, 1])).not.toThrow();
  expect(() => requireAllRunning([2, 0, 0])).toThrow("pressure runs out at head 2 of 3");
  expect(() => requireAllRunning([0, 1])).toThrow("pressure runs out at head 1 of 2");
  expect(() => requireAllRunning([0])).toThrow(NoAnswer);
  expect(dryHeads([2, 0, 1, 0])).toBe(2);
});
