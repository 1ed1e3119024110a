import { MOST_HEADS } from "../../sheets/parts/line-inputs";
import { shownAs, type Quantity } from "../../sheets/kit/builder";
import type { UnitSystem } from "../../sheets/kit/definition";
import { formatValue } from "../../screen/number-format";
import { errorSaid, textSaid } from "../../words/spoken";
import type { AskedBook, Inputs } from "./asked-book";
import type { Question } from "./given";
import { type Sentence, sentence } from "./say";

/** What a grower can change at a line, or does not know: by what the workbook's input is called. */
export const WHAT_IFS = {
  InletThereIs: {
    label: "Pressure at the inlet",
    quantity: "pressure",
    low: 1,
    high: 2000,
    hint: "What the gauge shows while the line runs.",
  },
  Heads: { label: "Sprinklers on the line", low: 1, high: MOST_HEADS },
  Spacing: { label: "Sprinkler spacing", quantity: "length", low: 1, high: 500 },
  Rise: {
    label: "Rise, inlet to last sprinkler",
    quantity: "length",
    low: -1000,
    high: 1000,
    hint: "Negative: downhill.",
  },
  Wind: { label: "Wind", quantity: "wind", low: 0, high: 200 },
} as const satisfies Record<string, Question>;

export type WhatIf = keyof typeof WHAT_IFS;
export const WHAT_IF_KEYS = Object.keys(WHAT_IFS) as WhatIf[];

/** As "InletThereIs" is the page Tubing's, "Inlet" is the pressure planned: here the one there is. */
const LINE =
  "InletThereIs, Heads, Spacing, Tubing, Chart, Units, Rise, Regulator, Friction, First, Riser";
const found = (row: number) => `=INDEX(IRRIG.LATERAL.SUMMARY(${LINE}), ${row}, 2)`;
const RATE = `IRRIG.APPLICATION.RATE(IRRIG.LATERAL.FLOW(${LINE})/Heads, Spacing, Move, Units)`;

export const LINE_QUESTIONS = {
  last: `=INDEX(IRRIG.LATERAL.PROFILE(${LINE}), Heads+1, 6)`,
  least: found(2),
  leastHead: found(3),
  most: found(4),
  varies: found(7),
  flow: found(1),
  wanted: "=Lowest",
  rate: `=${RATE}`,
  hours: `=IRRIG.SET.TIME(NetDepth, ${RATE}, Efficiency)`,
  chart: `=IRRIG.CHECK.CHART(${found(2).slice(1)}, Chart)`,
  highest: `=IRRIG.CHECK.CHART(${found(4).slice(1)}, Chart)`,
  limit: `=IRRIG.CHECK.VARIATION(${found(7).slice(1)}, Limit)`,
  speed: `=IRRIG.CHECK.SPEED(${found(10).slice(1)}, Units, GreatestSpeed)`,
  spacing: "=IRRIG.CHECK.SPACING(Spacing, Move, Wetted, Wind, Units)",
  soil: `=IRRIG.CHECK.RATE(${RATE}, Intake)`,
} as const;

type LineQuestion = keyof typeof LINE_QUESTIONS;

export interface LineAnswers {
  /** Whether the last sprinkler gets enough; undefined where it cannot be said. */
  readonly enough: boolean | undefined;
  /** "With the pressure I have, does the last head get enough?", in words. */
  readonly answer: Sentence;
  /** The short answers that stay in sight. */
  readonly figures: readonly {
    readonly what: string;
    readonly value: string;
    readonly number: number;
  }[];
  /** What else is wrong, in the checks' own words. */
  readonly warnings: readonly string[];
}

/** Within what a gauge shows. */
const SHOWN = { US: 0.05, SI: 0.5 };

/** What the line of the workbook does at the pressure there is. */
export function answerLine(book: AskedBook, inputs: Inputs, system: UnitSystem): LineAnswers {
  const heads = Number(inputs.get("Heads") ?? book.stands("Heads"));
  const large = Number(book.stands("Changeover"));
  // A shorter line has no more segments of the larger tubing than sprinklers.
  const whole: Inputs = new Map([...inputs, ["Changeover", Math.min(large, heads)]]);
  const said = book.ask(whole, LINE_QUESTIONS);
  const number = (key: LineQuestion) => said.number(key);
  const show = (key: LineQuestion, quantity: Quantity) => {
    const { unit, format } = shownAs(quantity, system);
    return `${formatValue(number(key), format)} ${unit}`;
  };
  const { error } = said.shown("last");
  if (error !== undefined)
    return {
      enough: undefined,
      answer: sentence("It cannot be said. {why}", { why: errorSaid(error.message) }),
      figures: [],
      warnings: [],
    };
  const tolerance = SHOWN[system];
  const last = number("last");
  const wanted = number("wanted");
  const lastGets = last >= wanted - tolerance;
  const everyGets = number("least") >= wanted - tolerance;
  const places = {
    last: show("last", "pressure"),
    wanted: show("wanted", "pressure"),
    least: show("least", "pressure"),
    head: formatValue(number("leastHead"), "0"),
  };
  const answer = everyGets
    ? sentence("Yes. The last sprinkler gets {last}, and every other {wanted} or more.", places)
    : lastGets
      ? sentence(
          "The last one does: {last}. But sprinkler {head} gets only {least}; {wanted} are wanted.",
          places,
        )
      : sentence("No. The last sprinkler gets {last}; {wanted} are wanted.", places);
  const checks = (["chart", "highest", "limit", "speed", "spacing", "soil"] as const).flatMap(
    (key) => {
      const { value, error: wrong } = said.shown(key);
      if (wrong !== undefined) return [errorSaid(wrong.message)];
      return value === "OK" ? [] : [textSaid(String(value))];
    },
  );
  return {
    enough: everyGets,
    answer,
    figures: [
      { what: "Last sprinkler", value: places.last, number: last },
      { what: "Lowest", value: places.least, number: number("least") },
      { what: "Varies by", value: formatValue(number("varies"), "0.0%"), number: number("varies") },
      { what: "Flow", value: show("flow", "flow"), number: number("flow") },
      { what: "Set", value: `${formatValue(number("hours"), "0.0")} h`, number: number("hours") },
    ],
    warnings: [...new Set(checks)],
  };
}
