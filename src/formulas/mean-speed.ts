/**
 * Mean speed of water in a full round pipe, by continuity: V = Q/A = 4Q/πD².
 *
 * In gallons a minute, inches and feet a second this is the handbook's V = 0.4085 Q/D².
 * Example: 50 gpm in a 2.067 in bore runs at 4.78 ft/s.
 */
export function boreArea(bore: number): number {
  return (Math.PI / 4) * bore ** 2;
}

/** Mean speed, m/s, of a flow (m³/s) in a bore (m). */
export function meanSpeed(flow: number, bore: number): number {
  return flow / boreArea(bore);
}

/** Flow, m³/s, at a mean speed (m/s) in a bore (m). */
export function flowAtSpeed(speed: number, bore: number): number {
  return speed * boreArea(bore);
}
