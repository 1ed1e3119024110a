import { closeOnRoot, increasingRoot } from "../../src/solver/increasing-root";

const by = (value: (x: number) => number, slope: (x: number) => number) => (x: number) => ({
  value: value(x),
  slope: slope(x),
});

test("finds roots of easy and of awkward functions", () => {
  const cubic = by(
    (x) => x ** 3 - 8,
    (x) => 3 * x ** 2,
  );
  expect(increasingRoot(cubic, 0, 10, 9, 1e-12)).toBeCloseTo(2, 12);
  // No slope at all, a wrong slope, and a slope that throws Newton out of the bracket.
  expect(
    increasingRoot(
      by(
        (x) => x ** 3 - 8,
        () => 0,
      ),
      0,
      10,
      5,
      1e-9,
    ),
  ).toBeCloseTo(2, 9);
  expect(
    increasingRoot(
      by(
        (x) => x ** 3 - 8,
        () => 1e6,
      ),
      0,
      10,
      5,
      1e-9,
    ),
  ).toBeCloseTo(2, 9);
  const steep = by(
    (x) => Math.cbrt(x - 1),
    (x) => 1 / (3 * Math.cbrt((x - 1) ** 2)),
  );
  expect(increasingRoot(steep, 0, 10, 8, 1e-9)).toBeCloseTo(1, 9);
});

test("a smooth function takes a few samples", () => {
  const sample = jest.fn(
    by(
      (x) => x + 0.4 * x ** 0.926 - 10,
      (x) => 1 + 0.3704 * x ** -0.074,
    ),
  );
  increasingRoot(sample, 0, 10, 6, 1e-10);
  expect(sample.mock.calls.length).toBeLessThanOrEqual(4);
});

test("a guess outside the bracket is replaced by its middle", () => {
  const sample = jest.fn(
    by(
      (x) => x - 3,
      () => 1,
    ),
  );
  for (const guess of [-5, 0, 8, 99, NaN]) {
    sample.mockClear();
    expect(increasingRoot(sample, 0, 8, guess, 1e-12)).toBe(3);
    expect(sample.mock.calls[0][0]).toBe(4);
  }
});

test("values beyond the range of numbers are too high", () => {
  const overflowing = by(
    (x) => (x > 1 ? Infinity : x > 0.9 ? NaN : x - 0.25),
    () => 1,
  );
  expect(increasingRoot(overflowing, 0, 100, 50, 1e-12)).toBeCloseTo(0.25, 12);
});

test("a jump over the tolerance is given as two neighbors, the lower sampled last", () => {
  const asked: number[] = [];
  const jump = (x: number) => {
    asked.push(x);
    return { value: x < Math.PI ? -1 : 1, slope: 1 };
  };
  const root = closeOnRoot(jump, 0, 10, 5, 1e-6);
  expect(root.found).toBe(false);
  expect(root.low).toBeLessThan(Math.PI);
  expect(root.high).toBe(Math.PI);
  expect((root.low + root.high) / 2 === root.low || (root.low + root.high) / 2 === root.high).toBe(
    true,
  );
  expect(asked[asked.length - 1]).toBe(root.low);
});

test("a root at the lower end itself is found", () => {
  expect(
    closeOnRoot(
      by(
        (x) => x,
        () => 1,
      ),
      0,
      1,
      0.5,
      0,
    ),
  ).toMatchObject({ found: true, low: 0 });
});

test("the first sample is the guess, where the bracket holds it", () => {
  const sample = jest.fn(
    by(
      (x) => x - 3,
      () => 1,
    ),
  );
  expect(increasingRoot(sample, 0, 8, 1, 1e-12)).toBe(3);
  expect(sample.mock.calls.map(([x]) => x)).toEqual([1, 3]);
});

test("a root that is met exactly is found without any tolerance", () => {
  const line = by(
    (x) => x - 3,
    () => 1,
  );
  expect(closeOnRoot(line, 0, 8, 5, 0)).toEqual({ found: true, low: 3, high: 3 });
});
