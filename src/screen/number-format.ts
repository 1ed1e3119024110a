import { spokenLocale } from "../words/spoken";
import type { CellValue } from "./host";

/**
 * What a cell shows of a value: the plain codes that the ready-made sheets use (digits after the
 * point, thousands, percent, text after the number); anything else shows the number as it is.
 */
export function formatValue(value: CellValue, code?: string): string {
  if (value === null) return "";
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  if (typeof value === "string") return value;
  return formatNumber(value, code);
}

function formatNumber(value: number, code?: string): string {
  const plain = code?.split(";")[0].replace(/"[^"]*"|\\./g, "");
  const match = plain === undefined ? null : /^[^0#]*([#,0]*)(?:\.([0#]+))?(%?)/.exec(plain);
  if (code === undefined || match === null || !/[0#]/.test(plain ?? "")) return general(value);
  const [, whole, digits = "", percent] = match;
  return (
    formatter(whole.includes(","), digits.replace(/#/g, "").length, digits.length)
      .format(percent === "%" ? value * 100 : value)
      .replace(/^-(?=[0.,]*$)/, "") + percent
  );
}

/** Making one takes longer than a hundred numbers put into words by it, and pages know few. */
const formatters = new Map<string, Intl.NumberFormat>();

function formatter(useGrouping: boolean, least: number, most: number): Intl.NumberFormat {
  const locale = spokenLocale();
  const key = `${locale} ${useGrouping} ${least} ${most}`;
  let known = formatters.get(key);
  if (known === undefined) {
    known = new Intl.NumberFormat(locale, {
      useGrouping,
      minimumFractionDigits: least,
      maximumFractionDigits: most,
    });
    formatters.set(key, known);
  }
  return known;
}

/** A result of a function, before a cell gives it a format: six digits compare by eye, and a table still fits. */
export function formatResult(value: CellValue): string {
  return typeof value === "number"
    ? writtenNumber(Number(value.toPrecision(6)))
    : formatValue(value);
}

/** As many digits as a cell of usual width shows. */
function general(value: number): string {
  return writtenNumber(Number(value.toPrecision(10)));
}

/** With all its digits, and the decimal sign of the page's language. */
export function writtenNumber(value: number): string {
  const plain = String(value);
  const locale = spokenLocale();
  return locale === "en-US" || plain.includes("e")
    ? plain
    : value.toLocaleString(locale, { maximumFractionDigits: 20, useGrouping: false });
}
