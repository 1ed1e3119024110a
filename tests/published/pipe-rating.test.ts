import { callNumber } from "../support/host";
import { expectClose, expectWithin, published } from "../support/published";

published(
  {
    source: "ISO 4427-2:2007, Polyethylene pipes and fittings for water supply, part 2: pipes",
    where: "nominal pressure in bar of PE 100 and PE 80 by SDR",
    seen: "read in a secondary text",
  },
  () => {
    const printed: readonly [rating: number, pe100: number, pe80: number][] = [
      [7.4, 25, 20],
      [9, 20, 16],
      [11, 16, 12.5],
      [13.6, 12.5, 10],
      [17, 10, 8],
      [21, 8, 6],
      [26, 6, 5],
      [33, 5, 4],
    ];
    for (const [rating, pe100, pe80] of printed) {
      expectClose(callNumber("PIPE.RATING", "PE100", rating, "SI"), pe100 * 100, 1e-9);
      expectClose(callNumber("PIPE.RATING", "PE80", rating, "SI"), pe80 * 100, 1e-9);
      expectClose(callNumber("PIPE.RATING", 8000, rating, "SI"), pe100 * 100, 1e-9);
      expectClose(callNumber("PIPE.RATING", 6400, rating, "SI"), pe80 * 100, 1e-9);
    }
  },
);

published(
  {
    source: "ISO 4427-2:2007, Polyethylene pipes and fittings for water supply, part 2: pipes",
    where: "nominal pressure of PE 80 at SDR 6, and of both materials at SDR 41",
    seen: "read in a secondary text",
  },
  () => {
    expectClose(callNumber("PIPE.RATING", "PE80", 6, "SI"), 2500, 1e-9);
    expectClose(callNumber("PIPE.RATING", "PE80", 41, "SI"), 320, 1e-9);
    expectClose(callNumber("PIPE.RATING", "PE100", 41, "SI"), 400, 1e-9);
  },
);

published(
  {
    source: "ASTM D3035, Polyethylene plastic pipe based on controlled outside diameter",
    where: "pressure ratings of PE4710 at DR 13.5, 11, 9 and 7",
    seen: "read in a secondary text",
  },
  () => {
    expectWithin(callNumber("PIPE.RATING", "PE4710", 13.5, "US"), 160, 0.5);
    expectWithin(callNumber("PIPE.RATING", "PE4710", 11, "US"), 200, 0.5);
    expectWithin(callNumber("PIPE.RATING", "PE4710", 9, "US"), 250, 0.5);
    expectWithin(callNumber("PIPE.RATING", "PE4710", 7, "US"), 333, 0.5);
  },
);

published(
  {
    source: "ASTM D3035-15, Polyethylene plastic pipe based on controlled outside diameter",
    where:
      "table 1 as an open pipe-size calculator copies it: design stress 800 psi of PE2708 and PE3608, PR = 2 HDS/(DR − 1) at DR 11, 17 and 21",
    seen: "read in a secondary text",
  },
  () => {
    for (const strength of ["PE3608", "PE2708", 800]) {
      expectWithin(callNumber("PIPE.RATING", strength, 11, "US"), 160, 1e-9);
      expectWithin(callNumber("PIPE.RATING", strength, 17, "US"), 100, 1e-9);
      expectWithin(callNumber("PIPE.RATING", strength, 21, "US"), 80, 1e-9);
    }
  },
);

published(
  {
    source: "Hoop stress at the mean diameter, p = 2 S t/(d + t) = 2 S/(SIDR + 1)",
    where: "design stress of 800 and 630 psi by SIDR, by hand",
    seen: "closed form",
  },
  () => {
    const printed = [
      [7, 200],
      [9, 160],
      [11.5, 128],
      [15, 100],
      [19, 80],
    ];
    for (const [rating, psi] of printed) {
      expectWithin(callNumber("PIPE.RATING", 800, rating, "US", null, "SIDR"), psi, 0.5);
    }
    expectWithin(callNumber("PIPE.RATING", 630, 15, "US", null, "SIDR"), 78.8, 0.06);
  },
);

published(
  {
    source: "Plastics Pipe Institute, Handbook of Polyethylene Pipe, 2nd edition, chapter 3",
    where: "table A.2, temperature compensating multipliers",
    seen: "from memory",
  },
  () => {
    const printed = [
      [73, 1],
      [80, 0.94],
      [90, 0.86],
      [100, 0.78],
      [110, 0.71],
      [120, 0.64],
      [130, 0.57],
      [140, 0.5],
    ];
    for (const [temperature, factor] of printed) {
      const psi = callNumber("PIPE.RATING", "PE4710", 11, "US", temperature);
      expectWithin(psi, 200 * factor, 1e-9);
    }
  },
);

published(
  {
    source: "Temperature derating of polyethylene pipe in an open repository's table",
    where:
      "factors 1, 0.935, 0.87, 0.805 and 0.74 at 20, 25, 30, 35 and 40 °C; the table names no standard",
    seen: "read in a secondary text",
  },
  () => {
    const printed = [
      [20, 1],
      [25, 0.935],
      [30, 0.87],
      [35, 0.805],
      [40, 0.74],
    ];
    for (const [temperature, factor] of printed) {
      const kilopascals = callNumber("PIPE.RATING", "PE100", 17, "SI", temperature);
      expectWithin(kilopascals / 1000, factor, 1e-9);
    }
  },
);
