import { NoAnswer } from "../ground/domain-error";
import { type FrictionLaw, frictionPressureLoss } from "./friction";
import { meanSpeed } from "./mean-speed";

/** What a pipe must carry, and what it may cost in pressure and speed, SI. */
export interface PipeDuty {
  readonly flow: number;
  readonly length: number;
  readonly friction: FrictionLaw;
  readonly greatestLoss: number;
  readonly greatestSpeed: number;
}

/** A pipe that only just meets a limit passes, though the last bit of its loss was rounded up. */
const ROUNDING = 1e-9;

/**
 * The place in a list of bores (m, any order) of the smallest that keeps within the loss and the
 * speed. Loss and speed both fall as the bore grows, so every larger one passes too.
 */
export function smallestPipe(bores: readonly number[], duty: PipeDuty): number {
  let smallest = -1;
  bores.forEach((bore, place) => {
    if (passes(bore, duty) && (smallest < 0 || bore < bores[smallest])) smallest = place;
  });
  if (smallest < 0) throw new NoAnswer(refusal(Math.max(...bores), duty));
  return smallest;
}

function passes(bore: number, duty: PipeDuty): boolean {
  return !tooFast(bore, duty) && !losesTooMuch(bore, duty);
}

function tooFast(bore: number, { flow, greatestSpeed }: PipeDuty): boolean {
  return meanSpeed(flow, bore) > greatestSpeed * (1 + ROUNDING);
}

function losesTooMuch(bore: number, { flow, length, friction, greatestLoss }: PipeDuty): boolean {
  return frictionPressureLoss(flow, bore, length, friction) > greatestLoss * (1 + ROUNDING);
}

function refusal(largest: number, duty: PipeDuty): string {
  const reasons = [
    ...(losesTooMuch(largest, duty) ? ["loses more than maxloss"] : []),
    ...(tooFast(largest, duty) ? ["runs faster than maxvelocity"] : []),
  ];
  return (
    `no pipe in insides is large enough: even the largest ${reasons.join(" and ")}; ` +
    "list larger pipe or carry less flow in it"
  );
}
