import { InvalidInput } from "../ground/domain-error";
import type { Cell } from "./cell";
import { readPairs } from "./discharge";
import { above } from "./limits";
import { checked } from "./numbers";

/** The lowest and the highest pressure of a chart *(pressure, flow)*, in whatever unit it is in. */
export function readChartRange(cell: Cell): { lowest: number; highest: number } {
  const pressures = readPairs("chart", cell, "two columns, pressure and flow").map(
    ([pressure, flow], i) => {
      checked(`chart row ${i + 1} flow`, flow, above(0));
      return checked(`chart row ${i + 1} pressure`, pressure, above(0));
    },
  );
  if (pressures.length < 2) {
    throw new InvalidInput("chart must have at least 2 rows, so that it has a range; got 1");
  }
  return { lowest: Math.min(...pressures), highest: Math.max(...pressures) };
}
