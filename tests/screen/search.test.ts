import { functionSearch } from "../../src/screen/search";
import { frictionHelp, helpFor } from "../support/help";

const setTime = helpFor("SET.TIME", ["depth", "rate"], {
  short: "Hours to apply a net depth.",
  task: "how long do I run a set?",
});
const pressure = helpFor("LATERAL.PRESSURE", ["n", "inlet"], {
  short: "Line pressure at the nth head.",
  task: "what pressure does the last head get?",
  returns: "Pressure (psi, kPa).",
});
const search = functionSearch([frictionHelp, setTime, pressure]);
const found = (query: string) => search(query).map(({ name }) => name);

test("nothing typed: all, in the catalogue's order", () => {
  expect(found("  ")).toEqual(["PIPE.FRICTION", "SET.TIME", "LATERAL.PRESSURE"]);
});

test("a task as a question", () => {
  expect(found("how long do I run a set?")[0]).toBe("SET.TIME");
});

test("a word, an unfinished word, a misspelt one", () => {
  expect(found("friction")).toEqual(["PIPE.FRICTION"]);
  expect(found("fric")).toEqual(["PIPE.FRICTION"]);
  expect(found("frction")).toEqual(["PIPE.FRICTION"]);
});

test("a unit", () => {
  expect(found("kPa")).toContain("LATERAL.PRESSURE");
});

test("the name as typed in a sheet", () => {
  expect(found("lateral.pressure")[0]).toBe("LATERAL.PRESSURE");
});

test("nothing of the kind", () => {
  expect(found("zebra")).toEqual([]);
});
