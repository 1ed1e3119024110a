import { deflateSync, inflateSync, strFromU8, strToU8 } from "fflate";
import { type Contents, plainChanges, readChanges, Unreadable } from "../kept/changes";
import { noChanges } from "../kept/changes";

/** Longer addresses are cut by some programs on the way. */
export const LONGEST = 8000;
/** What a link may unpack to: far more than all inputs of a workbook. */
const MOST_UNPACKED = 500000;

/** The changed cells as a piece of an address. */
export function packContents(contents: Contents): string {
  const text = JSON.stringify(plainChanges({ ...noChanges, contents }).contents);
  const bytes = deflateSync(strToU8(text), { level: 9 });
  return btoa(String.fromCharCode(...bytes))
    .replace(/\+/g, "-")
    .replace(/\//g, "_")
    .replace(/=+$/, "");
}

/** What packContents packed. Throws Unreadable for anything else. */
export function unpackContents(packed: string): Contents {
  if (packed.length > LONGEST || !/^[-_A-Za-z0-9]+$/.test(packed))
    throw new Unreadable("it is not complete");
  let plain: unknown;
  try {
    const text = atob(packed.replace(/-/g, "+").replace(/_/g, "/"));
    const bytes = inflateSync(
      Uint8Array.from(text, (character) => character.charCodeAt(0)),
      { out: new Uint8Array(MOST_UNPACKED) },
    );
    plain = JSON.parse(strFromU8(bytes));
  } catch {
    throw new Unreadable("it is not complete");
  }
  return readChanges({ contents: plain, formats: [], sizes: [], ownSheets: [] }).contents;
}
