import { WATER_WEIGHT } from "../ground/constants";
import { standardAtmosphere } from "./standard-atmosphere";
import { vaporPressure } from "./vapor-pressure";

/**
 * Net positive suction head available at a pump that draws from open water, m:
 *
 *     NPSHa = (p_air − p_vapor)/ρg − lift − loss
 *
 * `lift` is from the water up to the pump (negative when the water stands above it), `loss` the
 * friction of the suction side. The definition is that of ANSI/HI 9.6.1. Below 0 the water would
 * boil before it reaches the pump. The weight of water is that of 20 °C throughout, which takes
 * the air's head a little low in warmer water: 1% at 50 °C, to the safe side.
 */
export function netPositiveSuctionHead(
  lift: number,
  loss: number,
  temperature: number,
  altitude: number,
): number {
  const air = standardAtmosphere(altitude) - vaporPressure(temperature);
  return air / WATER_WEIGHT - lift - loss;
}
