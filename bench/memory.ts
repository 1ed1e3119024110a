import { call } from "../tests/support/host";
import type { Row } from "./measure";

const CALLS = 1e6;

/** Heap in use after everything unreachable is gone, bytes. */
function heap(): number {
  if (globalThis.gc === undefined) throw new Error("the bench needs node's --expose-gc");
  globalThis.gc();
  return process.memoryUsage().heapUsed;
}

/** A different line each time, so that the memory of solved lines has something to forget. */
function calls(from: number, count: number): void {
  for (let i = from; i < from + count; i++) {
    if (i % 10 === 0) call("LATERAL.PRESSURE", 5, 50 + i * 1e-5, 5, 45, 1.7, 0.6);
    else call("PIPE.FRICTION", 50 + (i % 7), 2.067, 100 + i * 1e-3);
  }
}

/** Heap after a million calls against the heap after the first tenth of them: flat is 1. */
export function memoryRows(): Row[] {
  calls(0, CALLS / 10);
  const early = heap();
  calls(CALLS / 10, (CALLS * 9) / 10);
  const late = heap();
  const megabytes = (bytes: number) => `${(bytes / 1e6).toFixed(1)} MB`;
  return [
    {
      what: "times the heap after 100 000 calls: the heap after 1 000 000",
      ratio: late / early,
      target: { bound: "at most", value: 1.05 },
      times: `${megabytes(early)}, then ${megabytes(late)}`,
    },
  ];
}
