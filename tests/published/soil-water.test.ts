import { call, callNumber } from "../support/host";
import { expectClose, expectWithin, published } from "../support/published";

/** Rows of the table: textures, range and average, in/ft. */
const CAPACITIES = [
  { textures: ["very coarse sand"], low: 0.4, high: 0.75, average: 0.5 },
  { textures: ["coarse sand", "fine sand", "loamy sand"], low: 0.75, high: 1.25, average: 1 },
  { textures: ["sandy loam", "fine sandy loam"], low: 1.25, high: 1.75, average: 1.5 },
  { textures: ["very fine sandy loam", "loam", "silt loam"], low: 1.5, high: 2.3, average: 2 },
  {
    textures: ["clay loam", "silty clay loam", "sandy clay loam"],
    low: 1.75,
    high: 2.5,
    average: 2.2,
  },
  { textures: ["sandy clay", "silty clay", "clay"], low: 1.6, high: 2.5, average: 2.3 },
];

published(
  {
    source: "USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11 (2016)",
    where: "Table 11-1, available water capacity: what is given lies in the printed range",
    seen: "read in a secondary text",
  },
  () => {
    for (const { textures, low, high } of CAPACITIES) {
      for (const texture of textures) {
        const capacity = callNumber("SOIL.AWC", texture, "US");
        expect([texture, capacity >= low, capacity <= high]).toEqual([texture, true, true]);
      }
    }
  },
);

published(
  {
    source: "USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11 (2016)",
    where: "Table 11-1, available water capacity, averages; peats and mucks 2.5 in/ft",
    seen: "from memory",
  },
  () => {
    const peat = { textures: ["peat"], average: 2.5 };
    for (const { textures, average } of [...CAPACITIES, peat]) {
      for (const texture of textures) {
        expectClose(callNumber("SOIL.AWC", texture, "US"), average, 1e-12);
      }
    }
  },
);

published(
  {
    source: "University of Nebraska-Lincoln extension table of soil water by texture",
    where: "silt loam 2.00 to 2.50, fine sand 0.75 to 1.00 in/ft: another table, within a quarter",
    seen: "read in a secondary text",
  },
  () => {
    expectClose(callNumber("SOIL.AWC", "silt loam", "US"), 2.25, 0.25);
    expectClose(callNumber("SOIL.AWC", "fine sand", "US"), 0.875, 0.25);
  },
);

published(
  {
    source: "University of California, Santa Cruz, teaching text on irrigation",
    where: "three layers of 8, 12 and 28 in at 1.5, 1.9 and 0.9 in/ft hold 5.0 in; half is 2.5 in",
    seen: "read in a secondary text",
  },
  () => {
    const half = (inches: number, capacity: number) =>
      callNumber("SOIL.NET", capacity, inches / 12, 0.5, "US");
    expectWithin(half(8, 1.5) + half(12, 1.9) + half(28, 0.9), 2.5, 0.05);
  },
);

published(
  {
    source: "Net depth is capacity times rooting depth times the share used",
    where: "150 mm/m over 0.8 m at 0.5, by hand 60 mm",
    seen: "closed form",
  },
  () => {
    expectClose(callNumber("SOIL.NET", 150, 0.8, 0.5, "SI"), 60, 1e-12);
  },
);

/** Largest rates, in/h, at slopes to 5, 8, 12 and 16 %. */
function expectRates(profile: string, bare: readonly number[], sod: readonly number[]): void {
  const slopes = [5, 8, 12, 16];
  bare.forEach((rate, i) => {
    expectClose(callNumber("SOIL.INTAKE", profile, slopes[i], "US"), rate, 1e-12);
    expectClose(callNumber("SOIL.INTAKE", profile, slopes[i], "US", "sod"), sod[i], 1e-12);
  });
}

published(
  {
    source:
      "USDA maximum application rates, quoted in the trade magazine article 'Soil assessment' (2018)",
    where: "columns for bare ground and cover at slopes to 5, 8 and 12 %",
    seen: "read in a secondary text",
  },
  () => {
    // By name here, so that the list of sources knows the function.
    expectClose(callNumber("SOIL.INTAKE", "silt loam", 0, "US"), 0.5, 1e-12);
    expectRates("coarse sandy", [2, 1.5, 1], [2, 2, 1.5]);
    expectRates("light sandy loam", [1, 0.8, 0.6], [1.75, 1.25, 1]);
    expectRates("silt loam", [0.5, 0.4, 0.3], [1, 0.8, 0.6]);
    expectRates("heavy clay", [0.15, 0.1, 0.08], [0.2, 0.15, 0.12]);
  },
);

published(
  {
    source: "USDA-SCS, National Engineering Handbook, Section 15 Chapter 11 (1983)",
    where: "maximum application rates over compact subsoil, and at 12 to 16 % slope",
    seen: "from memory",
  },
  () => {
    expectClose(callNumber("SOIL.INTAKE", "silt loam over compact", 2, "US"), 0.3, 1e-12);
    expectRates("coarse sandy", [2, 1.5, 1, 0.5], [2, 2, 1.5, 1]);
    expectRates("coarse sandy over compact", [1.5, 1, 0.75, 0.4], [1.75, 1.25, 1, 0.75]);
    expectRates("light sandy loam", [1, 0.8, 0.6, 0.4], [1.75, 1.25, 1, 0.75]);
    expectRates("light sandy loam over compact", [0.75, 0.5, 0.4, 0.3], [1.25, 1, 0.75, 0.5]);
    expectRates("silt loam", [0.5, 0.4, 0.3, 0.2], [1, 0.8, 0.6, 0.4]);
    expectRates("silt loam over compact", [0.3, 0.25, 0.15, 0.1], [0.6, 0.5, 0.4, 0.3]);
    expectRates("heavy clay", [0.15, 0.1, 0.08, 0.06], [0.2, 0.15, 0.12, 0.1]);
  },
);

published(
  {
    source: "USDA-SCS, National Engineering Handbook, Section 15 Chapter 11 (1983)",
    where: "the classes that the table of maximum application rates names itself",
    seen: "from memory",
  },
  () => {
    expect(call("SOIL.PROFILE", "silt loam")).toBe("silt loam");
    expect(call("SOIL.PROFILE", "silt loam", true)).toBe("silt loam over compact");
    expect(call("SOIL.PROFILE", "coarse sand")).toBe("coarse sandy");
    expect(call("SOIL.PROFILE", "clay loam")).toBe("heavy clay");
    expect(call("SOIL.PROFILE", "clay")).toBe("heavy clay");
  },
);

published(
  {
    source: "Common practice",
    where: "textures that the table does not name go to the class that takes less water",
    seen: "common practice, no source",
  },
  () => {
    const classes: Readonly<Record<string, readonly string[]>> = {
      "coarse sandy": ["very coarse sand", "coarse sand", "fine sand", "loamy sand"],
      "light sandy loam": ["sandy loam", "fine sandy loam"],
      "silt loam": ["very fine sandy loam", "loam", "silt loam"],
      "heavy clay": [
        "clay loam",
        "silty clay loam",
        "sandy clay loam",
        "sandy clay",
        "silty clay",
        "clay",
      ],
    };
    for (const [profile, textures] of Object.entries(classes)) {
      for (const texture of textures) {
        expect([texture, call("SOIL.PROFILE", texture)]).toEqual([texture, profile]);
        expect([texture, call("SOIL.PROFILE", texture, true)]).toEqual([
          texture,
          profile === "heavy clay" ? profile : `${profile} over compact`,
        ]);
      }
    }
  },
);
