import { callText, evaluateCall } from "../../src/taskpane/evaluate";
import type { FunctionHost } from "../../src/screen/host";
import { call, HostError } from "../support/host";
import { frictionHelp } from "../support/help";

/** The functions, straight from their source. */
const functions = {
  call: (id: string, ...cells: unknown[]) => {
    try {
      return { value: call(id, ...cells) };
    } catch (error) {
      const { code, message } = error as HostError;
      return { error: { code, message } };
    }
  },
} as unknown as FunctionHost;

const read = async (text: string) => (text === "B4" ? [[2.067]] : undefined);

test("literals and references", async () => {
  const direct = call("PIPE.FRICTION", 50, 2.067, 100);
  expect(await evaluateCall("=IRRIG.PIPE.FRICTION(50,2.067,100)", functions, read)).toEqual({
    kind: "value",
    value: direct,
  });
  expect(await evaluateCall("=IRRIG.PIPE.FRICTION(50,B4,100,,)", functions, read)).toEqual({
    kind: "value",
    value: direct,
  });
});

test("an error keeps its message", async () => {
  expect(await evaluateCall("=IRRIG.PIPE.FRICTION(50,-1,100)", functions, read)).toEqual({
    kind: "error",
    error: { code: "#VALUE!", message: "inside must be above 0 in; got -1" },
  });
});

test("an unknown reference, and what only a sheet can work out", async () => {
  expect(await evaluateCall("=IRRIG.PIPE.FRICTION(50,Bore,100)", functions, read)).toEqual({
    kind: "unknown reference",
    text: "Bore",
  });
  expect(await evaluateCall("=IRRIG.PIPE.FRICTION(50,B4*2,100)", functions, read)).toEqual({
    kind: "cannot",
  });
});

test("a call's text leaves out what is empty at its end", () => {
  expect(callText(frictionHelp, ["50", "B4", " 100 ", "", ""])).toBe(
    "=IRRIG.PIPE.FRICTION(50,B4,100)",
  );
  expect(callText(frictionHelp, ["50", "B4", "100", "", "140"], "FIELD")).toBe(
    "=FIELD.PIPE.FRICTION(50,B4,100,,140)",
  );
});
