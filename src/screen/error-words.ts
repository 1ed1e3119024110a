/** What the errors mean that a spreadsheet itself gives. */
const words: ReadonlyMap<unknown, string> = new Map(
  Object.entries({
    "#NAME?": "the formula has a name that is no function and no named cell",
    "#DIV/0!": "the formula divides by 0 or by a blank cell",
    "#REF!": "the formula refers to a cell that is gone",
    "#SPILL!": "the result needs more cells than are free: clear the cells below and to the right",
    "#NUM!": "the formula gives a number that does not exist or is too large",
    "#N/A": "a value that the formula looks for is not there",
    "#VALUE!": "the formula gets text or an error where a number is due",
    "#CYCLE!": "the formula comes back to its own cell",
    "#NULL!": "the formula asks for the cells that two ranges share, and they share none",
    "#CALC!": "the formula cannot be computed",
  }),
);

export function isErrorCode(value: unknown): value is string {
  return words.has(value);
}

export function wordsOfError(code: string): string {
  return words.get(code) ?? "the formula has an error";
}
