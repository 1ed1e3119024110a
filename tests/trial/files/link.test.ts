import type { Content } from "../../../src/trial/kept/changes";
import { readyMadeSheets } from "../../../src/sheets";
import { inputsOf } from "../../../src/trial/kept/inputs";
import { LONGEST, packContents, unpackContents } from "../../../src/trial/files/link";
import { deflateSync, strToU8 } from "fflate";

test("what was changed comes back, every letter of it", () => {
  const contents = new Map<string, Content>([
    ["Line!D10", "Nördliche Weide & <b>"],
    ["Line!D14", 12],
    ["Line!D15", { formula: "=Heads/2" }],
    ["Line!D19", null],
    ["Line!D39", true],
  ]);
  const packed = packContents(contents);
  expect(packed).toMatch(/^[-_A-Za-z0-9]+$/);
  expect(unpackContents(packed)).toEqual(contents);
  expect(unpackContents(packContents(new Map()))).toEqual(new Map());
});

test("every input of every workbook fits into an address", () => {
  for (const { pages } of readyMadeSheets) {
    const contents = new Map(
      inputsOf(pages("US")).map(({ key }, index) => [key, 1234.5678 * index]),
    );
    expect(packContents(contents).length).toBeLessThan(LONGEST);
  }
});

test.each([
  ["cut off", packContents(new Map([["Line!D14", 12]])).slice(0, -4)],
  ["of other signs", "a b"],
  ["too long", "A".repeat(LONGEST + 1)],
  [
    "no list of cells",
    btoa(String.fromCharCode(...deflateSync(strToU8('{"a":1}')))).replace(/=/g, ""),
  ],
  [
    "cells that are none",
    btoa(String.fromCharCode(...deflateSync(strToU8('[["x",1]]')))).replace(/=/g, ""),
  ],
])("a link that is %s is refused", (_, packed) => {
  expect(() => unpackContents(packed)).toThrow();
});

test("a link that unpacks to far more is refused", () => {
  const big = deflateSync(strToU8(`[["Line!D14","${"a".repeat(5e6)}"]]`), { level: 9 });
  const packed = btoa(String.fromCharCode(...big))
    .replace(/\+/g, "-")
    .replace(/\//g, "_")
    .replace(/=/g, "");
  expect(packed.length).toBeLessThan(LONGEST);
  expect(() => unpackContents(packed)).toThrow();
});
