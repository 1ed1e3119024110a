import { readAddress, writeAddress } from "../../sheets/kit/address";
import type { Page, UnitSystem } from "../../sheets/kit/definition";
import { type Content, type Contents, isFormula } from "./changes";
import { type Input, inputsOf } from "./inputs";

/** Converts a number from one of the trade's units to another, as UNIT.CONVERT names them. */
export type Convert = (value: number, from: string, to: string) => number | undefined;

export interface Converted {
  /** The same plan in the other units: every input of it. */
  readonly contents: Contents;
  /** What stays behind, by what it is called. */
  readonly left: readonly string[];
}

/** Digits that a converted number keeps: enough to come back as it was. */
const DIGITS = 10;

/**
 * The whole of a plan in the other units, sample and typed: half of one field in the other's units
 * would be a field that nobody has. Formulas and cells of the user's own stay behind, for what their
 * numbers mean is not known.
 */
export function convertPlan(
  from: { readonly pages: readonly Page[]; readonly contents: Contents },
  to: { readonly pages: readonly Page[]; readonly system: UnitSystem },
  convert: Convert,
): Converted {
  const targets = new Map(inputsOf(to.pages).map((input) => [input.called, input]));
  const contents = new Map<string, Content>();
  const left: string[] = [];
  const inputs = inputsOf(from.pages);
  for (const input of inputs) {
    const target = targets.get(input.called);
    const given = from.contents.get(input.key);
    const ready = readyContent(input);
    const content = given === undefined ? ready : given;
    if (target === undefined || isFormula(content)) {
      left.push(input.called);
      continue;
    }
    if (input.cell.name === "Units") continue;
    const unit = unitOf(from.pages, input);
    const value =
      typeof content === "number" && unit !== undefined
        ? inOther(content, unit, to.system, convert)
        : content;
    if (value === undefined) left.push(input.called);
    else if (value !== readyContent(target)) contents.set(target.key, value);
  }
  const known = new Set(inputs.map(({ key }) => key));
  left.push(...[...from.contents.keys()].filter((key) => !known.has(key)));
  return { contents, left };
}

function readyContent({ cell }: Input): Content {
  if (cell.formula !== undefined) return { formula: cell.formula };
  const { value = null } = cell;
  return typeof value === "string" ? value.replace(/^'/, "") : value;
}

/** A quantity's units in the two systems; per unit for a price. */
interface Unit {
  readonly US: string;
  readonly SI: string;
  readonly isPrice: boolean;
}

function inOther(
  value: number,
  unit: Unit,
  system: UnitSystem,
  convert: Convert,
): number | undefined {
  const [from, to] = system === "SI" ? [unit.US, unit.SI] : [unit.SI, unit.US];
  const other = unit.isPrice ? priceIn(value, from, to, convert) : convert(value, from, to);
  return other === undefined ? undefined : Number(other.toPrecision(DIGITS));
}

/** A price per foot is that many feet to the meter dearer per meter. */
function priceIn(price: number, from: string, to: string, convert: Convert): number | undefined {
  const old = amountOf(from);
  const other = amountOf(to);
  const inOld = convert(other.count, other.unit, old.unit);
  return inOld === undefined ? undefined : (price / old.count) * inOld;
}

/** "per 1000 gal" */
function amountOf(unit: string): { readonly count: number; readonly unit: string } {
  const [, count = "1", name = unit] = /^(?:per )?(?:(\d+) )?(.+)$/.exec(unit) ?? [];
  return { count: Number(count), unit: name };
}

const EITHER = /IF\(Units="SI",\s*"([^"]+)",\s*"([^"]+)"\)/;

/** The unit beside an input, or in the header over its column; undefined where it is the same in both. */
export function unitOf(pages: readonly Page[], { page, cell }: Input): Unit | undefined {
  const cells = new Map(
    pages.find(({ name }) => name === page)?.cells.map((one) => [one.at, one]) ?? [],
  );
  const { row, column } = readAddress(cell.at);
  const beside = cells.get(writeAddress({ row, column: column + 1 }));
  let says = beside?.role === "unit" ? String(beside.formula ?? beside.value ?? "") : undefined;
  let label = cell.label ?? "";
  for (let above = row - 1; says === undefined && above >= 0; above--) {
    const over = cells.get(writeAddress({ row: above, column }));
    if (over === undefined) break;
    if (over.role === "header") {
      says = String(over.formula ?? over.value ?? "");
      label = says;
    }
  }
  const [, si, us] = EITHER.exec(says ?? "") ?? [];
  if (si === undefined) return undefined;
  const isPrice = us.startsWith("per ") || /\bprice\b.*\bper\b/i.test(label);
  return { US: us, SI: si, isPrice };
}
