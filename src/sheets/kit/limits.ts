import { quoted } from "../../formula-text/quoted";
import type { Allowed } from "./definition";

/** What an input allows, in words: "a whole number from 1 to 60". */
export function limitText(allowed: Allowed): string {
  const blank = allowed.optional === true ? ", or blank" : "";
  if ("text" in allowed) return `text${blank}`;
  if ("list" in allowed) {
    const some = allowed.list.length > 6 ? [...allowed.list.slice(0, 4), "…"] : allowed.list;
    return `one of the list: ${some.join(", ")}${blank}`;
  }
  const kind = allowed.whole === true ? "a whole number" : "a number";
  const most = allowed.atMost === undefined ? "" : `, at most ${allowed.atMost.words}`;
  const text = allowed.orText === undefined ? "" : `, or ${allowed.orText}`;
  return `${kind} from ${allowed.low} to ${allowed.high}${most}${text}${blank}`;
}

type CellContent = string | number | boolean | null;

/**
 * What is wrong with a value, or undefined: the sentence that the workbook's own formula gives. The
 * other inputs are read by name, where a limit depends on one.
 */
export function faultOf(
  label: string,
  allowed: Allowed,
  value: CellContent,
  valueOf: (name: string) => CellContent,
): string | undefined {
  const isBlank = value === null || value === "";
  if (isBlank ? allowed.optional === true : holds(allowed, value, valueOf)) return undefined;
  return `${label} must be ${limitText(allowed)}; got ${isBlank ? "a blank" : String(value)}.`;
}

function holds(
  allowed: Allowed,
  value: string | number | boolean,
  valueOf: (name: string) => CellContent,
): boolean {
  if ("text" in allowed) return true;
  if ("list" in allowed) {
    return allowed.list.some((choice) => choice.toLowerCase() === String(value).toLowerCase());
  }
  if (typeof value !== "number") {
    return String(value).toLowerCase() === allowed.orText?.toLowerCase();
  }
  const { low, high, whole, atMost } = allowed;
  const most = atMost === undefined ? high : valueOf(atMost.name);
  return (
    value >= low &&
    value <= high &&
    (whole !== true || Number.isInteger(value)) &&
    // What is no number has a fault of its own.
    (typeof most !== "number" || value <= most)
  );
}

/**
 * A piece of formula that is "OK" or a sentence naming the input, what came and what is allowed. An
 * error in the input is a fault too: nothing is judged from it.
 */
export function limitFormula(label: string, at: string, allowed: Allowed): string {
  const says = (what: string) =>
    `"${quoted(`${label} must be ${what}`)}; got "&IF(${at}="", "a blank", ${at})&"."`;
  const wrong = says(limitText(allowed));
  const judged = `IF(${condition(at, allowed)}, "OK", ${wrong})`;
  const blank = allowed.optional === true ? `IF(${at}="", "OK", ${judged})` : judged;
  return `IF(ISERROR(${at}), "${quoted(label)} holds an error value.", ${blank})`;
}

/** True where the cell holds what is allowed; false for a blank. */
function condition(at: string, allowed: Allowed): string {
  if ("text" in allowed) return `${at}<>""`;
  if ("list" in allowed) {
    if (allowed.knownBy !== undefined) {
      const known = allowed.knownBy.replace(/\$/g, () => at);
      // An entry that is surely known tells whether the function itself is there: without the add-in
      // its error goes on, and is not taken for a wrong input.
      const sure = allowed.knownBy.replace(/\$/g, () => `"${quoted(allowed.list[0])}"`);
      return `IF(${at}="", FALSE, IF(ISERROR(${sure}), ${sure}, NOT(ISERROR(${known}))))`;
    }
    // A truth value is no text: it is compared as what it is, and as its name.
    const each = allowed.list.flatMap((choice) => [
      `${at}="${quoted(choice)}"`,
      ...(choice === "TRUE" || choice === "FALSE" ? [`${at}=${choice}`] : []),
    ]);
    return `IF(${at}="", FALSE, OR(${each.join(", ")}))`;
  }
  const tests = [
    `${at}>=${allowed.low}`,
    `${at}<=${allowed.high}`,
    ...(allowed.whole === true ? [`${at}=INT(${at})`] : []),
    ...(allowed.atMost === undefined ? [] : [`${at}<=${allowed.atMost.name}`]),
  ];
  const number = `IF(ISNUMBER(${at}), AND(${tests.join(", ")}), FALSE)`;
  return allowed.orText === undefined ? number : `OR(${at}="${quoted(allowed.orText)}", ${number})`;
}
