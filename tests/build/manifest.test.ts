import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { LOCAL_ADDRESS, problemsOf, rewritten } from "../../build/manifest";
import { BASE_URL, NAMESPACE, VERSION } from "../../build/settings";

const source = readFileSync(join(__dirname, "..", "..", "manifest.xml"), "utf8");
const manifest = rewritten(source);
const everything = () => true;

test("the manifest at the root is sound as it stands, and of this version", () => {
  expect(problemsOf(source, LOCAL_ADDRESS, everything)).toEqual([]);
  expect(source).toContain(`<Version>${VERSION}.0</Version>`);
  expect(source).toContain('id="Functions.Namespace" DefaultValue="IRRIG"');
});

test("the built one is of this build's address, namespace and version", () => {
  expect(problemsOf(manifest, BASE_URL, everything)).toEqual([]);
  expect(manifest).toContain(`<Version>${VERSION}.0</Version>`);
  expect(manifest).toContain(`id="Functions.Namespace" DefaultValue="${NAMESPACE}"`);
  expect(manifest).toContain(`DefaultValue="${BASE_URL}/functions.json"`);
});

test("another address, namespace and version", () => {
  const env = {
    ...process.env,
    BASE_URL: "https://tools.example.org/fieldsum/",
    NAMESPACE: "FIELDTEST",
  };
  const printed = execFileSync(
    process.execPath,
    [
      "--import",
      "tsx",
      "--eval",
      'const { rewritten } = require("./build/manifest"); process.stdout.write(rewritten(require("node:fs").readFileSync("manifest.xml", "utf8").replace(/<Version>[^<]*/, "<Version>9.9.9.9")));',
    ],
    { cwd: join(__dirname, "..", ".."), env, encoding: "utf8" },
  );
  expect(problemsOf(printed, "https://tools.example.org/fieldsum", everything)).toEqual([]);
  expect(printed).not.toMatch(/localhost:3443|IRRIG|9\.9\.9/);
  expect(printed).toContain("Type =FIELDTEST. in a cell");
});

test("asks for no more than it needs", () => {
  expect(manifest.match(/<Permissions>(\w+)</)?.[1]).toBe("ReadWriteDocument");
  expect(manifest).toContain('<Set Name="CustomFunctionsRuntime" MinVersion="1.2"/>');
  expect(manifest).not.toContain("<AppDomains>");
});

test.each([
  ["an address that is not https", (xml: string) => xml.replace(/https:\/\//g, "http://"), "https"],
  [
    "an address of somewhere else",
    (xml: string) => xml.replace(`${BASE_URL}/support.html`, "https://example.org/support.html"),
    "https://example.org/support.html is not under",
  ],
  [
    "a resid that nothing has",
    (xml: string) => xml.replace('resid="Pane.Url"', 'resid="Lost.Url"'),
    "nothing has the resid Lost.Url",
  ],
  [
    "a resid that is too long",
    (xml: string) => xml.replace(/GetStarted\.Description/g, "x".repeat(33)),
    "is longer than 32",
  ],
  [
    "a short text that is too long",
    (xml: string) => xml.replace("Sprinkler lines", "x".repeat(126)),
    "OpenPane.Label has 126 characters",
  ],
  [
    "a long text that is too long",
    (xml: string) => xml.replace("Find a function", "x".repeat(251)),
    "OpenPane.Tip has",
  ],
  [
    "a namespace that could be a column",
    (xml: string) =>
      xml.replace(`Namespace" DefaultValue="${NAMESPACE}"`, 'Namespace" DefaultValue="IRR"'),
    'the namespace "IRR"',
  ],
])("refuses %s", (_, spoil, message) => {
  const problems = problemsOf(spoil(manifest), BASE_URL, everything);
  expect(problems.join("\n")).toContain(message);
});

test("refuses an address that the build does not have", () => {
  const problems = problemsOf(manifest, BASE_URL, (file) => file !== "functions.json");
  expect(problems).toEqual([`${BASE_URL}/functions.json is not built`]);
});
