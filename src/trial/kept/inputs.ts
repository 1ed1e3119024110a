import { readAddress } from "../../sheets/kit/address";
import type { Page, SheetCell } from "../../sheets/kit/definition";
import { typedKey } from "../sheet-values";
import { type Content, type Contents, sameContent } from "./changes";

export interface Input {
  readonly key: string;
  readonly page: string;
  readonly cell: SheetCell;
  /**
   * What the input is called in every edition and every workbook: its name or its label, with its
   * page where another page has the same.
   */
  readonly called: string;
}

/** The cells that a user is meant to change. */
export function inputsOf(pages: readonly Page[]): Input[] {
  const taken = new Set<string>();
  return pages.flatMap((page) =>
    page.cells.flatMap((cell): Input[] => {
      if (cell.role !== "input") return [];
      const key = typedKey(page.name, cell.at);
      const name = cell.name ?? cell.label ?? key;
      const apart = taken.has(name) ? `${page.name}: ${name}` : name;
      const called = taken.has(apart) ? key : apart;
      taken.add(called);
      return [{ key, page: page.name, cell, called }];
    }),
  );
}

/** Figures that a designer sets once and not for each field. */
const STANDING = new Set(
  "Units Currency Friction Limit GreatestSpeed Performance Adequacy Efficiency".split(" "),
);

/**
 * A workbook without the sample's field: no figure and no text of it. Choices from a list stay, for
 * a blank one is no choice, and so do the limits of the design.
 */
export function blankContents(pages: readonly Page[]): Contents {
  return new Map(
    inputsOf(pages)
      .filter(({ cell }) => {
        if (STANDING.has(cell.name ?? "") || typeof cell.value === "boolean") return false;
        const { allowed } = cell;
        const mustChoose = allowed !== undefined && "list" in allowed && allowed.optional !== true;
        return !mustChoose && cell.value !== undefined;
      })
      .map(({ key }) => [key, null]),
  );
}

/**
 * A short text that differs where the workbook's cells stand elsewhere or mean something else: what
 * was typed under another shape is put where its input now is.
 */
export function shapeOf(pages: readonly Page[]): string {
  let hash = 5381;
  for (const page of pages)
    for (const { at, role, name = "", label = "" } of page.cells) {
      if (role !== "input" && name === "") continue;
      for (const character of `${page.name}!${at} ${role} ${name} ${label};`)
        hash = (Math.imul(hash, 33) ^ (character.codePointAt(0) ?? 0)) >>> 0;
    }
  return hash.toString(36);
}

/** Where each input of the workbook stood when the work was written down. */
export type Places = Readonly<Record<string, string>>;

export function placesOf(pages: readonly Page[], contents: Contents): Places {
  return Object.fromEntries(
    inputsOf(pages)
      .filter(({ key }) => contents.has(key))
      .map(({ key, called }) => [key, called]),
  );
}

export interface Moved {
  readonly contents: Contents;
  /** What had to be left out, with what it held. */
  readonly lost: readonly string[];
}

/** Contents that were typed into an earlier edition of the workbook, where their inputs are now. */
export function moved(contents: Contents, places: Places, pages: readonly Page[]): Moved {
  const now = new Map(inputsOf(pages).map(({ called, key }) => [called, key]));
  const cells = new Set(
    pages.flatMap((page) => page.cells.map(({ at }) => typedKey(page.name, at))),
  );
  const result = new Map<string, Content>();
  const lost: string[] = [];
  for (const [key, content] of contents) {
    const called = places[key];
    // A cell of the user's own stays where it is unless the workbook now has one there.
    const to = called === undefined ? (cells.has(key) ? undefined : key) : now.get(called);
    if (to === undefined) lost.push(called ?? key);
    else result.set(to, content);
  }
  return { contents: result, lost };
}

/** The inputs whose content differs between two. */
export function differing(one: Contents, two: Contents): string[] {
  return [...new Set([...one.keys(), ...two.keys()])].filter(
    (key) => !sameContent(one.get(key), two.get(key)),
  );
}

export function placeOf(key: string): { page: string; row: number; column: number } {
  const at = key.lastIndexOf("!");
  return { page: key.slice(0, at), ...readAddress(key.slice(at + 1)) };
}
