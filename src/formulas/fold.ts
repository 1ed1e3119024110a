import { InvalidInput } from "../ground/domain-error";
import { exactParts } from "./whole-parts";

/** More rows than this are no field test. */
export const MOST_STEPS_A_MOVE = 500;

/**
 * Depths between two positions of a line, from the catch of one: the line's catch across it, laid
 * over itself at every move.
 *
 * The cans stand a `step` apart in a row across the line, as many on one side as on the other, with
 * the middle can at the line. Place r (0 at the line, then a step farther each) gets the catch of
 * every can that lies a whole number of moves away from it. No water is lost: the sum over the
 * places is the sum over the cans.
 */
export function foldCatch(catches: readonly number[], step: number, move: number): number[] {
  if (catches.length % 2 === 0) {
    throw new InvalidInput(
      `catch must hold an odd number of cans, with the line at the middle one; got ${catches.length}`,
    );
  }
  const stepsAMove = exactParts(move, step);
  if (stepsAMove === undefined || stepsAMove === 0) {
    throw new InvalidInput(
      `move must be a whole number of steps; got a move of ${move} and a step of ${step}`,
    );
  }
  if (stepsAMove > MOST_STEPS_A_MOVE) {
    throw new InvalidInput(
      `move must be at most ${MOST_STEPS_A_MOVE} steps; got ${stepsAMove} (${move} ÷ ${step})`,
    );
  }
  const folded = new Array<number>(stepsAMove).fill(0);
  const middle = (catches.length - 1) / 2;
  catches.forEach((depth, i) => {
    // JavaScript's remainder keeps the sign; a place is counted from the line onwards.
    const place = (((i - middle) % stepsAMove) + stepsAMove) % stepsAMove;
    folded[place] += depth;
  });
  return folded;
}
