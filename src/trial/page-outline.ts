import type { Page, SheetCell } from "../sheets/kit/definition";
import { readAddress, type Position } from "../sheets/kit/address";

/** A label with the value beside it, as a form shows them. */
export interface Field {
  readonly label: SheetCell;
  readonly value: SheetCell;
  readonly unit?: SheetCell;
}

export interface Block {
  readonly heading?: SheetCell;
  readonly fields: readonly Field[];
}

export interface Answer {
  readonly question: SheetCell;
  readonly answer: SheetCell;
}

/** A table of cells under their headers; a plain of cells has none. */
export interface CellTable {
  readonly heading?: SheetCell;
  readonly headers: readonly SheetCell[];
  readonly rows: readonly (readonly (SheetCell | undefined)[])[];
}

/** A table that one formula spills. */
export interface SpilledTable {
  readonly heading?: SheetCell;
  readonly cell: SheetCell;
}

/** What a page says, in the order in which a reader without a grid wants it. */
export interface Outline {
  readonly title?: SheetCell;
  readonly purpose?: SheetCell;
  readonly answers: readonly Answer[];
  readonly blocks: readonly Block[];
  readonly tables: readonly CellTable[];
  readonly spilled: readonly SpilledTable[];
  readonly texts: readonly SheetCell[];
}

interface Placed extends Position {
  readonly cell: SheetCell;
}

/** Reads the page's cells back into the parts they were laid out from. */
export function outline(page: Page): Outline {
  const cells = page.cells
    .map((cell): Placed => ({ cell, ...readAddress(cell.at) }))
    .sort((one, other) => one.row - other.row || one.column - other.column);
  const only = (role: SheetCell["role"]) => cells.filter(({ cell }) => cell.role === role);
  const headings = only("heading");
  const found = tables(cells, headings);
  const inTables = new Set(found.flatMap(({ rows }) => rows.flat()));
  // Blocks under one heading stand side by side: the column of their labels tells them apart.
  const blocks = new Map<string, { heading?: SheetCell; fields: Field[] }>();
  for (const label of only("label")) {
    if (inTables.has(label.cell)) continue;
    const field = fieldOf(label, cells);
    if (field === undefined) continue;
    const heading = headingOver(label, headings);
    const key = `${heading?.at ?? ""} ${label.column}`;
    const block = blocks.get(key) ?? { ...(heading && { heading }), fields: [] };
    block.fields.push(field);
    blocks.set(key, block);
  }
  const fields = [...blocks.values()].flatMap((block) => block.fields.map(({ value }) => value));
  const known = new Set([...inTables, ...fields]);
  const bare = cells.filter(
    ({ cell }) =>
      ["input", "result", "sentence", "check", "mark"].includes(cell.role) &&
      cell.spill === undefined &&
      !known.has(cell),
  );
  return {
    title: only("title")[0]?.cell,
    purpose: only("purpose")[0]?.cell,
    answers: only("question").flatMap((question) => {
      const answer = cells.find(
        (other) => other.cell.role === "answer" && other.row === question.row,
      );
      return answer === undefined ? [] : [{ question: question.cell, answer: answer.cell }];
    }),
    blocks: [...blocks.values()],
    tables: [...found, ...bareTables(bare, headings)],
    spilled: cells
      .filter(({ cell }) => cell.spill !== undefined)
      .map((placed) => ({ heading: headingOver(placed, headings), cell: placed.cell })),
    texts: only("text").map(({ cell }) => cell),
  };
}

/** The value stands to the right of its label, the unit to the right of the value. */
function fieldOf(label: Placed, cells: readonly Placed[]): Field | undefined {
  const right = cells.filter(({ row, column }) => row === label.row && column > label.column);
  const [value, unit] = right;
  if (
    value === undefined ||
    !["input", "result", "sentence", "check", "mark", "answer"].includes(value.cell.role)
  )
    return undefined;
  if (value.cell.spill !== undefined) return undefined;
  return {
    label: label.cell,
    value: value.cell,
    ...(unit?.cell.role === "unit" && { unit: unit.cell }),
  };
}

/** The nearest heading above whose columns reach over this cell. */
function headingOver(placed: Placed, headings: readonly Placed[]): SheetCell | undefined {
  return headings
    .filter(
      ({ row, column, cell }) =>
        row < placed.row && column <= placed.column && placed.column < column + (cell.span ?? 1),
    )
    .at(-1)?.cell;
}

/** What makes a row one of a table: a line of text below it is none. */
const IN_ROWS = new Set<SheetCell["role"]>([
  "input",
  "result",
  "check",
  "mark",
  "label",
  "formulaText",
]);

/** Headers side by side in a row, and what stands below them until a row is empty. */
function tables(cells: readonly Placed[], headings: readonly Placed[]): CellTable[] {
  const found: CellTable[] = [];
  const at = new Map(cells.map((placed) => [`${placed.row},${placed.column}`, placed.cell]));
  for (const group of sideBySide(cells.filter(({ cell }) => cell.role === "header"))) {
    // The headers of rows were taken with the table that they stand in.
    const taken = found.some(({ rows }) => rows.some((line) => line.includes(group[0].cell)));
    if (taken) continue;
    const rows: (SheetCell | undefined)[][] = [];
    for (let row = group[0].row + 1; ; row++) {
      const line = group.map(({ column }) => at.get(`${row},${column}`));
      if (line.every((cell) => cell === undefined || !IN_ROWS.has(cell.role))) break;
      rows.push(line);
    }
    const heading = headingOver(group[0], headings);
    found.push({ headers: group.map(({ cell }) => cell), rows, ...(heading && { heading }) });
  }
  return found;
}

/** Cells that stand together without headers or labels, as a plain of catch cans does. */
function bareTables(cells: readonly Placed[], headings: readonly Placed[]): CellTable[] {
  const groups: Placed[][] = [];
  for (const placed of cells) {
    const touching = groups.find((group) =>
      group.some(
        ({ row, column }) =>
          Math.abs(row - placed.row) <= 1 && Math.abs(column - placed.column) <= 1,
      ),
    );
    if (touching === undefined) groups.push([placed]);
    else touching.push(placed);
  }
  return groups.map((group) => {
    const rows = [...new Set(group.map(({ row }) => row))];
    const columns = [...new Set(group.map(({ column }) => column))].sort((one, two) => one - two);
    const heading = headingOver(group[0], headings);
    return {
      ...(heading && { heading }),
      headers: [],
      rows: rows.map((row) =>
        columns.map(
          (column) => group.find((placed) => placed.row === row && placed.column === column)?.cell,
        ),
      ),
    };
  });
}

function sideBySide(headers: readonly Placed[]): Placed[][] {
  const groups: Placed[][] = [];
  for (const header of headers) {
    const group = groups.at(-1);
    const before = group?.at(-1);
    const touches =
      before?.row === header.row && before.column + (before.cell.span ?? 1) === header.column;
    if (group !== undefined && touches) group.push(header);
    else groups.push([header]);
  }
  return groups;
}
