import type { Page } from "../../../src/sheets/kit/definition";
import { printedParts } from "../../../src/sheets/kit/print";

/** Two columns of blocks; a number is the row at which a heading stands, each block runs to the next. */
function page(left: readonly number[], right: readonly number[], last: number): Page {
  const column = (letter: string, starts: readonly number[]) =>
    starts.flatMap((start, i) => {
      const end = (starts[i + 1] ?? last + 2) - 2;
      return Array.from({ length: end - start + 1 }, (_, down) => ({
        at: `${letter}${start + down}`,
        role: down === 0 ? ("heading" as const) : ("label" as const),
        value: "Words",
      }));
    });
  return {
    name: "Page",
    widths: [20, 20, 20],
    cells: [...column("A", left), ...column("C", right)],
    lines: new Map(),
    printArea: `A1:C${last}`,
  };
}

const beginnings = (of: Page) =>
  printedParts(of, "US").map((part) => Number(/^A(\d+):/.exec(part)?.[1]));

describe("where a page that is too long is parted", () => {
  test("a heading in one column does not cut the block beside it", () => {
    expect(beginnings(page([1, 31, 62], [1, 31, 40, 62], 100))).toEqual([1, 31, 62]);
  });

  test("where every heading stands beside a block that runs on, the page is parted all the same", () => {
    expect(beginnings(page([1, 46], [1], 100))[1]).toBe(46);
  });
});
