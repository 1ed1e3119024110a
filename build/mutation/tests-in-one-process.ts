import { build, type Plugin } from "esbuild";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join, sep } from "node:path";
import { Script } from "node:vm";

/**
 * Runs jest tests in this process, from one bundle that is compiled once. A mutant then costs as
 * much as its tests, not as a start of jest: some ten times less. Every test file gets its modules
 * anew, as under jest, so that nothing solved under one mutant is remembered under the next. It
 * knows what the tests of the inner rooms use (test, describe, each, beforeAll, jest.fn and
 * jest.spyOn, expect itself), not all of jest: `npm test` stays the judge.
 */
export interface TestOutcome {
  readonly id: string;
  readonly file: string;
  readonly milliseconds: number;
  /** Undefined when the test passed. */
  readonly failure?: string;
  /** It failed because it ran too long. */
  readonly ranOut?: boolean;
}

export interface RunOptions {
  /** Ids of the tests to run; all of them without. */
  readonly only?: ReadonlySet<string>;
  /** Files to run, in this order; all of them without. */
  readonly files?: readonly string[];
  readonly stopAtFailure?: boolean;
  /** Told of every test before it begins, and undefined after it. */
  readonly onTest?: (id: string | undefined) => void;
  /** The most milliseconds that a test may run at a stretch; without, as long as it likes. */
  readonly most?: (id: string) => number;
}

type Body = () => unknown;

interface Registered {
  readonly name: string;
  readonly body: Body;
}

interface Loaded {
  readonly tests: readonly Registered[];
  readonly before: readonly Body[];
}

/** Rewrites a module before it is bundled. */
export type Rewrite = (path: string, text: string) => string;

export class TestsInOneProcess {
  private constructor(
    private readonly root: string,
    private readonly text: string,
    readonly files: readonly string[],
  ) {
    this.script = new Script(text, { filename: "tests" });
  }

  private readonly script: Script;

  /** The same tests with the bundle's text changed. */
  changed(change: (text: string) => string): TestsInOneProcess {
    return new TestsInOneProcess(this.root, change(this.text), this.files);
  }

  static async of(
    root: string,
    folders: readonly string[],
    leftOut: readonly string[] = [],
    rewrite: Rewrite = (_, text) => text,
  ): Promise<TestsInOneProcess> {
    const files = folders
      .flatMap((folder) => readdirSync(join(root, folder)).map((file) => `${folder}/${file}`))
      .filter((file) => file.endsWith(".test.ts"))
      .filter((file) => !leftOut.some((part) => file.includes(part)))
      .sort();
    const lazily = files.map((file) => `"${file}": () => require("./${file}"),`);
    const rewriting: Plugin = {
      name: "rewriting",
      setup: ({ onLoad }) => {
        onLoad({ filter: /\.ts$/ }, ({ path }) => {
          if (path.includes("node_modules")) return undefined;
          const text = rewrite(path, readFileSync(path, "utf8"));
          const folder = JSON.stringify(dirname(path));
          return { loader: "ts", contents: text.replace(/\b__dirname\b/g, () => folder) };
        });
      },
    };
    const { outputFiles } = await build({
      stdin: {
        contents: `require("./tests/support/property-seed"); module.exports = {${lazily.join("\n")}};`,
        resolveDir: root,
        loader: "js",
      },
      absWorkingDir: root,
      bundle: true,
      write: false,
      platform: "node",
      format: "cjs",
      target: "node20",
      packages: "external",
      logLevel: "error",
      plugins: [rewriting],
    });
    const text = `(function (require, module, test, describe, beforeAll, expect, jest) {${outputFiles[0].text}\n})`;
    return new TestsInOneProcess(root, text, files);
  }

  async run(options: RunOptions = {}): Promise<TestOutcome[]> {
    const outcomes: TestOutcome[] = [];
    for (const file of options.files ?? this.files) {
      if (options.only !== undefined && !someOf(options.only, file)) continue;
      outcomes.push(...(await this.runFile(file, options)));
      if (options.stopAtFailure && outcomes[outcomes.length - 1]?.failure !== undefined) break;
    }
    return outcomes;
  }

  private async runFile(file: string, options: RunOptions): Promise<TestOutcome[]> {
    const { only, stopAtFailure, onTest = () => {} } = options;
    const outcomes: TestOutcome[] = [];
    const attempt = async (id: string, body: Body) => {
      const start = performance.now();
      let failure: string | undefined;
      let ranOut = false;
      try {
        await (options.most === undefined ? body() : callWithin(options.most(id), body));
      } catch (error) {
        failure = error instanceof Error ? (error.stack ?? error.message) : String(error);
        ranOut = (error as { code?: unknown }).code === "ERR_SCRIPT_EXECUTION_TIMEOUT";
      }
      outcomes.push({ id, file, milliseconds: performance.now() - start, failure, ranOut });
      return failure === undefined;
    };

    // What a file works out before its first test is a test of its own, which all others rest on.
    const loads = `${file} loads`;
    let tests: readonly Registered[] = [];
    onTest(loads);
    const isLoaded = await attempt(loads, async () => {
      const loaded = this.load(file);
      for (const body of loaded.before) await body();
      tests = loaded.tests;
    });
    onTest(undefined);
    if (!isLoaded) return outcomes;
    const isWhole = only === undefined || only.has(loads);
    const seen = new Map<string, number>();
    for (const { name, body } of tests) {
      const times = (seen.get(name) ?? 0) + 1;
      seen.set(name, times);
      const id = `${file} ${name}${times === 1 ? "" : ` (${times})`}`;
      if (!isWhole && !only.has(id)) continue;
      onTest(id);
      const passed = await attempt(id, body);
      onTest(undefined);
      if (!passed && stopAtFailure) break;
    }
    return outcomes;
  }

  /** Evaluates the modules anew and hands back the tests that the file registers. */
  private load(file: string): Loaded {
    const require = createRequire(join(this.root, "package.json"));
    const { bind } = require("jest-each") as { bind: (run: unknown, title?: boolean) => unknown };
    const { ModuleMocker } = require("jest-mock") as {
      ModuleMocker: new (scope: unknown) => { fn: Body; spyOn: Body };
    };
    const mocker = new ModuleMocker(globalThis);
    const tests: Registered[] = [];
    const before: Body[] = [];
    const within: string[] = [];
    const test = (name: string, body: Body) =>
      void tests.push({ name: [...within, name].join(" "), body });
    const describe = (name: string, body: Body) => {
      within.push(name);
      body();
      within.pop();
    };
    const module = { exports: {} as Record<string, Body> };
    (this.script.runInThisContext() as (...given: unknown[]) => void)(
      require,
      module,
      Object.assign(test, { each: bind(test) }),
      Object.assign(describe, { each: bind(describe, false) }),
      (body: Body) => void before.push(body),
      (require("expect") as { expect: unknown }).expect,
      { fn: mocker.fn.bind(mocker), spyOn: mocker.spyOn.bind(mocker) },
    );
    module.exports[file]();
    return { tests, before };
  }
}

const CALL = new Script("globalThis.__calledWithin()");

/** Calls a function and ends it, wherever it is, once it has run this long without a pause. */
function callWithin(milliseconds: number, body: Body): unknown {
  Object.assign(globalThis, { __calledWithin: body });
  return CALL.runInThisContext({ timeout: milliseconds });
}

function someOf(ids: ReadonlySet<string>, file: string): boolean {
  for (const id of ids) if (id.startsWith(`${file} `)) return true;
  return false;
}

/** The tests' files, those named like the source first: they are the likeliest to notice. */
export function likeliestFirst(files: readonly string[], source: string): string[] {
  const path = source.split(sep).join("/");
  const [, room = "", name = ""] = /src\/([^/]+)\/(.+)\.ts$/.exec(path) ?? [];
  const rank = (file: string): number => {
    if (file === `tests/${room}/${name}.test.ts`) return 0;
    if (file.endsWith(`/${name}.test.ts`)) return 1;
    if (file.startsWith(`tests/${room}/`)) return 2;
    return file.startsWith("tests/published/network") ? 4 : 3;
  };
  return [...files].sort((a, b) => rank(a) - rank(b));
}

/** Nearest folder upwards with a package.json: the sandbox of a mutation run, or the project. */
export function projectRoot(): string {
  let folder = process.cwd();
  while (!existsSync(join(folder, "package.json"))) folder = dirname(folder);
  return folder;
}
