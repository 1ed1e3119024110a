import { FOOT, HORSEPOWER, HOUR, KILOWATT, US_GALLON } from "../ground/unit-factors";

/**
 * The Nebraska Pumping Plant Performance Criteria: the work on the water that a well-kept pumping
 * plant gets from a unit of energy or fuel, with a pump of 75% efficiency in the figures.
 * University of Nebraska–Lincoln Extension. The natural-gas figure assumes 925 Btu a cubic foot;
 * gasoline is 8.66 here, 8.55 in other printings.
 */
export type EnergySource = "electric" | "diesel" | "propane" | "gasoline" | "natural gas";

const WATER_HORSEPOWER_HOUR = HORSEPOWER * HOUR;
const KILOWATT_HOUR = KILOWATT * HOUR;
const THOUSAND_CUBIC_FEET = 1000 * FOOT ** 3;

/** Work on the water: J per J of electricity, J per m³ of fuel or gas. */
export const pumpingPlantCriteria: Readonly<Record<EnergySource, number>> = {
  electric: (0.885 * WATER_HORSEPOWER_HOUR) / KILOWATT_HOUR,
  diesel: (12.5 * WATER_HORSEPOWER_HOUR) / US_GALLON,
  propane: (6.89 * WATER_HORSEPOWER_HOUR) / US_GALLON,
  gasoline: (8.66 * WATER_HORSEPOWER_HOUR) / US_GALLON,
  "natural gas": (61.7 * WATER_HORSEPOWER_HOUR) / THOUSAND_CUBIC_FEET,
};
