import { callNumber } from "../support/host";
import { expectClose, expectWithin, published } from "../support/published";

published(
  {
    source:
      "Catch-can equation of irrigation audits, PR = 3.66 V/(T A), as extension texts print it",
    where: "50 mL in 20 min in a round can of 4 in: 0.728 in/h",
    seen: "read in a secondary text",
  },
  () => {
    const rate = callNumber("APPLICATION.CATCH", 50, 4, "US") / (20 / 60);
    expectWithin(rate, 0.728, 0.0005);
    expectClose(rate, (3.66 * 50) / (20 * Math.PI * 4), 0.001);
  },
);

published(
  {
    source: "Depth is volume over area: 1 L on 1 m² is 1 mm",
    where: "25π mL in an opening of 100 mm is 10 mm",
    seen: "closed form",
  },
  () => {
    expectClose(callNumber("APPLICATION.CATCH", 25 * Math.PI, 100, "SI"), 10, 1e-12);
  },
);

published(
  {
    source:
      "California State University, Fresno, Irrigation Notes: Coefficient of Uniformity, What it tells us (1988)",
    where: "a mean application of 10 with 8 and 12: absolute deviations of 2 each",
    seen: "read",
  },
  () => {
    expectClose(callNumber("APPLICATION.CU", [[8], [12]]), 1 - 2 / 10, 1e-12);
  },
);

published(
  {
    source: "Christiansen (1942), Irrigation by Sprinkling, Bulletin 670",
    where:
      "the definitions of CU and of the low quarter: catches 10, 8, 12, 9, 11, 10, 7, 13 by hand",
    seen: "closed form",
  },
  () => {
    const catches = [
      [10, 8, 12, 9],
      [11, 10, 7, 13],
    ];
    expectClose(callNumber("APPLICATION.CU", catches), 0.85, 1e-12);
    expectClose(callNumber("APPLICATION.DU", catches), 0.75, 1e-12);
  },
);

published(
  {
    source: "Utah State University, Sprinkle & Trickle Irrigation Lectures, lecture 4",
    where: "DU: of 60 values the low quarter is the 15 lowest; CU can be negative",
    seen: "read",
  },
  () => {
    const catches = Array.from({ length: 60 }, (_, i) => [60 - i]);
    expectClose(callNumber("APPLICATION.DU", catches), 8 / 30.5, 1e-12);
    expect(callNumber("APPLICATION.CU", [[0], [0], [0], [9]])).toBe(-0.5);
  },
);

published(
  {
    source: "Normal distribution of catches",
    where:
      "the low quarter falls short by φ(0.6745)/¼ ÷ √(2/π) = 1.593 of what CU does: DU = 1 − 1.59 (1 − CU)",
    seen: "closed form",
  },
  () => {
    const mean = 10;
    const deviation = 1.5;
    const catches: number[][] = [];
    for (let z = -3.5; z < 3.51; z += 0.05) {
      const count = Math.round(400 * Math.exp(-(z ** 2) / 2));
      for (let i = 0; i < count; i++) catches.push([mean + deviation * z]);
    }
    const cu = callNumber("APPLICATION.CU", catches);
    expectClose(1 - callNumber("APPLICATION.DU", catches), 1.5931 * (1 - cu), 0.005);
  },
);
