import { timeToDrain } from "../../src/solver/drain-time";
import { expectClose } from "../support/published";

const area = (Math.PI * 0.05 ** 2) / 4;

test("an open end: the one speed at which friction takes the whole fall", () => {
  // Head lost a meter 0.1 V², so with a fall of 1 m in 20 m: V = √(1/(20 · 0.1)).
  const rough = (flow: number) => 0.1 * (flow / area) ** 2;
  const time = timeToDrain({
    bore: 0.05,
    length: 20,
    fall: 1,
    friction: { law: "given", gradient: rough },
  });
  expectClose(time, 20 / Math.sqrt(1 / 2), 1e-9);
});

test("an open end with so little friction that the water outruns a free fall", () => {
  // 0.0005 V² a meter over 20 m: V = √(1/0.01) = 10 m/s, above √(2g) = 4.43.
  const smooth = (flow: number) => 0.0005 * (flow / area) ** 2;
  const time = timeToDrain({
    bore: 0.05,
    length: 20,
    fall: 1,
    friction: { law: "given", gradient: smooth },
  });
  expectClose(time, 2, 1e-9);
});

test("an opening without friction: the falling head of a tank, L √(2k/gF)", () => {
  const k = ((1 / 0.4) ** 2 / 0.61) ** 2 - 1;
  const time = timeToDrain({
    bore: 0.05,
    length: 20,
    fall: 1,
    opening: 0.02,
    friction: { law: "given", gradient: () => 0 },
  });
  expectClose(time, 20 * Math.sqrt((2 * k) / 9.80665), 1e-9);
});

test("a speed takes a few steps, by its slope", () => {
  let asked = 0;
  const gradient = (flow: number) => {
    asked++;
    return 0.1 * (flow / area) ** 2;
  };
  timeToDrain({ bore: 0.05, length: 20, fall: 1, friction: { law: "given", gradient } });
  expect(asked).toBeLessThanOrEqual(9);
});
