import { readChoice, readOptionalChoice } from "../boundary/choices";
import { above, atLeast, between, readNumber, readNumbers } from "../boundary/numbers";
import {
  GREATEST_SPEED,
  readFriction,
  readStrength,
  readSurge,
  readWallTemperature,
} from "../boundary/pipe";
import { readUnits } from "../boundary/units";
import { fittingLoss } from "../formulas/fitting-loss";
import { frictionPressureLoss } from "../formulas/friction";
import { flowAtSpeed, meanSpeed } from "../formulas/mean-speed";
import { pipeDimensions } from "../formulas/pipe-dimensions";
import { reducedRating } from "../formulas/pipe-rating";
import { smallestPipe } from "../formulas/pipe-size";
import { volumeOfPipe } from "../formulas/pipe-volume";
import { surgePressure } from "../formulas/surge";
import { thermalExpansion } from "../formulas/thermal-expansion";
import { PIPE_SERIES } from "../tables/pipe-sizes";
import type { Units } from "./units";

/** @customenum {string} */
enum PipeSeries {
  /** metric: nominal outside diameter in mm, SDR (ISO 4427-2) */
  ISO = "ISO PE",
  /** iron pipe size: nominal inches, DR (ASTM D3035) */
  IPS = "IPS PE",
  /** controlled inside diameter: nominal inches, SIDR (ASTM D2239) */
  SIDR = "SIDR",
}

/** Wider than any dimension ratio made in polyethylene. */
const DIMENSION_RATIO = between(5, 50);

/**
 * Pressure lost to friction in one pipe segment.
 * @customfunction PIPE_FRICTION PIPE.FRICTION
 * @arguments pipe
 * @param flow Flow in the segment (gpm, m³/h), 0 or more.
 * @param length Length of the segment (ft, m), 0 or more.
 * @param [units] "US" (blank) or "SI".
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
 * Mean velocity of the water in a full pipe.
 * @customfunction PIPE_VELOCITY PIPE.VELOCITY
 * @arguments pipe
 * @param [units] "US" (blank) or "SI".
 * @returns Velocity (ft/s, m/s).
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
 * @returns Pressure lost (psi, kPa).
 * @remarks k·V²/2g as pressure, V the mean velocity in the inside diameter given. The manufacturer's loss at a stated flow is better than a k from a table.
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
 * The smallest inside diameter of a list that keeps within a loss and a velocity.
 * @customfunction PIPE_SIZE PIPE.SIZE
 * @arguments pipe
 * @param maxloss Largest pressure it may lose to friction (psi, kPa), above 0.
 * @param insides Inside diameters to choose from (in, mm), each above 0: one row or one column, in any order.
 * @param [units] "US" (blank) or "SI".
 * @param [maxvelocity] Largest velocity (ft/s, m/s), above 0 (blank or 0: 5 ft/s, 1.5 m/s).
 * @returns Inside diameter (in, mm), as it stands in the list.
 * @remarks Tries PIPE.FRICTION and PIPE.VELOCITY with each. A pipe that just meets a limit passes.
 * @source USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11 (2016); velocity limit of Conservation Practice Standard 430.
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
 * Largest flow that a pipe carries within a velocity limit.
 * @customfunction PIPE_MAXFLOW PIPE.MAXFLOW
 * @arguments pipe
 * @param [units] "US" (blank) or "SI".
 * @param [velocity] Velocity limit (ft/s, m/s), above 0 (blank or 0: 5 ft/s, 1.5 m/s).
 * @returns Flow (gpm, m³/h).
 * @remarks The velocity times the area of the bore. 5 ft/s is the limit of practice standard 430 where surge is not analyzed.
 * @source Continuity; USDA-NRCS, Conservation Practice Standard 430, Irrigation Pipeline.
 * @errors #VALUE! for an inside diameter or a velocity that is not above 0, or text.
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
 * @arguments pipe
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

/**
 * Inside diameter of polyethylene pipe from a published dimension standard.
 * @customfunction PIPE_INSIDE PIPE.INSIDE
 * @arguments pipe
 * @returns Inside diameter (in, mm).
 * @remarks Mean outside diameter less twice the mean wall. ISO: the wall table of ISO 4427-2, outside and wall in the middle of their tolerances (ISO 11922-1, wall grade V). IPS: outside − 2.12·outside/DR, a wall 6% above the least (ASTM D3035). SIDR: the average inside diameter of ASTM D2239, the same for every SIDR. IPS ratios and the SIDR table are from memory. A roll may be narrower and still keep the standard: 63 mm SDR 17 is 54.4 to 55.8 mm about its mean of 55.1, 1.3% either way, and from 50 to 160 mm the ISO tables allow 1.1 to 1.4% at SDR 17, 2.4 to 2.8% at SDR 7.4; 2 in IPS DR 11 may be 1.7% narrower, 2 in SIDR 1% (both from memory). 1% less bore is 5% more friction: measure where a plan passes by less.
 * @source ISO 4427-2 (2007), EN 12201-2, ISO 11922-1; Plastics Pipe Institute, Handbook of Polyethylene Pipe, 2nd edition, chapter 6, with ASTM D3035; ASTM D2239.
 * @errors #N/A for a size or a rating that the table does not list: the message names those it does. #VALUE! for an unknown series, a blank, text or a number that is not above 0.
 * @task what is the bore of this tubing?
 * @example =IRRIG.PIPE.INSIDE("ISO PE", 63, 17, "SI")
 */
export function pipeInside(series: PipeSeries, size: any, rating: any, units?: Units): any {
  const u = readUnits(units);
  return u.diameter.give(readPipeDimensions(series, size, rating).inside);
}

/**
 * Outside diameter of polyethylene pipe from a published dimension standard.
 * @customfunction PIPE_OUTSIDE PIPE.OUTSIDE
 * @arguments pipe
 * @returns Mean outside diameter (in, mm); with PIPE.INSIDE, twice the mean wall apart.
 * @remarks ISO: the middle of the tolerance of ISO 4427-2, a little above the nominal diameter (63 mm pipe is 63.0 to 63.4, so 63.2). IPS: the outside diameter of steel pipe, the same for every DR. SIDR: the standard controls the inside, so this is the average inside diameter and two mean walls, 6% above the least wall of ASTM D2239; its table is from memory. Fittings are made for a series and size: match those, not this number. Tubing as made may differ: measure it where it matters.
 * @source ISO 4427-2 (2007), ISO 11922-1; ASTM D3035 with ANSI B36.10; ASTM D2239.
 * @errors #N/A for a size or a rating that the table does not list: the message names those it does. #VALUE! for an unknown series, a blank, text or a number that is not above 0.
 * @task what is the outside diameter of this tubing?
 * @example =IRRIG.PIPE.OUTSIDE("ISO PE", 63, 17, "SI")
 */
export function pipeOutside(series: PipeSeries, size: any, rating: any, units?: Units): any {
  const u = readUnits(units);
  return u.diameter.give(readPipeDimensions(series, size, rating).outside);
}

function readPipeDimensions(series: PipeSeries, size: unknown, rating: unknown) {
  return pipeDimensions(
    readChoice("series", series, PIPE_SERIES),
    readNumber("size", size, above(0)),
    readNumber("rating", rating, above(0)),
  );
}

/**
 * How much longer a polyethylene line gets when its wall warms.
 * @customfunction PIPE_EXPANSION PIPE.EXPANSION
 * @param length Length of the line (ft, m), 0 or more.
 * @param change Change of the wall's temperature (°F, °C), a difference, not a thermometer's reading: warmer above 0, colder below, at most 360 °F or 200 °C either way.
 * @returns Length gained (ft, m); below 0 it is shorter.
 * @remarks length × 0.00009 per °F (0.000162 per °C) × change, for a line that is free to move; the rule of thumb is 1 in per 100 ft and 10 °F, 8% less. Published figures for polyethylene run from 0.00007 to 0.00011 per °F. Black tubing in the sun is far warmer than the air, and cold water brings it back within minutes: leave slack at the hydrant, at the end stake and at rigid joints. A line that cannot move pulls on its joints instead.
 * @source Plastics Pipe Institute, answers to frequent questions on polyethylene pipe: thermal expansion, about 9 × 10⁻⁵ in/in/°F.
 * @errors #VALUE! for a blank, text or negative length, or a change out of range.
 * @cautions pressure
 * @task how much slack does the line need for heat?
 * @example =IRRIG.PIPE.EXPANSION(630, 60, "US")
 */
export function pipeExpansion(length: any, change: any, units?: Units): any {
  const u = readUnits(units);
  return u.length.give(
    thermalExpansion(
      u.length.read("length", length, atLeast(0)),
      u.temperatureChange.read("change", change, u.temperatureChange.betweenSI(-200, 200)),
    ),
  );
}

/**
 * Allowable working pressure of polyethylene pipe from its design stress, dimension ratio and temperature.
 * @customfunction PIPE_RATING PIPE.RATING
 * @param strength Material, "PE4710", "PE3608", "PE2708", "PE100" or "PE80"; or the hydrostatic design stress as a number: HDS in psi (at most 1000), or MRS/1.25 in kPa (at most 8000: 8000 is PE100's, 6400 is PE80's).
 * @param rating Dimension ratio (SDR, DR or SIDR), 5 to 50.
 * @param [temperature] Temperature of the pipe wall (°F, °C), which in sun can be well above the water's. Blank: no reduction; a blank cell may count as 0, which is no reduction either.
 * @param [series] "ISO PE", "IPS PE" or "SIDR" (blank: that of the material; for a number "IPS PE" with US units, "ISO PE" with SI).
 * @returns Pressure (psi, kPa).
 * @remarks 2·stress/(ratio − 1), or 2·stress/(SIDR + 1), times the temperature factor: inch series by the Plastics Pipe Institute's table, 1 up to 73 °F and 0.5 at 140 °F; metric by ISO 4427-1, 1 up to 20 °C, 0.87 at 30 and 0.74 at 40 °C; straight lines between, never above 1 (both tables from memory). For the metric series at most the nominal pressure (PN) that ISO 4427-2 gives that SDR: PE100 at SDR 26 is PN 6, not the 6.4 bar that its stress would carry, and no wall is above PN 25. The marking on the pipe and the manufacturer's data go first; fittings and joints may carry less. Compare with the highest static pressure plus surge.
 * @source ISO 4427-1 (2007) with annex A, ISO 4427-2 (2007) for the nominal pressures; ASTM D3035 and D2239; Plastics Pipe Institute TR-4 and Handbook of Polyethylene Pipe, 2nd edition, chapter 3, table A.2.
 * @errors #N/A above the temperature table (140 °F for the inch series, 40 °C for the metric). #VALUE! for an unknown material, a number that is a design basis or an MRS, or a ratio out of range.
 * @cautions pressure
 * @task how much pressure may this pipe carry?
 * @example =IRRIG.PIPE.RATING("PE4710", 11, "US", 90, "IPS PE")
 */
export function pipeRating(
  strength: any,
  rating: any,
  units?: Units,
  temperature?: any,
  series?: PipeSeries,
): any {
  const u = readUnits(units);
  const { designStress, usualSeries } = readStrength(u, strength);
  return u.pressure.give(
    reducedRating(
      readOptionalChoice("series", series, PIPE_SERIES) ?? usualSeries,
      designStress,
      readNumber("rating", rating, DIMENSION_RATIO),
      readWallTemperature(u, temperature),
    ),
  );
}

/**
 * Surge pressure when the flow in a pipe is stopped, above the running pressure.
 * @customfunction PIPE_SURGE PIPE.SURGE
 * @param flow Flow that is stopped (gpm, m³/h), 0 or more.
 * @param outside Outside diameter of the pipe (in, mm), above the inside diameter.
 * @param inside Inside diameter (in, mm), above 0; PIPE.INSIDE gives it.
 * @param [length] Length of pipe from the valve back to the pond, tank or main (ft, m), above 0. Needed with a closure time.
 * @param [closure] Time the valve takes to close (s), 0 or more (blank or 0: at once).
 * @param [modulus] Short-term modulus of the wall (psi, kPa), above 0 (blank or 0: polyethylene, 150,000 psi, which is 1,034,000 kPa).
 * @returns Pressure (psi, kPa), to add to the running pressure.
 * @remarks The elastic wave, a = 4660/√(1 + (K/E)·inside/wall) ft/s with K = 300,000 psi, times density and velocity. When the valve closes in more than 2·length/a, that times (2·length/a)/closure, for an even closure. Leaves out column separation, check-valve slam, trapped air and pumps that start: those can do more.
 * @source Plastics Pipe Institute, Handbook of Polyethylene Pipe, 2nd edition, chapter 6.
 * @errors #VALUE! for an outside diameter that is not above the inside one, a closure without a length, a blank, text or a negative number.
 * @cautions pressure
 * @task how much pressure does a fast stop add?
 * @example =IRRIG.PIPE.SURGE(58, 2.48, 2.17, "US", 630, 2, 150000)
 */
export function pipeSurge(
  flow: any,
  outside: any,
  inside: any,
  units?: Units,
  length?: any,
  closure?: any,
  modulus?: any,
): any {
  const u = readUnits(units);
  return u.pressure.give(
    surgePressure(readSurge(u, { flow, outside, inside, length, closure, modulus })),
  );
}
