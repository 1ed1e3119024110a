import { type FrictionLaw, frictionPressureLoss } from "./friction";
import { FLOW_EXPONENT } from "./hazen-williams";
import { multipleOutletFactor } from "./multiple-outlet-factor";

/** A lateral with equal outlets at equal spacing, SI. */
export interface EqualOutlets {
  /** Flow at the inlet, m³/s. */
  readonly flow: number;
  readonly bore: number;
  /** Inlet to last outlet, m. */
  readonly length: number;
  readonly outlets: number;
  /** Distance to the first outlet as a share of the spacing. */
  readonly firstRatio: number;
  readonly friction: FrictionLaw;
}

/**
 * Pressure lost from the inlet to the last outlet, Pa, by the handbook's shortcut: friction of the
 * full flow times the multiple-outlet factor. Only a power law has a factor; for any other law the
 * segments are summed, which is what the factor stands for.
 */
export function multipleOutletLoss(line: EqualOutlets): number {
  const { flow, bore, length, outlets, firstRatio, friction } = line;
  if (friction.law === "Hazen–Williams") {
    const factor = multipleOutletFactor(outlets, FLOW_EXPONENT, firstRatio);
    return factor * frictionPressureLoss(flow, bore, length, friction);
  }
  const spacing = length / (outlets - 1 + firstRatio);
  let loss = frictionPressureLoss(flow, bore, firstRatio * spacing, friction);
  for (let i = 1; i < outlets; i++) {
    loss += frictionPressureLoss((flow * i) / outlets, bore, spacing, friction);
  }
  return loss;
}
