import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { EXTENSION, hasOffice, OFFICE_PYTHON } from "../build/hosts/calc/office";

import { compare, type Row, say } from "./measure";
import { networkLine } from "./solver";

const MILLISECONDS_A_LINE = 0.4;

/** Each as a column of cells; SET.TIME does next to nothing, so that its cell is the way there and back. */
const CASES = {
  native: { formula: "=4.52*({row}+Z$1)^1.852/(150^1.852*2.067^4.87)*100", cells: {}, count: 500 },
  bridge: { formula: "=IRRIG.SET.TIME(1.5+{row}/1000+Z$1;0.18;0.75)", cells: {}, count: 500 },
  friction: { formula: "=IRRIG.PIPE.FRICTION({row}+Z$1;2.067;100)", cells: {}, count: 500 },
  // A new inlet in every cell and at every turn, so that no line is known.
  line: {
    formula: `=IRRIG.LATERAL.FLOW(55+{row}/100000+Z$1;50;40;3.5;${networkLine.coefficient};"US";0;;150;0;1.64)`,
    cells: {},
    count: 25,
  },
  lineOfRanges: {
    formula: "=IRRIG.LATERAL.FLOW(55+{row}/100000+Z$1;50;T$1;T$4:U$5;W$4:X$6;T$2;V$1;;V$2;W$1;W$2)",
    count: 25,
    cells: {
      T1: [[40]],
      T2: [["US"]],
      V1: [[10]],
      V2: [[150]],
      W1: [[0]],
      W2: [[1.5]],
      T4: [
        [3.5, 25],
        [3, 25],
      ],
      W4: [
        [35, 3.7],
        [45, 4.2],
        [55, 4.6],
      ],
    },
  },
} as const;

/** What a cell costs in the real Calc, its extension built before (`npm run calc`). */
export function calcRows(): Row[] {
  if (!hasOffice()) {
    console.log("no LibreOffice here: the cost of a cell in Calc was not measured");
    return [];
  }
  const folder = mkdtempSync(join(tmpdir(), "fieldsum-bench-"));
  try {
    const cases = join(folder, "cases.json");
    writeFileSync(cases, JSON.stringify(CASES));
    const out = execFileSync(
      OFFICE_PYTHON,
      [join(__dirname, "calc_in_office.py"), EXTENSION, cases],
      { encoding: "utf8", stdio: ["ignore", "pipe", "inherit"] },
    );
    return rowsOf(JSON.parse(out) as Record<keyof typeof CASES, number>);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function rowsOf(milliseconds: Readonly<Record<keyof typeof CASES, number>>): Row[] {
  const micro = (name: keyof typeof CASES) => milliseconds[name] * 1000;
  const bridge = ["SET.TIME", micro("bridge")] as const;
  return [
    compare(
      "times a native formula: the cheapest function in a cell of Calc, all of it the way there and back",
      bridge,
      ["native", micro("native")],
    ),
    compare(
      "times the cheapest function in Calc: a PIPE.FRICTION there",
      ["friction", micro("friction")],
      bridge,
    ),
    compare(
      "times the cheapest function in Calc: a new 50-head line there",
      ["line", micro("line")],
      bridge,
    ),
    {
      what: `of its aim of ${MILLISECONDS_A_LINE} ms: a new 50-head line in a cell of Calc`,
      ratio: milliseconds.line / MILLISECONDS_A_LINE,
      target: { bound: "at most", value: 1 },
      times: say(micro("line")),
    },
    compare(
      "times the cheapest function in Calc: the same on a slope, with a chart, two sizes of tubing and every argument a range",
      ["line", micro("lineOfRanges")],
      bridge,
    ),
  ];
}
