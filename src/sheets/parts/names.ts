import type { UnitSystem } from "../kit/definition";
import type { PagePlan } from "../kit/workbook";

interface OwnName {
  readonly name: string;
  readonly formula: string;
  readonly says: string;
  /** A cell that uses it, with its result's format. */
  readonly use: string;
  readonly format: string;
}

/** Names that stand on their own: nothing in them but arguments, Units and Friction. */
function ownNames(system: UnitSystem): OwnName[] {
  const us = system === "US";
  return [
    {
      name: "MyLoss",
      formula:
        "=LAMBDA(flow, inside, length, IRRIG.PIPE.FRICTION(flow, inside, length, Units, 140))",
      says: "Pressure lost in a pipe, with your own friction C fixed at 140.",
      use: us ? "=MyLoss(30, 1.73, 100)" : "=MyLoss(6, 44, 30)",
      format: "0.00",
    },
    {
      name: "MyBore",
      formula: '=LAMBDA(size, IRRIG.PIPE.INSIDE("ISO PE", size, 17, Units))',
      says: "Inside diameter of the tubing you stock, by its nominal size in mm, SDR 17.",
      use: "=MyBore(50)",
      format: us ? "0.000" : "0.0",
    },
    {
      name: "MyHours",
      formula:
        "=LAMBDA(depth, flow, spacing, move, IRRIG.SET.TIME(depth, IRRIG.APPLICATION.RATE(flow, spacing, move, Units), 0.75))",
      says: "Hours for a net depth from the flow of a sprinkler, with your own efficiency fixed at 0.75.",
      use: us ? "=MyHours(1, 4.1, 45, 50)" : "=MyHours(25, 0.93, 14, 15)",
      format: "0.0",
    },
  ];
}

/** Function names of a designer's own, made from ours with LAMBDA. Nothing else depends on them. */
export function namesPage(system: UnitSystem): PagePlan {
  return {
    name: "Names",
    title: "Function names of your own",
    purpose:
      "Short names for what you type most. Open Formulas, Name Manager to change one or to add your own; type them in any cell of this workbook.",
    widths: [14, 30, 76, 12],
    landscape: true,
    write(page) {
      page.purpose(
        "They need Excel 365, Excel 2024 or Excel for the web: older versions have no LAMBDA and show #NAME? here, on this page only. No other page depends on it.",
      );
      page.gap();
      const own = ownNames(system);
      page.table("A", [
        { header: "Name", role: "label", rows: own.map(({ name }) => name) },
        { header: "For instance", role: "formulaText", rows: own.map(({ use }) => `'${use}`) },
        { header: "What it does", role: "text", rows: own.map(({ says }) => says) },
        { header: "Gives", role: "result", rows: own.map(({ use }) => use), format: "0.000" },
      ]);
      page.gap();
      const stands = page.row;
      page.table("A", [
        { header: "Name", role: "label", rows: own.map(({ name }) => name) },
        {
          header: "What it stands for",
          role: "formulaText",
          span: 3,
          rows: own.map(({ formula }) => `'${formula}`),
        },
      ]);
      own.forEach((_, i) => page.needsLines(stands + 1 + i, 2));
      for (const { name, formula } of own) page.nameFunction(name, formula);
    },
  };
}
