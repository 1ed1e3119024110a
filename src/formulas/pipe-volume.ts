import { boreArea } from "./mean-speed";

/**
 * Water held by a full round pipe, m³: πD²/4 times its length (both m).
 *
 * In gallons, inches and feet this is the handbook's 4.08 D² per 100 ft.
 * Example: 100 ft of a 2 in bore holds 16.32 gal.
 */
export function volumeOfPipe(bore: number, length: number): number {
  return boreArea(bore) * length;
}
