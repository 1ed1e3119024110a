import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import process from "node:process";
import { register } from "tsx/cjs/api";
import { PluginKind, declareFactoryPlugin } from "@stryker-mutator/api/plugin";
import {
  DryRunStatus,
  TestStatus,
  determineHitLimitReached,
  toMutantRunResult,
} from "@stryker-mutator/api/test-runner";

register();
const require = createRequire(import.meta.url);
const { TestsInOneProcess, likeliestFirst, projectRoot } = require("./tests-in-one-process.ts");

// That a property fails is enough; nobody reads the smallest case of a mutant.
require("fast-check").configureGlobal({ endOnFailure: true });

/**
 * Stryker's test runner over tests-in-one-process. MUTATION_LEFT_OUT (parts of paths,
 * separated by commas) leaves out tests that a room has no need of.
 */
const FOLDERS = ["boundary", "formulas", "functions", "published", "solver", "tables"];
/**
 * A test that takes this much longer than without a mutant runs without end. Stryker would end the
 * whole process, and start another, only after the time of all tests together.
 */
const allowed = (milliseconds) => Math.ceil(2000 + 5 * milliseconds);
/** Milliseconds of a test that was not met without a mutant. */
const SLOW = 10000;
/** How long each test took without a mutant: every process of a run reads what the first wrote. */
const TIMES = join(projectRoot(), "reports", "test-times.json");
const list = (text) => (text ?? "").split(",").filter((part) => part !== "");

class OneProcessRunner {
  capabilities() {
    return { reloadEnvironment: true };
  }

  async init() {
    this.tests = await TestsInOneProcess.of(
      projectRoot(),
      FOLDERS.map((folder) => `tests/${folder}`),
      list(process.env.MUTATION_LEFT_OUT),
    );
    // What is covered counts in the first run alone, and takes most of the time.
    this.uncounted = this.tests.changed((text) =>
      text.replace(/function (stryCov_\w+)\(\) \{/g, "function $1() { return;"),
    );
  }

  async dryRun() {
    const context = instrumented();
    context.activeMutant = undefined;
    context.hitLimit = undefined;
    context.hitCount = undefined;
    context.mutantCoverage = { static: {}, perTest: {} };
    const outcomes = await this.tests.run({ onTest: (id) => (context.currentTestId = id) });
    const times = outcomes.map(({ id, milliseconds }) => [id, milliseconds]);
    mkdirSync(dirname(TIMES), { recursive: true });
    writeFileSync(TIMES, JSON.stringify(Object.fromEntries(times)));
    return {
      status: DryRunStatus.Complete,
      tests: outcomes.map(testResult),
      mutantCoverage: context.mutantCoverage,
    };
  }

  async mutantRun({ activeMutant, testFilter, disableBail, hitLimit }) {
    const context = instrumented();
    this.times ??= existsSync(TIMES) ? JSON.parse(readFileSync(TIMES, "utf8")) : {};
    context.mutantCoverage = undefined;
    context.currentTestId = undefined;
    context.activeMutant = activeMutant.id;
    // A fifth of what Stryker allows: a loop may take memory with every hit.
    context.hitLimit = hitLimit === undefined ? undefined : hitLimit / 5;
    context.hitCount = hitLimit === undefined ? undefined : 0;
    const outcomes = await this.uncounted.run({
      only: testFilter === undefined ? undefined : new Set(testFilter),
      files: likeliestFirst(this.tests.files, activeMutant.fileName),
      stopAtFailure: !disableBail,
      most: (id) => allowed(this.times[id] ?? SLOW),
    });
    context.activeMutant = undefined;
    const ranOut = outcomes.some((outcome) => outcome.ranOut);
    const stopped = ranOut
      ? { status: DryRunStatus.Timeout, reason: "runs without end" }
      : determineHitLimitReached(context.hitCount, context.hitLimit);
    const result = stopped ?? { status: DryRunStatus.Complete, tests: outcomes.map(testResult) };
    return toMutantRunResult(result, disableBail);
  }
}

const instrumented = () => (globalThis.__stryker__ ??= {});

function testResult({ id, file, milliseconds, failure }) {
  const common = { id, name: id, timeSpentMs: milliseconds, fileName: file };
  return failure === undefined
    ? { status: TestStatus.Success, ...common }
    : { status: TestStatus.Failed, failureMessage: failure, ...common };
}

const create = () => new OneProcessRunner();
create.inject = [];

export const strykerPlugins = [declareFactoryPlugin(PluginKind.TestRunner, "one-process", create)];
