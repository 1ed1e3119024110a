import { crops, stages } from "../../tables/crops";
import { type Block, type PageBuilder, unitText } from "../kit/builder";
import { workbook, type PagePlan } from "../kit/workbook";
import { bluestemFlat, type Field } from "../parts/bluestem-flat";
import { amount, hours, optional, price, temperature } from "../parts/limits";
import {
  COLUMNS,
  dayInputs,
  GROWER_ANSWER,
  GROWER_QUESTION,
  moveInput,
  OFFICER_QUESTION,
  setResults,
  soilInputs,
} from "../parts/line-blocks";
import { workbookInputs } from "../parts/line-inputs";
import { namesPage } from "../parts/names";
import { setCheck } from "../parts/plan-checks";
import { SENTENCE_COLUMNS, SET_TOO_LONG, WAITS_FOR_SET } from "../parts/sentences";
import { endOfSeasonPage } from "./end-of-season";
import { heads } from "./heads";
import { pumpPage } from "./pump";
import { waterBudgetPage } from "./water-budget";
import { waterSourcePage } from "./water-source";

const MOST_SETS = 120;

export const season = workbook({
  ...heads.season,
  subjects: [
    "pressure",
    "electricity",
    "water edge",
    "fuel",
    "towing",
    "overhead wires",
    "roads and buildings",
    "backflow",
    "compressed air",
  ],
  answers: [
    [GROWER_QUESTION, GROWER_ANSWER],
    [
      OFFICER_QUESTION,
      `="Uniformity (CU) "&FIXED(LineCU, 2)&" along the line, efficiency "&FIXED(Efficiency, 2)&"; pressure varies by "&FIXED(100*Variation, 1)&"%, the limit is "&FIXED(100*Limit, 0)&"%. Energy: "&FIXED(Energy, 1)&" kWh "&IF(Units="SI", "per 10 mm on a hectare", "per acre-inch")&" if electric."`,
    ],
    [
      "How many lines, what does the water cost?",
      `=IF(SetsPerDay=0, "The set does not fit the day: see above.", LinesNeeded&IF(LinesNeeded=1, " line", " lines")&" of "&Heads&" sprinklers cover the field in "&RotationDays&" days; "&Running&IF(Running=1, " runs", " run")&". Power, labor and water cost "&FIXED(UnitCost, 2)&" "&Currency&" "&IF(Units="SI", "per 10 mm on a hectare", "per acre-inch")&".")`,
    ],
  ],
  field: bluestemFlat,
  pages: (field) => [
    seasonPage(field),
    rotationPage(field),
    waterBudgetPage(field),
    waterSourcePage(field),
    pumpPage(field),
    endOfSeasonPage(field),
    namesPage(field.system),
  ],
});

function seasonPage(field: Field): PagePlan {
  return {
    name: "Season",
    title: { text: "Season", formula: '="Season: "&FieldName' },
    purpose:
      "Change the shaded cells; everything else follows. The line and the pump are on the page Water source. The field is invented, and so are its prices.",
    widths: COLUMNS,
    landscape: true,
    write: (page) => seasonCells(page, field),
  };
}

function seasonCells(page: PageBuilder, field: Field): void {
  const given = page.block("A");
  workbookInputs(given, field);
  given.gap();
  given.heading("Soil and crop");
  soilInputs(given, field);
  given.input("Crop", "clover hay", {
    name: "Crop",
    allowed: { list: crops, knownBy: "IRRIG.CROP.ROOT($)" },
  });
  given.input("Stage of growth", "mid", { name: "Stage", allowed: { list: stages } });
  given.gap();
  given.heading("A day of weather in the driest month");
  weatherInputs(given, field);
  given.gap();
  given.heading("The field and the day");
  given.input("Area", field.area, {
    name: "Area",
    unit: "area",
    allowed: amount(0.01, 100000),
  });
  given.input("Width across the lines", field.width, {
    name: "Width",
    unit: "length",
    allowed: amount(1, 100000),
  });
  moveInput(given, field);
  given.input("Days between irrigations", field.days, {
    name: "RotationDays",
    allowed: { low: 1, high: 60, whole: true },
  });
  const found = page.block("G");
  found.heading("What the crop needs");
  found.result("Water that the soil holds", "=IRRIG.SOIL.AWC(Texture, Units)", {
    name: "Capacity",
    unit: "waterCapacity",
  });
  found.result("Root depth", "=IRRIG.CROP.ROOT(Crop, Units)", {
    name: "RootDepth",
    unit: "length",
  });
  found.result("Wind at 2 m", "=IRRIG.ET.WIND2M(WeatherWind, WindHeight, Units)", {
    name: "Wind2m",
    unit: "wind",
  });
  found.result(
    "Reference evapotranspiration",
    "=IRRIG.ET.REFERENCE(DayLow, DayHigh, DewPoint, Wind2m, Radiation, Latitude, Elevation, DayOfYear, Units)",
    { name: "ReferenceET", unit: "dailyDepth" },
  );
  found.result("The crop uses", "=ReferenceET*IRRIG.CROP.KC(Crop, Stage)", {
    name: "CropUse",
    unit: "dailyDepth",
  });
  found.result(
    "Peak use, from the month that uses most",
    "=IRRIG.ET.PEAK(MAX(MonthUse), NetDepth, Units)",
    {
      name: "PeakUse",
      unit: "dailyDepth",
    },
  );
  found.result("Allowed depletion", "=IRRIG.CROP.DEPLETION(Crop, Units, CropUse)", {
    name: "Depletion",
    format: "0.00",
  });
  found.result(
    "Maximum net depth per irrigation",
    "=IRRIG.SOIL.NET(Capacity, RootDepth, Depletion, Units)",
    {
      name: "MostNet",
      unit: "depth",
    },
  );
  found.result("Longest interval", "=IRRIG.SYSTEM.INTERVAL(MostNet, CropUse)", {
    name: "Interval",
    unit: { word: "days" },
    format: "0.0",
  });
  found.gap();
  found.heading("Hours, sets and lines");
  found.result("Net depth for those days", "=CropUse*RotationDays", {
    name: "NetDepth",
    unit: "depth",
  });
  found.result(
    "Application efficiency",
    "=IRRIG.APPLICATION.EFFICIENCY(LineCU, Adequacy, Effective)",
    {
      name: "Efficiency",
      format: "0.00",
    },
  );
  found.result("Application rate", "=IRRIG.APPLICATION.RATE(HeadFlow, Spacing, Move, Units)", {
    name: "Rate",
    unit: "rate",
  });
  found.result(
    "Rate the soil takes",
    "=IRRIG.SOIL.INTAKE(IRRIG.SOIL.PROFILE(Texture, Compact), Slope, Units)",
    { name: "Intake", unit: "rate" },
  );
  setResults(found);
  found.result("Positions in the field", "=IRRIG.SET.POSITIONS(Width, Move)", {
    name: "Positions",
    format: "0",
  });
  found.result(
    "Lines needed",
    '=IF(SetsPerDay=0, "set too long", IRRIG.SYSTEM.LINES(Positions, SetsPerDay, RotationDays))',
    { name: "LinesNeeded", format: "0" },
  );
  found.result(
    "Days to cover the field",
    '=IF(SetsPerDay=0, "set too long", ROUNDUP(ROUNDUP(Positions/Running, 0)/SetsPerDay, 0))',
    { name: "RoundDays", unit: { word: "days" }, format: "0" },
  );
  found.result(
    "Flow needed",
    '=IF(SetsPerDay=0, "set too long", IRRIG.SYSTEM.CAPACITY(Area, NetDepth/Efficiency, RotationDays, SetHours*SetsPerDay, Units))',
    { name: "FieldFlow", unit: "flow" },
  );
  found.result("Flow that the lines take", "=AllFlow", { unit: "flow" });
  found.gap();
  found.heading("The working day");
  dayInputs(found, field);
  found.input("First set starts at", 6, {
    name: "StartHour",
    unit: { word: "o'clock" },
    allowed: hours,
  });
  page.below(given, found);

  page.breakPage();
  page.heading("Checks of the season");
  const checks = page.block("A");
  const check = (label: string, formula: string) => checks.check(label, formula, SENTENCE_COLUMNS);
  setCheck(checks);
  check(
    "Depth and the soil",
    `=IF(NetDepth<=MostNet*1.005, "OK", "The crop uses "&FIXED(NetDepth, 2)&" "&${unitText("depth")}&" between irrigations; the soil gives "&FIXED(MostNet, 2)&" "&${unitText("depth")}&": irrigate every "&INT(Interval)&" days.")`,
  );
  check(
    "Peak use and the plan",
    `=IF(CropUse>=PeakUse*0.995, "OK", "In the peak period the crop uses "&FIXED(PeakUse, 2)&" "&${unitText("dailyDepth")}&"; the plan is for "&FIXED(CropUse, 2)&": plan for a hotter, drier day.")`,
  );
  check(
    "Lines running",
    `=IF(SetsPerDay=0, ${WAITS_FOR_SET}, IF(Running>=LinesNeeded, "OK", Running&IF(Running=1, " line runs; ", " lines run; ")&LinesNeeded&" are needed: run more, or irrigate less often."))`,
  );
  check(
    "Flow and the field",
    `=IF(SetsPerDay=0, ${WAITS_FOR_SET}, IF(AllFlow>=FieldFlow*0.995, "OK", "The lines take "&FIXED(AllFlow, 1)&" "&${unitText("flow")}&"; the field needs "&FIXED(FieldFlow, 1)&" "&${unitText("flow")}&": run more lines, or longer sets."))`,
  );
  check(
    "Pond and the season",
    `=IF(SetsPerDay=0, ${WAITS_FOR_SET}, IF(PondDays="always", "OK", IF(PondDays>=SeasonDays, "OK", "The pond lasts "&FIXED(PondDays, 0)&" days of irrigating; the season needs "&FIXED(SeasonDays, 0)&" days: find more water, or irrigate less.")))`,
  );
  page.below(checks);

  page.heading("The season's water, power, work and cost");
  const money = page.block("A");
  money.input("Seasonal net irrigation, if known", undefined, {
    name: "SeasonNet",
    unit: "depth",
    allowed: optional(amount(0.01, 5000)),
    note: "Blank: the sum of the months on the page Water budget.",
  });
  money.input("Power", "electric", {
    name: "Power",
    allowed: { list: ["electric", "diesel", "propane", "gasoline", "natural gas"] },
  });
  money.input("Price per kWh, gallon …", field.price.energy, {
    name: "EnergyPrice",
    format: "0.00",
    allowed: price,
  });
  money.input("Price of an hour's labor", field.price.labor, {
    name: "LabourPrice",
    format: "0.00",
    allowed: price,
  });
  money.input("Price of water", field.waterPrice, {
    name: "WaterPrice",
    unit: { us: "per 1000 gal", si: "per m³" },
    format: "0.00",
    allowed: price,
  });
  const cost = page.block("G");
  cost.result("Seasonal net irrigation", '=IF(SeasonNet="", SUM(MonthNet), SeasonNet)', {
    name: "SeasonDepth",
    unit: "depth",
  });
  cost.result("Water pumped", "=IRRIG.SYSTEM.VOLUME(Area, SeasonDepth/Efficiency, Units)", {
    name: "SeasonVolume",
    unit: "fieldVolume",
  });
  cost.result(
    "Hours of pumping",
    "=IRRIG.SYSTEM.CAPACITY(Area, SeasonDepth/Efficiency, 1, 1, Units)/AllFlow",
    { name: "PumpHours", unit: { word: "hours" }, format: "#,##0" },
  );
  cost.result(
    "Energy or fuel",
    "=IRRIG.PUMP.ENERGY(AllFlow, PumpHead, PumpHours, Power, Units, Performance)",
    { name: "SeasonEnergy", format: "#,##0" },
  );
  cost.unitOfLast(
    `=IF(Power="electric", "kWh", IF(Power="natural gas", ${either("1000 ft³", "m³")}, ${either("gal", "L")}))`,
  );
  cost.result("Days of irrigating", '=IF(SetsPerDay=0, "set too long", PumpHours/PumpingHours)', {
    name: "SeasonDays",
    unit: { word: "days" },
    format: "#,##0",
  });
  cost.result("Energy cost", "=SeasonEnergy*EnergyPrice", {
    name: "EnergyCost",
    format: "#,##0",
    money: true,
  });
  cost.unitOfLast("=Currency");
  cost.result("Hours of moving lines", "=Running*PumpHours/SetHours*MoveHours", {
    name: "LabourHours",
    unit: { word: "hours" },
    format: "#,##0",
  });
  cost.result("Labor cost", "=LabourHours*LabourPrice", {
    name: "LabourCost",
    format: "#,##0",
    money: true,
  });
  cost.unitOfLast("=Currency");
  cost.result("Water cost", '=SeasonVolume*WaterPrice/IF(Units="SI", 1, 1000)', {
    name: "WaterCost",
    format: "#,##0",
    money: true,
  });
  cost.unitOfLast("=Currency");
  const each = { us: "per acre-inch", si: "per ha × 10 mm" };
  const applied = '(Area*SeasonDepth/Efficiency/IF(Units="SI", 10, 1))';
  cost.result("Energy or fuel", `=SeasonEnergy/${applied}`, {
    name: "UnitEnergy",
    unit: each,
    format: "0.0",
  });
  cost.result("Power, labor and water", `=(EnergyCost+LabourCost+WaterCost)/${applied}`, {
    name: "UnitCost",
    unit: each,
    format: "0.00",
    money: true,
  });
  page.below(money, cost);
  page.safety("electricity", "fuel", "water edge", "overhead wires", "roads and buildings");
}

function either(us: string, si: string): string {
  return `IF(Units="SI", "${si}", "${us}")`;
}

function weatherInputs(block: Block, field: Field): void {
  const { weather } = field;
  for (const [label, value, name] of [
    ["Lowest air temperature", weather.low, "DayLow"],
    ["Highest air temperature", weather.high, "DayHigh"],
    ["Dew point", weather.dewpoint, "DewPoint"],
  ] as const) {
    block.input(label, value, { name, unit: "temperature", allowed: temperature });
  }
  block.input("Wind", weather.wind, {
    name: "WeatherWind",
    unit: "wind",
    allowed: amount(0, 200),
  });
  block.input("Wind measured at", weather.windHeight, {
    name: "WindHeight",
    unit: "length",
    allowed: amount(0.5, 100),
  });
  block.input("Solar radiation", weather.radiation, {
    name: "Radiation",
    unit: { word: "MJ/m²/day" },
    allowed: amount(0.1, 45),
  });
  block.input("Latitude", weather.latitude, {
    name: "Latitude",
    unit: { word: "degrees" },
    allowed: { low: -90, high: 90 },
  });
  block.input("Elevation", weather.elevation, {
    name: "Elevation",
    unit: "length",
    allowed: amount(-500, 15000),
  });
  block.input("Day of the year", weather.day, {
    name: "DayOfYear",
    allowed: { low: 1, high: 366, whole: true },
  });
}

function rotationPage(field: Field): PagePlan {
  return {
    name: "Rotation",
    title: {
      text: "Rotation: which line stands where",
      formula: '="Rotation: which line stands where on "&FieldName',
    },
    purpose:
      "Each line takes a block of positions and works through it; a set is whole, and no line is in two places.",
    widths: [12, 12, 12, 12, 12, 24],
    write(page) {
      page.safety("pressure", "towing", "overhead wires", "roads and buildings");
      page.gap();
      page.spill(
        "A",
        `=IF(SetsPerDay=0, ${SET_TOO_LONG}, IRRIG.SET.PLAN(Running, Positions, SetHours, MoveHours, DayHours, StartHour))`,
        {
          rows: field.positions + 1,
          reserved: MOST_SETS + 1,
          columns: [{ format: "0" }, { format: "0.0" }, { format: "0" }, { format: "0" }],
        },
      );
    },
  };
}
