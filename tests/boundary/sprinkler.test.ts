import { readChart, readDischarge } from "../../src/boundary/sprinkler";
import { readUnits } from "../../src/boundary/units";
import { headFlow } from "../../src/formulas/discharge-law";

const us = readUnits("US");
const si = readUnits("SI");

test("one number is K in the units of the call", () => {
  const law = readDischarge(us, 0.6);
  expect(us.flow.give(headFlow(law, us.pressure.toSI(49)))).toBeCloseTo(4.2, 12);
  const metric = readDischarge(si, [[0.05]]);
  expect(si.flow.give(headFlow(metric, si.pressure.toSI(400)))).toBeCloseTo(1, 12);
});

test("one row of a chart is K with the exponent one half", () => {
  const law = readDischarge(us, [[45, 4.2]]);
  expect(law.exponents).toEqual([0.5]);
  expect(us.flow.give(headFlow(law, us.pressure.toSI(45 * 4)))).toBeCloseTo(8.4, 12);
});

test("a chart passes through its rows in any order, blank rows at its end dropped", () => {
  const law = readDischarge(us, [
    [55, 4.6],
    [35, 3.7],
    [45, 4.2],
    [null, null],
    [0, ""],
  ]);
  for (const [pressure, flow] of [
    [35, 3.7],
    [45, 4.2],
    [55, 4.6],
  ]) {
    expect(us.flow.give(headFlow(law, us.pressure.toSI(pressure)))).toBeCloseTo(flow, 12);
  }
  expect(us.pressure.give(law.lowest)).toBeCloseTo(35, 12);
  expect(us.pressure.give(law.highest)).toBeCloseTo(55, 12);
});

test.each([
  [null, "discharge is missing: it must be above 0 gpm per √psi"],
  [-1, "discharge must be above 0 gpm per √psi; got -1"],
  ["chart", 'discharge must be a number, above 0 gpm per √psi; got "chart"'],
  [
    [[45, 4.2, 1]],
    "discharge must be two columns, pressure (psi) and flow (gpm); got a range of 1 row and 3 columns",
  ],
  [
    [
      [35, 3.7],
      [35, 3.8],
    ],
    "discharge lists 35 psi twice",
  ],
  [
    [
      [35, 3.7],
      [45, 3.6],
    ],
    "discharge must not fall in flow as the pressure rises; at 45 psi it falls to 3.6 gpm",
  ],
  [
    [
      [35, 3.7],
      ["x", 4],
    ],
    'discharge row 2 pressure must be a number, above 0 psi; got "x"',
  ],
  [
    [
      [35, null],
      [45, 4],
    ],
    "discharge row 1 flow is missing: it must be above 0 gpm",
  ],
])("%j is refused", (cell, message) => {
  expect(() => readDischarge(us, cell)).toThrow(message);
});

test("a level chart (a flow-controlled nozzle) is allowed", () => {
  expect(
    readChart(si, [
      [200, 0.8],
      [300, 0.8],
    ]).flows[1],
  ).toBeCloseTo(0.8 / 3600, 15);
});
