import { callError, callNumber, callTable } from "../support/host";
import { expectClose } from "../support/published";

const SIZES = [
  [2.16, 7],
  [1.72, 7],
];
const CHART = [
  [35, 3.7],
  [45, 4.2],
  [55, 4.6],
];
const ask = (velocity: unknown, ...tail: unknown[]) =>
  callNumber("FLUSH.PRESSURE", velocity, 14, 45, SIZES, CHART, "US", ...tail);

test("a faster flush, a rise and rougher pipe ask for more; higher risers keep the heads dry", () => {
  const plain = ask(2);
  expect(ask(4)).toBeGreaterThan(plain);
  expect(ask(2, 10)).toBeGreaterThan(plain);
  expect(ask(2, 0, null, 120)).toBeGreaterThan(plain);
  expect(ask(2, 0, null, null, 90)).toBeGreaterThan(plain);
  expect(ask(2, 0, null, null, null, 60)).toBeLessThan(plain);
  // A regulator takes its loss before any water comes: the heads stay dry too.
  expect(ask(2, 0, [[40, 30]])).toBeLessThan(plain);
});

test("US and SI agree", () => {
  const si = callNumber(
    "FLUSH.PRESSURE",
    2 * 0.3048,
    14,
    45 * 0.3048,
    SIZES.map(([bore, count]) => [bore * 25.4, count]),
    CHART.map(([pressure, flow]) => [pressure * 6.894757293, flow * 0.2271247]),
    "SI",
  );
  expectClose(si, ask(2) * 6.894757293, 1e-6);
});

test("with the cap on, that pressure hardly moves water at the end: the line is the same one", () => {
  const inlet = ask(2);
  const profile = callTable("LATERAL.PROFILE", inlet, 14, 45, SIZES, CHART);
  expect(profile[14][8]).toBeLessThan(2);
});

test("what has no answer is said", () => {
  expect(callError("FLUSH.PRESSURE", 200, 14, 45, SIZES, CHART)).toMatchObject({
    code: "#N/A",
    message: "velocity needs an inlet pressure above 10 MPa (1450 psi)",
  });
  expect(callError("FLUSH.PRESSURE", 2, 14, 45, SIZES, CHART, "US", -60)).toMatchObject({
    code: "#N/A",
    message: "the fall of the ground alone gives more than velocity",
  });
  expect(callError("FLUSH.PRESSURE", 0, 14, 45, SIZES, CHART).message).toBe(
    "velocity must be above 0 ft/s; got 0",
  );
});
