import { callError, callNumber } from "../support/host";
import { expectClose } from "../support/published";

const GPM = 0.2271247069; // m³/h

describe("SOURCE.DAYS", () => {
  test("both unit systems agree", () => {
    expectClose(
      callNumber("SOURCE.DAYS", 900000 * 0.003785411784, 118 * GPM, 11, "SI", 15 * GPM),
      callNumber("SOURCE.DAYS", 900000, 118, 11, "US", 15),
      1e-9,
    );
  });

  test.each([null, "", 0])("inflow %p is none", (inflow) => {
    expect(callNumber("SOURCE.DAYS", 240, 1, 24, "SI", inflow)).toBeCloseTo(10, 12);
  });

  test("never runs out where the inflow makes up for the pumping", () => {
    expect(callError("SOURCE.DAYS", 240, 2, 12, "SI", 1)).toMatchObject({
      code: "#N/A",
      message: "the water never runs out: the inflow makes up for all that is pumped",
    });
    expect(callNumber("SOURCE.DAYS", 0, 2, 12, "SI")).toBe(0);
  });

  test("a wrong argument is named", () => {
    expect(callError("SOURCE.DAYS", -1, 2, 12).message).toBe(
      "volume must be 0 gal or more; got -1",
    );
    expect(callError("SOURCE.DAYS", 100, 0, 12, "SI").message).toBe(
      "flow must be above 0 m³/h; got 0",
    );
    expect(callError("SOURCE.DAYS", 100, 1, 25).message).toBe(
      "hours must be above 0 and at most 24 h; got 25",
    );
    expect(callError("SOURCE.DAYS", 100, 1, 12, "US", -3).message).toBe(
      "inflow must be 0 gpm or more; got -3",
    );
  });
});
