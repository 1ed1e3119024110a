import { NoAnswer } from "../../src/ground/domain-error";
import { dryHeads, firstInAir, requireAllRunning, waterAt } from "../../src/solver/dry-heads";
import type { SolvedLine } from "../../src/solver/solve-line";

/** A solved line of which only this is asked. */
function line(
  headFlow: number[],
  linePressure = headFlow.map(() => 1),
  elevation = headFlow.map(() => 0),
): SolvedLine {
  const segmentFlow = headFlow.map((_, i) => headFlow.slice(i).reduce((sum, q) => sum + q, 0));
  return { headFlow, linePressure, segmentFlow, line: { elevation } } as unknown as SolvedLine;
}

test("says which head is the first without flow, the first of all too", () => {
  const act = (flows: number[]) => () => requireAllRunning(line(flows));
  expect(act([2, 1])).not.toThrow();
  expect(act([2, 0, 0])).toThrow("pressure runs out at head 2 of 3: raise the inlet pressure");
  expect(act([0, 1])).toThrow("pressure runs out at head 1 of 2");
  expect(act([0])).toThrow(NoAnswer);
  expect(dryHeads([2, 0, 1, 0])).toBe(2);
});

test("names the head that lets air in, where lower ground beyond could pass for a siphon", () => {
  const act = (heights: number[]) => () => requireAllRunning(line([2, 0, 0], [5, 0, 0], heights));
  for (const heights of [
    [0, 9, 8],
    [9, 8, 7],
  ]) {
    expect(act(heights)).toThrow(
      /^air gets in at head 2 of 3, which stands above what is left of the pressure, and what lies beyond is no siphon: raise/,
    );
    expect(act(heights)).toThrow(NoAnswer);
  }
  expect(() => requireAllRunning(line([0, 0], [0, 0], [9, 8]))).toThrow(
    /^air gets in at head 1 of 2/,
  );
  // On ground that only rises, or stays level, there is nothing to fall to.
  expect(act([0, 8, 9])).toThrow("pressure runs out at head 2 of 3");
  expect(act([0, 8, 8])).toThrow("pressure runs out at head 2 of 3");
  // Lower ground before the head does not count, nor does a head that is dry above full tubing.
  expect(() => requireAllRunning(line([2, 0, 1], [5, 3, 4], [0, 9, 8]))).toThrow(
    "pressure runs out at head 2 of 3",
  );
});

test("what the water does at a head", () => {
  const crest = line([2, 0, 0, 0, 1, 0], [5, 3, 0, 0, 4, 0]);
  expect([0, 1, 2, 3, 4, 5].map((head) => waterAt(crest, head))).toEqual([
    "runs",
    "dry",
    "part full",
    "part full",
    "runs",
    "empty",
  ]);
  expect(firstInAir(crest)).toBe(2);
  expect(firstInAir(line([1, 1]))).toBe(-1);
});
