import { curveMeetings, type Meeting, type Meetings } from "../formulas/curve-meeting";
import { InvalidInput, NoAnswer } from "../ground/domain-error";
import { curveValue, type MonotoneCurve, monotoneCurve } from "../formulas/monotone-curve";
import { type Cell, describe, isBlank, rows } from "./cell";
import { anyNumber, atLeast, type Limit } from "./limits";
import { checked } from "./numbers";
import type { Units } from "./units";

/** What a curve's two columns hold, and how each cell is read and said. */
interface CurveColumns {
  /** "flow (gpm) and head (ft)". */
  readonly named: string;
  readFlow(place: string, cell: Cell): number;
  /** The second column, by the name it has there. */
  readonly value: string;
  readValue(place: string, cell: Cell): number;
  sayFlow(flow: number): string;
}

/** Reads a curve *(flow, head)*, SI. */
export function readCurve(u: Units, name: string, cell: Cell, headLimit: Limit): MonotoneCurve {
  return readPoints(name, cell, {
    named: `flow (${u.flow.unit}) and head (${u.length.unit})`,
    readFlow: (place, flow) => u.flow.readAt(place, flow, atLeast(0)),
    value: "head",
    readValue: (place, head) => u.length.readAt(place, head, headLimit),
    sayFlow: (flow) => u.flow.say(flow),
  });
}

/** Reads any column of a pump's sheet by flow, in whatever units the sheet is in. */
export function readSheetColumn(name: string, cell: Cell): MonotoneCurve {
  return readPoints(name, cell, {
    named: "flow and what the pump's sheet gives there",
    readFlow: (place, flow) => checked(place, flow, atLeast(0)),
    value: "value",
    readValue: (place, value) => checked(place, value, anyNumber),
    sayFlow: String,
  });
}

/** Height of a curve at a flow, both in the units it was read in; nothing is guessed beyond it. */
export function valueAtFlow(curve: MonotoneCurve, flow: number): number {
  const from = curve.x[0];
  const to = curve.x[curve.x.length - 1];
  if (flow < from || flow > to) {
    throw new NoAnswer(`flow of ${flow} is outside the points, which run from ${from} to ${to}`);
  }
  return curveValue(curve, flow);
}

/**
 * Two points or more. Rows may come in any order, and a flow may stand once only. Both 0 is a blank
 * row at the end, as hosts hand blanks over.
 */
function readPoints(name: string, cell: Cell, columns: CurveColumns): MonotoneCurve {
  const grid = rows(cell);
  const blank = (value: Cell) => isBlank(value) || value === 0;
  let count = grid.length;
  while (count > 0 && grid[count - 1].every(blank)) count--;
  const wanted = `two columns, ${columns.named}`;
  if (count === 0) throw new InvalidInput(`${name} is missing: it must be ${wanted}`);
  if (grid.some((row) => row.length !== 2)) {
    throw new InvalidInput(`${name} must be ${wanted}; got ${describe(cell)}`);
  }
  if (count === 1) throw new InvalidInput(`${name} must have two points or more; got one`);
  const points = grid.slice(0, count).map(([flow, value], i) => ({
    flow: columns.readFlow(`${name} row ${i + 1} flow`, flow),
    value: columns.readValue(`${name} row ${i + 1} ${columns.value}`, value),
  }));
  points.sort((a, b) => a.flow - b.flow);
  for (let i = 1; i < points.length; i++) {
    if (points[i].flow === points[i - 1].flow) {
      throw new InvalidInput(`${name} lists ${columns.sayFlow(points[i].flow)} twice`);
    }
  }
  return monotoneCurve(
    points.map((point) => point.flow),
    points.map((point) => point.value),
  );
}

/** A flow (m³/s) and a head (m). */
export interface Duty {
  readonly flow: number;
  readonly head: number;
}

/** The one flow at which a pump runs steadily against a demand, or a message that says why none. */
export function steadyDuty(u: Units, pump: MonotoneCurve, demand: MonotoneCurve): Duty {
  const found = curveMeetings(pump, demand);
  if (found.to < found.from) {
    throw new NoAnswer(
      `the curves have no flow in common: one ends at ${u.flow.say(found.to)}, the other begins at ${u.flow.say(found.from)}`,
    );
  }
  if (found.together) throw new NoAnswer("the curves lie on each other, so there is no one duty");
  if (found.meetings.length === 0) throw noCrossing(u, found);
  if (found.meetings.length > 1) {
    const flows = found.meetings.map(({ x }) => u.flow.say(x)).join(", ");
    throw new NoAnswer(`the curves cross ${found.meetings.length} times, at ${flows}`);
  }
  const [meeting] = found.meetings;
  if (!isSteady(meeting)) {
    throw new NoAnswer(
      `the curves meet at ${u.flow.say(meeting.x)} only, and the pump does not settle there: ` +
        `it must be above the demand at less flow and below it at more`,
    );
  }
  return { flow: meeting.x, head: meeting.y };
}

/** With less flow the pump gives more head than the demand asks, with more flow less. */
function isSteady({ before, after }: Meeting): boolean {
  return before >= 0 && after <= 0;
}

function noCrossing(u: Units, { from, to, above }: Meetings): NoAnswer {
  const range = `from ${u.flow.say(from)} to ${u.flow.say(to)}`;
  return new NoAnswer(
    above > 0
      ? `the curves do not cross ${range}: the pump is above the demand throughout; carry both curves to more flow`
      : `the curves do not cross ${range}: the pump is below the demand throughout; it cannot deliver this demand`,
  );
}
