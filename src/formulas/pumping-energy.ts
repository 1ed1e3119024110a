import { type EnergySource, pumpingPlantCriteria } from "../tables/pumping-plant-criteria";
import { waterPower } from "./pump-power";

/**
 * Energy (J) or fuel (m³) to pump a flow (m³/s) against a head (m) for a time (s), by a plant that
 * does `performance` times as well as the published criterion for its source of energy.
 *
 * Example: 600 gpm against 208.6 ft are 31.6 water horsepower, 2.53 gal of diesel an hour at the
 * criterion of 12.5 whp·h a gallon.
 */
export function pumpingEnergy(
  flow: number,
  head: number,
  time: number,
  source: EnergySource,
  performance: number,
): number {
  return (waterPower(flow, head) * time) / (pumpingPlantCriteria[source] * performance);
}
