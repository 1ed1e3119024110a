import "../support/host";
import { CellError, type CellErrorCode } from "../../src/boundary/guard";
import { inExcel } from "../../src/hosts/excel";
import { HostError } from "../support/host";

const throws = (error: unknown) =>
  inExcel(() => {
    throw error;
  });

test.each<[CellErrorCode, string]>([
  ["#VALUE!", "inside must be above 0 in; got -1"],
  ["#N/A", "no pipe on the list is large enough"],
])("%s becomes the host's own, with its message", (code, message) => {
  let thrown: unknown;
  try {
    throws(new CellError(code, message))();
  } catch (error) {
    thrown = error;
  }
  expect(thrown).toBeInstanceOf(HostError);
  expect(thrown).toMatchObject({ code, message });
});

test("what is no error of a cell goes through as it is", () => {
  const other = new RangeError("of the adapter's own");
  expect(throws(other)).toThrow(other);
});

test("the host's invocation object is no argument; a data type is", () => {
  const echo = inExcel((...cells: unknown[]) => cells.length);
  expect(echo(1, 2, { functionName: "X" })).toBe(2);
  expect(echo(1, 2, { type: "Entity" })).toBe(3);
  expect(echo(1, 2, [[3]])).toBe(3);
  expect(echo(1, null)).toBe(2);
  expect(echo()).toBe(0);
});
