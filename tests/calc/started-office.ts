import { type ChildProcessByStdio, spawn } from "node:child_process";
import { once } from "node:events";
import { join } from "node:path";
import { createInterface } from "node:readline";
import type { Readable, Writable } from "node:stream";
import { EXTENSION, hasOffice, OFFICE_PYTHON } from "../../build/hosts/calc/office";

const SCRIPT = join(__dirname, "../../build/hosts/calc/office.py");

/** What starts before all tests and what ends after them are handed nothing else in common. */
export const shared = globalThis as { office?: ChildProcessByStdio<Writable, Readable, null> };

/**
 * Starts the office once for all tests, in a new profile in which the extension was installed by the one
 * command of the read-me; the tests' scripts find it by what the environment says.
 */
export default async function start(): Promise<void> {
  if (!hasOffice()) return;
  const office = spawn(OFFICE_PYTHON, [SCRIPT, EXTENSION], { stdio: ["pipe", "pipe", "inherit"] });
  const [pipe] = await Promise.race([
    once(createInterface(office.stdout), "line"),
    once(office, "exit").then(() => {
      throw new Error("the office did not start");
    }),
  ]);
  process.env.FIELDSUM_OFFICE = String(pipe);
  shared.office = office;
}
