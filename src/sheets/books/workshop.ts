import { soilTextures } from "../../tables/soils";
import { crops } from "../../tables/crops";
import { bluestemFlat, type Field } from "../parts/bluestem-flat";
import { type PageBuilder, unitText } from "../kit/builder";
import { workbook, type PagePlan } from "../kit/workbook";
import { amount, flow, length } from "../parts/limits";
import {
  basePage,
  DEALER_QUESTION,
  GROWER_ANSWER,
  GROWER_QUESTION,
  OFFICER_ANSWER,
  OFFICER_QUESTION,
} from "../parts/line-blocks";
import { LINE } from "../parts/line-inputs";
import { namesPage } from "../parts/names";

/** Label, value, unit, and the formula as text; then room for small tables. */
const COLUMNS = [40, 13, 14, 66, 14, 14];

export const workshop = workbook({
  id: "workshop",
  title: "Workshop",
  purpose:
    "For an officer or a teacher: the reasons behind the numbers, step by step, by hand and by function, with an exercise that checks itself.",
  subjects: ["pressure", "overhead wires"],
  answers: [
    [
      DEALER_QUESTION,
      '=Heads&" sprinklers on each of "&Lines&IF(Lines=1, " line", " lines")&": what they cost stands in the workbook Quote. Here is why there can be "&Heads&" of them."',
    ],
    [OFFICER_QUESTION, OFFICER_ANSWER],
    [GROWER_QUESTION, GROWER_ANSWER],
  ],
  field: bluestemFlat,
  pages: (field) => [
    {
      name: "Start",
      title: "Workshop: why the numbers are what they are",
      widths: COLUMNS,
      landscape: true,
      onePage: true,
      write: startPage,
    },
    frictionPage(field),
    alongPage(field),
    rulePage(field),
    borePage(),
    cansPage(field),
    soilPage(field),
    exercisePage(field),
    basePage(field, "Base", "The line that the pages of this workbook speak of."),
    namesPage(field.system),
  ],
});

function lesson(
  name: string,
  title: string,
  purpose: string,
  write: (page: PageBuilder) => void,
  widths = COLUMNS,
): PagePlan {
  return { name, title, purpose, widths, landscape: true, onePage: true, write };
}

function startPage(page: PageBuilder): void {
  page.text(
    "Each page takes one step. Change a tinted cell, say first what will happen, then look. The formula stands beside each result, as you would type it.",
  );
  page.gap();
  page.table("A", [
    {
      header: "Page",
      role: "label",
      rows: [
        "Friction",
        "Along the line",
        "20 percent",
        "Bore",
        "Catch cans",
        "Soil and time",
        "Exercise",
      ],
    },
    {
      header: "What it shows",
      role: "text",
      span: 5,
      rows: [
        "What a pipe takes from the pressure, worked by hand and by function.",
        "Why the flow in the tubing falls from head to head, and what the multiple-outlet factor stands for.",
        "How far pressure may vary, and what that does to the flow of the heads.",
        "Why the size on the tubing is not the size in the formula.",
        "What the ground got: depth in the cans, two measures of evenness, and the overlap of two positions.",
        "How long to run: what the soil holds, what the crop uses, what the ground takes in.",
        "Empty cells that tell you whether you are right.",
      ],
    },
  ]);
  page.gap();
  page.safety("pressure", "overhead wires");
}

function frictionPage(field: Field): PagePlan {
  return lesson(
    "Friction",
    "1  What a pipe takes from the pressure",
    "The handbook's Hazen–Williams equation: feet lost in 100 feet of pipe, from gallons a minute and inches. It holds for every consistent sheet; only the units around it change.",
    (page) => frictionCells(page, field),
  );
}

function frictionCells(page: PageBuilder, field: Field): void {
  const given = page.block("A", 1);
  given.heading("One pipe");
  given.input("Flow", field.lesson.flow, { name: "PipeFlow", unit: "flow", allowed: flow });
  given.input("Inside diameter", field.lesson.inside, {
    name: "PipeInside",
    unit: "diameter",
    allowed: amount(0.1, 2000),
  });
  given.input("Length", field.lesson.length, {
    name: "PipeLength",
    unit: "length",
    allowed: length,
  });
  given.input("C: how smooth", 150, { name: "PipeC", allowed: { low: 50, high: 200 } });
  given.gap();
  given.heading("By hand");
  given.worked(
    "Flow in gallons a minute",
    '=IF(Units="SI", IRRIG.UNIT.CONVERT(PipeFlow, "m³/h", "gpm"), PipeFlow)',
    { name: "HandFlow", unit: { word: "gpm" }, format: "0.00" },
  );
  given.worked("Inside diameter in inches", '=IF(Units="SI", PipeInside/25.4, PipeInside)', {
    name: "HandInside",
    unit: { word: "in" },
    format: "0.000",
  });
  given.worked("Lost in every hundred lengths", "=1050*(HandFlow/PipeC)^1.852*HandInside^-4.87", {
    name: "HandLoss",
    unit: { us: "ft per 100 ft", si: "m per 100 m" },
    format: "0.000",
  });
  given.worked("Over this length", "=HandLoss*PipeLength/100", {
    name: "HandHead",
    unit: "length",
    format: "0.000",
  });
  given.worked("As pressure", '=IF(Units="SI", HandHead*9.789, HandHead/2.311)', {
    name: "HandPressure",
    unit: "pressure",
    format: "0.00",
  });
  given.gap();
  given.heading("By function");
  given.worked("The same", "=IRRIG.PIPE.FRICTION(PipeFlow, PipeInside, PipeLength, Units, PipeC)", {
    name: "FunctionPressure",
    unit: "pressure",
    format: "0.00",
  });
  given.worked("They differ by", "=ROUND(HandPressure/FunctionPressure-1, 5)", {
    format: "0.00%",
  });
  given.worked("Speed of the water", "=IRRIG.PIPE.VELOCITY(PipeFlow, PipeInside, Units)", {
    unit: "speed",
  });
  given.gap();
  given.heading("What moves it most");
  const times = (label: string, formula: string) =>
    given.worked(label, formula, { format: '0.00" ×"' });
  times(
    "Twice the flow: the loss becomes",
    "=IRRIG.PIPE.FRICTION(2*PipeFlow, PipeInside, PipeLength, Units, PipeC)/FunctionPressure",
  );
  times(
    "A tenth more diameter: the loss becomes",
    "=IRRIG.PIPE.FRICTION(PipeFlow, 1.1*PipeInside, PipeLength, Units, PipeC)/FunctionPressure",
  );
  times(
    "Rougher, C 130: the loss becomes",
    "=IRRIG.PIPE.FRICTION(PipeFlow, PipeInside, PipeLength, Units, 130)/FunctionPressure",
  );
  page.below(given);
}

/** Enough heads to see the fall, few enough to follow. */
const FEW = 8;

function alongPage(field: Field): PagePlan {
  return lesson(
    "Along the line",
    "2  Why the flow falls along the line",
    "Each head takes its share, so the tubing carries less and less, and loses less and less. Eight equal heads on the pipe of the page before.",
    (page) => alongCells(page, field),
  );
}

function alongCells(page: PageBuilder, field: Field): void {
  const given = page.block("A", 1);
  given.input("Flow of a head", field.lesson.head, {
    name: "EqualFlow",
    unit: "headFlow",
    allowed: flow,
  });
  given.input("From head to head", field.spacing, {
    name: "EqualSpacing",
    unit: "length",
    allowed: amount(1, 500),
  });
  page.below(given);
  const top = page.row;
  const rows = Array.from({ length: FEW }, (_, i) => top + 1 + i);
  page.table("A", [
    {
      header: "Segment, from the inlet",
      role: "result",
      format: "0",
      rows: rows.map((_, i) => i + 1),
    },
    {
      header: "It carries",
      unit: "flow",
      role: "result",
      rows: rows.map((at) => `=(${FEW}-A${at}+1)*EqualFlow`),
    },
    {
      header: "It loses",
      unit: "pressure",
      role: "result",
      format: "0.000",
      rows: rows.map(
        (at) => `=IRRIG.PIPE.FRICTION(B${at}, PipeInside, EqualSpacing, Units, PipeC)`,
      ),
    },
    {
      header: "As you type it",
      role: "formulaText",
      rows: rows.map((at) => `=FORMULATEXT(C${at})`),
    },
  ]);
  page.needsLines(top, 2);
  page.gap();
  const sums = page.block("A", 1);
  sums.heading("One factor for all of it");
  sums.worked("All segments together", `=SUM(C${rows[0]}:C${rows[FEW - 1]})`, {
    name: "SumLost",
    unit: "pressure",
    format: "0.000",
  });
  sums.worked(
    "The whole flow through the whole length",
    `=IRRIG.PIPE.FRICTION(${FEW}*EqualFlow, PipeInside, ${FEW}*EqualSpacing, Units, PipeC)`,
    { name: "WholeLost", unit: "pressure", format: "0.000" },
  );
  sums.worked("Their ratio", "=SumLost/WholeLost", { format: "0.000" });
  sums.worked("The multiple-outlet factor F", `=IRRIG.LATERAL.F(${FEW})`, { format: "0.000" });
  sums.worked(
    "The shortcut",
    `=IRRIG.LATERAL.LOSS(${FEW}*EqualFlow, PipeInside, ${FEW}*EqualSpacing, ${FEW}, Units, PipeC)`,
    { unit: "pressure", format: "0.000" },
  );
  sums.gap();
  sums.heading("And what F leaves out: heads are not equal");
  sums.worked(
    "Friction of the line on the page Base",
    `=INDEX(IRRIG.LATERAL.SUMMARY(${LINE}), 9, 2)`,
    {
      name: "SolvedLoss",
      unit: "pressure",
      format: "0.000",
    },
  );
  sums.worked(
    "The shortcut, were it all the larger tubing",
    "=IRRIG.LATERAL.LOSS(LineFlow, INDEX(Insides, 1), LineLength, Heads, Units, Friction)",
    { unit: "pressure", format: "0.000" },
  );
  sums.worked(
    "Solved, were it all the larger tubing",
    `=INDEX(IRRIG.LATERAL.SUMMARY(Inlet, Heads, Spacing, INDEX(Insides, 1), Chart, Units, Rise, Regulator, Friction, First, Riser), 9, 2)`,
    { unit: "pressure", format: "0.000" },
  );
  page.below(sums);
  page.text(
    "The shortcut takes equal heads and one size. The solved line lets each head take what its own pressure gives it.",
  );
  page.chart({
    title: "What each segment carries",
    x: { range: `A${rows[0]}:A${rows[FEW - 1]}`, title: "Segment" },
    yTitle: "Flow",
    series: [{ range: `B${rows[0]}:B${rows[FEW - 1]}`, titleAt: `B${top}` }],
    place: { from: `A${page.row + 1}`, to: `C${page.row + 13}` },
    description:
      "Flow in each of eight segments, falling from the inlet; the numbers stand in the table above.",
  });
}

function rulePage(field: Field): PagePlan {
  return lesson(
    "20 percent",
    "3  The 20 percent rule, and what it does to flow",
    "Pressure along a line may vary by a fifth of the average. A head's flow goes with the square root of its pressure, so a fifth of pressure is a tenth of flow.",
    (page) => ruleCells(page, field),
  );
}

function ruleCells(page: PageBuilder, field: Field): void {
  const given = page.block("A", 1);
  given.worked(
    "The line on the page Base: pressure varies by",
    `=IRRIG.LATERAL.VARIATION(${LINE})`,
    { name: "BaseVariation", format: "0.0%" },
  );
  given.worked("and its flow by", `=INDEX(IRRIG.LATERAL.SUMMARY(${LINE}), 8, 2)`, {
    format: "0.0%",
  });
  given.mark("The check says", "=IRRIG.CHECK.VARIATION(BaseVariation, Limit)", 3);
  given.input("Ground rises along the line by", 0, {
    name: "RuleSlope",
    unit: { word: "%" },
    allowed: { low: -16, high: 16 },
    note: "Percent, uphill positive. Try 2 and -2.",
  });
  page.below(given);
  const top = page.row;
  const heads = Array.from({ length: 7 }, (_, i) => field.heads - 6 + 2 * i);
  const line = (at: number) =>
    `Inlet, A${at}, Spacing, INDEX(Insides, 1), Chart, Units, RuleSlope/100*A${at}*Spacing, Regulator, Friction, First, Riser`;
  const rows = heads.map((_, i) => top + 1 + i);
  page.table("A", [
    {
      header: "Heads, all in the larger tubing",
      role: "input",
      format: "0",
      allowed: { low: 1, high: 500, whole: true },
      rows: heads,
    },
    {
      header: "Pressure varies by",
      role: "result",
      format: "0.0%",
      rows: rows.map((at) => `=IRRIG.LATERAL.VARIATION(${line(at)})`),
    },
    {
      header: "Flow varies by",
      role: "result",
      format: "0.0%",
      rows: rows.map((at) => `=INDEX(IRRIG.LATERAL.SUMMARY(${line(at)}), 8, 2)`),
    },
    {
      header: "The check says",
      role: "mark",
      span: 3,
      rows: rows.map((at) => `=IRRIG.CHECK.VARIATION(B${at}, Limit)`),
    },
  ]);
  page.needsLines(top, 2);
  rows.forEach((at) => page.needsLines(at, 2));
  page.gap();
  const most = page.block("A", 1);
  most.worked(
    "The most heads within the rule",
    "=IRRIG.LATERAL.MAXHEADS(Limit, Inlet, Spacing, INDEX(Insides, 1), Chart, Units, RuleSlope, Regulator, Friction, First, Riser)",
    { format: "0" },
  );
  page.below(most);
  page.text(
    "Lay the line along the contour, or let it run a little downhill: the fall gives back what friction takes. Uphill, both take.",
  );
}

function borePage(): PagePlan {
  return lesson(
    "Bore",
    "4  The size on the tubing is not the size in the formula",
    "Metric polyethylene is sold by its outside diameter. The bore is that less two walls, and friction goes with nearly the fifth power of it.",
    boreCells,
  );
}

function boreCells(page: PageBuilder): void {
  const sizes = [75, 63, 50, 40, 32];
  const top = page.row;
  const rows = sizes.map((_, i) => top + 1 + i);
  page.table("A", [
    {
      header: "Nominal size, outside (mm), SDR 17",
      role: "input",
      format: "0",
      allowed: amount(10, 2000),
      rows: sizes,
    },
    {
      header: "Bore",
      unit: "diameter",
      role: "result",
      rows: rows.map((at) => `=IRRIG.PIPE.INSIDE("ISO PE", A${at}, 17, Units)`),
    },
    {
      header: "It loses",
      unit: "pressure",
      role: "result",
      format: "0.00",
      rows: rows.map((at) => `=IRRIG.PIPE.FRICTION(PipeFlow, B${at}, PipeLength, Units, PipeC)`),
    },
    {
      header: "As you type it",
      role: "formulaText",
      rows: rows.map((at) => `=FORMULATEXT(C${at})`),
    },
  ]);
  page.needsLines(top, 2);
  page.gap();
  page.heading("With the size on the tubing instead");
  const wrongTop = page.row;
  const wrong = sizes.map((_, i) => wrongTop + 1 + i);
  const nominal = (at: number) => `IRRIG.UNIT.CONVERT(A${at}, "mm", ${unitText("diameter")})`;
  page.table("A", [
    {
      header: "Nominal size, outside (mm)",
      role: "result",
      format: "0",
      rows: rows.map((at) => `=A${at}`),
    },
    {
      header: "It seems to lose",
      unit: "pressure",
      role: "result",
      format: "0.00",
      rows: wrong.map(
        (at) => `=IRRIG.PIPE.FRICTION(PipeFlow, ${nominal(at)}, PipeLength, Units, PipeC)`,
      ),
    },
    {
      header: "Hidden",
      role: "result",
      format: "0%",
      rows: wrong.map((at, i) => `=1-B${at}/C${rows[i]}`),
    },
    {
      header: "As you type it",
      role: "formulaText",
      rows: wrong.map((at) => `=FORMULATEXT(B${at})`),
    },
  ]);
  for (const at of [wrongTop, ...wrong]) page.needsLines(at, 2);
  page.gap();
  const other = page.block("A", 1);
  other.heading("Other series, other rules");
  other.worked(
    "2 in by outside diameter, DR 11: bore",
    '=IRRIG.PIPE.INSIDE("IPS PE", 2, 11, Units)',
    {
      unit: "diameter",
    },
  );
  other.worked(
    "2 in by inside diameter, SIDR 15: bore",
    '=IRRIG.PIPE.INSIDE("SIDR", 2, 15, Units)',
    {
      unit: "diameter",
    },
  );
  page.below(other);
}

/** Like columns for the cans' grid; a label takes three of them. */
const CAN_COLUMNS = new Array<number>(10).fill(14);
const CAN_LABELS = 3;

function cansPage(field: Field): PagePlan {
  return lesson(
    "Catch cans",
    "5  What the ground got",
    "Sixteen cans on a grid between four heads, after a set. Type what each caught, in mL.",
    (page) => cansCells(page, field),
    CAN_COLUMNS,
  );
}

function cansCells(page: PageBuilder, field: Field): void {
  const top = page.row + 1;
  page.heading("Caught (mL)");
  field.lesson.cans.forEach((row, r) =>
    row.forEach((caught, c) =>
      page.put(1 + c, top + r, {
        role: "input",
        value: caught,
        label: `Can ${4 * r + c + 1}`,
        allowed: amount(0, 10000),
      }),
    ),
  );
  page.nameRange("Cans", `A${top}:D${top + 3}`);
  page.row = top + 5;
  const found = page.block("A", CAN_LABELS);
  found.input("Opening of a can", field.lesson.opening, {
    name: "Opening",
    unit: "diameter",
    allowed: amount(0.1, 1000),
  });
  found.input("The set ran", 2, {
    name: "TestHours",
    unit: { word: "hours" },
    allowed: amount(0.01, 48),
  });
  found.worked("Average depth", "=IRRIG.APPLICATION.CATCH(AVERAGE(Cans), Opening, Units)", {
    name: "MeanDepth",
    unit: "depth",
  });
  found.worked("Rate", "=MeanDepth/TestHours", { unit: "rate" });
  found.gap();
  found.heading("Christiansen's uniformity: one less the mean departure");
  found.worked("By hand", "=1-SUMPRODUCT(ABS(Cans-AVERAGE(Cans)))/SUM(Cans)", { format: "0.000" });
  found.worked("By function", "=IRRIG.APPLICATION.CU(Cans)", { name: "CanCU", format: "0.000" });
  found.gap();
  found.heading("Distribution uniformity: the driest quarter over the average");
  found.worked(
    "By hand, four of sixteen cans",
    "=(SMALL(Cans, 1)+SMALL(Cans, 2)+SMALL(Cans, 3)+SMALL(Cans, 4))/4/AVERAGE(Cans)",
    { format: "0.000" },
  );
  found.worked("By function", "=IRRIG.APPLICATION.DU(Cans)", { name: "CanDU", format: "0.000" });
  found.gap();
  found.heading("For the whole line, where pressure differs too");
  found.worked(
    "Uniformity along it",
    "=IRRIG.LATERAL.SYSTEMCU(CanCU, LeastPressure, MeanPressure)",
    { format: "0.000" },
  );
  found.worked(
    "Hours to give the driest quarter what Base asks",
    "=IRRIG.SET.TIME(NetDepth, Rate, CanDU)",
    { unit: { word: "hours" }, format: "0.0" },
  );
  page.below(found);

  page.breakPage();
  page.heading("One line's catch across it, laid over that of the next position");
  const across = page.row;
  page.table("A", [
    {
      header: "Steps from the line",
      role: "result",
      format: "0",
      rows: field.lesson.across.map((_, i) => i - (field.lesson.across.length - 1) / 2),
    },
    {
      header: "Caught",
      unit: "depth",
      role: "input",
      allowed: amount(0, 1000),
      rows: field.lesson.across,
    },
  ]);
  const last = across + field.lesson.across.length;
  page.nameRange("Across", `B${across + 1}:B${last}`);
  page.needsLines(across, 2);
  const after = page.row;
  page.row = across;
  const steps = page.block("D", CAN_LABELS);
  steps.input("One step is", field.lesson.step, {
    name: "FoldStep",
    unit: "length",
    allowed: amount(0.1, 100),
  });
  steps.input("The line moves", field.lesson.moveSteps * field.lesson.step, {
    name: "FoldMove",
    unit: "length",
    allowed: amount(0.1, 1000),
    note: "A whole number of steps.",
  });
  page.row = steps.row + 1;
  page.put(4, page.row, { role: "label", value: "Between two positions" });
  page.row++;
  page.spill("D", "=IRRIG.APPLICATION.FOLD(Across, FoldStep, FoldMove)", {
    rows: field.lesson.moveSteps,
    headed: false,
    reserved: 12,
    columns: ["depth"],
    name: "FoldFirst",
  });
  page.row = Math.max(after, page.row) + 1;
  const fold = page.block("A", CAN_LABELS);
  fold.worked(
    "Uniformity of the overlap",
    "=IRRIG.APPLICATION.CU(IRRIG.APPLICATION.FOLD(Across, FoldStep, FoldMove))",
    {
      format: "0.000",
    },
  );
  page.below(fold);
}

function soilPage(field: Field): PagePlan {
  return lesson(
    "Soil and time",
    "6  How long to run",
    "The soil is a tank: what it holds, how deep the roots reach, and how far it may be drawn down. The rate fills it; the crop empties it.",
    (page) => soilCells(page, field),
  );
}

function soilCells(page: PageBuilder, field: Field): void {
  const steps = page.block("A", 1);
  steps.heading("The tank");
  steps.input("Soil", "silt loam", {
    name: "LessonSoil",
    allowed: { list: soilTextures, knownBy: "IRRIG.SOIL.AWC($)" },
  });
  steps.input("Crop", "clover hay", {
    name: "LessonCrop",
    allowed: { list: crops, knownBy: "IRRIG.CROP.ROOT($)" },
  });
  steps.input("It uses, at its peak", field.lesson.use, {
    name: "LessonUse",
    unit: "dailyDepth",
    allowed: amount(0.001, 50),
  });
  steps.worked("The soil holds", "=IRRIG.SOIL.AWC(LessonSoil, Units)", {
    name: "LessonCapacity",
    unit: "waterCapacity",
  });
  steps.worked("The roots reach", "=IRRIG.CROP.ROOT(LessonCrop, Units)", {
    name: "LessonRoot",
    unit: "length",
    format: "0.00",
  });
  steps.worked(
    "It may be drawn down to this share",
    "=IRRIG.CROP.DEPLETION(LessonCrop, Units, LessonUse)",
    {
      name: "LessonDepletion",
      format: "0.00",
    },
  );
  steps.worked(
    "So put back at most",
    "=IRRIG.SOIL.NET(LessonCapacity, LessonRoot, LessonDepletion, Units)",
    { name: "LessonNet", unit: "depth" },
  );
  steps.worked("and come back within", "=IRRIG.SYSTEM.INTERVAL(LessonNet, LessonUse)", {
    name: "LessonDays",
    unit: { word: "days" },
    format: "0.0",
  });
  steps.gap();
  steps.heading("The tap");
  steps.worked("The heads give", "=IRRIG.APPLICATION.RATE(HeadFlow, Spacing, Move, Units)", {
    name: "LessonRate",
    unit: "rate",
  });
  steps.worked("By hand", '=HeadFlow*IF(Units="SI", 1000, 96.25)/(Spacing*Move)', {
    unit: "rate",
  });
  steps.worked(
    "The ground takes",
    "=IRRIG.SOIL.INTAKE(IRRIG.SOIL.PROFILE(LessonSoil), Slope, Units)",
    { name: "LessonIntake", unit: "rate" },
  );
  steps.mark("The check says", "=IRRIG.CHECK.RATE(LessonRate, LessonIntake)", 3);
  steps.worked(
    "Hours for seven days' use",
    "=IRRIG.SET.TIME(7*LessonUse, LessonRate, Efficiency)",
    {
      name: "LessonHours",
      unit: { word: "hours" },
      format: "0.0",
    },
  );
  steps.worked("Sets a day", "=IRRIG.SET.PERDAY(LessonHours, MoveHours, DayHours)", {
    name: "LessonSets",
    format: "0",
  });
  steps.worked(
    "Lines for the field",
    '=IF(LessonSets=0, "set too long", IRRIG.SYSTEM.LINES(Positions, LessonSets, 7))',
    { format: "0" },
  );
  page.below(steps);
}

interface Exercise {
  readonly ask: string;
  readonly right: string;
  readonly hint: string;
}

function exercisePage(field: Field): PagePlan {
  return lesson(
    "Exercise",
    "7  Now you",
    "Work each with a calculator or with functions in the free cells to the right, and type your answer. One percent off is near enough.",
    (page) => exercises(page, field),
    [62, 13, 8, 36, 36],
  );
}

function exercises(page: PageBuilder, field: Field): void {
  const { lesson: l } = field;
  const us = field.system === "US";
  const [length, flow, pressure, rate] = us
    ? ["ft", "gpm", "psi", "in/h"]
    : ["m", "m³/h", "kPa", "mm/h"];
  const asked: Exercise[] = [
    {
      ask: `A head gives ${l.head} ${flow} on ${field.spacing} by ${field.move} ${length}. What is the rate, in ${rate}?`,
      right: `IRRIG.APPLICATION.RATE(${l.head}, ${field.spacing}, ${field.move}, "${field.system}")`,
      hint: us
        ? "96.25 times the flow, over the area of one head."
        : "1000 times the flow, over the area of one head.",
    },
    {
      ask: `What does ${l.length} ${length} of pipe with a bore of ${l.inside} ${us ? "in" : "mm"} take from ${l.flow} ${flow}, C 150, in ${pressure}?`,
      right: `IRRIG.PIPE.FRICTION(${l.flow}, ${l.inside}, ${l.length}, "${field.system}", 150)`,
      hint: "The first page does it by hand.",
    },
    {
      ask: "What is the multiple-outlet factor F for 14 outlets?",
      right: "IRRIG.LATERAL.F(14)",
      hint: "Between the factors for 12 and for 16 outlets: a little under 0.40.",
    },
    {
      ask: `How many hours does a net ${field.netDepth} ${us ? "in" : "mm"} take at ${us ? 0.17 : 4.3} ${rate} and an efficiency of 0.75?`,
      right: `IRRIG.SET.TIME(${field.netDepth}, ${us ? 0.17 : 4.3}, 0.75)`,
      hint: "Depth over rate, over efficiency.",
    },
    {
      ask: "The cans caught 10, 8, 12, 9, 11, 10, 7 and 13. What is Christiansen's uniformity, as a fraction?",
      right: "IRRIG.APPLICATION.CU({10,8,12,9,11,10,7,13})",
      hint: "The average is 10. Add up how far each is from it, and divide by the sum.",
    },
    {
      ask: "On the page 20 percent, set the rise to 2 percent. By what fraction does the pressure of 14 heads vary?",
      right:
        "IRRIG.LATERAL.VARIATION(Inlet, 14, Spacing, INDEX(Insides, 1), Chart, Units, 0.02*14*Spacing, Regulator, Friction, First, Riser)",
      hint: "Read it in the row of 14 heads; 0.2 is 20 percent.",
    },
  ];
  asked.forEach(({ ask, right, hint }, i) => {
    const row = page.row;
    page.paragraph(1, row, 1, `${i + 1}.  ${ask}`);
    page.put(2, row, {
      role: "input",
      label: `Exercise ${i + 1}`,
      allowed: { low: -1000000, high: 1000000, optional: true },
    });
    page.put(4, row, {
      role: "mark",
      span: 2,
      formula: `=IF(B${row}="", "Type your answer.", IF(ABS(B${row}/${right}-1)<=0.01, "OK", "Not yet. ${hint}"))`,
    });
    page.needsLines(row, 2);
    page.row += 2;
  });
}
