import { readAddress, readRange, writeAddress } from "./address";
import type { Page } from "./definition";
import { failed, type Look, passed, waiting, WAITING } from "./look";

/** Cells that look so while the formula, as the first of them would have it, holds. */
export interface LookRule {
  readonly range: string;
  /** Without the equals sign. */
  readonly formula: string;
  readonly look: Look;
}

/** How verdicts, and what they are about, look by what they say; the first rule that holds counts. */
export function lookRules(page: Page): LookRule[] {
  const checks = page.cells
    .filter(({ role, formula }) => (role === "check" || role === "mark") && formula !== undefined)
    .flatMap(({ at, runsOver = 1 }): LookRule[] => {
      const { row, column } = readAddress(at);
      const verdict = `$${at}`;
      const range =
        runsOver === 1 ? at : `${at}:${writeAddress({ row, column: column + runsOver - 1 })}`;
      const begins = (page.waiting ?? WAITING).map(
        (begin) => `LEFT(${verdict},${begin.length})="${begin}"`,
      );
      const isWaiting = `OR(${begins.join(",")})`;
      return [
        { range, formula: `${verdict}="OK"`, look: passed },
        { range, formula: isWaiting, look: waiting },
        {
          range,
          formula: `AND(${verdict}<>"",${verdict}<>"OK",NOT(${isWaiting}))`,
          look: failed,
        },
      ];
    });
  const marks = (page.marks ?? []).map(({ range, by }): LookRule => {
    const { row, column } = readRange(by);
    return { range, formula: `${writeAddress({ row, column })}<>"OK"`, look: failed };
  });
  return [...checks, ...marks];
}
