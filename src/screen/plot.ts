import { makeSvg } from "./dom";
import { formatValue } from "./number-format";

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
const HEIGHT = 230;
const BOX = { left: 46, right: 350, top: 26, bottom: 190 };

/** Lines of different dashes with their names at the end; every number stands in the table too. */
export function plot({ title, x, y, lines, band, mark, fromZero }: Plot): SVGElement {
  const all = lines.flatMap(({ points }) => points);
  const xs = all.map(([at]) => at);
  const ys = [
    ...all.map(([, at]) => at),
    ...(band ? [band.from, band.to] : []),
    ...(mark ? [mark.at[1]] : []),
  ];
  const [x0, x1] = [Math.min(...xs), Math.max(...xs)];
  const span = Math.max(...ys) - Math.min(...ys) || 1;
  const y0 = fromZero ? 0 : Math.min(...ys) - span * 0.08;
  const y1 = Math.max(...ys) + span * 0.08;
  const px = (at: number) => BOX.left + ((at - x0) / (x1 - x0 || 1)) * (BOX.right - BOX.left);
  const py = (at: number) => BOX.bottom - ((at - y0) / (y1 - y0 || 1)) * (BOX.bottom - BOX.top);
  const ticks = (from: number, to: number) => {
    // Sprinklers are counted: no fractions between them.
    const whole = Number.isInteger(from) && Number.isInteger(to) && to - from >= 3;
    return Array.from({ length: 4 }, (_, i) => {
      const at = from + ((to - from) * i) / 3;
      return whole ? Math.round(at) : at;
    });
  };
  const short = (number: number) =>
    formatValue(
      number,
      Number.isInteger(number)
        ? "0"
        : Math.abs(number) >= 20
          ? "0"
          : Math.abs(number) >= 2
            ? "0.0"
            : "0.00",
    );
  return makeSvg(
    "svg",
    { viewBox: `0 0 ${WIDTH} ${HEIGHT}`, role: "img", "aria-label": title, class: "plot" },
    ...(band
      ? [
          makeSvg("rect", {
            class: "band",
            x: BOX.left,
            y: py(band.to),
            width: BOX.right - BOX.left,
            height: Math.max(0, py(band.from) - py(band.to)),
          }),
          makeSvg("text", { class: "quiet", x: BOX.left + 6, y: py(band.from) - 6 }, band.title),
        ]
      : []),
    ...ticks(y0, y1).flatMap((at) => [
      makeSvg("line", { class: "rule", x1: BOX.left, x2: BOX.right, y1: py(at), y2: py(at) }),
      makeSvg("text", { x: BOX.left - 5, y: py(at) + 4, "text-anchor": "end" }, short(at)),
    ]),
    ...ticks(x0, x1).map((at) =>
      makeSvg("text", { x: px(at), y: BOX.bottom + 15, "text-anchor": "middle" }, short(at)),
    ),
    makeSvg("text", { x: BOX.left - 40, y: 14 }, y),
    makeSvg("text", { x: BOX.right, y: HEIGHT - 8, "text-anchor": "end" }, x),
    ...lines.flatMap(({ title: name, points }, i) => {
      const [lastX, lastY] = points[points.length - 1];
      return [
        makeSvg("polyline", {
          class: `line line-${i}`,
          points: points.map(([a, b]) => `${px(a).toFixed(1)},${py(b).toFixed(1)}`).join(" "),
        }),
        ...(lines.length > 1
          ? [
              makeSvg(
                "text",
                { class: `name-${i}`, x: px(lastX), y: py(lastY) - 6, "text-anchor": "end" },
                name,
              ),
            ]
          : []),
      ];
    }),
    ...(mark
      ? [
          makeSvg("circle", { class: "point", cx: px(mark.at[0]), cy: py(mark.at[1]), r: 5 }),
          makeSvg(
            "text",
            {
              class: "strong",
              x: Math.min(px(mark.at[0]) + 8, BOX.right - 70),
              y: py(mark.at[1]) - 9,
            },
            mark.text,
          ),
        ]
      : []),
  );
}
