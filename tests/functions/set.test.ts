import { callError, callNumber } from "../support/host";

describe("SET.TIME", () => {
  test("a net depth takes longer the lower the efficiency", () => {
    expect(callNumber("SET.TIME", 2, 0.25)).toBe(8);
    expect(callNumber("SET.TIME", 2, 0.25, 0.8)).toBe(10);
    expect(callNumber("SET.TIME", 0, 0.25)).toBe(0);
  });

  test.each([null, "", 0, 1])("efficiency %p is 1", (efficiency) => {
    expect(callNumber("SET.TIME", 2, 0.25, efficiency)).toBe(8);
  });

  test("a wrong argument is named", () => {
    expect(callError("SET.TIME", 2, 0).message).toBe("rate must be above 0; got 0");
    expect(callError("SET.TIME", -2, 0.25).message).toBe("depth must be 0 or more; got -2");
    expect(callError("SET.TIME", 2, 0.25, 80).message).toBe(
      "efficiency must be above 0 and at most 1; got 80",
    );
  });
});
