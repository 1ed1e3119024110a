import { type Token, tokens } from "../../src/formula-text/dialect";
import { quotedSheet } from "../../src/sheets/kit/reference";

/** Where the parenthesis that opens at `open` is closed. */
export function closing(all: readonly Token[], open: number): number {
  let depth = 0;
  for (let i = open; i < all.length; i++) {
    if (all[i].kind === "open") depth++;
    if (all[i].kind === "close" && --depth === 0) return i;
  }
  throw new Error("a parenthesis is not closed");
}

/** A formula that is moved off `page`: its cells are called by that page. */
export function movedOff(page: string, all: readonly Token[]): string {
  return all
    .map(({ kind, text }, i) => {
      const isCell = kind === "name" && /^\$?[A-Z]{1,3}\$?\d+$/i.test(text);
      const [before, next] = [all[i - 1]?.text, all[i + 1]?.text];
      if (!isCell || next === "(" || before === "!") return text;
      // The second corner of a range needs no page.
      return before === ":" ? text : `${quotedSheet(page)}!${text}`;
    })
    .join("");
}

/**
 * The formula with its calls replaced, those inside first. `by` gives what stands for a call, or
 * undefined where it stays.
 */
export function withCallsReplaced(
  formula: string,
  by: (name: string, parts: readonly string[]) => string | undefined,
): string {
  const all = tokens(formula);
  let text = "";
  for (let i = 0; i < all.length; i++) {
    if (all[i].kind !== "name" || all[i + 1]?.text !== "(") {
      text += all[i].text;
      continue;
    }
    const close = closing(all, i + 1);
    const parts = partsOf(all.slice(i + 2, close)).map((part) => withCallsReplaced(part, by));
    const call = by(
      all[i].text.toUpperCase(),
      parts.map((part) => part.trim()),
    );
    text += call ?? `${all[i].text}(${parts.join(",")})`;
    i = close;
  }
  return text;
}

function partsOf(all: readonly Token[]): string[] {
  const parts = [""];
  let depth = 0;
  for (const { kind, text } of all) {
    if (kind === "open") depth++;
    if (kind === "close") depth--;
    if (depth === 0 && kind === "comma") parts.push("");
    else parts[parts.length - 1] += text;
  }
  return parts;
}
