import { readyMadeSheets } from "../../../src/sheets";
import type { UnitSystem } from "../../../src/sheets/kit/definition";
import type { Contents } from "../../../src/trial/kept/changes";
import { AskedBook } from "../../../src/trial/start/asked-book";
import { sampleField } from "../../../src/trial/start/form-memory";
import {
  KEYS,
  type Question,
  QUESTIONS,
  readGiven,
  type Typed,
  type Water,
} from "../../../src/trial/start/given";
import { type Outcome, proposePlan } from "../../../src/trial/start/propose";
import { host, reference } from "../../support/page-functions";

/** The workbook Line layout, asked as the page asks it. */
export function bookIn(system: UnitSystem, already: Contents = new Map()): AskedBook {
  return new AskedBook(readyMadeSheets[0].pages(system), reference, host, already);
}

/** The sample field as a dealer types it, with these in place of its own. */
export function typedIn(system: UnitSystem, water: Water, other: Typed = {}): Typed {
  const book = bookIn(system);
  const standing = KEYS.flatMap((key) => {
    const { standing: called }: Question = QUESTIONS[key];
    return called === undefined ? [] : [[key, String(book.stands(called))]];
  });
  return { ...Object.fromEntries(standing), ...sampleField(system, water), ...other };
}

export function proposed(system: UnitSystem, water: Water, other: Typed = {}): Outcome {
  const read = readGiven(typedIn(system, water, other), { system, water, name: "North forty" });
  if (read.faults !== undefined) throw new Error([...read.faults.keys()].join(", "));
  const search = proposePlan(bookIn(system), read.given);
  for (;;) {
    const step = search.next();
    if (step.done === true) return step.value;
  }
}
