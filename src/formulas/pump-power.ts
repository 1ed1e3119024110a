import { WATER_WEIGHT } from "../ground/constants";

/**
 * Power that a flow (m³/s) raised by a head (m) takes up, W: ρgQH. In gallons a minute and feet
 * this is the handbooks' QH/3960 water horsepower.
 */
export function waterPower(flow: number, head: number): number {
  return WATER_WEIGHT * flow * head;
}

/** Power at the pump's shaft, W: water power over the pump's efficiency. */
export function shaftPower(flow: number, head: number, efficiency: number): number {
  return waterPower(flow, head) / efficiency;
}
