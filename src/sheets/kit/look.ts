import { palette, seriesColors } from "../../palette";
import type { DrawnLook, Role, SheetCell } from "./definition";

/** How a role looks, in a workbook file, on the trial page and in the open workbook alike. */
export interface Look {
  /** Points. */
  readonly size?: number;
  readonly bold?: boolean;
  readonly italic?: boolean;
  readonly ink?: string;
  readonly fill?: string;
  /** Color of a line under the cell. */
  readonly rule?: string;
  readonly wrap?: boolean;
  readonly monospaced?: boolean;
  readonly align?: "left" | "right";
  /** Characters of room before text that stands behind a number. */
  readonly indent?: number;
}

export const BODY_SIZE = 10;

/** With the same measures everywhere, also where only its free twin is installed. */
export const FONT = "Arial";
export const MONOSPACED = "Courier New";

export const looks: Readonly<Record<Role, Look>> = {
  title: { size: 16, bold: true, ink: palette.moss },
  purpose: { ink: palette.quiet, wrap: true },
  question: { italic: true, ink: palette.moss, fill: palette.mossWash, wrap: true },
  answer: { bold: true, fill: palette.mossWash, wrap: true, align: "left" },
  heading: { size: 12, bold: true, ink: palette.moss, rule: palette.mossRule },
  label: {},
  unit: { ink: palette.quiet, align: "left", indent: 1 },
  input: { fill: palette.heatherTint, rule: palette.heather, ink: palette.heather, align: "right" },
  result: { align: "right" },
  sentence: { align: "left", wrap: true, indent: 1 },
  mark: { bold: true, align: "left", wrap: true, indent: 1 },
  working: { ink: palette.quiet, align: "left", wrap: true, size: 8 },
  check: { bold: true, align: "left", wrap: true, indent: 1 },
  header: { bold: true, fill: palette.mossTint, wrap: true, align: "right" },
  text: { wrap: true },
  formulaText: {
    ink: palette.quiet,
    monospaced: true,
    size: 9,
    align: "left",
    wrap: true,
    indent: 1,
  },
  caution: { ink: palette.clay, wrap: true },
};

/** A check's cell, by what it says; the text itself says it too. */
export const passed: Look = { ink: palette.fern };
export const failed: Look = { ink: palette.clay, fill: palette.clayTint };
export const waiting: Look = { ink: palette.quiet };

/** How a check begins that waits: for something to be typed, or for what it judges. */
export const WAITING: readonly string[] = ["Type ", "Not judged"];

export type Verdict = "passed" | "failed" | "waiting";

/** What a check's cell says; one that is blank has yet to say it. */
export function verdictOf(value: unknown, waiting = WAITING): Verdict {
  if (value === "OK") return "passed";
  const text = String(value ?? "");
  const waits = text === "" || waiting.some((begin) => text.startsWith(begin));
  return waits ? "waiting" : "failed";
}

/** What a chart's series are drawn in. */
export const seriesInks = seriesColors.map((name) => palette[name]);

/** What an input holds changes its look: text over several cells reads from the left. */
export function lookOf({ role, span }: Pick<SheetCell, "role" | "span">, value: unknown): Look {
  const look = looks[role];
  if (role === "input" && typeof value === "string" && span !== undefined) {
    return { ...look, align: "left", wrap: true };
  }
  return look;
}

/** What both axes of a drawing show: its square from 0 to 1, and a margin. */
export const DRAWN = { low: -0.1, high: 1.1 };

/** How a series of a drawing is drawn: a line, marks, or both; nothing of either is not seen. */
export interface SeriesLook {
  readonly ink: string;
  /** Points. */
  readonly line?: { readonly width: number; readonly dashed?: true };
  readonly mark?: {
    readonly shape: "circle" | "square" | "diamond" | "triangle";
    readonly size: number;
  };
}

export const drawnLooks: Readonly<Record<DrawnLook, SeriesLook>> = {
  edge: { ink: palette.ink, line: { width: 2 } },
  line: { ink: palette.moss, line: { width: 1 } },
  head: { ink: palette.moss, mark: { shape: "circle", size: 3 } },
  change: { ink: palette.clay, mark: { shape: "diamond", size: 6 } },
  feeder: { ink: palette.heather, line: { width: 1.25, dashed: true } },
  hydrant: { ink: palette.heather, mark: { shape: "square", size: 8 } },
  clear: { ink: palette.clay, mark: { shape: "circle", size: 2 } },
  apart: { ink: palette.moss, mark: { shape: "circle", size: 2 } },
  start: { ink: palette.ink, mark: { shape: "triangle", size: 9 } },
  bar: { ink: palette.ink, line: { width: 3 } },
  north: { ink: palette.ink, line: { width: 1.5 } },
  nothing: { ink: palette.ink },
};

/** What says of itself what it is, or is not seen: no legend lists it. */
export const UNLISTED: ReadonlySet<DrawnLook> = new Set(["nothing", "bar", "north"]);
