import fc from "fast-check";
import { rollJoints, rollsFor } from "../../src/formulas/rolls";

describe("rolls of tubing", () => {
  test("joints are the roll ends inside a piece, as cutting foot by foot shows", () => {
    const pieces = fc.array(fc.integer({ min: 1, max: 40 }), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(pieces, fc.integer({ min: 1, max: 30 }), (lengths, roll) => {
        let joints = 0;
        let cut = 0;
        for (const length of lengths) {
          for (let foot = 1; foot <= length; foot++) {
            cut++;
            if (cut % roll === 0 && foot < length) joints++;
          }
        }
        expect(rollJoints(lengths, roll)).toBe(joints);
        expect(rollsFor(cut, roll)).toBe(Math.ceil(cut / roll));
      }),
    );
  });

  test("lengths that only rounding keeps from a whole roll are whole rolls", () => {
    const foot = 0.3048;
    expect(rollsFor(14 * (45 * foot), 315 * foot)).toBe(2);
    expect(rollJoints([315 * foot, 315 * foot], 315 * foot)).toBe(0);
    expect(rollsFor(100, 50, 0.02)).toBe(3);
  });
});
