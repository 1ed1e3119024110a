import { NoAnswer } from "../ground/domain-error";
import type { SolvedLine } from "./solve-line";

/** What stands or runs in the tubing at a head, and whether its nozzle runs. */
export type WaterAtHead = "runs" | "dry" | "part full" | "empty";

/** A nozzle can be dry above full tubing; air stands only where the tubing has no pressure. */
export function waterAt(
  { headFlow, linePressure, segmentFlow }: SolvedLine,
  head: number,
): WaterAtHead {
  if (headFlow[head] > 0) return "runs";
  if (linePressure[head] > 0) return "dry";
  return segmentFlow[head] > 0 ? "part full" : "empty";
}

/** Index of the head nearest the inlet with air in its tubing; -1 where there is none. */
export function firstInAir(solved: SolvedLine): number {
  return solved.linePressure.indexOf(0);
}

/** How many heads have no flow. */
export function dryHeads(headFlow: readonly number[]): number {
  return headFlow.filter((flow) => flow === 0).length;
}

/** Says where the pressure runs out, if it does: heads without flow have none. */
export function requireAllRunning(solved: SolvedLine): void {
  const heads = solved.headFlow.length;
  const firstDry = solved.headFlow.indexOf(0);
  if (firstDry < 0) return;
  const crest = firstInAir(solved);
  const { elevation } = solved.line;
  // On ground that only rises nobody would take the line for a siphon; without air there is no crest
  // for any ground to lie below.
  if (elevation.slice(crest).some((height) => height < elevation[crest])) {
    throw new NoAnswer(
      `air gets in at head ${crest + 1} of ${heads}, which stands above what is left of the pressure, ` +
        "and what lies beyond is no siphon: raise the inlet pressure, use larger tubing or fewer heads, " +
        "or lay the line around that ground",
    );
  }
  throw new NoAnswer(
    `pressure runs out at head ${firstDry + 1} of ${heads}: ` +
      "raise the inlet pressure, use larger tubing or fewer heads",
  );
}
