/**
 * Where a number from these functions meets work that can hurt someone. One text per subject; a
 * function names its subjects in its `@cautions` tag, and every screen that shows the function
 * shows these beside it. They remind; they do not replace codes, makers' instructions or training,
 * and each says so in its last point.
 */
export type CautionSubject =
  | "pressure"
  | "electricity"
  | "water edge"
  | "fuel"
  | "towing"
  | "overhead wires"
  | "roads and buildings"
  | "backflow"
  | "buried lines"
  | "compressed air";

export interface Caution {
  readonly title: string;
  readonly points: readonly string[];
}

export const cautions: Readonly<Record<CautionSubject, Caution>> = {
  pressure: {
    title: "Pressure in pipe and tubing",
    points: [
      "The highest pressure is often the static one, with every valve shut and the pump running, at the lowest point of the line. Compare that with the rating of the weakest part.",
      "Before you open a cap, a connect or a joint: shut off, let the pressure out, read zero on a gauge, and stand aside of the opening.",
      "Fill slowly, let the air out at the high points and the far end, and close valves slowly. Trapped air and a fast stop can burst a pipe that holds the working pressure.",
      "The marking on the pipe and the maker's rating go before any computed one. Where public safety, high head or a code is concerned, a licensed engineer decides.",
    ],
  },
  electricity: {
    title: "Electric pumps and controls",
    points: [
      "Wiring, grounding, overload and ground-fault protection are work for a licensed electrician under the local electrical code.",
      "Lock the disconnect open and tag it before you touch the pump, its shaft or its wiring; then try the start button to prove it is dead.",
      "Keep guards on shafts, couplings and belts, and keep loose clothing and hair away from them. A pump on automatic start can turn at any moment.",
      "Never work on a pump while you stand in water or on wet ground with the power on. Follow the pump's and the motor's own instructions.",
    ],
  },
  "water edge": {
    title: "Pond edge, suction and deep water",
    points: [
      "Banks are soft and slippery, and a tank has walls that nobody can climb. Do not work there alone; wear a life jacket and have a rope or ring within reach.",
      "Stop the pump before anyone nears the intake. Suction holds a hand, clothing or a person under water; keep a large screen around it and people out of the water.",
      "Keep children and livestock away from the pond, the intake and the pump. Fence where local rules ask for it.",
      "Taking water needs a right or a permit in many places: ask the local water authority.",
    ],
  },
  fuel: {
    title: "Engines, fuel and exhaust",
    points: [
      "Exhaust holds carbon monoxide, which kills without smell. Run an engine outdoors only, away from doors, windows and pits.",
      "Stop the engine and let it cool before you refuel. No smoking or flame near fuel; wipe up spills before you start.",
      "Store fuel in approved containers away from the water source and the well; use spill containment where local rules ask for it.",
      "Gas fuel systems are work for a licensed fitter. Follow the engine's own instructions and the local fire code.",
    ],
  },
  towing: {
    title: "Towing a line",
    points: [
      "Pull from the vehicle's hitch point only, low and in line; never from a rack, an axle or by hand. A high or side pull can turn a vehicle over.",
      "Stay within the pull limits of the vehicle, the hitch, the tubing and its joints: the weakest governs. Start slowly, and stop at once when the line catches.",
      "On slopes go straight up or down where you can. Turning, crossing a slope or being dragged by a line running downhill can roll a vehicle over.",
      "Keep people and animals clear of the line, and never stand in a loop of it or let it wrap a leg. A line under tension can whip when something lets go.",
      "Shut off and read zero pressure first. Bend no tighter than the tubing allows; a kink is a weak place for good.",
      "The vehicle's manual and the tubing maker's limits go before any computed pull.",
    ],
  },
  "overhead wires": {
    title: "Overhead wires and lightning",
    points: [
      "Look up before you raise or carry pipe, risers or poles. Lay long pieces flat to move them, and keep well away from every overhead line: ask the utility for the distance.",
      "Do not let a solid stream or spray reach wires, poles, transformers or an electric fence's charger. Water can carry current back to whatever you touch.",
      "If a wire is down or touches pipe or a machine, stay away, keep others away and call the utility.",
      "Leave the field and the pipe at the first thunder. Long wet lines carry lightning.",
      "The utility and the local code say what is allowed near their lines.",
    ],
  },
  "roads and buildings": {
    title: "Spray on roads, buildings and neighbours",
    points: [
      "Spray on a road blinds drivers and freezes into ice. Set part-circle heads or keep the line back far enough for the wind you expect.",
      "Keep spray off houses, paths, playgrounds, livestock drinking places and anything electric.",
      "A line across a road or a track needs the owner's or the road authority's leave, and protection from wheels.",
      "Waste water, manure water or anything mixed into the water must not drift or run onto a neighbour, a road, a ditch or a well. Keep the setbacks that local rules give.",
    ],
  },
  backflow: {
    title: "Backflow into drinking water",
    points: [
      "A line joined to a drinking-water supply or a well can suck field water back. Fit the backflow device that the local plumbing code names, and have it tested as the code says.",
      'Mark taps and outlets of untreated water "not for drinking".',
      "Chemicals or fertiliser in the water need their own injection safety: check valves, interlock and a vacuum break, as the product's label and the law ask.",
      "Connections to a public or potable supply are work for a licensed plumber.",
    ],
  },
  "buried lines": {
    title: "Stakes, trenches and buried lines",
    points: [
      "Have buried cables, gas and water lines located and marked before you drive a stake or dig. Call the local locating service first; it is the law in many places.",
      "Positions computed here are for laying out a field. They are no property survey and know nothing of what is buried.",
      "Mark stakes and flags so that people, mowers and livestock see them, and take them up afterwards.",
      "A trench can cave in without warning. Never enter one deeper than the local code allows without shoring or sloped sides; keep soil piles and machines back from its edge.",
    ],
  },
  "compressed air": {
    title: "Blowing out with compressed air",
    points: [
      "Draining by gravity comes first. Compressed air stores far more energy than water at the same pressure, and a part that fails becomes a missile.",
      "Use a regulator and a relief valve, both set low, and never above the rating of the weakest part. Open the far end before the air goes on.",
      "Never blow air through a pump, and keep it out of a filter or a backflow device unless the maker's instructions say how.",
      "Wear eye and ear protection, stand aside of open ends and heads, and never leave a line under air.",
      "The compressor's and the parts' own instructions and the local code go first.",
    ],
  },
};
