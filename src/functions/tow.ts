import { readOptionalChoice, readYesNo } from "../boundary/choices";
import { above, atLeast, between, MOST_HEADS, readNumber, wholeNumber } from "../boundary/numbers";
import { readTubing, readWallTemperature } from "../boundary/pipe";
import { minuteMeasure, percent, readUnits } from "../boundary/units";
import { bendingRadius } from "../formulas/bending-radius";
import { safePull } from "../formulas/safe-pull";
import { pullAtHitch } from "../formulas/tow-pull";
import { lineWeight } from "../formulas/tubing-weight";
import type { Units } from "./units";

/** @customenum {string} */
enum Contents {
  /** full of water */
  Full = "full",
  /** run out before the tow */
  Drained = "drained",
}

/**
 * Weight of a line on the ground.
 * @customfunction TOW_WEIGHT TOW.WEIGHT
 * @param outside Outside diameter of the tubing (in, mm), above 0: one value, or a row or column with one per section.
 * @param inside Inside diameter (in, mm), above 0 and below the outside one: as many values.
 * @param length Length of tubing (ft, m), 0 or more: as many values.
 * @param heads Heads on the line, a whole number from 0 to 500.
 * @param headweight Weight of one head with its stand and saddle (lb, kg), 0 or more.
 * @param [contents] "full" of water (blank) or "drained".
 * @returns Weight (lb, kg).
 * @remarks Wall of polyethylene at 950 kg/m³, water at 998.2 kg/m³, plus the heads. Mud and wet grass come on top.
 * @source The volume of a tube.
 * @errors #VALUE! for a blank, text or negative value, ranges of different counts, or an inside diameter not below the outside one.
 * @cautions towing
 * @task how heavy is my line to pull?
 * @example =IRRIG.TOW.WEIGHT({2.48;1.97}, {2.15;1.72}, {315;315}, 14, 6, "US", "full")
 */
export function towWeight(
  outside: any[][],
  inside: any[][],
  length: any[][],
  heads: any,
  headweight: any,
  units?: Units,
  contents?: Contents,
): any {
  const u = readUnits(units);
  const filled = readOptionalChoice("contents", contents, ["full", "drained"]) ?? "full";
  return u.weight.give(
    lineWeight(
      readTubing(u, outside, inside, length),
      readNumber("heads", heads, wholeNumber(0, MOST_HEADS)),
      u.weight.read("headweight", headweight, atLeast(0)),
      filled === "full",
    ),
  );
}

/**
 * Pull at the hitch that drags a line over the ground.
 * @customfunction TOW_PULL TOW.PULL
 * @param weight Weight of the line (lb, kg), 0 or more, as TOW.WEIGHT gives it.
 * @param drag Drag coefficient on this ground, 0 to 3: the pull on the level over the weight. Measure it with a scale in the tow rope; 0.3 to 0.6 is common on grass.
 * @param [slope] Slope in the direction of the pull, percent, uphill positive, −100 to 100; blank or 0 is level.
 * @returns Pull (lbf, N), never below 0.
 * @remarks Weight × (drag × cos + sin) of the slope. Starting takes more than keeping on, and so do ruts, corners and stands that catch. The range of drag is common practice, without a published source. Compare with TOW.SAFEPULL and with the limits of vehicle and hitch.
 * @source Coulomb friction on a slope.
 * @errors #VALUE! for a blank, text or negative value, or a drag or slope out of range.
 * @cautions towing, overhead wires, lightning
 * @task how hard must I pull to move a line?
 * @example =IRRIG.TOW.PULL(520, 0.45, "US", 2)
 */
export function towPull(weight: any, drag: any, units?: Units, slope?: any): any {
  const u = readUnits(units);
  return u.pull.give(
    pullAtHitch(
      u.weight.read("weight", weight, atLeast(0)),
      readNumber("drag", drag, between(0, 3)),
      percent.readOr("slope", slope, between(-100, 100), 0),
    ),
  );
}

/**
 * Pull that tubing and its joints bear when a line is towed.
 * @customfunction TOW_SAFEPULL TOW.SAFEPULL
 * @param outside Outside diameter of the smallest tubing on the line (in, mm), above 0.
 * @param rating Dimension ratio, outside diameter over wall (DR or SDR), above 2; for SIDR tubing add 2.
 * @param yield_ Tensile yield strength of the material at 73 °F or 23 °C (psi, kPa), above 0, from the manufacturer: it differs between grades, so there is no default.
 * @param [temperature] Temperature of the tubing's wall (°F, °C); black tubing in the sun is far above the air. Blank (a blank cell may count as 0), or anything below 73 °F or 23 °C, is no reduction.
 * @param [minutes] How long the pull lasts, above 0; blank or 0: 60. Above 24 hours #N/A.
 * @param [joint] Pull that the weakest joint has been tested for (lbf, N), above 0; blank or 0: joints not counted.
 * @returns Pull (lbf, N): the lesser of the tubing's and the joint's.
 * @remarks 0.40 × time factor (1 to 1 h, 0.95 to 12 h, 0.91 to 24 h) × yield × π·D²·(1/DR − 1/DR²), reduced for a warm wall by the inch industry's factors (0.78 at 100 °F, 0.50 at 140 °F; #N/A above). The smallest tubing on the line governs. Clamped and threaded joints often hold less than the tubing: have one tested. The manufacturer's limit goes first.
 * @source ASTM F1804, Standard Practice for Determining Allowable Tensile Load for Polyethylene (PE) Gas Pipe During Pull-In Installation; Plastics Pipe Institute, Handbook of Polyethylene Pipe, 2nd edition, for the temperature.
 * @errors #VALUE! for a blank or text among the first three or a value out of range. #N/A above 140 °F or 24 hours.
 * @cautions towing
 * @task how hard may I pull on the tubing?
 * @example =IRRIG.TOW.SAFEPULL(1.97, 17, 2600, "US", 95, 30, 600)
 */
export function towSafepull(
  outside: any,
  rating: any,
  // `yield` is a reserved word; the build takes the underscore off.
  yield_: any,
  units?: Units,
  temperature?: any,
  minutes?: any,
  joint?: any,
): any {
  const u = readUnits(units);
  return u.pull.give(
    safePull(
      {
        outside: u.diameter.read("outside", outside, above(0)),
        rating: readNumber("rating", rating, above(2)),
        yieldStrength: u.pressure.read("yield", yield_, above(0)),
        temperature: readWallTemperature(u, temperature),
        time: minuteMeasure.readOr("minutes", minutes, above(0), 60),
      },
      u.pull.readOptional("joint", joint, above(0)),
    ),
  );
}

/**
 * Least radius that tubing may be bent to when a line is turned or coiled.
 * @customfunction TOW_BEND TOW.BEND
 * @param outside Outside diameter (any unit of length), above 0.
 * @param rating Dimension ratio, outside diameter over wall (DR or SDR), 11 to 26; for SIDR tubing add 2.
 * @param [fitting] TRUE where a saddle, a coupler or any other fitting lies in the bend; FALSE (blank) for plain tubing.
 * @returns Radius, in the unit of the outside diameter.
 * @remarks 25 outside diameters at DR 11 to 13.5, 27 at DR 17 to 21, 34 at DR 26; between printed ratios the next higher. With a fitting in the bend 100 at every ratio: a line with a saddle every few yards is hardly ever turned without one.
 * @source Plastics Pipe Institute, Handbook of Polyethylene Pipe, cold bending (read in a secondary text).
 * @errors #VALUE! for a blank, text, an outside diameter that is not above 0, or a fitting that is not TRUE or FALSE. #N/A for a ratio outside 11 to 26.
 * @cautions towing
 * @yesno fitting
 * @task how tightly may I turn the line?
 * @example =IRRIG.TOW.BEND(1.97, 17)
 */
export function towBend(outside: any, rating: any, fitting?: any): any {
  return bendingRadius(
    readNumber("outside", outside, above(0)),
    readNumber("rating", rating, above(2)),
    readYesNo("fitting", fitting),
  );
}
