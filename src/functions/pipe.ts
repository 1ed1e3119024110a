import { above, atLeast } from "../boundary/limits";
import { readFriction } from "../boundary/friction";
import { readUnits } from "../boundary/units";
import { frictionPressureLoss } from "../formulas/friction";

/** @customenum {string} */
enum Units {
  /** feet, inches, psi, gpm */
  US = "US",
  /** metres, millimetres, kPa, m³/h */
  SI = "SI",
}

/**
 * Pressure lost to friction in one pipe segment.
 * @customfunction PIPE_FRICTION PIPE.FRICTION
 * @param flow Flow in the segment (gpm, m³/h), 0 or more.
 * @param inside Inside diameter (in, mm), above 0: the bore, not the nominal size; PIPE.INSIDE turns one into the other.
 * @param length Length of the segment (ft, m), 0 or more.
 * @param [units] "US" (blank) or "SI".
 * @param [friction] Hazen–Williams C, 50 to 200 (blank or 0: 150, clean plastic pipe without saddles and joints; 140 allows for them), or "Darcy" for Darcy–Weisbach.
 * @returns Pressure lost (psi, kPa).
 * @remarks Hazen–Williams in the handbook form, J = 1050 (Q/C)^1.852 D^−4.87 ft per 100 ft, or Darcy–Weisbach for polyethylene (roughness 0.0015 mm, water at 20 °C; 64/Re below Re 2000, Colebrook above 4000).
 * @source USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11 (2016); Colebrook (1939), Journal of the ICE 11.
 * @errors #VALUE! for a blank, text or negative flow or length, or an inside diameter that is not above 0.
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
