import { InvalidInput } from "../ground/domain-error";
import { type ConversionUnit, QUANTITIES, type Quantity } from "../tables/conversion-units";
import { type Cell, describe, isBlank, single } from "./cell";

/** Two units of one quantity. */
export interface Conversion {
  readonly from: ConversionUnit;
  readonly to: ConversionUnit;
}

interface NamedUnit {
  readonly quantity: Quantity;
  readonly unit: ConversionUnit;
}

/** Reads the two units of a conversion; units of two quantities are refused, both named. */
export function readConversion(from: Cell, to: Cell): Conversion {
  const source = readUnit("from", from);
  const target = readUnit("to", to);
  if (source.quantity !== target.quantity) {
    throw new InvalidInput(
      `from and to must be of one quantity; ${source.unit.symbol} is ${source.quantity.name}, ` +
        `${target.unit.symbol} is ${target.quantity.name}`,
    );
  }
  return { from: source.unit, to: target.unit };
}

/** "ft²", "ft2", "ft^2"; "acre-in", "acre in"; "° F", "F". Case is kept. */
function plain(text: string): string {
  return text
    .replace(/²/g, "2")
    .replace(/³/g, "3")
    .replace(/[\s\-_.^°·]+/g, "");
}

const exact = new Map<string, NamedUnit>();
const anyCase = new Map<string, Set<NamedUnit>>();
for (const quantity of QUANTITIES) {
  for (const unit of quantity.units) {
    const named = { quantity, unit };
    for (const spelling of [unit.symbol, ...unit.aliases].map(plain)) {
      exact.set(spelling, named);
      const lower = spelling.toLowerCase();
      anyCase.set(lower, (anyCase.get(lower) ?? new Set()).add(named));
    }
  }
}

/** "mPa" and "mW" are spelt with care, and mean a thousandth: they are not MPa and MW. */
function isMilliForMega(spelling: string, { unit }: NamedUnit): boolean {
  return (
    spelling.startsWith("m") && unit.symbol.startsWith("M") && spelling !== spelling.toLowerCase()
  );
}

/**
 * The unit as spelt; failing that, in any case, where that leaves one unit only: mL and ML are told
 * apart, and GPM is gpm.
 */
function readUnit(name: string, cell: Cell): NamedUnit {
  const value = single(name, cell);
  if (isBlank(value) || value === 0) {
    throw new InvalidInput(`${name} is missing: it must be one of ${everyUnit()}`);
  }
  const spelling = typeof value === "string" ? plain(value) : "";
  const same = exact.get(spelling);
  if (same !== undefined) return same;
  const similar = [...(anyCase.get(spelling.toLowerCase()) ?? [])].filter(
    (candidate) => !isMilliForMega(spelling, candidate),
  );
  if (similar.length === 1) return similar[0];
  if (similar.length > 1) {
    const symbols = similar.map(({ unit }) => unit.symbol).join(" or ");
    throw new InvalidInput(`${name} could be ${symbols}; got ${describe(value)}`);
  }
  throw new InvalidInput(
    `${name} has the unknown unit ${describe(value)}. It must be one of ${everyUnit()}`,
  );
}

function everyUnit(): string {
  return QUANTITIES.map(
    ({ name, units }) => `${name}: ${units.map(({ symbol }) => symbol).join(", ")}`,
  ).join("; ");
}
