import { WATER_WEIGHT } from "./constants";
import { darcyWeisbach } from "./darcy-weisbach";
import { hazenWilliams } from "./hazen-williams";

/** Which friction law a pipe follows: an argument everywhere, so that a check can bring its own. */
export type FrictionLaw =
  { readonly law: "Hazen–Williams"; readonly c: number } | { readonly law: "Darcy" };

/** Head lost to friction, m. */
export function frictionHeadLoss(
  flow: number,
  bore: number,
  length: number,
  friction: FrictionLaw,
): number {
  return friction.law === "Darcy"
    ? darcyWeisbach(flow, bore, length)
    : hazenWilliams(flow, bore, length, friction.c);
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
