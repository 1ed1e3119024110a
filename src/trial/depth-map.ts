import { make } from "../screen/dom";
import { formatValue } from "../screen/number-format";
import { scrolled } from "../screen/result-table";

/** Steps of the map, as parts of the average depth: below the first, up to the second and so on. */
const STEPS = [0.6, 0.8, 0.95, 1.05, 1.2, 1.4] as const;

export interface DepthMap {
  /** null: no can there counts. */
  readonly depths: readonly (readonly (number | null)[])[];
  /** Sprinklers stand at the four corners. */
  readonly corners?: true;
  readonly columns: readonly string[];
  readonly rows: readonly string[];
  readonly caption: string;
  readonly format: string;
}

/**
 * Depths as a table whose ground darkens with the depth. The number stands in every cell and the
 * driest and wettest quarters carry a mark, so that nothing depends on color.
 */
export function drawMap({
  depths,
  columns,
  rows,
  caption,
  format,
  corners,
}: DepthMap): HTMLElement {
  const sorted = depths
    .flat()
    .filter((depth) => depth !== null)
    .sort((one, other) => one - other);
  const mean = sorted.reduce((sum, depth) => sum + depth, 0) / sorted.length;
  const quarter = Math.max(1, Math.round(sorted.length / 4));
  const dry = sorted[quarter - 1];
  const wet = sorted[sorted.length - quarter];
  const cell = (depth: number | null) => {
    if (depth === null) return make("td", { class: "depth", title: "left out" }, "–");
    const isDry = depth <= dry && dry < wet;
    const isWet = depth >= wet && dry < wet;
    return make(
      "td",
      {
        class: `depth depth-${stepOf(depth / mean)}${isDry ? " driest" : ""}${isWet ? " wettest" : ""}`,
      },
      formatValue(depth, format),
      ...(isDry ? [make("span", { class: "mark", title: "driest quarter" }, "▽")] : []),
      ...(isWet ? [make("span", { class: "mark", title: "wettest quarter" }, "▲")] : []),
    );
  };
  const sprinklers = () =>
    corners === undefined
      ? []
      : [
          make(
            "tr",
            { class: "corners" },
            make("td"),
            ...columns.map((_, i) => {
              const isEnd = i === 0 || i === columns.length - 1;
              return make(
                "td",
                { class: i === 0 ? "corner-left" : "corner-right" },
                ...(isEnd ? [make("span", { title: "sprinkler" }, "◎")] : []),
              );
            }),
          ),
        ];
  const table = make(
    "table",
    { class: "map" },
    make("caption", {}, make("span", {}, caption)),
    make(
      "thead",
      {},
      make("tr", {}, make("td"), ...columns.map((text) => make("th", { scope: "col" }, text))),
    ),
    make(
      "tbody",
      {},
      ...sprinklers(),
      ...depths.map((line, index) =>
        make("tr", {}, make("th", { scope: "row" }, rows[index]), ...line.map(cell)),
      ),
      ...sprinklers(),
    ),
  );
  return make("div", {}, scrolled(table, "Map of depths"), key(corners !== undefined));
}

function stepOf(part: number): number {
  const step = STEPS.findIndex((limit) => part < limit);
  return step === -1 ? STEPS.length : step;
}

function key(hasCorners: boolean): HTMLElement {
  const texts = [
    `under ${percent(STEPS[0])}`,
    ...STEPS.slice(1).map((limit, index) => `${percent(STEPS[index])} to ${percent(limit)}`),
    `over ${percent(STEPS[STEPS.length - 1])}`,
  ];
  return make(
    "div",
    { class: "map-key" },
    make("p", {}, "Of the average depth:"),
    make(
      "ul",
      {},
      ...texts.map((text, step) =>
        make(
          "li",
          {},
          make("span", { class: `swatch depth-${step}`, "aria-hidden": "true" }),
          text,
        ),
      ),
    ),
    make("p", {}, `▽ driest quarter, ▲ wettest quarter${hasCorners ? ", ◎ sprinkler" : ""}`),
  );
}

function percent(part: number): string {
  return `${Math.round(part * 100)}%`;
}
