import fc from "fast-check";
import { balanceByMonth } from "../../src/formulas/source-balance";

test("example", () => {
  const months = [80, 30, 40].map((need) => ({ need, inflow: 10, loss: 0 }));
  expect(balanceByMonth(100, months)).toEqual([
    { held: 30, short: 0, over: 0 },
    { held: 10, short: 0, over: 0 },
    { held: 0, short: 20, over: 0 },
  ]);
});

test("a loss takes no more than there is, and what finds no room is gone", () => {
  expect(
    balanceByMonth(50, [
      { need: 5, inflow: 20, loss: 0 },
      { need: 10, inflow: 0, loss: 80 },
      { need: 0, inflow: 30, loss: 10 },
    ]),
  ).toEqual([
    { held: 50, short: 0, over: 15 },
    { held: 0, short: 10, over: 0 },
    { held: 20, short: 0, over: 0 },
  ]);
});

test("no water appears or vanishes, and none is held beyond full", () => {
  const part = fc.integer({ min: 0, max: 1000 });
  fc.assert(
    fc.property(
      part,
      fc.array(fc.record({ need: part, inflow: part, loss: part }), {
        minLength: 1,
        maxLength: 12,
      }),
      (full, months) => {
        let before = full;
        balanceByMonth(full, months).forEach(({ held, short, over }, i) => {
          const { need, inflow, loss } = months[i];
          const taken = need - short;
          expect(held).toBeLessThanOrEqual(full);
          expect(Math.min(held, short, over, taken)).toBeGreaterThanOrEqual(0);
          if (short > 0) expect(held).toBe(0);
          const lost = before + inflow - taken - over - held;
          expect(lost).toBe(Math.min(loss, before + inflow));
          before = held;
        });
      },
    ),
  );
});

test("a need that takes all there is is not short by what rounding leaves", () => {
  const third = { need: 0.1 + 0.2, inflow: 0, loss: 0 };
  expect(balanceByMonth(0.3, [third])).toEqual([{ held: 0, short: 0, over: 0 }]);
  const large = { need: (0.1 + 0.2) * 1e9, inflow: 0, loss: 0 };
  expect(balanceByMonth(0.3 * 1e9, [large])).toEqual([{ held: 0, short: 0, over: 0 }]);
  expect(balanceByMonth(0.3, [{ need: 0, inflow: 0.1, loss: 0.1 }])).toEqual([
    { held: 0.3, short: 0, over: 0 },
  ]);
});
