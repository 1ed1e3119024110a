import { March } from "../../src/solver/march";

/** How many lines a search solves; each asks once for the limit at rest. */
export function linesSolved(search: () => unknown): number {
  const limit = jest.spyOn(March.prototype, "dryLimit");
  try {
    search();
    return limit.mock.calls.length;
  } finally {
    limit.mockRestore();
  }
}
