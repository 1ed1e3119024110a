import { readFormula, type Term } from "../src/formula-text/formula";
import { type Block, readAddress, readRange } from "../src/sheets/kit/address";
import type { Page } from "../src/sheets/kit/definition";

/** A cell that shows an error. */
export interface Fault {
  /** "Line!B4" */
  readonly cell: string;
  readonly code: string;
  /** Of our own function, where it was one that refused. */
  readonly message: string;
  readonly formula: string;
  /** The cell in error that this one reads, where there is one. */
  readonly follows?: string;
}

interface Place {
  readonly page: string;
  readonly range: Block;
}

/** Marks those that only pass on another cell's error, so that the first cause can be told first. */
export function withCauses(pages: readonly Page[], faults: readonly Fault[]): Fault[] {
  const names = new Map<string, Place>();
  for (const { name: page, cells, names: ranges } of pages) {
    for (const { name, at } of cells) {
      if (name !== undefined) names.set(name.toUpperCase(), { page, range: readRange(at) });
    }
    for (const { name, range } of ranges ?? []) {
      names.set(name.toUpperCase(), { page, range: readRange(range) });
    }
  }
  const spots = faults.map(({ cell }) => {
    const [page, at] = cell.split("!");
    return { page, cell, ...readAddress(at) };
  });
  return faults.map((fault) => {
    const [own] = fault.cell.split("!");
    const reads = placesIn(fault.formula, own, names);
    const cause = spots.find(
      (spot) => spot.cell !== fault.cell && reads.some((place) => holds(place, spot)),
    );
    return cause === undefined ? fault : { ...fault, follows: cause.cell };
  });
}

function holds(
  { page, range }: Place,
  spot: { readonly page: string; readonly row: number; readonly column: number },
): boolean {
  return (
    page === spot.page &&
    spot.row >= range.row &&
    spot.row < range.row + range.rows &&
    spot.column >= range.column &&
    spot.column < range.column + range.columns
  );
}

function placesIn(formula: string, own: string, names: ReadonlyMap<string, Place>): Place[] {
  const found: Place[] = [];
  const visit = (term: Term | undefined): void => {
    if (term === undefined) return;
    switch (term.kind) {
      case "range":
        found.push({ page: term.page ?? own, range: readRange(term.range) });
        return;
      case "name": {
        const place = names.get(term.name.toUpperCase());
        if (place !== undefined) found.push(place);
        return;
      }
      case "table":
        for (const row of term.rows) for (const cell of row) visit(cell);
        return;
      case "negative":
      case "percent":
        visit(term.of);
        return;
      case "operation":
        visit(term.left);
        visit(term.right);
        return;
      case "call":
        for (const argument of term.arguments) visit(argument);
        return;
      default:
    }
  };
  try {
    visit(readFormula(formula));
  } catch {
    // A formula that the small reader does not know, LAMBDA's, tells no cause.
  }
  return found;
}
