import { etReference } from "../src/functions/et";
import { pipeFriction } from "../src/functions/pipe";
import { compare, microseconds, type Row } from "./measure";

/**
 * A year of daily weather at 40° north as a sheet would hold it, made up of smooth curves: one
 * ET.REFERENCE cell a day.
 */
const DAYS = 365;

interface Day {
  readonly tmin: number;
  readonly tmax: number;
  readonly dewpoint: number;
  readonly wind: number;
  readonly radiation: number;
  readonly day: number;
}

/** °F, mph and MJ/m² a day; the swing of the year peaks in late July, the sun's in late June. */
const year: readonly Day[] = Array.from({ length: DAYS }, (_, i) => {
  const day = i + 1;
  const season = Math.cos((2 * Math.PI * (day - 205)) / DAYS);
  const sun = Math.cos((2 * Math.PI * (day - 172)) / DAYS);
  return {
    tmin: 42 + 22 * season,
    tmax: 64 + 25 * season,
    dewpoint: 40 + 20 * season,
    wind: 6 + (day % 5),
    radiation: 16 + 8 * sun,
    day,
  };
});

/** Computes the column once and gives the year's sum, inches, so that nothing is optimised away. */
function column(): number {
  let sum = 0;
  for (const { tmin, tmax, dewpoint, wind, radiation, day } of year) {
    sum += etReference(tmin, tmax, dewpoint, wind, radiation, 40, 900, day) as number;
  }
  return sum;
}

export function etRows(): Row[] {
  const day = microseconds(column) / DAYS;
  const friction = microseconds(() => pipeFriction(50, 2.067, 100) as number);
  return [
    compare(
      "times a PIPE.FRICTION: an ET.REFERENCE in a column of 365 days",
      ["day", day],
      ["friction", friction],
    ),
  ];
}
