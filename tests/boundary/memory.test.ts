import { areSame, hashOf, Memory } from "../../src/boundary/memory";

test("the same values are computed once, and as many as the limit are remembered", () => {
  const memory = new Memory<number>(2);
  let computed = 0;
  const recall = (...cells: unknown[]) => memory.recall(cells, () => ++computed);
  expect([recall("a"), recall("a"), recall("b"), recall("a")]).toEqual([1, 1, 2, 1]);
  // c and d begin anew; a and b are the older ones, until as many new ones have come.
  expect([recall("c"), recall("d"), recall("c")]).toEqual([3, 4, 3]);
  expect([recall("e"), recall("d"), recall("c")]).toEqual([5, 4, 3]);
  expect([recall("a"), recall("b")]).toEqual([6, 7]);
});

test("what is asked for again and again is never dropped", () => {
  const memory = new Memory<number>(3);
  let computed = 0;
  const recall = (cell: unknown) => memory.recall([cell], () => ++computed);
  recall("always");
  for (let i = 0; i < 50; i++) {
    recall(i);
    expect(recall("always")).toBe(1);
  }
  expect(computed).toBe(51);
});

/** Lists of arguments that could each mean something else. */
const DIFFERENT: unknown[][] = [
  [1, 2],
  [2, 1],
  [12],
  [1, 2, 3],
  ["1", 2],
  [1, "2"],
  [[[1, 2]]],
  [[[1], [2]]],
  [[1, 2]],
  [null, 1, 2],
  [1, null, 2],
  [1, 2, null],
  ["a;n1;"],
  ["a", 1],
  ["a"],
  ["b"],
  ["ab"],
  ["ba"],
  [true],
  [false],
  ["true"],
  [0],
  [1],
  [1 + 2 ** -52],
  [-1],
  [""],
  [null],
  [],
];

test("what could mean different things is told apart, what means the same is not", () => {
  DIFFERENT.forEach((one, i) => {
    DIFFERENT.forEach((other, j) => {
      expect([one, other, areSame(one, structuredClone(other))]).toEqual([one, other, i === j]);
    });
  });
  expect(areSame([undefined, [[0]]], [null, [[-0]]])).toBe(true);
  expect(hashOf([undefined, [[0]]])).toBe(hashOf([null, [[-0]]]));
  // A data type is never taken for another, nor for itself after it changed.
  expect(areSame([{ type: "a" }], [{ type: "a" }])).toBe(false);
});

test("hashes differ for arguments that differ a little", () => {
  const lines: unknown[][] = [];
  for (let i = 0; i < 100; i++) {
    for (let j = 0; j < 100; j++) lines.push([50 + i * 1e-6, 50, [[40]], [[3.5, j]], "US"]);
  }
  const text = (n: number) => String.fromCharCode(97 + (n % 26), 97 + Math.floor(n / 26));
  for (let n = 0; n < 676; n++) lines.push([text(n)], [[text(n)]], [text(n), null]);
  const hashes = new Set(lines.map(hashOf));
  // By chance two of twelve thousand meet once in sixty.
  expect(hashes.size).toBeGreaterThan(lines.length - 3);
});

test("a range that the host changes afterwards changes nothing in the memory", () => {
  const memory = new Memory<string>(5);
  const range = [[1, 2]];
  memory.recall([range], () => "first");
  range[0][1] = 3;
  expect(memory.recall([range], () => "second")).toBe("second");
  expect(memory.recall([[[1, 2]]], () => "third")).toBe("first");
});
