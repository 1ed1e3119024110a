import { callError, callNumber } from "../support/host";
import { expectClose } from "../support/published";

describe("DRAIN.VOLUME", () => {
  test("both unit systems hold the same water", () => {
    const us = callNumber("DRAIN.VOLUME", [[2], [1.5]], [[300], [200]], "US");
    const si = callNumber("DRAIN.VOLUME", [[50.8], [38.1]], [[91.44], [60.96]], "SI");
    expectClose(si, us * 3.785411784, 1e-12);
    expectClose(callNumber("DRAIN.VOLUME", [[2, 1.5]], [[300, 200]]), us, 1e-15);
  });

  test("a wrong argument is named", () => {
    expect(callError("DRAIN.VOLUME", 0, 100).message).toMatch(/^inside is missing/);
    expect(callError("DRAIN.VOLUME", [[2], [-1]], [[1], [1]]).message).toBe(
      "inside value 2 must be above 0 in; got -1",
    );
    expect(callError("DRAIN.VOLUME", 2, -100, "SI").message).toBe(
      "length must be 0 m or more; got -100",
    );
    expect(callError("DRAIN.VOLUME", [[2], [1.5]], 100).message).toBe(
      "inside and length must have the same number of values; got 2 and 1",
    );
  });
});
