import { readFriction } from "../boundary/friction";
import { above, anyNumber, atLeast, MOST_POSITIONS, wholeNumber } from "../boundary/limits";
import { readNumber, readOptionalNumber } from "../boundary/numbers";
import { readUnits } from "../boundary/units";
import { feederLength as lengthOfFeeder } from "../formulas/feeder-length";
import { feederPressure as pressureAtRiser } from "../formulas/feeder-pressure";

/** @customenum {string} */
enum Units {
  /** feet, inches, psi, gpm */
  US = "US",
  /** meters, millimeters, kPa, m³/h */
  SI = "SI",
}

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
  return lengthOfFeeder(
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
 * @param [units] "US" (blank) or "SI".
 * @param [rise] Ground from the hydrant up to the lateral's inlet (ft, m), negative downhill (blank: 0).
 * @param [friction] Hazen–Williams C, 50 to 200 (blank or 0: 150, clean plastic pipe without saddles and joints; 140 allows for them), or "Darcy" for Darcy–Weisbach.
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
