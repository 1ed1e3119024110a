import { everyUnit } from "../boundary/units";
import { crops } from "../tables/crops";

/**
 * What an argument says in the help, where several functions have the same one. The build writes it
 * into a doc comment that has no @param for the argument: from the group that the comment's
 * @arguments names, else from `every`. A @param in the comment itself comes first.
 */
export const sharedArguments: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  every: {
    units: '"US" (blank) or "SI".',
    friction:
      'Hazen–Williams C, 50 to 200 (blank or 0: 150, clean plastic pipe without saddles and joints; 140 allows for them), or "Darcy" for Darcy–Weisbach.',
  },
  line: {
    discharge:
      "Discharge of a head: the coefficient K in q = K√p (gpm and psi, m³/h and kPa), above 0; or its chart in two columns (pressure, flow), joined by power laws and extended at both ends.",
    riser:
      "Height of the nozzle above the tubing (ft, m), 0 or more (blank: 0); its pressure is taken off before the regulator.",
    regulator:
      "Outlet set pressure of a regulator under each head (psi, kPa), blank or 0: none. One value for all, one column with a value per head (blank: none there), or two columns (set, loss), one row for all or a row per head. The loss is 5 psi or 34.5 kPa unless given; a blank cell for it may count as 0.",
    heads: "Number of heads on the line, 1 to 500.",
    spacing:
      "Distance between heads (ft, m), above 0; or a row or column with one length per segment, from the inlet to head 1 on.",
    first:
      "Distance from the inlet to head 1 (ft, m), above 0 (blank or 0: the spacing). Not with a range of spacings, which holds it.",
    inlet: "Pressure where the lateral begins (psi, kPa), above 0.",
    inside:
      "Inside diameter (in, mm), above 0: the bore, not the nominal size; PIPE.INSIDE turns one into the other. One value, one column with a value per segment, or two columns (inside diameter, number of segments) from the inlet on.",
    rise: "Ground above the inlet (ft, m), uphill positive: one value is that of the last head, spread evenly with distance; a row or column is each head's own. Blank or 0: level.",
    n: "Which head, counted from the inlet: 1 to the number of heads.",
    limit:
      "Largest variation of the nozzle pressure, (highest − lowest)/average, as a fraction above 0: 0.2 for the 20% rule.",
    lowest: "No nozzle below this pressure (psi, kPa), above 0 (blank or 0: no such limit).",
    maxvelocity: "No segment faster than this (ft/s, m/s), above 0 (blank or 0: no such limit).",
    outlets: "Number of outlets, 1 to 500.",
  },
  field: {
    corners:
      "Corners of the field in the order of its edges, either way round: two columns, x east and y north (ft, m), 3 to 200 rows. (0, 0) is a corner; the first may be given again at the end.",
    spacing: "Distance between heads (ft, m), above 0.",
    move: "Distance from one position to the next (ft, m), above 0.",
    first:
      "Distance from where the row enters the field, or leaves an obstacle, to head 1 (ft, m), above 0 (blank or 0: half the spacing). Where the setback keeps the line farther in, head 1 stands at its near end.",
    setback: "Least distance of line and heads from every edge (ft, m), 0 or more (blank: 0).",
    obstacles:
      "Circles that line and heads keep out of: three columns, x, y and radius (ft, m), up to 50 rows. Blank: none.",
    most: "Most heads on the line, a whole number from 1 to 500 (blank or 0: 500).",
    latitude: "Latitude of the origin, decimal degrees, −90 to 90.",
    longitude: "Longitude of the origin, decimal degrees, −180 to 180.",
    bearing:
      "Bearing of the line from its near end, degrees clockwise from true north, −360 to 360; positions advance to its left. A blank cell may count as 0, due north.",
    start:
      "Distance of the first row from the nearest corner across (ft, m), above 0. Blank or 0: as many rows as moves fit across, rounded, in the middle of the field.",
    spots:
      "Heights of the ground: three columns, x, y and height (ft, m), 3 to 100 rows, reaching beyond the line on every side. Blank: none.",
  },
  day: {
    latitude:
      "Decimal degrees, north positive, south negative. A blank cell may count as 0, the equator.",
    day: "Day of the year, a whole number from 1 to 366; for a date in A1, =A1-DATE(YEAR(A1),1,0).",
    tmin: "Lowest air temperature of the day (°F, °C), −58 to 140 °F or −50 to 60 °C, not above tmax. A blank cell may count as 0.",
    tmax: "Highest air temperature of the day (°F, °C). A blank cell may count as 0.",
  },
  plan: {
    field:
      "One row, length along the line and width across it (ft, m); or the corners of the field, two columns, x and y, 3 to 200 rows.",
    spacings: "Head spacings to choose from (ft, m), above 0, up to 25.",
    moves: "Distances between positions to choose from (ft, m), above 0, up to 25.",
    pressures: "Pressures at the lowest nozzle to choose from (psi, kPa), above 0, up to 25.",
    feeders: "Sizes for the feeder, the same four columns, up to 25.",
    obstacles:
      "Circles to keep clear (ft, m): three columns, x, y and radius, up to 50 rows. Blank: none.",
    spots:
      "Ground heights (ft, m): three columns, x, y and height, 3 to 100 rows around all lines. Blank: the slope of the terms.",
  },
  set: {
    hours: "Length of a set, h, above 0.",
    movehours: "Time to drain, move and start again after a set, h, 0 or more (blank: 0).",
    dayhours: "Hours of a day there are for sets and moves, above 0 up to 24 (blank or 0: 24).",
  },
  pipe: {
    inside:
      "Inside diameter (in, mm), above 0: the bore, not the nominal size; PIPE.INSIDE turns one into the other.",
    flow: "Flow in the pipe (gpm, m³/h), 0 or more.",
    length: "Length of the pipe (ft, m), 0 or more.",
    series: '"ISO PE" (metric), "IPS PE" (iron pipe size) or "SIDR" (controlled inside diameter).',
    size: 'Size by the standard, whatever the units of the call: nominal outside diameter in mm for "ISO PE" (20 to 160), nominal inches for "IPS PE" and "SIDR" (1.25 for 1-1/4).',
    rating: 'Dimension ratio of that series: SDR for "ISO PE", DR for "IPS PE", SIDR for "SIDR".',
    units: '"US" (blank) or "SI": the unit of the result.',
  },
  pump: {
    flow: "Flow (gpm, m³/h), 0 or more.",
    head: "Total dynamic head (ft, m), 0 or more.",
    lift: "Height from the water surface up to the hydrant (ft, m), negative when the hydrant lies below the water.",
  },
  water: {
    temperature:
      "Temperature of the water (°F, °C), 32 to 212 °F or 0 to 100 °C. In °C a blank cell may count as 0.",
  },
  crop: {
    crop: 'A crop, such as "alfalfa hay" or "rotated pasture" (the remarks list them all); any case, spaces or hyphens.',
  },
};

/** Sentences that several comments say alike, or that list a table; `{@text name}` stands for one. */
export const sharedSentences: Readonly<Record<string, string>> = {
  lineSolved:
    "Solved as a whole: every head discharges by its own pressure, the flow in a segment is the sum of what is downstream. Friction by Hazen–Williams in the handbook form or Darcy–Weisbach; a head under a regulator gets its set pressure, or the supply less the regulator's loss if that is lower; water of 20 °C. Fittings and saddles are not included; allow for them with a lower C.",
  lineSource:
    "Energy and continuity along the line; friction of USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11 (2016), or Colebrook (1939), Journal of the ICE 11.",
  lineRunsOut:
    "#N/A when the pressure runs out before the last head; it names the first dry head, or the one that lets air in.",
  lineWrong:
    "#VALUE! for a blank, text or impossible argument, and for ranges that don't fit the number of heads; the message names the argument.",
  everyCrop: `Crops: ${crops.join("; ")}.`,
  everyUnit: `The units are: ${everyUnit()}.`,
  checkVerdict: '"OK", or the value beside its limit, and what to change.',
};
