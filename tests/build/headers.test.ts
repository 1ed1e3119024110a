import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { headersFor, writeHeaders } from "../../build/headers";
import { joined, matching, readRules, type Rule } from "../support/static-host";

const FILES = [
  "index.html",
  "taskpane.html",
  "functions.html",
  "functions.js",
  "functions.json",
  "manifest.xml",
  "assets/trial.0123abcd.js",
  "reference/index.html",
  "reference/page.js",
  "icons/icon-32.png",
];

let folder: string;
let rules: Rule[];

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "headers-"));
  for (const name of ["assets", "reference", "icons"]) mkdirSync(join(folder, name));
  for (const file of FILES) writeFileSync(join(folder, file), "");
  writeHeaders(folder);
  // A second build finds the first one's file there.
  writeHeaders(folder);
  rules = readRules(readFileSync(join(folder, "_headers"), "utf8"));
});

afterAll(() => rmSync(folder, { recursive: true }));

const ADDRESSES = ["/", "/taskpane", "/functions", ...FILES.map((file) => `/${file}`)];

test.each(ADDRESSES)("%s falls under one rule, also where rules are joined", (address) => {
  expect(matching(rules, address)).toHaveLength(1);
  const headers = joined(rules, address);
  expect(headers).toEqual(headersFor(address));
  expect(headers["Content-Security-Policy"]).not.toContain(",");
  expect(headers["Cache-Control"].split(", ").filter((part) => part === "no-cache").length).toBe(
    address.startsWith("/assets/") ? 0 : 1,
  );
});

test("the reader of rules would notice two that overlap", () => {
  const overlapping = readRules(
    "/*\n  Cache-Control: no-cache\n\n/assets/*\n  Cache-Control: public",
  );
  expect(joined(overlapping, "/assets/a.js")).toEqual({ "Cache-Control": "no-cache, public" });
});

test("pages inside Excel may be framed and load the host's script and its frame; others may not", () => {
  for (const address of ["/taskpane.html", "/taskpane", "/functions.html"]) {
    const policy = joined(rules, address)["Content-Security-Policy"];
    expect(policy).toContain("script-src 'self' https://appsforoffice.microsoft.com;");
    expect(policy).toContain("frame-src https://appsforoffice.microsoft.com");
    expect(policy).not.toContain("frame-ancestors");
  }
  const own = joined(rules, "/")["Content-Security-Policy"];
  expect(own).toContain("frame-ancestors 'none'");
  expect(own).not.toContain("appsforoffice");
});
