import { line, page } from "../../bench/report";

const solve = { what: "times a march: a solve", ratio: 3, times: "solve 3 ms, march 1 ms" };
const visit = {
  what: "of its limit of 2.5 s: the first visit",
  ratio: 1.2,
  target: { bound: "at most", value: 1 },
  times: "3.00 s",
} as const;
const on = (date: string, ...rows: (typeof solve | typeof visit)[]) => ({
  date,
  node: "20.0.0",
  rows,
});

const ORDER = ["solver", "page"];

test("what was not measured again stands as it was, with its own date", () => {
  const all = new Map([
    ["solver", on("2026-01-01", solve)],
    ["page", on("2026-01-01", visit)],
  ]);
  const first = page("", ORDER, all);
  const quicker = { ...visit, ratio: 0.9, times: "2.25 s" };
  const second = page(first, ORDER, new Map([["page", on("2026-02-02", quicker)]]));
  expect(second).toContain("## solver\n\nMeasured on 2026-01-01");
  expect(second).toContain("| 3.00 |  | times a march: a solve | solve 3 ms, march 1 ms |");
  expect(second).toContain("## page\n\nMeasured on 2026-02-02");
  expect(second).toContain(
    "| 0.90 | at most 1 | of its limit of 2.5 s: the first visit | 2.25 s |",
  );
  expect(second).not.toContain("3.00 s");
  // Written again, it is the same.
  expect(page(second, ORDER, new Map())).toBe(second);
});

test("groups stand in their order, and one that is no more is left out", () => {
  const before = page("", ["gone", "page"], new Map([["gone", on("2026-01-01", solve)]]));
  const after = page(before, ORDER, new Map([["page", on("2026-02-02", visit)]]));
  const whole = page(after, ORDER, new Map([["solver", on("2026-03-03", solve)]]));
  expect(whole.match(/^## .*$/gm)).toEqual(["## solver", "## page"]);
});

test("a row beside its target is told in the terminal", () => {
  expect(line(visit)).toBe(
    "    1.20  of its limit of 2.5 s: the first visit, at most 1 (3.00 s)  MISSED",
  );
  expect(line(solve)).not.toContain("MISSED");
});
