import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { WORKBOOKS } from "../../build/hosts/calc/office";
import type { CellError } from "../../build/asked-workbook";
import type { UnitSystem } from "../../src/sheets/kit/definition";
import { loadWorkbooks } from "../support/open-workbook";
import { askOffice, withOffice } from "./office";

const folder = mkdtempSync(join(tmpdir(), "fieldsum-ods-"));

afterAll(() => rmSync(folder, { recursive: true, force: true }));

type Changes = Readonly<Record<string, number>>;

/** The plan, whose search takes seconds, in one system. Tables that grow, and that shrink; the last change of each is made on top of those before. */
const CASES: readonly [id: string, system: UnitSystem, changes: readonly Changes[]][] = [
  ["line-layout", "US", [{ Spacing: 40 }, { Heads: 20, Changeover: 11 }, { Heads: -3 }]],
  ["line-layout", "SI", [{ Heads: 9, Changeover: 5, Spacing: 12 }]],
  ["plan", "US", [{ Chosen: 2, NetDepth: 1.3 }]],
  ["quote", "US", [{ Heads: 12, Changeover: 12, Markup: 0.1 }, { Heads: -3 }]],
  ["quote", "SI", [{ Lines: 3, Spare: 0 }]],
  ["workshop", "US", [{ PipeLength: 300, FoldMove: 40 }]],
  ["workshop", "SI", [{ PipeC: 130, Spacing: 12 }]],
  ["spacing-what-if", "US", [{ LeastSpacing: 40, Heads: 12, Changeover: 6 }]],
  ["spacing-what-if", "SI", [{ LeastMove: 12, RotationDays: 6 }]],
  ["season", "US", [{ MoveHours: 1, DayHours: 16 }, { DayHours: 1 }]],
  ["season", "SI", [{ Pond: 9000, Running: 3 }]],
];

type Rows = readonly (readonly unknown[])[];

interface Told {
  readonly opened: Readonly<Record<string, Rows>>;
  readonly changed: readonly Readonly<Record<string, Rows>>[];
  readonly again: Readonly<Record<string, Rows>>;
  /** The cells that show an error, as opened and after each change. */
  readonly errors: readonly (readonly string[])[];
}

withOffice(
  "in the real program: Calc's own workbooks opened, changed, saved and opened again",
  async () => {
    const { openWorkbook } = loadWorkbooks();
    const wanted: Record<string, unknown>[][] = [];
    const wrong: (readonly string[])[][] = [];
    for (const [id, system, changes] of CASES) {
      const book = await openWorkbook(id, system);
      const states = [book.values()];
      const errors = [placesOf(book.errors())];
      let all: Changes = {};
      for (const one of changes) {
        all = { ...all, ...one };
        await book.set(all);
        states.push(book.values());
        errors.push(placesOf(book.errors()));
      }
      wanted.push(states);
      wrong.push(errors);
      book.close();
    }
    const cases = join(folder, "cases.json");
    writeFileSync(
      cases,
      JSON.stringify(
        CASES.map(([id, system, changes], i) => ({
          path: join(WORKBOOKS, `${id}-${system.toLowerCase()}.ods`),
          changes,
          names: Object.keys(wanted[i][0]),
        })),
      ),
    );
    const told = askOffice<Told[]>("own_workbooks_in_office.py", cases, folder);
    const differing = CASES.flatMap(([id, system], i) => {
      const { opened, changed, again, errors } = told[i];
      const states = [opened, ...changed, again];
      const expected = [...wanted[i], wanted[i][wanted[i].length - 1]];
      return [
        ...errors.flatMap((places, at) =>
          places
            .filter((place) => !wrong[i][at].includes(place.split(" ")[0]))
            .map(
              (place) =>
                `${id} ${system}, state ${at}: an error that the add-in does not show, ${place}`,
            ),
        ),
        ...states.flatMap((state, at) =>
          Object.entries(expected[at]).flatMap(([name, value]) => {
            const rows = Array.isArray(value) ? (value as Rows) : [[value]];
            return alike(rows, state[name])
              ? []
              : [
                  `${id} ${system}, state ${at}: ${name} is ${JSON.stringify(state[name]).slice(0, 300)}, in the add-in ${JSON.stringify(rows).slice(0, 300)}`,
                ];
          }),
        ),
      ];
    });
    expect(differing).toEqual([]);
  },
);

/** Cells whose formula is an error, "Line!J9"; an input outside its limits is none. */
function placesOf(errors: readonly CellError[]): string[] {
  return errors.filter(({ code }) => code !== "limits").map(({ cell }) => cell);
}

/** The same rows; an empty cell may hold an empty text, and a truth value is a number there. */
function alike(wanted: Rows, got: Rows): boolean {
  return (
    wanted.length === got.length &&
    wanted.every(
      (row, r) =>
        row.length === got[r].length && row.every((cell, c) => alikeCells(cell, got[r][c])),
    )
  );
}

function alikeCells(wanted: unknown, got: unknown): boolean {
  if (typeof got === "object" && got !== null && "error" in got) return got.error === wanted;
  if (wanted === null || wanted === "") return got === null || got === "";
  const number = typeof wanted === "boolean" ? Number(wanted) : wanted;
  if (typeof number === "number" && typeof got === "number") {
    return Math.abs(got - number) <= 1e-9 * Math.max(Math.abs(number), 1e-9);
  }
  return number === got;
}
