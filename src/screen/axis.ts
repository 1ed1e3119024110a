import { ticks } from "d3-array";
import { formatValue } from "./number-format";

/** Where the values of a picture lie along one side of it. */
export interface Axis {
  readonly from: number;
  readonly to: number;
  at(value: number): number;
  /** The value that lies at a place. */
  valueAt(place: number): number;
  /** About so many round numbers, each with the digits that the step between them needs. */
  ticks(about: number): readonly (readonly [value: number, text: string])[];
}

export function axis(
  [low, high]: readonly [number, number],
  [from, to]: readonly [number, number],
): Axis {
  const span = high - low || 1;
  return {
    from,
    to,
    at: (value) => from + ((value - low) / span) * (to - from),
    valueAt: (place) => low + ((place - from) / (to - from)) * span,
    ticks: (about) => {
      const round = ticks(low, high, about);
      const step = round.length > 1 ? round[1] - round[0] : 1;
      const digits = Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
      const code = digits === 0 ? "#,##0" : `#,##0.${"0".repeat(digits)}`;
      return round.map((one) => [one, formatValue(one, code)]);
    },
  };
}
