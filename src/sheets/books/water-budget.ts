import { type PageBuilder, unitText } from "../kit/builder";
import type { PagePlan } from "../kit/workbook";
import type { Field } from "../parts/bluestem-flat";
import { amount, optional } from "../parts/limits";
import { SENTENCE_COLUMNS } from "../parts/sentences";

const MONTHS = 12;

/** Of a month, from a flow by day and night: 365 days in twelve parts. */
const MONTH_OF_FLOW = 'IF(Units="SI", 24, 1440)*365/12';

/** Month by month: what crop and rain leave for irrigation, and what that leaves in the pond. */
export function waterBudgetPage(field: Field): PagePlan {
  return {
    name: "Water budget",
    title: "Water budget: crop, rain and pond, month by month",
    purpose:
      "Begin with the month in which the pond is full. Take the rain of a dry year: an average year leaves half of the years short.",
    widths: [13, 11, 11, 12, 13, 11, 11, 13, 13, 3, 8, 13, 13, 13],
    landscape: true,
    onePage: true,
    write: (page) => waterBudget(page, field),
  };
}

function waterBudget(page: PageBuilder, field: Field): void {
  page.heading("The months");
  const top = page.row;
  const rows = Array.from({ length: MONTHS }, (_, i) => top + 1 + i);
  const [names, uses, , , losses, , nets, needs, inflows] = page.table(
    "A",
    [
      {
        header: "Month",
        role: "input",
        allowed: { text: true },
        rows: field.months.map(([month]) => month),
      },
      {
        header: "Crop use",
        unit: "depth",
        role: "input",
        allowed: amount(0, 775),
        rows: field.months.map(([, use]) => use),
      },
      {
        header: "Rain, dry year",
        unit: "depth",
        role: "input",
        allowed: amount(0, 5000),
        rows: field.months.map(([, , rain]) => rain),
      },
      {
        header: "Inflow, if not usual",
        unit: "fieldVolume",
        role: "input",
        allowed: optional(amount(0, 1e12)),
        rows: field.months.map(() => undefined),
      },
      {
        header: "Seepage and evaporation",
        unit: "fieldVolume",
        role: "input",
        format: "#,##0",
        allowed: amount(0, 1e12),
        rows: field.months.map(([, , , loss]) => loss),
      },
      {
        header: "Effective rain",
        unit: "depth",
        role: "result",
        rows: rows.map((row) => `=IRRIG.SOIL.RAIN(C${row}, B${row}, NetDepth, Units)`),
      },
      {
        header: "Net irrigation",
        unit: "depth",
        role: "result",
        rows: rows.map((row) => `=MAX(0, B${row}-F${row})`),
      },
      {
        header: "Water pumped",
        unit: "fieldVolume",
        role: "result",
        rows: rows.map((row) => `=IRRIG.SYSTEM.VOLUME(Area, G${row}/Efficiency, Units)`),
      },
      {
        header: "Inflow counted",
        unit: "fieldVolume",
        role: "result",
        rows: rows.map((row) => `=IF(D${row}="", Inflow*${MONTH_OF_FLOW}, D${row})`),
      },
    ],
    top,
  );
  page.needsLines(top, 3);
  page.nameRange("MonthName", names);
  page.nameRange("MonthUse", uses);
  page.nameRange("MonthNet", nets);
  page.nameRange("MonthNeed", needs);
  page.nameRange("MonthInflow", inflows);
  page.nameRange("MonthLoss", losses);
  page.row = top;
  const balance = page.spill(
    "K",
    "=IRRIG.SOURCE.BALANCE(Pond, MonthNeed, Units, MonthInflow, MonthLoss)",
    {
      rows: MONTHS + 1,
      headerLines: 3,
      columns: [{ format: "0" }, "fieldVolume", "fieldVolume", "fieldVolume"],
    },
  );
  const short = `M${top + 1}:M${top + MONTHS}`;
  const held = `L${top + 1}:L${top + MONTHS}`;
  page.gap();

  const found = page.block("A");
  found.heading("The year");
  found.result("Net irrigation of all months", "=SUM(MonthNet)", {
    name: "MonthsNet",
    unit: "depth",
  });
  found.result("Water pumped in all months", "=SUM(MonthNeed)", {
    name: "MonthsVolume",
    unit: "fieldVolume",
  });
  // Where the balance is an error, the cells that it fills are blank: it is asked first.
  const known = (formula: string) => `=IF(ISERROR(${balance}), ${balance}, ${formula})`;
  found.result("Least that the pond holds", known(`MIN(${held})`), {
    name: "PondLeast",
    unit: "fieldVolume",
  });
  found.result("Short in all months", known(`SUM(${short})`), {
    name: "PondShort",
    unit: "fieldVolume",
  });
  page.below(found);

  const checks = page.block("A");
  checks.check(
    "Pond, month by month",
    `=IF(PondShort=0, "OK", "The pond is short of "&FIXED(PondShort, 0)&" "&${unitText("fieldVolume")}&", most in "&INDEX(MonthName, MATCH(MAX(${short}), ${short}, 0))&": store more, find more inflow, or irrigate less.")`,
    SENTENCE_COLUMNS,
  );
  checks.check(
    "Season and the months",
    `=IF(SeasonNet="", "OK", IF(SeasonNet>=0.95*MonthsNet, "OK", "The months ask for "&FIXED(MonthsNet, 1)&" "&${unitText("depth")}&"; the page Season says "&FIXED(SeasonNet, 1)&": leave it blank there, or correct the months."))`,
    SENTENCE_COLUMNS,
  );
  page.below(checks);
  page.text(
    "Effective rain by the Soil Conservation Service's method for whole months. Steep ground, tight soil and cloudbursts leave less of it. The inflow is that of the page Water source where none is typed.",
  );
  page.safety("water edge");
}
