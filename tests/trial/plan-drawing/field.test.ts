import { readyMadeSheets } from "../../../src/sheets";
import {
  addedCorner,
  addedObstacle,
  type Edit,
  fieldCells,
  type FieldCells,
  movedCorner,
  originOf,
  readField,
  removedCorner,
} from "../../../src/trial/plan-drawing/field";
import type { CellPlace, ShownCell } from "../../../src/trial/sheet-values";
import type { Point } from "../../../src/screen/chart";
import type { CellValue } from "../../../src/screen/host";
import {
  type Call,
  fromDegrees,
  isPair,
  type Pair,
  toDegrees,
} from "../../../src/trial/plan-drawing/degrees";
import { host } from "../../support/page-functions";

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

const asIs = ({ x, y }: Point): Pair => [x, y];
const unrounded = (point: Point): Point => point;

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
  inputs.put(movedCorner(inputs.cells, inputs.field(), 2, [500, 650], asIs));
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
  const edit = movedCorner(inputs.cells, inputs.field(), 2, [610, -5], asIs);
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
  const last = addedCorner(inputs.cells, inputs.field(), 3, unrounded, asIs) as Edit;
  inputs.put(last);
  // Of the edge from the last corner back to the first.
  expect(inputs.corners()[4]).toEqual([4, 0, 350]);
  inputs.put(addedCorner(inputs.cells, inputs.field(), 0, unrounded, asIs) as Edit);
  expect(inputs.corners().map(([, x, y]) => [x, y])).toEqual([
    [0, 0],
    [315, 0],
    [630, 0],
    [630, 700],
    [0, 700],
    [0, 350],
  ]);
  inputs.put(removedCorner(inputs.cells, inputs.field(), 3, asIs) as Edit);
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
    inputs.put(addedCorner(inputs.cells, inputs.field(), 0, unrounded, asIs) as Edit);
  expect(inputs.corners().length).toBe(12);
  expect(addedCorner(inputs.cells, inputs.field(), 0, unrounded, asIs)).toBeUndefined();
  for (let corner = 12; corner > 3; corner--)
    inputs.put(removedCorner(inputs.cells, inputs.field(), 1, asIs) as Edit);
  expect(inputs.corners().length).toBe(3);
  expect(removedCorner(inputs.cells, inputs.field(), 0, asIs)).toBeUndefined();
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

describe("corners in degrees", () => {
  const call: Call = (id, ...cells) => host.call(id, ...cells);
  const origin = { latitude: 40.5, longitude: -98.5, units: "US" };
  const asDegrees = (point: Point): Pair => {
    const found = toDegrees(call, origin, point);
    if (!isPair(found)) throw new Error(found.message);
    return found;
  };
  /** Some digits beyond the seventh, as a survey's file has them. */
  const TYPED: readonly Pair[] = [
    [40.5, -98.5],
    [40.500000123, -98.497876543],
    [40.501921, -98.497876],
    [40.501921, -98.5],
  ];

  function inDegrees(): Inputs {
    const inputs = new Inputs();
    const { cells } = inputs;
    inputs.put({ place: cells.cornersAre, rows: [["degrees"]] });
    inputs.put({ place: cells.latitude, rows: [[origin.latitude]] });
    inputs.put({ place: cells.longitude, rows: [[origin.longitude]] });
    inputs.put({ place: cells.units, rows: [["US"]] });
    return inputs;
  }

  /** What the page Field works out of what is typed. */
  function counted(inputs: Inputs): Inputs {
    const { cells } = inputs;
    for (let row = 0; row < cells.typed.rows; row++) {
      const { page, column } = cells.typed;
      const values = [0, 1].map(
        (across) =>
          inputs.read({ page, row: cells.typed.row + row, column: column + across }).value,
      );
      const at = values.every((value) => typeof value === "number")
        ? fromDegrees(call, originOf(cells, inputs.read), [
            values[0] as number,
            values[1] as number,
          ])
        : undefined;
      const pair = at !== undefined && "x" in at ? [at.x, at.y] : [null, null];
      inputs.put({
        place: {
          page: cells.counted.page,
          row: cells.counted.row + row,
          column: cells.counted.column,
        },
        rows: [pair],
      });
    }
    return inputs;
  }

  function typedField(): Inputs {
    const inputs = inDegrees();
    inputs.put({ place: inputs.cells.typed, rows: TYPED });
    return counted(inputs);
  }

  function typedRows(inputs: Inputs): unknown[] {
    return inputs.field().corners.map(({ typed }) => typed);
  }

  test("a place goes to degrees of a centimeter, and back to where it was", () => {
    // One minute of latitude at 40.5 degrees, by the meridian's radius of WGS 84 there.
    const a = 6378137;
    const e2 = 0.00669437999014;
    const sine = Math.sin((40.5 * Math.PI) / 180);
    const meridian = (a * (1 - e2)) / (1 - e2 * sine ** 2) ** 1.5;
    const foot = 0.3048;
    const [latitude, longitude] = asDegrees({ x: 0, y: 1000 });
    expect(latitude).toBeCloseTo(40.5 + ((1000 * foot) / meridian) * (180 / Math.PI), 7);
    expect(longitude).toBe(-98.5);
    expect(String(latitude)).toMatch(/^40\.\d{1,7}$/);
    for (const point of [
      { x: 412, y: 377 },
      { x: -1200, y: 2600 },
      { x: 0, y: 0 },
    ]) {
      const back = fromDegrees(call, origin, asDegrees(point)) as Point;
      // Half of 1e-7 degree is 6 mm, 0.02 ft.
      expect(Math.hypot(back.x - point.x, back.y - point.y)).toBeLessThan(0.03);
    }
  });

  test("without a place of x 0, y 0 there are no degrees, and it is said why", () => {
    for (const nowhere of [
      { ...origin, latitude: null },
      { ...origin, longitude: "" },
    ]) {
      expect(toDegrees(call, nowhere, { x: 0, y: 0 })).toHaveProperty(
        "message",
        expect.stringMatching(/itude/),
      );
      expect(fromDegrees(call, nowhere, [40.5, -98.5])).toHaveProperty("message");
    }
    expect(toDegrees(call, origin, { x: 1e6, y: 0 })).toHaveProperty(
      "message",
      expect.stringContaining("km from the origin"),
    );
  });

  test("they are drawn where they count, and one that is moved is typed in degrees in its row", () => {
    const inputs = typedField();
    const [, , third] = inputs.field().corners;
    // The geodesic function's own way, against degrees of latitude and longitude by the ellipsoid's radii.
    expect(third.y).toBeCloseTo(700, -1);
    expect(third.x).toBeCloseTo(591, -1);
    inputs.put(
      movedCorner(inputs.cells, inputs.field(), 2, asDegrees({ x: 500, y: 650 }), asDegrees),
    );
    counted(inputs);
    const moved = inputs.field().corners[2];
    expect(moved.x).toBeCloseTo(500, 1);
    expect(moved.y).toBeCloseTo(650, 1);
    expect(typedRows(inputs)).toEqual([TYPED[0], TYPED[1], moved.typed, TYPED[3]]);
  });

  test("what stays keeps its digits when a corner comes or goes", () => {
    const inputs = typedField();
    inputs.put(addedCorner(inputs.cells, inputs.field(), 0, unrounded, asDegrees) as Edit);
    counted(inputs);
    const [first, added, second] = inputs.field().corners;
    expect(added.x).toBeCloseTo((first.x + second.x) / 2, 1);
    expect(typedRows(inputs)).toEqual([TYPED[0], added.typed, TYPED[1], TYPED[2], TYPED[3]]);
    inputs.put(removedCorner(inputs.cells, inputs.field(), 1, asDegrees) as Edit);
    expect(typedRows(counted(inputs))).toEqual(TYPED);
  });

  test("a rectangle becomes corners in degrees where corners are typed so", () => {
    const inputs = inDegrees();
    expect(inputs.field()).toMatchObject({ kind: "rectangle", isInDegrees: true });
    inputs.put(
      movedCorner(inputs.cells, inputs.field(), 2, asDegrees({ x: 500, y: 650 }), asDegrees),
    );
    const corners = counted(inputs).corners();
    expect(corners.map((row) => row.map((value) => Math.round(value) + 0))).toEqual([
      [0, 0, 0],
      [1, 630, 0],
      [2, 500, 650],
      [3, 0, 700],
    ]);
  });
});
