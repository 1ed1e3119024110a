import { existsSync } from "node:fs";
import { join, relative, sep } from "node:path";
import ts from "typescript";
import { likeliestFirst, TestsInOneProcess } from "./mutation/tests-in-one-process";
import { root } from "./settings";

/**
 * Mutation testing of numbers, which Stryker leaves alone: every numeric literal of formulas,
 * solver and tables is raised by 1 %, one at a time, and a test has to notice.
 *
 *     npm run mutate:constants -- [part of a path …]
 *
 * MUTATION_LEFT_OUT (parts of paths, separated by commas) leaves out tests. Exit code 1 when a
 * number can change unnoticed.
 */
const ROOMS = ["src/formulas", "src/solver", "src/tables"];
const TESTS = ["boundary", "formulas", "functions", "published", "solver", "tables"];

/** How far a number is moved; places in a list, 0 and 1 are left alone. */
const RAISE = 1.01;

interface Constant {
  readonly file: string;
  readonly line: number;
  readonly text: string;
}

const list = (text = "") => text.split(",").filter((part) => part !== "");

/** Puts a call round every number of a source, so that one bundle holds all mutants. */
export function watched(file: string, text: string, found: Constant[]): string {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
  const pieces: string[] = [];
  let done = 0;
  const visit = (node: ts.Node): void => {
    if (ts.isTypeNode(node)) return;
    if (ts.isNumericLiteral(node)) {
      const isKey = ts.isPropertyAssignment(node.parent) && node.parent.name === node;
      if (!isKey && !isPlace(node)) {
        const at = node.getStart();
        const { line } = source.getLineAndCharacterOfPosition(at);
        const call = `__constant(${found.length}, ${node.text})`;
        pieces.push(text.slice(done, at), call);
        done = node.getEnd();
        found.push({ file, line: line + 1, text: node.parent.getText().slice(0, 60) });
      }
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return pieces.join("") + text.slice(done);
}

/** Places in a list, and the 0 and 1 of counting, are hardly ever quantities. */
function isPlace(node: ts.NumericLiteral): boolean {
  const { parent } = node;
  if (ts.isElementAccessExpression(parent)) return true;
  return node.text === "0" || node.text === "1";
}

async function main(): Promise<void> {
  const wanted = process.argv.slice(2);
  const constants: Constant[] = [];
  const tests = await TestsInOneProcess.of(
    root,
    TESTS.map((folder) => `tests/${folder}`).filter((folder) => existsSync(join(root, folder))),
    list(process.env.MUTATION_LEFT_OUT),
    (path, text) => {
      const file = relative(root, path).split(sep).join("/");
      if (!ROOMS.some((room) => file.startsWith(`${room}/`))) return text;
      return watched(file, text, constants);
    },
  );
  const state = { active: -1, met: new Set<number>() };
  Object.assign(globalThis, {
    __constant: (number: number, value: number) => {
      if (state.active === -1) state.met.add(number);
      return number === state.active ? value * RAISE : value;
    },
  });

  const metBy = new Map<string, ReadonlySet<number>>();
  for (const file of tests.files) {
    state.met = new Set();
    const failed = (await tests.run({ files: [file] })).find(({ failure }) => failure);
    if (failed) throw new Error(`fails with every number as it stands: ${failed.failure}`);
    metBy.set(file, state.met);
  }

  const perFile = new Map<string, { killed: number; all: number }>();
  let survivors = 0;
  for (const [number, { file, line, text }] of constants.entries()) {
    if (wanted.length > 0 && !wanted.some((part) => file.includes(part))) continue;
    const files = likeliestFirst(tests.files, file).filter((test) => metBy.get(test)?.has(number));
    state.active = number;
    const outcomes = await tests.run({ files, stopAtFailure: true });
    state.active = -1;
    const killed = outcomes.some(({ failure }) => failure !== undefined);
    const sum = perFile.get(file) ?? { killed: 0, all: 0 };
    perFile.set(file, { killed: sum.killed + (killed ? 1 : 0), all: sum.all + 1 });
    if (!killed) {
      survivors++;
      console.log(`${file}:${line} ${text.replace(/\s+/g, " ")}`);
    }
  }
  for (const [file, { killed, all }] of perFile) console.log(`${killed}/${all} ${file}`);
  console.log(`${survivors} numbers can change unnoticed`);
  if (survivors > 0) process.exitCode = 1;
}

if (require.main === module) void main();
