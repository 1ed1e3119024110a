import { InvalidInput, NoAnswer } from "../ground/domain-error";

type SheetFunction = (...cells: never[]) => unknown;

/** A sheet function as every host gets it: a value or a table of finite cells, or a CellError. */
export type GuardedFunction = (...cells: unknown[]) => unknown;

/** The only two errors that every host has and that show their message where one is shown. */
export type CellErrorCode = "#VALUE!" | "#N/A";

/** An error for a cell, whatever the host: a host's adapter turns it into that host's own. */
export class CellError extends Error {
  override name = "CellError";

  constructor(
    readonly code: CellErrorCode,
    message: string,
  ) {
    super(message);
  }
}

/**
 * Wraps a sheet function for any host: a domain error becomes a CellError with its message,
 * anything unexpected becomes a #VALUE! that says so, and no result that is not finite leaves.
 */
export function guard(sheetFunction: SheetFunction): GuardedFunction {
  return (...cells) => {
    try {
      return finite(sheetFunction(...(cells as never[])));
    } catch (error) {
      throw cellError(error);
    }
  };
}

function finite(result: unknown): unknown {
  const cells = Array.isArray(result) ? (result as unknown[][]).flat() : [result];
  if (cells.some((cell) => typeof cell === "number" && !Number.isFinite(cell))) {
    throw new InvalidInput(
      "the result is beyond the range of numbers: check the size and the units of the arguments",
    );
  }
  return result;
}

function cellError(error: unknown): CellError {
  if (error instanceof NoAnswer) return new CellError("#N/A", error.message);
  if (error instanceof InvalidInput) return new CellError("#VALUE!", error.message);
  const message = error instanceof Error ? error.message : String(error);
  return new CellError("#VALUE!", `the function failed: ${message}`);
}
