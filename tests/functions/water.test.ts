import { callError, callNumber } from "../support/host";
import { expectClose } from "../support/published";

test.each([
  ["WATER.DENSITY", 16.01846337],
  ["WATER.VISCOSITY", 0.09290304],
  ["WATER.VAPOR", 6.894757293],
])("%s is the same water in both systems", (name, factor) => {
  for (const celsius of [0, 10, 20, 55.5, 100]) {
    const si = callNumber(name, celsius, "SI");
    expectClose(callNumber(name, celsius * 1.8 + 32, "US") * factor, si, 1e-9);
    expect(callNumber(name, celsius * 1.8 + 32)).toBe(callNumber(name, celsius * 1.8 + 32, "US"));
  }
});

test.each([["WATER.DENSITY"], ["WATER.VISCOSITY"], ["WATER.VAPOR"]])(
  "%s is for liquid water",
  (name) => {
    expect(callError(name, 31).message).toBe("temperature must be from 32 to 212 °F; got 31");
    expect(callError(name, 213).message).toBe("temperature must be from 32 to 212 °F; got 213");
    expect(callError(name, -1, "SI").message).toBe("temperature must be from 0 to 100 °C; got -1");
    expect(callError(name, 101, "SI").message).toBe(
      "temperature must be from 0 to 100 °C; got 101",
    );
    expect(callError(name, null).message).toContain("temperature is missing");
  },
);

test("water thins and its vapor pressure rises as it warms", () => {
  for (let celsius = 1; celsius <= 100; celsius++) {
    const thinner = callNumber("WATER.VISCOSITY", celsius, "SI");
    expect(thinner).toBeLessThan(callNumber("WATER.VISCOSITY", celsius - 1, "SI"));
    const higher = callNumber("WATER.VAPOR", celsius, "SI");
    expect(higher).toBeGreaterThan(callNumber("WATER.VAPOR", celsius - 1, "SI"));
  }
});
