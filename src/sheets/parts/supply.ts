import { type Block, type PageBuilder } from "../kit/builder";
import type { Field } from "./bluestem-flat";
import { LINE_WITHOUT_INLET } from "./line-inputs";
import { amount, flow, height, length, sdr, size, temperature } from "./limits";

/**
 * From the water to the line: source, pump, main and feeders, the same cells in every workbook that
 * asks what a line gets and what its pipe must bear. The formulas take `Lines` as the number of lines
 * that run at once.
 */
export const MOST_LINES = 20;

/** Flow, pump head and pressures with this many lines running and every valve open. */
export function openValves(lines: string): string {
  return `IRRIG.PUMP.LINES(PumpCurve, OpenLift, ${lines}, Main, Feeder, ${LINE_WITHOUT_INLET})`;
}

export function supplyInputs(block: Block, field: Field): void {
  block.input("Hydrant above the water", field.lift, {
    name: "Lift",
    unit: "length",
    allowed: height,
  });
  block.input("Pump above the water", field.suctionLift, {
    name: "SuctionLift",
    unit: "length",
    allowed: amount(-300, 30),
    note: "Negative: the water stands above the pump.",
  });
  block.input("Loss on the suction side", field.suctionLoss, {
    name: "SuctionLoss",
    unit: "length",
    allowed: amount(0, 100),
  });
  block.input("NPSH the pump requires", field.npshRequired, {
    name: "RequiredSuction",
    unit: "length",
    allowed: amount(0, 100),
  });
  block.input("Warmest water", field.waterTemperature, {
    name: "WaterTemperature",
    unit: "temperature",
    allowed: amount(0, 150),
  });
  block.input("Altitude", field.altitude, {
    name: "Altitude",
    unit: "length",
    allowed: amount(-500, 15000),
  });
  block.input("Pump efficiency", field.pumpEfficiency, {
    name: "PumpEfficiency",
    allowed: amount(0.05, 1),
  });
  block.input("Pumping plant performance", 0.8, {
    name: "Performance",
    allowed: amount(0.1, 1.5),
    note: "1 is the published criterion for pumping plants; 0.8 is common in the field.",
  });
  block.input("Loss in filter, valves and screens", field.filterLoss, {
    name: "FilterLoss",
    unit: "pressure",
    allowed: amount(0, 1000),
  });
  block.input("Feeder fittings, sum of k", field.fittings, {
    name: "FeederFittings",
    allowed: amount(0, 1000),
  });
  block.input("Hydrant setback from line ends", field.setback, {
    name: "Setback",
    unit: "length",
    allowed: length,
  });
  block.input("Extra feeder for slack", field.slack, {
    name: "Slack",
    unit: "length",
    allowed: length,
  });
  block.input("Highest line inlet above its hydrant", field.feederRise, {
    name: "FeederRise",
    unit: "length",
    allowed: height,
    note: "At the highest position that the hydrant serves.",
  });
  block.input("Lowest line inlet above its hydrant", field.lowestRise, {
    name: "LowestRise",
    unit: "length",
    allowed: height,
    note: "At the lowest position. Negative: below the hydrant.",
  });
  block.input("Lowest point below the hydrant", field.drop, {
    name: "Drop",
    unit: "length",
    allowed: amount(0, 1000),
    note: "The lowest point of main and feeders, other hydrants included; the line's own fall is added from its rise.",
  });
  block.input("Pipe wall in the sun", field.pipeTemperature, {
    name: "WallTemperature",
    unit: "temperature",
    allowed: temperature,
    note: "Black tubing in the sun is much warmer than the air and bears less than its printed rating.",
  });
  block.input("Valve closes in", 5, {
    name: "Closure",
    unit: { word: "seconds" },
    allowed: amount(0, 3600),
  });
}

/** What the lines ask of the pump, and what pipe and tubing must bear. */
export function supplyResults(block: Block): void {
  block.heading("Pump and pipe");
  block.result("Flow of all lines", "=Lines*LineFlow", { name: "AllFlow", unit: "flow" });
  block.result("Positions that one hydrant serves", "=ROUNDUP(Positions/Lines, 0)", {
    name: "OwnPositions",
    format: "0",
  });
  block.result("Feeder with slack", "=IRRIG.FEEDER.LENGTH(OwnPositions, Move, Setback)+Slack", {
    name: "FeederLength",
    unit: "length",
  });
  block.result(
    "Pressure needed at the hydrant",
    "=IRRIG.FEEDER.PRESSURE(PlannedInlet, PlannedFlow, FeederInside, FeederLength, Units, FeederRise, Friction, FeederFittings)",
    { name: "RiserPressure", unit: "pressure" },
  );
  block.result(
    "Loss, water to hydrant",
    "=IRRIG.PIPE.FRICTION(Lines*PlannedFlow, INDEX(Main, 1, 1), INDEX(Main, 1, 2), Units, Friction)+FilterLoss",
    { name: "MainLosses", unit: "pressure" },
  );
  block.result(
    "Total dynamic head needed",
    "=IRRIG.PUMP.TDH(RiserPressure, Lift, MainLosses, Units)",
    {
      name: "TotalHead",
      unit: "length",
    },
  );
  block.result("Pump head at that flow", "=IRRIG.PUMP.CURVE(PumpCurve, AllFlow)", {
    name: "PumpHead",
    unit: "length",
  });
  block.result("Shaft power", "=IRRIG.PUMP.POWER(AllFlow, PumpHead, PumpEfficiency, Units)", {
    name: "ShaftPower",
    unit: "power",
  });
  block.result(
    "NPSH available",
    "=IRRIG.PUMP.NPSH(SuctionLift, SuctionLoss, Units, WaterTemperature, Altitude)",
    { name: "AvailableSuction", unit: "length" },
  );
  block.result(
    "Lift with filter and fittings, valves open",
    `=Lift+FeederRise+(FilterLoss+IRRIG.PIPE.FITTING(PlannedFlow, FeederInside, FeederFittings, Units))*${HEAD_OF_PRESSURE}`,
    { name: "OpenLift", unit: "length" },
  );
  block.result("Line inlet, all valves open", `=INDEX(${openValves("Lines")}, 4, 2)`, {
    name: "OpenInlet",
    unit: "pressure",
  });
  block.result("Line inlet, one line running, valve open", `=INDEX(${openValves("1")}, 4, 2)`, {
    name: "LoneInlet",
    unit: "pressure",
    note: "The fewer lines run, the higher the pressure: throttle at the hydrant to the lateral inlet pressure.",
  });
  block.gap();
  block.heading("What the pipe must bear");
  block.result(
    "Deepest point below the hydrant",
    "=MAX(0, Drop, 0-FeederRise, 0-LowestRise, 0-FeederRise-Rise, 0-LowestRise-Rise)",
    { name: "DeepestFall", unit: "length" },
  );
  block.result(
    "Highest static pressure, valves shut",
    "=IRRIG.PUMP.STATIC(PumpCurve, Lift, Units, DeepestFall)",
    { name: "StaticPressure", unit: "pressure" },
  );
  block.result(
    "Surge in main, feeder or line, the highest",
    "=MAX(IRRIG.PIPE.SURGE(AllFlow, MainOutside, INDEX(Main, 1, 1), Units, INDEX(Main, 1, 2), Closure), " +
      "IRRIG.PIPE.SURGE(LineFlow, FeederOutside, FeederInside, Units, FeederLength, Closure), " +
      `IRRIG.PIPE.SURGE(LineFlow, ${outside("INDEX(Sizes, 1)")}, INDEX(Insides, 1), Units, LineLength, Closure))`,
    { name: "Surge", unit: "pressure" },
  );
  block.result("Static pressure with surge", "=StaticPressure+Surge", {
    name: "WithSurge",
    unit: "pressure",
  });
  block.result(
    "Weakest SDR of main, feeder and line",
    "=MAX(MainSDR, FeederSDR, INDEX(SDRs, 1), IF(INDEX(Lengths, 2)=0, 0, INDEX(SDRs, 2)))",
    { name: "WeakestSDR", format: "General" },
  );
  block.result(
    {
      text: "Pressure rating at that temperature",
      formula: '="Rating, "&Material&" SDR "&WeakestSDR&", that warm"',
    },
    '=IRRIG.PIPE.RATING(Material, WeakestSDR, Units, WallTemperature, IF(OR(Material="PE100", Material="PE80"), "ISO PE", "IPS PE"))',
    { name: "PipeRating", unit: "pressure" },
  );
}

/** How long a column of water one unit of pressure holds up, in the units of the sheet. */
export const HEAD_OF_PRESSURE =
  'IF(Units="SI", IRRIG.UNIT.CONVERT(1, "kPa", "m of water"), IRRIG.UNIT.CONVERT(1, "psi", "ft of water"))';

/** Outside diameter in the units of the sheet; ISO sizes are outside diameters in mm. */
export function outside(millimeters: string): string {
  return `IRRIG.UNIT.CONVERT(${millimeters}, "mm", IF(Units="SI", "mm", "in"))`;
}

/** Main and feeder, and the pump's curve beside them. */
export function pipesAndCurve(page: PageBuilder, field: Field): void {
  const row = page.row + 1;
  const inside = (at: number) => `=IRRIG.PIPE.INSIDE("ISO PE", C${at}, D${at}, Units)`;
  page.table(
    "A",
    [
      { header: "Pipe", role: "label", span: 2, rows: ["Main, for all lines", "Feeder, one each"] },
      {
        header: "Size (mm)",
        role: "input",
        allowed: size,
        rows: [field.mainTubing, field.feederTubing],
      },
      { header: "SDR", role: "input", allowed: sdr, rows: [field.sdr, field.sdr] },
      { header: "Inside", unit: "diameter", role: "result", rows: [inside(row), inside(row + 1)] },
      {
        header: "Length",
        unit: "length",
        role: "result",
        // A feeder's length follows from the positions: only the main's is an input.
        rows: [
          {
            role: "input",
            value: field.mainLength,
            allowed: amount(1, 100000),
            label: "Main, for all lines: Length",
          },
          "=FeederLength",
        ],
      },
      {
        header: "Outside",
        unit: "diameter",
        role: "result",
        rows: [row, row + 1].map((at) => `=${outside(`C${at}`)}`),
      },
    ],
    row - 1,
  );
  page.nameRange("Main", `E${row}:F${row}`);
  page.nameRange("Feeder", `E${row + 1}:F${row + 1}`);
  page.nameRange("MainSize", `C${row}`);
  page.nameRange("MainSDR", `D${row}`);
  page.nameRange("MainOutside", `G${row}`);
  page.nameRange("FeederSize", `C${row + 1}`);
  page.nameRange("FeederSDR", `D${row + 1}`);
  page.nameRange("FeederInside", `E${row + 1}`);
  page.nameRange("FeederOutside", `G${row + 1}`);
  const [flows] = page.table(
    "I",
    [
      {
        header: "Pump curve, flow",
        unit: "flow",
        role: "input",
        allowed: flow,
        rows: field.pumpCurve.map(([at]) => at),
      },
      {
        header: "Pump curve, head",
        unit: "length",
        role: "input",
        allowed: amount(0, 10000),
        rows: field.pumpCurve.map(([, head]) => head),
      },
    ],
    row - 1,
  );
  page.needsLines(row - 1, 2);
  const [from, to] = flows.split(":");
  page.nameRange("PumpCurve", `${from}:${to.replace("I", "J")}`);
}
