import { CellError, type GuardedFunction } from "../boundary/guard";

/**
 * A guarded function as a Google sheet calls it. There an argument left out is undefined, an empty
 * cell is "", and an error shows as #ERROR! with what was thrown: the code goes in front of the
 * message.
 */
export function inGoogle(guarded: GuardedFunction): GuardedFunction {
  return (...cells) => {
    try {
      return guarded(...cells.map(handed));
    } catch (error) {
      throw error instanceof CellError ? new Error(`${error.code} ${error.message}`) : error;
    }
  };
}

function handed(cell: unknown): unknown {
  if (cell === undefined || cell === "") return null;
  const cells = Array.isArray(cell) ? (cell as unknown[]).flat() : [cell];
  if (cells.some(isDate)) throw new CellError("#VALUE!", "a date stands where a number is needed");
  return cell;
}

/** Of whatever context: a script of a sheet has its own Date. */
function isDate(cell: unknown): boolean {
  return Object.prototype.toString.call(cell) === "[object Date]";
}
