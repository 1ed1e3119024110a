import { callError, callNumber } from "../support/host";
import { expectClose } from "../support/published";

const GPM = 0.2271247069; // m³/h

describe("FLUSH.FLOW", () => {
  test("both unit systems agree where the speed is written out", () => {
    const us = callNumber("FLUSH.FLOW", 1.72, "US", 2);
    expectClose(callNumber("FLUSH.FLOW", 1.72 * 25.4, "SI", 0.6096), us * GPM, 1e-9);
  });

  test("the speed is 2 ft/s or 0.6 m/s when blank", () => {
    for (const blank of [null, "", 0]) {
      expect(callNumber("FLUSH.FLOW", 1.72, "US", blank)).toBe(
        callNumber("FLUSH.FLOW", 1.72, "US", 2),
      );
      expect(callNumber("FLUSH.FLOW", 44, "SI", blank)).toBe(
        callNumber("FLUSH.FLOW", 44, "SI", 0.6),
      );
    }
  });

  test("a wrong argument is named", () => {
    expect(callError("FLUSH.FLOW", 0)).toMatchObject({
      code: "#VALUE!",
      message: "inside must be above 0 in; got 0",
    });
    expect(callError("FLUSH.FLOW", 44, "SI", -1).message).toBe(
      "velocity must be above 0 m/s; got -1",
    );
  });
});

describe("FLUSH.TIME", () => {
  test("both unit systems agree, and changes multiply", () => {
    const us = callNumber("FLUSH.TIME", 16, [[2.15], [1.72]], [[315], [300]]);
    const si = callNumber(
      "FLUSH.TIME",
      16 * GPM,
      [[2.15 * 25.4], [1.72 * 25.4]],
      [[315 * 0.3048], [300 * 0.3048]],
      "SI",
    );
    expectClose(si, us, 1e-9);
    expectClose(
      callNumber("FLUSH.TIME", 16, [[2.15], [1.72]], [[315], [300]], "US", 3),
      3 * us,
      1e-12,
    );
    expect(callNumber("FLUSH.TIME", 16, [[2.15], [1.72]], [[315], [300]], "US", 0)).toBe(us);
  });

  test("a wrong argument is named", () => {
    expect(callError("FLUSH.TIME", 0, 2, 100).message).toBe("flow must be above 0 gpm; got 0");
    expect(callError("FLUSH.TIME", 8, [[2], [1]], 100).message).toBe(
      "inside and length must have the same number of values; got 2 and 1",
    );
    expect(callError("FLUSH.TIME", 8, 2, 100, "US", -1).message).toBe(
      "changes must be above 0; got -1",
    );
  });
});
