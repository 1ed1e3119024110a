/**
 * What formulas, tables and the solver throw. They know nothing of cells: the boundary turns
 * the first into the host's #VALUE! and the second into #N/A, message and all.
 */
export class InvalidInput extends Error {
  override name = "InvalidInput";
}

/** The input is valid, but there is no answer: no such entry, the pressure runs out, no pipe fits. */
export class NoAnswer extends Error {
  override name = "NoAnswer";
}
