import type { PageBuilder } from "../kit/builder";
import type { PagePlan } from "../kit/workbook";
import type { Field } from "../parts/bluestem-flat";
import { outside } from "../parts/supply";
import { rating, termsTable } from "./plan-field";
import { flagRows } from "./plan-flags";
import {
  MOST_CORNERS,
  MOST_HEADS,
  MOST_HYDRANTS,
  MOST_LIMITS,
  MOST_RUNS,
  PLANS,
} from "./plan-room";

/** Without the rows that are blank: a host may hand those over as zeros, and (0, 0) is a corner. */
export const CORNERS = 'FILTER(Corners, INDEX(Corners, 0, 1)<>"")';

/** A row with any of its numbers counts: the functions name the one that is not there. */
const typed = (table: string, none: string) =>
  `IF(COUNT(${table})=0, ${none}, FILTER(${table}, INDEX(${table}, 0, 1)&INDEX(${table}, 0, 2)&INDEX(${table}, 0, 3)<>""))`;
export const OBSTACLES = typed("Obstacles", '""');
const SPOTS = typed("SpotsTyped", '""');

const SEARCHED = `${CORNERS}, Spacings, Moves, Pressures, Sprinklers, LineSizes, FeederSizes, Terms, Units`;
const LAID = `${CORNERS}, Bearing, ChosenSpacing, ChosenMove, Units, , Setback, ${OBSTACLES}, ChosenHeads`;

/** A limit as PLAN.SEARCH and PLAN.LIMITS name it; that of the flow by what it is the limit of. */
export function limitInWords(limit: string): string {
  return `IF(MID(${limit}, 1, 9)=FlowTerm, FlowLimitWords&MID(${limit}, 10, 20), ${limit})`;
}

/**
 * What the row that is chosen says in one of PLAN.SEARCH's columns: the search's own error, #N/A where
 * there is no such row.
 */
const chosen = (column: number) =>
  `=IF(ISERROR(PlanHead), PlanHead, INDEX(BestPlans, MATCH(Chosen, PlanNumbers, 0), ${column}))`;

const general = (count: number) => Array.from({ length: count }, () => ({ format: "General" }));

/** All that the page Plan shows, worked out: the search, the row chosen, its runs and heads. */
export function planRunsPage(field: Field): PagePlan {
  return {
    name: "Runs",
    title: "Behind the plan: the search, the row chosen, its runs and heads",
    purpose:
      "Nothing to change here. The page Plan shows what stands in these tables; further runs and heads of a large field are found here.",
    widths: [24, ...Array.from({ length: 31 }, () => 11)],
    landscape: true,
    working: true,
    write(page) {
      search(page, field);
      const top = page.row;
      chosenPlan(page);
      const after = page.row;
      page.row = top;
      termsTable(page, "H", field);
      const terms = page.row;
      page.row = top;
      limits(page);
      page.row = Math.max(after, terms, page.row);
      page.gap();
      laid(page, field);
    },
  };
}

/** Plans that there are of the demo. */
const BEST = { US: 3, SI: 4 };

function search(page: PageBuilder, field: Field): void {
  page.heading("The best plans");
  const best = page.row;
  page.spill("A", `=IRRIG.PLAN.SEARCH(${SEARCHED}, ${PLANS}, ${OBSTACLES}, ${SPOTS})`, {
    rows: 1 + BEST[field.system],
    reserved: PLANS + 1,
    headerLines: 3,
    columns: general(30),
  });
  page.nameRange("PlanHead", `A${best}`);
  page.nameRange("BestPlans", `A${best + 1}:AD${best + PLANS}`);
  page.gap();
}

function limits(page: PageBuilder): void {
  const top = page.row;
  page.spill("L", `=IRRIG.PLAN.LIMITS(${SEARCHED}, ${OBSTACLES}, ${SPOTS})`, {
    rows: 12,
    reserved: MOST_LIMITS + 1,
    columns: general(5),
  });
  page.nameRange("LimitsHead", `L${top}`);
  page.nameRange("PlanLimits", `L${top + 1}:P${top + MOST_LIMITS}`);
  page.row = top;
  const [rows] = page.table("R", [
    {
      header: "Gives a plan",
      role: "result",
      format: "General",
      rows: Array.from(
        { length: MOST_LIMITS },
        (_, i) => `=IF(ISNUMBER(P${top + 1 + i}), "", IF(ISNUMBER(N${top + 1 + i}), ${i + 1}, ""))`,
      ),
    },
  ]);
  page.nameRange("LimitRows", rows);
  page.row = top;
  // Where every corner lies among the spots, all of the field does.
  const [outside] = page.table("T", [
    {
      header: "Corner outside the spots",
      role: "result",
      format: "General",
      rows: Array.from({ length: MOST_CORNERS }, (_, i) => {
        const corner = `INDEX(Corners, ${i + 1}, 1)`;
        const height = `INDEX(IRRIG.FIELD.HEIGHT(INDEX(Corners, ${i + 1}, 0), ${SPOTS}), 1, 1)`;
        return `=IF(COUNT(SpotsTyped)=0, "", IF(${corner}="", "", IF(IFNA(${height}, "outside")="outside", ${i + 1}, "")))`;
      }),
    },
  ]);
  page.nameRange("CornersOutside", outside);
}

function chosenPlan(page: PageBuilder): void {
  const [numbers] = page.table("A", [
    {
      header: "Rows that there are",
      role: "result",
      format: "General",
      rows: Array.from(
        { length: PLANS },
        (_, i) => `=IF(INDEX(BestPlans, ${i + 1}, 1)="", "", ${i + 1})`,
      ),
    },
  ]);
  page.nameRange("PlanNumbers", numbers);
  page.gap();
  page.headingOver(1, page.row, 6, "The row chosen");
  page.row++;
  const block = page.block("A", 1);
  const line = block.result.bind(block);
  line("Spacing", chosen(1), { name: "ChosenSpacing", unit: "length" });
  line("Move", chosen(2), { name: "ChosenMove", unit: "length" });
  line("Sprinkler", chosen(3), { name: "ChosenSprinkler", format: "General" });
  line("Lines", chosen(4), { name: "ChosenLines", format: "0" });
  line("Heads on a line", chosen(5), { name: "ChosenHeads", format: "0" });
  line("Larger tubing", chosen(6), { name: "ChosenLarger", format: "General" });
  line("Larger: segments", chosen(7), { name: "LargerSegments", format: "0" });
  line("Smaller tubing", chosen(8), { name: "ChosenSmaller", format: "General" });
  line("Smaller: segments", chosen(9), { name: "SmallerSegments", format: "0" });
  line("Feeder", chosen(10), { name: "ChosenFeeder", format: "General" });
  line("Feeder, straight", chosen(11), { name: "FeederStraight", unit: "length" });
  line("Feeder with slack", "=FeederStraight+Slack", { name: "FeederLength", unit: "length" });
  line("Sets", chosen(12), { name: "ChosenSets", format: "0" });
  line("Set time", chosen(13), { name: "ChosenHours", unit: { word: "hours" }, format: "0.0" });
  line("Sets a day with one line", chosen(14), { name: "ChosenPerDay", format: "0" });
  line("Days of a round", "=ROUNDUP(ROUNDUP(ChosenSets/ChosenLines, 0)/ChosenPerDay, 0)", {
    name: "ChosenRound",
    format: "0",
  });
  line("Lowest nozzle, wanted", chosen(15), { name: "ChosenLowest", unit: "pressure" });
  line("Inlet of a line", chosen(17), { name: "ChosenInlet", unit: "pressure" });
  line("Pump head needed", chosen(18), { name: "ChosenHead", unit: "length" });
  line("Flow in all", chosen(20), { name: "ChosenFlow", unit: "flow" });
  line("Rate", chosen(22), { name: "ChosenRate", unit: "rate" });
  line("Share covered", chosen(23), { name: "ChosenCoverage", format: "0.0%" });
  line("Cost a year", chosen(28), { name: "ChosenCost", format: "#,##0", money: true });
  line("Larger: inside", `=${sizeOf("Line", "ChosenLarger", 2)}`, {
    name: "LargerInside",
    unit: "diameter",
  });
  line(
    "Smaller: inside",
    `=IF(ChosenSmaller="", LargerInside, ${sizeOf("Line", "ChosenSmaller", 2)})`,
    {
      name: "SmallerInside",
      unit: "diameter",
    },
  );
  line("Feeder: inside", `=${sizeOf("Feeder", "ChosenFeeder", 2)}`, {
    name: "FeederInside",
    unit: "diameter",
  });
  line("Main: inside", '=IRRIG.PIPE.INSIDE("ISO PE", MainSize, MainSDR, Units)', {
    name: "MainInside",
    unit: "diameter",
  });
  line("Flow that the main carries", "=IRRIG.FLUSH.FLOW(MainInside, Units, MainSpeed)", {
    name: "MainFlow",
    unit: "flow",
  });
  line("Pump's most flow", `=IF(MostPumpFlow="", MAX(INDEX(PumpCurve, 0, 1)), MostPumpFlow)`, {
    name: "PumpFlow",
    unit: "flow",
  });
  line("Flow limit of the search", "=MIN(MainFlow, PumpFlow)", { name: "FlowLimit", unit: "flow" });
  line("Flow limit, in words", `=IF(MainFlow<PumpFlow, "flow in the main", "pump flow")`, {
    name: "FlowLimitWords",
    format: "General",
  });
  line("Wetted diameter at the lowest nozzle", `=${WETTED}`, {
    name: "ChosenWetted",
    unit: "length",
  });
  line("Pump's head at that flow", "=IRRIG.PUMP.CURVE(PumpCurve, ChosenFlow)", {
    name: "PumpHead",
    unit: "length",
  });
  line(
    "Lowest ground, below height 0",
    "=MAX(0, 0-MIN(INDEX(Heads, 0, 7)), 0-MIN(INDEX(SpotsTyped, 0, 3)))",
    {
      name: "LowestGround",
      unit: "length",
    },
  );
  line(
    "Highest static pressure, valves shut",
    "=IRRIG.PUMP.STATIC(PumpCurve, Lift, Units, MAX(Drop, LowestGround))",
    {
      name: "StaticPressure",
      unit: "pressure",
    },
  );
  line("Surge in main, feeder or line, the highest", `=${SURGE}`, {
    name: "Surge",
    unit: "pressure",
  });
  line("Static pressure with surge", "=StaticPressure+Surge", {
    name: "WithSurge",
    unit: "pressure",
  });
  line("Rating of the weakest part", `=${WEAKEST}`, { name: "PipeRating", unit: "pressure" });
  page.below(block);
}

function sizeOf(what: "Line" | "Feeder", name: string, column: number): string {
  return `INDEX(${what}Sizes, MATCH(${name}, ${what}Names, 0), ${column})`;
}

const CHART = "FILTER(SprinklerCharts, SprinklerNames=ChosenSprinkler)";

/** Straight between the chart's rows, as the search takes it. */
const WETTED =
  `MIN(INDEX(${CHART}, MATCH(ChosenLowest, INDEX(${CHART}, 0, 1), 1), 3)+` +
  `(ChosenLowest-INDEX(${CHART}, MATCH(ChosenLowest, INDEX(${CHART}, 0, 1), 1), 1))*` +
  `IF(MATCH(ChosenLowest, INDEX(${CHART}, 0, 1), 1)=ROWS(${CHART}), 0, ` +
  `(INDEX(${CHART}, MIN(ROWS(${CHART}), MATCH(ChosenLowest, INDEX(${CHART}, 0, 1), 1)+1), 3)-INDEX(${CHART}, MATCH(ChosenLowest, INDEX(${CHART}, 0, 1), 1), 3))/` +
  `(INDEX(${CHART}, MIN(ROWS(${CHART}), MATCH(ChosenLowest, INDEX(${CHART}, 0, 1), 1)+1), 1)-INDEX(${CHART}, MATCH(ChosenLowest, INDEX(${CHART}, 0, 1), 1), 1))))`;

const millimeters = (what: "Line" | "Feeder", name: string) =>
  outside(`INDEX(${what}Millimeters, MATCH(${name}, ${what}Names, 0))`);

const MOST_FLOW = "MAX(INDEX(Solved, 0, 4))";

const SURGE =
  `MAX(IRRIG.PIPE.SURGE(ChosenFlow, ${outside("MainSize")}, MainInside, Units, MainLength, Closure), ` +
  `IRRIG.PIPE.SURGE(${MOST_FLOW}, ${millimeters("Feeder", "ChosenFeeder")}, FeederInside, Units, FeederLength, Closure), ` +
  `IRRIG.PIPE.SURGE(${MOST_FLOW}, ${millimeters("Line", "ChosenLarger")}, LargerInside, Units, ChosenHeads*ChosenSpacing, Closure))`;

const WEAKEST = `MIN(${sizeOf("Line", "ChosenLarger", 4)}, IF(ChosenSmaller="", ${sizeOf("Line", "ChosenLarger", 4)}, ${sizeOf("Line", "ChosenSmaller", 4)}), ${sizeOf("Feeder", "ChosenFeeder", 4)}, ${rating("MainSDR")})`;

/** The layout of the row chosen: what the drawing, the runs and the flags are made from. */
function laid(page: PageBuilder, field: Field): void {
  const first = page.row + 1;
  // Without spot heights the ground is a plane that rises along the lines by the slope of the terms.
  const plane = [
    ["-200000", "-200000"],
    ["200000", "-200000"],
    ["0", "200000"],
  ];
  page.table("A", [
    {
      header: "Larger and smaller tubing",
      role: "result",
      format: "General",
      rows: ["=ChosenLarger", '=IF(SmallerSegments=0, "", ChosenSmaller)'],
    },
    {
      header: "Inside",
      unit: "diameter",
      role: "result",
      rows: ["=LargerInside", '=IF(SmallerSegments=0, "", SmallerInside)'],
    },
    {
      header: "Segments",
      role: "result",
      format: "0",
      rows: ["=LargerSegments", '=IF(SmallerSegments=0, "", SmallerSegments)'],
    },
  ]);
  page.nameRange("ChosenTubing", `B${first}:C${first + 1}`);
  page.row = first - 1;
  const [x, , h] = page.table("E", [
    { header: "Plane: x", role: "result", rows: plane.map(([at]) => `=${at}`) },
    { header: "Plane: y", role: "result", rows: plane.map(([, at]) => `=${at}`) },
    {
      header: "Plane: height",
      role: "result",
      rows: plane.map(
        (_, i) =>
          `=Slope/100*(E${first + i}*SIN(RADIANS(Bearing))+F${first + i}*COS(RADIANS(Bearing)))`,
      ),
    },
  ]);
  page.nameRange("Plane", `${x.split(":")[0]}:${h.split(":")[1]}`);
  page.gap();
  page.heading(
    "Runs; every one solved on its own ground; hydrants and feeders; the order of moves",
  );
  const top = page.row;
  const until = (columns: string) => {
    const [from, to] = columns.split(":");
    return `${from}${top + 1}:${to}${top + MOST_RUNS}`;
  };
  const spill = (column: string, formula: string, columns: number, rows: number, most: number) => {
    page.row = top;
    page.spill(column, formula, {
      rows: rows + 1,
      reserved: most + 1,
      headerLines: 3,
      columns: Array.from({ length: columns }, () => ({ format: "0.0##" })),
    });
  };
  spill("A", `=IRRIG.FIELD.RUNS(${LAID})`, 10, field.positions, MOST_RUNS);
  page.nameRange("Runs", until("A:J"));
  spill(
    "L",
    "=IRRIG.LATERAL.RUNS(ChosenInlet, Heads, ChosenSpacing, ChosenTubing, FILTER(SprinklerFlows, SprinklerNames=ChosenSprinkler), Units, , Friction, , Riser, ChosenLowest)",
    10,
    field.positions,
    MOST_RUNS,
  );
  page.nameRange("Solved", until("L:U"));
  spill(
    "W",
    `=IRRIG.FEEDER.REACH(Runs, Hydrants, FeederLength, ${CORNERS})`,
    5,
    field.positions,
    MOST_RUNS,
  );
  page.nameRange("Reach", until("W:AA"));
  spill(
    "AC",
    "=IRRIG.SET.PLAN(ChosenLines, ChosenSets, ChosenHours, MoveHours, DayHours)",
    4,
    field.positions,
    MOST_RUNS,
  );
  page.nameRange("Turns", until("AC:AF"));
  page.row = top + MOST_RUNS + 2;
  page.heading("Hydrants, and every head");
  const heads = page.row;
  page.spill("A", `=IRRIG.FIELD.HEADS(${LAID}, , ${typed("SpotsTyped", "Plane")})`, {
    rows: field.positions * field.heads + 1,
    reserved: MOST_HEADS + 1,
    columns: Array.from({ length: 7 }, () => ({ format: "0.0##" })),
  });
  page.nameRange("Heads", `A${heads + 1}:G${heads + MOST_HEADS}`);
  page.row = heads;
  page.spill("I", "=IRRIG.FEEDER.HYDRANTS(Runs, 1.0001*FeederStraight)", {
    rows: field.lines + 1,
    reserved: MOST_HYDRANTS + 1,
    columns: Array.from({ length: 7 }, () => ({ format: "0.0##" })),
  });
  page.nameRange("Hydrants", `I${heads + 1}:O${heads + MOST_HYDRANTS}`);
  page.row = heads;
  page.spill("Q", `=IRRIG.FIELD.SUMMARY(${LAID})`, {
    rows: 8,
    headed: false,
    columns: [{ format: "General" }, { format: "0.0##" }],
  });
  page.nameRange("Summary", `Q${heads}:R${heads + 7}`);
  page.row = heads;
  flagRows(page, "T");
  page.row = heads + MOST_HEADS + 1;
}
