import { judge, readAnswer } from "../../src/workshop-page/answer";
import { exercises } from "../../src/sheets/books/workshop/exercises";
import { call } from "../support/host";

test.each([
  ["5.53", 5.53, ""],
  [" 5.53 psi ", 5.53, "psi"],
  ["5,53", 5.53, ""],
  ["5,53 psi.", 5.53, "psi"],
  ["1,234.5", 1234.5, ""],
  ["1.234,5", 1234.5, ""],
  ["85 %", 85, "%"],
  ["85%", 85, "%"],
  ["=0.85", 0.85, ""],
  [".85", 0.85, ""],
  ["2.2 l/s", 2.2, "L/s"],
  ["8 m3/h", 8, "m³/h"],
  ["10.5 h", 10.5, "hours"],
  ["10,5 horas", 10.5, "hours"],
  ["-2 psi", -2, "psi"],
  ["\u22122 psi", -2, "psi"],
])("reads %j", (text, value, unit) => {
  expect(readAnswer(text)).toEqual({ value, unit });
});

test.each(["", "  ", "psi", "about five", "-", ","])("%j begins with no number", (text) => {
  expect(readAnswer(text)).toBeUndefined();
});

const convert = (value: number, from: string, to: string) => {
  try {
    return call("UNIT.CONVERT", value, from, to) as number;
  } catch {
    return NaN;
  }
};

function exercise(id: string, system: "US" | "SI" = "US") {
  const found = exercises(system).find((other) => other.id === id);
  if (found === undefined) throw new Error(`no exercise ${id}`);
  return found;
}

test.each([
  ["friction", 5.53, "5.53 psi", "right"],
  // 5.53 psi in other units, from the definition of the psi: 6.894757 kPa.
  ["friction", 5.53, "38.1 kPa", "right"],
  ["friction", 5.53, "0.381 bar", "right"],
  ["friction", 5.53, "5.7", "close"],
  ["friction", 5.53, "7", "not yet"],
  ["friction", 5.53, "5.53 gpm", "unit"],
  ["friction", 5.53, "5.53 %", "unit"],
  ["friction", 5.53, "lots", "unread"],
  ["uniformity", 0.85, "0.85", "right"],
  ["uniformity", 0.85, "85 %", "right"],
  ["uniformity", 0.85, "85", "percent"],
  ["uniformity", 0.85, "0.83", "close"],
  ["uniformity", 0.85, "0.85 in", "unit"],
  ["setsADay", 2, "2 sets", "right"],
  ["setsADay", 2, "2.01", "close"],
  ["factor", 0.387, "0.387", "right"],
] as const)("%s, right %d: %j is %s", (id, right, typed, verdict) => {
  expect(judge(typed, exercise(id), right, convert)).toBe(verdict);
});
