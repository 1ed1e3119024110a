import { makeSvg } from "../screen/dom";
import type { Argument } from "../screen/host";
import { formatValue } from "../screen/number-format";
import type { LessonId, PictureWords } from "../sheets/books/workshop/words/shape";
import type { UnitSystem } from "../sheets/kit/definition";
import { bluestemFlat } from "../sheets/parts/bluestem-flat";
import { catchSamples } from "../sheets/parts/catch-samples";
import { plot, WIDTH } from "../screen/plot";

export interface Control {
  readonly name: keyof PictureWords;
  readonly unit: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly step: number;
}

export interface Picture {
  readonly svg: SVGElement;
  /** What the picture shows, in numbers. */
  readonly numbers: readonly (readonly [label: string, value: string])[];
  /** One sentence under it, and whether it is good news. */
  readonly said: string;
  readonly good: boolean;
}

export interface Scene {
  readonly system: UnitSystem;
  readonly words: PictureWords;
  /** Calls a function; throws with its message where it gives an error. */
  number(name: string, ...cells: Argument[]): number;
  table(name: string, ...cells: Argument[]): (string | number)[][];
}

type Values = Readonly<Record<string, number>>;

interface Drawing {
  controls(system: UnitSystem): Control[];
  draw(values: Values, scene: Scene): Picture;
}

const us = (system: UnitSystem) => system === "US";
const f = (value: number, code: string) => formatValue(value, code);

function units(system: UnitSystem) {
  return us(system)
    ? {
        length: "ft",
        flow: "gpm",
        pressure: "psi",
        rate: "in/h",
        depth: "in",
        bore: "in",
        head: "ft",
        wind: "mph",
        volume: "gal",
      }
    : {
        length: "m",
        flow: "m³/h",
        pressure: "kPa",
        rate: "mm/h",
        depth: "mm",
        bore: "mm",
        head: "m",
        wind: "km/h",
        volume: "L",
      };
}

/** The bores of the demo's tubing. */
function bores(scene: Scene): { large: number; small: number } {
  const { largeTubing, smallTubing, sdr } = bluestemFlat(scene.system);
  const inside = (size: number) => scene.number("PIPE_INSIDE", "ISO PE", size, sdr, scene.system);
  return { large: inside(largeTubing), small: inside(smallTubing) };
}

/** What a sprinkler of the demo's line gives on average at the planned inlet: as in the workbooks. */
function plannedHeadFlow(scene: Scene): number {
  const { system, number } = scene;
  const field = bluestemFlat(system);
  const { large, small } = bores(scene);
  const line = [
    field.heads,
    field.spacing,
    [
      [large, field.largeSegments],
      [small, field.heads - field.largeSegments],
    ],
    field.chart.map((row) => [...row]),
    system,
    0,
    null,
    field.friction,
    null,
    field.riser,
  ];
  const inlet = number("LATERAL_INLET", field.lowestPressure, ...line);
  return number("LATERAL_FLOW", inlet, ...line) / field.heads;
}

/** Under the number of a can: what "▽" stands for in the words. */
const triangleAt = (x: number, y: number) => `M${x - 5} ${y + 11} h10 l-5 8 z`;

const range = (count: number) => Array.from({ length: count }, (_, i) => i);

const cans: Drawing = {
  controls: () => [{ name: "canCaught", unit: "mL", value: 43, low: 0, high: 120, step: 1 }],
  draw({ canCaught }, { system, words, number }) {
    const { block, opening } = catchSamples(system);
    const changed = block.map((line, r) =>
      line.map((caught, c) => (r === 2 && c === 2 ? canCaught : caught)),
    );
    const u = units(system);
    const depths = changed.map((line) =>
      line.map((caught) => number("APPLICATION_CATCH", caught, opening, system)),
    );
    const sorted = depths.flat().sort((one, other) => one - other);
    const mean = sorted.reduce((sum, one) => sum + one, 0) / sorted.length;
    const du = number("APPLICATION_DU", depths);
    const cu = number("APPLICATION_CU", depths);
    const x = (c: number) => 75 + c * 70;
    const y = (r: number) => 45 + r * 45;
    const corners = [
      [32, 22],
      [328, 22],
      [32, 206],
      [328, 206],
    ];
    return {
      svg: makeSvg(
        "svg",
        { viewBox: `0 0 ${WIDTH} 230`, role: "img", "aria-label": words.cansTitle, class: "plot" },
        ...corners.flatMap(([cx, cy]) => [
          makeSvg("circle", { class: "sprinkler", cx, cy, r: 9 }),
          makeSvg("circle", { class: "sprinkler-dot", cx, cy, r: 3 }),
        ]),
        makeSvg("text", { class: "quiet", x: 46, y: 16 }, words.sprinkler),
        ...depths.flatMap((line, r) =>
          line.flatMap((depth, c) => {
            const dry = depth <= sorted[3];
            return [
              makeSvg("circle", {
                class: `can-dot${dry ? " dry" : ""}`,
                cx: x(c),
                cy: y(r) + 2,
                r: 21,
                "fill-opacity": Math.min(1, (depth / mean) * 0.45),
              }),
              makeSvg(
                "text",
                { x: x(c), y: y(r) + 7, "text-anchor": "middle", class: "strong" },
                f(depth, us(system) ? "0.00" : "0.0"),
              ),
              ...(dry ? [makeSvg("path", { class: "dry-sign", d: triangleAt(x(c), y(r)) })] : []),
            ];
          }),
        ),
      ),
      numbers: [
        [words.mean, `${f(mean, us(system) ? "0.00" : "0.0")} ${u.depth}`],
        [words.du, f(du, "0.00")],
        [words.cu, f(cu, "0.00")],
      ],
      said: words.cansSaid.replace("{du}", f(du, "0.00")),
      good: du >= 0.7,
    };
  },
};

/** The middle of the bucket: the words stand to its right. */
const BUCKET = 105;

const rate: Drawing = {
  controls: (system) => {
    const { lesson, spacing, move, slope } = bluestemFlat(system);
    const u = units(system);
    return [
      {
        name: "headFlow",
        unit: u.flow,
        value: lesson.head,
        low: lesson.head / 4,
        high: lesson.head * 4,
        step: us(system) ? 0.1 : 0.02,
      },
      {
        name: "spacing",
        unit: u.length,
        value: spacing,
        low: spacing / 3,
        high: spacing * 1.5,
        step: 1,
      },
      {
        name: "move",
        unit: u.length,
        value: move,
        low: Math.round(move / 3),
        high: move * 1.5,
        step: 1,
      },
      { name: "slope", unit: "%", value: slope, low: 0, high: 16, step: 1 },
    ];
  },
  draw({ headFlow, spacing, move, slope }, { system, words, number }) {
    const u = units(system);
    const poured = number("APPLICATION_RATE", headFlow, spacing, move, system);
    const profile = number("SOIL_PROFILE", "silt loam");
    const taken = number("SOIL_INTAKE", profile, slope, system);
    const code = us(system) ? "0.00" : "0.0";
    const good = poured <= taken;
    const neck = 26;
    const stream = Math.max(4, Math.min(110, (neck * poured) / taken));
    return {
      svg: makeSvg(
        "svg",
        {
          viewBox: `0 0 ${WIDTH} 230`,
          role: "img",
          "aria-label": words.bucketTitle,
          class: "plot",
        },
        makeSvg("rect", {
          class: "water",
          x: BUCKET - stream / 2,
          y: 8,
          width: stream,
          height: 52,
        }),
        makeSvg("path", {
          class: "vessel",
          d: `M${BUCKET - 80} 60 H${BUCKET - neck / 2} V84 H${BUCKET - 70} V214 H${BUCKET + 70} V84 H${BUCKET + neck / 2} V60 H${BUCKET + 80}`,
        }),
        makeSvg("rect", {
          class: "water",
          x: BUCKET - Math.min(stream, neck) / 2,
          y: 60,
          width: Math.min(stream, neck),
          height: 70,
        }),
        makeSvg("rect", { class: "water", x: BUCKET - 68, y: 130, width: 136, height: 82 }),
        ...(good
          ? []
          : [
              makeSvg("rect", { class: "water", x: BUCKET - 80, y: 50, width: 160, height: 9 }),
              makeSvg("text", { class: "strong", x: 196, y: 62 }, words.runsOff),
            ]),
        makeSvg("text", { class: "strong", x: 196, y: 24 }, `${f(poured, code)} ${u.rate}`),
        makeSvg("text", { class: "quiet", x: 196, y: 40 }, words.pours),
        makeSvg("text", { class: "strong", x: 196, y: 92 }, `${f(taken, code)} ${u.rate}`),
        makeSvg("text", { class: "quiet", x: 196, y: 108 }, words.takes),
      ),
      numbers: [
        [words.pours, `${f(poured, us(system) ? "0.000" : "0.0")} ${u.rate}`],
        [words.takes, `${f(taken, code)} ${u.rate}`],
      ],
      said: good ? words.soilGood : words.soilBad,
      good,
    };
  },
};

const hours: Drawing = {
  controls: (system) => {
    const { netDepth, efficiency, lines } = bluestemFlat(system);
    return [
      {
        name: "netDepth",
        unit: units(system).depth,
        value: netDepth,
        low: netDepth / 5,
        high: netDepth * 2,
        step: us(system) ? 0.1 : 1,
      },
      { name: "efficiency", unit: "", value: efficiency, low: 0.4, high: 1, step: 0.01 },
      { name: "lines", unit: "", value: lines, low: 1, high: 4, step: 1 },
    ];
  },
  draw({ netDepth, efficiency, lines }, scene) {
    const { system, words, number } = scene;
    const { spacing, move, positions, moveHours, dayHours } = bluestemFlat(system);
    const poured = number("APPLICATION_RATE", plannedHeadFlow(scene), spacing, move, system);
    const set = number("SET_TIME", netDepth, poured, efficiency);
    const sets = number("SET_PERDAY", set, moveHours, dayHours);
    const own = Math.ceil(positions / lines);
    const days = sets > 0 ? Math.ceil(own / sets) : NaN;
    const at = (i: number) => 22 + i * (316 / positions);
    return {
      svg: makeSvg(
        "svg",
        { viewBox: `0 0 ${WIDTH} 230`, role: "img", "aria-label": words.fieldTitle, class: "plot" },
        makeSvg("rect", { class: "vessel", x: 14, y: 30, width: 332, height: 150 }),
        ...range(positions).flatMap((i) => {
          const line = Math.floor(i / own);
          const step = i % own;
          const day = sets > 0 ? Math.floor(step / sets) + 1 : 0;
          const x = at(i) + 158 / positions;
          return [
            makeSvg("line", { class: `lay line-${line % 4}`, x1: x, x2: x, y1: 38, y2: 160 }),
            makeSvg("text", { x, y: 24, "text-anchor": "middle" }, String(i + 1)),
            makeSvg(
              "text",
              { class: "strong", x, y: 198, "text-anchor": "middle" },
              day === 0 ? "–" : String(day),
            ),
            ...(step === 0
              ? [makeSvg("text", { class: "quiet", x: x + 3, y: 175 }, `${words.line} ${line + 1}`)]
              : []),
          ];
        }),
        makeSvg("text", { class: "quiet", x: 14, y: 218 }, words.dayBelow),
      ),
      numbers: [
        [words.setHours, f(set, "0.0")],
        [words.setsADay, String(sets)],
        [words.roundDays, Number.isNaN(days) ? "–" : String(days)],
      ],
      said:
        sets > 0
          ? words.hoursSaid.replace("{hours}", f(set, "0.0")).replace("{days}", String(days))
          : words.tooLong,
      good: sets > 0,
    };
  },
};

/** Cells a side of the pattern between four sprinklers. */
const PATTERN = 6;

/** What four sprinklers lay over one another between two positions: darker is more, ▽ the driest quarter. */
function overlapped(
  pattern: readonly (readonly number[])[],
  [left, right]: [number, number],
  [top, bottom]: [number, number],
): SVGElement[] {
  const all = pattern.flat().sort((one, other) => one - other);
  const most = all[all.length - 1];
  const dry = all[Math.floor(all.length / 4) - 1];
  const width = (right - left) / pattern.length;
  const height = (bottom - top) / pattern[0].length;
  return pattern.flatMap((row, r) =>
    row.flatMap((depth, c) => {
      const [x, y] = [left + r * width, top + c * height];
      return [
        makeSvg("rect", { class: "ground", x, y, width, height }),
        makeSvg("rect", {
          class: "water",
          x,
          y,
          width,
          height,
          "fill-opacity": most > 0 ? (depth / most).toFixed(2) : 0,
        }),
        ...(depth <= dry
          ? [
              makeSvg("path", {
                class: "dry-sign",
                d: `M${(x + width / 2 - 4).toFixed(1)} ${(y + height / 2 - 3).toFixed(1)} h8 l-4 6 z`,
              }),
            ]
          : []),
      ];
    }),
  );
}

const wind: Drawing = {
  controls: (system) => {
    const { wetted, wind: blows, move } = bluestemFlat(system);
    const u = units(system);
    return [
      {
        name: "wetted",
        unit: u.length,
        value: wetted,
        low: wetted / 2,
        high: wetted * 1.5,
        step: 1,
      },
      { name: "wind", unit: u.wind, value: blows, low: 0, high: us(system) ? 15 : 25, step: 1 },
      {
        name: "move",
        unit: u.length,
        value: move,
        low: Math.round(move / 3),
        high: move * 2,
        step: 1,
      },
    ];
  },
  draw({ wetted, wind: blows, move }, { system, words, table, number }) {
    const u = units(system);
    const field = bluestemFlat(system);
    const widest = Number(table("SPRINKLER_SPACING", wetted, blows, system)[1][1]);
    const scale = 330 / (move + wetted);
    const r = (wetted * scale) / 2;
    const x0 = 15 + r;
    const x1 = x0 + move * scale;
    const y = 108;
    const height = Math.min(r, 88);
    const good = move <= widest + 1e-9;
    const { leg, step } = catchSamples(system);
    const pattern = table("APPLICATION_OVERLAP", [[...leg]], step, field.spacing, move, PATTERN);
    const cu = number("APPLICATION_CU", pattern);
    return {
      svg: makeSvg(
        "svg",
        { viewBox: `0 0 ${WIDTH} 230`, role: "img", "aria-label": words.windTitle, class: "plot" },
        makeSvg("ellipse", { class: "wet", cx: x0, cy: y, rx: r, ry: height }),
        makeSvg("ellipse", { class: "wet", cx: x1, cy: y, rx: r, ry: height }),
        ...overlapped(
          pattern.map((row) => row.map(Number)),
          [x0, x1],
          [y - 44, y + 44],
        ),
        makeSvg("line", { class: "lay line-0", x1: x0, x2: x0, y1: y - 70, y2: y + 70 }),
        makeSvg("line", { class: "lay line-0", x1, x2: x1, y1: y - 70, y2: y + 70 }),
        makeSvg("line", { class: "rule-strong", x1: x0, x2: x1, y1: 206, y2: 206 }),
        makeSvg(
          "text",
          { class: "strong", x: (x0 + x1) / 2, y: 224, "text-anchor": "middle" },
          `${f(move, "0")} ${u.length}${good ? "" : ` > ${f(widest, "0.0")}`}`,
        ),
        makeSvg(
          "text",
          { class: "quiet", x: 8, y: 16 },
          `${words.wind} ${f(blows, "0")} ${u.wind} →`,
        ),
      ),
      numbers: [
        [words.widestMove, `${f(widest, "0.0")} ${u.length}`],
        [words.move, `${f(move, "0")} ${u.length}`],
        [words.overlap, f(cu, "0.00")],
      ],
      said: good ? words.windGood : words.windBad,
      good,
    };
  },
};

const pressure: Drawing = {
  controls: (system) => {
    const { lesson } = bluestemFlat(system);
    const u = units(system);
    return [
      {
        name: "pipeFlow",
        unit: u.flow,
        value: lesson.flow,
        low: 0,
        high: lesson.flow * 2,
        step: us(system) ? 1 : 0.2,
      },
      {
        name: "bore",
        unit: u.bore,
        value: lesson.inside,
        low: us(system) ? 1 : 25,
        high: us(system) ? 3 : 75,
        step: us(system) ? 0.02 : 0.5,
      },
    ];
  },
  draw({ pipeFlow, bore }, { system, words, number }) {
    const { lesson } = bluestemFlat(system);
    const u = units(system);
    const lost = (flow: number) => number("PIPE_FRICTION", flow, bore, lesson.length, system, 150);
    const here = lost(pipeFlow);
    const text = `${f(here, us(system) ? "0.0" : "0")} ${u.pressure}`;
    return {
      svg: plot({
        title: words.pressureTitle,
        x: `${words.pipeFlow} (${u.flow})`,
        y: `${words.lost} (${u.pressure})`,
        lines: [
          {
            title: words.lost,
            points: range(13).map((i) => [(lesson.flow * i) / 6, lost((lesson.flow * i) / 6)]),
          },
        ],
        mark: { at: [pipeFlow, here], text },
        fromZero: true,
      }),
      numbers: [
        [words.lost, text],
        [words.twice, pipeFlow > 0 ? `${f(lost(2 * pipeFlow) / here, "0.00")} ×` : "–"],
        [
          words.speed,
          `${f(number("PIPE_VELOCITY", pipeFlow, bore, system), "0.0")} ${us(system) ? "ft/s" : "m/s"}`,
        ],
      ],
      said: words.pressureSaid.replace("{lost}", text),
      good: true,
    };
  },
};

/** How far the loss by F may stand from the solved one before the page says so. */
const TRUE_WITHIN = 0.1;

const along: Drawing = {
  controls: () => [{ name: "heads", unit: "", value: 8, low: 2, high: 28, step: 1 }],
  draw({ heads }, { system, words, number, table }) {
    const factor = number("LATERAL_F", heads);
    const { chart, inletThereIs, lesson, spacing, friction, riser } = bluestemFlat(system);
    const { large } = bores({ system, words, number, table });
    const u = units(system);
    // A digit more than elsewhere, or two close losses would seem a whole kPa apart.
    const code = "0.0";
    // What F leaves out: it takes every sprinkler's flow as equal, and on a long line they are not.
    const equal = number(
      "LATERAL_LOSS",
      heads * lesson.head,
      large,
      heads * spacing,
      heads,
      system,
      friction,
    );
    const solved = table(
      "LATERAL_SUMMARY",
      inletThereIs,
      heads,
      spacing,
      large,
      chart.map((row) => [...row]),
      system,
      0,
      null,
      friction,
      null,
      riser,
    );
    const loss = Number(solved[8][1]);
    const truthful = Math.abs(equal / loss - 1) <= TRUE_WITHIN;
    const width = 330 / heads;
    return {
      svg: makeSvg(
        "svg",
        { viewBox: `0 0 ${WIDTH} 230`, role: "img", "aria-label": words.alongTitle, class: "plot" },
        ...range(heads).flatMap((i) => {
          const thick = (90 * (heads - i)) / heads;
          const x = 15 + i * width;
          return [
            makeSvg("rect", { class: "water", x, y: 120 - thick / 2, width, height: thick }),
            makeSvg("line", {
              class: "rule-strong",
              x1: x + width,
              x2: x + width,
              y1: 120 - thick / 2 - 14,
              y2: 120 + thick / 2,
            }),
            ...(heads <= 14
              ? [
                  makeSvg(
                    "text",
                    { x: x + width / 2, y: 190, "text-anchor": "middle" },
                    String(heads - i),
                  ),
                ]
              : []),
          ];
        }),
        makeSvg("text", { class: "quiet", x: 15, y: 212 }, words.alongBelow),
        makeSvg(
          "text",
          { class: "strong", x: 345, y: 24, "text-anchor": "end" },
          `F = ${f(factor, "0.000")}`,
        ),
      ),
      numbers: [
        [words.heads, String(heads)],
        [words.factor, f(factor, "0.000")],
        [words.equalLoss, `${f(equal, code)} ${u.pressure}`],
        [words.solvedLoss, `${f(loss, code)} ${u.pressure}`],
      ],
      said: truthful ? words.alongSaid : words.alongLong,
      good: truthful,
    };
  },
};

/** The demo's line at its inlet pressure, by sprinkler. */
function nozzlePressures(
  scene: Scene,
  heads: number,
  inside: Argument,
  rise: number,
): [number, number][] {
  const { system } = scene;
  const { spacing, chart, riser, friction, inletThereIs } = bluestemFlat(system);
  const curve = chart.map((row) => [...row]);
  const profile = scene.table(
    "LATERAL_PROFILE",
    inletThereIs,
    heads,
    spacing,
    inside,
    curve,
    system,
    rise,
    null,
    friction,
    null,
    riser,
  );
  // Below the headers: the sprinkler first, its nozzle's pressure sixth.
  return profile.slice(1).map((row) => [Number(row[0]), Number(row[5])]);
}

function spread(points: readonly (readonly [number, number])[]) {
  const all = points.map(([, at]) => at);
  const mean = all.reduce((sum, one) => sum + one, 0) / all.length;
  const highest = Math.max(...all);
  // The rule looks down from the highest: a line that stays in this band passes.
  const limits = { from: highest - 0.2 * mean, to: highest };
  return { limits, varies: (highest - Math.min(...all)) / mean };
}

const band: Drawing = {
  controls: () => [
    { name: "heads", unit: "", value: 14, low: 4, high: 22, step: 1 },
    { name: "slope", unit: "%", value: 1.5, low: 0, high: 5, step: 0.5 },
  ],
  draw({ heads, slope }, scene) {
    const { system, words } = scene;
    const { large } = bores(scene);
    const rise = (slope / 100) * heads * bluestemFlat(system).spacing;
    const lines = [rise, 0, -rise].map((r) => nozzlePressures(scene, heads, large, r));
    const [up, level, down] = lines.map(spread);
    const u = units(system);
    const percent = (part: number) => `${f(100 * part, "0.0")}%`;
    return {
      svg: plot({
        title: words.bandTitle,
        x: words.sprinkler,
        y: u.pressure,
        lines: [words.uphill, words.level, words.downhill].map((title, i) => ({
          title,
          points: lines[i],
        })),
        band: { ...up.limits, title: words.bandUphill },
      }),
      numbers: [
        [words.uphill, percent(up.varies)],
        [words.level, percent(level.varies)],
        [words.downhill, percent(down.varies)],
      ],
      said: up.varies <= 0.2 ? words.bandGood : words.bandBad,
      good: up.varies <= 0.2,
    };
  },
};

const bore: Drawing = {
  controls: (system) => {
    const { lesson } = bluestemFlat(system);
    return [
      { name: "size", unit: "mm", value: 50, low: 40, high: 75, step: 1 },
      {
        name: "pipeFlow",
        unit: units(system).flow,
        value: lesson.flow,
        low: lesson.flow / 4,
        high: lesson.flow * 2,
        step: us(system) ? 1 : 0.2,
      },
    ];
  },
  draw({ size, pipeFlow }, { system, words, number }) {
    const { lesson } = bluestemFlat(system);
    const u = units(system);
    const sizes = [40, 50, 63, 75];
    const near = sizes.reduce((one, other) =>
      Math.abs(other - size) < Math.abs(one - size) ? other : one,
    );
    const lost = (inside: number) =>
      number("PIPE_FRICTION", pipeFlow, inside, lesson.length, system, 150);
    const inside = (nominal: number) => number("PIPE_INSIDE", "ISO PE", nominal, 17, system);
    const nominal = number("UNIT_CONVERT", near, "mm", u.bore);
    const here = lost(inside(near));
    const code = us(system) ? "0.0" : "0";
    const boreText = `${f(inside(near), us(system) ? "0.00" : "0.0")} ${u.bore}`;
    return {
      svg: plot({
        title: words.boreTitle,
        x: `${words.bore} (${u.bore})`,
        y: `${words.lost} (${u.pressure})`,
        lines: [
          {
            title: words.lost,
            points: range(15)
              .map((i) => inside(40) + ((inside(75) - inside(40)) * i) / 14)
              .map((at): [number, number] => [at, lost(at)]),
          },
        ],
        mark: { at: [inside(near), here], text: `${near} mm: ${f(here, code)} ${u.pressure}` },
        fromZero: true,
      }),
      numbers: [
        [words.sizeShown, `${near} mm, SDR 17`],
        [words.bore, boreText],
        [words.lost, `${f(here, code)} ${u.pressure}`],
        [words.hidden, `${f(lost(nominal), code)} ${u.pressure}`],
      ],
      said: words.boreSaid.replace("{bore}", boreText),
      good: true,
    };
  },
};

const sizes: Drawing = {
  controls: () => [{ name: "larger", unit: "", value: 7, low: 0, high: 14, step: 1 }],
  draw({ larger }, scene) {
    const { system, words } = scene;
    const { heads } = bluestemFlat(system);
    const { large, small } = bores(scene);
    const u = units(system);
    // A row of bore and segments for each stretch.
    const rows = [
      [large, larger],
      [small, heads - larger],
    ].filter(([, segments]) => segments > 0);
    const two = nozzlePressures(scene, heads, rows, 0);
    const one = nozzlePressures(scene, heads, large, 0);
    const { varies, limits } = spread(two);
    return {
      svg: plot({
        title: words.sizesTitle,
        x: words.sprinkler,
        y: u.pressure,
        lines: [
          { title: words.allLarger, points: one },
          { title: words.twoSizes, points: two },
        ],
        band: { ...limits, title: words.band },
      }),
      numbers: [
        [words.allLarger, `${f(100 * spread(one).varies, "0.0")}%`],
        [words.twoSizes, `${f(100 * varies, "0.0")}%`],
      ],
      said: varies <= 0.2 ? words.sizesGood : words.sizesBad,
      good: varies <= 0.2,
    };
  },
};

const pump: Drawing = {
  controls: () => [{ name: "linesRunning", unit: "", value: 2, low: 1, high: 3, step: 1 }],
  draw({ linesRunning }, { system, words, number }) {
    const { pumpCurve, heads, lesson } = bluestemFlat(system);
    const u = units(system);
    const curve = pumpCurve.map((row) => [...row]);
    const flow = linesRunning * heads * lesson.head;
    const head = number("PUMP_CURVE", curve, flow);
    const most = pumpCurve[pumpCurve.length - 1][0];
    return {
      svg: plot({
        title: words.pumpTitle,
        x: `${words.pipeFlow} (${u.flow})`,
        y: `${words.head} (${u.head})`,
        lines: [
          {
            title: words.head,
            points: range(13).map((i) => [
              (most * i) / 12,
              number("PUMP_CURVE", curve, (most * i) / 12),
            ]),
          },
        ],
        mark: { at: [flow, head], text: `${f(head, us(system) ? "0" : "0.0")} ${u.head}` },
      }),
      numbers: [
        [words.pipeFlow, `${f(flow, us(system) ? "0" : "0.0")} ${u.flow}`],
        [words.head, `${f(head, us(system) ? "0" : "0.0")} ${u.head}`],
      ],
      said: words.pumpSaid,
      good: true,
    };
  },
};

const end: Drawing = {
  controls: (system) => {
    const { heads, spacing } = bluestemFlat(system);
    return [
      {
        name: "length",
        unit: units(system).length,
        value: heads * spacing,
        low: spacing,
        high: heads * spacing,
        step: spacing,
      },
    ];
  },
  draw({ length }, scene) {
    const { system, words, number } = scene;
    const u = units(system);
    const { large } = bores(scene);
    const volume = number("PIPE_VOLUME", large, length, system);
    const weight = us(system) ? volume * 8.34 : volume;
    const { ground } = bluestemFlat(system);
    const text = `${f(volume, "#,##0")} ${u.volume}`;
    const under = ground.filter(([at]) => at < length);
    const ahead = ground[under.length];
    const [lastAt, lastHeight] = under[under.length - 1];
    const height = lastHeight + ((ahead[1] - lastHeight) * (length - lastAt)) / (ahead[0] - lastAt);
    return {
      svg: plot({
        title: words.endTitle,
        x: `${words.length} (${u.length})`,
        y: `${words.ground} (${u.length})`,
        lines: [{ title: words.ground, points: [...under, [length, height]] }],
        mark: { at: [length, height], text },
      }),
      numbers: [
        [words.water, text],
        [words.weight, `${f(weight, "#,##0")} ${us(system) ? "lb" : "kg"}`],
      ],
      said: words.endSaid.replace("{water}", text),
      good: true,
    };
  },
};

export const drawings: Readonly<Record<LessonId, Drawing>> = {
  cans,
  rate,
  hours,
  wind,
  pressure,
  along,
  band,
  bore,
  sizes,
  pump,
  end,
};
