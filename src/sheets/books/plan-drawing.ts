import { type PageBuilder, unitText } from "../kit/builder";
import type { SheetChart } from "../kit/definition";
import type { PagePlan } from "../kit/workbook";
import { MOST_HEADS } from "./plan-room";
import { CORNERS, OBSTACLES } from "./plan-runs";

const PAGE = "Drawing";

/** In the order of PLAN.DRAWING's columns, each x and y. */
const SERIES = [
  ["Edge of the field", "edge"],
  ["Line", "line"],
  ["Sprinkler", "head"],
  ["Change of tubing", "change"],
  ["Feeder, straight", "feeder"],
  ["Hydrant", "hydrant"],
  ["Keep clear", "clear"],
  ["Between two lines", "nothing"],
  ["Line beyond an obstacle", "apart"],
] as const;

/** Labels stand above the headers that the formula spills. */
const LABELS = 4;
const HEADERS = LABELS + 1;
const FIRST = HEADERS + 1;
const LAST = HEADERS + MOST_HEADS;

/** Scale bar and north arrow stand in columns of their own: T to W. */
const OWN = [
  ["bar", "T", "U"],
  ["north", "V", "W"],
] as const;

function column(index: number): string {
  return String.fromCharCode(65 + index);
}

/** The plan as a native XY chart on the page where it is put. */
export function planChart(place: SheetChart["place"]): SheetChart {
  const range = (letter: string, last = LAST) => `${letter}${FIRST}:${letter}${last}`;
  return {
    title: "Plan of the field",
    page: PAGE,
    drawing: true,
    x: { range: range("A"), title: "" },
    yTitle: "",
    series: [
      ...SERIES.map(([, look], i) => ({
        x: range(column(2 * i)),
        range: range(column(2 * i + 1)),
        titleAt: `${column(2 * i)}${LABELS}`,
        look,
      })),
      {
        // The first point of the lines is the near end of position 1.
        x: `C${FIRST}:C${FIRST}`,
        range: `D${FIRST}:D${FIRST}`,
        titleAt: `S${LABELS}`,
        look: "start" as const,
      },
      ...OWN.map(([look, x, y]) => ({
        x: range(x, FIRST + 5),
        range: range(y, FIRST + 5),
        titleAt: `${x}${LABELS}`,
        look,
      })),
    ],
    place,
    description:
      "Plan of the field, north up: edge, lines with their sprinklers, hydrants and feeders, and what is kept clear. The tables of runs and hydrants say the same in numbers.",
  };
}

export function planDrawingPage(): PagePlan {
  return {
    name: PAGE,
    title: "The points of the drawing",
    purpose: "Nothing to change here. The chart of the page Plan is drawn from these points.",
    widths: Array.from({ length: 23 }, () => 10),
    landscape: true,
    working: true,
    write: points,
  };
}

function points(page: PageBuilder): void {
  page.row = LABELS;
  SERIES.forEach(([label], i) => {
    page.put(2 * i + 1, LABELS, { role: "text", value: label });
  });
  page.put(19, LABELS, { role: "text", value: "Position 1" });
  page.put(20, LABELS, { role: "text", formula: `=BarLength&" "&${unitText("length")}` });
  page.put(22, LABELS, { role: "text", value: "North" });
  page.needsLines(LABELS, 2);
  page.row = HEADERS;
  page.spill(
    "A",
    `=IRRIG.PLAN.DRAWING(Heads, ${CORNERS}, IF(SmallerSegments=0, 0, LargerSegments), FILTER(Hydrants, INDEX(Hydrants, 0, 1)<>""), ${OBSTACLES}, ${MOST_HEADS}, 1)`,
    {
      rows: MOST_HEADS + 1,
      columns: Array.from({ length: 18 }, () => ({ format: "0.0" })),
    },
  );
  const put = (letter: string, values: readonly string[]) => {
    page.row = FIRST;
    page.plain(
      letter.charCodeAt(0) - 64,
      values.map((value) => [{ role: "result", formula: `=${value}`, format: "0.0" }]),
    );
  };
  // How long one unit of the field is in the drawing, from the field's first edge.
  const drawn = `((A${FIRST + 1}-A${FIRST})^2+(B${FIRST + 1}-B${FIRST})^2)^0.5`;
  const edge = (c: number) => `INDEX(${CORNERS}, 2, ${c})-INDEX(${CORNERS}, 1, ${c})`;
  const real = `((${edge(1)})^2+(${edge(2)})^2)^0.5`;
  put("T", ["0", ...Array.from({ length: 5 }, () => "BarLength*DrawnUnit")]);
  put(
    "U",
    Array.from({ length: 6 }, () => "-0.05"),
  );
  const north = [
    [1.06, 0.9],
    [1.06, 1.05],
    [1.04, 1],
    [1.06, 1.05],
    [1.08, 1],
    [1.06, 1.05],
  ];
  put(
    "V",
    north.map(([x]) => String(x)),
  );
  put(
    "W",
    north.map(([, y]) => String(y)),
  );
  const bar = [2000, 1000, 500, 200, 100, 50, 20, 10, 5, 2].reduceRight(
    (rest, length) => `IF(1/DrawnUnit>=${4 * length}, ${length}, ${rest})`,
    "1",
  );
  page.row = FIRST;
  page.plain(19, [
    [{ role: "result", formula: `=${bar}`, format: "0", name: "BarLength" }],
    [{ role: "result", formula: `=${drawn}/${real}`, format: "0.000000", name: "DrawnUnit" }],
  ]);
}
