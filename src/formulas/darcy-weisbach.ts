import { GRAVITY } from "../ground/constants";

/**
 * Darcy–Weisbach friction: h = f (L/D) V²/2g, for water at 20 °C in polyethylene.
 *
 * The friction factor is 64/Re below Re 2000 (Hagen–Poiseuille), Colebrook's (1939)
 *
 *     1/√f = −2 log₁₀(ε/3.7D + 2.51/(Re √f))
 *
 * above Re 4000, and a straight line between the two ends across the transition, where no formula
 * is trusted and a smooth, rising loss is what a solver needs.
 */

/** Roughness of polyethylene, m: 0.0015 mm, drawn tubing in the Moody (1944) chart. */
export const POLYETHYLENE_ROUGHNESS = 1.5e-6;

/** Kinematic viscosity of water at 20 °C, m²/s (IAPWS, 101.325 kPa: 1.0034 mm²/s). */
export const VISCOSITY_20C = 1.0034e-6;

const LAMINAR_END = 2000;
const TURBULENT_START = 4000;

export function reynoldsNumber(flow: number, bore: number, viscosity = VISCOSITY_20C): number {
  return (4 * flow) / (Math.PI * bore * viscosity);
}

/** Darcy friction factor for a Reynolds number and a relative roughness ε/D. */
export function frictionFactor(reynolds: number, relativeRoughness: number): number {
  if (reynolds <= LAMINAR_END) return 64 / reynolds;
  if (reynolds >= TURBULENT_START) return colebrook(reynolds, relativeRoughness);
  const laminar = 64 / LAMINAR_END;
  const turbulent = colebrook(TURBULENT_START, relativeRoughness);
  const share = (reynolds - LAMINAR_END) / (TURBULENT_START - LAMINAR_END);
  return laminar + share * (turbulent - laminar);
}

/** Colebrook's equation by Newton's method on x = 1/√f: quadratic, three or four steps from Haaland. */
function colebrook(reynolds: number, relativeRoughness: number): number {
  const rough = relativeRoughness / 3.7;
  const smooth = 2.51 / reynolds;
  // Haaland's explicit form (1983) starts within 2 % of the answer.
  let x = -1.8 * Math.log10(rough ** 1.11 + 6.9 / reynolds);
  for (let step = 0; step < 8; step++) {
    const inside = rough + smooth * x;
    const residual = x + 2 * Math.log10(inside);
    const slope = 1 + (2 * smooth) / (Math.LN10 * inside);
    const next = x - residual / slope;
    if (Math.abs(next - x) <= 1e-14 * Math.abs(next)) return 1 / next ** 2;
    x = next;
  }
  return 1 / x ** 2;
}

/**
 * How steeply the factor follows the Reynolds number, d ln f / d ln Re: what Newton's method in a
 * solved line needs. `factor` is frictionFactor's own answer for the same two numbers.
 */
export function frictionFactorElasticity(
  reynolds: number,
  relativeRoughness: number,
  factor: number,
): number {
  if (reynolds <= LAMINAR_END) return -1;
  if (reynolds < TURBULENT_START) {
    // On the straight line f = a + b·Re it is b·Re/f.
    const laminar = 64 / LAMINAR_END;
    const rise = (factor - laminar) / (reynolds - LAMINAR_END);
    return (rise * reynolds) / factor;
  }
  // Colebrook's equation differentiated: with x = 1/√f, −2t/(1 + t).
  const x = 1 / Math.sqrt(factor);
  const smooth = 2.51 / reynolds;
  const t = (2 * smooth) / (Math.LN10 * (relativeRoughness / 3.7 + smooth * x));
  return (-2 * t) / (1 + t);
}

/** Head lost, m, at a friction factor: h = f (L/D) V²/2g. */
export function headLossAtFactor(
  factor: number,
  flow: number,
  bore: number,
  length: number,
): number {
  const speed = (4 * flow) / (Math.PI * bore ** 2);
  return (factor * length * speed ** 2) / (bore * 2 * GRAVITY);
}

/** Head lost to friction, m, by a flow (m³/s) through a bore (m) over a length (m). */
export function darcyWeisbach(flow: number, bore: number, length: number): number {
  if (flow === 0) return 0;
  const factor = frictionFactor(reynoldsNumber(flow, bore), POLYETHYLENE_ROUGHNESS / bore);
  return headLossAtFactor(factor, flow, bore, length);
}
