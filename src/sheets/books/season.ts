import { crops, stages } from "../../tables/crops";
import { soilTextures } from "../../tables/soils";
import { bluestemFlat, type Field } from "../parts/bluestem-flat";
import { type Block, cautionsPage, PageBuilder, unitText } from "../kit/builder";
import type { Page, ReadyMadeSheet } from "../kit/definition";
import { endOfSeasonPage } from "./end-of-season";
import { COLUMNS, SENTENCE_COLUMNS } from "../parts/line-blocks";
import { namesPage } from "../parts/names";
import { unitsInput } from "../parts/line-inputs";
import { waterSourcePage } from "./water-source";

const MOST_SETS = 120;

const SUBJECTS = [
  "pressure",
  "electricity",
  "water edge",
  "fuel",
  "towing",
  "overhead wires",
  "roads and buildings",
  "backflow",
  "compressed air",
] as const;

export const season: ReadyMadeSheet = {
  id: "season",
  title: "Season",
  purpose:
    "From soil, crop and weather to hours, moves, lines, pump and power, and how to put the line away in autumn.",
  pages: (system) => {
    const field = bluestemFlat(system);
    return [
      seasonPage(field),
      rotationPage(field),
      waterSourcePage(field),
      endOfSeasonPage(field),
      namesPage(system),
      cautionsPage(system, SUBJECTS),
    ];
  },
};

function seasonPage(field: Field): Page {
  const page = new PageBuilder("Season", field.system, COLUMNS, true);
  page.title("Season: Bluestem Flat");
  page.question(
    "How many hours, when do I move, what should the far gauge read?",
    `="Run "&FIXED(SetHours, 1)&" hours, then move; each line makes "&SetsPerDay&" set a day and is back at its first position after "&RotationDays&" days. The far gauge should read "&FIXED(FarPressure, 1)&" "&${unitText("pressure")}&"."`,
  );
  page.question(
    "What uniformity, what energy, does it meet the practice standard's numbers?",
    `="Uniformity "&FIXED(LineCU, 2)&" along the line, efficiency "&FIXED(Efficiency, 2)&"; "&FIXED(UnitEnergy, 1)&" kWh for "&IF(Units="SI", "10 mm on a hectare", "an inch on an acre")&". Pressure varies by "&FIXED(100*Variation, 1)&" %: "&IF(Variation<=Limit, "within", "over")&" the limit of "&FIXED(100*Limit, 0)&" %."`,
  );
  page.question(
    "How many heads, which rolls, what total?",
    '=LinesNeeded&" lines of "&Heads&" heads cover the field in "&RotationDays&" days. Water, power and work cost "&FIXED(UnitCost, 2)&" for "&IF(Units="SI", "10 mm on a hectare", "an inch on an acre")&"; rolls and prices stand in the workbook Quote."',
  );
  page.freeze();
  page.purpose(
    "Change the tinted cells; everything else follows. The line and the pump are on the page Water source. The field is invented, and so are its prices.",
  );
  page.gap();

  const given = page.block("A");
  given.heading("Soil and crop");
  unitsInput(given, field);
  given.input("Soil", "silt loam", { name: "Texture", allowed: { list: soilTextures } });
  given.input("Over compact subsoil", false, {
    name: "Compact",
    allowed: { list: ["TRUE", "FALSE"] },
  });
  given.input("Slope of the ground", field.slope, { name: "Slope", unit: { word: "%" } });
  given.input("Crop", "clover hay", { name: "Crop", allowed: { list: crops } });
  given.input("Stage of growth", "mid", { name: "Stage", allowed: { list: stages } });
  given.gap();
  given.heading("A day of weather in the driest month");
  weatherInputs(given, field);
  given.gap();
  given.heading("The field and the day");
  given.input("Area", field.area, { name: "Area", unit: "area" });
  given.input("Width across the lines", field.width, { name: "Width", unit: "length" });
  given.input("Between positions of a line", field.move, { name: "Move", unit: "length" });
  given.input("Days to come round", field.days, {
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
  found.result("Share it may use up", "=IRRIG.CROP.DEPLETION(Crop, Units, CropUse)", {
    name: "Depletion",
    format: "0.00",
  });
  found.result(
    "Most to put back at once",
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
    "Rate that the soil takes",
    "=IRRIG.SOIL.INTAKE(IRRIG.SOIL.PROFILE(Texture, Compact), Slope, Units)",
    { name: "Intake", unit: "rate" },
  );
  found.result("Set time", "=IRRIG.SET.TIME(NetDepth, Rate, Efficiency)", {
    name: "SetHours",
    unit: { word: "hours" },
    format: "0.0",
  });
  found.result("Sets a day with one line", "=IRRIG.SET.PERDAY(SetHours, MoveHours, DayHours)", {
    name: "SetsPerDay",
    format: "0",
  });
  found.result("Positions in the field", "=IRRIG.SET.POSITIONS(Width, Move)", {
    name: "Positions",
    format: "0",
  });
  found.result(
    "Lines needed",
    '=IF(SetsPerDay>0, IRRIG.SYSTEM.LINES(Positions, SetsPerDay, RotationDays), "a set is too long")',
    { name: "LinesNeeded", format: "0" },
  );
  found.result(
    "Flow that the field asks for",
    '=IF(SetsPerDay>0, IRRIG.SYSTEM.CAPACITY(Area, NetDepth/Efficiency, RotationDays, SetHours*SetsPerDay, Units), "a set is too long")',
    { name: "FieldFlow", unit: "flow" },
  );
  found.result("Flow that the lines take", "=AllFlow", { unit: "flow" });
  found.gap();
  found.heading("The working day");
  found.input("Hours in a working day", field.dayHours, {
    name: "DayHours",
    allowed: { low: 1, high: 24 },
  });
  found.input("Hours to move a line", field.moveHours, { name: "MoveHours" });
  found.input("First set starts at", 6, { name: "StartHour", unit: { word: "o'clock" } });
  page.below(given, found);

  page.breakPage();
  page.heading("Checks");
  const checks = page.block("A");
  checks.check("Rate and the soil", "=IRRIG.CHECK.RATE(Rate, Intake)", SENTENCE_COLUMNS);
  checks.check(
    "Days and the crop",
    '=IF(RotationDays<=Interval, "OK", "The crop uses up the soil\'s water in "&FIXED(Interval, 1)&" days: come round in "&INT(Interval)&".")',
    SENTENCE_COLUMNS,
  );
  checks.check(
    "Lines running",
    '=IF(Running>=LinesNeeded, "OK", Running&" lines run, and "&LinesNeeded&" are needed: run more, or come round later.")',
    SENTENCE_COLUMNS,
  );
  page.below(checks);

  page.heading("The season's water, power, work and cost");
  const money = page.block("A");
  money.input("Net water that the season asks for", field.seasonDepth, {
    name: "SeasonNet",
    unit: "depth",
  });
  money.input("Power", "electric", {
    name: "Power",
    allowed: { list: ["electric", "diesel", "propane", "gasoline", "natural gas"] },
  });
  money.input("Price of a unit of it", field.price.energy, { name: "EnergyPrice", format: "0.00" });
  money.input("Pump against the criterion", 0.8, {
    name: "Performance",
    note: "1 is as good as the published criterion for pumping plants; 0.8 is common in the field.",
  });
  money.input("Price of an hour's work", field.price.labour, {
    name: "LabourPrice",
    format: "0.00",
  });
  const cost = page.block("G");
  cost.result("Water pumped", "=IRRIG.SYSTEM.VOLUME(Area, SeasonNet/Efficiency, Units)", {
    name: "SeasonVolume",
    unit: "fieldVolume",
  });
  cost.result(
    "Hours of pumping",
    "=IRRIG.SYSTEM.CAPACITY(Area, SeasonNet/Efficiency, 1, 1, Units)/AllFlow",
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
  cost.result("Its cost", "=SeasonEnergy*EnergyPrice", { name: "EnergyCost", format: "#,##0.00" });
  cost.result("Hours of moving lines", "=Running*PumpHours/SetHours*MoveHours", {
    name: "LabourHours",
    unit: { word: "hours" },
    format: "#,##0",
  });
  cost.result("Their cost", "=LabourHours*LabourPrice", { name: "LabourCost", format: "#,##0.00" });
  const each = { us: "an acre-inch", si: "a ha × 10 mm" };
  const amount = '(Area*SeasonNet/Efficiency/IF(Units="SI", 10, 1))';
  cost.result("Energy or fuel for", `=SeasonEnergy/${amount}`, {
    name: "UnitEnergy",
    unit: each,
    format: "0.0",
  });
  cost.result("Power and work for", `=(EnergyCost+LabourCost)/${amount}`, {
    name: "UnitCost",
    unit: each,
    format: "0.00",
  });
  page.below(money, cost);
  page.cautionsFor(...SUBJECTS);
  return page.build();
}

function either(us: string, si: string): string {
  return `IF(Units="SI", "${si}", "${us}")`;
}

function weatherInputs(block: Block, field: Field): void {
  const { weather } = field;
  block.input("Lowest air temperature", weather.low, { name: "DayLow", unit: "temperature" });
  block.input("Highest air temperature", weather.high, { name: "DayHigh", unit: "temperature" });
  block.input("Dew point", weather.dewpoint, { name: "DewPoint", unit: "temperature" });
  block.input("Wind", weather.wind, { name: "WeatherWind", unit: "wind" });
  block.input("measured at", weather.windHeight, { name: "WindHeight", unit: "length" });
  block.input("Solar radiation", weather.radiation, {
    name: "Radiation",
    unit: { word: "MJ/m²/day" },
  });
  block.input("Latitude", weather.latitude, {
    name: "Latitude",
    unit: { word: "degrees" },
    allowed: { low: -90, high: 90 },
  });
  block.input("Elevation", weather.elevation, { name: "Elevation", unit: "length" });
  block.input("Day of the year", weather.day, {
    name: "DayOfYear",
    allowed: { low: 1, high: 366, whole: true },
  });
}

function rotationPage(field: Field): Page {
  const page = new PageBuilder("Rotation", field.system, [12, 12, 12, 12, 12, 24]);
  page.title("Rotation: which line stands where");
  page.purpose(
    "Each line takes a block of positions and works through it; a set is whole, and no line is in two places.",
  );
  page.gap();
  page.freeze();
  page.spill(
    "A",
    '=IFERROR(IRRIG.SET.PLAN(Running, Positions, SetHours, MoveHours, DayHours, StartHour), "No whole set and its move fit into the working day: run a shorter set more often, or a longer day.")',
    {
      rows: field.positions + 1,
      reserved: MOST_SETS + 1,
      columns: [{ format: "0" }, { format: "0.0" }, { format: "0" }, { format: "0" }],
    },
  );
  return page.build();
}
