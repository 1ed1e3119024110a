import { callError, callNumber } from "../support/host";
import { expectClose } from "../support/published";

describe("APPLICATION.RATE", () => {
  test("both unit systems give the same rate", () => {
    const us = callNumber("APPLICATION.RATE", 4.2, 45, 50, "US");
    const si = callNumber(
      "APPLICATION.RATE",
      4.2 * 0.227124707,
      45 * 0.3048,
      50 * 0.3048,
      "metric",
    );
    expectClose(si / 25.4, us, 1e-9);
  });

  test("blank units are US, and no flow is no rate", () => {
    expect(callNumber("APPLICATION.RATE", 4, 40, 50)).toBe(
      callNumber("APPLICATION.RATE", 4, 40, 50, "US"),
    );
    expect(callNumber("APPLICATION.RATE", 0, 40, 50)).toBe(0);
  });

  test("a wrong argument is named with what came and what is allowed", () => {
    expect(callError("APPLICATION.RATE", -1, 40, 50)).toMatchObject({
      code: "#VALUE!",
      message: "flow must be 0 gpm or more; got -1",
    });
    expect(callError("APPLICATION.RATE", 4, 0, 50).message).toBe(
      "spacing must be above 0 ft; got 0",
    );
    expect(callError("APPLICATION.RATE", 4, 40, "wide", "SI").message).toBe(
      'move must be a number, above 0 m; got "wide"',
    );
    expect(callError("APPLICATION.RATE", null, 40, 50).message).toMatch(/^flow is missing/);
  });
});

describe("APPLICATION.DEPTH", () => {
  test("is gross without an efficiency, net with one", () => {
    expect(callNumber("APPLICATION.DEPTH", 0.25, 8)).toBe(2);
    expect(callNumber("APPLICATION.DEPTH", 0.25, 8, 0.75)).toBe(1.5);
  });

  test.each([null, "", 0, 1])("efficiency %p is 1", (efficiency) => {
    expect(callNumber("APPLICATION.DEPTH", 0.5, 3, efficiency)).toBe(1.5);
  });

  test("a percentage is refused", () => {
    expect(callError("APPLICATION.DEPTH", 0.5, 3, 75).message).toBe(
      "efficiency must be above 0 and at most 1; got 75",
    );
    expect(callError("APPLICATION.DEPTH", 0.5, -3).message).toBe(
      "hours must be 0 h or more; got -3",
    );
  });
});
