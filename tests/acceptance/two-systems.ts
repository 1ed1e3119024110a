import { callNumber } from "../support/host";

/** A sheet's unit system, and how a number that was noted in US units gets into it. */
export interface System {
  readonly units: "US" | "SI";
  /** A number typed into the sheet: as noted, or turned into the other unit by UNIT.CONVERT. */
  typed(value: number, us: string, si: string): number;
  /** A result of the sheet, brought back to the US unit, so that two sheets can be compared. */
  inUS(value: number, us: string, si: string): number;
}

const us: System = { units: "US", typed: (value) => value, inUS: (value) => value };

const si: System = {
  units: "SI",
  typed: (value, from, to) => callNumber("UNIT.CONVERT", value, from, to),
  inUS: (value, to, from) => callNumber("UNIT.CONVERT", value, from, to),
};

export const systems: readonly System[] = [us, si];

/** Every number of one sheet beside that of the other, within what the conversions round. */
export function expectSame(
  one: Readonly<Record<string, number>>,
  other: Readonly<Record<string, number>>,
): void {
  expect(Object.keys(one)).toEqual(Object.keys(other));
  for (const [name, value] of Object.entries(one)) {
    const allowed = 1e-6 * Math.abs(value);
    if (!(Math.abs((other[name] as number) - value) <= allowed)) {
      throw new Error(`${name}: ${value} in one system, ${String(other[name])} in the other`);
    }
  }
}

/** Verdicts without their numbers, which each system says in its own unit. */
export function inWords(verdicts: Readonly<Record<string, unknown>>): Record<string, string> {
  return Object.fromEntries(
    Object.entries(verdicts).map(([name, verdict]) => [
      name,
      String(verdict).replace(/[\d.]+(?=[; ]|\. )/g, "#"),
    ]),
  );
}
