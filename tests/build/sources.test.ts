import { readFileSync } from "node:fs";
import { join } from "node:path";
import { functionFiles, generate } from "../../build/metadata";
import { root } from "../../build/settings";
import {
  checksOf,
  outside,
  publishedChecks,
  restingOn,
  sourcesPage,
  standingOf,
  tallies,
} from "../../build/sources";
import { catalogue } from "../../src/catalogue";

const sample = `
  import { callNumber, call } from "../support/host";
  const HANDBOOK = "A handbook (1999)";
  const loss = (flow: number) => callNumber("PIPE.FRICTION", flow, 2, 100);
  function both(flow: number) { return [loss(flow), call("PIPE.VELOCITY", flow, 2)]; }
  published({ source: HANDBOOK, where: "table 3", seen: "read" }, () => {
    expectClose(loss(50), 1, 0.1);
  });
  for (const flow of [1, 2]) {
    published(
      { source: "Continuity", where: \`by hand\`, seen: "from memory", guards: ["PIPE.SIZE"] },
      () => { both(flow); callTable("PIPE.MAXFLOW", 2); },
    );
  }
`;

test("reads a check's source and what it calls, itself and through the file's own functions", () => {
  expect(checksOf(sample, "sample.test.ts")).toEqual([
    {
      source: "A handbook (1999)",
      where: "table 3",
      seen: "read",
      functions: ["PIPE.FRICTION"],
      values: 1,
      file: "sample.test.ts",
    },
    {
      source: "Continuity",
      where: "by hand",
      seen: "from memory",
      functions: ["PIPE.FRICTION", "PIPE.VELOCITY", "PIPE.MAXFLOW", "PIPE.SIZE"],
      values: 1,
      file: "sample.test.ts",
    },
  ]);
});

test("refuses a source that is not plain text", () => {
  expect(() =>
    checksOf('published({ source: title(), where: "x", seen: "read" }, () => {});', "a.test.ts"),
  ).toThrow("a.test.ts: source must be a plain text");
  expect(() => checksOf("published(source, () => {});", "a.test.ts")).toThrow("as a plain object");
});

test("a function's standing is that of its surest check", () => {
  const checks = checksOf(sample, "sample.test.ts");
  expect(standingOf("PIPE.FRICTION", checks)).toBe("read");
  expect(standingOf("PIPE.SIZE", checks)).toBe("from memory, unverified");
  expect(standingOf("LATERAL.FLOW", checks)).toBeUndefined();
});

const checks = publishedChecks();
const { functions } = generate(functionFiles(), catalogue);

test("every function has an outside check, or is listed as unverified", () => {
  const without = functions.filter(({ name }) => standingOf(name, checks) === undefined);
  expect(without.map(({ name }) => name)).toEqual([]);
});

test("every check names functions that there are", () => {
  const names = new Set(functions.map(({ name }) => name));
  const strangers = checks.flatMap((check) =>
    check.functions.filter((name) => !names.has(name)).map((name) => `${check.file}: ${name}`),
  );
  expect(strangers).toEqual([]);
  expect(checks.filter((check) => check.functions.length === 0).map(({ file }) => file)).toEqual(
    [],
  );
});

test("the page lists every function with its source and all of its checks", () => {
  const page = sourcesPage(functions, checks);
  for (const { id } of functions) expect(page).toContain(`<h2 id="${id}">`);
  const items = page.match(/<li>/g)?.length;
  expect(items).toBe(checks.reduce((sum, check) => sum + check.functions.length, 0));
});

test("the tally parts by sureness, and titles that differ in brackets are one source", () => {
  const stated = (source: string, seen: string) =>
    `published({ source: "${source}", where: "x", seen: "${seen}" }, () => {
      callNumber("PIPE.SIZE"); expectClose(1, 1, 0); });`;
  const text = [
    stated("A handbook (1999)", "read"),
    stated("a Handbook (2010)", "independent engine"),
    stated("Another", "read"),
    stated("A handbook", "from memory"),
  ].join("\n");
  const sample = checksOf(text, "sample.test.ts");
  expect(tallies(sample).filter((tally) => tally.checks > 0)).toEqual([
    { seen: "read", checks: 2, values: 2, sources: 2 },
    { seen: "independent engine", checks: 1, values: 1, sources: 1 },
    { seen: "from memory", checks: 1, values: 1, sources: 1 },
  ]);
  expect(outside(sample)).toEqual({ values: 3, sources: 2 });
});

test("enough was read or computed outside: 150 values from 30 sources, and few from memory", () => {
  const { values, sources } = outside(checks);
  expect(values).toBeGreaterThanOrEqual(150);
  expect(sources).toBeGreaterThanOrEqual(30);
  const memory = tallies(checks).find(({ seen }) => seen === "from memory");
  expect(memory?.checks).toBeLessThan(40);
});

test("the page prints the tally and names the functions that rest on memory alone", () => {
  const page = sourcesPage(functions, checks);
  for (const { seen, checks: count, values, sources } of tallies(checks)) {
    expect(page).toContain(
      `<tr><td>${seen}</td><td>${count}</td><td>${values}</td><td>${sources}</td></tr>`,
    );
  }
  const memory = restingOn("from memory", functions, checks);
  expect(page).toContain(`<p>${memory.length} of ${functions.length} functions rest on memory`);
  for (const { id, name } of memory) expect(page).toContain(`<a href="#${id}">${name}</a>`);
});

test("the readme names the functions that rest on memory or practice alone, and no other", () => {
  const readme = readFileSync(join(root, "README.md"), "utf8").replace(/\s+/g, " ");
  const named = (words: string) => {
    const [, count, list] = new RegExp(`(\\d+) on ${words} alone \\(([^)]*)\\)`).exec(readme) ?? [];
    return {
      count: Number(count),
      names: [...(list ?? "").matchAll(/`([\w.]+)`/g)].map(([, name]) => name),
    };
  };
  for (const [words, seen] of [
    ["memory", "from memory"],
    ["common practice", "common practice, no source"],
  ] as const) {
    const names = restingOn(seen, functions, checks).map(({ name }) => name);
    expect(named(words)).toEqual({ count: names.length, names });
  }
});
