/**
 * Which limit to move where a check of the plan fails and no other choice of sizes, strips and days
 * helps: by the check's label, in words.
 */
export const LIMITS_TO_MOVE: Readonly<Record<string, string>> = {
  "Set and the day": "Move: more hours in the working day, or quicker moves.",
  "Pressure along the line": "Move: the highest pressure at the hydrant, or the sprinkler's chart.",
  "Lowest pressure": "Move: the pressure of the water, or the pressure wanted at a nozzle.",
  "Highest pressure and the chart": "Move: a sprinkler whose chart reaches higher.",
  "Velocity in the line": "Move: a sprinkler that takes less water.",
  "Velocity in the feeder": "Move: a sprinkler that takes less water.",
  "Velocity in the main": "Move: less flow, by more hours in the working day.",
  "Static pressure and the rating":
    "Move: the pressure with the valve shut, by a pressure-reducing valve that the supplier or an engineer chooses; or pipe with a higher rating.",
  "With surge, against the whole rating":
    "Move: the pressure with the valve shut, by a pressure-reducing valve that the supplier or an engineer chooses; or valves that close more slowly.",
  "Pump and lines":
    "Move: the water first, more flow or more pressure; else a sprinkler that runs at a lower pressure, more hours in the working day, or a smaller field.",
  Suction: "Move: the pump nearer to the water.",
  "Rate and the soil":
    "Move: a sprinkler with a smaller nozzle, or one that throws wider, so that the soil takes what falls.",
  "Spacing and the wind": "Move: the hours of irrigating to those with less wind.",
  "Days and the crop":
    "Move: more hours in the working day, quicker moves, more water, or a smaller field.",
};
