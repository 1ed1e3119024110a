import { NoAnswer } from "../ground/domain-error";

/** Says where the pressure runs out, if it does: heads without flow have none. */
export function requireAllRunning(headFlow: readonly number[]): void {
  const firstDry = headFlow.indexOf(0);
  if (firstDry >= 0) {
    throw new NoAnswer(
      `pressure runs out at head ${firstDry + 1} of ${headFlow.length}: ` +
        "raise the inlet pressure, use larger tubing or fewer heads",
    );
  }
}

/** How many heads have no flow. */
export function dryHeads(headFlow: readonly number[]): number {
  return headFlow.filter((flow) => flow === 0).length;
}
