import { NoAnswer } from "../ground/domain-error";
import { setsADay } from "./sets-a-day";

/** What one line does in one set. */
export interface Turn {
  /** Calendar day, 1 for the day of the first set. */
  readonly day: number;
  /** Hour of that day at which the set starts. */
  readonly hour: number;
  readonly line: number;
  readonly position: number;
}

const HOURS_A_DAY = 24;

/**
 * The rotation of some lines over the positions of a field, once round, as a worker follows it.
 *
 * Each line takes a block of neighbouring positions, so that every move is to the next one; where the
 * positions cannot be shared out evenly the first lines have one more. All lines start their sets at
 * the same hours: the first of a day at `start`, then as many whole sets as the working day holds,
 * each followed by the time to move. A working day that runs past midnight shows the calendar day
 * and hour there. Lines beyond the number of positions stay idle. Times in hours.
 */
export function rotation(
  lines: number,
  positions: number,
  set: number,
  move: number,
  workday: number,
  start: number,
): Turn[] {
  const perDay = setsADay(set, move, workday);
  if (perDay === 0) {
    throw new NoAnswer(
      `no whole set fits into a day: hours + movehours is ${set + move}, dayhours is ${workday}`,
    );
  }
  const blocks = shareOut(positions, Math.min(lines, positions));
  const turns: Turn[] = [];
  for (let turn = 0; turn < blocks[0].length; turn++) {
    const workingDay = Math.floor(turn / perDay);
    const hours = withoutDust(start + (turn % perDay) * (set + move));
    const day = workingDay + Math.floor(hours / HOURS_A_DAY) + 1;
    const hour = withoutDust(hours % HOURS_A_DAY);
    blocks.forEach((block, line) => {
      if (turn < block.length) turns.push({ day, hour, line: line + 1, position: block[turn] });
    });
  }
  return turns;
}

/** Positions 1 … n in blocks of neighbours, the first blocks one larger where it does not divide. */
export function shareOut(positions: number, lines: number): number[][] {
  const least = Math.floor(positions / lines);
  const larger = positions % lines;
  let next = 1;
  return Array.from({ length: lines }, (_, line) =>
    Array.from({ length: least + (line < larger ? 1 : 0) }, () => next++),
  );
}

/** Hours to a thousand-millionth: 3 × 1.2 is shown as 3.6, and 23.999999999999996 is midnight. */
function withoutDust(hours: number): number {
  return Math.round(hours * 1e9) / 1e9;
}
