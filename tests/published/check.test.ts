import { call, callNumber } from "../support/host";
import { published } from "../support/published";

/** Passes at the published limit itself, and not a hundredth beyond it (three digits are shown). */
function expectLimit(check: (value: number) => unknown, limit: number): void {
  expect(check(limit)).toBe("OK");
  expect(check(limit * 0.5)).toBe("OK");
  expect(check(limit * 1.01)).not.toBe("OK");
}

published(
  {
    source:
      "Extension page on pressure variation, after Jarrett (2000), Water Management, 2nd edition",
    where: "pages 336 to 337: heads within 10 % of the average flow, 20 % of the pressure",
    seen: "read",
  },
  () => expectLimit((variation) => call("CHECK.VARIATION", variation), 0.2),
);

published(
  {
    source: "USDA-NRCS presentation, Irrigation Efficiency Modifications",
    where: "standard 442 allows at most 20 %: 10 psi for a 50 psi system",
    seen: "read",
  },
  () => {
    expect(call("CHECK.VARIATION", 10 / 50)).toBe("OK");
    expect(call("CHECK.VARIATION", 11 / 50)).toMatch(/^Pressure varies by 22%; the limit is 20%\./);
  },
);

published(
  {
    source: "Irrigation Formulas, extension sheet",
    where: "maximum economical pipe flow: a rule of 5 ft/s at most (1.5 m/s, rounded)",
    seen: "read",
  },
  () => {
    expectLimit((velocity) => call("CHECK.SPEED", velocity, "US"), 5);
    expectLimit((velocity) => call("CHECK.SPEED", velocity, "SI"), 1.5);
  },
);

published(
  {
    source:
      "Extension page on pressure variation, after Jarrett (2000), Water Management, 2nd edition",
    where: "pages 336 to 337: flow in a main should never exceed 5.0 ft/s",
    seen: "read",
  },
  () => {
    expect(call("CHECK.SPEED", 5.1, "US")).toMatch(/the limit is 5 ft\/s/);
    expect(call("CHECK.SPEED", 4.9, "US")).toBe("OK");
  },
);

published(
  {
    source: "USDA-NRCS Conservation Practice Standard 430, Irrigation Pipeline",
    where:
      "as an open repository quotes it: working pressure at or below 72 percent of the rating, 90 psi of 125",
    seen: "read in a secondary text",
  },
  () => expectLimit((pressure) => call("CHECK.PRESSURE", pressure, 125), 90),
);

published(
  {
    source: "Buried Pipe Design, example 4.2",
    where: "working pressure with surge, 282 psi, at most 376 psi",
    seen: "read in a secondary text",
  },
  () => {
    expect(call("CHECK.PRESSURE", 160 + 122, 376, 1)).toBe("OK");
    expect(call("CHECK.PRESSURE", 160 + 122, 235, 1)).toBe(
      "Pressure is 282; the limit is 235 (100% of the rating of 235). Use pipe and parts with a higher rating, or lower the pressure.",
    );
  },
);

published(
  {
    source:
      "USDA maximum application rates, quoted in the trade magazine article 'Soil assessment' (2018)",
    where: "bare silt loam at 5 to 8 %: 0.4 in/h, which 12.5 gpm on 40 ft by 60 ft exceeds",
    seen: "read in a secondary text",
  },
  () => {
    expectLimit((rate) => call("CHECK.RATE", rate, 0.4), 0.4);
    const rate = callNumber("APPLICATION.RATE", 12.5, 40, 60);
    expect(call("CHECK.RATE", rate, 0.4)).toMatch(
      /^Application rate is 0.501; the soil takes in 0.4\./,
    );
  },
);

published(
  {
    source: "Cheat sheet on sprinkler irrigation for an agricultural engineering examination",
    where: "spacing without wind: 65 % of the wetted diameter between lines, 50 % along them",
    seen: "read",
  },
  () => {
    expectLimit((spacing) => call("CHECK.SPACING", spacing, 10, 100, 0), 50);
    expectLimit((distance) => call("CHECK.SPACING", 10, distance, 100, 0, "US"), 65);
  },
);

published(
  {
    source: "Older issues of USDA-NRCS Conservation Practice Standard 442",
    where: "50 % of the wetted diameter along the line; 65, 60, 50, 45 % between positions by wind",
    seen: "from memory",
  },
  () => {
    expectLimit((spacing) => call("CHECK.SPACING", spacing, 10, 100, 0), 50);
    for (const [wind, move] of [
      [0, 65],
      [0.5, 65],
      [5, 60],
      [10, 50],
      [10.1, 45],
    ]) {
      expectLimit((distance) => call("CHECK.SPACING", 10, distance, 100, wind, "US"), move);
    }
  },
);

published(
  {
    source: "Pressure regulators under heads",
    where: "a regulator needs its set pressure and 5 psi (34.5 kPa) more",
    seen: "common practice, no source",
  },
  () => {
    expect(call("CHECK.REGULATOR", 45, 60, 40)).toBe("OK");
    expect(call("CHECK.REGULATOR", 44.9, 60, 40)).not.toBe("OK");
    expect(call("CHECK.REGULATOR", 304.5, 400, 270, "SI")).toBe("OK");
    expect(call("CHECK.REGULATOR", 303.9, 400, 270, "SI")).not.toBe("OK");
  },
);

published(
  {
    source: "Capacities (gpm) of certain diameter nozzles, extension table",
    where: "the 5/32 in column, 35 to 55 psi: pressures printed are within, others are not",
    seen: "read in a secondary text",
  },
  () => {
    const chart = [
      [35, 4.16],
      [40, 4.45],
      [45, 4.72],
      [50, 4.98],
      [55, 5.22],
    ];
    for (const [pressure] of chart) expect(call("CHECK.CHART", pressure, chart)).toBe("OK");
    expect(call("CHECK.CHART", 34.9, chart)).toMatch(/the chart begins at 35/);
    expect(call("CHECK.CHART", 55.1, chart)).toMatch(/the chart ends at 55/);
  },
);

published(
  {
    source: "Open tank 6 ft above a pump, worked example of NPSH in an engineering text",
    where: "35.061 ft are available: enough for a pump that requires as much, not for more",
    seen: "read in a secondary text",
  },
  () => {
    const available = 33.9 + 6 - 0.839 - 2 - 2;
    expect(call("CHECK.NPSH", available, 35.061)).toBe("OK");
    expect(call("CHECK.NPSH", available, 36)).not.toBe("OK");
  },
);

published(
  {
    source: "ASTM F1804, allowable tensile load",
    where: "2.375 in DR 11, yield 3500 psi, 1 to 12 h, worked by hand: a safe pull of 1948 lbf",
    seen: "read in a secondary text",
  },
  () => expectLimit((pull) => call("CHECK.PULL", pull, 1948), 1948),
);
