import { InvalidInput, NoAnswer } from "../ground/domain-error";

type SheetFunction = (...cells: never[]) => unknown;

/**
 * Wraps a sheet function for the host: a domain error becomes the host's own error with its message
 * (only #VALUE! and #N/A show one), anything unexpected becomes a #VALUE! that says so, and no
 * result that is not finite leaves.
 */
export function guard(sheetFunction: SheetFunction): (...cells: unknown[]) => unknown {
  return (...cells) => {
    try {
      return finite(sheetFunction(...(withoutInvocation(cells) as never[])));
    } catch (error) {
      throw hostError(error);
    }
  };
}

/**
 * Hosts append an invocation object; with stale metadata it stands in the place of a newer optional
 * argument. It is a plain object without a data type's `type`, and means "omitted".
 */
function withoutInvocation(cells: unknown[]): unknown[] {
  const last = cells[cells.length - 1];
  const isInvocation =
    typeof last === "object" && last !== null && !Array.isArray(last) && !("type" in last);
  return isInvocation ? cells.slice(0, -1) : cells;
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

function hostError(error: unknown): CustomFunctions.Error {
  const { invalidValue, notAvailable } = CustomFunctions.ErrorCode;
  if (error instanceof NoAnswer) return new CustomFunctions.Error(notAvailable, error.message);
  if (error instanceof InvalidInput) return new CustomFunctions.Error(invalidValue, error.message);
  const message = error instanceof Error ? error.message : String(error);
  return new CustomFunctions.Error(invalidValue, `the function failed: ${message}`);
}
