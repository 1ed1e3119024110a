import { NoAnswer } from "../formulas/domain-error";
import { firstHeads, type Line } from "./line";
import { keepsWithin, type LineLimits } from "./line-limits";
import { solveLine } from "./solve-line";

/**
 * The most heads of a line, cut off behind one head after another, for which it and every shorter
 * one keeps within the limits: so the search stops at the first that does not.
 */
export function mostHeads(longest: Line, limits: LineLimits): number {
  const available = longest.bore.length;
  let heads = 0;
  while (heads < available && keepsWithin(limits, solveLine(firstHeads(longest, heads + 1)))) {
    heads++;
  }
  if (heads === 0) {
    throw new NoAnswer(
      "even a line of one head does not keep within the limits: raise the inlet pressure, use larger tubing or looser limits",
    );
  }
  return heads;
}
