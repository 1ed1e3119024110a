import type { UnitSystem } from "../kit/definition";

/**
 * Bluestem Flat: the field that every ready-made sheet starts from. It is invented, prices too. Ten
 * acres of grass–clover hay on silt loam, lines laid along the contour, water from a farm pond by an
 * electric pump. The metric field is a twin of its own, not the same field converted.
 */
export interface Field {
  readonly system: UnitSystem;
  readonly currency: string;
  readonly heads: number;
  readonly spacing: number;
  readonly move: number;
  readonly positions: number;
  readonly lines: number;
  /** Along the lines and across them, the slope lines stay on when laid uphill. */
  readonly slope: number;
  readonly riser: number;
  readonly lowestPressure: number;
  /** Pressure and flow, as the sprinkler's sheet prints them. */
  readonly chart: readonly (readonly [number, number])[];
  readonly wetted: number;
  readonly wind: number;
  readonly friction: number;
  /** Nominal outside diameters in mm of the ISO series, at this SDR. */
  readonly largeTubing: number;
  readonly smallTubing: number;
  readonly smallestTubing: number;
  readonly feederTubing: number;
  readonly sdr: number;
  readonly largeSegments: number;
  readonly roll: number;
  readonly setback: number;
  readonly fittings: number;
  /** Ground from the hydrant up to the highest and the lowest line inlet that it serves. */
  readonly feederRise: number;
  readonly lowestRise: number;
  readonly mainLength: number;
  readonly mainTubing: number;
  readonly lift: number;
  readonly filterLoss: number;
  readonly spare: number;
  /** Flow and head. */
  readonly pumpCurve: readonly (readonly [number, number])[];
  readonly pumpEfficiency: number;
  readonly suctionLoss: number;
  readonly suctionLift: number;
  readonly npshRequired: number;
  readonly altitude: number;
  readonly waterTemperature: number;
  readonly pipeTemperature: number;
  readonly pond: number;
  readonly pondInflow: number;
  readonly area: number;
  readonly width: number;
  readonly netDepth: number;
  readonly cropUse: number;
  readonly efficiency: number;
  readonly spotUniformity: number;
  readonly adequacy: number;
  readonly moveHours: number;
  readonly dayHours: number;
  readonly days: number;
  readonly weather: {
    readonly low: number;
    readonly high: number;
    readonly dewpoint: number;
    readonly wind: number;
    readonly windHeight: number;
    readonly radiation: number;
    readonly latitude: number;
    readonly elevation: number;
    readonly day: number;
  };
  readonly price: {
    readonly large: number;
    readonly small: number;
    readonly smallest: number;
    readonly feeder: number;
    readonly energy: number;
    readonly labor: number;
    readonly headSet: number;
    /** One of each part; the same in both fields' money. */
    readonly parts: typeof parts;
  };
  readonly headWeight: number;
  /** Numbers of the workshop's lessons. */
  readonly lesson: {
    readonly flow: number;
    readonly inside: number;
    readonly length: number;
    readonly head: number;
    readonly use: number;
    readonly opening: number;
    /** Caught by sixteen cans between four heads, mL. */
    readonly cans: readonly (readonly number[])[];
    /** Depth caught across one line, the line in the middle. */
    readonly across: readonly number[];
    readonly step: number;
    readonly moveSteps: number;
  };
  /** Items in the bill of the lines as they stand. */
  readonly billRows: number;
  /** Feeder beyond the straight distance. */
  readonly slack: number;
  readonly whatIf: {
    readonly spacing: number;
    readonly move: number;
    readonly step: number;
    readonly pressure: number;
    readonly pressureStep: number;
  };
  readonly inletThereIs: number;
  readonly greatestSpeed: number;
  readonly drop: number;
  readonly nozzle: number;
  /** From the month in which the pond is full: name, crop's use, rain of a dry year, the pond's loss. */
  readonly months: readonly (readonly [string, number, number, number])[];
  /** At the flows of the pump's curve: efficiency and suction head required. */
  readonly pumpSheet: readonly (readonly [number, number])[];
  readonly leastPumpFlow: number;
  readonly motor: number;
  /** Part of the loss in filter, valves and screens that a clean filter takes. */
  readonly cleanLoss: number;
  readonly fillSpeed: number;
  /** Of 1000 gallons or a cubic meter. */
  readonly waterPrice: number;
  /** Of the tubing's wall when the line is laid and staked. */
  readonly stakeTemperature: number;
  readonly flushSpeed: number;
  readonly towTemperature: number;
  /** Distance from the inlet and height of the ground under the line. */
  readonly ground: readonly (readonly [number, number])[];
  /** The smaller tubing at yield. */
  readonly yield: number;
}

const parts = {
  head: 16,
  saddle: 6,
  stand: 18,
  regulator: 9,
  coupler: 7,
  reducer: 8,
  cap: 5,
  connect: 24,
  riser: 120,
  backflow: 260,
  flag: 0.4,
};

const us: Field = {
  system: "US",
  currency: "USD",
  heads: 14,
  spacing: 45,
  move: 50,
  positions: 14,
  lines: 2,
  slope: 2,
  riser: 2,
  lowestPressure: 40,
  chart: [
    [35, 3.7],
    [45, 4.2],
    [55, 4.6],
  ],
  wetted: 92,
  wind: 4,
  friction: 140,
  largeTubing: 63,
  smallTubing: 50,
  smallestTubing: 40,
  feederTubing: 75,
  sdr: 17,
  largeSegments: 7,
  roll: 300,
  setback: 20,
  fittings: 6,
  feederRise: 3,
  lowestRise: -3,
  mainLength: 520,
  mainTubing: 90,
  lift: 18,
  filterLoss: 1,
  spare: 5,
  pumpCurve: [
    [0, 168],
    [40, 166],
    [80, 160],
    [120, 150],
    [160, 136],
    [200, 117],
  ],
  pumpEfficiency: 0.62,
  suctionLoss: 2.5,
  suctionLift: 9,
  npshRequired: 10,
  altitude: 1100,
  waterTemperature: 72,
  pipeTemperature: 95,
  pond: 4800000,
  pondInflow: 12,
  area: 10,
  width: 700,
  netDepth: 1.4,
  cropUse: 0.2,
  efficiency: 0.76,
  spotUniformity: 0.82,
  adequacy: 0.8,
  moveHours: 0.75,
  dayHours: 12,
  days: 7,
  weather: {
    low: 61,
    high: 87,
    dewpoint: 60,
    wind: 4,
    windHeight: 6.5,
    radiation: 26.4,
    latitude: 39,
    elevation: 1100,
    day: 196,
  },
  price: {
    large: 1.1,
    small: 0.7,
    smallest: 0.45,
    feeder: 1.55,
    energy: 0.14,
    labor: 18,
    headSet: 40,
    parts,
  },
  headWeight: 6,
  lesson: {
    flow: 36,
    inside: 1.72,
    length: 240,
    head: 4.1,
    use: 0.2,
    opening: 4,
    cans: [
      [84, 72, 69, 86],
      [75, 62, 58, 72],
      [66, 59, 55, 69],
      [79, 69, 72, 88],
    ],
    across: [0, 0.05, 0.14, 0.21, 0.25, 0.27, 0.26, 0.2, 0.13, 0.06, 0],
    step: 10,
    moveSteps: 5,
  },
  billRows: 17,
  slack: 15,
  whatIf: { spacing: 35, move: 40, step: 5, pressure: 42, pressureStep: 4 },
  inletThereIs: 48,
  greatestSpeed: 5,
  drop: 10,
  nozzle: 0.148,
  months: [
    ["April", 2.4, 3, 60000],
    ["May", 3.9, 3.4, 80000],
    ["June", 4.8, 2.9, 100000],
    ["July", 5.2, 2.2, 120000],
    ["August", 4.6, 2.1, 110000],
    ["September", 3.2, 2.4, 80000],
    ["October", 1.7, 2.2, 50000],
    ["November", 0, 1.8, 20000],
    ["December", 0, 1.3, 20000],
    ["January", 0, 1.1, 20000],
    ["February", 0, 1.2, 20000],
    ["March", 0, 2.2, 20000],
  ],
  pumpSheet: [
    [0, 5],
    [0.38, 6],
    [0.56, 7.5],
    [0.625, 9.8],
    [0.65, 12.5],
    [0.62, 14],
  ],
  leastPumpFlow: 30,
  motor: 10,
  cleanLoss: 0.4,
  fillSpeed: 1,
  waterPrice: 0,
  stakeTemperature: 60,
  flushSpeed: 2,
  towTemperature: 70,
  ground: [
    [0, 3],
    [90, 2.2],
    [180, 2.6],
    [270, 1.9],
    [360, 1.1],
    [450, 1.6],
    [540, 0.7],
    [630, 0],
  ],
  yield: 2600,
};

const si: Field = {
  system: "SI",
  currency: "EUR",
  heads: 14,
  spacing: 14,
  move: 15,
  positions: 14,
  lines: 2,
  slope: 2,
  riser: 0.6,
  lowestPressure: 275,
  chart: [
    [250, 0.84],
    [300, 0.92],
    [350, 0.99],
  ],
  wetted: 28,
  wind: 6,
  friction: 140,
  largeTubing: 63,
  smallTubing: 50,
  smallestTubing: 40,
  feederTubing: 75,
  sdr: 17,
  largeSegments: 7,
  roll: 100,
  setback: 6,
  fittings: 6,
  feederRise: 0.9,
  lowestRise: -0.9,
  mainLength: 160,
  mainTubing: 110,
  lift: 5.5,
  filterLoss: 7,
  spare: 1.5,
  pumpCurve: [
    [0, 52],
    [9, 51.5],
    [18, 50],
    [27, 47],
    [36, 42.5],
    [45, 36.5],
  ],
  pumpEfficiency: 0.62,
  suctionLoss: 0.8,
  suctionLift: 2.8,
  npshRequired: 3,
  altitude: 340,
  waterTemperature: 22,
  pipeTemperature: 35,
  pond: 18000,
  pondInflow: 2.5,
  area: 4.1,
  width: 210,
  netDepth: 35,
  cropUse: 5,
  efficiency: 0.76,
  spotUniformity: 0.82,
  adequacy: 0.8,
  moveHours: 0.75,
  dayHours: 12,
  days: 7,
  weather: {
    low: 16,
    high: 31,
    dewpoint: 15.5,
    wind: 6,
    windHeight: 2,
    radiation: 25.7,
    latitude: 39,
    elevation: 340,
    day: 196,
  },
  price: {
    large: 3.6,
    small: 2.3,
    smallest: 1.5,
    feeder: 5.1,
    energy: 0.14,
    labor: 18,
    headSet: 40,
    parts,
  },
  headWeight: 2.7,
  lesson: {
    flow: 8,
    inside: 44,
    length: 75,
    head: 0.92,
    use: 5,
    opening: 100,
    cans: [
      [84, 72, 69, 86],
      [75, 62, 58, 72],
      [66, 59, 55, 69],
      [79, 69, 72, 88],
    ],
    across: [0, 1.3, 3.6, 5.3, 6.4, 6.9, 6.6, 5.1, 3.3, 1.5, 0],
    step: 3,
    moveSteps: 5,
  },
  billRows: 17,
  slack: 5,
  whatIf: { spacing: 10, move: 11, step: 2, pressure: 290, pressureStep: 25 },
  inletThereIs: 332,
  greatestSpeed: 1.5,
  drop: 3,
  nozzle: 3.72,
  months: [
    ["April", 61, 76, 230],
    ["May", 99, 86, 300],
    ["June", 122, 74, 380],
    ["July", 131, 56, 450],
    ["August", 117, 53, 420],
    ["September", 81, 61, 300],
    ["October", 43, 56, 190],
    ["November", 0, 46, 75],
    ["December", 0, 33, 75],
    ["January", 0, 28, 75],
    ["February", 0, 30, 75],
    ["March", 0, 56, 75],
  ],
  pumpSheet: [
    [0, 1.5],
    [0.38, 1.8],
    [0.56, 2.3],
    [0.625, 2.9],
    [0.65, 3.8],
    [0.62, 4.3],
  ],
  leastPumpFlow: 7,
  motor: 7.5,
  cleanLoss: 3,
  fillSpeed: 0.3,
  waterPrice: 0,
  stakeTemperature: 15,
  flushSpeed: 0.6,
  towTemperature: 21,
  ground: [
    [0, 0.9],
    [28, 0.66],
    [56, 0.78],
    [84, 0.57],
    [112, 0.33],
    [140, 0.48],
    [168, 0.21],
    [196, 0],
  ],
  yield: 17900,
};

export function bluestemFlat(system: UnitSystem): Field {
  return system === "US" ? us : si;
}
