import { columnLetters, readRange, writeAddress } from "../../../src/sheets/kit/address";
import type { NamedRange, Page, SheetCell } from "../../../src/sheets/kit/definition";
import { absolute } from "../../../src/sheets/kit/reference";

export const TABLES = "Tables";

/** Rows of the page: what the table is, how many rows and columns it has now, and the table. */
const ABOUT = 2;
const ROWS = 3;
const COLUMNS = 4;
const TOP = 5;

/** Cells that a table may take on the page of tables. */
export interface Room {
  readonly rows: number;
  readonly columns: number;
}

/** A table in its room, as formulas refer to it. */
export interface Laid extends Room {
  /** Its first cell. */
  readonly first: string;
  /** The room, filled or not. */
  readonly room: string;
  /** How many rows, and columns, of it are filled; an error where there is no table. */
  readonly filledRows: string;
  readonly filledColumns: string;
  /** What is filled, as a reference. */
  readonly filled: string;
  cell(down: number, across: number): string;
}

/**
 * The page on which tables stand that the program cannot let spill. An array formula has a fixed
 * room there: what it does not fill is #N/A, and a single value fills all of it. How much is filled
 * stands above each table, for those who read it.
 */
export class TablesPage {
  private readonly cells: SheetCell[] = [];
  private readonly known = new Map<string, Laid>();
  private column = 0;
  private depth = TOP;

  constructor(private readonly names: ReadonlyMap<string, Room>) {}

  /** A name of a range, with its size. */
  sizeOf(name: string): Room | undefined {
    return this.names.get(name.toUpperCase());
  }

  /** The table that an array formula gives. */
  spread(formula: string, size: Room, isHeaded: boolean): Laid {
    return this.once(`spread ${isHeaded} ${formula}`, `Table of ${formula}`, size, (laid) => {
      const { first } = laid;
      this.array(0, 0, size, formula);
      if (!isHeaded) {
        // A single value has no rows there.
        return [
          `=IF(ISERROR(${first}), 1, IFERROR(ROWS(${formula}), 1))`,
          `=IF(ISERROR(${first}), 1, IFERROR(COLUMNS(${formula}), 1))`,
        ];
      }
      // A header is never what stands below or beside it: where it is, one value fills the room.
      const filled = (range: string, count: string) =>
        `${count}(${range})-SUMPRODUCT(1*ISNA(${range}))`;
      const column = absolute(TABLES, this.range(0, 0, size.rows, 1));
      const row = absolute(TABLES, this.range(0, 0, 1, size.columns));
      const isOneRow = `IFNA(${same(first, laid.cell(1, 0))}, FALSE)`;
      const isOne = size.columns === 1 ? "FALSE" : `IFNA(${same(first, laid.cell(0, 1))}, FALSE)`;
      return [
        `=IF(ISERROR(${first}), 1, IF(${isOneRow}, 1, ${filled(column, "ROWS")}))`,
        `=IF(ISERROR(${first}), 1, IF(${isOne}, 1, ${filled(row, "COLUMNS")}))`,
      ];
    });
  }

  /** The rows of a table where `condition`, an array of as many rows, holds. */
  rowsWhere(table: string, size: Room, filledRows: string | undefined, condition: string): Laid {
    const about = `Rows of ${table} where ${condition}`;
    const places = this.once(
      `places ${about}`,
      `Places: ${about}`,
      { rows: size.rows, columns: 1 },
      ({ room }) => {
        const place = `ROW(${room})-${TOP}`;
        const found = `IF(ISERROR(${condition}), "", IF(${condition}, ${place}, ""))`;
        this.array(
          0,
          0,
          { rows: size.rows, columns: 1 },
          filledRows === undefined ? found : `IF(${place}>${filledRows}, "", ${found})`,
        );
        return [`=COUNT(${room})`, "=1"];
      },
    );
    return this.once(about, about, size, () => {
      for (let down = 0; down < size.rows; down++) {
        for (let across = 0; across < size.columns; across++) {
          const value = `INDEX(${table}, SMALL(${places.room}, ${down + 1}), ${across + 1})`;
          this.put(TOP + down, across, {
            role: "working",
            formula: `=IF(${down + 1}>${places.filledRows}, "", IF(${value}="", "", ${value}))`,
          });
        }
      }
      const none = `IF(ISERROR(INDEX(${table}, 1, 1)), INDEX(${table}, 1, 1), NA())`;
      return [`=IF(${places.filledRows}=0, ${none}, ${places.filledRows})`, `=${size.columns}`];
    });
  }

  /** Ranges side by side. */
  beside(names: readonly string[], sizes: readonly Room[]): Laid {
    const size = {
      rows: Math.max(...sizes.map(({ rows }) => rows)),
      columns: sizes.reduce((sum, { columns }) => sum + columns, 0),
    };
    const about = `${names.join(" beside ")}`;
    return this.once(about, about, size, () => {
      let across = 0;
      names.forEach((name, i) => {
        this.array(0, across, sizes[i], `IF(${name}="", "", ${name})`);
        across += sizes[i].columns;
      });
      return [`=${size.rows}`, `=${size.columns}`];
    });
  }

  /** The page; undefined where there are no tables. */
  page(): Page | undefined {
    if (this.cells.length === 0) return undefined;
    return {
      name: TABLES,
      widths: Array.from({ length: this.column }, () => 12),
      lines: new Map(),
      printArea: `A1:${columnLetters(this.column - 1)}${this.depth}`,
      working: true,
      cells: [{ at: "A1", role: "title", value: "Tables behind the other pages" }, ...this.cells],
    };
  }

  private once(
    key: string,
    about: string,
    size: Room,
    write: (laid: Laid) => readonly [rows: string, columns: string],
  ): Laid {
    const known = this.known.get(key);
    if (known !== undefined) return known;
    const laid = this.laid(size);
    this.known.set(key, laid);
    const [rows, columns] = write(laid);
    this.put(ABOUT, 0, { role: "label", value: `'${about}` });
    this.put(ROWS, 0, { role: "working", formula: rows });
    this.put(COLUMNS, 0, { role: "working", formula: columns });
    this.column += size.columns + 1;
    this.depth = Math.max(this.depth, TOP + size.rows);
    return laid;
  }

  private laid(size: Room): Laid {
    const left = this.column;
    const at = (row: number, across: number) =>
      absolute(TABLES, writeAddress({ row, column: left + across }));
    const first = at(TOP, 0);
    const room = absolute(TABLES, this.range(0, 0, size.rows, size.columns));
    const [filledRows, filledColumns] = [at(ROWS, 0), at(COLUMNS, 0)];
    return {
      ...size,
      first,
      room,
      filledRows,
      filledColumns,
      filled: `${first}:INDEX(${room}, ${filledRows}, ${filledColumns})`,
      cell: (down, across) => at(TOP + down, across),
    };
  }

  private range(down: number, across: number, rows: number, columns: number): string {
    const column = this.column + across;
    const from = writeAddress({ row: TOP + down, column });
    return `${from}:${writeAddress({ row: TOP + down + rows - 1, column: column + columns - 1 })}`;
  }

  private array(down: number, across: number, { rows, columns }: Room, formula: string): void {
    const formats = Array.from({ length: columns }, () => "General");
    this.put(TOP + down, across, {
      role: "working",
      formula: `=${formula}`,
      spill: { rows, columns, reserved: rows, headed: false, formats },
    });
  }

  private put(row: number, across: number, cell: Omit<SheetCell, "at">): void {
    this.cells.push({ at: writeAddress({ row, column: this.column + across }), ...cell });
  }
}

/**
 * Whether two cells of an array hold the same. Version 7.4 takes a text of an add-in's table for the
 * same as any other such text, and for none that is typed; a text joined to nothing is an honest one.
 */
function same(one: string, other: string): string {
  return `(${one}&"")=(${other}&"")`;
}

/** A cell or an array whose texts can be compared (see `same`), and whose numbers stay numbers. */
export function comparable(given: string): string {
  return `IF(ISTEXT(${given}), ${given}&"", ${given})`;
}

/** The sizes of what a workbook's names stand for, by the name in upper case. */
export function sizesOfNames(pages: readonly Page[]): ReadonlyMap<string, Room> {
  return new Map(
    pages.flatMap(({ names = [], cells }) => [
      ...names.map(({ name, range }: NamedRange): [string, Room] => {
        const { rows, columns } = readRange(range);
        return [name.toUpperCase(), { rows, columns }];
      }),
      ...cells.flatMap(({ name }): [string, Room][] =>
        name === undefined ? [] : [[name.toUpperCase(), { rows: 1, columns: 1 }]],
      ),
    ]),
  );
}
