import { type Block, type PageBuilder, unitText } from "../kit/builder";
import { workbook, type PagePlan } from "../kit/workbook";
import { bluestemFlat } from "../parts/bluestem-flat";
import { namesPage } from "../parts/names";
import { heads } from "./heads";
import { planDrawingPage, planChart } from "./plan-drawing";
import { planFieldPage } from "./plan-field";
import { planFlagsPage } from "./plan-flags";
import { planPricesPage, planQuotePage } from "./plan-quote";
import { MOST_HEADS, MOST_HYDRANTS, MOST_RUNS, PLANS } from "./plan-room";
import { CORNERS, limitInWords, OBSTACLES, planRunsPage } from "./plan-runs";

const LENGTH = unitText("length");
const PRESSURE = unitText("pressure");

/** Rows of the tables beside the drawing; the rest stand on the page Runs. */
const SHOWN = 22;
const SHOWN_LIMITS = 13;

export const plan = workbook({
  ...heads.plan,
  subjects: [
    "plan on the ground",
    "pressure",
    "overhead wires",
    "buried lines",
    "roads and buildings",
    "backflow",
  ],
  answers: [
    [
      "What is laid, and what does it cost a year?",
      `=ChosenLines&IF(ChosenLines=1, " line of ", " lines of ")&ChosenHeads&" sprinklers every "&ChosenSpacing&" "&${LENGTH}&", moved "&ChosenMove&" "&${LENGTH}&"; "&FIXED(ChosenCost, 0)&" "&Currency&" a year, capital, energy and labor."`,
    ],
    [
      "How long is a set, and how many days does a round take?",
      '=FIXED(ChosenHours, 1)&" hours a set, "&ChosenPerDay&IF(ChosenPerDay=1, " set", " sets")&" a day with each line; "&ChosenRound&IF(ChosenRound=1, " day", " days")&" for "&ChosenSets&" sets."',
    ],
  ],
  field: bluestemFlat,
  pages: (field) => [
    planPage(),
    planFieldPage(field),
    planFlagsPage(field),
    planQuotePage(field),
    planPricesPage(field),
    planRunsPage(field),
    planDrawingPage(),
    namesPage(field.system),
  ],
});

/** Columns: A to H the drawing, I to Q the runs, R to U the moves; the best plans under both. */
const WIDTHS = [
  ...Array.from({ length: 8 }, () => 15.5),
  ...Array.from({ length: 9 }, () => 12),
  10,
  10,
  10,
  16,
];

function planPage(): PagePlan {
  return {
    name: "Plan",
    title: { text: "Plan", formula: '="Plan of "&FieldName' },
    widths: WIDTHS,
    landscape: true,
    onePage: true,
    write(page) {
      specification(page);
      const top = page.row;
      runs(page);
      bestPlans(page);
      // As large as the tables beside it leave room for.
      page.chart(planChart({ from: `A${top}`, to: `H${page.row - 2}` }));
      const below = page.row;
      checks(page);
      const after = page.row;
      page.row = below;
      heldBack(page);
      page.row = Math.max(after, page.row);
      page.text(
        "Planned by, date ______________________    Source of water, backflow device ______________________    Test pressure ____________    Approved, date ______________________",
      );
      page.text(
        "As installed: changes ______________________________________________    Installed by, date ______________________    Tested at, for ______________________",
      );
      page.safety(
        "plan on the ground",
        "pressure",
        "buried lines",
        "overhead wires",
        "roads and buildings",
      );
    },
  };
}

function specification(page: PageBuilder): void {
  const block = page.block("A", 4);
  block.input("Row of the best plans that is chosen", 1, {
    name: "Chosen",
    allowed: { low: 1, high: PLANS, whole: true },
    note: "Type the number of a row below: drawing, runs, bill, quote and flags follow.",
  });
  const wide = (name: string, formula: string) => {
    block.sentence(name, formula, WIDTHS.length - 6);
    page.needsLines(block.row - 1, 1);
  };
  wide(
    "Line",
    `=ChosenLarger&IF(SmallerSegments=0, "", " × "&LargerSegments&" segments, then "&ChosenSmaller&" × "&SmallerSegments)&"; sprinkler "&ChosenSprinkler&" every "&ChosenSpacing&" "&${LENGTH}&", "&ChosenHeads&" on the longest run; lowest nozzle "&FIXED(ChosenLowest, 0)&" "&${PRESSURE}&", inlet "&FIXED(ChosenInlet, 1)&" "&${PRESSURE}&"; feeder "&ChosenFeeder&", "&FIXED(FeederLength, 0)&" "&${LENGTH}&" with slack; flow in all "&FIXED(ChosenFlow, 1)&" "&${unitText("flow")}&" at "&FIXED(ChosenHead, 0)&" "&${LENGTH}&" of pump head."`,
  );
  wide(
    "Field",
    `=FIXED(INDEX(Summary, 1, 2), 2)&" "&${unitText("area")}&", "&INDEX(Summary, 2, 2)&" positions, "&INDEX(Summary, 3, 2)&" runs, "&INDEX(Summary, 5, 2)&" heads; "&IF(ChosenCoverage>0.9995, "covered whole", "not covered whole: "&FIXED(100*ChosenCoverage, 1)&"% of it")&IF(INDEX(Summary, 7, 2)>0, "; "&FIXED(INDEX(Summary, 7, 2), 2)&" "&${unitText("area")}&" more is thrown beyond the edge", "")&". Lines bear "&Bearing&"°; positions count to their left. Drawing: north is up, the bar is "&BarLength&" "&${LENGTH}&" long, and both ways have one scale."`,
  );
  page.row = block.row;
  page.gap();
}

type Part = readonly [header: string, formula: (row: number) => string, format: string];

/** A table of the page Runs, its first rows shown cell by cell. */
function shown(
  page: PageBuilder,
  column: string,
  known: string,
  parts: readonly Part[],
  rows: number,
  money: readonly string[] = [],
): void {
  page.table(
    column,
    parts.map(([header, formula, format]) => ({
      header,
      role: "result" as const,
      format,
      ...(money.includes(header) && { money: true as const }),
      rows: Array.from(
        { length: rows },
        (_, i) => `=IF(INDEX(${known}, ${i + 1}, 1)="", "", ${formula(i + 1)})`,
      ),
    })),
  );
}

const from = (table: string, column: number) => (row: number) =>
  `INDEX(${table}, ${row}, ${column})`;

function runs(page: PageBuilder): void {
  const top = page.row;
  shown(
    page,
    "I",
    "Runs",
    [
      ["Position", from("Runs", 1), "0"],
      ["Run", from("Runs", 2), "0"],
      ["Heads", from("Runs", 8), "0"],
      ["Length", from("Runs", 7), "#,##0"],
      ["Hydrant", from("Reach", 2), "0"],
      ["Lowest nozzle", from("Solved", 5), "0.0"],
      ["Highest nozzle", from("Solved", 6), "0.0"],
      ["Highest in line", from("Solved", 7), "0.0"],
      ["Inlet wanted", from("Solved", 10), "0.0"],
    ],
    SHOWN,
  );
  page.row = top;
  shown(
    page,
    "R",
    "Turns",
    [
      ["Day", from("Turns", 1), "0"],
      ["Hour", from("Turns", 2), "0.0"],
      ["Line", from("Turns", 3), "0"],
      ["Run, by its row", from("Turns", 4), "0"],
    ],
    SHOWN,
  );
  const note = {
    role: "sentence" as const,
    formula: `=IF(INDEX(Summary, 3, 2)>${SHOWN}, "The first ${SHOWN} of "&INDEX(Summary, 3, 2)&" runs; all stand on the page Runs.", "All runs, on their own ground; lengths in "&${LENGTH}&", pressures in "&${PRESSURE}&"; hours from the first set of a day.")`,
    span: 13,
  };
  page.plain(9, [[note]]);
}

function bestPlans(page: PageBuilder): void {
  page.gap();
  page.headingOver(
    9,
    page.row,
    13,
    "Best plans: those within 3% cost the same, as well as prices are known",
  );
  page.row++;
  const best = (column: number) => from("BestPlans", column);
  shown(
    page,
    "I",
    "BestPlans",
    [
      ["Row", (row) => String(row), "0"],
      ["Spacing", best(1), "General"],
      ["Move", best(2), "General"],
      ["Sprinkler", best(3), "General"],
      ["Lines", best(4), "0"],
      [
        "Larger tubing",
        (row) => `INDEX(BestPlans, ${row}, 7)&" × "&INDEX(BestPlans, ${row}, 6)`,
        "General",
      ],
      [
        "Smaller tubing",
        (row) =>
          `IF(INDEX(BestPlans, ${row}, 9)=0, "none", INDEX(BestPlans, ${row}, 9)&" × "&INDEX(BestPlans, ${row}, 8))`,
        "General",
      ],
      ["Capital a year", best(25), "#,##0"],
      ["Energy a year", best(26), "#,##0"],
      ["Labor a year", best(27), "#,##0"],
      ["Cost a year", best(28), "#,##0"],
      ["The same", best(29), "General"],
      ["Held back by", (row) => limitInWords(best(30)(row)), "General"],
    ],
    PLANS,
    ["Capital a year", "Energy a year", "Labor a year", "Cost a year"],
  );
  page.gap();
}

/** What each limit costs, beside the checks. */
function heldBack(page: PageBuilder): void {
  page.headingOver(15, page.row, 7, "What holds the plan back");
  page.row++;
  const rows = Array.from({ length: SHOWN_LIMITS }, (_, i) => i + 1);
  const known = (row: number, text: string) => `=IF(INDEX(PlanLimits, ${row}, 1)="", "", ${text})`;
  const column = (header: string, at: number, money?: true) => ({
    header,
    role: "result" as const,
    format: money ? "#,##0" : "General",
    ...(money && { money }),
    rows: rows.map((row) => known(row, `INDEX(PlanLimits, ${row}, ${at})`)),
  });
  page.table("O", [
    {
      header: "Limit",
      role: "text",
      span: 3,
      rows: rows.map((row) => known(row, limitInWords(`INDEX(PlanLimits, ${row}, 1)`))),
    },
    { ...column("Now", 2), format: "0.0##" },
    { ...column("Best without it", 3), format: "0.0##" },
    column("Cost a year", 4, true),
    column("Saving a year", 5, true),
  ]);
  page.gap();
}

const NO_PLAN = '"Not judged: there is no plan."';
const MORE = 9;

/** Every check is made over all runs; the first ones say why there is nothing to judge. */
function checks(page: PageBuilder): void {
  page.headingOver(1, page.row, 13, "Checks, over all runs");
  page.row++;
  const block = page.block("A");
  block.check("A plan within every limit", `=${aPlan()}`, MORE);
  block.check(
    "Row chosen",
    `=IF(COUNT(PlanNumbers)=0, ${NO_PLAN}, IF(Chosen<=COUNT(PlanNumbers), "OK", "Row "&Chosen&" is chosen and there are "&COUNT(PlanNumbers)&" plans: type a number from 1 to "&COUNT(PlanNumbers)&"."))`,
    MORE,
  );
  const check = (label: string, formula: string) => judged(block, label, formula);
  check("Room on the pages", ROOM);
  check("Pressure along the line", "IRRIG.CHECK.VARIATION(MAX(INDEX(Solved, 0, 8)), Limit)");
  check(
    "Lowest pressure",
    `IF(MIN(INDEX(Solved, 0, 5))<ChosenLowest-IF(Units="SI", 0.5, 0.05), "The lowest nozzle gets "&FIXED(MIN(INDEX(Solved, 0, 5)), 1)&" "&${PRESSURE}&"; "&FIXED(ChosenLowest, 1)&" "&${PRESSURE}&" is wanted.", IRRIG.CHECK.CHART(MIN(INDEX(Solved, 0, 5)), ${CHART}))`,
  );
  check("Highest pressure and the chart", `IRRIG.CHECK.CHART(MAX(INDEX(Solved, 0, 6)), ${CHART})`);
  check(
    "Velocity in the line",
    "IRRIG.CHECK.SPEED(MAX(INDEX(Solved, 0, 9)), Units, GreatestSpeed)",
  );
  check(
    "Velocity in the feeder",
    speed("MAX(INDEX(Solved, 0, 4))", "FeederInside", "GreatestSpeed"),
  );
  check("Velocity in the main", speed("ChosenFlow", "MainInside", "MainSpeed"));
  check(
    "Static pressure and the rating",
    "IRRIG.CHECK.PRESSURE(StaticPressure, PipeRating, ShareOfRating)",
  );
  check("With surge, against the whole rating", "IRRIG.CHECK.PRESSURE(WithSurge, PipeRating, 1)");
  check(
    "Pump and lines",
    `IF(PumpHead>=ChosenHead-0.05, "OK", "With all lines running the pump gives "&FIXED(PumpHead, 1)&" "&${LENGTH}&" of head; the plan needs "&FIXED(ChosenHead, 1)&" "&${LENGTH}&": choose another row, or type what the pump gives as the limits pump flow and pump head.")`,
  );
  check("Rate and the soil", "IRRIG.CHECK.RATE(ChosenRate, Intake)");
  check(
    "Spacing and the wind",
    "IRRIG.CHECK.SPACING(ChosenSpacing, ChosenMove, ChosenWetted, Wind, Units)",
  );
  check(
    "Share covered",
    'IF(ChosenCoverage>=LeastCoverage-0.0000001, "OK", FIXED(100*ChosenCoverage, 1)&"% of the field is covered; "&FIXED(100*LeastCoverage, 1)&"% is asked.")',
  );
  check(
    "Set and the day",
    'IF(ChosenHours+MoveHours<=DayHours, "OK", IF(DayHours=24, "OK", "A set of "&FIXED(ChosenHours, 1)&" hours and its move of "&FIXED(MoveHours, 2)&" do not fit a day of "&FIXED(DayHours, 1)&" hours: shorten the set, or lengthen the day."))',
  );
  check(
    "Days and the round",
    'IF(ChosenRound<=RoundLimit+0.05, "OK", "It takes "&ChosenRound&IF(ChosenRound=1, " day", " days")&" to cover the field; "&FIXED(RoundLimit, 1)&" days are allowed.")',
  );
  check(
    "Feeders reach",
    `IF(MIN(INDEX(Reach, 0, 4))>=0, "OK", "A feeder is "&FIXED(0-MIN(INDEX(Reach, 0, 4)), 1)&" "&${LENGTH}&" too short: add slack.")`,
  );
  check(
    "Feeders stay in the field",
    'IF(COUNTIF(Reach, "yes")=0, "OK", "The straight way of "&COUNTIF(Reach, "yes")&IF(COUNTIF(Reach, "yes")=1, " feeder", " feeders")&" leaves the field: lead it round, and add slack.")',
  );
  page.row = block.row;
  page.gap();
}

const CHART = "FILTER(SprinklerFlows, SprinklerNames=ChosenSprinkler)";

function speed(flow: string, bore: string, greatest: string): string {
  return `IRRIG.CHECK.SPEED(IRRIG.PIPE.VELOCITY(${flow}, ${bore}, Units), Units, ${greatest})`;
}

/** A check that waits for a plan, and for a row that there is. */
function judged(block: Block, label: string, formula: string): void {
  block.check(label, `=IF(Chosen>COUNT(PlanNumbers), ${NO_PLAN}, ${formula})`, MORE);
}

const ROOM = `IF(INDEX(Summary, 3, 2)>${MOST_RUNS}, "The layout has "&INDEX(Summary, 3, 2)&" runs; the pages hold ${MOST_RUNS}.", IF(INDEX(Summary, 5, 2)>${MOST_HEADS}, "The layout has "&INDEX(Summary, 5, 2)&" heads; the pages hold ${MOST_HEADS}.", IF(COUNT(INDEX(Hydrants, 0, 1))>=${MOST_HYDRANTS}, "The pages hold ${MOST_HYDRANTS} hydrants.", "OK")))`;

/** With the closest spacing, which has the most chance. */
const HAS_ROOM = `IFNA(INDEX(IRRIG.FIELD.SUMMARY(${CORNERS}, Bearing, MIN(Spacings), MIN(Moves), Units, , Setback, ${OBSTACLES}), 1, 2), "none")<>"none"`;
const NO_ROOM =
  '"No sprinkler has room in the field: on the page Field, look at corners, obstacles and setback."';

/** Whether there is a plan; if not, the limits of which any one would do to move, and how far. */
function aPlan(): string {
  const way = (rank: number) => {
    const of = (column: number) => `INDEX(PlanLimits, SMALL(LimitRows, ${rank}), ${column})`;
    return `${limitInWords(of(1))}&" is "&${plain(of(2))}&", and the cheapest plan without that limit comes to "&${plain(of(3))}&"."`;
  };
  const other = (rank: number) =>
    `IF(COUNT(LimitRows)<${rank}, "", " Or move this one: "&${way(rank)})`;
  const outside =
    '"Spot heights do not reach corner "&MIN(CornersOutside)&IF(COUNT(CornersOutside)>1, " and "&(COUNT(CornersOutside)-1)&" more", "")&": on the page Field, type a height there or farther out, or leave all heights blank."';
  const none =
    '"No plan keeps to every limit, and leaving out any one of them gives none: move at least two, or offer other sizes, spacings and pressures."';
  return (
    'IF(IFNA(PlanHead, "none")<>"none", "OK", IF(IFNA(LimitsHead, "none")="none", ' +
    `IF(COUNT(CornersOutside)>0, ${outside}, IF(${HAS_ROOM}, ${none}, ${NO_ROOM})), "No plan keeps to every limit. Move this one: "&${way(1)}&${other(2)}&${other(3)}))`
  );
}

/** A number in a sentence, without the digits that nobody needs. */
function plain(number: string): string {
  return `ROUND(${number}, 3)`;
}
