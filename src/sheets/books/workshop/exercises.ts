import type { UnitSystem } from "../../kit/definition";
import type { ExerciseId, ExerciseWords, LessonId } from "./words/shape";

/** An exercise in one unit system: its numbers, and the call that gives the right answer. */
export interface Exercise {
  readonly id: ExerciseId;
  readonly lesson: LessonId;
  /** "" for a plain number. */
  readonly unit: string;
  /** A fraction that people also write in percent. */
  readonly fraction: boolean;
  /** A count: near is not right. */
  readonly whole: boolean;
  /** The numbers in the question and the hints, by name. */
  readonly given: Readonly<Record<string, number | string>>;
  readonly call: {
    /** "PIPE.FRICTION" */
    readonly name: string;
    readonly arguments: readonly (number | string | readonly number[])[];
    /** Where the call gives a table: row and column, from 1. */
    readonly pick?: readonly [number, number];
  };
  /** For showing the answer: no digit in which the rounded constants of the way by hand differ. */
  readonly format: string;
}

/** So near is right, so near is close: people read charts and round on the way. */
export const RIGHT_WITHIN = 0.01;
export const CLOSE_WITHIN = 0.05;

type Plan = Omit<Exercise, "given" | "unit" | "fraction" | "whole" | "format" | "call"> & {
  readonly unit?: readonly [us: string, si: string];
  readonly kind?: "fraction" | "whole";
  readonly us: Readonly<Record<string, number | string>>;
  readonly si?: Readonly<Record<string, number | string>>;
  readonly name: string;
  /** Names of given numbers; "units" is the unit system, and "a;b" one row of numbers. */
  readonly takes: readonly string[];
  readonly pick?: readonly [number, number];
  readonly format: string | readonly [us: string, si: string];
};

const CANS = { a: 10, b: 8, c: 12, d: 9, e: 11, f: 10, g: 7, h: 13 };

const plans: readonly Plan[] = [
  {
    id: "catchDepth",
    lesson: "cans",
    unit: ["in", "mm"],
    us: { volume: 68, opening: 4 },
    si: { volume: 65, opening: 100 },
    name: "APPLICATION.CATCH",
    takes: ["volume", "opening", "units"],
    format: "0.00",
  },
  {
    id: "uniformity",
    lesson: "cans",
    kind: "fraction",
    us: CANS,
    name: "APPLICATION.CU",
    takes: ["a;b;c;d;e;f;g;h"],
    format: "0.00",
  },
  {
    id: "driestQuarter",
    lesson: "cans",
    kind: "fraction",
    us: CANS,
    name: "APPLICATION.DU",
    takes: ["a;b;c;d;e;f;g;h"],
    format: "0.00",
  },
  {
    id: "rate",
    lesson: "rate",
    unit: ["in/h", "mm/h"],
    us: { flow: 4.1, spacing: 45, move: 50 },
    si: { flow: 0.92, spacing: 14, move: 15 },
    name: "APPLICATION.RATE",
    takes: ["flow", "spacing", "move", "units"],
    format: ["0.000", "0.00"],
  },
  {
    id: "netDepth",
    lesson: "rate",
    unit: ["in", "mm"],
    us: { holds: 2.1, root: 2, share: 0.5 },
    si: { holds: 175, root: 0.6, share: 0.5 },
    name: "SOIL.NET",
    takes: ["holds", "root", "share", "units"],
    format: ["0.00", "0.0"],
  },
  {
    id: "hours",
    lesson: "hours",
    unit: ["hours", "hours"],
    us: { depth: 1.4, rate: 0.175, efficiency: 0.76 },
    si: { depth: 35, rate: 4.38, efficiency: 0.76 },
    name: "SET.TIME",
    takes: ["depth", "rate", "efficiency"],
    format: "0.0",
  },
  {
    id: "setsADay",
    lesson: "hours",
    kind: "whole",
    us: { hours: 5.1, move: 0.75, day: 12 },
    name: "SET.PERDAY",
    takes: ["hours", "move", "day"],
    format: "0",
  },
  {
    id: "widestMove",
    lesson: "wind",
    unit: ["ft", "m"],
    us: { wetted: 92, wind: 4, share: 0.6 },
    si: { wetted: 28, wind: 6, share: 0.6 },
    name: "SPRINKLER.SPACING",
    takes: ["wetted", "wind", "units"],
    pick: [2, 2],
    format: "0.0",
  },
  {
    id: "friction",
    lesson: "pressure",
    unit: ["psi", "kPa"],
    us: { length: 240, bore: 1.72, flow: 36, c: 150 },
    si: { length: 75, bore: 44, flow: 8, c: 150 },
    name: "PIPE.FRICTION",
    takes: ["flow", "bore", "length", "units", "c"],
    format: ["0.00", "0.0"],
  },
  {
    id: "headFlow",
    lesson: "pressure",
    unit: ["gpm", "m³/h"],
    us: { k: 0.63, pressure: 36, root: 6 },
    si: { k: 0.0531, pressure: 256, root: 16 },
    name: "SPRINKLER.FLOW",
    takes: ["pressure", "k", "units"],
    format: "0.00#",
  },
  {
    id: "factor",
    lesson: "along",
    us: { outlets: 14 },
    name: "LATERAL.F",
    takes: ["outlets"],
    format: "0.000",
  },
  {
    id: "shortcut",
    lesson: "along",
    unit: ["psi", "kPa"],
    us: { flow: 57.4, bore: 2.178, length: 630, outlets: 14, c: 140 },
    si: { flow: 12.9, bore: 55.4, length: 196, outlets: 14, c: 140 },
    name: "LATERAL.LOSS",
    takes: ["flow", "bore", "length", "outlets", "units", "c"],
    format: "0.0#",
  },
  {
    id: "mostHeads",
    lesson: "band",
    kind: "whole",
    us: { inlet: 48, spacing: 45, bore: 2.178, k: 0.63, limit: 0.2, c: 140 },
    si: { inlet: 330, spacing: 14, bore: 55.4, k: 0.0531, limit: 0.2, c: 140 },
    name: "LATERAL.MAXHEADS",
    takes: ["limit", "inlet", "spacing", "bore", "k", "units", "", "", "c"],
    format: "0",
  },
  {
    id: "bore",
    lesson: "bore",
    unit: ["in", "mm"],
    us: { size: 50, sdr: 17 },
    name: "PIPE.INSIDE",
    takes: ["=ISO PE", "size", "sdr", "units"],
    format: ["0.000", "0.0"],
  },
  {
    id: "segment",
    lesson: "sizes",
    unit: ["psi", "kPa"],
    us: { heads: 14, segment: 8, left: 7, head: 4.1, flow: 28.7, bore: 1.732, length: 45, c: 140 },
    si: { heads: 14, segment: 8, left: 7, head: 0.92, flow: 6.44, bore: 44, length: 14, c: 140 },
    name: "PIPE.FRICTION",
    takes: ["flow", "bore", "length", "units", "c"],
    format: ["0.000", "0.00"],
  },
  {
    id: "pumpHead",
    lesson: "pump",
    unit: ["ft", "m"],
    us: { pressure: 56, losses: 4, sum: 60, lift: 18 },
    si: { pressure: 390, losses: 30, sum: 420, lift: 5.5 },
    name: "PUMP.TDH",
    takes: ["pressure", "lift", "losses", "units"],
    format: "0.0",
  },
  {
    id: "power",
    lesson: "pump",
    unit: ["hp", "kW"],
    us: { flow: 115, head: 150, efficiency: 0.62 },
    si: { flow: 26, head: 47, efficiency: 0.62 },
    name: "PUMP.POWER",
    takes: ["flow", "head", "efficiency", "units"],
    format: "0.0",
  },
  {
    id: "water",
    lesson: "end",
    unit: ["gal", "L"],
    us: { bore: 2.178, length: 315 },
    si: { bore: 55.4, length: 98 },
    name: "PIPE.VOLUME",
    takes: ["bore", "length", "units"],
    format: "0.0",
  },
];

export function exercises(system: UnitSystem): Exercise[] {
  return plans.map(({ id, lesson, unit, kind, us, si = us, name, takes, pick, format }) => {
    const given = system === "US" ? us : si;
    return {
      id,
      lesson,
      unit: unit?.[system === "US" ? 0 : 1] ?? "",
      fraction: kind === "fraction",
      whole: kind === "whole",
      given,
      call: {
        name,
        arguments: takes.map((part) => {
          if (part === "units") return system;
          if (part === "" || part.startsWith("=")) return part.slice(1);
          if (part.includes(";")) return part.split(";").map((one) => Number(given[one]));
          return given[part];
        }),
        ...(pick && { pick }),
      },
      format: typeof format === "string" ? format : format[system === "US" ? 0 : 1],
    };
  });
}

/** The call as a user types it, without the equals sign. */
export function callText({ call }: Exercise): string {
  const typed = call.arguments.map((part) => {
    if (typeof part === "object") return `{${part.join(",")}}`;
    if (part === "") return "";
    return typeof part === "string" ? `"${part}"` : String(part);
  });
  const text = `IRRIG.${call.name}(${typed.join(", ")})`;
  return call.pick === undefined ? text : `INDEX(${text}, ${call.pick.join(", ")})`;
}

/** Words with the exercise's numbers in the places of their names: "{flow}". */
export function filled(text: string, { given }: Exercise): string {
  return text.replace(/\{(\w+)\}/g, (whole, name: string) => String(given[name] ?? whole));
}

/** The words for a unit system. */
export function inSystem(words: ExerciseWords["hint"], system: UnitSystem): string {
  return typeof words === "string" ? words : words[system];
}
