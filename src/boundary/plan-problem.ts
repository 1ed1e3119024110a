import { requireRuns } from "../formulas/field-runs";
import { InvalidInput } from "../ground/domain-error";
import { FieldLayouts } from "../solver/laid-field";
import type { PlanProblem } from "../solver/plan-problem";
import type { Cell } from "./cell";
import { readObstacles, readOptionalGround } from "./field";
import { readChoices, readPlanField, readPlanPipes, readSprinklers } from "./plan-choices";
import { readTerms } from "./plan-terms";
import { readUnits, type Units } from "./units";

/** The cells of a plan, in the words of PLAN.SEARCH and PLAN.LIMITS. */
export interface PlanCells {
  readonly field: Cell;
  readonly spacings: Cell;
  readonly moves: Cell;
  readonly pressures: Cell;
  readonly sprinklers: Cell;
  readonly tubing: Cell;
  readonly feeders: Cell;
  readonly terms: Cell;
  readonly units: Cell;
  readonly obstacles: Cell;
  readonly spots: Cell;
}

/** The line of a rectangle lies along its length, east, and positions go north. */
const ALONG_RECTANGLE = 90;

export function readPlanProblem(cells: PlanCells): { u: Units; problem: PlanProblem } {
  const u = readUnits(cells.units);
  const field = readPlanField(u, cells.field);
  const { terms, bearing, setback, slope } = readTerms(u, cells.terms);
  const heights = readOptionalGround(u.length, cells.spots);
  if (heights !== undefined && slope !== 0) {
    throw new InvalidInput("terms give a slope and spots give heights: leave one of them blank");
  }
  const problem: PlanProblem = {
    layouts: new FieldLayouts(
      { corners: field.corners, obstacles: readObstacles(u.length, cells.obstacles), setback },
      field.isRectangle ? ALONG_RECTANGLE : bearing,
      heights === undefined ? { slope } : { heights },
    ),
    spacings: readChoices("spacings", u.length, cells.spacings),
    moves: readChoices("moves", u.length, cells.moves),
    pressures: readChoices("pressures", u.pressure, cells.pressures),
    sprinklers: readSprinklers(u, cells.sprinklers),
    tubing: readPlanPipes(u, "tubing", cells.tubing),
    feeders: readPlanPipes(u, "feeders", cells.feeders),
    terms,
  };
  requireSomeRun(problem);
  return { u, problem };
}

function requireSomeRun({ layouts, spacings, moves }: PlanProblem): void {
  const isLaid = spacings.some((spacing) =>
    moves.some((move) => layouts.at(spacing, move) !== undefined),
  );
  if (!isLaid) requireRuns([]);
}
