import { readFileSync } from "node:fs";
import { join } from "node:path";
import { functionsIn, literalArguments } from "../../src/formula-text/dialect";
import { readyMadeSheets } from "../../src/sheets";
import { call } from "../support/host";

const root = join(__dirname, "..", "..");
const readme = readFileSync(join(root, "README.md"), "utf8");
const { scripts } = JSON.parse(readFileSync(join(root, "package.json"), "utf8")) as {
  scripts: Record<string, string>;
};

test("the formulas of the README give a result", () => {
  const formulas = readme.split("\n").filter((line) => line.startsWith("=IRRIG."));
  expect(formulas.length).toBeGreaterThan(2);
  for (const formula of formulas) {
    const [name, ...inner] = functionsIn(formula);
    if (inner.length === 0) {
      expect(Number.isFinite(call(name, ...literalArguments(formula)))).toBe(true);
    }
  }
  // The one that calls a function within a function.
  expect(call("CHECK.RATE", 0.18, call("SOIL.INTAKE", "silt loam", 2))).toBe("OK");
});

test("every command that the documents name exists", () => {
  const documents = ["README.md", "DEVELOPERS.md", "DEPLOY.md", "SECURITY.md"];
  for (const file of documents) {
    const text = readFileSync(join(root, file), "utf8");
    for (const [, name] of text.matchAll(/npm run ([\w:-]+)/g)) {
      expect([file, name, scripts[name]]).toEqual([file, name, expect.any(String)]);
    }
  }
});

test("the ready-made workbooks are listed by their names", () => {
  const changelog = readFileSync(join(root, "CHANGELOG.md"), "utf8");
  for (const text of [readme, changelog].map((one) => one.replace(/\s+/g, " "))) {
    for (const { title } of readyMadeSheets) expect(text).toContain(title);
  }
  expect(readyMadeSheets).toHaveLength(6);
});
