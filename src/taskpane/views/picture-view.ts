import { writtenNumber } from "../../screen/number-format";
import { resultTable } from "../../screen/result-table";
import { drawChart, type Stretch } from "../../screen/chart";
import { make } from "../../screen/dom";
import { button, message } from "../components";
import { copyAsImage } from "../copy-image";
import type { Pane } from "../pane";
import { type Profile, readProfile } from "../profile";
import { strings } from "../strings";
import { selectedTable } from "../workbook";

import { outsideNote } from "./functions-view";

/** Draws the line whose profile is selected: pressure, flow, sizes and ground. */
export function pictureView(pane: Pane): HTMLElement {
  const drawing = make("div");
  const draw = () =>
    pane.attempt(async () => {
      pane.quiet();
      const { values } = await selectedTable();
      const profile = readProfile(values);
      if (profile === undefined) {
        pane.say(message("error", strings.picture.notProfile));
        return;
      }
      if (profile.heads.length === 0) {
        pane.say(message("error", strings.picture.noHeads));
        return;
      }
      drawing.replaceChildren(...picture(pane, profile, drawing.clientWidth));
    });
  return make(
    "div",
    { class: "view" },
    ...(pane.host.inExcel ? [] : [outsideNote()]),
    make("p", {}, strings.picture.intro),
    button(
      strings.picture.draw,
      () => void draw(),
      "primary",
      pane.host.inExcel ? {} : { disabled: "" },
    ),
    drawing,
  );
}

function picture(pane: Pane, profile: Profile, width: number): HTMLElement[] {
  const { heads, pressureUnit, flowUnit, lengthUnit } = profile;
  const pressures = heads.map((head) => head.nozzlePressure);
  const lowest = Math.min(...pressures);
  const say = (pressure: number) =>
    `${writtenNumber(Number(pressure.toPrecision(4)))} ${pressureUnit}`;
  const description = strings.picture.describe(
    heads.length,
    say(lowest),
    String(heads[pressures.indexOf(lowest)].head),
    say(Math.max(...pressures)),
  );
  const xTitle = `${strings.picture.distance} (${lengthUnit})`;
  const pressureContent = {
    xTitle,
    yTitle: `${strings.picture.pressureAxis} (${pressureUnit})`,
    description,
    series: [
      {
        title: strings.picture.linePressure,
        points: heads.map((h) => ({ x: h.distance, y: h.linePressure })),
      },
      {
        title: strings.picture.atNozzle,
        points: heads.map((h) => ({ x: h.distance, y: h.nozzlePressure })),
      },
    ],
    stretches: stretches(profile),
    ground: heads.some((h) => h.elevation !== 0)
      ? heads.map((h) => ({ x: h.distance, y: h.elevation }))
      : [],
    groundTitle: `${strings.picture.ground} (${lengthUnit})`,
  };
  const flowContent = {
    xTitle,
    yTitle: `${strings.picture.flowAxis} (${flowUnit})`,
    description: strings.picture.flow,
    series: [
      {
        title: strings.picture.inTubing,
        points: heads.map((h) => ({ x: h.distance, y: h.segmentFlow })),
      },
      {
        title: strings.picture.ofHead,
        points: heads.map((h) => ({ x: h.distance, y: h.headFlow })),
      },
    ],
  };
  const pressureChart = drawChart(pressureContent, width);
  const flowChart = drawChart(flowContent, width);
  return [
    make("h2", {}, strings.picture.pressure),
    make("p", { class: "picture-summary" }, description),
    pressureChart,
    copyButton(pane, pressureChart, strings.picture.pressure),
    make("h2", {}, strings.picture.flow),
    flowChart,
    copyButton(pane, flowChart, strings.picture.flow),
    make("h2", {}, strings.picture.table),
    resultTable(
      [
        [
          strings.picture.head,
          xTitle,
          `${strings.picture.line} (${pressureUnit})`,
          `${strings.picture.nozzle} (${pressureUnit})`,
          `${strings.picture.head} (${flowUnit})`,
        ],
        ...heads.map((h) => [h.head, h.distance, h.linePressure, h.nozzlePressure, h.headFlow]),
      ],
      { label: strings.picture.table },
    ),
  ];
}

/** Neighbouring segments of one bore are one stretch of tubing. */
function stretches({ heads, diameterUnit }: Profile): Stretch[] {
  const found: { from: number; to: number; bore: number }[] = [];
  let from = 0;
  for (const { distance, bore } of heads) {
    const last = found[found.length - 1];
    if (last !== undefined && last.bore === bore) last.to = distance;
    else found.push({ from, to: distance, bore });
    from = distance;
  }
  return found.map(({ from: start, to, bore }) => ({
    from: start,
    to,
    label: `${writtenNumber(Number(bore.toPrecision(3)))} ${diameterUnit}`,
  }));
}

function copyButton(pane: Pane, chart: HTMLElement, what: string): HTMLElement {
  const copy = async () => {
    const svg = chart.querySelector("svg");
    if (svg === null) return;
    try {
      await copyAsImage(svg);
      pane.say(message("success", strings.picture.copied));
    } catch {
      // The browser in the host's pane may withhold the clipboard; there is nothing to undo.
      pane.say(message("error", strings.picture.copyFailed));
    }
  };
  return button(strings.picture.copy, () => void copy(), "outline", {
    "aria-label": `${strings.picture.copy}: ${what}`,
  });
}
