import "../support/host";
import { guard } from "../../src/boundary/guard";
import { InvalidInput, NoAnswer } from "../../src/ground/domain-error";

const failure = (fn: () => unknown) => {
  try {
    fn();
  } catch (error) {
    return error as { code: string; message: string };
  }
  throw new Error("nothing was thrown");
};

test("wrong input is #VALUE!, no answer is #N/A, each with its message", () => {
  const wrong = guard(() => {
    throw new InvalidInput("inside must be above 0 in; got -1");
  });
  const none = guard(() => {
    throw new NoAnswer("no pipe on the list is large enough");
  });
  expect(failure(wrong)).toMatchObject({
    code: "#VALUE!",
    message: "inside must be above 0 in; got -1",
  });
  expect(failure(none)).toMatchObject({
    code: "#N/A",
    message: "no pipe on the list is large enough",
  });
});

test("anything unexpected is still the host's error", () => {
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
  expect(failure(guard(() => result)).code).toBe("#VALUE!");
});

test("numbers, text and tables leave as they are", () => {
  expect(guard(() => 4)()).toBe(4);
  expect(guard(() => "OK")()).toBe("OK");
  const table = [["head"], [1]];
  expect(guard(() => table)()).toBe(table);
});

test("the host's invocation object is no argument; a data type is", () => {
  const echo = guard((...cells: unknown[]) => cells.length);
  expect(echo(1, 2, { functionName: "X" })).toBe(2);
  expect(echo(1, 2, { type: "Entity" })).toBe(3);
  expect(echo(1, 2, [[3]])).toBe(3);
  expect(echo(1, null)).toBe(2);
});
