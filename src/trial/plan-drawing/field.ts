import type { Point } from "../../screen/chart";
import type { CellValue } from "../../screen/host";
import { readAddress, readRange, type Block } from "../../sheets/kit/address";
import type { Page } from "../../sheets/kit/definition";
import type { CellPlace, ShownCell } from "../sheet-values";
import type { Origin, Pair } from "./degrees";

/** Values that are put into cells in one step. */
export interface Edit {
  /** The first cell. */
  readonly place: CellPlace;
  readonly rows: readonly (readonly CellValue[])[];
}

/** A place in the field, by the row of its table. */
interface FieldPlace extends Point {
  readonly row: number;
}

export interface Corner extends FieldPlace {
  /** As its row has it; undefined for a rectangle's, which has none. */
  readonly typed?: Pair;
}

export interface Obstacle extends FieldPlace {
  readonly radius: number;
}

export interface DrawnField {
  /** A rectangle has its two lengths, and no corners typed. */
  readonly kind: "rectangle" | "corners";
  /** Whether corners are typed as latitude and longitude. */
  readonly isInDegrees: boolean;
  readonly corners: readonly Corner[];
  readonly obstacles: readonly Obstacle[];
  readonly unit: "ft" | "m";
}

type Read = (place: CellPlace) => ShownCell;

type Table = Block & { readonly page: string };

/** Where a plan's workbook keeps what bounds its field. */
export interface FieldCells {
  readonly typed: Table;
  /** As they count: x and y, whatever was typed. */
  readonly counted: Table;
  readonly obstacles: Table;
  readonly eastLength: CellPlace;
  readonly northLength: CellPlace;
  readonly cornersAre: CellPlace;
  readonly latitude: CellPlace;
  readonly longitude: CellPlace;
  readonly units: CellPlace;
  readonly bearing: CellPlace;
}

/** Undefined for a workbook that has no field with corners. */
export function fieldCells(pages: readonly Page[]): FieldCells | undefined {
  const table = (name: string): Table | undefined => {
    for (const page of pages) {
      const range = page.names?.find((one) => one.name === name)?.range;
      if (range !== undefined) return { page: page.name, ...readRange(range) };
    }
    return undefined;
  };
  const cell = (name: string): CellPlace | undefined => {
    for (const page of pages) {
      const at = page.cells.find((one) => one.name === name)?.at;
      if (at !== undefined) return { page: page.name, ...readAddress(at) };
    }
    return undefined;
  };
  const found = {
    typed: table("CornersTyped"),
    counted: table("Corners"),
    obstacles: table("Obstacles"),
    eastLength: cell("EastLength"),
    northLength: cell("NorthLength"),
    cornersAre: cell("CornersAre"),
    latitude: cell("Latitude"),
    longitude: cell("Longitude"),
    units: cell("Units"),
    bearing: cell("Bearing"),
  };
  return Object.values(found).includes(undefined) ? undefined : (found as FieldCells);
}

export function readField(cells: FieldCells, read: Read): DrawnField {
  const typed = placesIn(cells.typed, 2, read).map(({ row, values: [first, second] }) => ({
    row,
    pair: [first, second] as const,
  }));
  const kind = typed.length === 0 ? "rectangle" : "corners";
  const isInDegrees = read(cells.cornersAre).value === "degrees";
  const counted = isInDegrees ? countedCorners(cells, read) : [];
  return {
    kind,
    isInDegrees,
    corners:
      kind === "rectangle"
        ? rectangle(read(cells.eastLength).value, read(cells.northLength).value)
        : typed.flatMap(({ row, pair }): Corner[] => {
            if (!isInDegrees) return [{ row, x: pair[0], y: pair[1], typed: pair }];
            const at = counted.find((corner) => corner.row === row);
            return at === undefined ? [] : [{ ...at, typed: pair }];
          }),
    obstacles: placesIn(cells.obstacles, 3, read).map(({ row, values: [x, y, radius] }) => ({
      row,
      x,
      y,
      radius,
    })),
    unit: read(cells.units).value === "SI" ? "m" : "ft",
  };
}

/** By which degrees become x and y. */
export function originOf({ latitude, longitude, units }: FieldCells, read: Read): Origin {
  return {
    latitude: read(latitude).value,
    longitude: read(longitude).value,
    units: read(units).value,
  };
}

/** The corners that the functions are given. */
export function countedCorners({ counted }: FieldCells, read: Read): FieldPlace[] {
  return placesIn(counted, 2, read).map(({ row, values: [x, y] }) => ({ row, x, y }));
}

/** Counterclockwise from the first corner, as the page Field turns the two lengths into corners. */
function rectangle(east: CellValue, north: CellValue): Corner[] {
  if (typeof east !== "number" || typeof north !== "number") return [];
  return [
    { row: 0, x: 0, y: 0 },
    { row: 1, x: east, y: 0 },
    { row: 2, x: east, y: north },
    { row: 3, x: 0, y: north },
  ];
}

/** Rows whose first cells are all numbers. */
function placesIn(table: Table, count: number, read: Read) {
  return Array.from({ length: table.rows }, (_, row) => ({
    row,
    values: Array.from(
      { length: count },
      (__, across) => read(at(table, row, across)).value,
    ) as number[],
  })).filter(({ values }) => values.every((value) => typeof value === "number"));
}

function at({ page, row, column }: Table, down: number, across = 0): CellPlace {
  return { page, row: row + down, column: column + across };
}

/** How a point of the drawing is typed as a corner. */
export type AsTyped = (point: Point) => Pair;

/** A corner of a rectangle is moved by typing all four: the rectangle becomes a field of corners. */
export function movedCorner(
  cells: FieldCells,
  field: DrawnField,
  row: number,
  to: Pair,
  asTyped: AsTyped,
): Edit {
  if (field.kind !== "rectangle") return { place: at(cells.typed, row), rows: [to] };
  return {
    place: at(cells.typed, 0),
    rows: field.corners.map((corner) => (corner.row === row ? to : asTyped(corner))),
  };
}

export function mostCorners({ typed }: FieldCells): number {
  return typed.rows;
}

/** In the middle of the edge that leads on from a corner; blank rows between corners close up. */
export function addedCorner(
  cells: FieldCells,
  field: DrawnField,
  row: number,
  round: (point: Point) => Point,
  asTyped: AsTyped,
): Edit | undefined {
  const { corners } = field;
  const index = corners.findIndex((corner) => corner.row === row);
  if (index < 0 || corners.length >= mostCorners(cells)) return undefined;
  const [here, next] = [corners[index], corners[(index + 1) % corners.length]];
  const middle = round({ x: (here.x + next.x) / 2, y: (here.y + next.y) / 2 });
  return retyped(
    cells,
    field,
    [...corners.slice(0, index + 1), middle, ...corners.slice(index + 1)],
    asTyped,
  );
}

/** Three corners are the fewest that bound a field. */
export function removedCorner(
  cells: FieldCells,
  field: DrawnField,
  row: number,
  asTyped: AsTyped,
): Edit | undefined {
  if (field.corners.length <= 3) return undefined;
  return retyped(
    cells,
    field,
    field.corners.filter((corner) => corner.row !== row),
    asTyped,
  );
}

/** Corners that stay where they are stay as they were typed, to the last digit. */
function retyped(
  cells: FieldCells,
  field: DrawnField,
  corners: readonly (Point & Pick<Corner, "typed">)[],
  asTyped: AsTyped,
): Edit {
  const before = Math.max(...field.corners.map(({ row }) => row)) + 1;
  const rows = Array.from({ length: Math.max(before, corners.length) }, (_, i) =>
    i < corners.length ? (corners[i].typed ?? asTyped(corners[i])) : [null, null],
  );
  return { place: at(cells.typed, 0), rows };
}

export function movedObstacle(cells: FieldCells, row: number, to: Point): Edit {
  return { place: at(cells.obstacles, row), rows: [[to.x, to.y]] };
}

export function resizedObstacle(cells: FieldCells, row: number, radius: number): Edit {
  return { place: at(cells.obstacles, row, 2), rows: [[radius]] };
}

/** In the first row that is free. */
export function addedObstacle(
  { obstacles }: FieldCells,
  read: Read,
  { x, y }: Point,
  radius: number,
): { readonly edit: Edit; readonly row: number } | undefined {
  for (let row = 0; row < obstacles.rows; row++) {
    const isFree = [0, 1, 2].every((across) => {
      const { value } = read(at(obstacles, row, across));
      return value === null || value === "";
    });
    if (isFree) return { edit: { place: at(obstacles, row), rows: [[x, y, radius]] }, row };
  }
  return undefined;
}

export function removedObstacle({ obstacles }: FieldCells, row: number): Edit {
  return { place: at(obstacles, row), rows: [[null, null, null]] };
}
