import { CellError, type GuardedFunction } from "../boundary/guard";

/** A guarded function as the host's runtime calls it: no invocation object in, the host's error out. */
export function inExcel(guarded: GuardedFunction): GuardedFunction {
  return (...cells) => {
    try {
      return guarded(...withoutInvocation(cells));
    } catch (error) {
      throw error instanceof CellError ? hostError(error) : error;
    }
  };
}

/**
 * The host appends an invocation object; with stale metadata it stands in the place of a newer
 * optional argument. It is a plain object without a data type's `type`, and means "omitted".
 */
function withoutInvocation(cells: unknown[]): unknown[] {
  const last = cells[cells.length - 1];
  const isInvocation =
    typeof last === "object" && last !== null && !Array.isArray(last) && !("type" in last);
  return isInvocation ? cells.slice(0, -1) : cells;
}

function hostError({ code, message }: CellError): CustomFunctions.Error {
  const { invalidValue, notAvailable } = CustomFunctions.ErrorCode;
  return new CustomFunctions.Error(code === "#N/A" ? notAvailable : invalidValue, message);
}
