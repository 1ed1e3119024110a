import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { runInNewContext } from "node:vm";
import ts from "typescript";
import { RUNTIME_FILE } from "../../build/hosts/python";
import { readProgram } from "../../build/hosts/python/program";
import { Refusal } from "../../build/hosts/python/refusal";
import { Translator } from "../../build/hosts/python/translate";

const folder = mkdtempSync(join(tmpdir(), "fieldsum-python-"));

afterAll(() => rmSync(folder, { recursive: true, force: true }));

function translated(source: string): string {
  const file = join(folder, "program.ts");
  writeFileSync(file, source);
  const runtime = readFileSync(RUNTIME_FILE, "utf8");
  const names = [...runtime.matchAll(/^(?:def |class )?(_\w+)/gm)].map(([, name]) => name);
  return `${runtime}\n${new Translator(readProgram(file), new Set(names)).translate()}\n`;
}

/** Lists asked and written to at places that are there, beyond the end, before the start and between. */
const PLACES = `
class Steps {
  private at = 0;
  private readonly seen: number[] = [];
  constructor(readonly list: number[]) {}
  take(place: number, value: number): void { this.list[place] = value; this.at += 1; this.seen[this.at] = value; }
  back(place: number): number { return this.list[place - 1] ?? -7; }
  last(): number { return this.seen[this.at] + (this.seen[this.at + 1] ?? 100); }
}
function sum(list: readonly number[], from: number): number {
  let all = 0;
  for (let i = from; i < list.length; i++) all += list[i] * (i + 1);
  return all;
}
function peaks(list: readonly number[]): number {
  return list.filter((_, i) => list[i] > list[i + 1] && !(list[i] < list[i - 1])).length;
}
function between(list: readonly number[], place: number): number { return list[place] ?? -5; }
function whole(list: readonly number[], place: number): number { return list[place] * 2; }
function shared(a: number, b: number): number { return (a + 1) / b; }
export function answers(): unknown[] {
  const steps = new Steps([1, 2]);
  for (let i = 0; i < 6; i++) steps.take(i, i * i);
  const grown: number[] = [];
  for (let i = 3; i >= 0; i--) grown[3 - i] = i;
  let next = 0;
  grown[next++] = 9;
  const { back }: { back: number } = { back: 0.5 };
  const [first, second, third] = [4, 5] as readonly number[];
  return [
    steps.list, steps.back(0), steps.back(3), steps.last(), back, sum([1, 2, 3], 1), sum([1, 2], 5),
    peaks([1, 3, 2, 5]), between([1, 2], -1), between([1, 2], 0.5), between([1, 2], 1),
    Number.isNaN(whole([1], 4)), whole([1, 2], 1), grown, next, first, second, third === undefined,
    shared(1, 0), shared(-1, -0) !== shared(-1, -0), shared(3, 2),
  ];
}
`;

test("lists give in Python what they give in the language, wherever they are asked and written to", () => {
  const module = { exports: {} as { answers?: () => unknown[] } };
  const script = ts.transpile(PLACES, {
    module: ts.ModuleKind.CommonJS,
    target: ts.ScriptTarget.ES2022,
  });
  runInNewContext(script, { module, exports: module.exports });
  const wanted = JSON.stringify(module.exports.answers?.(), (_, value: unknown) =>
    value === Infinity ? "inf" : value,
  );
  const python = join(folder, "program.py");
  writeFileSync(
    python,
    `${translated(PLACES)}
print(json.dumps(["inf" if one == math.inf else one for one in answers()]))
`,
  );
  const got = execFileSync("python3", [python], { encoding: "utf8" });
  expect(JSON.parse(got)).toEqual(JSON.parse(wanted));
});

test.each([
  ["a generator", "export function* some() { yield 1; }"],
  ["a function that waits", "export async function some() { await 1; }"],
  ["a method that is not known", "export const some = [1].copyWithin(0, 1);"],
  ["a name that is not known", "export const some = new WeakMap();"],
  ["a sum of what may be text or a number", "export const f = (a: any, b: any) => a + b;"],
  ["a label", "export function f() { one: for (;;) { continue one; } }"],
  ["deleting", "export function f(a: { b?: number }) { delete a.b; }"],
])("the translator refuses %s", (_, source) => {
  expect(() => translated(source)).toThrow(Refusal);
});
