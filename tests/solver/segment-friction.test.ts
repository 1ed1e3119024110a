import fc from "fast-check";
import { segmentFriction } from "../../src/solver/segment-friction";

/** Checked against the host's own power: an independent way to Q^1.852. */
const power = (flow: number) => flow ** 1.852;

const friction = () => segmentFriction({ law: "Hazen–Williams", c: 150 }, [0.05, 0.05], [12, 24]);

test("a flow near a known one loses what it loses on its own", () => {
  const nearby = fc.tuple(
    fc.double({ min: 1e-9, max: 10, noNaN: true }),
    fc.array(fc.double({ min: 0.96, max: 1.04, noNaN: true }), { minLength: 1, maxLength: 20 }),
  );
  fc.assert(
    fc.property(nearby, ([first, ratios]) => {
      const law = friction();
      const known = law.loss(0, first);
      let flow = first;
      for (const ratio of ratios) {
        flow *= ratio;
        const expected = (known * power(flow)) / power(first);
        const loss = law.loss(0, flow);
        expect(Math.abs(loss / expected - 1)).toBeLessThan(5e-14);
        expect(Math.abs((law.slope * flow) / loss - 1.852)).toBeLessThan(1e-12);
      }
    }),
  );
});

test.each([0.9, 1 - 1 / 64, 0.985, 0.99, 1, 1.01, 1.015, 1 + 1 / 64, 1.2])(
  "at %d times the known flow too",
  (ratio) => {
    const law = friction();
    const known = law.loss(1, 2e-3);
    const loss = law.loss(1, 2e-3 * ratio);
    expect(Math.abs(loss / known / power(ratio) - 1)).toBeLessThan(2e-15);
  },
);

test("segments keep apart what they know; a longer one loses more by its length", () => {
  const law = friction();
  const short = law.loss(0, 1e-3);
  const long = law.loss(1, 1.05e-3);
  expect(long / short / 2).toBeCloseTo(power(1.05), 12);
});

test("near a known flow no logarithm is taken, far from it one a flow", () => {
  const law = friction();
  const logarithm = jest.spyOn(Math, "log");
  const taken = (flow: number) => {
    logarithm.mockClear();
    law.loss(0, flow);
    return logarithm.mock.calls.length;
  };
  try {
    expect([1e-3, 0.985e-3, 1.015e-3, 1e-3].map(taken)).toEqual([1, 0, 0, 0]);
    expect([1.03e-3, 1e-3, 0.98e-3].map(taken)).toEqual([1, 1, 1]);
  } finally {
    logarithm.mockRestore();
  }
});

test("a law that is given: its gradient by length, and how fast that follows the flow", () => {
  // 3 Q²/D⁵ m a meter; water of 998.2 kg/m³ weighs 9789 N/m³. Its slope is twice the loss by the flow.
  const law = segmentFriction(
    { law: "given", gradient: (flow, bore) => (3 * flow ** 2) / bore ** 5 },
    [0.05, 0.04],
    [12, 24],
  );
  [
    [0, 1e-3, 12, 0.05],
    [1, 2e-3, 24, 0.04],
  ].forEach(([segment, flow, length, bore]) => {
    const expected = 998.2 * 9.80665 * length * ((3 * flow ** 2) / bore ** 5);
    expect(law.loss(segment, flow) / expected).toBeCloseTo(1, 4);
    expect((law.slope * flow) / law.loss(segment, flow)).toBeCloseTo(2, 5);
  });
});
