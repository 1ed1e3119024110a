import { NoAnswer } from "../ground/domain-error";
import { keepBetween } from "./keep-between";
import { firstHeads, type Line } from "./line";
import { keepsWithin, type LineLimits } from "./line-limits";
import { type SolvedLine, solveLine } from "./solve-line";

/**
 * The most heads of a line, cut off behind one head after another, for which it and every shorter
 * one keeps within the limits: so the search stops at the first that does not.
 *
 * Where two lengths leave no doubt about those between them, these are passed without being solved;
 * the leap doubles after each that succeeds and halves after each that does not.
 */
export function mostHeads(longest: Line, limits: LineLimits): number {
  const available = longest.bore.length;
  let heads = 0;
  let shorter: SolvedLine | undefined;
  let leap = 1;
  while (heads < available) {
    const more = Math.min(leap, available - heads);
    const longer = solvedIfAny(firstHeads(longest, heads + more));
    if (
      longer !== undefined &&
      keepsWithin(limits, longer) &&
      (shorter === undefined || keepBetween(shorter, longer, limits.variation))
    ) {
      heads += more;
      shorter = longer;
      leap = 2 * more;
    } else if (more === 1) {
      break;
    } else {
      leap = Math.floor(more / 2);
    }
  }
  if (heads === 0) {
    throw new NoAnswer(
      "even a line of one head does not keep within the limits: raise the inlet pressure, use larger tubing or looser limits",
    );
  }
  return heads;
}

/** A line far beyond all limits may have no answer: it keeps within none. */
function solvedIfAny(line: Line): SolvedLine | undefined {
  try {
    return solveLine(line);
  } catch (error) {
    if (error instanceof NoAnswer) return undefined;
    throw error;
  }
}
