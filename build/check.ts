import { spawn } from "node:child_process";
import { root } from "./settings";

/** What to run before every commit, side by side: types, lint, format and the fast tests. */
const checks: readonly (readonly [name: string, command: string])[] = [
  ["types", "tsc --noEmit --incremental --tsBuildInfoFile node_modules/.cache/check.tsbuildinfo"],
  ["lint", "eslint . --cache --cache-location node_modules/.cache/eslint/"],
  ["format", "prettier --check . --cache --log-level warn"],
  ["fast tests", "jest --silent --maxWorkers=2 tests/boundary tests/formulas tests/functions"],
];

function run(command: string): Promise<{ passed: boolean; output: string }> {
  return new Promise((resolve) => {
    const child = spawn("npx", command.split(" "), { cwd: root });
    let output = "";
    child.stdout.on("data", (part: Buffer) => (output += part.toString()));
    child.stderr.on("data", (part: Buffer) => (output += part.toString()));
    child.on("error", (error) => resolve({ passed: false, output: error.message }));
    child.on("close", (code) => resolve({ passed: code === 0, output }));
  });
}

async function main(): Promise<void> {
  const started = Date.now();
  const results = await Promise.all(
    checks.map(async ([name, command]) => ({ name, ...(await run(command)) })),
  );
  for (const { name, passed, output } of results) {
    console.log(`${name}: ${passed ? "passed" : `FAILED\n${output.trim()}`}`);
    if (!passed) process.exitCode = 1;
  }
  console.log(`${((Date.now() - started) / 1000).toFixed(1)} s`);
}

void main();
