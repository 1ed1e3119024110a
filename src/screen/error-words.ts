/** What the errors mean that a spreadsheet itself gives. */
const words: Readonly<Record<string, string>> = {
  "#NAME?": "the formula has a name that is no function and no named cell",
  "#DIV/0!": "the formula divides by 0 or by a blank cell",
  "#REF!": "the formula refers to a cell that is gone",
  "#SPILL!": "the result needs more cells than are free: clear the cells below and to the right",
  "#NUM!": "the formula gives a number that does not exist or is too large",
  "#N/A": "a value that the formula looks for is not there",
  "#VALUE!": "the formula gets text or an error where a number is due",
  "#CYCLE!": "the formula comes back to its own cell",
  "#CALC!": "the formula cannot be computed",
};

export function wordsOfError(code: string): string {
  return words[code] ?? "the formula has an error";
}
