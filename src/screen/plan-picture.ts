import { DRAWN, drawnLooks, UNLISTED } from "../sheets/kit/look";
import type { DrawnLook } from "../sheets/kit/definition";
import type { Point } from "./chart";
import { make, makeSvg } from "./dom";

export interface DrawnSeries {
  readonly title: string;
  readonly look: DrawnLook;
  /** In the drawing's square, 0 to 1, y up. */
  readonly points: readonly Point[];
}

/** Of the picture's own square, which is scaled to its place. */
export const SIDE = 640;

/** Lines and marks of all that is seen, in the order in which they lie on each other. */
export function planStrokes(series: readonly DrawnSeries[]): SVGElement[] {
  return seen(series).flatMap((one) => [...drawSeries(one), ...said(one)]);
}

function seen(series: readonly DrawnSeries[]): readonly DrawnSeries[] {
  return series.filter(({ look, points }) => look !== "nothing" && isSomewhere(points));
}

/** What is not there lies on the square's first corner. */
function isSomewhere(points: readonly Point[]): boolean {
  return points.some(({ x, y }) => x !== 0 || y !== 0);
}

/** North and the scale bar say what they are where they stand. */
function said({ look, title, points }: DrawnSeries): SVGElement[] {
  if (look !== "north" && look !== "bar") return [];
  const [x, y] = inPicture(look === "north" ? points[1] : points[points.length - 1]);
  const place =
    look === "north"
      ? // Ends where the picture ends, however large its letters are.
        { x: SIDE, y: y - 6, "text-anchor": "end" }
      : { x: x + 8, y: y + 5 };
  return [makeSvg("text", { class: "drawn-text", ...place }, title)];
}

/** From the drawing's square, y up, to the picture's, y down. */
export function inPicture({ x, y }: Point): [number, number] {
  const share = (value: number) => (value - DRAWN.low) / (DRAWN.high - DRAWN.low);
  return [SIDE * share(x), SIDE * (1 - share(y))];
}

export function outOfPicture([x, y]: readonly [number, number]): Point {
  const value = (share: number) => DRAWN.low + share * (DRAWN.high - DRAWN.low);
  return { x: value(x / SIDE), y: value(1 - y / SIDE) };
}

function drawSeries({ look, points }: DrawnSeries): SVGElement[] {
  const { line, mark } = drawnLooks[look];
  const parts: SVGElement[] = [];
  if (line !== undefined) {
    const path = points.map((point) =>
      inPicture(point)
        .map((value) => value.toFixed(1))
        .join(" "),
    );
    parts.push(
      makeSvg("path", {
        class: `drawn drawn-${look}`,
        d: `M${path.join("L")}`,
        "stroke-width": line.width,
        ...(line.dashed === true && { "stroke-dasharray": "6 4" }),
      }),
    );
  }
  if (mark !== undefined) {
    const places = new Set(
      points.map((point) =>
        inPicture(point)
          .map((v) => v.toFixed(1))
          .join(" "),
      ),
    );
    for (const place of places) {
      const [x, y] = place.split(" ").map(Number);
      parts.push(shape(look, x, y));
    }
  }
  return parts;
}

function shape(look: DrawnLook, x: number, y: number): SVGElement {
  const { mark = { shape: "circle", size: 3 } as const } = drawnLooks[look];
  const half = mark.size / 2 + 0.5;
  const name = { class: `drawn-mark drawn-${look}` };
  if (mark.shape === "circle") return makeSvg("circle", { ...name, cx: x, cy: y, r: half });
  if (mark.shape === "square") {
    return makeSvg("rect", {
      ...name,
      x: x - half,
      y: y - half,
      width: 2 * half,
      height: 2 * half,
    });
  }
  const corners =
    mark.shape === "diamond"
      ? [
          [x, y - half],
          [x + half, y],
          [x, y + half],
          [x - half, y],
        ]
      : [
          [x, y - half],
          [x + half, y + half],
          [x - half, y + half],
        ];
  return makeSvg("polygon", {
    ...name,
    points: corners.map((corner) => corner.join(",")).join(" "),
  });
}

export function planLegend(series: readonly DrawnSeries[]): HTMLElement {
  return make(
    "ul",
    { class: "legend" },
    ...seen(series)
      .filter(({ look }) => !UNLISTED.has(look))
      .map(({ title, look }) => {
        const { line, mark } = drawnLooks[look];
        const key = makeSvg("svg", { viewBox: "0 0 34 12", "aria-hidden": "true", class: "key" });
        if (line !== undefined) {
          key.append(
            makeSvg("path", {
              class: `drawn drawn-${look}`,
              d: "M1 6H33",
              "stroke-width": line.width,
              ...(line.dashed === true && { "stroke-dasharray": "6 4" }),
            }),
          );
        }
        if (mark !== undefined) key.append(shape(look, 17, 6));
        return make("li", {}, key, title);
      }),
  );
}
