import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
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
 * A test file that takes this much longer than without a mutant runs without end. Stryker would end
 * the whole process, and start another, only after the time of all tests together.
 */
const allowed = (milliseconds) => 3000 + 4 * milliseconds;
/** How long each test file took without a mutant: every process of a run reads what the first wrote. */
const TIMES = join(projectRoot(), "test-times.json");
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
    const times = {};
    for (const { file, milliseconds } of outcomes) {
      times[file] = (times[file] ?? 0) + milliseconds;
    }
    writeFileSync(TIMES, JSON.stringify(times));
    return {
      status: DryRunStatus.Complete,
      tests: outcomes.map(testResult),
      mutantCoverage: context.mutantCoverage,
    };
  }

  async mutantRun({ activeMutant, testFilter, disableBail, hitLimit }) {
    const context = instrumented();
    const watch = new Watch();
    this.times ??= existsSync(TIMES) ? JSON.parse(readFileSync(TIMES, "utf8")) : {};
    context.mutantCoverage = watch.coverage;
    context.currentTestId = undefined;
    context.activeMutant = activeMutant.id;
    context.hitLimit = hitLimit;
    context.hitCount = hitLimit === undefined ? undefined : 0;
    const outcomes = await this.tests.run({
      only: testFilter === undefined ? undefined : new Set(testFilter),
      files: likeliestFirst(this.tests.files, activeMutant.fileName),
      stopAtFailure: !disableBail,
      onFile: (file) => watch.begin(allowed(this.times[file] ?? Infinity)),
    });
    context.activeMutant = undefined;
    const stopped = watch.ranOut ?? determineHitLimitReached(context.hitCount, context.hitLimit);
    const result = stopped ?? { status: DryRunStatus.Complete, tests: outcomes.map(testResult) };
    return toMutantRunResult(result, disableBail);
  }
}

/** Every instrumented place asks for the coverage that it adds to, and so passes by here. */
class Watch {
  ranOut = undefined;
  #passed = 0;
  #end = Infinity;

  begin(milliseconds) {
    this.#end = performance.now() + milliseconds;
  }

  coverage = Object.defineProperty({ perTest: {} }, "static", {
    get: () => {
      if (++this.#passed % 1024 === 0 && performance.now() > this.#end) {
        this.ranOut = { status: DryRunStatus.Timeout, reason: "runs without end" };
        throw new Error("Stryker: runs without end");
      }
      return {};
    },
  });
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
