import { WATER_WEIGHT } from "../ground/constants";
import {
  ACRE,
  DAY,
  FOOT,
  HECTARE,
  HORSEPOWER,
  HOUR,
  INCH,
  KILOMETER,
  KILOPASCAL,
  KILOWATT,
  LITER,
  MEGAJOULE,
  MILE,
  MILLIMETER,
  MINUTE,
  POUND,
  POUND_FORCE,
  PSI,
  US_GALLON,
  ZERO_CELSIUS,
} from "../ground/unit-factors";

/** A unit that a sheet may name. SI = (value + offset) × scale. */
export interface ConversionUnit {
  readonly symbol: string;
  readonly scale: number;
  readonly offset: number;
  /** Further spellings; case, spaces and superscripts do not tell spellings apart. */
  readonly aliases: readonly string[];
}

export interface Quantity {
  readonly name: string;
  readonly units: readonly ConversionUnit[];
}

function unit(symbol: string, scale: number, ...aliases: string[]): ConversionUnit {
  return { symbol, scale, offset: 0, aliases };
}

// Factors beyond unit-factors.ts, from NIST Special Publication 811 (2008), Appendix B.8; exact
// where no digits follow.
const CENTIMETER = 0.01;
const YARD = 3 * FOOT;
const IMPERIAL_GALLON = 4.54609 * LITER;
const MERCURY_METER = 133322.4; // Pa per meter of mercury, conventional
const ATMOSPHERE = 101325;
const BAR = 100_000;
const KILOGRAM_FORCE = 9.80665;
const METRIC_HORSEPOWER = 735.4988;
const OUNCE = POUND / 16;
const CALORIE = 4.184; // thermochemical
const BRITISH_THERMAL_UNIT = 1055.056; // international table

/**
 * The trade's units, by quantity. A speed and an application rate are one quantity, as are a length
 * and a depth of water; a pressure and a head of water are one, at the head's one density (998.2
 * kg/m³, water at 20 °C), so that 1 psi is 2.311 ft. Gallons are US gallons.
 */
export const QUANTITIES: readonly Quantity[] = [
  {
    name: "length or depth",
    units: [
      unit("ft", FOOT, "foot", "feet", "'"),
      unit("in", INCH, "inch", "inches", '"'),
      unit("yd", YARD, "yard", "yards"),
      unit("mi", MILE, "mile", "miles"),
      unit("m", 1, "metre", "metres", "meter", "meters"),
      unit("cm", CENTIMETER, "centimetre", "centimetres", "centimeter", "centimeters"),
      unit("mm", MILLIMETER, "millimetre", "millimetres", "millimeter", "millimeters"),
      unit("km", KILOMETER, "kilometre", "kilometres", "kilometer", "kilometers"),
    ],
  },
  {
    name: "area",
    units: [
      unit("acre", ACRE, "acres", "ac"),
      unit("ha", HECTARE, "hectare", "hectares"),
      unit("ft²", FOOT ** 2, "sqft", "square feet", "square foot"),
      unit("in²", INCH ** 2, "sqin", "square inches", "square inch"),
      unit("yd²", YARD ** 2, "sqyd", "square yards", "square yard"),
      unit("mi²", MILE ** 2, "sqmi", "square miles", "square mile"),
      unit("m²", 1, "sqm", "square metres", "square meters"),
      unit("cm²", CENTIMETER ** 2, "sqcm"),
      unit("mm²", MILLIMETER ** 2, "sqmm"),
      unit("km²", KILOMETER ** 2, "sqkm"),
    ],
  },
  {
    name: "volume",
    units: [
      unit("gal", US_GALLON, "gallon", "gallons", "us gal"),
      unit("imp gal", IMPERIAL_GALLON, "imperial gallon", "imperial gallons"),
      unit("ft³", FOOT ** 3, "cuft", "cubic feet", "cubic foot"),
      unit("in³", INCH ** 3, "cuin", "cubic inches", "cubic inch"),
      unit("yd³", YARD ** 3, "cuyd", "cubic yards", "cubic yard"),
      unit("acre-in", ACRE * INCH, "acre-inch", "acre-inches", "ac-in"),
      unit("acre-ft", ACRE * FOOT, "acre-foot", "acre-feet", "ac-ft"),
      unit("L", LITER, "litre", "litres", "liter", "liters"),
      unit(
        "mL",
        LITER / 1000,
        "ml",
        "millilitre",
        "millilitres",
        "milliliter",
        "milliliters",
        "cc",
      ),
      unit("ML", LITER * 1e6, "megalitre", "megalitres", "megaliter", "megaliters"),
      unit("m³", 1, "cum", "cubic metres", "cubic meters"),
      unit("cm³", CENTIMETER ** 3),
      unit("ha-mm", HECTARE * MILLIMETER, "hectare-millimetre", "hectare-millimetres"),
      unit("ha-m", HECTARE, "hectare-metre", "hectare-metres"),
    ],
  },
  {
    name: "flow",
    units: [
      unit("gpm", US_GALLON / MINUTE, "gal/min", "us gpm", "gallons per minute"),
      unit("gph", US_GALLON / HOUR, "gal/h", "gal/hr", "gallons per hour"),
      unit("gpd", US_GALLON / DAY, "gal/day", "gal/d", "gallons per day"),
      unit("imp gpm", IMPERIAL_GALLON / MINUTE, "igpm", "imp gal/min"),
      unit("cfs", FOOT ** 3, "ft³/s", "cusec", "cubic feet per second"),
      unit("cfm", FOOT ** 3 / MINUTE, "ft³/min", "cubic feet per minute"),
      unit("acre-in/h", (ACRE * INCH) / HOUR, "acre-in/hr", "ac-in/h", "acre-inches per hour"),
      unit("acre-ft/day", (ACRE * FOOT) / DAY, "ac-ft/day", "acre-ft/d", "acre-feet per day"),
      unit("L/s", LITER, "lps", "litres per second", "liters per second"),
      unit("L/min", LITER / MINUTE, "lpm", "litres per minute", "liters per minute"),
      unit("L/h", LITER / HOUR, "lph", "l/hr", "litres per hour", "liters per hour"),
      unit("m³/h", 1 / HOUR, "m³/hr", "cmh", "cubic metres per hour", "cubic meters per hour"),
      unit("m³/s", 1, "cumec", "cubic metres per second", "cubic meters per second"),
      unit("m³/day", 1 / DAY, "m³/d", "cubic metres per day", "cubic meters per day"),
      unit("ML/day", (LITER * 1e6) / DAY, "megalitres per day", "megaliters per day"),
    ],
  },
  {
    name: "pressure or head of water",
    units: [
      unit("psi", PSI, "lb/in²", "lbf/in²", "pounds per square inch"),
      unit(
        "ft of water",
        FOOT * WATER_WEIGHT,
        "ftH2O",
        "ft H2O",
        "ftwater",
        "feet of water",
        "ft of head",
        "ft head",
        "feet of head",
      ),
      unit("in of water", INCH * WATER_WEIGHT, "inH2O", "in H2O", "inches of water"),
      unit(
        "m of water",
        WATER_WEIGHT,
        "mH2O",
        "m H2O",
        "mwater",
        "metres of water",
        "meters of water",
        "m of head",
        "m head",
        "metres of head",
        "meters of head",
        "mwc",
      ),
      unit("mm of water", MILLIMETER * WATER_WEIGHT, "mmH2O", "mm H2O"),
      unit("kPa", KILOPASCAL, "kilopascal", "kilopascals"),
      unit("Pa", 1, "pascal", "pascals", "N/m²"),
      unit("MPa", 1e6, "megapascal", "megapascals"),
      unit("bar", BAR, "bars"),
      unit("mbar", BAR / 1000, "hPa", "millibar", "millibars"),
      unit("atm", ATMOSPHERE, "atmosphere", "atmospheres"),
      unit("kgf/cm²", KILOGRAM_FORCE / CENTIMETER ** 2, "kg/cm²"),
      unit("in of mercury", MERCURY_METER * INCH, "inHg", "in Hg", "inches of mercury"),
      unit("mm of mercury", MERCURY_METER * MILLIMETER, "mmHg", "mm Hg"),
    ],
  },
  {
    name: "speed or application rate",
    units: [
      unit("ft/s", FOOT, "fps", "ft/sec", "feet per second"),
      unit("ft/min", FOOT / MINUTE, "fpm", "feet per minute"),
      unit("in/h", INCH / HOUR, "in/hr", "iph", "inches per hour"),
      unit("in/day", INCH / DAY, "in/d", "inches per day"),
      unit("mph", MILE / HOUR, "mi/h", "miles per hour"),
      unit("m/s", 1, "m/sec", "metres per second", "meters per second"),
      unit("mm/h", MILLIMETER / HOUR, "mm/hr", "millimetres per hour", "millimeters per hour"),
      unit("mm/day", MILLIMETER / DAY, "mm/d", "millimetres per day", "millimeters per day"),
      unit("cm/h", CENTIMETER / HOUR, "cm/hr"),
      unit(
        "km/h",
        KILOMETER / HOUR,
        "kph",
        "kmh",
        "km/hr",
        "kilometres per hour",
        "kilometers per hour",
      ),
    ],
  },
  {
    name: "temperature",
    units: [
      { symbol: "°F", scale: 5 / 9, offset: 459.67, aliases: ["F", "deg F", "fahrenheit"] },
      { symbol: "°C", scale: 1, offset: ZERO_CELSIUS, aliases: ["C", "deg C", "celsius"] },
      unit("K", 1, "kelvin"),
    ],
  },
  {
    name: "power",
    units: [
      unit("hp", HORSEPOWER, "horsepower", "bhp", "whp"),
      unit("metric hp", METRIC_HORSEPOWER, "PS"),
      unit("W", 1, "watt", "watts"),
      unit("kW", KILOWATT, "kilowatt", "kilowatts"),
      unit("MW", 1e6, "megawatt", "megawatts"),
    ],
  },
  {
    name: "energy",
    units: [
      unit("kWh", KILOWATT * HOUR, "kilowatt-hour", "kilowatt-hours"),
      unit("hp-h", HORSEPOWER * HOUR, "hp-hr", "horsepower-hour", "horsepower-hours"),
      unit("J", 1, "joule", "joules"),
      unit("kJ", 1000, "kilojoule", "kilojoules"),
      unit("MJ", MEGAJOULE, "megajoule", "megajoules"),
      unit("Btu", BRITISH_THERMAL_UNIT, "BTU"),
    ],
  },
  {
    name: "force",
    units: [
      unit("lbf", POUND_FORCE, "pound-force", "pounds-force"),
      unit("N", 1, "newton", "newtons"),
      unit("kN", 1000, "kilonewton", "kilonewtons"),
      unit("kgf", KILOGRAM_FORCE, "kilogram-force"),
    ],
  },
  {
    name: "mass",
    units: [
      unit("lb", POUND, "lbs", "pound", "pounds"),
      unit("oz", OUNCE, "ounce", "ounces"),
      unit("short ton", 2000 * POUND, "us ton"),
      unit("g", 0.001, "gram", "grams"),
      unit("kg", 1, "kilogram", "kilograms"),
      unit("t", 1000, "tonne", "tonnes", "metric ton"),
    ],
  },
  {
    name: "water capacity of soil",
    units: [
      unit("in/ft", INCH / FOOT, "inches per foot"),
      unit("mm/m", MILLIMETER),
      unit("m/m", 1),
    ],
  },
  {
    name: "solar radiation",
    units: [
      unit("MJ/m²/day", MEGAJOULE / DAY, "MJ/m²/d", "MJ/m²day"),
      unit("W/m²", 1),
      unit("ly/day", CALORIE / CENTIMETER ** 2 / DAY, "ly/d", "langleys per day", "cal/cm²/day"),
      unit("kWh/m²/day", (KILOWATT * HOUR) / DAY, "kWh/m²/d"),
    ],
  },
  {
    name: "density",
    units: [
      unit("lb/ft³", POUND / FOOT ** 3, "pcf"),
      unit("lb/gal", POUND / US_GALLON, "ppg"),
      unit("kg/m³", 1),
      unit("g/cm³", 1000, "g/cc", "kg/L"),
    ],
  },
  {
    name: "kinematic viscosity",
    units: [
      unit("ft²/s", FOOT ** 2),
      unit("m²/s", 1),
      unit("mm²/s", MILLIMETER ** 2, "cSt", "centistokes"),
    ],
  },
];
