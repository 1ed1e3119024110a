/**
 * How many SI base units one trade unit is. NIST Special Publication 811 (2008), Appendix B.8;
 * those marked "exact" follow from definitions (foot 0.3048 m, US gallon 231 in³, pound 0.45359237 kg).
 */
export const FOOT = 0.3048; // m, exact
export const INCH = 0.0254; // m, exact
export const MILLIMETER = 0.001; // m
export const KILOMETER = 1000; // m
export const MILE = 5280 * FOOT; // m, exact
export const LITER = 0.001; // m³
export const US_GALLON = 231 * INCH ** 3; // m³, exact: 3.785 411 784 L
export const ACRE = 43560 * FOOT ** 2; // m², exact (international foot)
export const HECTARE = 10000; // m²
export const POUND = 0.45359237; // kg, exact
export const POUND_FORCE = POUND * 9.80665; // N, exact
export const PSI = POUND_FORCE / INCH ** 2; // Pa: 6894.757…
export const KILOPASCAL = 1000; // Pa
export const HORSEPOWER = 550 * FOOT * POUND_FORCE; // W: 745.699 87…
export const KILOWATT = 1000; // W
export const MINUTE = 60; // s
export const HOUR = 3600; // s
export const DAY = 86400; // s
export const MEGAJOULE = 1e6; // J
export const ZERO_CELSIUS = 273.15; // K, exact
