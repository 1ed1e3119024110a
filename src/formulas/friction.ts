import { WATER_WEIGHT } from "../ground/constants";
import { darcyWeisbach } from "./darcy-weisbach";
import { hazenWilliams } from "./hazen-williams";

/** Head lost per length of pipe, m per m, by a flow (m³/s, above 0) through a bore (m). */
export type HeadGradient = (flow: number, bore: number) => number;

/**
 * Which friction law a pipe follows: an argument everywhere, so that a check can bring its own
 * ("given": another form or other constants).
 */
export type FrictionLaw =
  | { readonly law: "Hazen–Williams"; readonly c: number }
  | { readonly law: "Darcy" }
  | { readonly law: "given"; readonly gradient: HeadGradient };

/** Head lost to friction, m. */
export function frictionHeadLoss(
  flow: number,
  bore: number,
  length: number,
  friction: FrictionLaw,
): number {
  switch (friction.law) {
    case "Hazen–Williams":
      return hazenWilliams(flow, bore, length, friction.c);
    case "Darcy":
      return darcyWeisbach(flow, bore, length);
    case "given":
      return flow === 0 ? 0 : friction.gradient(flow, bore) * length;
  }
}

/** Pressure lost to friction, Pa. */
export function frictionPressureLoss(
  flow: number,
  bore: number,
  length: number,
  friction: FrictionLaw,
): number {
  return WATER_WEIGHT * frictionHeadLoss(flow, bore, length, friction);
}
