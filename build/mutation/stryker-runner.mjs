import { createRequire } from "node:module";
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
const { TestsInOneProcess, likeliestFirst, projectRoot } = createRequire(import.meta.url)(
  "./tests-in-one-process.ts",
);

/**
 * Stryker's test runner over tests-in-one-process. MUTATION_LEFT_OUT (parts of paths,
 * separated by commas) leaves out tests that a room has no need of.
 */
const FOLDERS = ["boundary", "formulas", "functions", "published", "solver", "tables"];
/** How many times as often as unmutated a mutant may be met before it counts as running without end. */
const MOST_HITS = 20;
/** Stryker's own factor, which takes minutes where a search is met millions of times. */
const STRYKERS_HITS = 100;
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
  }

  async dryRun() {
    const context = instrumented();
    context.activeMutant = undefined;
    context.hitLimit = undefined;
    context.hitCount = undefined;
    context.mutantCoverage = { static: {}, perTest: {} };
    const outcomes = await this.tests.run({ onTest: (id) => (context.currentTestId = id) });
    return {
      status: DryRunStatus.Complete,
      tests: outcomes.map(testResult),
      mutantCoverage: context.mutantCoverage,
    };
  }

  async mutantRun({ activeMutant, testFilter, disableBail, hitLimit }) {
    const context = instrumented();
    context.mutantCoverage = undefined;
    context.currentTestId = undefined;
    context.activeMutant = activeMutant.id;
    const most = hitLimit === undefined ? undefined : (hitLimit / STRYKERS_HITS) * MOST_HITS + 1e5;
    context.hitLimit = most;
    context.hitCount = most === undefined ? undefined : 0;
    const outcomes = await this.tests.run({
      only: testFilter === undefined ? undefined : new Set(testFilter),
      files: likeliestFirst(this.tests.files, activeMutant.fileName),
      stopAtFailure: !disableBail,
    });
    context.activeMutant = undefined;
    const stopped = determineHitLimitReached(context.hitCount, context.hitLimit);
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
