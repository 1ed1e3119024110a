import fc from "fast-check";
import { callError, callNumber, callTable } from "../support/host";

describe("SET.TIME", () => {
  test("a net depth takes longer the lower the efficiency", () => {
    expect(callNumber("SET.TIME", 2, 0.25)).toBe(8);
    expect(callNumber("SET.TIME", 2, 0.25, 0.8)).toBe(10);
    expect(callNumber("SET.TIME", 0, 0.25)).toBe(0);
  });

  test.each([null, "", 0, 1])("efficiency %p is 1", (efficiency) => {
    expect(callNumber("SET.TIME", 2, 0.25, efficiency)).toBe(8);
  });

  test("a wrong argument is named", () => {
    expect(callError("SET.TIME", 2, 0).message).toBe("rate must be above 0; got 0");
    expect(callError("SET.TIME", -2, 0.25).message).toBe("depth must be 0 or more; got -2");
    expect(callError("SET.TIME", 2, 0.25, 80).message).toBe(
      "efficiency must be above 0 and at most 1; got 80",
    );
  });
});

describe("SET.PERDAY", () => {
  test("every set has its move, the last one too", () => {
    expect(callNumber("SET.PERDAY", 11, 1)).toBe(2);
    expect(callNumber("SET.PERDAY", 11, 1.01)).toBe(1);
    expect(callNumber("SET.PERDAY", 11, 1, 12)).toBe(1);
    expect(callNumber("SET.PERDAY", 8)).toBe(3);
    expect(callNumber("SET.PERDAY", 1.1, 0.1)).toBe(20);
    expect(callNumber("SET.PERDAY", 11.5, 1, 12)).toBe(0);
  });

  test("round the clock a set longer than the day is a part of a set a day", () => {
    expect(callNumber("SET.PERDAY", 24, 1)).toBe(1 / 2);
    expect(callNumber("SET.PERDAY", 36, 1)).toBe(1 / 2);
    expect(callNumber("SET.PERDAY", 47, 1)).toBe(1 / 2);
    expect(callNumber("SET.PERDAY", 47.5, 1)).toBe(1 / 3);
    expect(callNumber("SET.PERDAY", 24)).toBe(1);
    expect(callNumber("SET.PERDAY", 24, 1, 23.9)).toBe(0);
  });

  test.each([null, "", 0, 24])("dayhours %p is 24", (dayhours) => {
    expect(callNumber("SET.PERDAY", 7, null, dayhours)).toBe(3);
  });

  test("a wrong argument is named", () => {
    expect(callError("SET.PERDAY", 0).message).toBe("hours must be above 0 h; got 0");
    expect(callError("SET.PERDAY", 8, -1).message).toBe("movehours must be 0 h or more; got -1");
    expect(callError("SET.PERDAY", 8, 1, 25).message).toBe(
      "dayhours must be above 0 and at most 24 h; got 25",
    );
  });
});

describe("SET.POSITIONS", () => {
  test("covers the whole width", () => {
    expect(callNumber("SET.POSITIONS", 700, 50)).toBe(14);
    expect(callNumber("SET.POSITIONS", 701, 50)).toBe(15);
    expect(callNumber("SET.POSITIONS", 0.3, 0.1)).toBe(3);
    expect(callNumber("SET.POSITIONS", 20, 50)).toBe(1);
  });

  test("a wrong argument is named", () => {
    expect(callError("SET.POSITIONS", 0, 50).message).toBe("width must be above 0; got 0");
    expect(callError("SET.POSITIONS", 700, -50).message).toBe("move must be above 0; got -50");
  });
});

describe("SET.PLAN", () => {
  test("two lines over five positions, two sets a day", () => {
    expect(callTable("SET.PLAN", 2, 5, 7, 1, 16, 6)).toEqual([
      ["day", "start (h)", "line", "position"],
      [1, 6, 1, 1],
      [1, 6, 2, 4],
      [1, 14, 1, 2],
      [1, 14, 2, 5],
      [2, 6, 1, 3],
    ]);
  });

  test("a set past midnight is on the next day", () => {
    const plan = callTable("SET.PLAN", 1, 4, 11, 1, 24, 18);
    expect(plan.slice(1)).toEqual([
      [1, 18, 1, 1],
      [2, 6, 1, 2],
      [2, 18, 1, 3],
      [3, 6, 1, 4],
    ]);
    expect(callTable("SET.PLAN", 1, 1, 8, 0, 24, 24)[1]).toEqual([2, 0, 1, 1]);
  });

  test("hours are without rounding dust", () => {
    const starts = callTable("SET.PLAN", 1, 20, 1.1, 0.1).map((row) => row[1]);
    expect(starts.slice(1, 6)).toEqual([0, 1.2, 2.4, 3.6, 4.8]);
    expect(starts[20]).toBe(22.8);
  });

  test("blank movehours, dayhours and start are 0, 24 and 0", () => {
    const written = callTable("SET.PLAN", 3, 10, 8, 0, 24, 0);
    expect(callTable("SET.PLAN", 3, 10, 8)).toEqual(written);
    expect(callTable("SET.PLAN", 3, 10, 8, "", 0, null)).toEqual(written);
  });

  test("a line without a position stays idle", () => {
    expect(callTable("SET.PLAN", 3, 2, 8).slice(1)).toEqual([
      [1, 0, 1, 1],
      [1, 0, 2, 2],
    ]);
  });

  test("for all counts: every position once, no line in two places, whole sets, blocks of neighbors", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 40 }),
        fc.integer({ min: 1, max: 120 }),
        fc.integer({ min: 1, max: 46 }).map((half) => half / 2),
        fc.integer({ min: 0, max: 8 }).map((quarter) => quarter / 4),
        fc.integer({ min: 1, max: 24 }),
        fc.integer({ min: 0, max: 24 }),
        (lines, positions, hours, movehours, dayhours, start) => {
          fc.pre(hours + movehours <= dayhours);
          const rows = callTable(
            "SET.PLAN",
            lines,
            positions,
            hours,
            movehours,
            dayhours,
            start,
          ).slice(1) as number[][];

          expect(rows.map((row) => row[3]).sort((a, b) => a - b)).toEqual(
            Array.from({ length: positions }, (_, i) => i + 1),
          );
          const clock = rows.map(([day, hour]) => (day - 1) * 24 + hour);
          expect(clock).toEqual([...clock].sort((a, b) => a - b));
          expect(rows.every(([day, hour]) => day >= 1 && hour >= 0 && hour < 24)).toBe(true);

          const perDay = callNumber("SET.PERDAY", hours, movehours, dayhours);
          const starts = [...new Set(clock)];
          starts.forEach((time, turn) => {
            const intoDay = time - start - Math.floor(turn / perDay) * 24;
            expect(intoDay).toBeCloseTo((turn % perDay) * (hours + movehours), 9);
            expect(intoDay + hours + movehours).toBeLessThanOrEqual(dayhours + 1e-9);
          });

          const counts: number[] = [];
          for (let line = 1; line <= Math.min(lines, positions); line++) {
            const own = rows
              .map((row, i) => ({ row, at: clock[i] }))
              .filter(({ row }) => row[2] === line);
            counts.push(own.length);
            // One after the other, each at the next position of its block, without a gap in its turns.
            own.forEach(({ row, at }, turn) => {
              expect(row[3]).toBe(own[0].row[3] + turn);
              expect(at).toBe(starts[turn]);
            });
          }
          expect(Math.max(...counts) - Math.min(...counts)).toBeLessThanOrEqual(1);
          expect(starts).toHaveLength(Math.ceil(positions / Math.min(lines, positions)));
        },
      ),
    );
  });

  test("a set that does not fit into the day names the hours", () => {
    expect(callError("SET.PLAN", 2, 14, 11.5, 1, 12)).toMatchObject({
      code: "#N/A",
      message:
        "no whole set fits into a day: hours + movehours is 12.5, dayhours is 12; give dayhours 24 where a set runs on unattended",
    });
  });

  test("a set of several days starts at the same hour, that many days later", () => {
    expect(callTable("SET.PLAN", 1, 3, 36, 1, 24, 6).slice(1)).toEqual([
      [1, 6, 1, 1],
      [3, 6, 1, 2],
      [5, 6, 1, 3],
    ]);
  });

  test("back is each block the other way round, at the same times", () => {
    const forward = callTable("SET.PLAN", 2, 5, 7, 1, 16, 6);
    const back = callTable("SET.PLAN", 2, 5, 7, 1, 16, 6, "back");
    expect(back.slice(1)).toEqual([
      [1, 6, 1, 3],
      [1, 6, 2, 5],
      [1, 14, 1, 2],
      [1, 14, 2, 4],
      [2, 6, 1, 1],
    ]);
    expect(back.map((row) => row.slice(0, 3))).toEqual(forward.map((row) => row.slice(0, 3)));
    for (const blank of [null, "", 0, "Forward"]) {
      expect(callTable("SET.PLAN", 2, 5, 7, 1, 16, 6, blank)).toEqual(forward);
    }
  });

  test("days off come at the end of each week", () => {
    const days = (off: unknown, hours = 11) =>
      callTable("SET.PLAN", 1, 13, hours, 1, hours > 12 ? 24 : 12, 6, null, off)
        .slice(1)
        .map((row) => row[0]);
    expect(days(1)).toEqual([1, 2, 3, 4, 5, 6, 8, 9, 10, 11, 12, 13, 15]);
    expect(days(6)).toEqual(Array.from({ length: 13 }, (_, week) => 1 + 7 * week));
    // Two days a set, five working days a week.
    expect(days(2, 36).slice(0, 5)).toEqual([1, 3, 5, 9, 11]);
    for (const blank of [null, "", 0]) expect(days(blank)).toEqual(days(0));
  });

  test("with SET.PERDAY and SYSTEM.LINES for every length of set: in time, and not with a line less", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 60 }),
        fc.integer({ min: 1, max: 1000 }).map((tenth) => tenth / 10),
        fc.integer({ min: 0, max: 20 }).map((tenth) => tenth / 10),
        fc.constantFrom(10, 12, 16, 24),
        fc.integer({ min: 1, max: 20 }),
        (positions, hours, movehours, dayhours, days) => {
          const perDay = callNumber("SET.PERDAY", hours, movehours, dayhours);
          const plan = (lines: number) => {
            const rows = callTable("SET.PLAN", lines, positions, hours, movehours, dayhours);
            const last = rows[rows.length - 1] as number[];
            return last[0] - 1 + (last[1] + hours + movehours) / 24;
          };
          if (perDay === 0) {
            expect(hours + movehours).toBeGreaterThan(dayhours);
            expect(dayhours).toBeLessThan(24);
            expect(callError("SET.PLAN", 1, positions, hours, movehours, dayhours).code).toBe(
              "#N/A",
            );
            return;
          }
          if (perDay * days < 1 - 1e-9) {
            expect(callError("SYSTEM.LINES", positions, perDay, days).code).toBe("#N/A");
            expect(Math.ceil(plan(positions))).toBeGreaterThan(days);
            return;
          }
          const lines = callNumber("SYSTEM.LINES", positions, perDay, days);
          expect(plan(lines)).toBeLessThanOrEqual(days + 1e-9);
          if (lines > 1) expect(plan(lines - 1)).toBeGreaterThan(days + 1e-9);
        },
      ),
      { numRuns: 500 },
    );
  });

  test("limits are named", () => {
    expect(callError("SET.PLAN", 2, 14, 8, 1, 24, 0, "sideways").message).toBe(
      'order must be one of "forward", "back"; got "sideways"',
    );
    expect(callError("SET.PLAN", 2, 14, 8, 1, 24, 0, "back", 7).message).toBe(
      "off must be a whole number from 0 to 6; got 7",
    );
    expect(callError("SET.PLAN", 2, 501, 8).message).toBe(
      "positions must be a whole number from 1 to 500; got 501",
    );
    expect(callTable("SET.PLAN", 2, 500, 8)).toHaveLength(501);
    expect(callError("SET.PLAN", 0, 14, 8).message).toBe(
      "lines must be a whole number from 1 to 500; got 0",
    );
    expect(callError("SET.PLAN", 1.5, 14, 8).message).toMatch(/^lines must be a whole number/);
    expect(callError("SET.PLAN", 2, 14, 0).message).toBe("hours must be above 0 h; got 0");
    expect(callError("SET.PLAN", 2, 14, 8, 1, 24, 25).message).toBe(
      "start must be from 0 to 24 h; got 25",
    );
    expect(callError("SET.PLAN", 2, 14, 8, 1, 25).message).toMatch(/^dayhours must be above 0/);
    expect(callError("SET.PLAN", 2, 14, 8, -1).message).toMatch(/^movehours must be 0 h or more/);
  });
});
