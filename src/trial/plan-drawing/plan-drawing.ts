import "./plan-drawing.css";
import type { Point } from "../../screen/chart";
import { make, makeSvg } from "../../screen/dom";
import { writtenNumber } from "../../screen/number-format";
import {
  inPicture,
  outOfPicture,
  planLegend,
  planStrokes,
  SIDE,
  type DrawnSeries,
} from "../../screen/plan-picture";
import { errorSaid, screenSaid } from "../../words/spoken";
import { ask } from "../kept/ask";
import type { SheetValues } from "../sheet-values";
import { type Call, fromDegrees, isPair, type Origin, type Pair, toDegrees } from "./degrees";
import {
  addedCorner,
  addedObstacle,
  countedCorners,
  type DrawnField,
  type Edit,
  type FieldCells,
  mostCorners,
  movedCorner,
  movedObstacle,
  originOf,
  readField,
  removedCorner,
  removedObstacle,
  resizedObstacle,
} from "./field";
import { Handle, type Move } from "./handle";
import { around, fitted, inSteps, type Mapping, stepOf, toDrawing, toField } from "./mapping";
import { type PanelNumber, PanelRow } from "./panel";

/** What can be moved, by the row of its table. */
interface Target {
  readonly kind: "corner" | "obstacle";
  readonly row: number;
}

/** Where a target is, and how its table says so. */
interface Place {
  readonly at: Point;
  readonly typed: Pair;
}

/** A place on its way, which the sheet does not know yet. */
interface Moving {
  readonly target: Target;
  readonly at: Point;
}

/** What a new obstacle takes of the field's longer side. */
const NEW_RADIUS = 0.04;

/** A place that no degrees can be given for. */
class CannotBeTyped extends Error {}

/** What the drawing shows, from its own sheet, or why it shows nothing. */
export interface Drawn {
  readonly series: readonly DrawnSeries[];
  readonly fault?: string;
}

/**
 * The plan of a field, with its corners and obstacles to be dragged, moved by arrow keys and typed.
 * It writes to the cells of the tables, and shows what is worked out from them; where nothing can
 * be, the edge alone, so that a wrong move can be moved back.
 */
export class PlanDrawing {
  readonly element: HTMLElement;
  private readonly base: SVGElement;
  private readonly movingLine = makeSvg("path", { class: "drawn drawn-moving", d: "" });
  private readonly holder = makeSvg("g");
  private readonly svg: SVGSVGElement;
  private readonly legend = make("div");
  private readonly row = new PanelRow();
  private readonly fieldRow = new PanelRow();
  private readonly how = make("p", { class: "hint drawing-how" });
  private readonly status = make("p", { class: "drawing-said", role: "status" });
  private readonly handles = new Map<string, Handle>();
  private field: DrawnField;
  private mapping: Mapping | undefined;
  private chosen: Target | undefined;
  /** Where the chosen one stood when it was chosen, for Escape. */
  private origin: Place | undefined;
  private moving: Moving | undefined;
  private width = SIDE;
  private isAsking = false;

  constructor(
    private readonly cells: FieldCells,
    private readonly values: () => SheetValues,
    private readonly drawn: () => Drawn,
    private readonly call: Call,
    description: string,
  ) {
    this.field = readField(cells, (place) => values().read(place));
    this.base = makeSvg("g", { role: "img", "aria-label": description });
    this.svg = makeSvg(
      "svg",
      {
        viewBox: `0 0 ${SIDE} ${SIDE}`,
        class: "plan-picture",
        role: "group",
        "aria-label": "Corners and obstacles, to be moved",
      },
      this.base,
      this.movingLine,
      this.holder,
    ) as SVGSVGElement;
    this.element = make(
      "div",
      { class: "picture plan-drawing" },
      this.svg,
      this.legend,
      this.row.element,
      this.fieldRow.element,
      this.how,
      this.status,
    );
    new ResizeObserver(([entry]) => {
      const width = Math.round(entry.contentRect.width);
      if (width === this.width || width === 0) return;
      this.width = width;
      this.showHandles();
    }).observe(this.svg);
  }

  /** Shows what the sheet holds now. What is on its way stays in the hand. */
  refresh(): void {
    this.field = readField(this.cells, this.read);
    const { series, fault } = this.drawn();
    const edge = series.find(({ look }) => look === "edge")?.points ?? [];
    const fits = fitted(countedCorners(this.cells, this.read), edge);
    const strokes = fits === undefined ? [] : planStrokes(series);
    const { corners, obstacles } = this.field;
    if (fits !== undefined) this.mapping = fits;
    else if (this.moving === undefined || this.mapping === undefined)
      this.mapping = corners.length === 0 ? undefined : around([...corners, ...obstacles]);
    this.base.replaceChildren(...(strokes.length > 0 ? strokes : this.outline()));
    this.legend.replaceChildren(...(strokes.length > 0 ? [planLegend(series)] : []));
    this.how.textContent = screenSaid(
      "Drag a corner or an obstacle, or choose it and press the arrow keys: with Shift ten times as far, Escape takes it back. The tables of the page Field say the same.",
    );
    if (strokes.length === 0 && fault !== undefined) this.status.textContent = fault;
    else if (this.status.textContent === this.shownFault) this.status.textContent = "";
    this.shownFault = strokes.length === 0 ? fault : undefined;
    this.showHandles();
    this.showPanel();
  }

  private shownFault: string | undefined;

  private readonly read = (place: Parameters<SheetValues["read"]>[0]) => this.values().read(place);

  /** How much of the picture's square a pixel is. */
  private get dot(): number {
    return SIDE / this.width;
  }

  /** The length in the field that the drawing is moved by. */
  private get step(): number {
    if (this.mapping === undefined) return 1;
    const one = outOfPicture([this.dot, 0]).x - outOfPicture([0, 0]).x;
    return stepOf(one / this.mapping.scale);
  }

  private placeIn(point: Point): [number, number] {
    return this.mapping === undefined ? [0, 0] : inPicture(toDrawing(this.mapping, point));
  }

  private outline(): SVGElement[] {
    return [
      makeSvg("path", {
        class: "drawn drawn-edge",
        d: this.edgePath(this.field.corners),
        "stroke-width": 2,
      }),
      ...this.field.obstacles.map((obstacle) => this.circle(obstacle, "drawn-clear-edge")),
    ];
  }

  private edgePath(corners: readonly Point[]): string {
    if (corners.length === 0) return "";
    return `M${corners
      .map((corner) =>
        this.placeIn(corner)
          .map((v) => v.toFixed(1))
          .join(" "),
      )
      .join("L")}Z`;
  }

  private circle(obstacle: Point & { readonly radius: number }, look: string): SVGElement {
    const [cx, cy] = this.placeIn(obstacle);
    const [edge] = this.placeIn({ x: obstacle.x + obstacle.radius, y: obstacle.y });
    return makeSvg("circle", { class: `drawn ${look}`, cx, cy, r: Math.max(0, edge - cx) });
  }

  private targets(): (Target & Place)[] {
    const { corners, obstacles } = this.field;
    return [
      ...corners.map(({ row, x, y, typed = [x, y] }) => ({
        kind: "corner" as const,
        row,
        at: { x, y },
        typed,
      })),
      ...obstacles.map(({ row, x, y }) => ({
        kind: "obstacle" as const,
        row,
        at: { x, y },
        typed: [x, y] as const,
      })),
    ];
  }

  private showHandles(): void {
    const shown = new Set<string>();
    for (const target of this.mapping === undefined ? [] : this.targets()) {
      const key = keyOf(target);
      shown.add(key);
      let handle = this.handles.get(key);
      if (handle === undefined) {
        handle = this.handle({ kind: target.kind, row: target.row });
        this.handles.set(key, handle);
        this.holder.append(handle.element);
      }
      const at = isSame(this.moving?.target, target) ? (this.moving?.at ?? target.at) : target.at;
      handle.show(this.placeIn(at), this.nameOf(target, at), this.dot);
      handle.element.classList.toggle("is-chosen", isSame(this.chosen, target));
    }
    for (const [key, handle] of this.handles) {
      if (shown.has(key)) continue;
      handle.element.remove();
      this.handles.delete(key);
    }
    this.showMoving();
  }

  /** The edge or the circle as it would be. */
  private showMoving(): void {
    const { moving } = this;
    let path = "";
    if (moving?.target.kind === "corner")
      path = this.edgePath(
        this.field.corners.map((corner) => (corner.row === moving.target.row ? moving.at : corner)),
      );
    const obstacle = this.field.obstacles.find(({ row }) => row === moving?.target.row);
    if (moving?.target.kind === "obstacle" && obstacle !== undefined) {
      const [x, y] = this.placeIn(moving.at);
      const r = this.placeIn({ x: moving.at.x + obstacle.radius, y: 0 })[0] - x;
      path = `M${x - r} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0`;
    }
    this.movingLine.setAttribute("d", path);
  }

  private handle(target: Target): Handle {
    return new Handle(target.kind, this.svg, {
      chosen: () => this.choose(target),
      moved: (by) => this.move(target, by),
      dropped: () => void this.drop(),
      takenBack: () => this.takeBack(target),
      typing: () => this.row.focus(),
    });
  }

  private choose(target: Target): void {
    if (this.isAsking) return;
    if (!isSame(this.chosen, target)) {
      this.chosen = target;
      this.origin = this.placeOf(target);
    }
    this.showHandles();
    this.showPanel();
  }

  private placeOf(target: Target): Place | undefined {
    return this.targets().find((one) => isSame(one, target));
  }

  private get workOrigin(): Origin {
    return originOf(this.cells, this.read);
  }

  /** As a corner's row would have it. */
  private readonly asTyped = ({ x, y }: Point): Pair => {
    if (!this.field.isInDegrees) return [x, y];
    const found = toDegrees(this.call, this.workOrigin, { x, y });
    if (isPair(found)) return found;
    throw new CannotBeTyped(found.message);
  };

  /** What would be written; undefined, and said why, where a corner cannot be told in degrees. */
  private edited<E>(edit: () => E): E | undefined {
    try {
      return edit();
    } catch (thrown) {
      if (!(thrown instanceof CannotBeTyped)) throw thrown;
      this.status.textContent = errorSaid(thrown.message);
      return undefined;
    }
  }

  private move(target: Target, by: Move): void {
    const from = isSame(this.moving?.target, target) ? this.moving?.at : this.placeOf(target)?.at;
    if (this.mapping === undefined || from === undefined || this.isAsking) return;
    const { step } = this;
    const to =
      "to" in by
        ? toField(this.mapping, outOfPicture(by.to))
        : { x: from.x + step * by.steps.x, y: from.y + step * by.steps.y };
    this.moving = { target, at: inSteps(to, step) };
    this.showHandles();
    this.showPanel();
  }

  private async drop(): Promise<void> {
    const { moving } = this;
    if (moving === undefined || this.isAsking) return;
    await this.put(moving.target, moving.at);
  }

  private takeBack(target: Target): void {
    if (this.moving !== undefined) {
      this.moving = undefined;
      this.showHandles();
      this.showPanel();
      return;
    }
    const [now, { origin }] = [this.placeOf(target), this];
    if (now === undefined || origin === undefined || isAt(now.at, origin.at)) return;
    void this.put(target, origin.at, origin.typed);
  }

  /** Into the table, after a question where a rectangle would be one no more. */
  private async put(target: Target, to: Point, typed?: Pair): Promise<void> {
    const from = this.placeOf(target)?.at;
    if (from !== undefined && !isAt(from, to)) {
      if (target.kind === "obstacle") this.write(movedObstacle(this.cells, target.row, to));
      else await this.putCorner(target, to, typed);
    }
    this.moving = undefined;
    this.refresh();
    const now = this.placeOf(target)?.at;
    if (from !== undefined && now !== undefined && !isAt(from, now))
      this.say(`${this.nameOf(target, to)}: the plan follows. Undo takes it back.`);
  }

  private async putCorner(target: Target, to: Point, typed?: Pair): Promise<void> {
    const edit = this.edited(() =>
      movedCorner(this.cells, this.field, target.row, typed ?? this.asTyped(to), this.asTyped),
    );
    if (edit !== undefined && (await this.mayBeCorners())) this.write(edit);
  }

  /** A rectangle becomes a field of corners only when its user says so. */
  private async mayBeCorners(): Promise<boolean> {
    if (this.field.kind !== "rectangle") return true;
    const { unit, corners } = this.field;
    const size = corners[2];
    this.isAsking = true;
    const focused = document.activeElement;
    const answer = await ask({
      title: "Turn the rectangle into corners?",
      text: [
        `The field is a rectangle of ${writtenNumber(size.x)} by ${writtenNumber(size.y)} ${unit}. With a corner moved it becomes a field of typed corners, which count instead of the two lengths. The lengths stay where they are: Undo, or corners cleared on the page Field, brings the rectangle back.`,
      ],
      choices: [{ choice: "turn", label: "Turn it into corners" }],
      otherwise: "Leave the rectangle",
    });
    this.isAsking = false;
    if (focused instanceof SVGElement) focused.focus();
    return answer?.choice === "turn";
  }

  private write({ place, rows }: Edit): void {
    this.values().writeBlock(place, rows);
  }

  private say(text: string): void {
    this.status.textContent = screenSaid(text);
  }

  private nameOf(target: Target, at: Point): string {
    const { unit, isInDegrees } = this.field;
    // Degrees come out in lengths with more digits than anybody measures.
    const { x, y } = isInDegrees && target.kind === "corner" ? inSteps(at, this.step) : at;
    const [east, north] = [x < 0 ? "west" : "east", y < 0 ? "south" : "north"];
    const length = (value: number) => `${writtenNumber(Math.abs(value))} ${unit}`;
    return `${titleOf(target)}, ${length(x)} ${east}, ${length(y)} ${north}`;
  }

  private showPanel(): void {
    const { chosen, field } = this;
    const at = isSame(this.moving?.target, chosen)
      ? this.moving?.at
      : chosen && this.placeOf(chosen)?.at;
    this.row.element.hidden = chosen === undefined || at === undefined;
    if (chosen !== undefined && at !== undefined) this.showChosen(chosen, at);
    const bearing = this.read(this.cells.bearing).value;
    this.fieldRow.show(
      "Field",
      [
        {
          label: "Lines bear (degrees from north)",
          value: bearing,
          typed: (value) => {
            if (Math.abs(value) > 360) return false;
            this.values().write(this.cells.bearing, value);
            return true;
          },
        },
      ],
      field.corners.length < 3
        ? []
        : [{ label: "Add an obstacle", press: () => this.addObstacle() }],
    );
  }

  private showChosen(target: Target, at: Point): void {
    const { unit, obstacles } = this.field;
    const numbers =
      target.kind === "corner" && this.field.isInDegrees
        ? this.degreesOf(target, at)
        : this.lengthsOf(target, at);
    const obstacle = obstacles.find(({ row }) => row === target.row);
    if (target.kind === "corner") {
      this.row.show(titleOf(target), numbers, [
        { label: "Add a corner after it", press: () => void this.addCorner(target) },
        { label: "Remove this corner", press: () => void this.removeCorner(target) },
      ]);
      return;
    }
    const radius = {
      label: `Radius (${unit})`,
      value: obstacle?.radius ?? null,
      typed: (value: number) => {
        if (!(value > 0)) return false;
        this.write(resizedObstacle(this.cells, target.row, value));
        this.refresh();
        return true;
      },
    };
    this.row.show(
      titleOf(target),
      [...numbers, radius],
      [{ label: "Remove this obstacle", press: () => this.removeObstacle(target) }],
    );
  }

  private lengthsOf(target: Target, at: Point): PanelNumber[] {
    const { unit } = this.field;
    const moveTo = (to: Partial<Point>) => {
      void this.put(target, { ...(this.placeOf(target)?.at ?? at), ...to });
      return true;
    };
    return [
      { label: `East (${unit})`, value: at.x, typed: (x) => moveTo({ x }) },
      { label: `North (${unit})`, value: at.y, typed: (y) => moveTo({ y }) },
    ];
  }

  private degreesOf(target: Target, at: Point): PanelNumber[] {
    const place = this.placeOf(target);
    const isMoved = place === undefined || !isAt(place.at, at);
    // What was typed is shown as it was typed.
    const pair = isMoved || this.field.kind === "rectangle" ? this.degreesAt(at) : place.typed;
    const moveTo = (latitude: number | undefined, longitude: number | undefined) => {
      if (latitude === undefined || longitude === undefined) return false;
      const to = fromDegrees(this.call, this.workOrigin, [latitude, longitude]);
      if ("message" in to) {
        this.status.textContent = errorSaid(to.message);
        return false;
      }
      void this.put(target, to, [latitude, longitude]);
      return true;
    };
    return [
      {
        label: "Latitude",
        value: pair?.[0] ?? null,
        typed: (latitude) => moveTo(latitude, pair?.[1]),
      },
      {
        label: "Longitude",
        value: pair?.[1] ?? null,
        typed: (longitude) => moveTo(pair?.[0], longitude),
      },
    ];
  }

  private degreesAt(at: Point): Pair | undefined {
    const found = toDegrees(this.call, this.workOrigin, at);
    return isPair(found) ? found : undefined;
  }

  private async addCorner(target: Target): Promise<void> {
    const most = mostCorners(this.cells);
    if (this.field.corners.length >= most) {
      this.say(`The table holds ${most} corners: remove one first.`);
      return;
    }
    const round = (point: Point) => inSteps(point, this.step);
    const edit = this.edited(() =>
      addedCorner(this.cells, this.field, target.row, round, this.asTyped),
    );
    if (edit === undefined || !(await this.mayBeCorners())) return;
    const after = this.field.corners.findIndex(({ row }) => row === target.row);
    this.write(edit);
    this.go({ kind: "corner", row: after + 1 }, "Added. Corners are counted anew from here on.");
  }

  private async removeCorner(target: Target): Promise<void> {
    if (this.field.corners.length <= 3) {
      this.say("Three corners are the fewest that bound a field.");
      return;
    }
    const edit = this.edited(() => removedCorner(this.cells, this.field, target.row, this.asTyped));
    if (edit === undefined || !(await this.mayBeCorners())) return;
    this.write(edit);
    this.go(
      { kind: "corner", row: Math.max(0, target.row - 1) },
      "Removed. Undo brings the corner back.",
    );
  }

  private addObstacle(): void {
    const { corners } = this.field;
    const [xs, ys] = [corners.map(({ x }) => x), corners.map(({ y }) => y)];
    const sum = (values: readonly number[]) => values.reduce((all, value) => all + value, 0);
    const side = Math.max(Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys));
    const middle = inSteps({ x: sum(xs) / xs.length, y: sum(ys) / ys.length }, this.step);
    const radius = inSteps({ x: NEW_RADIUS * side, y: 0 }, this.step).x || this.step;
    const added = addedObstacle(this.cells, this.read, middle, radius);
    if (added === undefined) {
      this.say("The table of obstacles is full: remove one first.");
      return;
    }
    this.write(added.edit);
    this.go(
      { kind: "obstacle", row: added.row },
      "Added in the middle of the field: move it to its place and type its radius.",
    );
  }

  private removeObstacle(target: Target): void {
    this.write(removedObstacle(this.cells, target.row));
    this.chosen = undefined;
    this.refresh();
    this.say("Removed. Undo brings the obstacle back.");
  }

  /** The hand goes on to what has changed. */
  private go(target: Target, said: string): void {
    this.chosen = undefined;
    this.refresh();
    this.handles.get(keyOf(target))?.element.focus();
    this.say(said);
  }
}

function keyOf({ kind, row }: Target): string {
  return `${kind} ${row}`;
}

/** As the tables of the page Field call it. */
function titleOf({ kind, row }: Target): string {
  return `${kind === "corner" ? "Corner" : "Obstacle"} ${row + 1}`;
}

function isSame(one: Target | undefined, two: Target | undefined): boolean {
  return one !== undefined && two !== undefined && one.kind === two.kind && one.row === two.row;
}

function isAt(one: Point, two: Point): boolean {
  return one.x === two.x && one.y === two.y;
}
