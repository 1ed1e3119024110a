import { keyOf, Memory } from "../../src/boundary/memory";

test("the same values are computed once, the oldest is forgotten", () => {
  const memory = new Memory<number>(2);
  let computed = 0;
  const recall = (key: string) => memory.recall(key, () => ++computed);
  expect([recall("a"), recall("a"), recall("b"), recall("a")]).toEqual([1, 1, 2, 1]);
  recall("c");
  expect(recall("a")).toBe(4);
});

test("keys tell apart what could mean different things", () => {
  const lists: unknown[][] = [
    [1, 2],
    [12],
    ["1", 2],
    [1, "2"],
    [[[1, 2]]],
    [[[1], [2]]],
    [null, 1, 2],
    [1, null, 2],
    ["a;n1;"],
    ["a", 1],
    [true],
    ["true"],
    [0],
    [""],
    [null],
  ];
  const keys = lists.map(keyOf);
  expect(new Set(keys).size).toBe(keys.length);
  expect(keyOf([undefined])).toBe(keyOf([null]));
});
