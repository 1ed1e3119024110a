import { callNumber, callTable } from "../support/host";
import { expectClose, expectWithin, published } from "../support/published";

published(
  {
    source: "Irrigation Formulas, extension sheet",
    where:
      "gpm/450 × hours = acres × inches: 40 acres, 2.4 in net at 70 %, 10 days of 20 h, by hand 308.6 gpm",
    seen: "read",
  },
  () => {
    const gross = callNumber("APPLICATION.DEPTH", 0.5, callNumber("SET.TIME", 2.4, 0.5, 0.7));
    // The sheet rounds 452.57 down to 450.
    expectClose(callNumber("SYSTEM.CAPACITY", 40, gross, 10, 20, "US"), 308.57, 0.006);
    // What the flow delivers in ten days of twenty hours is the depth on the area.
    expectClose(
      callNumber("SYSTEM.VOLUME", 40, gross),
      callNumber("SYSTEM.CAPACITY", 40, gross, 10, 20) * 60 * 200,
      1e-12,
    );
  },
);

published(
  {
    source: "Central Platte Natural Resources District, Irrigator's Formula",
    where: "inches = gpm × hours / (acres × 452); 1 acre-inch = 27 154 gallons",
    seen: "read",
  },
  () => {
    const gpm = callNumber("SYSTEM.CAPACITY", 10, 2.5, 7, 11);
    expectClose((gpm * 7 * 11) / (10 * 452), 2.5, 0.002);
    expectWithin(callNumber("SYSTEM.VOLUME", 1, 1, "US"), 27154, 0.5);
  },
);

published(
  {
    source:
      "University of California, Santa Cruz, Teaching Organic Farming and Gardening, unit 1.5",
    where: "exercise 2: 0.15 in a day for 7 days is 1.05 in, 28 516 gallons on an acre (of 27 158)",
    seen: "read",
  },
  () => {
    expectClose(callNumber("SYSTEM.INTERVAL", 1.05, 0.15), 7, 1e-12);
    expectClose(callNumber("SYSTEM.VOLUME", 1, 1.05), 28516, 0.0003);
  },
);

published(
  {
    source: "Metric definitions: 1 mm on 1 ha is 10 m³",
    where: "30 mm on 4 ha in 6 days of 20 h is 1200 m³, 10 m³/h",
    seen: "closed form",
  },
  () => {
    expectClose(callNumber("SYSTEM.VOLUME", 4, 30, "SI"), 1200, 1e-12);
    expectClose(callNumber("SYSTEM.CAPACITY", 4, 30, 6, 20, "SI"), 10, 1e-12);
    expect(callNumber("SYSTEM.INTERVAL", 30, 5)).toBe(6);
  },
);

published(
  {
    source: "Counting by hand: 1320 ft of field in moves of 60 ft, two 11-hour sets a day",
    where: "22 positions; 11 days for one line, 5½ for two, so three in 5 days",
    seen: "closed form",
  },
  () => {
    const positions = callNumber("SET.POSITIONS", 1320, 60);
    const perDay = callNumber("SET.PERDAY", 11, 1, 24);
    expect([positions, perDay]).toEqual([22, 2]);
    expect(callNumber("SYSTEM.LINES", positions, perDay, 11)).toBe(1);
    expect(callNumber("SYSTEM.LINES", positions, perDay, 6)).toBe(2);
    expect(callNumber("SYSTEM.LINES", positions, perDay, 5)).toBe(3);
    const plan = callTable("SET.PLAN", 2, positions, 11, 1, 24, 7);
    expect(plan[1]).toEqual([1, 7, 1, 1]);
    expect(plan[22]).toEqual([6, 7, 2, 22]);
  },
);

published(
  {
    source: "Counting by hand: sets of 36 h with 1 h to move, run unattended, six days a week",
    where: "two days a set; six sets in 12 working days, the last begins on day 12 of the calendar",
    seen: "closed form",
  },
  () => {
    const perDay = callNumber("SET.PERDAY", 36, 1, 24);
    expect(perDay).toBe(0.5);
    expect(callNumber("SYSTEM.LINES", 6, perDay, 12)).toBe(1);
    expect(callNumber("SYSTEM.LINES", 6, perDay, 11)).toBe(2);
    const plan = callTable("SET.PLAN", 1, 6, 36, 1, 24, 6, "back", 1);
    // Working days 1, 3, 5, then 7, 9, 11 of the next week, after one day off.
    expect(plan.slice(1).map((row) => row[0])).toEqual([1, 3, 5, 8, 10, 12]);
    expect(plan.slice(1).map((row) => row[3])).toEqual([6, 5, 4, 3, 2, 1]);
  },
);
