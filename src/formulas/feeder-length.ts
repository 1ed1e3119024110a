/**
 * Shortest straight feeder from a hydrant at the middle of a row of positions to the near end of the
 * line in the farthest of them, by Pythagoras: half the row one way, the setback the other.
 *
 * Any one length unit. Example: 13 positions 50 ft apart, hydrant 40 ft off their ends: the last one
 * is 300 ft along, so √(300² + 40²) = 302.7 ft.
 */
export function shortestFeeder(positions: number, move: number, setback: number): number {
  return Math.hypot(((positions - 1) * move) / 2, setback);
}
