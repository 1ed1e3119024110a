import { readOptionalChoice } from "../boundary/choices";
import { above } from "../boundary/numbers";
import { readRunBores } from "../boundary/line";
import { readFriction, readGroundAlong, readSections } from "../boundary/pipe";
import { minuteMeasure, readUnits } from "../boundary/units";
import { sectionsVolume } from "../formulas/sections-volume";
import { trappedWater } from "../formulas/trapped-water";
import { timeToDrain } from "../solver/drain-time";
import type { Units } from "./units";

/** @customenum {string} */
enum OpenEnds {
  /** both ends open */
  Both = "both",
  /** the start open, the end closed */
  Start = "start",
  /** the end open, the start closed */
  End = "end",
}

/**
 * Water in a full line, of one size of tubing or of several.
 * @customfunction DRAIN_VOLUME DRAIN.VOLUME
 * @param inside Inside diameter (in, mm), above 0: one value, or a row or column with one per section. The bore, not the nominal size; PIPE.INSIDE turns one into the other.
 * @param length Length of tubing (ft, m), 0 or more: as many values as inside diameters, in the same order.
 * @returns Volume (gal, L).
 * @remarks (π/4)·D²·L of each section, summed; the tables' 4.08 D² gallons per 100 ft. What stays behind in the dips is DRAIN.TRAPPED.
 * @source The volume of a cylinder.
 * @errors #VALUE! for a blank, text or negative value, or ranges that differ in their number of values.
 * @cautions pressure, rolls and ice
 * @task how much water runs out when I open the line?
 * @example =IRRIG.DRAIN.VOLUME({2.15;1.72}, {315;315}, "US")
 */
export function drainVolume(inside: any[][], length: any[][], units?: Units): any {
  const u = readUnits(units);
  return u.pipeVolume.give(sectionsVolume(readSections(u, inside, length)));
}

/**
 * Water that stays in the dips of a line once its ends are open.
 * @customfunction DRAIN_TRAPPED DRAIN.TRAPPED
 * @param distance Distance along the line of each point where the ground's height is known (ft, m): a row or column of two values or more that rise; the first may be 0.
 * @param elevation Height of the ground at each point (ft, m), above any level you like: as many values.
 * @param inside Inside diameter (in, mm), above 0: one value, one per run between two points, or two columns (inside diameter, number of runs).
 * @param [ends] Which ends are open: "both" (blank), "start" or "end".
 * @returns Volume (gal, L).
 * @remarks A point stays full where it lies below the lowest, over the open ends, of the highest ground between it and that end. Exact for straight runs between the points; take a point at every crest and every dip. Level ground counts as drained, for water runs out of an open end as long as it has any fall: but tubing never lies that level, and every sag deeper than its bore keeps water that no survey shows. Where the ground is level take DRAIN.VOLUME for the most it can keep, and give the line a fall or blow it out. Air must get in at the crests. What clings to the wall, and what stays in heads, valves, filters and pumps, comes on top: drain those too, for water left in metal breaks it first.
 * @source Communicating vessels.
 * @errors #VALUE! for distances that do not rise, ranges of different counts, text, or an inside diameter that is not above 0.
 * @cautions pressure, compressed air, rolls and ice
 * @task how much water freezes in the dips of my line?
 * @example =IRRIG.DRAIN.TRAPPED({0;150;240;380;630}, {6;4.5;5.2;3.1;4.4}, 2.15, "US", "both")
 */
export function drainTrapped(
  distance: any[][],
  elevation: any[][],
  inside: any[][],
  units?: Units,
  ends?: OpenEnds,
): any {
  const u = readUnits(units);
  const ground = readGroundAlong(u, distance, elevation);
  return u.pipeVolume.give(
    trappedWater(
      ground.distance,
      ground.elevation,
      readRunBores(u, ground.runs, inside),
      readOptionalChoice("ends", ends, ["both", "start", "end"]) ?? "both",
    ),
  );
}

/**
 * Minutes that a line on a steady fall takes to run out.
 * @customfunction DRAIN_TIME DRAIN.TIME
 * @param inside Inside diameter (in, mm), above 0: the bore, not the nominal size; PIPE.INSIDE turns one into the other.
 * @param length Length of the line (ft, m), above 0.
 * @param fall How much lower the open end lies than the top (ft, m), above 0 and at most the length.
 * @param [opening] Diameter of the hole or valve it runs out of (in, mm), above 0 and at most the inside diameter; blank or 0: the whole end is open.
 * @param [friction] Hazen–Williams C, 50 to 200 (blank or 0: 150), or "Darcy" for Darcy–Weisbach.
 * @returns Minutes.
 * @remarks The top end must let air in. The water is a column that shortens; at every moment its fall pays for its own friction and for the jet out of the opening (discharge coefficient 0.61; none for a whole open end). Without friction it is the falling head of a tank. Starting up and the last film on the wall are left out, and dips keep their water (DRAIN.TRAPPED).
 * @source Torricelli's falling head with pipe friction, quasi-steady; friction as in PIPE.FRICTION.
 * @errors #VALUE! for a blank, text or a value that is not above 0, a fall above the length, or an opening above the inside diameter.
 * @cautions pressure, rolls and ice
 * @task how long does my line take to drain?
 * @example =IRRIG.DRAIN.TIME(1.94, 630, 12.6, "US", 0.75)
 */
export function drainTime(
  inside: any,
  length: any,
  fall: any,
  units?: Units,
  opening?: any,
  friction?: any,
): any {
  const u = readUnits(units);
  return minuteMeasure.give(
    timeToDrain({
      bore: u.diameter.read("inside", inside, above(0)),
      length: u.length.read("length", length, above(0)),
      fall: u.length.read("fall", fall, above(0)),
      opening: u.diameter.readOptional("opening", opening, above(0)),
      friction: readFriction(friction),
    }),
  );
}
