import { alike, zeros } from "../../src/ground/doubles";

test.each([0, 1, 50, 512, 513, 2000])("%i zeros, of their own", (count) => {
  const list = zeros(count);
  expect(list).toEqual(new Array(count).fill(0));
  list.fill(7);
  expect(zeros(count)).toEqual(new Array(count).fill(0));
  expect(alike(1.5, count)).toEqual(new Array(count).fill(1.5));
});
