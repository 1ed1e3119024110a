import fc from "fast-check";
import { NoAnswer } from "../../src/formulas/domain-error";
import { firstHeads } from "../../src/solver/line";
import { keepsWithin } from "../../src/solver/line-limits";
import { mostHeads } from "../../src/solver/most-heads";
import { solveLine } from "../../src/solver/solve-line";
import { randomLine } from "../support/random-line";

test("is the head before the first line that fails, whatever longer ones do", () => {
  const limits = fc.record({
    variation: fc.constantFrom(0.1, 0.2, 0.5),
    lowest: fc.constantFrom(0, 1e5),
    speed: fc.constantFrom(Infinity, 1.5),
  });
  let answered = 0;
  fc.assert(
    fc.property(randomLine, limits, (line, within) => {
      const passes = line.bore.map((_, i) =>
        keepsWithin(within, solveLine(firstHeads(line, i + 1))),
      );
      const firstFailing = passes.indexOf(false);
      if (firstFailing === 0) {
        expect(() => mostHeads(line, within)).toThrow(NoAnswer);
        return;
      }
      answered++;
      expect(mostHeads(line, within)).toBe(firstFailing < 0 ? passes.length : firstFailing);
    }),
    { numRuns: 120, seed: 9 },
  );
  expect(answered).toBeGreaterThan(30);
});
