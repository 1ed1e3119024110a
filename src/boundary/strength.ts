import { InvalidInput } from "../ground/domain-error";
import { ZERO_CELSIUS } from "../ground/unit-factors";
import { GREATEST_DESIGN_STRESS, PIPE_MATERIALS } from "../tables/pipe-materials";
import type { PipeSeries } from "../tables/pipe-sizes";
import { type Cell, isBlank, single } from "./cell";
import { readChoice } from "./choices";
import { above } from "./limits";
import type { Units } from "./units";

/** Design stress, and the series that a blank one means. */
export interface Strength {
  readonly designStress: number;
  readonly usualSeries: PipeSeries;
}

/** A number is the design stress in psi or kPa; a text is a material. */
export function readStrength(u: Units, cell: Cell): Strength {
  const value = single("strength", cell);
  const names = Object.keys(PIPE_MATERIALS) as (keyof typeof PIPE_MATERIALS)[];
  if (typeof value === "string" && !isBlank(value)) {
    const { designStress, metric } = PIPE_MATERIALS[readChoice("strength", value, names)];
    return { designStress, usualSeries: metric ? "ISO PE" : "IPS PE" };
  }
  if (isBlank(value)) {
    throw new InvalidInput(
      `strength is missing: it must be the design stress in ${u.pressure.unit}, or one of ${names.join(", ")}`,
    );
  }
  const greatest = GREATEST_DESIGN_STRESS[u.system];
  const designStress = u.pressure.read("strength", value, above(0));
  if (designStress > u.pressure.toSI(greatest)) {
    throw new InvalidInput(
      `strength must be the design stress, at most ${greatest} ${u.pressure.unit}; got ${String(value)}, ` +
        "which is a hydrostatic design basis or a minimum required strength: " +
        "halve a basis (a few materials take more), divide an MRS by 1.25, or name the material",
    );
  }
  return { designStress, usualSeries: u.system === "SI" ? "ISO PE" : "IPS PE" };
}

/**
 * Temperature of a pipe's wall, undefined when blank. The bounds only catch slips of unit: above its
 * table a factor has no answer, and at any cold, a blank handed over as 0 included, nothing is taken
 * off.
 */
export function readWallTemperature(u: Units, cell: Cell): number | undefined {
  const limit = u.temperature.betweenSI(ZERO_CELSIUS - 50, ZERO_CELSIUS + 200);
  return u.temperature.readOptional("temperature", cell, limit);
}
