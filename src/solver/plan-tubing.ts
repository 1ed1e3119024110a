import type { PlanPipe } from "./plan-problem";

/** A line in one size of tubing or two: what an installer can keep apart. */
export interface TubingChoice {
  /** Index of the size that begins at the inlet. */
  readonly larger: number;
  /** Index of the size behind it; that of the larger where there is one size only. */
  readonly smaller: number;
  /** Segments in the larger; all of them where there is one size only. */
  readonly change: number;
  /** Of a whole line. */
  readonly price: number;
}

/** Every way to lay a line in at most two sizes, the larger nearer the inlet. */
export function tubingChoices(
  sizes: readonly PlanPipe[],
  segmentLength: readonly number[],
): TubingChoice[] {
  const count = segmentLength.length;
  const lengthOf = [0];
  for (const length of segmentLength) lengthOf.push(lengthOf[lengthOf.length - 1] + length);
  const total = lengthOf[count];
  const choices: TubingChoice[] = [];
  for (let larger = 0; larger < sizes.length; larger++) {
    const { price } = sizes[larger];
    choices.push({ larger, smaller: larger, change: count, price: price * total });
    for (let smaller = larger + 1; smaller < sizes.length; smaller++) {
      for (let change = 1; change < count; change++) {
        const near = lengthOf[change];
        choices.push({
          larger,
          smaller,
          change,
          price: price * near + sizes[smaller].price * (total - near),
        });
      }
    }
  }
  return choices;
}

/** How many there are. */
export function countTubingChoices(sizes: number, segments: number): number {
  return sizes + ((sizes * (sizes - 1)) / 2) * (segments - 1);
}

export function boresOf(
  choice: TubingChoice,
  sizes: readonly PlanPipe[],
  segments: number,
): number[] {
  const bores = new Array<number>(segments).fill(sizes[choice.larger].bore);
  return bores.fill(sizes[choice.smaller].bore, choice.change);
}

/** Of two choices that cost the same: fewer sizes first, then more of the larger. */
export function compareTubing(a: TubingChoice, b: TubingChoice): number {
  const sizes = ({ larger, smaller }: TubingChoice) => (larger === smaller ? 1 : 2);
  return (
    sizes(a) - sizes(b) ||
    a.larger - b.larger ||
    b.change - a.change ||
    // The larger of two behind the same.
    a.smaller - b.smaller
  );
}
