import * as factor from "../ground/unit-factors";
import { type EnergySource, pumpingPlantCriteria } from "../tables/pumping-plant-criteria";
import type { Cell } from "./cell";
import { readChoice } from "./choices";
import { Measure, type Units } from "./units";

const kilowattHours = new Measure("kWh", factor.KILOWATT * factor.HOUR, "SI");
const thousandCubicFeet = new Measure("1000 ft³", 1000 * factor.FOOT ** 3, "US");
const cubicMeters = new Measure("m³", 1, "SI");

const SOURCES = Object.keys(pumpingPlantCriteria) as EnergySource[];

export function readEnergySource(cell: Cell): EnergySource {
  return readChoice("source", cell, SOURCES);
}

/** What a source of energy is bought in: kWh of electricity, gallons or liters, gas by volume. */
export function energyMeasure(u: Units, source: EnergySource): Measure {
  if (source === "electric") return kilowattHours;
  if (source !== "natural gas") return u.pipeVolume;
  return u.system === "US" ? thousandCubicFeet : cubicMeters;
}
