import { parseArgs } from "node:util";
import { isMainThread, Worker, workerData } from "node:worker_threads";
import { builtReference, runBuiltFunctions } from "../support/built";
import { Chance } from "../support/chance";
import { faultOf, outcomeOfCall, samplesOf } from "../support/samples";
import { hostile } from "./hostile";

/**
 * Calls every function of the built script with hostile arguments: each result must be finite, each
 * error the host's own with a message, and no call may take long or forever. The same seed, the same
 * calls. They are made in a thread of their own, so that one that never returns can be told.
 */
const { values } = parseArgs({
  options: {
    calls: { type: "string", default: "100000" },
    seed: { type: "string", default: "1" },
    /** Only this function, by name. */
    only: { type: "string" },
    /** Milliseconds of processor time above which a call fails the run. */
    limit: { type: "string", default: "500" },
  },
});
/** A cell that waits longer than this is noticed; in milliseconds. */
const AIM = 50;
/** Seconds without a call's end after which it is taken to hang. */
const PATIENCE = 30;
/** Bytes of a call that are kept to name it by. */
const ROOM = 1500;
/** The number of a call before the first. */
const BEFORE = -1;

/** What the two threads share: the number of the call under way, and its text. */
interface Progress {
  readonly number: Int32Array;
  readonly text: Uint8Array;
}

const shown = (cells: readonly unknown[]) =>
  JSON.stringify(cells, (_, value: unknown) =>
    typeof value === "number" && !Number.isFinite(value) ? String(value) : (value ?? null),
  );

function callAll(progress: Progress): void {
  const calls = Number(values.calls);
  const limit = Number(values.limit);
  const chance = new Chance(Number(values.seed));
  const functions = runBuiltFunctions();
  const samples = samplesOf(builtReference().functions).filter(
    ({ help }) => values.only === undefined || help.name === values.only,
  );
  if (!(calls > 0) || samples.length === 0) throw new Error("there is nothing to call");
  const faults: string[] = [];
  let answered = 0;
  let refused = 0;
  let slowest = { milliseconds: 0, call: "" };
  let overAim = 0;
  for (let i = 0; i < calls; i++) {
    const { help, cells } = samples[i % samples.length];
    const given = help.arguments.map((argument, place) => hostile(chance, cells[place], argument));
    const call = `${help.name} ${shown(given)}`;
    new TextEncoder().encodeInto(call.slice(0, ROOM / 3).padEnd(ROOM / 3), progress.text);
    Atomics.store(progress.number, 0, i);
    // Processor time, for a busy machine must not blame a function for waiting.
    const started = process.cpuUsage();
    let fault: string | undefined;
    try {
      const outcome = outcomeOfCall(() => functions.get(help.id)?.(...given));
      fault = faultOf(outcome, help.spills);
      if (outcome.error === undefined) answered++;
      else refused++;
    } catch (error) {
      fault = `throws ${String(error)}`;
    }
    const { user, system } = process.cpuUsage(started);
    const milliseconds = (user + system) / 1000;
    if (milliseconds > AIM) overAim++;
    if (milliseconds > slowest.milliseconds) {
      slowest = { milliseconds, call };
    }
    if (milliseconds > limit) fault ??= `takes ${milliseconds.toFixed(0)} ms`;
    if (fault !== undefined) faults.push(`${help.name} ${fault}\n  ${shown(given).slice(0, 1500)}`);
    if (faults.length >= 20) break;
  }

  console.log(
    `seed ${values.seed}: ${answered} answered, ${refused} refused, ${faults.length} faults`,
  );
  console.log(
    `${overAim} of them took over ${AIM} ms; the slowest ${slowest.milliseconds.toFixed(1)} ms:`,
  );
  console.log(`  ${slowest.call.slice(0, 600)}`);
  if (faults.length > 0) {
    console.error(faults.join("\n"));
    process.exitCode = 1;
  }
}

function watch(progress: Progress, worker: Worker): void {
  let last = BEFORE;
  let since = 0;
  const timer = setInterval(() => {
    const now = Atomics.load(progress.number, 0);
    // Still at its preparations.
    if (now === BEFORE) return;
    since = now === last ? since + 1 : 0;
    last = now;
    if (since < PATIENCE) return;
    console.error(
      `call ${now} does not end:\n  ${new TextDecoder().decode(progress.text.slice()).trim()}`,
    );
    process.exitCode = 1;
    void worker.terminate();
  }, 1000);
  worker.on("exit", (code) => {
    clearInterval(timer);
    if (code !== 0) process.exitCode = 1;
  });
}

if (isMainThread) {
  const progress: Progress = {
    number: new Int32Array(new SharedArrayBuffer(4)).fill(BEFORE),
    text: new Uint8Array(new SharedArrayBuffer(ROOM)),
  };
  // A thread does not inherit the loader of TypeScript.
  const start = `require("tsx/cjs"); require(${JSON.stringify(__filename)});`;
  const options = { eval: true, argv: process.argv.slice(2), workerData: progress };
  watch(progress, new Worker(start, options));
} else {
  callAll(workerData as Progress);
}
