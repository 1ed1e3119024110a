/**
 * Where a number from these functions meets work that can hurt someone. One text per subject; a
 * function names its subjects in its `@cautions` tag, and every screen that shows the function
 * shows these beside it. They remind; they do not replace codes, manufacturers' instructions or
 * training, and each says so in its last point.
 */
export type CautionSubject =
  | "pressure"
  | "electricity"
  | "water edge"
  | "fuel"
  | "towing"
  | "overhead wires"
  | "lightning"
  | "roads and buildings"
  | "backflow"
  | "treated water"
  | "buried lines"
  | "plan on the ground"
  | "flushing"
  | "drilling"
  | "rolls and ice"
  | "compressed air";

export interface Caution {
  readonly title: string;
  /** One sentence, for the help that a spreadsheet shows while a formula is typed. */
  readonly brief: string;
  readonly points: readonly string[];
}

export const cautions: Readonly<Record<CautionSubject, Caution>> = {
  pressure: {
    title: "Pressure in pipe and tubing",
    brief:
      "Check against the rating of the weakest part at the highest static pressure; open nothing that is under pressure.",
    points: [
      "The highest pressure is often the static one, with every valve shut, at the lowest point of main, feeder or line. Compare it, and the surge on top of it, with the rating of the weakest part.",
      "Do not leave a pump running against closed valves to read that pressure: the water heats, and can scald or burst the casing. Take it from the pump's curve, or from a reading of seconds.",
      "Heat weakens polyethylene: black tubing in the sun bears much less than its printed rating. Rate it at the temperature of its wall, not of the water.",
      "Before you open anything: close the supply, stop the pump, open the lowest drain or the far valve, and see the flow stop. A gauge can stick, and a check valve, a regulator or a closed quick connect can hold pressure behind it, so zero on one gauge is no proof.",
      "Then open caps and joints slowly, a little at first, standing to the side.",
      "Fill slowly, let the air out at the high points and the far end, and close valves slowly. Trapped air or a fast stop can burst a pipe that holds the working pressure.",
      "The marking on the pipe and the manufacturer's rating go before any computed one. Where public safety, high head or a code is concerned, a licensed engineer decides.",
    ],
  },
  electricity: {
    title: "Electric pumps and controls",
    brief:
      "Lock and tag the disconnect before work on a pump; wiring is work for a licensed electrician.",
    points: [
      "Wiring, grounding, overload and ground-fault protection are work for a licensed electrician under the local electrical code.",
      "Before you touch the pump, its shaft or its couplings: lock the disconnect open, tag it, then try the start. The pump must not turn.",
      "That does not prove the circuit dead. Only a qualified person with a tested meter can, so leave covers and wiring to one.",
      "Keep guards on shafts, couplings and belts, and keep loose clothing and hair away from them. A pump on automatic start can turn at any moment.",
      "Never work on a pump while you stand in water or on wet ground with the power on. Follow the pump's and the motor's own instructions.",
    ],
  },
  "water edge": {
    title: "Pond edge, suction and deep water",
    brief:
      "Stop the pump before anyone nears the intake; never work alone at the edge of the water.",
    points: [
      "Banks are soft and slippery, and a tank has walls that nobody can climb. Do not work there alone; wear a life jacket and have a rope or ring within reach.",
      "Stop the pump and lock it out before anyone nears the intake. Suction holds a hand, clothing or a person under water; keep a large screen around it and people out of the water.",
      "Keep children and livestock away from the pond, the intake and the pump. Fence where local rules ask for it.",
      "Taking water needs a right or a permit in many places: ask the local water authority.",
    ],
  },
  fuel: {
    title: "Engines, fuel and exhaust",
    brief: "Run engines outdoors only; let them cool before you refuel.",
    points: [
      "Exhaust holds carbon monoxide, which kills without smell. Run an engine outdoors only, away from doors, windows and pits.",
      "Stop the engine and let it cool before you refuel. No smoking or flame near fuel; wipe up spills before you start.",
      "Store fuel in approved containers away from the water source and the well; use spill containment where local rules ask for it.",
      "Fuel gas, natural or propane, is work for a licensed gas technician. Follow the engine's own instructions and the local fire code.",
    ],
  },
  towing: {
    title: "Towing a line",
    brief:
      "Shut off and drain first; pull from the hitch point only, low and in line, with nobody near the line.",
    points: [
      "Shut off, drain, and see that no pressure is left before you uncouple or pull. Bend no tighter than the tubing allows; a kink is a weak place for good.",
      "Pull from the vehicle's hitch point only, low and in line; never from a rack or an axle. A high or side pull can turn a vehicle over.",
      "Never tow with the rope held in or wrapped round a hand; lifting a line by hand is another thing. Keep fingers out of pins and couplings, and let the vehicle stand before you hitch.",
      "Stay within the pull limits of the vehicle, the hitch, the tubing and its joints: the weakest governs. Start slowly, and stop at once when the line catches.",
      "On slopes go straight up or down where you can. Turning, crossing a slope or being dragged by a line running downhill can roll a vehicle over.",
      "No passengers, and no children near. Keep people and animals clear of the line, and never stand in a loop of it: a line under tension can whip when something lets go.",
      "The vehicle's manual and the tubing manufacturer's limits go before any computed pull.",
    ],
  },
  "overhead wires": {
    title: "Overhead wires",
    brief: "Keep pipe, poles and spray away from overhead wires; ask the utility for the distance.",
    points: [
      "Look up before you raise or carry pipe, risers or poles. Lay long pieces flat to move them, and keep well away from every overhead line: ask the utility for the distance.",
      "Do not let a solid stream or spray reach wires, poles, transformers or an electric fence's charger. Water can carry current back to whatever you touch.",
      "If a wire is down or touches pipe or a machine, stay away, keep others away and call the utility.",
      "The utility and the local code say what is allowed near their lines.",
    ],
  },
  lightning: {
    title: "Lightning",
    brief: "Leave the field at the first thunder; stay away until 30 minutes after the last.",
    points: [
      "Leave the field, the pipe, the pump and the pond at the first thunder. Long wet lines carry lightning from far away.",
      "Go into a building or a closed vehicle; a tree, a shed with open sides or a machine without a cab is no shelter.",
      "Stay away until 30 minutes after the last thunder; the weather service's warnings and local emergency instructions go first.",
    ],
  },
  "roads and buildings": {
    title: "Spray on roads, buildings and neighbors",
    brief:
      "Keep spray off roads, buildings, neighbors and anything electric, in the wind you expect.",
    points: [
      "Spray on a road blinds drivers and freezes into ice. Set part-circle sprinklers or keep the line back far enough for the wind you expect.",
      "Keep spray off houses, paths, playgrounds, livestock drinking places and anything electric.",
      "A line across a road or a track needs the owner's or the road authority's leave, and protection from wheels.",
      "Waste water, manure water or anything mixed into the water must not drift or run onto a neighbor, a road, a ditch or a well. Keep the setbacks that local rules give.",
    ],
  },
  backflow: {
    title: "Backflow into drinking water",
    brief:
      "Fit and test the backflow device that the local code names before you join a drinking-water supply or a well.",
    points: [
      "A line joined to a drinking-water supply or a well can suck field water back. Fit the backflow device that the local plumbing code names, and have it tested as the code says.",
      'Mark taps and outlets of untreated water "not for drinking".',
      "Chemicals or fertilizer in the water need their own injection safety: check valves, interlock and a vacuum break, as the product's label and the law ask.",
      "Connections to a public or potable supply are work for a licensed plumber.",
    ],
  },
  "treated water": {
    title: "Treated water: chemicals, fertilizer, waste water",
    brief: "Keep people out of the spray and off the field for the label's re-entry time.",
    points: [
      "Keep people out of the spray of treated water, and off the field for the re-entry time on the label. Wear what the label says when you handle the product or the line.",
      "Post signs where the law asks for them, and take them down when the time is over.",
      "Rinse the line, the sprinklers and your hands before other work; water left in the line is treated water too.",
      "The product's label is the law in many places, and it goes before anything computed here.",
    ],
  },
  "buried lines": {
    title: "Stakes, trenches and buried lines",
    brief:
      "Have buried lines located before you drive a stake or dig; in the United States call 811.",
    points: [
      "Have buried cables, gas and water lines located and marked before you drive a stake or dig: in the United States call 811 first, elsewhere the local locating service. It is the law in many places.",
      "Positions computed here are for laying out a field. They are no property survey and know nothing of what is buried.",
      "Mark stakes and flags so that people, mowers and livestock see them, and take them up afterwards.",
      "A trench can cave in without warning. Never enter one deeper than the local code allows without shoring or sloped sides; keep soil piles and machines back from its edge.",
    ],
  },
  "plan on the ground": {
    title: "A plan is no survey",
    brief:
      "A plan is no survey: walk it, have buried lines located, look up for wires, and check the pressure at the lowest corner.",
    points: [
      "A plan is drawn from the corners, heights and obstacles that were typed, and is no survey. Walk every line before anything is bought, dug or staked; boundaries, easements and rights of way are for a licensed surveyor.",
      "It shows no buried line and no overhead wire. Have buried lines located first, in the United States by calling 811, and keep pipe, risers and spray away from wires.",
      "The highest pressure stands at the lowest corner with every valve shut. Compare that static pressure, and the surge on top of it, with the rating of the weakest part.",
      "Water is thrown beyond the edge where lines lie near it, and wind carries it farther: keep it off roads, neighbors, buildings and anything electric.",
      "Local codes, the manufacturers' instructions and licensed practice go before anything drawn or computed here.",
    ],
  },
  flushing: {
    title: "Flushing a line",
    brief: "Shut off and drain before the cap comes off; hold down the open end, and open slowly.",
    points: [
      "Shut off and drain the line before the end cap comes off; stand to the side while it does.",
      "Stake or weigh down the open end and point it away from people, roads and wires. Under flow a loose end can whip.",
      "Open slowly, from the other end, with nobody near the open one. Shut off again before the cap goes back.",
      "Where the flushed water may run, and what it may carry, local rules say; the filter's and the pump's instructions say what they bear.",
    ],
  },
  drilling: {
    title: "Saddles: drilling and tapping",
    brief: "Never drill or tap a saddle into pipe that is under pressure.",
    points: [
      "Never drill or tap a saddle into pipe that is under pressure: shut off, drain, and see the flow stop.",
      "Use a battery drill, not one on a cord: the pipe and the ground are wet.",
      "Wear eye protection, and hold the pipe so that it cannot turn.",
      "Clear the chips out of the pipe before water goes on: they plug nozzles and regulators.",
      "The saddle manufacturer's instructions say the drill's size, the torque and the pressure it bears.",
    ],
  },
  "rolls and ice": {
    title: "Rolls of tubing, and ice in a line",
    brief:
      "Cut a roll's straps one at a time, standing to the side; never pressurize a line that may hold ice.",
    points: [
      "A roll is a spring. Cut its straps one at a time, from the outside in, standing to the side, with nobody in the way of the end.",
      "Rolls are heavy and roll: lift with help or a machine, and chock them on a slope.",
      "Do not pressurize a line that may hold ice: a plug can burst the line or shoot out of it. Let it thaw by itself, with the end open.",
      "The tubing manufacturer's instructions for handling, cold and storage go first.",
    ],
  },
  "compressed air": {
    title: "Blowing out with compressed air",
    brief:
      "Drain by gravity where you can; leave the rest to a qualified contractor with low-pressure air.",
    points: [
      "Draining by gravity comes first. Compressed air stores far more energy than water at the same pressure, and a part that fails becomes a missile.",
      "Mains that do not drain by gravity are work for a qualified contractor with low-pressure air.",
      "The air is regulated and relieved, both set low, and never above the rating of the weakest part. The far end is open before the air goes on.",
      "Air is never blown through a pump, and is kept out of a filter or a backflow device unless the manufacturer's instructions say how.",
      "Wear eye and ear protection, stand aside of open ends and sprinklers, and never leave a line under air.",
      "The compressor's and the parts' own instructions and the local code go first.",
    ],
  },
};
