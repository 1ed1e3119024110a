import { nice } from "d3-array";
import { type Axis, axis } from "./axis";
import { makeSvg } from "./dom";

export interface PlotLine {
  readonly title: string;
  readonly points: readonly (readonly [number, number])[];
}

export interface Plot {
  readonly title: string;
  readonly x: string;
  readonly y: string;
  readonly lines: readonly PlotLine[];
  /** A stretch of y that is marked, with its words. */
  readonly band?: { readonly from: number; readonly to: number; readonly title: string };
  /** A point with its number. */
  readonly mark?: { readonly at: readonly [number, number]; readonly text: string };
  /** Whether y begins at 0. */
  readonly fromZero?: true;
}

export const WIDTH = 360;
const HEIGHT = 234;
const BOX = { left: 46, right: 342, top: 26, bottom: 190 };
/** About so many numbers on an axis. */
const TICKS = 4;
/** So near to an edge a number has no room before it. */
const NEAR = 110;

/** Lines of different dashes with their names at the end; every number stands in the table too. */
export function plot({ title, x, y, lines, band, mark, fromZero }: Plot): SVGElement {
  const all = lines.flatMap(({ points }) => points);
  const xs = all.map(([at]) => at);
  const ys = [
    ...all.map(([, at]) => at),
    ...(band ? [band.from, band.to] : []),
    ...(mark ? [mark.at[1]] : []),
  ];
  const span = Math.max(...ys) - Math.min(...ys) || 1;
  const px = axis([Math.min(...xs), Math.max(...xs)], [BOX.left, BOX.right]);
  const least = fromZero ? 0 : Math.min(...ys) - span * 0.05;
  const py = axis(nice(least, Math.max(...ys) + span * 0.05, TICKS), [BOX.bottom, BOX.top]);
  const names = lines.length > 1 ? namesOf(lines, py) : [];
  return makeSvg(
    "svg",
    { viewBox: `0 0 ${WIDTH} ${HEIGHT}`, role: "img", "aria-label": title, class: "plot" },
    ...(band
      ? [
          makeSvg("rect", {
            class: "band",
            x: BOX.left,
            y: py.at(band.to),
            width: BOX.right - BOX.left,
            height: Math.max(0, py.at(band.from) - py.at(band.to)),
          }),
          makeSvg("text", { class: "quiet", x: BOX.left + 6, y: py.at(band.from) - 6 }, band.title),
        ]
      : []),
    ...py.ticks(TICKS).flatMap(([at, text]) => [
      makeSvg("line", {
        class: "rule",
        x1: BOX.left,
        x2: BOX.right,
        y1: py.at(at),
        y2: py.at(at),
      }),
      makeSvg("text", { x: BOX.left - 5, y: py.at(at) + 4, "text-anchor": "end" }, text),
    ]),
    ...px
      .ticks(TICKS)
      .map(([at, text]) =>
        makeSvg("text", { x: px.at(at), y: BOX.bottom + 18, "text-anchor": "middle" }, text),
      ),
    makeSvg("text", { x: BOX.left - 40, y: 14 }, y),
    makeSvg("text", { x: BOX.right, y: HEIGHT - 6, "text-anchor": "end" }, x),
    ...lines.map(({ points }, i) =>
      makeSvg("polyline", {
        class: `line line-${i}`,
        points: points.map(([a, b]) => `${px.at(a).toFixed(1)},${py.at(b).toFixed(1)}`).join(" "),
      }),
    ),
    ...names.map(({ title: name, at }, i) =>
      makeSvg("text", { class: `name-${i}`, x: BOX.right, y: at, "text-anchor": "end" }, name),
    ),
    ...(mark
      ? [
          makeSvg("circle", { class: "point", cx: px.at(mark.at[0]), cy: py.at(mark.at[1]), r: 5 }),
          makeSvg(
            "text",
            { class: "strong", ...beside([px.at(mark.at[0]), py.at(mark.at[1])], lines[0]) },
            mark.text,
          ),
        ]
      : []),
  );
}

/** Names stand at the lines' ends, the lowest line's under it, so that no line runs through its own. */
function namesOf(lines: readonly PlotLine[], py: Axis) {
  const ends = lines.map(({ points }) => py.at(points[points.length - 1][1]));
  const lowest = Math.max(...ends);
  return lines.map(({ title }, i) => {
    const under = ends[i] === lowest && lowest + 16 < BOX.bottom;
    return { title, at: under ? ends[i] + 16 : ends[i] - 6 };
  });
}

/** Beside the point, on the side where the line is not. */
function beside([x, y]: [number, number], { points }: PlotLine) {
  const rising = points[points.length - 1][1] > points[0][1];
  const atEnd = x > BOX.right - NEAR;
  const left = atEnd || (rising && x > BOX.left + NEAR);
  const under = atEnd && !rising && y + 22 < BOX.bottom;
  return {
    x: left ? x - 8 : x + 8,
    y: under ? y + 20 : y - 9,
    "text-anchor": left ? "end" : "start",
  };
}
