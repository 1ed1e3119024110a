/** How a quantity spreads over the heads of a line. */
export interface Spread {
  readonly lowest: number;
  /** Index of the first head that has the lowest value. */
  readonly lowestAt: number;
  readonly highest: number;
  readonly highestAt: number;
  readonly average: number;
  /** (highest − lowest) / average; not a number where the average is 0. */
  readonly variation: number;
}

export function spreadOf(values: readonly number[]): Spread {
  let lowestAt = 0;
  let highestAt = 0;
  let sum = 0;
  for (let i = 0; i < values.length; i++) {
    if (values[i] < values[lowestAt]) lowestAt = i;
    if (values[i] > values[highestAt]) highestAt = i;
    sum += values[i];
  }
  const lowest = values[lowestAt];
  const highest = values[highestAt];
  const average = sum / values.length;
  return {
    lowest,
    lowestAt,
    highest,
    highestAt,
    average,
    variation: (highest - lowest) / average,
  };
}
