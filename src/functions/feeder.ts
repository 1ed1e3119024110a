import { readOptionalCorners } from "../boundary/field";
import {
  above,
  anyNumber,
  atLeast,
  MOST_POSITIONS,
  readNumber,
  readOptionalNumber,
  wholeNumber,
} from "../boundary/numbers";
import { readHydrants, readNearEnds } from "../boundary/map";
import { readFriction } from "../boundary/pipe";
import { spillTable } from "../boundary/table";
import { anyLength, readUnits } from "../boundary/units";
import { shortestFeeder } from "../formulas/feeder-length";
import { pressureAtRiser } from "../formulas/feeder-pressure";
import { leavesField, nearestHydrant } from "../formulas/feeder-reach";
import { fewestHydrants } from "../formulas/hydrants";
import type { Units } from "./units";

/**
 * Shortest straight feeder that lets the near end of the line reach every position.
 * @customfunction FEEDER_LENGTH FEEDER.LENGTH
 * @param positions Positions of the line that the feeder serves, a whole number from 1 to 500.
 * @param move Distance from one position to the next (any length unit), above 0.
 * @param [setback] Distance of the hydrant from the row of the positions' near ends (same unit), 0 or more (blank: 0).
 * @returns Length, in the unit of the move.
 * @remarks The hydrant stands at the middle of the row of positions, the setback off their ends; the farthest near end is half the row away. This is the straight distance on the ground: add slack for curves, for the way round things and for the connection.
 * @source Pythagoras' theorem.
 * @errors #VALUE! for positions that are no whole number from 1 to 500, a move that is not above 0, or a negative setback.
 * @task how long must the feeder be?
 * @example =IRRIG.FEEDER.LENGTH(7, 50, 20)
 */
export function feederLength(positions: any, move: any, setback?: any): any {
  return shortestFeeder(
    readNumber("positions", positions, wholeNumber(1, MOST_POSITIONS)),
    readNumber("move", move, above(0)),
    readOptionalNumber("setback", setback, atLeast(0)) ?? 0,
  );
}

/**
 * Pressure needed at the hydrant for the pressure wanted where the lateral begins.
 * @customfunction FEEDER_PRESSURE FEEDER.PRESSURE
 * @param inlet Pressure wanted where the lateral begins (psi, kPa), 0 or more.
 * @param flow Flow through the feeder (gpm, m³/h), 0 or more: the lateral's.
 * @param inside Inside diameter of the feeder (in, mm), above 0: the bore, not the nominal size; PIPE.INSIDE turns one into the other.
 * @param length Length of the feeder (ft, m), 0 or more.
 * @param [rise] Ground from the hydrant up to the lateral's inlet (ft, m), negative downhill (blank: 0).
 * @param [fittings] Sum of the resistance coefficients k of valves, connects and bends, 0 or more (blank: 0).
 * @returns Pressure (psi, kPa).
 * @remarks inlet + friction of the full flow + fittings·V²/2g + rise, as pressure. The highest pressure is the static one with the line shut off: check the tubing's rating against that.
 * @source USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11 (2016).
 * @errors #N/A when the fall alone gives more than the pressure wanted. #VALUE! for a blank, text or negative number where 0 or more is due, or an inside diameter that is not above 0.
 * @cautions pressure, backflow
 * @task what pressure must the hydrant give?
 * @example =IRRIG.FEEDER.PRESSURE(48, 58, 2.6, 300, "US", 4, 150, 5)
 */
export function feederPressure(
  inlet: any,
  flow: any,
  inside: any,
  length: any,
  units?: Units,
  rise?: any,
  friction?: any,
  fittings?: any,
): any {
  const u = readUnits(units);
  return u.pressure.give(
    pressureAtRiser({
      inletPressure: u.pressure.read("inlet", inlet, atLeast(0)),
      flow: u.flow.read("flow", flow, atLeast(0)),
      bore: u.diameter.read("inside", inside, above(0)),
      length: u.length.read("length", length, atLeast(0)),
      rise: u.length.readOr("rise", rise, anyNumber, 0),
      friction: readFriction(friction),
      fittings: readOptionalNumber("fittings", fittings, atLeast(0)) ?? 0,
    }),
  );
}

/**
 * Spills the fewest hydrants on the row of near ends that reach every position of the line.
 * @customfunction FEEDER_HYDRANTS FEEDER.HYDRANTS
 * @param ends Near ends of the line (any length unit): two columns, x and y, a row a position in their order; or the table of FIELD.RUNS, whose columns begin with position, run, x and y. Up to 1,000 rows.
 * @param reach Length of the feeder that is to be enough (same unit), above 0, less what you keep as slack.
 * @returns A header row, then a row per hydrant: hydrant, x, y, first and last position that it serves, straight distance to the farthest of them, and which run of their rows.
 * @remarks A hydrant stands on the straight pieces that join the near ends, in the middle of what it serves, so that its longest feeder is shortest; each serves positions that follow each other. Runs that lie apart on one row are moved as a set of their own, and have hydrants of their own; FEEDER.REACH finds the nearest of all. Distances are straight: a feeder also goes round things and up and down.
 * @source Plane geometry: circles of the reach around the near ends.
 * @errors #VALUE! for a blank or wrong end, or a reach that is not above 0.
 * @cautions backflow, buried lines
 * @task how many hydrants do I need, and where?
 * @example =IRRIG.FEEDER.HYDRANTS({0,25;0,75;0,125;10,175;20,225;30,275;40,325}, 110)
 */
export function feederHydrants(ends: any[][], reach: any): any[][] {
  return spillTable(
    [
      { header: "hydrant" },
      { header: "x" },
      { header: "y" },
      { header: "first position" },
      { header: "last position" },
      { header: "farthest" },
      { header: "run" },
    ],
    fewestHydrants(readNearEnds(ends), readNumber("reach", reach, above(0))).map((hydrant, i) => [
      i + 1,
      hydrant.x,
      hydrant.y,
      hydrant.firstPosition,
      hydrant.lastPosition,
      hydrant.farthest,
      hydrant.run,
    ]),
  );
}

/**
 * Spills whether a feeder reaches from the nearest hydrant to the near end of the line in every position.
 * @customfunction FEEDER_REACH FEEDER.REACH
 * @param ends Near ends of the line (any length unit): two columns, x and y, a row a position in their order; or the table of FIELD.RUNS, whose columns begin with position, run, x and y. Up to 1,000 rows.
 * @param hydrants Hydrants (same unit): two columns, x and y; or the table of FEEDER.HYDRANTS, whose columns begin with hydrant, x and y. Up to 1,000 rows.
 * @param feeder Length of the feeder (same unit), 0 or more.
 * @param [corners] Corners of the field (same unit): two columns, x and y, 3 to 200 rows. Blank: not looked at.
 * @returns A header row, then a row for each end in its order: position, the nearest hydrant (its row), straight distance, feeder to spare (below 0: so much too short) and, with corners, "yes" where the straight way leaves the field, else "no".
 * @remarks Distances are straight and on the level. A feeder also goes round things and up and down: keep some to spare.
 * @source Plane geometry.
 * @errors #VALUE! for a blank or wrong end, hydrant, feeder or corner; corners as in FIELD.AREA.
 * @cautions roads and buildings
 * @task does the feeder reach every position?
 * @example =IRRIG.FEEDER.REACH({0,25;0,75;0,125;10,175}, {0,50;10,175}, 60, {0,0;630,0;630,200;0,200})
 */
export function feederReach(
  ends: any[][],
  hydrants: any[][],
  feeder: any,
  corners?: any[][],
): any[][] {
  const nearEnds = readNearEnds(ends);
  const outlets = readHydrants(hydrants);
  const length = readNumber("feeder", feeder, atLeast(0));
  const field = readOptionalCorners(anyLength, corners);
  const columns = [
    { header: "position" },
    { header: "hydrant" },
    { header: "distance" },
    { header: "to spare" },
  ];
  return spillTable(
    field ? [...columns, { header: "leaves the field" }] : columns,
    nearEnds.map((end) => {
      const { hydrant, distance } = nearestHydrant(end, outlets);
      const row = [end.position, hydrant + 1, distance, length - distance];
      if (field === undefined) return row;
      return [...row, leavesField(field, end, outlets[hydrant]) ? "yes" : "no"];
    }),
  );
}
