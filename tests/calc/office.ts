import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { EXTENSION, hasOffice, OFFICE_PYTHON } from "../../build/hosts/calc/office";

const isThere = hasOffice();

/** A test in the real program, where it is there. Without it this is said, and nothing of it is claimed. */
export function withOffice(name: string, run: () => void | Promise<void>): void {
  if (isThere) test(name, async () => run());
  else console.log(`no LibreOffice here: ${name}`);
}

/** How often a script is run: once in a while the way to the office breaks, and a second run has it whole. */
const TRIES = 2;

/** What a script beside the tests finds in the office with the extension, as it prints it. */
export function askOffice<Told>(script: string, ...given: readonly string[]): Told {
  for (let tried = 1; ; tried++) {
    const { status, signal, stdout, stderr } = spawnSync(
      OFFICE_PYTHON,
      [join(__dirname, script), EXTENSION, ...given],
      { encoding: "utf8", stdio: ["ignore", "pipe", "pipe"], maxBuffer: 1 << 28 },
    );
    if (status === 0) return JSON.parse(stdout) as Told;
    const why = `${script} ended with ${status ?? signal}: ${stderr}`;
    if (tried === TRIES) throw new Error(why);
    console.log(why);
  }
}
