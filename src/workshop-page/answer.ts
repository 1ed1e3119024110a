import type { Exercise } from "../sheets/books/workshop/exercises";
import { CLOSE_WITHIN, RIGHT_WITHIN } from "../sheets/books/workshop/exercises";

/** What was typed: a number, perhaps with a unit or a percent sign behind it. */
export interface ReadAnswer {
  readonly value: number;
  /** As typed: "psi", "%", or "". */
  readonly unit: string;
}

/** Units as people write them, and the names under which the functions convert them. */
const SPELLINGS: Readonly<Record<string, string>> = {
  "m3/h": "m³/h",
  "l/s": "L/s",
  liter: "L",
  liters: "L",
  l: "L",
  feet: "ft",
  foot: "ft",
  "'": "ft",
  inch: "in",
  inches: "in",
  '"': "in",
  "in/hr": "in/h",
  "mm/hr": "mm/h",
  gallons: "gal",
  gallon: "gal",
  meters: "m",
  meter: "m",
  kpa: "kPa",
  kw: "kW",
  h: "hours",
  hr: "hours",
  hrs: "hours",
  hour: "hours",
  std: "hours",
  hora: "hours",
  horas: "hours",
  pie: "ft",
  pies: "ft",
  pulgada: "in",
  pulgadas: "in",
  metro: "m",
  metros: "m",
  litro: "L",
  litros: "L",
  galones: "gal",
};

/** Reads "5.53 psi", "5,53", "1,234.5" and "85 %"; undefined where no number stands first. */
export function readAnswer(text: string): ReadAnswer | undefined {
  const found = /^\s*=?\s*([+\u2212-]?[\d.,]*\d[.,]?)\s*(.*?)\s*$/.exec(text);
  if (found === null) return undefined;
  const value = readNumber(found[1].replace("\u2212", "-"));
  if (value === undefined) return undefined;
  const unit = found[2].replace(/\.$/, "");
  return { value, unit: SPELLINGS[unit.toLowerCase()] ?? unit };
}

/** A comma groups thousands where three digits follow it and a point or another comma is there. */
function readNumber(text: string): number | undefined {
  const commas = text.split(",").length - 1;
  const points = text.split(".").length - 1;
  let plain = text;
  if (commas > 0 && points > 0) {
    // The mark that comes last is the decimal one.
    plain =
      text.lastIndexOf(",") > text.lastIndexOf(".")
        ? text.replace(/\./g, "").replace(",", ".")
        : text.replace(/,/g, "");
  } else if (commas === 1) plain = text.replace(",", ".");
  else if (commas > 1) plain = text.replace(/,/g, "");
  const value = Number(plain);
  return Number.isFinite(value) ? value : undefined;
}

export type Verdict = "right" | "percent" | "close" | "not yet" | "unread" | "unit";

/** Judges an answer; `convert` gives NaN where a unit is none of this quantity. */
export function judge(
  text: string,
  exercise: Exercise,
  right: number,
  convert: (value: number, from: string, to: string) => number,
): Verdict {
  const read = readAnswer(text);
  if (read === undefined) return "unread";
  const off = (value: number) => Math.abs(value / right - 1);
  const within = exercise.whole ? 1e-9 : RIGHT_WITHIN;
  if (exercise.fraction) {
    if (read.unit === "%") return verdictOf(off(read.value / 100), within);
    if (read.unit !== "") return "unit";
    if (off(read.value / 100) <= within) return "percent";
    return verdictOf(off(read.value), within);
  }
  // A count may be followed by what is counted.
  if (read.unit === "" || read.unit === exercise.unit || exercise.whole)
    return verdictOf(off(read.value), within);
  if (exercise.unit === "") return "unit";
  const converted = convert(read.value, read.unit, exercise.unit);
  return Number.isNaN(converted) ? "unit" : verdictOf(off(converted), within);
}

function verdictOf(off: number, within: number): Verdict {
  if (off <= within) return "right";
  return off <= CLOSE_WITHIN ? "close" : "not yet";
}
