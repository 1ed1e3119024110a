import { CellError, guard } from "../../src/boundary/guard";
import { InvalidInput, NoAnswer } from "../../src/ground/domain-error";

function failure(run: () => unknown): CellError {
  try {
    run();
  } catch (error) {
    if (error instanceof CellError) return error;
    throw error;
  }
  throw new Error("nothing was thrown");
}

test("wrong input is #VALUE!, no answer is #N/A, each with its message", () => {
  const wrong = guard(() => {
    throw new InvalidInput("inside must be above 0 in; got -1");
  });
  const none = guard(() => {
    throw new NoAnswer("no pipe on the list is large enough");
  });
  expect(failure(wrong)).toMatchObject({
    name: "CellError",
    code: "#VALUE!",
    message: "inside must be above 0 in; got -1",
  });
  expect(failure(none)).toMatchObject({
    code: "#N/A",
    message: "no pipe on the list is large enough",
  });
});

test("anything unexpected is still an error for the cell", () => {
  const broken = guard(() => {
    throw new TypeError("x is undefined");
  });
  expect(failure(broken)).toMatchObject({
    code: "#VALUE!",
    message: "the function failed: x is undefined",
  });
  const thrownText = guard(() => {
    throw "text";
  });
  expect(failure(thrownText)).toMatchObject({
    code: "#VALUE!",
    message: "the function failed: text",
  });
});

test.each([[NaN], [Infinity], [-Infinity], [[["a"], [NaN]]]])("%p never leaves", (result) => {
  const { code, message } = failure(guard(() => result));
  expect(code).toBe("#VALUE!");
  expect(message).toMatch(/beyond the range of numbers/);
});

test("numbers, text and tables leave as they are, every cell arrives", () => {
  expect(guard(() => 4)()).toBe(4);
  expect(guard(() => "OK")()).toBe("OK");
  const table = [["head"], [1]];
  expect(guard(() => table)()).toBe(table);
  expect(guard((...cells: unknown[]) => cells.length)(1, null, [[3]])).toBe(3);
});
