import type { LinkedCell } from "./precedents";

/** A cell that is in error, or an input outside what it allows. */
export interface Wrong {
  readonly linked: LinkedCell;
  /** The cell that the error comes from, where it is not the cause itself. */
  readonly follows?: LinkedCell;
}

/** Causes before what follows from them, each kind in the order given. */
export function causesFirst(wrong: readonly LinkedCell[]): Wrong[] {
  const all = new Set(wrong);
  const behind = new Map(wrong.map((linked) => [linked, wrongBehind(linked, all)]));
  const isCause = (linked: LinkedCell) => behind.get(linked)?.length === 0;
  const causes = wrong.filter(isCause).map((linked) => ({ linked }));
  const consequences = wrong
    .filter((linked) => !isCause(linked))
    .map((linked) => {
      const found = behind.get(linked) ?? [];
      return { linked, follows: found.find(isCause) ?? found[0] };
    });
  return [...causes, ...consequences];
}

/** The wrong cells among all that a cell's formula reads, however far back. */
function wrongBehind(linked: LinkedCell, wrong: ReadonlySet<LinkedCell>): readonly LinkedCell[] {
  const seen = new Set([linked]);
  const waiting = [linked];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    for (const other of next.precedents) {
      if (seen.has(other)) continue;
      seen.add(other);
      waiting.push(other);
    }
  }
  seen.delete(linked);
  return [...seen].filter((other) => wrong.has(other));
}
