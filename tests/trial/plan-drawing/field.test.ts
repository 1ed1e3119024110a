import { readyMadeSheets } from "../../../src/sheets";
import {
  addedCorner,
  addedObstacle,
  type Edit,
  fieldCells,
  type FieldCells,
  movedCorner,
  readField,
  removedCorner,
} from "../../../src/trial/plan-drawing/field";
import type { CellPlace, ShownCell } from "../../../src/trial/sheet-values";
import type { CellValue } from "../../../src/screen/host";

/** The cells of the plan's inputs alone, without what is worked out from them. */
class Inputs {
  readonly cells: FieldCells;
  private readonly held = new Map<string, CellValue>();

  constructor() {
    const pages = readyMadeSheets.find(({ id }) => id === "plan")?.pages("US") ?? [];
    this.cells = fieldCells(pages) as FieldCells;
    this.put({ place: this.cells.eastLength, rows: [[630]] });
    this.put({ place: this.cells.northLength, rows: [[700]] });
  }

  readonly read = ({ page, row, column }: CellPlace): ShownCell => ({
    value: this.held.get(`${page} ${row} ${column}`) ?? null,
  });

  put({ place: { page, row, column }, rows }: Edit): void {
    rows.forEach((values, down) =>
      values.forEach((value, across) =>
        this.held.set(`${page} ${row + down} ${column + across}`, value),
      ),
    );
  }

  field() {
    return readField(this.cells, this.read);
  }

  corners(): number[][] {
    return this.field().corners.map(({ row, x, y }) => [row, x, y]);
  }
}

const asIs = <T>(value: T): T => value;

test("other workbooks have no field with corners", () => {
  for (const { id, pages } of readyMadeSheets)
    expect([id, fieldCells(pages("US")) !== undefined]).toEqual([id, id === "plan"]);
});

test("a rectangle is its two lengths until a corner is moved; then all four are typed", () => {
  const inputs = new Inputs();
  expect(inputs.field().kind).toBe("rectangle");
  expect(inputs.corners()).toEqual([
    [0, 0, 0],
    [1, 630, 0],
    [2, 630, 700],
    [3, 0, 700],
  ]);
  inputs.put(movedCorner(inputs.cells, inputs.field(), 2, { x: 500, y: 650 }));
  expect(inputs.field().kind).toBe("corners");
  expect(inputs.corners()).toEqual([
    [0, 0, 0],
    [1, 630, 0],
    [2, 500, 650],
    [3, 0, 700],
  ]);
  expect(inputs.read(inputs.cells.eastLength).value).toBe(630);
});

test("a corner moved among typed ones is written to its own row, blank rows between or not", () => {
  const inputs = new Inputs();
  inputs.put({
    place: { ...inputs.cells.typed },
    rows: [
      [0, 0],
      [null, null],
      [600, 0],
      [600, 500],
    ],
  });
  const edit = movedCorner(inputs.cells, inputs.field(), 2, { x: 610, y: -5 });
  expect(edit.rows).toEqual([[610, -5]]);
  inputs.put(edit);
  expect(inputs.corners()).toEqual([
    [0, 0, 0],
    [2, 610, -5],
    [3, 600, 500],
  ]);
});

test("a corner comes in the middle of the edge that leads on, and one taken out closes up", () => {
  const inputs = new Inputs();
  const last = addedCorner(inputs.cells, inputs.field(), 3, asIs) as Edit;
  inputs.put(last);
  // Of the edge from the last corner back to the first.
  expect(inputs.corners()[4]).toEqual([4, 0, 350]);
  inputs.put(addedCorner(inputs.cells, inputs.field(), 0, asIs) as Edit);
  expect(inputs.corners().map(([, x, y]) => [x, y])).toEqual([
    [0, 0],
    [315, 0],
    [630, 0],
    [630, 700],
    [0, 700],
    [0, 350],
  ]);
  inputs.put(removedCorner(inputs.cells, inputs.field(), 3) as Edit);
  expect(inputs.corners()).toEqual([
    [0, 0, 0],
    [1, 315, 0],
    [2, 630, 0],
    [3, 0, 700],
    [4, 0, 350],
  ]);
});

test("no more corners than the table holds, and never fewer than three", () => {
  const inputs = new Inputs();
  for (let corner = 4; corner < 12; corner++)
    inputs.put(addedCorner(inputs.cells, inputs.field(), 0, asIs) as Edit);
  expect(inputs.corners().length).toBe(12);
  expect(addedCorner(inputs.cells, inputs.field(), 0, asIs)).toBeUndefined();
  for (let corner = 12; corner > 3; corner--)
    inputs.put(removedCorner(inputs.cells, inputs.field(), 1) as Edit);
  expect(inputs.corners().length).toBe(3);
  expect(removedCorner(inputs.cells, inputs.field(), 0)).toBeUndefined();
});

test("an obstacle takes the first free row, and there are six", () => {
  const inputs = new Inputs();
  const rows = Array.from({ length: 7 }, () => {
    const added = addedObstacle(inputs.cells, inputs.read, { x: 300, y: 300 }, 30);
    if (added !== undefined) inputs.put(added.edit);
    return added?.row;
  });
  expect(rows).toEqual([0, 1, 2, 3, 4, 5, undefined]);
  expect(inputs.field().obstacles.length).toBe(6);
});
