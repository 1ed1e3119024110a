import { type Cell } from "../boundary/cell";
import { readUnits, type Measures } from "../boundary/units";
import { ZERO_CELSIUS } from "../ground/unit-factors";
import { vaporPressure } from "../formulas/vapor-pressure";
import { densityOfWater } from "../formulas/water-density";
import { kinematicViscosity } from "../formulas/water-viscosity";
import type { Units } from "./units";

/** Liquid at one atmosphere: 0 to 100 °C. */
function readWaterTemperature(u: Measures, temperature: Cell): number {
  const liquid = u.temperature.betweenSI(ZERO_CELSIUS, ZERO_CELSIUS + 100);
  return u.temperature.read("temperature", temperature, liquid);
}

/**
 * Kinematic viscosity of water.
 * @customfunction WATER_VISCOSITY WATER.VISCOSITY
 * @arguments water
 * @returns Kinematic viscosity (ft²/s, m²/s).
 * @remarks Dynamic viscosity by the IAPWS correlation for liquid water at 0.1 MPa, over the density by Kell (1975).
 * @source IAPWS SR6-08, Revised Supplementary Release on Properties of Liquid Water at 0.1 MPa (2011); Kell (1975), Journal of Chemical and Engineering Data 20.
 * @errors #VALUE! for a blank, a text or a temperature at which water is no liquid.
 * @task how viscous is water at this temperature?
 * @example =IRRIG.WATER.VISCOSITY(68, "US")
 */
export function waterViscosity(temperature: any, units?: Units): any {
  const u = readUnits(units);
  return u.viscosity.give(kinematicViscosity(readWaterTemperature(u, temperature)));
}

/**
 * Density of water.
 * @customfunction WATER_DENSITY WATER.DENSITY
 * @arguments water
 * @returns Density (lb/ft³, kg/m³).
 * @remarks Air-free water at one atmosphere. The other functions use one value for elevation head, 998.2 kg/m³ (20 °C).
 * @source G. S. Kell (1975), Journal of Chemical and Engineering Data 20, equation 16.
 * @errors #VALUE! for a blank, a text or a temperature at which water is no liquid.
 * @task how heavy is water at this temperature?
 * @example =IRRIG.WATER.DENSITY(68, "US")
 */
export function waterDensity(temperature: any, units?: Units): any {
  const u = readUnits(units);
  return u.density.give(densityOfWater(readWaterTemperature(u, temperature)));
}

/**
 * Vapor pressure of water: below it, water boils in a suction pipe.
 * @customfunction WATER_VAPOR WATER.VAPOR
 * @arguments water
 * @returns Vapor pressure (psi, kPa), absolute.
 * @remarks Absolute pressure, not gauge: at 212 °F it is that of the atmosphere.
 * @source IAPWS SR1-86 (1992); Wagner and Pruss (1993), Journal of Physical and Chemical Reference Data 22, equation 1.
 * @errors #VALUE! for a blank, a text or a temperature at which water is no liquid.
 * @task when does water boil in the suction?
 * @example =IRRIG.WATER.VAPOR(68, "US")
 */
export function waterVapor(temperature: any, units?: Units): any {
  const u = readUnits(units);
  return u.pressure.give(vaporPressure(readWaterTemperature(u, temperature)));
}
