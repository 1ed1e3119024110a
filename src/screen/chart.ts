import { nice } from "d3-array";
import { type Axis, axis } from "./axis";
import { make, makeSvg } from "./dom";
import { screenSaid } from "../words/spoken";
import { formatValue } from "./number-format";

export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface Series {
  readonly title: string;
  readonly points: readonly Point[];
}

/** A stretch of the line laid in one size of tubing. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly label: string;
}

export interface ChartContent {
  readonly xTitle: string;
  readonly yTitle: string;
  readonly series: readonly Series[];
  /** What the picture shows, in a sentence. */
  readonly description: string;
  /** Drawn as a strip under the picture. */
  readonly stretches?: readonly Stretch[];
  /** Drawn as the ground under the picture. */
  readonly ground?: readonly Point[];
  readonly groundTitle?: string;
}

/** Where the caller lets the style sheet fit the picture to its place. */
const USUAL_WIDTH = 640;
const LEFT = 54;
const RIGHT = 16;
const TOP = 14;
const PLOT = 210;
/** Width of a character of a stretch's label. */
const LABEL_CHARACTER = 7;
const GROUND = 44;
const STRIP = 26;
/** About so many numbers beside the picture; under it, so much room for each. */
const TICKS = 5;
const TICK_WIDTH = 75;
/** Beyond this, a mark on each point hides the line. */
const MOST_MARKS = 60;

/** Each series is told apart by its dash and its mark as well as its color. */
const MARKS = ["circle", "square", "diamond", "triangle"] as const;

/**
 * Draws lines over a common axis. The caller shows the numbers as a table; a pointer over the
 * picture reads them out under it.
 */
export function drawChart(content: ChartContent, width = USUAL_WIDTH): HTMLElement {
  const points = content.series.flatMap((series) => series.points);
  if (points.length === 0) {
    return make(
      "p",
      { class: "picture-empty" },
      "Nothing to draw: mend the cells with errors first.",
    );
  }
  const rest = (content.ground?.length ?? 0) > 1 ? GROUND : 0;
  const strip = (content.stretches?.length ?? 0) > 0 ? STRIP : 0;
  const bottom = TOP + PLOT;
  const height = bottom + rest + strip + 46;
  const x = axis(
    [Math.min(0, ...points.map((point) => point.x)), Math.max(...points.map((p) => p.x))],
    [LEFT, width - RIGHT],
  );
  const y = axis(nice(...spread(points), TICKS), [bottom, TOP]);
  const svg = makeSvg("svg", {
    width,
    height,
    viewBox: `0 0 ${width} ${height}`,
    role: "img",
    "aria-label": content.description,
    class: "chart",
  });
  svg.append(...axes(x, y, content, bottom, height));
  if (strip > 0) svg.append(...drawStretches(content.stretches ?? [], x, bottom + 4));
  if (rest > 0) svg.append(...drawGround(content, x, bottom + strip + 4));
  content.series.forEach((series, index) => svg.append(...drawSeries(series, index, x, y)));
  const readout = make("p", { class: "readout" }, "");
  followPointer(svg, content, x, y, readout);
  return make("div", { class: "picture" }, legend(content.series), svg, readout);
}

/** A flat line needs room above and below it. */
function spread(points: readonly Point[]): [number, number] {
  const values = points.map((point) => point.y);
  const low = Math.min(...values);
  const high = Math.max(...values);
  const room = Math.max((high - low) * 0.08, Math.abs(high) * 0.02, 1e-6);
  return [low >= 0 ? Math.max(0, low - room) : low - room, high + room];
}

function axes(
  x: Axis,
  y: Axis,
  content: ChartContent,
  bottom: number,
  height: number,
): SVGElement[] {
  const { from: left, to: right } = x;
  const parts: SVGElement[] = [];
  for (const [tick, text] of y.ticks(TICKS)) {
    const at = y.at(tick);
    parts.push(
      makeSvg("line", { class: "rule", x1: left, x2: right, y1: at, y2: at }),
      makeSvg("text", { class: "tick", x: left - 8, y: at + 4, "text-anchor": "end" }, text),
    );
  }
  const labels = height - 28;
  for (const [tick, text] of x.ticks((right - left) / TICK_WIDTH)) {
    const at = x.at(tick);
    parts.push(
      makeSvg("line", { class: "tick-mark", x1: at, x2: at, y1: bottom, y2: bottom + 4 }),
      makeSvg("text", { class: "tick", x: at, y: labels, "text-anchor": "middle" }, text),
    );
  }
  parts.push(
    makeSvg("line", { class: "axis", x1: left, x2: right, y1: bottom, y2: bottom }),
    makeSvg(
      "text",
      { class: "axis-title", x: (left + right) / 2, y: height - 8, "text-anchor": "middle" },
      content.xTitle,
    ),
    makeSvg(
      "text",
      {
        class: "axis-title",
        transform: `translate(13 ${(TOP + bottom) / 2}) rotate(-90)`,
        "text-anchor": "middle",
      },
      content.yTitle,
    ),
  );
  return parts;
}

function drawSeries(series: Series, index: number, x: Axis, y: Axis): SVGElement[] {
  const parts: SVGElement[] = [
    makeSvg("path", { class: `series series-${index % 4}`, d: path(series.points, x, y) }),
  ];
  if (series.points.length <= MOST_MARKS) {
    for (const point of series.points) parts.push(mark(index, x.at(point.x), y.at(point.y)));
  }
  return parts;
}

/** From point to point; a place in the picture needs no more than thousandths. */
function path(points: readonly Point[], x: Axis, y: Axis): string {
  const places = points.map((point) => `${short(x.at(point.x))},${short(y.at(point.y))}`);
  return places.length === 0 ? "" : `M${places.join("L")}`;
}

function short(place: number): number {
  return Math.round(place * 1000) / 1000;
}

function mark(index: number, cx: number, cy: number): SVGElement {
  const shape = MARKS[index % MARKS.length];
  const look = { class: `mark mark-${index % 4}` };
  if (shape === "circle") return makeSvg("circle", { ...look, cx, cy, r: 4 });
  if (shape === "square")
    return makeSvg("rect", { ...look, x: cx - 3.5, y: cy - 3.5, width: 7, height: 7 });
  const corners =
    shape === "diamond"
      ? [
          [0, -5],
          [5, 0],
          [0, 5],
          [-5, 0],
        ]
      : [
          [0, -5],
          [5, 4],
          [-5, 4],
        ];
  return makeSvg("polygon", {
    ...look,
    points: corners.map(([right, down]) => `${cx + right},${cy + down}`).join(" "),
  });
}

function drawStretches(stretches: readonly Stretch[], x: Axis, top: number): SVGElement[] {
  return stretches.flatMap((stretch, index) => {
    const left = x.at(stretch.from);
    const width = x.at(stretch.to) - left;
    return [
      makeSvg("rect", {
        class: `stretch stretch-${index % 2}`,
        x: left,
        y: top,
        width,
        height: STRIP - 8,
      }),
      makeSvg(
        "text",
        { class: "stretch-label", x: left + width / 2, y: top + 13, "text-anchor": "middle" },
        fitting(stretch.label, width),
      ),
    ];
  });
}

/** As much of a label as its stretch has room for: all, the number alone, or nothing. */
function fitting(label: string, width: number): string {
  const room = width / LABEL_CHARACTER;
  if (label.length <= room) return label;
  const [number] = label.split(" ");
  return number.length <= room ? number : "";
}

function drawGround(content: ChartContent, x: Axis, top: number): SVGElement[] {
  const ground = content.ground ?? [];
  const heights = ground.map((point) => point.y);
  const low = Math.min(...heights);
  const high = Math.max(...heights);
  const y = axis([low, high], [top + GROUND - 12, top + 8]);
  const under = top + GROUND - 6;
  const [first, last] = [x.at(ground[0].x), x.at(ground[ground.length - 1].x)];
  return [
    makeSvg("path", {
      class: "ground",
      d: `${path(ground, x, y)}L${short(last)},${under}L${short(first)},${under}Z`,
    }),
    makeSvg(
      "text",
      { class: "tick", x: LEFT + 6, y: top + GROUND - 10 },
      content.groundTitle ?? "",
    ),
  ];
}

function legend(series: readonly Series[]): HTMLElement {
  return make(
    "ul",
    { class: "legend" },
    ...series.map(({ title }, index) => {
      const key = makeSvg("svg", { viewBox: "0 0 34 12", "aria-hidden": "true", class: "key" });
      key.append(
        makeSvg("path", { class: `series series-${index % 4}`, d: "M1 6H33" }),
        mark(index, 17, 6),
      );
      return make("li", {}, key, title);
    }),
  );
}

/** Reads out the numbers of the point nearest to the pointer. */
function followPointer(
  svg: SVGSVGElement,
  content: ChartContent,
  x: Axis,
  y: Axis,
  readout: HTMLElement,
): void {
  const rule = makeSvg("line", {
    class: "pointer",
    y1: y.to,
    y2: y.from,
    visibility: "hidden",
  });
  svg.append(rule);
  const [first] = content.series;
  svg.addEventListener("pointermove", (event) => {
    const box = svg.getBoundingClientRect();
    const scale = svg.viewBox.baseVal.width / box.width;
    const at = x.valueAt((event.clientX - box.left) * scale);
    const nearest = first.points.reduce((best, point) =>
      Math.abs(point.x - at) < Math.abs(best.x - at) ? point : best,
    );
    rule.setAttribute("x1", String(x.at(nearest.x)));
    rule.setAttribute("x2", String(x.at(nearest.x)));
    rule.setAttribute("visibility", "visible");
    const values = content.series.map(({ title, points }) => {
      const point = points.find((other) => other.x === nearest.x);
      return `${title} ${point === undefined ? screenSaid("none") : formatValue(point.y, "0.00")}`;
    });
    readout.textContent = `${content.xTitle} ${formatValue(nearest.x, "0.##")}: ${values.join("; ")}`;
  });
  svg.addEventListener("pointerleave", () => {
    rule.setAttribute("visibility", "hidden");
    readout.textContent = "";
  });
}
