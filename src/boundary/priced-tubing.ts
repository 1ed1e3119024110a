import { InvalidInput } from "../ground/domain-error";
import type { PricedTubing } from "../solver/changeover";
import type { Cell } from "./cell";
import { readPairs } from "./discharge";
import { above } from "./limits";
import { readNumber } from "./numbers";
import type { Units } from "./units";

/** Reads sizes of tubing *(inside diameter, price per length)*, any order; gives them large to small. */
export function readPricedTubing(u: Units, cell: Cell): PricedTubing[] {
  const columns = `two columns, inside diameter (${u.diameter.unit}) and price per ${u.length.unit}`;
  const sizes = readPairs("tubing", cell, columns).map(([bore, price], i) => ({
    bore: u.diameter.readAt(`tubing row ${i + 1} inside diameter`, bore, above(0)),
    // A price per length of the call, as a price per meter.
    price: readNumber(`tubing row ${i + 1} price`, price, above(0)) / u.length.toSI(1),
  }));
  sizes.sort((a, b) => b.bore - a.bore);
  const twice = sizes.find(({ bore }, i) => i > 0 && bore === sizes[i - 1].bore);
  if (twice !== undefined) {
    throw new InvalidInput(`tubing lists the inside diameter ${u.diameter.say(twice.bore)} twice`);
  }
  return sizes;
}
