import { type PageBuilder, unitText } from "../kit/builder";
import type { PagePlan } from "../kit/workbook";
import type { Field } from "../parts/bluestem-flat";
import { amount, flow } from "../parts/limits";
import { COLUMNS } from "../parts/line-blocks";
import { LINE_WITHOUT_INLET } from "../parts/line-inputs";
import { SENTENCE_COLUMNS } from "../parts/sentences";
import { HEAD_OF_PRESSURE } from "../parts/supply";
import { MOST_RUNNING } from "./water-source";

/** Standard ratings of motors, hp (NEMA MG 1) and kW (IEC 60072-1), from memory. */
const MOTORS = {
  US: [1, 1.5, 2, 3, 5, 7.5, 10, 15, 20, 25, 30, 40, 50, 60, 75, 100, 125, 150, 200],
  SI: [0.75, 1.1, 1.5, 2.2, 3, 4, 5.5, 7.5, 11, 15, 18.5, 22, 30, 37, 45, 55, 75, 90, 110],
} as const;

/** Cubic inches in a gallon, in a cubic foot. */
const GALLON = 231;
const CUBIC_FOOT = 1728;

/** Air that takes the place of this flow of water: ft³/min, L/s. */
function air(waterFlow: string): string {
  return `=${waterFlow}*IF(Units="SI", 1/3.6, ${GALLON}/${CUBIC_FOOT})`;
}

/** What the pump does at every flow that it may be asked for, and how pipe is filled and emptied of air. */
export function pumpPage(field: Field): PagePlan {
  return {
    name: "Pump",
    title: "Pump: its sheet, its motor, the fewest lines and the most",
    purpose:
      "Type what the manufacturer's sheet gives at the flows of the pump's curve, which stand on the page Water source.",
    widths: COLUMNS,
    landscape: true,
    write: (page) => pump(page, field),
  };
}

function pump(page: PageBuilder, field: Field): void {
  const last = field.pumpSheet.length;
  page.heading("The pump's sheet");
  const top = page.row;
  const rows = field.pumpSheet.map((_, i) => i + 1);
  const flows = rows.map((row) => `=INDEX(PumpCurve, ${row}, 1)`);
  const [flowColumn, efficiencies] = page.table("A", [
    { header: "Flow", unit: "flow", role: "result", rows: flows },
    {
      header: "Efficiency",
      role: "input",
      allowed: amount(0, 1),
      rows: field.pumpSheet.map(([efficiency]) => efficiency),
    },
    {
      header: "Head",
      unit: "length",
      role: "result",
      rows: rows.map((row) => `=INDEX(PumpCurve, ${row}, 2)`),
    },
  ]);
  const [suctionFlow, required] = page.table(
    "E",
    [
      { header: "Flow", unit: "flow", role: "result", rows: flows },
      {
        header: "NPSH required",
        unit: "length",
        role: "input",
        allowed: amount(0, 100),
        rows: field.pumpSheet.map(([, suction]) => suction),
      },
    ],
    top,
  );
  const [, powers] = page.table(
    "H",
    [
      { header: "Flow", unit: "flow", role: "result", rows: flows },
      {
        header: "Shaft power",
        unit: "power",
        role: "result",
        rows: rows.map(
          (row) =>
            `=IF(B${top + row}>0, IRRIG.PUMP.POWER(A${top + row}, C${top + row}, B${top + row}, Units), 0)`,
        ),
      },
    ],
    top,
  );
  page.needsLines(top, 2);
  page.nameRange("EfficiencyCurve", join(flowColumn, efficiencies));
  page.nameRange("SuctionCurve", join(suctionFlow, required));
  page.nameRange("PowerCurve", powers);
  page.gap();

  page.heading("For every number of lines running, every valve open");
  const duty = page.row;
  const counts = Array.from({ length: MOST_RUNNING }, (_, i) => i + 1);
  const known = (n: number, formula: string) => `=IF(ISNUMBER(B${duty + n}), ${formula}, "none")`;
  const [, , , , , , suctionMarks, flowMarks] = page.table("A", [
    { header: "Lines running", role: "result", format: "0", rows: counts },
    {
      header: "Flow",
      unit: "flow",
      role: "result",
      rows: counts.map((n) => `=INDEX(RunningFlow, ${n})`),
    },
    {
      header: "Pump head",
      unit: "length",
      role: "result",
      rows: counts.map((n) => `=INDEX(RunningHead, ${n})`),
    },
    {
      header: "Efficiency",
      role: "result",
      format: "0.00",
      rows: counts.map((n) => known(n, `IRRIG.PUMP.CURVE(EfficiencyCurve, B${duty + n})`)),
    },
    {
      header: "NPSH required",
      unit: "length",
      role: "result",
      rows: counts.map((n) => known(n, `IRRIG.PUMP.CURVE(SuctionCurve, B${duty + n})`)),
    },
    {
      header: "NPSH available",
      unit: "length",
      role: "result",
      rows: counts.map((n) => known(n, availableAt(`B${duty + n}`))),
    },
    {
      header: "Suction",
      role: "mark",
      span: 2,
      rows: counts.map(
        (n) =>
          `=IF(ISNUMBER(E${duty + n}), IF(E${duty + n}<=F${duty + n}, "OK", "Too little suction head"), "Beyond the curve")`,
      ),
    },
    {
      header: "Least flow",
      role: "mark",
      span: 2,
      rows: counts.map(
        (n) =>
          `=IF(ISNUMBER(B${duty + n}), IF(B${duty + n}>=LeastPumpFlow, "OK", "Less than the least flow"), "Beyond the curve")`,
      ),
    },
  ]);
  page.needsLines(duty, 2);
  page.text(
    "Each line takes the same flow whatever runs beside it, as long as its valve is throttled to the lateral inlet pressure; these rows are for open valves, the worst case for the pump.",
  );
  page.gap();

  const given = page.block("A");
  given.heading("Pump and motor");
  given.input("Least flow of the pump", field.leastPumpFlow, {
    name: "LeastPumpFlow",
    unit: "flow",
    allowed: flow,
    note: "From the manufacturer: with less flow the water in the casing heats.",
  });
  given.input("Motor on the pump", field.motor, {
    name: "Motor",
    unit: "power",
    allowed: amount(0.05, 2000),
    note: "As its nameplate says.",
  });
  given.input("Loss with the filter clean", field.cleanLoss, {
    name: "CleanLoss",
    unit: "pressure",
    allowed: amount(0, 1000),
    note: "The loss in filter, valves and screens of the page Water source is that of the dirty filter, just before it is cleaned.",
  });
  const found = page.block("G");
  found.heading("Results: pump and motor");
  found.result("Highest shaft power on the curve", "=MAX(PowerCurve)", {
    name: "MostPower",
    unit: "power",
  });
  found.result("Smallest standard motor for it", `=${motorFor("MostPower")}`, {
    name: "MotorNeeded",
    unit: "power",
    note: "Where the curve is covered, no valve left open and no cap off can overload it.",
  });
  found.result("Efficiency at the planned flow", "=IRRIG.PUMP.CURVE(EfficiencyCurve, AllFlow)", {
    name: "SheetEfficiency",
    format: "0.00",
  });
  found.result("Flow at the end of the curve", `=INDEX(PumpCurve, ${last}, 1)`, {
    name: "EndFlow",
    unit: "flow",
    note: "As far as the pump may run when an end cap is off or a valve is left open.",
  });
  found.result("NPSH required there", `=INDEX(SuctionCurve, ${last}, 2)`, {
    name: "EndSuction",
    unit: "length",
  });
  found.result("NPSH available there", `=${availableAt("EndFlow")}`, {
    name: "EndAvailable",
    unit: "length",
  });
  found.result(
    "Line inlet, filter clean, valves open",
    `=INDEX(IRRIG.PUMP.LINES(PumpCurve, OpenLift-(FilterLoss-CleanLoss)*${HEAD_OF_PRESSURE}, Lines, Main, Feeder, ${LINE_WITHOUT_INLET}), 4, 2)`,
    { name: "CleanInlet", unit: "pressure" },
  );
  found.result("Line inlet, filter dirty, valves open", "=OpenInlet", { unit: "pressure" });
  found.result("Clean it when its loss has grown by", "=FilterLoss-CleanLoss", {
    name: "DirtAllowed",
    unit: "pressure",
  });
  found.result(
    "Surge when the check valve shuts at once",
    "=IRRIG.PIPE.SURGE(AllFlow, MainOutside, INDEX(Main, 1, 1), Units)",
    { name: "CheckValveSurge", unit: "pressure" },
  );
  found.result("Highest static pressure with it", "=StaticPressure+CheckValveSurge", {
    name: "WithCheckValve",
    unit: "pressure",
  });
  page.below(given, found);
  page.safety("electricity", "pressure");
  page.gap();

  page.breakPage();
  page.heading("Checks of the pump");
  const checks = page.block("A");
  const check = (label: string, formula: string) => checks.check(label, formula, SENTENCE_COLUMNS);
  const upToRunning = (marks: string, says: string) => {
    const column = marks.charAt(0);
    return counts.reduceRight(
      (rest, n) =>
        `IF(AND(${n}<=Running, ${column}${duty + n}<>"OK"), "With ${n} running: "&${says}, ${rest})`,
      '"OK"',
    );
  };
  check(
    "Suction, any number of lines",
    `=${upToRunning(suctionMarks, '"the pump requires more suction head than there is, or runs off its curve: throttle, or set it lower."')}`,
  );
  check(
    "Suction, a cap off",
    `=IF(EndSuction<=EndAvailable, "OK", "With an end cap off the pump may run out to "&FIXED(EndFlow, 0)&" "&${unitText("flow")}&", where it requires "&FIXED(EndSuction, 1)&" "&${unitText("length")}&" of suction head; there is "&FIXED(EndAvailable, 1)&": throttle at the pump.")`,
  );
  check(
    "Least flow, fewest lines",
    `=${upToRunning(flowMarks, '"the pump gets less than its least flow, or runs off its curve: keep more lines open, or bypass water to the pond."')}`,
  );
  check(
    "Motor and the pump",
    `=IF(MostPower<=Motor, "OK", "The pump takes up to "&FIXED(MostPower, 1)&" "&${unitText("power")}&"; the motor gives "&FIXED(Motor, 1)&": take a larger motor.")`,
  );
  check(
    "Efficiency and the sheet",
    `=IF(PumpEfficiency<=SheetEfficiency+0.03, "OK", "The sheet gives an efficiency of "&FIXED(SheetEfficiency, 2)&" at the planned flow; the page Water source counts on "&FIXED(PumpEfficiency, 2)&": correct it there.")`,
  );
  check(
    "NPSH required and the sheet",
    `=IF(RequiredSuction>=IRRIG.PUMP.CURVE(SuctionCurve, AllFlow)*0.995, "OK", "The sheet requires "&FIXED(IRRIG.PUMP.CURVE(SuctionCurve, AllFlow), 1)&" "&${unitText("length")}&" at the planned flow; the page Water source says "&FIXED(RequiredSuction, 1)&": correct it there.")`,
  );
  check(
    "Filter clean and dirty",
    `=IF(CleanLoss<=FilterLoss, "OK", "The clean filter loses "&FIXED(CleanLoss, 1)&" "&${unitText("pressure")}&", more than the "&FIXED(FilterLoss, 1)&" that the page Water source counts: type the loss of the dirty filter there.")`,
  );
  check(
    "Check valve and the rating",
    `=IF(WithCheckValve<=${RECURRING}*PipeRating, "OK", "When the check valve shuts at once the pressure may reach "&FIXED(WithCheckValve, 0)&" "&${unitText("pressure")}&"; polyethylene bears "&FIXED(${RECURRING}*PipeRating, 0)&" in short surges: take a valve that shuts slowly, a relief valve, or stronger pipe.")`,
  );
  page.below(checks);
  page.text(
    "Fit a check valve behind the pump, so that the main does not empty through it; it shuts when the power fails. Polyethylene pipe bears short recurring surges to one and a half times its rating (handbook of polyethylene pipe, from memory); fittings, filters and gauges may bear less: their makers' numbers go first.",
  );
  page.gap();

  page.heading("Filling the pipe, and its air");
  const fill = page.block("A");
  fill.input("Filling velocity, at most", field.fillSpeed, {
    name: "FillSpeed",
    unit: "speed",
    allowed: amount(0.01, 5),
    note: "1 ft/s or 0.3 m/s is common practice: air in front of faster water hammers where it stops.",
  });
  page.below(fill);
  const filling = page.row;
  const pipes = [
    { label: "Main", inside: "INDEX(Main, 1, 1)", length: "INDEX(Main, 1, 2)" },
    { label: "Feeder", inside: "FeederInside", length: "FeederLength" },
    { label: "Line", inside: "INDEX(Insides, 1)", length: "LineLength" },
  ];
  const perMinute = 'IF(Units="SI", 0.06, 1)';
  const [, , , , minutes] = page.table("A", [
    { header: "Pipe", role: "label", span: 2, rows: pipes.map(({ label }) => label) },
    {
      header: "Length",
      unit: "length",
      role: "result",
      rows: pipes.map(({ length }) => `=${length}`),
    },
    {
      header: "Water",
      unit: "pipeVolume",
      role: "result",
      rows: pipes.map(({ label, inside, length }) =>
        label === "Line"
          ? "=IRRIG.DRAIN.VOLUME(Insides, Lengths, Units)"
          : `=IRRIG.DRAIN.VOLUME(${inside}, ${length}, Units)`,
      ),
    },
    {
      header: "Flow, at most",
      unit: "flow",
      role: "result",
      rows: pipes.map(({ inside }) => `=IRRIG.FLUSH.FLOW(${inside}, Units, FillSpeed)`),
    },
    {
      header: "Minutes, at least",
      role: "result",
      format: "0.0",
      rows: pipes.map((_, i) => `=D${filling + 1 + i}/E${filling + 1 + i}*${perMinute}`),
    },
  ]);
  page.needsLines(filling, 2);
  page.gap();
  const airs = page.block("A");
  airs.result("Filling one after the other", `=SUM(${minutes})`, {
    name: "FillMinutes",
    unit: { word: "minutes" },
    format: "0.0",
  });
  airs.result("Air to let out while filling", air(`MAX(E${filling + 1}:E${filling + 3})`), {
    name: "AirOut",
    unit: { us: "ft³/min", si: "L/s" },
    format: "0.0",
  });
  airs.result("Air to let in when the pump stops", air("AllFlow"), {
    name: "AirIn",
    unit: { us: "ft³/min", si: "L/s" },
    format: "0.0",
  });
  page.below(airs);
  page.text(
    "Air and vacuum valves (common practice): at every high point of the main, behind the check valve of the pump, and at the far end of the main. Each lets out the air of the filling flow, and lets in as much air as water runs off, so that no vacuum flattens thin pipe or pulls field water back. On the line its open far end does it: fill until water comes, then shut the valve there slowly; where there is a cap, shut the hydrant before the cap goes on.",
  );
  page.safety("pressure", "backflow");
}

/** Of short surges that come again and again, the share of the rating that polyethylene bears. */
const RECURRING = "1.5";

/** The first of the standard ratings that is enough. */
function motorFor(power: string): string {
  const among = (ratings: readonly number[]) =>
    ratings.reduceRight(
      (rest, rating) => `IF(${power}<=${rating}, ${rating}, ${rest})`,
      '"larger than listed"',
    );
  return `IF(Units="SI", ${among(MOTORS.SI)}, ${among(MOTORS.US)})`;
}

/** The loss on the suction side grows with the square of the flow. */
function availableAt(waterFlow: string): string {
  return `AvailableSuction-SuctionLoss*((${waterFlow}/AllFlow)^2-1)`;
}

/** Two columns side by side as one range. */
function join(left: string, right: string): string {
  return `${left.split(":")[0]}:${right.split(":")[1]}`;
}
