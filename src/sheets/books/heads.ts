import type { SheetHead } from "../kit/definition";

/**
 * What is told of each workbook where it is chosen, before its pages are there, in the order in which
 * screens list them.
 */
export const heads = {
  lineLayout: {
    id: "line-layout",
    title: "Line layout",
    purpose:
      "For whoever lays out a line: how many sprinklers, which tubing, what each one gets, and what the gauges should read.",
  },
  plan: {
    id: "plan",
    title: "Plan",
    purpose:
      "For a dealer and an installer: from the corners of a field to the cheapest plans, the drawing, the runs, the bill and the flags.",
  },
  quote: {
    id: "quote",
    title: "Quote",
    purpose:
      "For a dealer: from the layout to a bill of materials, priced, on one page for the customer.",
  },
  workshop: {
    id: "workshop",
    title: "Workshop",
    purpose:
      "For an officer or a teacher: the reasons behind the numbers, step by step, by hand and by function, with exercises that check themselves.",
  },
  spacingWhatIf: {
    id: "spacing-what-if",
    title: "Spacing what-if",
    purpose:
      "For a dealer or a designer who weighs spacings, moves, pressures and sizes against each other before anything is bought.",
  },
  season: {
    id: "season",
    title: "Season",
    purpose:
      "From soil, crop, weather and rain to hours, moves, lines, pond, pump and power, and how to put the line away in the fall.",
  },
} satisfies Readonly<Record<string, SheetHead>>;
