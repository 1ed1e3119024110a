import { shownAs, type Quantity } from "../../sheets/kit/builder";
import type { UnitSystem } from "../../sheets/kit/definition";
import { writtenNumber } from "../../screen/number-format";
import { screenSaid } from "../../words/spoken";
import { crops } from "../../tables/crops";
import { soilTextures } from "../../tables/soils";
import { commaFault, readTyped } from "../typed";
import { type Sentence, sentence } from "./say";

/** What a dealer is asked: a number, or a choice from a list. */
export interface Question {
  readonly label: string;
  readonly quantity?: Quantity;
  /** What stands in a unit's place where there is no quantity. */
  readonly word?: string;
  readonly low: number;
  readonly high: number;
  readonly list?: readonly string[];
  readonly hint?: string;
  /** Where the workbook's own value stands in it at first: what that input is called. */
  readonly standing?: string;
  /** Asked only where the water comes that way. */
  readonly water?: Water;
}

export const WATERS = ["hydrant", "pump"] as const;
export type Water = (typeof WATERS)[number];

const pressure = { quantity: "pressure", low: 1, high: 2000 } as const;
const flow = { quantity: "flow", low: 0.1, high: 100000 } as const;
const head = { quantity: "length", low: 0, high: 10000 } as const;

export const QUESTIONS = {
  length: {
    label: "Length along the lines",
    quantity: "length",
    low: 20,
    high: 20000,
    hint: "The side of the field that the lines lie along.",
  },
  width: {
    label: "Width across the lines",
    quantity: "length",
    low: 5,
    high: 20000,
    hint: "The way the lines move. A field that is no rectangle: take the workbook Plan.",
  },
  rise: {
    label: "Rise along the length",
    quantity: "length",
    low: -1000,
    high: 1000,
    hint: "Ground at the far end above that at the inlets, 0 where it is level. Negative: downhill.",
  },
  highest: {
    label: "Highest point of the field above the hydrant",
    quantity: "length",
    low: 0,
    high: 1000,
    hint: "0 where none is higher.",
  },
  lowest: {
    label: "Lowest point of field and main below the hydrant",
    quantity: "length",
    low: 0,
    high: 1000,
    hint: "The pipe there bears the most. 0 where none is lower.",
  },
  wind: {
    label: "Wind",
    quantity: "wind",
    low: 0,
    high: 200,
    hint: "Usual speed in the hours of irrigating.",
  },
  soil: { label: "Soil", low: 0, high: 0, list: soilTextures },
  slope: { label: "Steepest slope of the ground", word: "%", low: 0, high: 16 },
  crop: { label: "Crop", low: 0, high: 0, list: crops },
  cropUse: {
    label: "Water the crop uses a day",
    quantity: "dailyDepth",
    low: 0.001,
    high: 50,
    standing: "CropUse",
    hint: "At the peak. The workbook Season computes it.",
  },
  shut: {
    label: "Pressure at the hydrant, valve shut",
    ...pressure,
    water: "hydrant",
    hint: "The highest that the gauge shows, at night too: pipe and tubing must bear it.",
  },
  running: {
    label: "Pressure at the hydrant, water running",
    ...pressure,
    water: "hydrant",
    hint: "While the flow below runs out of it.",
  },
  flow: { label: "Flow at that pressure", ...flow, water: "hydrant" },
  shutHead: {
    label: "Pump's head at no flow",
    ...head,
    water: "pump",
    hint: "From the pump's curve, as the next two points.",
  },
  middleFlow: { label: "Second point, flow", ...flow, water: "pump" },
  middleHead: { label: "Second point, head", ...head, water: "pump" },
  mostFlow: { label: "Last point, flow", ...flow, water: "pump" },
  mostHead: { label: "Last point, head", ...head, water: "pump" },
  lift: {
    label: "Hydrant above the water",
    quantity: "length",
    low: -1000,
    high: 1000,
    water: "pump",
    hint: "Negative: below it.",
  },
  main: {
    label: "Length of the main to the hydrant",
    quantity: "length",
    low: 1,
    high: 100000,
    water: "pump",
  },
  wetted: {
    label: "Wetted diameter of a sprinkler",
    quantity: "length",
    low: 1,
    high: 1000,
    standing: "Wetted",
  },
  least: {
    label: "Lowest pressure wanted at a nozzle",
    ...pressure,
    standing: "Lowest",
  },
  pressure1: chart("pressure", 1),
  flow1: chart("headFlow", 1),
  pressure2: chart("pressure", 2),
  flow2: chart("headFlow", 2),
  pressure3: chart("pressure", 3),
  flow3: chart("headFlow", 3),
  dayHours: {
    label: "Hours in a working day",
    word: "hours",
    low: 1,
    high: 24,
    standing: "DayHours",
  },
  moveHours: {
    label: "Hours to move a line",
    word: "hours",
    low: 0,
    high: 24,
    standing: "MoveHours",
  },
} as const satisfies Record<string, Question>;

function chart(quantity: "pressure" | "headFlow", row: number) {
  const column = quantity === "pressure" ? "pressure" : "flow";
  return {
    label: `Sprinkler chart, ${column}, row ${row}`,
    quantity,
    low: 0.001,
    high: 100000,
    standing: `Sprinkler chart, ${column}, row ${row}`,
  };
}

export type Key = keyof typeof QUESTIONS;
export const KEYS = Object.keys(QUESTIONS) as Key[];
const LISTED = ["soil", "crop"] as const;
type ListedKey = (typeof LISTED)[number];
export type NumberKey = Exclude<Key, ListedKey>;

/** The questions of a section of the form. */
export const SECTIONS: readonly { readonly title: string; readonly keys: readonly Key[] }[] = [
  {
    title: "The field",
    keys: ["length", "width", "rise", "highest", "lowest", "wind"],
  },
  { title: "Soil and crop", keys: ["soil", "slope", "crop", "cropUse"] },
  {
    title: "Water",
    keys: [
      ...(["shut", "running", "flow"] as const),
      ...([
        "shutHead",
        "middleFlow",
        "middleHead",
        "mostFlow",
        "mostHead",
        "lift",
        "main",
      ] as const),
    ],
  },
  {
    title: "Sprinkler and day",
    keys: [
      ...(["wetted", "least", "pressure1", "flow1", "pressure2", "flow2"] as const),
      ...(["pressure3", "flow3", "dayHours", "moveHours"] as const),
    ],
  },
];

/** What was typed, as it was typed. */
export type Typed = Readonly<Partial<Record<Key, string>>>;

/** All that is asked, read. What is asked of the other kind of water alone is 0. */
export type Given = Readonly<Record<NumberKey, number>> &
  Readonly<Record<ListedKey, string>> & {
    readonly system: UnitSystem;
    readonly water: Water;
    readonly name: string;
  };

export type Faults = ReadonlyMap<Key, Sentence>;

export function isAsked(key: Key, water: Water): boolean {
  const { water: only }: Question = QUESTIONS[key];
  return only === undefined || only === water;
}

export function unitOf(key: Key, system: UnitSystem): string {
  const { quantity, word = "" }: Question = QUESTIONS[key];
  return quantity === undefined ? word : shownAs(quantity, system).unit;
}

/** What is given, or what is wrong with it, by field: nothing is guessed for a blank. */
export function readGiven(
  typed: Typed,
  { system, water, name }: Pick<Given, "system" | "water" | "name">,
): { readonly given: Given; readonly faults?: undefined } | { readonly faults: Faults } {
  const faults = new Map<Key, Sentence>();
  const numbers: Partial<Record<NumberKey, number>> = {};
  const words = { soil: "", crop: "" };
  for (const key of KEYS) {
    const text = typed[key] ?? "";
    const question: Question = QUESTIONS[key];
    if (!isAsked(key, water)) {
      if (!isListed(key)) numbers[key] = 0;
      continue;
    }
    if (isListed(key)) {
      words[key] = text;
      if (question.list?.includes(text) !== true)
        faults.set(key, sentence("{label}: choose one.", { label: screenSaid(question.label) }));
      continue;
    }
    const read = readNumber(question, text);
    if (typeof read === "number") numbers[key] = read;
    else faults.set(key, read);
  }
  const given = { ...numbers, ...words, system, water, name: name.trim() } as Given;
  if (faults.size === 0) for (const [key, fault] of together(given)) faults.set(key, fault);
  return faults.size === 0 ? { given } : { faults };
}

function isListed(key: Key): key is ListedKey {
  return LISTED.some((one) => one === key);
}

/** A number within its bounds, or what is wrong. */
export function readNumber(
  { label, low, high }: Pick<Question, "label" | "low" | "high">,
  text: string,
): number | Sentence {
  const places = {
    label: screenSaid(label),
    typed: text.trim(),
    low: writtenNumber(low),
    high: writtenNumber(high),
  };
  const value = readTyped(text);
  if (value === null)
    return sentence("{label}: blank. A number from {low} to {high} is due.", places);
  if (typeof value !== "number") {
    const comma = commaFault(text);
    return comma === undefined
      ? sentence('{label}: "{typed}" is not a number. One from {low} to {high} is due.', places)
      : sentence("{label}: {why}", { ...places, why: screenSaid(comma) });
  }
  if (value < low || value > high)
    return sentence("{label}: {typed} is not from {low} to {high}.", places);
  return value;
}

/** What each number allows by itself and not together. */
function together(given: Given): [Key, Sentence][] {
  const faults: [Key, Sentence][] = [];
  const add = (key: Key, form: string) =>
    faults.push([key, sentence(form, { label: screenSaid(QUESTIONS[key].label) })]);
  if (given.highest + given.lowest < Math.abs(given.rise))
    add(
      "highest",
      "{label}: the field rises or falls by more along its length than highest and lowest point lie apart. One of the three is wrong.",
    );
  if (given.water === "hydrant" && given.running > given.shut)
    add("running", "{label}: it cannot be above the pressure with the valve shut.");
  if (given.water === "pump") {
    if (given.mostFlow <= given.middleFlow)
      add("mostFlow", "{label}: it must be above the flow of the second point.");
    if (given.middleHead > given.shutHead)
      add("middleHead", "{label}: it cannot be above the head at no flow.");
    if (given.mostHead > given.middleHead)
      add("mostHead", "{label}: it cannot be above the head of the second point.");
  }
  return faults;
}
