import { referencesOf } from "../../formula-text/references";
import { readAddress, readRange, type Block } from "./address";
import type { Page, SheetCell } from "./definition";

/** A cell of a definition and what its formula reads, directly. */
export interface LinkedCell {
  readonly page: number;
  readonly cell: SheetCell;
  readonly row: number;
  readonly column: number;
  /** "Line!D11" */
  readonly place: string;
  readonly precedents: readonly LinkedCell[];
}

/** Cells of the definition in the order of pages, rows and columns. */
export function linkedCells(pages: readonly Page[]): LinkedCell[] {
  const all = pages.map((page, index) =>
    page.cells
      .map((cell) => ({
        page: index,
        cell,
        ...readAddress(cell.at),
        place: `${page.name}!${cell.at}`,
        precedents: [] as LinkedCell[],
      }))
      .sort((one, other) => one.row - other.row || one.column - other.column),
  );
  const pageIndex = new Map(pages.map(({ name }, index) => [name, index]));
  const names = namedBlocks(pages);
  for (const linked of all.flat()) {
    if (linked.cell.formula === undefined) continue;
    const { ranges, names: used } = referencesOf(linked.cell.formula);
    const blocks = [
      ...ranges.map(({ page, range }) => ({
        page: page === undefined ? linked.page : (pageIndex.get(page) ?? -1),
        block: readRange(range),
      })),
      ...used.flatMap((name) => names.get(name.toUpperCase()) ?? []),
    ];
    const found = blocks.flatMap(({ page, block }) =>
      (all[page] ?? []).filter((other) => other !== linked && reaches(other, block)),
    );
    linked.precedents.push(...new Set(found));
  }
  return all.flat();
}

interface PlacedBlock {
  readonly page: number;
  readonly block: Block;
}

/** What each name stands for, by the name in capitals, as sheets do not tell case apart. */
function namedBlocks(pages: readonly Page[]): Map<string, PlacedBlock> {
  return new Map(
    pages.flatMap((page, index) => [
      ...page.cells.flatMap(({ name, at }): [string, PlacedBlock][] =>
        name === undefined ? [] : [[name.toUpperCase(), { page: index, block: readRange(at) }]],
      ),
      ...(page.names ?? []).map(({ name, range }): [string, PlacedBlock] => [
        name.toUpperCase(),
        { page: index, block: readRange(range) },
      ]),
    ]),
  );
}

/** Whether a cell, or what its formula fills, lies in a block. */
function reaches({ row, column, cell }: LinkedCell, block: Block): boolean {
  const rows = cell.spill?.reserved ?? 1;
  const columns = cell.spill?.columns ?? 1;
  return (
    row < block.row + block.rows &&
    row + rows > block.row &&
    column < block.column + block.columns &&
    column + columns > block.column
  );
}
