import type { UnitSystem } from "../../sheets/kit/definition";
import { type Changes, plainChanges, readChanges, record, Unreadable } from "./changes";
import type { Places } from "./inputs";

/** A piece of work: a ready-made workbook with what its user changed, under a name of the user's. */
export interface Piece {
  readonly id: string;
  readonly name: string;
  /** Id of the ready-made workbook. */
  readonly sheet: string;
  readonly system: UnitSystem;
  /** The workbook's shape when it was written down, and what its inputs were called. */
  readonly shape: string;
  readonly places: Places;
  readonly changes: Changes;
  /** Counts what was written, so that two windows do not write over each other. */
  readonly revision: number;
  /** When, as a time of the ISO standard. */
  readonly written: string;
}

const EDITION = 1;

export function writePiece(piece: Piece): string {
  return JSON.stringify({ edition: EDITION, ...piece, changes: plainChanges(piece.changes) });
}

/** Throws Unreadable for anything that is not a piece of work whole. */
export function readPiece(text: string): Piece {
  let plain: unknown;
  try {
    plain = JSON.parse(text);
  } catch {
    throw new Unreadable("it is not what this page writes down");
  }
  const read = record(plain);
  const { edition, system, revision } = read;
  if (edition !== EDITION) throw new Unreadable("it was written by another edition of this page");
  if (system !== "US" && system !== "SI") throw new Unreadable("its units are unknown");
  if (typeof revision !== "number" || !Number.isSafeInteger(revision))
    throw new Unreadable("its count is no number");
  const word = (key: string): string => {
    const value = read[key];
    if (typeof value !== "string") throw new Unreadable(`its ${key} is no text`);
    return value;
  };
  const places = Object.entries(record(read.places)).map(([key, called]) => {
    if (typeof called !== "string") throw new Unreadable("an input has no name");
    return [key, called] as const;
  });
  return {
    id: word("id"),
    name: word("name"),
    sheet: word("sheet"),
    system,
    shape: word("shape"),
    places: Object.fromEntries(places),
    changes: readChanges(read.changes),
    revision,
    written: word("written"),
  };
}
