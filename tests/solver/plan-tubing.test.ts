import {
  boresOf,
  compareTubing,
  countTubingChoices,
  tubingChoices,
} from "../../src/solver/plan-tubing";

const pipe = (bore: number, price: number) => ({ name: `${bore}`, bore, price, rating: 1e6 });
const sizes = [pipe(0.07, 5), pipe(0.06, 3), pipe(0.05, 2)];
const segments = [5, 10, 10, 10];

test("every way in one size or two, priced by length", () => {
  const choices = tubingChoices(sizes, segments);
  expect(choices).toHaveLength(3 + 3 * 3);
  expect(countTubingChoices(3, 4)).toBe(12);
  for (const choice of choices) {
    const bores = boresOf(choice, sizes, 4);
    const price = bores.reduce((sum, bore, i) => {
      const size = sizes.find((entry) => entry.bore === bore);
      return sum + (size?.price ?? NaN) * segments[i];
    }, 0);
    expect(choice.price).toBeCloseTo(price, 9);
    expect(bores).toEqual([...bores].sort((a, b) => b - a));
  }
  expect(new Set(choices.map((choice) => boresOf(choice, sizes, 4).join())).size).toBe(12);
  expect(choices[0]).toMatchObject({ larger: 0, smaller: 0, change: 4 });
});

test("of ties fewer sizes come first, then more of the larger", () => {
  const choices = tubingChoices(sizes, segments).sort(compareTubing);
  expect(choices.slice(0, 3).map(({ larger, smaller }) => [larger, smaller])).toEqual([
    [0, 0],
    [1, 1],
    [2, 2],
  ]);
  expect(choices.slice(3, 6).map(({ change, smaller }) => [change, smaller])).toEqual([
    [3, 1],
    [3, 2],
    [2, 1],
  ]);
  expect(choices[11]).toMatchObject({ larger: 1, smaller: 2, change: 1 });
});
