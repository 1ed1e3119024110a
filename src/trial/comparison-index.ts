interface ComparisonIndex {
  canUseCache(...range: never[]): {
    rowsInCache: [number, number][];
    rowsNotInCache: [number, number][];
  };
}

/**
 * The formula engine keeps an index of cell values, and from the second comparison of a cell on asks
 * it instead of the cell. It keeps values in small letters: an error code is then a text like any
 * other, which is above every number, and "more than the limit?" answers TRUE where the host answers
 * with the error; a text of digits is then a number. Without the index every comparison reads the
 * cell.
 */
export function compareWithoutIndex(index: ComparisonIndex): void {
  index.canUseCache = () => ({ rowsInCache: [], rowsNotInCache: [] });
}
