import { make } from "../screen/dom";
import { formatValue } from "../screen/number-format";

/** Steps of the map, as parts of the average depth: below the first, up to the second and so on. */
const STEPS = [0.6, 0.8, 0.95, 1.05, 1.2, 1.4] as const;

export interface DepthMap {
  readonly depths: readonly (readonly number[])[];
  readonly columns: readonly string[];
  readonly rows: readonly string[];
  readonly caption: string;
  readonly format: string;
}

/**
 * Depths as a table whose ground darkens with the depth. The number stands in every cell and the
 * driest and wettest quarters carry a mark, so that nothing depends on colour.
 */
export function drawMap({ depths, columns, rows, caption, format }: DepthMap): HTMLElement {
  const sorted = depths.flat().sort((one, other) => one - other);
  const mean = sorted.reduce((sum, depth) => sum + depth, 0) / sorted.length;
  const quarter = Math.max(1, Math.round(sorted.length / 4));
  const dry = sorted[quarter - 1];
  const wet = sorted[sorted.length - quarter];
  const cell = (depth: number) => {
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
      ...depths.map((line, index) =>
        make("tr", {}, make("th", { scope: "row" }, rows[index]), ...line.map(cell)),
      ),
    ),
  );
  return make(
    "div",
    {},
    make(
      "div",
      { class: "scrolled", tabindex: 0, role: "group", "aria-label": "Map of depths" },
      table,
    ),
    key(),
  );
}

function stepOf(part: number): number {
  const step = STEPS.findIndex((limit) => part < limit);
  return step === -1 ? STEPS.length : step;
}

function key(): HTMLElement {
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
    make("p", {}, "▽ driest quarter, ▲ wettest quarter"),
  );
}

function percent(part: number): string {
  return `${Math.round(part * 100)} %`;
}
