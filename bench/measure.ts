/** Holds every result, so that no call can be optimised away. */
export let kept: unknown;

/**
 * How long a call takes, in microseconds: the fastest of many short runs, since everything that
 * disturbs a run on a busy machine only makes it slower.
 */
export function microseconds(call: () => unknown, milliseconds = 400): number {
  // Enough calls a run that the clock's own step does not count.
  let calls = 1;
  for (;;) {
    const elapsed = run(calls);
    if (elapsed > 0.5) break;
    calls *= 2;
  }
  let best = Infinity;
  const end = performance.now() + milliseconds;
  do {
    best = Math.min(best, run(calls) / calls);
  } while (performance.now() < end);
  return best * 1000;

  function run(times: number): number {
    const start = performance.now();
    for (let i = 0; i < times; i++) kept = call();
    return performance.now() - start;
  }
}

/** One line of the report: a ratio of two times taken in the same run, and what it should be. */
export interface Row {
  readonly what: string;
  readonly ratio: number;
  /** A bound that the ratio must keep: "at most" or "at least" it. */
  readonly target?: { readonly bound: "at most" | "at least"; readonly value: number };
  /** The two times, in words. */
  readonly times: string;
}

export type RowGroup = () => Row[] | Promise<Row[]>;

export function say(micro: number): string {
  return micro >= 1000 ? `${(micro / 1000).toPrecision(3)} ms` : `${micro.toPrecision(3)} µs`;
}

/** A row from two times. */
export function compare(
  what: string,
  [above, aboveTime]: readonly [string, number],
  [below, belowTime]: readonly [string, number],
  target?: Row["target"],
): Row {
  return {
    what,
    ratio: aboveTime / belowTime,
    target,
    times: `${above} ${say(aboveTime)}, ${below} ${say(belowTime)}`,
  };
}

export function keepsTarget({ ratio, target }: Row): boolean {
  if (target === undefined) return true;
  return target.bound === "at most" ? ratio <= target.value : ratio >= target.value;
}
