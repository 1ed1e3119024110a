import { callNumber } from "../support/host";
import { expectClose, expectWithin, published } from "../support/published";

published(
  {
    source: "Plastics Pipe Institute, answer to a frequent question on polyethylene pipe",
    where: "unrestrained coefficient of thermal expansion, approximately 9 × 10⁻⁵ in/in/°F",
    seen: "read in a secondary text",
  },
  () => {
    expectClose(callNumber("PIPE.EXPANSION", 1000, 1, "US"), 0.09, 1e-9);
    expectClose(callNumber("PIPE.EXPANSION", 1000, 1, "SI"), 0.09 * 1.8, 1e-9);
  },
);

published(
  {
    source: "Properties of HDPE pipe, a fact sheet on pipe materials",
    where: "length shrinks 1 inch per 100 feet with a 10 °F drop: at least as much, within a tenth",
    seen: "read in a secondary text",
  },
  () => {
    const inches = -12 * callNumber("PIPE.EXPANSION", 100, -10, "US");
    expectWithin(inches, 1, 0.1);
    expect(inches).toBeGreaterThanOrEqual(1);
  },
);

published(
  {
    source: "Table of thermo-physical properties of high-density polyethylene",
    where: "coefficient of thermal expansion 12.5 to 18.0 × 10⁻⁵ per °C",
    seen: "read in a secondary text",
  },
  () => {
    const perDegree = callNumber("PIPE.EXPANSION", 1, 1, "SI");
    expect(perDegree).toBeGreaterThanOrEqual(12.5e-5);
    expect(perDegree).toBeLessThanOrEqual(18e-5);
  },
);
