import { readFileSync } from "node:fs";
import { join } from "node:path";
import { callNumber } from "../support/host";
import { expectWithin, published } from "../support/published";

/** Least and greatest wall, mm, as printed. */
type Walls = readonly (readonly [rating: number, least: number, greatest: number])[];

/** Greatest mean outside diameter, mm, as printed; the least is the nominal one. */
const GREATEST_OUTSIDE: Readonly<Record<number, number>> = {
  20: 20.3,
  25: 25.3,
  32: 32.3,
  40: 40.4,
  50: 50.4,
  63: 63.4,
  75: 75.5,
  90: 90.6,
  110: 110.7,
  125: 125.8,
  140: 140.9,
  160: 161.0,
};

function expectMeanBore(size: number, walls: Walls): void {
  const outside = (size + GREATEST_OUTSIDE[size]) / 2;
  for (const [rating, least, greatest] of walls) {
    const bore = outside - least - greatest;
    expectWithin(callNumber("PIPE.INSIDE", "ISO PE", size, rating, "SI"), bore, 1e-9);
  }
}

published(
  {
    source: "MS 1058: Part 2: 2005 (ISO 4427), Polyethylene piping systems for water supply",
    where: "table of wall thickness, least and greatest, 90 to 160 mm",
    seen: "read in a secondary text",
  },
  () => {
    // prettier-ignore
    const printed: Readonly<Record<number, Walls>> = {
      90: [[7.4, 12.3, 13.7], [9, 10.1, 11.3], [11, 8.2, 9.2], [13.6, 6.7, 7.5], [17, 5.4, 6.1]],
      110: [[7.4, 15.1, 16.8], [9, 12.3, 13.7], [11, 10.0, 11.1], [13.6, 8.1, 9.1], [17, 6.6, 7.4]],
      125: [[7.4, 17.1, 19.0], [9, 14.0, 15.6], [11, 11.4, 12.7], [13.6, 9.2, 10.3], [17, 7.4, 8.3]],
      140: [[7.4, 19.2, 21.3], [9, 15.7, 17.4], [11, 12.7, 14.1], [13.6, 10.3, 11.5], [17, 8.3, 9.3]],
      160: [[7.4, 21.9, 24.2], [9, 17.9, 19.8], [11, 14.6, 16.2], [13.6, 11.8, 13.1], [17, 9.5, 10.6]],
    };
    for (const [size, walls] of Object.entries(printed)) expectMeanBore(Number(size), walls);
  },
);

published(
  {
    source: "EN 12201-2, Plastics piping systems for water supply, polyethylene pipes",
    where: "tables of mean outside diameter and of wall thickness, least and greatest, 20 to 75 mm",
    seen: "read in a secondary text",
  },
  () => {
    // prettier-ignore
    const printed: Readonly<Record<number, Walls>> = {
      20: [[7.4, 3.0, 3.4], [9, 2.3, 2.7], [11, 2.0, 2.3]],
      25: [[7.4, 3.5, 4.0], [9, 3.0, 3.4], [11, 2.3, 2.7], [13.6, 2.0, 2.3]],
      32: [[7.4, 4.4, 5.0], [9, 3.6, 4.1], [11, 3.0, 3.4], [13.6, 2.4, 2.8], [17, 2.0, 2.3]],
      40: [[7.4, 5.5, 6.2], [9, 4.5, 5.1], [11, 3.7, 4.2], [13.6, 3.0, 3.5], [17, 2.4, 2.8]],
      50: [[7.4, 6.9, 7.7], [9, 5.6, 6.3], [11, 4.6, 5.2], [13.6, 3.7, 4.2], [17, 3.0, 3.4]],
      63: [[7.4, 8.6, 9.6], [9, 7.1, 8.0], [11, 5.8, 6.5], [13.6, 4.7, 5.3], [17, 3.8, 4.3]],
      75: [[7.4, 10.3, 11.5], [9, 8.4, 9.4], [11, 6.8, 7.6], [13.6, 5.6, 6.3], [17, 4.5, 5.1]],
    };
    for (const [size, walls] of Object.entries(printed)) expectMeanBore(Number(size), walls);
  },
);

published(
  {
    source: "ISO 4427-2:2007, Polyethylene pipes and fittings for water supply, part 2: pipes",
    where: "table of least wall thickness at SDR 21 and 26; tolerance of ISO 11922-1, grade V",
    seen: "read in a secondary text",
  },
  () => {
    // The tolerance, 0.1 e + 0.1 rounded up to the next tenth, worked by hand.
    // prettier-ignore
    const printed: Readonly<Record<number, Walls>> = {
      40: [[21, 2.0, 2.3]],
      50: [[21, 2.4, 2.8], [26, 2.0, 2.3]],
      63: [[21, 3.0, 3.4], [26, 2.5, 2.9]],
      75: [[21, 3.6, 4.1], [26, 2.9, 3.3]],
      90: [[21, 4.3, 4.9], [26, 3.5, 4.0]],
      110: [[21, 5.3, 6.0], [26, 4.2, 4.8]],
      125: [[21, 6.0, 6.7], [26, 4.8, 5.4]],
      140: [[21, 6.7, 7.5], [26, 5.4, 6.1]],
      160: [[21, 7.7, 8.6], [26, 6.2, 7.0]],
    };
    for (const [size, walls] of Object.entries(printed)) expectMeanBore(Number(size), walls);
  },
);

published(
  {
    source: "ANSI B36.10-1979, Welded and seamless wrought steel pipe",
    where:
      "table 2 as an open pipe-size calculator copies it: outside diameters 1 1/2 to 6 in, less twice a wall of DR 11 that is 6 % above the least (ASTM D3035-15, tolerance 12 %)",
    seen: "read in a secondary text",
  },
  () => {
    const printed = [
      [1.5, 1.9],
      [2, 2.375],
      [3, 3.5],
      [4, 4.5],
      [6, 6.625],
    ];
    for (const [size, outside] of printed) {
      const bore = outside - 2.12 * (outside / 11);
      expectWithin(callNumber("PIPE.INSIDE", "IPS PE", size, 11, "US"), bore, 0.0016);
    }
  },
);

published(
  {
    source: "ANSI B36.10-1979, Welded and seamless wrought steel pipe",
    where:
      "table 2 as an open pipe-size calculator copies it: outside diameter of 1/2 in, 0.840 in; wall of DR 11 averaged 6 % above",
    seen: "read in a secondary text",
  },
  () => {
    const bore = 0.84 - 2.12 * (0.84 / 11);
    expectWithin(callNumber("PIPE.INSIDE", "IPS PE", 0.5, 11, "US"), bore, 0.0005);
  },
);

published(
  {
    source: "ASTM D3035, Polyethylene plastic pipe based on controlled outside diameter",
    where: "outside diameters and least walls, 3/4 to 3 in, DR 7 to 13.5, wall averaged 6 % above",
    seen: "read in a secondary text",
  },
  () => {
    // prettier-ignore
    const printed: readonly [size: number, outside: number, walls: [number, number][]][] = [
      [0.75, 1.05, [[13.5, 0.078], [11, 0.095], [9, 0.117], [7, 0.15]]],
      [1, 1.315, [[13.5, 0.097], [11, 0.12], [9, 0.146], [7, 0.188]]],
      [1.25, 1.66, [[13.5, 0.123], [11, 0.151], [9, 0.184], [7, 0.237]]],
      [1.5, 1.9, [[13.5, 0.141], [11, 0.173], [9, 0.211], [7, 0.271]]],
      [2, 2.375, [[13.5, 0.176], [11, 0.216], [9, 0.264], [7, 0.339]]],
      [3, 3.5, [[13.5, 0.259], [11, 0.318], [9, 0.389]]],
    ];
    for (const [size, outside, walls] of printed) {
      for (const [ratio, wall] of walls) {
        const bore = outside - 2.12 * wall;
        expectWithin(callNumber("PIPE.INSIDE", "IPS PE", size, ratio, "US"), bore, 0.0015);
      }
    }
  },
);

published(
  {
    source: "Inside diameters of schedule 40 pipe, as open tables list them",
    where: "1/2 to 6 in, which pipe of controlled inside diameter (ASTM D2239) shares",
    seen: "read in a secondary text",
  },
  () => {
    // prettier-ignore
    const printed = [
      [0.5, 0.622], [0.75, 0.824], [1, 1.049], [1.25, 1.38], [1.5, 1.61],
      [2, 2.067], [2.5, 2.469], [3, 3.068], [4, 4.026], [6, 6.065],
    ];
    for (const [size, inside] of printed) {
      expectWithin(callNumber("PIPE.INSIDE", "SIDR", size, 15, "US"), inside, 1e-12);
    }
  },
);

published(
  {
    source: "EN 12201-2, Plastics piping systems for water supply, polyethylene pipes",
    where: "table of mean outside diameter, least and greatest, 20 to 160 mm: the middle",
    seen: "read in a secondary text",
  },
  () => {
    for (const [size, greatest] of Object.entries(GREATEST_OUTSIDE)) {
      const middle = (Number(size) + greatest) / 2;
      expectWithin(callNumber("PIPE.OUTSIDE", "ISO PE", Number(size), 11, "SI"), middle, 1e-9);
    }
  },
);

published(
  {
    source: "ANSI B36.10 as ASTM D3035 takes it",
    where: "outside diameter of iron pipe sizes, in",
    seen: "read in a secondary text",
  },
  () => {
    const printed = [
      [0.5, 0.84],
      [0.75, 1.05],
      [1, 1.315],
      [1.25, 1.66],
      [1.5, 1.9],
      [2, 2.375],
      [3, 3.5],
      [4, 4.5],
      [6, 6.625],
    ];
    for (const [size, outside] of printed) {
      expectWithin(callNumber("PIPE.OUTSIDE", "IPS PE", size, 9), outside, 1e-9);
    }
  },
);

published(
  {
    source: "ASTM D2239, Polyethylene plastic pipe based on controlled inside diameter",
    where: "least wall at SIDR 15, 1/2 to 2 in; walls average 6 % above it",
    seen: "from memory",
  },
  () => {
    const printed = [
      [0.5, 0.06],
      [0.75, 0.06],
      [1, 0.07],
      [1.25, 0.092],
      [1.5, 0.107],
      [2, 0.138],
    ];
    for (const [size, wall] of printed) {
      const inside = callNumber("PIPE.INSIDE", "SIDR", size, 15);
      const outside = callNumber("PIPE.OUTSIDE", "SIDR", size, 15);
      expectWithin((outside - inside) / 2.12, wall, 0.0006);
    }
  },
);

published(
  {
    source: "EN 12201-2, Plastics piping systems for water supply, polyethylene pipes",
    where:
      "tables of mean outside diameter and of wall thickness: the narrowest and the widest bore, 50 to 160 mm, as the help of PIPE.INSIDE says them",
    seen: "read in a secondary text",
    guards: ["PIPE.INSIDE"],
  },
  () => {
    // prettier-ignore
    const walls: readonly (readonly [size: number, sdr17: [number, number], sdr74: [number, number]])[] = [
      [50, [3.0, 3.4], [6.9, 7.7]],
      [63, [3.8, 4.3], [8.6, 9.6]],
      [75, [4.5, 5.1], [10.3, 11.5]],
      [90, [5.4, 6.1], [12.3, 13.7]],
      [110, [6.6, 7.4], [15.1, 16.8]],
      [125, [7.4, 8.3], [17.1, 19.0]],
      [140, [8.3, 9.3], [19.2, 21.3]],
      [160, [9.5, 10.6], [21.9, 24.2]],
    ];
    const within = (rating: number, [least, greatest]: [number, number], size: number) => {
      const narrowest = size - 2 * greatest;
      const widest = GREATEST_OUTSIDE[size] - 2 * least;
      const mean = callNumber("PIPE.INSIDE", "ISO PE", size, rating, "SI");
      expectWithin(mean, (narrowest + widest) / 2, 1e-9);
      return { narrowest, widest, percent: (50 * (widest - narrowest)) / mean };
    };
    const help = readFileSync(join(__dirname, "../../src/functions/pipe.ts"), "utf8");
    const { narrowest, widest, percent } = within(17, [3.8, 4.3], 63);
    expect(help).toContain(
      `63 mm SDR 17 is ${narrowest.toFixed(1)} to ${widest.toFixed(1)} mm about its mean of 55.1, ${percent.toFixed(1)}% either way`,
    );
    const range = (percents: readonly number[]) =>
      `${Math.min(...percents).toFixed(1)} to ${Math.max(...percents).toFixed(1)}%`;
    expect(help).toContain(
      `${range(walls.map(([size, wall]) => within(17, wall, size).percent))} at SDR 17, ` +
        `${range(walls.map(([size, , wall]) => within(7.4, wall, size).percent))} at SDR 7.4`,
    );
    // Friction goes with the bore to the power −4.87.
    const friction = (bore: number) => callNumber("PIPE.FRICTION", 50, bore, 100);
    expectWithin(friction(2 * 0.99) / friction(2), 1.05, 0.0005);
  },
);
