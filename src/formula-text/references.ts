import { readFormula, type Term } from "./formula";

/** What a formula reads: cells of a page (its own unless named), and names. */
export interface References {
  readonly ranges: readonly { readonly page?: string; readonly range: string }[];
  readonly names: readonly string[];
}

/** A formula that cannot be read refers to nothing. */
export function referencesOf(formula: string): References {
  const ranges: { page?: string; range: string }[] = [];
  const names: string[] = [];
  const walk = (term: Term | undefined): void => {
    switch (term?.kind) {
      case "range":
        ranges.push({ range: term.range, ...(term.page !== undefined && { page: term.page }) });
        return;
      case "name":
        names.push(term.name);
        return;
      case "table":
        term.rows.flat().forEach(walk);
        return;
      case "operation":
        walk(term.left);
        walk(term.right);
        return;
      case "negative":
      case "percent":
        walk(term.of);
        return;
      case "call":
        // A function of the user's own is a name too.
        names.push(term.name);
        term.arguments.forEach(walk);
        return;
    }
  };
  try {
    walk(readFormula(formula));
  } catch {
    return { ranges: [], names: [] };
  }
  return { ranges, names };
}
