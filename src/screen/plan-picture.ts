import { DRAWN, drawnLooks } from "../sheets/kit/look";
import type { DrawnLook } from "../sheets/kit/definition";
import type { Point } from "./chart";
import { make, makeSvg } from "./dom";

export interface DrawnSeries {
  readonly title: string;
  readonly look: DrawnLook;
  /** In the drawing's square, 0 to 1, y up. */
  readonly points: readonly Point[];
}

const SIDE = 640;

/** A plan with one scale both ways, its legend below; the tables beside it say the same in numbers. */
export function drawPlan(series: readonly DrawnSeries[], description: string): HTMLElement {
  const seen = series.filter(({ look, points }) => look !== "nothing" && isSomewhere(points));
  if (seen.length === 0) {
    return make(
      "p",
      { class: "picture-empty" },
      "Nothing to draw: mend the cells with errors first.",
    );
  }
  const svg = makeSvg("svg", {
    viewBox: `0 0 ${SIDE} ${SIDE}`,
    role: "img",
    "aria-label": description,
    class: "plan-picture",
  });
  for (const one of seen) svg.append(...drawSeries(one));
  return make("div", { class: "picture" }, svg, legend(seen));
}

/** What is not there lies on the square's first corner. */
function isSomewhere(points: readonly Point[]): boolean {
  return points.some(({ x, y }) => x !== 0 || y !== 0);
}

function at({ x, y }: Point): [number, number] {
  const share = (value: number) => (value - DRAWN.low) / (DRAWN.high - DRAWN.low);
  return [SIDE * share(x), SIDE * (1 - share(y))];
}

function drawSeries({ look, points }: DrawnSeries): SVGElement[] {
  const { line, mark } = drawnLooks[look];
  const parts: SVGElement[] = [];
  if (line !== undefined) {
    const path = points.map((point) =>
      at(point)
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
        at(point)
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

function legend(series: readonly DrawnSeries[]): HTMLElement {
  return make(
    "ul",
    { class: "legend" },
    ...series.map(({ title, look }) => {
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
