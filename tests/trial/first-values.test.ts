import { functionFiles, generate } from "../../build/metadata";
import { catalogue } from "../../src/catalogue";
import { readyMadeSheets } from "../../src/sheets";
import { readAddress } from "../../src/sheets/kit/address";
import { FirstValues } from "../../src/trial/first-values";
import { FunctionHost } from "../../src/screen/host";

const host = FunctionHost.standIn();
// Loaded after the stand-in stands, as a host loads the script into its runtime.
// eslint-disable-next-line @typescript-eslint/no-require-imports
require("../../src/functions/associate");
const reference = {
  namespace: "IRRIG",
  version: "test",
  functions: generate(functionFiles(), catalogue).functions,
};

test("a typed value goes through to what depends on it, and errors carry their message", () => {
  const pages = readyMadeSheets[0].pages("US");
  const values = new FirstValues(pages, new Map(), reference, host);
  const cell = (name: string) => {
    for (const page of pages)
      for (const { name: own, at } of page.cells)
        if (own === name) return { page: page.name, ...readAddress(at) };
    throw new Error(`no cell ${name}`);
  };
  const before = values.read(cell("LineFlow")).value as number;
  let settled = 0;
  values.onSettled(() => (settled += 1));
  values.write(cell("Heads"), 10);
  expect(settled).toBe(1);
  expect(values.read(cell("LineFlow")).value).toBeLessThan(before * 0.8);
  values.write(cell("Spacing"), -45);
  const { error } = values.read(cell("LineFlow"));
  expect(error?.code).toBe("#VALUE!");
  expect(error?.message).toContain("spacing");
});
