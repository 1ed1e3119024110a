import type { CellValue } from "../screen/host";
import { writesComma } from "../words/spoken";

/** One comma and nothing that could be a point. */
const ONE_COMMA = /^[-+]?\d*,\d+$/;
/** "1,500" may be fifteen hundred or one and a half; "0,175" and "1500,5" may not. */
const TWO_READINGS = /^[-+]?[1-9]\d{0,2},\d{3}$/;
/** More than one comma, or one and a point, each in its place: they part thousands. */
const THOUSANDS = /^[-+]?[1-9]\d{0,2}(,\d{3})+$|^[-+]?[1-9]\d{0,2}(,\d{3})+\.\d*$/;
const LOOKS_LIKE_A_NUMBER = /^[-+]?[\d.,' ]*,[\d.,' ]*$/;

/**
 * A number where it reads as one in one way only; anything else is handed on as text, for the
 * functions to judge. A comma that can be a decimal mark alone is one.
 */
export function readTyped(text: string): CellValue {
  const trimmed = text.trim();
  if (trimmed === "") return null;
  const number = Number(trimmed.includes(",") ? plainSpelling(trimmed) : trimmed);
  return Number.isFinite(number) ? number : trimmed;
}

/** Without commas, where they can be read in one way; NaN's spelling where not. */
function plainSpelling(text: string): string {
  if (TWO_READINGS.test(text) && !writesComma()) return "none";
  if (ONE_COMMA.test(text)) return text.replace(",", ".");
  return THOUSANDS.test(text) ? text.replace(/,/g, "") : "none";
}

/** How to write a number that its commas leave in doubt; undefined for anything else. */
export function commaFault(value: CellValue): string | undefined {
  if (typeof value !== "string" || !/\d/.test(value)) return undefined;
  const text = value.trim();
  if (!LOOKS_LIKE_A_NUMBER.test(text) || typeof readTyped(text) === "number") return undefined;
  if (TWO_READINGS.test(text))
    return `"${text}" can be read in two ways: type ${text.replace(",", "")} or ${text.replace(",", ".")}.`;
  return `"${text}" is not read as a number: type its digits with a point before the decimals and no other mark, as in 1234.5.`;
}
