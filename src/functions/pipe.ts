import { readFriction } from "../boundary/friction";
import { above, atLeast } from "../boundary/limits";
import { readNumber, readNumbers } from "../boundary/numbers";
import { type BySystem, readUnits } from "../boundary/units";
import { fittingLoss } from "../formulas/fitting-loss";
import { frictionPressureLoss } from "../formulas/friction";
import { flowAtSpeed, meanSpeed } from "../formulas/mean-speed";
import { smallestPipe } from "../formulas/pipe-size";
import { pipeVolume as volumeOfPipe } from "../formulas/pipe-volume";

/** @customenum {string} */
enum Units {
  /** feet, inches, psi, gpm */
  US = "US",
  /** metres, millimetres, kPa, m³/h */
  SI = "SI",
}

/** Speed limit where surge is not analysed: 5 ft/s in practice standard 430, rounded for SI. */
const GREATEST_SPEED: BySystem = { US: 5, SI: 1.5 };

/**
 * Pressure lost to friction in one pipe segment.
 * @customfunction PIPE_FRICTION PIPE.FRICTION
 * @param flow Flow in the segment (gpm, m³/h), 0 or more.
 * @param inside Inside diameter (in, mm), above 0: the bore, not the nominal size; PIPE.INSIDE turns one into the other.
 * @param length Length of the segment (ft, m), 0 or more.
 * @param [units] "US" (blank) or "SI".
 * @param [friction] Hazen–Williams C, 50 to 200 (blank or 0: 150, clean plastic pipe without saddles and joints; 140 allows for them), or "Darcy" for Darcy–Weisbach.
 * @returns Pressure lost (psi, kPa).
 * @remarks Hazen–Williams in the handbook form, J = 1050 (Q/C)^1.852 D^−4.87 ft per 100 ft, or Darcy–Weisbach for polyethylene (roughness 0.0015 mm, water at 20 °C; 64/Re below Re 2000, Colebrook above 4000, a straight line between).
 * @source USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11 (2016); Colebrook (1939), Journal of the ICE 11.
 * @errors #VALUE! for a blank, text or negative flow or length, or an inside diameter that is not above 0.
 * @task how much pressure does a pipe lose to friction?
 * @example =IRRIG.PIPE.FRICTION(50, 2.067, 100, "US", 150)
 */
export function pipeFriction(
  flow: any,
  inside: any,
  length: any,
  units?: Units,
  friction?: any,
): any {
  const u = readUnits(units);
  return u.pressure.give(
    frictionPressureLoss(
      u.flow.read("flow", flow, atLeast(0)),
      u.diameter.read("inside", inside, above(0)),
      u.length.read("length", length, atLeast(0)),
      readFriction(friction),
    ),
  );
}

/**
 * Mean speed of the water in a full pipe.
 * @customfunction PIPE_VELOCITY PIPE.VELOCITY
 * @param flow Flow in the pipe (gpm, m³/h), 0 or more.
 * @param inside Inside diameter (in, mm), above 0: the bore, not the nominal size; PIPE.INSIDE turns one into the other.
 * @param [units] "US" (blank) or "SI".
 * @returns Speed (ft/s, m/s).
 * @remarks Flow over the area of the bore; the handbooks' V = 0.4085 Q/D² (gpm, in).
 * @source Continuity; USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11 (2016).
 * @errors #VALUE! for a blank, text or negative flow, or an inside diameter that is not above 0.
 * @task how fast does the water run in a pipe?
 * @example =IRRIG.PIPE.VELOCITY(50, 2.067, "US")
 */
export function pipeVelocity(flow: any, inside: any, units?: Units): any {
  const u = readUnits(units);
  return u.speed.give(
    meanSpeed(u.flow.read("flow", flow, atLeast(0)), u.diameter.read("inside", inside, above(0))),
  );
}

/**
 * Pressure lost in a fitting, a valve or any other piece with a resistance coefficient.
 * @customfunction PIPE_FITTING PIPE.FITTING
 * @param flow Flow through the fitting (gpm, m³/h), 0 or more.
 * @param inside Inside diameter (in, mm), above 0, of the pipe that k refers to.
 * @param k Resistance coefficient k of the fitting, 0 or more; several in a row add up.
 * @param [units] "US" (blank) or "SI".
 * @returns Pressure lost (psi, kPa).
 * @remarks k·V²/2g as pressure, V the mean speed in `inside`. The maker's loss at a stated flow is better than a k from a table.
 * @source USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11 (2016).
 * @errors #VALUE! for a blank, text or negative flow or k, or an inside diameter that is not above 0.
 * @task how much pressure does a valve or an elbow take?
 * @example =IRRIG.PIPE.FITTING(50, 2.067, 0.9, "US")
 */
export function pipeFitting(flow: any, inside: any, k: any, units?: Units): any {
  const u = readUnits(units);
  return u.pressure.give(
    fittingLoss(
      u.flow.read("flow", flow, atLeast(0)),
      u.diameter.read("inside", inside, above(0)),
      readNumber("k", k, atLeast(0)),
    ),
  );
}

/**
 * The smallest inside diameter of a list that keeps within a loss and a speed.
 * @customfunction PIPE_SIZE PIPE.SIZE
 * @param flow Flow in the pipe (gpm, m³/h), 0 or more.
 * @param length Length of the pipe (ft, m), 0 or more.
 * @param maxloss Largest pressure it may lose to friction (psi, kPa), above 0.
 * @param insides Inside diameters to choose from (in, mm), each above 0: one row or one column, in any order.
 * @param [units] "US" (blank) or "SI".
 * @param [friction] Hazen–Williams C, 50 to 200 (blank or 0: 150, clean plastic pipe without saddles and joints; 140 allows for them), or "Darcy" for Darcy–Weisbach.
 * @param [maxvelocity] Largest speed (ft/s, m/s), above 0 (blank or 0: 5 ft/s, 1.5 m/s).
 * @returns Inside diameter (in, mm), as it stands in the list.
 * @remarks Tries PIPE.FRICTION and PIPE.VELOCITY with each. A pipe that just meets a limit passes.
 * @source USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11 (2016); speed limit of Conservation Practice Standard 430.
 * @errors #N/A when no pipe on the list is large enough. #VALUE! for a blank, text or negative flow or length, a limit that is not above 0, or a list with a blank or a text inside it.
 * @task what size of pipe do I need?
 * @example =IRRIG.PIPE.SIZE(50, 300, 5, {1.38,1.61,2.067,2.469,3.068}, "US", 150, 5)
 */
export function pipeSize(
  flow: any,
  length: any,
  maxloss: any,
  insides: any[][],
  units?: Units,
  friction?: any,
  maxvelocity?: any,
): any {
  const u = readUnits(units);
  const duty = {
    flow: u.flow.read("flow", flow, atLeast(0)),
    length: u.length.read("length", length, atLeast(0)),
    greatestLoss: u.pressure.read("maxloss", maxloss, above(0)),
    friction: readFriction(friction),
    greatestSpeed: u.speed.readOr("maxvelocity", maxvelocity, above(0), GREATEST_SPEED),
  };
  // The entry itself is given back, not its bore there and back, so that a lookup finds it again.
  const listed = readNumbers("insides", insides, above(0), u.diameter.unit);
  return listed[
    smallestPipe(
      listed.map((inside) => u.diameter.toSI(inside)),
      duty,
    )
  ];
}

/**
 * Largest flow that a pipe carries within a speed limit.
 * @customfunction PIPE_MAXFLOW PIPE.MAXFLOW
 * @param inside Inside diameter (in, mm), above 0: the bore, not the nominal size; PIPE.INSIDE turns one into the other.
 * @param [units] "US" (blank) or "SI".
 * @param [velocity] Speed limit (ft/s, m/s), above 0 (blank or 0: 5 ft/s, 1.5 m/s).
 * @returns Flow (gpm, m³/h).
 * @remarks The speed times the area of the bore. 5 ft/s is the limit of practice standard 430 where surge is not analysed.
 * @source Continuity; USDA-NRCS, Conservation Practice Standard 430, Irrigation Pipeline.
 * @errors #VALUE! for an inside diameter or a speed that is not above 0, or text.
 * @task how much flow can a pipe carry?
 * @example =IRRIG.PIPE.MAXFLOW(2.067, "US", 5)
 */
export function pipeMaxflow(inside: any, units?: Units, velocity?: any): any {
  const u = readUnits(units);
  return u.flow.give(
    flowAtSpeed(
      u.speed.readOr("velocity", velocity, above(0), GREATEST_SPEED),
      u.diameter.read("inside", inside, above(0)),
    ),
  );
}

/**
 * Water that a full pipe holds.
 * @customfunction PIPE_VOLUME PIPE.VOLUME
 * @param inside Inside diameter (in, mm), above 0: the bore, not the nominal size; PIPE.INSIDE turns one into the other.
 * @param length Length of the pipe (ft, m), 0 or more.
 * @param [units] "US" (blank) or "SI".
 * @returns Volume (gal, L).
 * @remarks The handbooks' 4.08 D² gallons per 100 ft. A line of two sizes is DRAIN.VOLUME.
 * @source The volume of a cylinder.
 * @errors #VALUE! for a blank, text or negative length, or an inside diameter that is not above 0.
 * @task how much water does a pipe hold?
 * @example =IRRIG.PIPE.VOLUME(2.067, 300, "US")
 */
export function pipeVolume(inside: any, length: any, units?: Units): any {
  const u = readUnits(units);
  return u.pipeVolume.give(
    volumeOfPipe(
      u.diameter.read("inside", inside, above(0)),
      u.length.read("length", length, atLeast(0)),
    ),
  );
}
