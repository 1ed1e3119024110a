import type { Block, PageBuilder, Quantity } from "../kit/builder";
import type { Allowed } from "../kit/definition";
import type { PagePlan } from "../kit/workbook";
import type { Field } from "../parts/bluestem-flat";
import {
  amount,
  type Bounds,
  degrees,
  flow,
  fraction,
  height,
  hours,
  length,
  optional,
  pressure,
  price,
  sdr,
  size,
  temperature,
} from "../parts/limits";
import { MOST_CORNERS } from "./plan-room";

const OBSTACLES = 6;
const SPOTS = 12;

const blanks = (rows: number): undefined[] => Array.from({ length: rows }, () => undefined);
const place = optional(amount(-100000, 100000));

/** Everything that a plan is made from: field, obstacles, heights, choices, limits and prices. */
export function planFieldPage(field: Field): PagePlan {
  return {
    name: "Field",
    title: "Field, choices, limits and prices",
    purpose:
      "A rectangle needs its two lengths only. Any other field: type its corners in their order, and they count instead of the lengths; corners in degrees are turned into x and y. Prices are invented.",
    widths: [20, 11, 11, 11, 11, 11, 3, 20, 11, 11, 11, 11, 11, 3, 11, 11, 11, 11, 11],
    landscape: true,
    onePage: true,
    write(page) {
      const top = page.row;
      whole(page, field);
      corners(page);
      const left = page.row;
      page.row = top;
      around(page, field);
      page.row = Math.max(left, page.row);
      page.gap();
      choices(page, field);
      page.gap();
      page.heading(
        "Limits and prices, by the names that PLAN.SEARCH takes; a blank one is no limit",
      );
      terms(page, field);
      page.safety("plan on the ground", "pressure", "roads and buildings");
    },
  };
}

function whole(page: PageBuilder, field: Field): void {
  const block = page.block("A", 2);
  block.input("Units of this workbook", field.system, {
    name: "Units",
    allowed: { list: ["US", "SI"] },
    note: "US: ft, in, psi, gpm. SI: m, mm, kPa, m³/h. A change relabels the sheet; it converts no number that you typed.",
  });
  block.input("Name of the field", "Bluestem Flat", { name: "FieldName", allowed: { text: true } });
  block.input("Currency", field.currency, { name: "Currency", allowed: { text: true } });
  block.input("Rectangle: length from west to east", field.spacing * field.heads, {
    name: "EastLength",
    unit: "length",
    allowed: amount(1, 20000),
  });
  block.input("Rectangle: length from south to north", field.width, {
    name: "NorthLength",
    unit: "length",
    allowed: amount(1, 20000),
  });
  block.input("Corners below are typed as", "x and y", {
    name: "CornersAre",
    allowed: { list: ["x and y", "degrees"] },
    note: "x east and y north of one place of your own; or latitude and longitude in decimal degrees.",
  });
  block.input("Latitude of x 0, y 0", undefined, {
    name: "Latitude",
    unit: { word: "degrees" },
    allowed: optional(amount(-90, 90)),
    note: "Needed for corners in degrees and for the map file.",
  });
  block.input("Longitude of x 0, y 0", undefined, {
    name: "Longitude",
    unit: { word: "degrees" },
    allowed: optional(amount(-180, 180)),
  });
  page.below(block);
}

/** Corners as typed and as they count; a blank row is none. */
function corners(page: PageBuilder): void {
  const top = page.row;
  const row = (i: number) => top + 1 + i;
  const rectangle = {
    x: ["0", "EastLength", "EastLength", "0"],
    y: ["0", "0", "NorthLength", "NorthLength"],
  };
  const used = (axis: "x" | "y", index: number) =>
    blanks(MOST_CORNERS).map((_, i) => {
      const [latitude, longitude] = [`B${row(i)}`, `C${row(i)}`];
      const value = `IF(CornersAre="degrees", INDEX(IRRIG.FIELD.LOCAL(${latitude}:${longitude}, Latitude, Longitude, Units), 2, ${index}), ${axis === "x" ? latitude : longitude})`;
      // A cell left out is no 0: the functions name the corner that it belongs to.
      const half = `IF(OR(${latitude}="", ${longitude}=""), "missing", ${value})`;
      return `=IF(COUNT(CornersTyped)=0, ${rectangle[axis][i] ?? '""'}, IF(AND(${latitude}="", ${longitude}=""), "", ${half}))`;
    });
  const [, x, y] = page.table("A", [
    {
      header: "Corner",
      role: "label",
      rows: blanks(MOST_CORNERS).map((_, i) => `Corner ${i + 1}`),
    },
    { header: "x east, or latitude", role: "input", allowed: place, rows: blanks(MOST_CORNERS) },
    { header: "y north, or longitude", role: "input", allowed: place, rows: blanks(MOST_CORNERS) },
    { header: "x as it counts", unit: "length", role: "result", rows: used("x", 1) },
    { header: "y as it counts", unit: "length", role: "result", rows: used("y", 2) },
  ]);
  page.nameRange("CornersTyped", over(x, y));
  page.nameRange("Corners", `D${row(0)}:E${row(MOST_CORNERS - 1)}`);
}

/** Obstacles and heights, and water, pump and main below them. */
function around(page: PageBuilder, field: Field): void {
  const top = page.row;
  const [, ox, , r] = page.table("H", [
    {
      header: "Keep clear",
      role: "label",
      rows: blanks(OBSTACLES).map((_, i) => `Obstacle ${i + 1}`),
    },
    { header: "x", unit: "length", role: "input", allowed: place, rows: blanks(OBSTACLES) },
    { header: "y", unit: "length", role: "input", allowed: place, rows: blanks(OBSTACLES) },
    {
      header: "Radius",
      unit: "length",
      role: "input",
      allowed: optional(amount(0.1, 10000)),
      rows: blanks(OBSTACLES),
    },
  ]);
  page.nameRange("Obstacles", over(ox, r));
  page.gap();
  supply(page, field);
  const left = page.row;

  page.row = top;
  const [, sx, , h] = page.table("O", [
    { header: "Height", role: "label", rows: blanks(SPOTS).map((_, i) => `Spot ${i + 1}`) },
    { header: "x", unit: "length", role: "input", allowed: place, rows: blanks(SPOTS) },
    { header: "y", unit: "length", role: "input", allowed: place, rows: blanks(SPOTS) },
    {
      header: "Ground",
      unit: "length",
      role: "input",
      allowed: optional(height),
      rows: blanks(SPOTS),
    },
  ]);
  page.nameRange("SpotsTyped", over(sx, h));
  page.gap();
  const [flows, heads] = page.table("O", [
    {
      header: "Pump: flow",
      unit: "flow",
      role: "input",
      allowed: flow,
      rows: field.pumpCurve.map(([at]) => at),
    },
    {
      header: "Pump: head",
      unit: "length",
      role: "input",
      allowed: amount(0, 10000),
      rows: field.pumpCurve.map(([, at]) => at),
    },
  ]);
  page.nameRange("PumpCurve", over(flows, heads));
  page.row = Math.max(left, page.row);
}

function over(first: string, last: string): string {
  return `${first.split(":")[0]}:${last.split(":")[1]}`;
}

/** What the search does not ask: the wall's temperature, the main, the valve. */
function supply(page: PageBuilder, field: Field): void {
  const block = page.block("H", 2);
  block.input("Material of tubing and pipe", "PE100", {
    name: "Material",
    allowed: { list: ["PE100", "PE80", "PE4710", "PE3608", "PE2708"] },
    note: "As printed on the tubing and the pipe; where they differ, the weaker.",
  });
  block.input("Pipe wall in the sun", field.pipeTemperature, {
    name: "WallTemperature",
    unit: "temperature",
    allowed: temperature,
  });
  block.input("Main: size (mm)", field.mainTubing, { name: "MainSize", allowed: size });
  block.input("Main: SDR", field.sdr, { name: "MainSDR", allowed: sdr });
  block.input("Main: length", field.mainLength, {
    name: "MainLength",
    unit: "length",
    allowed: amount(1, 100000),
  });
  block.input("Main: greatest speed", field.greatestSpeed, {
    name: "MainSpeed",
    unit: "speed",
    allowed: amount(0.1, 30),
    note: "It says how much flow the main carries, and so how many lines may run at once.",
  });
  block.input("Main: lowest point below the hydrants", field.drop, {
    name: "Drop",
    unit: "length",
    allowed: amount(0, 1000),
    note: "The ground of the field is added where it is lower.",
  });
  block.input("Valve closes in", 5, {
    name: "Closure",
    unit: { word: "seconds" },
    allowed: amount(0, 3600),
  });
  block.input("Extra feeder for slack", field.slack, {
    name: "Slack",
    unit: "length",
    allowed: length,
  });
  page.below(block);
}

function choices(page: PageBuilder, field: Field): void {
  const us = field.system === "US";
  const step = us ? 5 : 1;
  const top = page.row;
  const given = optional(amount(0.1, 1000));
  const [, spacings, moves, pressures] = page.table("A", [
    { header: "To choose from", role: "label", rows: ["First", "Second", "Third"] },
    {
      header: "Spacing",
      unit: "length",
      role: "input",
      allowed: given,
      rows: [field.spacing, us ? 42 : 13, undefined],
    },
    {
      header: "Move",
      unit: "length",
      role: "input",
      allowed: given,
      rows: [field.move, field.move - step, undefined],
    },
    {
      header: "Lowest nozzle",
      unit: "pressure",
      role: "input",
      allowed: optional(pressure),
      rows: us ? [38, 40, 42] : [265, 275, 290],
    },
  ]);
  page.nameRange("Spacings", spacings);
  page.nameRange("Moves", moves);
  page.nameRange("Pressures", pressures);
  page.gap();
  const [names, at, flows, wetted] = sprinklers(page, field);
  page.nameRange("Sprinklers", over(names, wetted));
  page.nameRange("SprinklerNames", names);
  page.nameRange("SprinklerCharts", over(at, wetted));
  page.nameRange("SprinklerFlows", over(at, flows));
  const left = page.row;

  page.row = top;
  const money = field.price;
  sizes(
    page,
    "Line",
    [
      [field.largeTubing, money.large],
      [field.smallTubing, money.small],
      [field.smallestTubing, money.smallest],
    ],
    field,
  );
  page.gap();
  sizes(
    page,
    "Feeder",
    [
      [field.feederTubing, money.feeder],
      [field.mainTubing, Number((1.4 * money.feeder).toFixed(2))],
    ],
    field,
  );
  page.row = Math.max(left, page.row);
}

/** Name, pressure, flow and wetted diameter; the rows of a second sprinkler may be left blank. */
function sprinklers(page: PageBuilder, field: Field): string[] {
  const us = field.system === "US";
  const medium = field.chart.map(([at, q], i) => [
    at,
    q,
    (us ? [90, 92, 96] : [28, 28.2, 29.3])[i],
  ]);
  const small = us
    ? [
        [35, 3.4, 90],
        [45, 3.85, 91],
        [55, 4.2, 94],
      ]
    : [
        [250, 0.81, 27.6],
        [300, 0.88, 28],
        [350, 0.94, 28.8],
      ];
  const column = (header: string, allowed: Bounds, index: number, unit: Quantity) => ({
    header,
    unit,
    role: "input" as const,
    allowed,
    rows: [
      ...medium.map((row) => row[index]),
      ...small.map((row, i) => ({
        role: "input" as const,
        value: row[index],
        label: `${header}, row ${medium.length + i + 1}`,
        allowed: optional(allowed),
      })),
    ],
  });
  return page.table("A", [
    {
      header: "Sprinkler, by its chart",
      role: "input",
      allowed: { text: true },
      rows: [
        ...medium.map(() => "medium"),
        ...small.map((_, i) => ({
          role: "input" as const,
          value: "small",
          label: `Sprinkler, by its chart, row ${medium.length + i + 1}`,
          allowed: { text: true, optional: true } as const,
        })),
      ],
    },
    column("Pressure", pressure, 0, "pressure"),
    column("Flow", amount(0.001, 1000), 1, "headFlow"),
    column("Wetted", amount(0.1, 1000), 2, "length"),
  ]);
}

/** Sizes with bore, price and rating, each from its own wall: columns H to M. */
function sizes(
  page: PageBuilder,
  what: "Line" | "Feeder",
  rows: readonly (readonly [size: number, price: number])[],
  field: Field,
): void {
  const first = page.row + 1;
  const each = (formula: (row: number) => string) => rows.map((_, i) => formula(first + i));
  const [sizeRange, sdrs, names, , , ratings] = page.table("H", [
    { header: `${what}: size (mm)`, role: "input", allowed: size, rows: rows.map(([mm]) => mm) },
    { header: "SDR", role: "input", allowed: sdr, rows: rows.map(() => field.sdr) },
    { header: "Name", role: "result", rows: each((row) => `=H${row}&" mm"`) },
    {
      header: "Inside",
      unit: "diameter",
      role: "result",
      rows: each((row) => `=IRRIG.PIPE.INSIDE("ISO PE", H${row}, I${row}, Units)`),
    },
    {
      header: "Price per length",
      role: "input",
      format: "0.00",
      allowed: price,
      rows: rows.map(([, cost]) => cost),
    },
    {
      header: "Rating",
      unit: "pressure",
      role: "result",
      rows: each((row) => `=${rating(`I${row}`)}`),
    },
  ]);
  page.nameRange(`${what}Sizes`, over(names, ratings));
  page.nameRange(`${what}Names`, names);
  page.nameRange(`${what}Millimeters`, sizeRange);
  page.nameRange(`${what}SDRs`, sdrs);
}

/** At the wall's temperature, for the series that the material is sold in. */
export function rating(sdrCell: string): string {
  return `IRRIG.PIPE.RATING(Material, ${sdrCell}, Units, WallTemperature, IF(OR(Material="PE100", Material="PE80"), "ISO PE", "IPS PE"))`;
}

interface Term {
  readonly term: string;
  readonly value: number | undefined;
  readonly allowed: Allowed;
  readonly name: string;
  readonly unit?: Quantity | { readonly word: string };
  readonly note?: string;
}

/** What PLAN.SEARCH asks besides the tables, by its own names. */
function planTerms(field: Field): readonly Term[] {
  const us = field.system === "US";
  const { price: money } = field;
  return [
    { term: "bearing", value: 90, allowed: degrees, name: "Bearing", unit: { word: "degrees" } },
    { term: "setback", value: field.setback, allowed: length, name: "Setback", unit: "length" },
    { term: "coverage", value: 0.9, allowed: fraction, name: "LeastCoverage" },
    { term: "slope", value: 0, allowed: amount(-100, 100), name: "Slope", unit: { word: "%" } },
    { term: "wind", value: field.wind, allowed: amount(0, 200), name: "Wind", unit: "wind" },
    { term: "riser", value: field.riser, allowed: amount(0, 30), name: "Riser", unit: "length" },
    { term: "friction", value: field.friction, allowed: amount(50, 200), name: "Friction" },
    { term: "variation", value: 0.2, allowed: amount(0.01, 0.5), name: "Limit" },
    {
      term: "speed",
      value: field.greatestSpeed,
      allowed: amount(0.1, 30),
      name: "GreatestSpeed",
      unit: "speed",
    },
    { term: "share of rating", value: 0.72, allowed: amount(0.1, 1), name: "ShareOfRating" },
    {
      term: "intake",
      value: us ? 0.5 : 12.5,
      allowed: amount(0.01, 1000),
      name: "Intake",
      unit: "rate",
    },
    {
      term: "net depth",
      value: field.netDepth,
      allowed: amount(0.01, 1000),
      name: "NetDepth",
      unit: "depth",
    },
    { term: "efficiency", value: field.efficiency, allowed: fraction, name: "Efficiency" },
    { term: "uniformity", value: undefined, allowed: optional(fraction), name: "LowQuarter" },
    {
      term: "season depth",
      value: field.seasonDepth,
      allowed: amount(0.01, 10000),
      name: "SeasonDepth",
      unit: "depth",
    },
    {
      term: "days",
      value: field.days,
      allowed: amount(0.5, 60),
      name: "RoundLimit",
      unit: { word: "days" },
    },
    {
      term: "day hours",
      value: field.dayHours,
      allowed: amount(1, 24),
      name: "DayHours",
      unit: { word: "hours" },
    },
    {
      term: "move hours",
      value: field.moveHours,
      allowed: hours,
      name: "MoveHours",
      unit: { word: "hours" },
    },
    {
      term: "set hours",
      value: undefined,
      allowed: optional(amount(0.1, 200)),
      name: "FixedHours",
      unit: { word: "hours" },
    },
    { term: "lift", value: field.lift, allowed: height, name: "Lift", unit: "length" },
    {
      term: "main loss",
      value: us ? 6 : 40,
      allowed: amount(0, 2000),
      name: "MainLoss",
      unit: "pressure",
    },
    {
      term: "pump flow",
      value: undefined,
      allowed: optional(amount(0.1, 100000)),
      name: "MostPumpFlow",
      unit: "flow",
      note: "Blank: the last flow of the pump's curve. What the main carries at the greatest speed counts where it is less.",
    },
    {
      term: "pump head",
      value: undefined,
      allowed: optional(amount(0.1, 10000)),
      name: "MostPumpHead",
      unit: "length",
    },
    { term: "performance", value: 0.8, allowed: amount(0.1, 1.5), name: "Performance" },
    { term: "head price", value: money.headSet, allowed: price, name: "HeadPrice" },
    { term: "line price", value: 170, allowed: price, name: "LinePrice" },
    { term: "years", value: 12, allowed: { low: 1, high: 60, whole: true }, name: "Years" },
    { term: "interest", value: 0.06, allowed: amount(0, 0.99), name: "Interest" },
    { term: "escalation", value: 0, allowed: amount(0, 0.99), name: "Escalation" },
    { term: "upkeep", value: 0, allowed: amount(0, 0.99), name: "Upkeep" },
    { term: "energy price", value: money.energy, allowed: price, name: "EnergyPrice" },
    { term: "wage", value: money.labor, allowed: price, name: "Wage" },
  ];
}

function terms(page: PageBuilder, field: Field): void {
  const all = planTerms(field);
  const most = Math.ceil(all.length / 3);
  const blocks = ["A", "H", "O"].map((column, i): Block => {
    const block = page.block(column, column === "O" ? 2 : 1);
    for (const { term, value, ...rest } of all.slice(i * most, (i + 1) * most)) {
      block.input(term, value, rest);
    }
    return block;
  });
  page.below(...blocks);
}

/** The same in the two columns that PLAN.SEARCH takes, at `column` of the next free row. */
export function termsTable(page: PageBuilder, column: string, field: Field): void {
  const all = planTerms(field);
  const [names, values] = page.table(column, [
    { header: "Term", role: "label", rows: all.map(({ term }) => term) },
    {
      header: "Value",
      role: "result",
      format: "General",
      rows: all.map(({ term, name }) =>
        term === "pump flow" ? "=FlowLimit" : `=IF(${name}="", "", ${name})`,
      ),
    },
  ]);
  page.nameRange("Terms", over(names, values));
  const [first] = names.split(":");
  const row = Number(/\d+/.exec(first)?.[0]) + all.findIndex(({ term }) => term === "pump flow");
  page.nameRange("FlowTerm", `${column}${row}:${column}${row}`);
}
