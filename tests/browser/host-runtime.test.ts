import { readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { HOST_RUNTIME } from "../../build/headers";
import { catalogue } from "../../src/catalogue";
import { literalArguments } from "../../src/formula-text/dialect";
import { builtReference } from "../support/built";
import { launchBrowser, openPage, serve, type Served } from "../support/browser";

/** The host's own script as its package carries it: for this test alone, never shipped. */
const hostScripts = join(dirname(require.resolve("@microsoft/office-js/package.json")), "dist");
const hosted = HOST_RUNTIME.slice(0, HOST_RUNTIME.lastIndexOf("/") + 1);

let browser: Browser;
let server: Served;
let page: Page;
let errors: string[];
let outside: string[];

beforeAll(async () => {
  browser = await launchBrowser();
  server = await serve();
  const opened = await openPage(browser, `${server.address}functions.html`, {
    before: async (fresh) => {
      await fresh.route(`${hosted}**`, (route) =>
        route.fulfill({
          body: readFileSync(join(hostScripts, route.request().url().slice(hosted.length))),
          contentType: "text/javascript",
        }),
      );
    },
  });
  page = opened.page;
  ({ errors, outside } = opened.misdeeds);
});

afterAll(async () => {
  await browser?.close();
  await server?.close();
});

/** Calls a function as the host's runtime has it, by id. */
function call(id: string, cells: unknown[]): Promise<unknown> {
  return page.evaluate(
    ([wanted, given]) => {
      const { CustomFunctions: runtime } = globalThis as unknown as {
        CustomFunctions: {
          Error: new () => { code: string; message: string };
          _association: { mappings: Record<string, (...cells: unknown[]) => unknown> };
        };
      };
      try {
        return runtime._association.mappings[wanted as string](...(given as unknown[]));
      } catch (error) {
        if (!(error instanceof runtime.Error)) return `not the host's error: ${String(error)}`;
        return { code: error.code, message: error.message };
      }
    },
    [id, cells] as const,
  );
}

test("the host's runtime takes every function of the catalogue", async () => {
  const ids = await page.evaluate(() =>
    Object.keys(
      (globalThis as unknown as { CustomFunctions: { _association: { mappings: object } } })
        .CustomFunctions._association.mappings,
    ),
  );
  expect(ids.sort()).toEqual([...catalogue].sort());
});

test("every function answers its example there", async () => {
  for (const { id, example, spills } of builtReference().functions) {
    const result = await call(id, literalArguments(example));
    const sound = spills ? Array.isArray(result) : ["number", "string"].includes(typeof result);
    expect([id, sound, result]).toEqual([id, true, result]);
  }
});

test("an error is the host's own, with its code and message", async () => {
  expect(await call("PIPE_FRICTION", ["fast", 2, 100])).toEqual({
    code: "#VALUE!",
    message: 'flow must be a number, 0 gpm or more; got "fast"',
  });
  expect(await call("SOIL_INTAKE", ["silt loam", 30])).toMatchObject({ code: "#N/A" });
});

test("the page asks for nothing but the host's script, and its policy stands in nobody's way", () => {
  expect(errors).toEqual([]);
  expect(outside.filter((address) => !address.startsWith(hosted))).toEqual([]);
});
