/**
 * Time, s, to change the water in a line: its volume (m³) times the number of changes over the
 * flow (m³/s). Plug flow; example: 40 gal at 8 gpm take 5 minutes for one change.
 */
export function timeToFlush(flow: number, volume: number, changes: number): number {
  return (volume * changes) / flow;
}
