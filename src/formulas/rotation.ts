import { NoAnswer } from "../ground/domain-error";
import { daysASet, HOURS_A_DAY, setsADay } from "./sets-a-day";

/** What one line does in one set. */
export interface Turn {
  /** Calendar day, 1 for the day of the first set. */
  readonly day: number;
  /** Hour of that day at which the set starts. */
  readonly hour: number;
  readonly line: number;
  readonly position: number;
}

const DAYS_A_WEEK = 7;

/** How a field is gone round. Times in hours. */
export interface Round {
  readonly lines: number;
  readonly positions: number;
  readonly set: number;
  /** To drain, move and start again. */
  readonly move: number;
  /** Hours of a day for sets and moves. */
  readonly workday: number;
  /** Hour of the first set of a day. */
  readonly start: number;
  /** Each line goes through its block from the last position to the first. */
  readonly back: boolean;
  /** Days of a week without a move, at its end. */
  readonly daysOff: number;
}

/**
 * The rotation of some lines over the positions of a field, once round, as a worker follows it.
 *
 * Each line takes a block of neighboring positions, so that every move is to the next one; where the
 * positions cannot be shared out evenly the first lines have one more. Going back, the next time
 * round begins where this one ended. All lines start their sets at the same hours: the first of a
 * day at `start`, then as many whole sets as the working day holds, each followed by the time to
 * move; a set that takes days starts at `start` and the next one that many working days later. A
 * working day that runs past midnight shows the calendar day and hour there. Weeks count from the
 * first day. Lines beyond the number of positions stay idle.
 */
export function rotation(round: Round): Turn[] {
  const { lines, positions, set, move, workday, start, back, daysOff } = round;
  const perDay = setsADay(set, move, workday);
  if (perDay === 0) {
    throw new NoAnswer(
      `no whole set fits into a day: hours + movehours is ${set + move}, dayhours is ${workday}; ` +
        `give dayhours ${HOURS_A_DAY} where a set runs on unattended`,
    );
  }
  const daysEach = daysASet(set, move);
  const setsEach = Math.max(1, perDay);
  const workingDays = DAYS_A_WEEK - daysOff;
  const blocks = shareOut(positions, Math.min(lines, positions));
  const turns: Turn[] = [];
  blocks[0].forEach((_, turn) => {
    const worked = Math.floor(turn / setsEach) * daysEach;
    const weekends = Math.floor(worked / workingDays) * daysOff;
    const hours = withoutDust(start + (turn % setsEach) * (set + move));
    const day = worked + weekends + Math.floor(hours / HOURS_A_DAY) + 1;
    const hour = withoutDust(hours % HOURS_A_DAY);
    blocks.forEach((block, line) => {
      if (turn >= block.length) return;
      const position = block[back ? block.length - 1 - turn : turn];
      turns.push({ day, hour, line: line + 1, position });
    });
  });
  return turns;
}

/** Positions 1 … n in blocks of neighbors, the first blocks one larger where it does not divide. */
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
