import { functionFiles, generate } from "../../build/metadata";
import { checksOf, publishedChecks, sourcesPage, standingOf } from "../../build/sources";
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
      file: "sample.test.ts",
    },
    {
      source: "Continuity",
      where: "by hand",
      seen: "from memory",
      functions: ["PIPE.FRICTION", "PIPE.VELOCITY", "PIPE.MAXFLOW", "PIPE.SIZE"],
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
