import { callError, callNumber } from "../support/host";
import { expectClose } from "../support/published";

describe("FEEDER.LENGTH", () => {
  test.each([[undefined], [null], [""], [0]])("takes %p for the setback as 0", (blank) => {
    expect(callNumber("FEEDER.LENGTH", 7, 50, blank)).toBe(150);
  });

  test("reaches the farther of two positions from between them", () => {
    expect(callNumber("FEEDER.LENGTH", 2, 50)).toBe(25);
    expectClose(callNumber("FEEDER.LENGTH", 13, 50, 40), 302.654919, 1e-8);
  });

  test("names what is wrong", () => {
    expect(callError("FEEDER.LENGTH", 7.5, 50).message).toBe(
      "positions must be a whole number from 1 to 500; got 7.5",
    );
    expect(callError("FEEDER.LENGTH", 501, 50).message).toContain("from 1 to 500; got 501");
    expect(callError("FEEDER.LENGTH", 7, 0).message).toBe("move must be above 0; got 0");
    expect(callError("FEEDER.LENGTH", 7, 50, -1).message).toBe("setback must be 0 or more; got -1");
  });
});

describe("FEEDER.PRESSURE", () => {
  test("adds friction, fittings and rise to what the lateral wants", () => {
    const friction = callNumber("PIPE.FRICTION", 58, 2.6, 300, "US", 140);
    const fittings = callNumber("PIPE.FITTING", 58, 2.6, 5);
    const pressure = callNumber("FEEDER.PRESSURE", 48, 58, 2.6, 300, "US", 4, 140, 5);
    expectClose(pressure, 48 + friction + fittings + 4 / 2.310818199, 1e-9);
  });

  test.each([[undefined], [null], [""], [0]])("takes %p for rise and fittings as none", (blank) => {
    const friction = callNumber("PIPE.FRICTION", 58, 2.6, 300);
    expectClose(
      callNumber("FEEDER.PRESSURE", 48, 58, 2.6, 300, "US", blank, blank, blank),
      48 + friction,
      1e-12,
    );
  });

  test("is the same feeder in both systems", () => {
    const us = callNumber("FEEDER.PRESSURE", 48, 58, 2.6, 300, "US", 4, "Darcy", 5);
    const si = callNumber(
      "FEEDER.PRESSURE",
      48 * 6.894757293,
      58 * 0.22712470704,
      2.6 * 25.4,
      300 * 0.3048,
      "SI",
      4 * 0.3048,
      "Darcy",
      5,
    );
    expectClose(si / 6.894757293, us, 1e-9);
  });

  test("has no answer where the fall alone gives more than wanted", () => {
    expect(callNumber("FEEDER.PRESSURE", 10, 0, 2.6, 300, "US", -20)).toBeCloseTo(1.345, 3);
    expect(callNumber("FEEDER.PRESSURE", 0, 0, 2.6, 300, "US", 0)).toBe(0);
    const error = callError("FEEDER.PRESSURE", 10, 0, 2.6, 300, "US", -30);
    expect(error.code).toBe("#N/A");
    expect(error.message).toBe(
      "rise falls so far that the lateral gets more than inlet with no pressure at the hydrant: " +
        "use smaller tubing or a pressure regulator",
    );
  });

  test("names what is wrong", () => {
    expect(callError("FEEDER.PRESSURE", -1, 58, 2.6, 300).message).toBe(
      "inlet must be 0 psi or more; got -1",
    );
    expect(callError("FEEDER.PRESSURE", 48, 58, 2.6, 300, "US", 0, 150, -1).message).toBe(
      "fittings must be 0 or more; got -1",
    );
    expect(callError("FEEDER.PRESSURE", 48, 58, 2.6, 300, "US", "up").message).toBe(
      'rise must be a number in ft; got "up"',
    );
  });
});
