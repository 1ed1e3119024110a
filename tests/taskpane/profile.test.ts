import { callTable } from "../support/host";
import { readProfile } from "../../src/taskpane/profile";

const headers = [
  "head",
  "distance (ft)",
  "elevation (ft)",
  "inside diameter (in)",
  "line pressure (psi)",
  "pressure at the nozzle (psi)",
  "head flow (gpm)",
  "segment flow (gpm)",
];

test("a profile is found by its headers, wherever it stands in the block", () => {
  const profile = readProfile([
    ["Profile", "", "", "", "", "", "", "", ""],
    ["", ...headers],
    ["", 1, 45, 0, 2.16, 50, 49, 4.3, 8.5],
    ["", 2, 90, 1, 1.73, 48, 47, 4.2, 4.2],
    ["", "", "", "", "", "", "", "", ""],
  ]);
  expect(profile).toMatchObject({
    pressureUnit: "psi",
    flowUnit: "gpm",
    lengthUnit: "ft",
    diameterUnit: "in",
  });
  expect(profile?.heads).toEqual([
    {
      head: 1,
      distance: 45,
      elevation: 0,
      bore: 2.16,
      linePressure: 50,
      nozzlePressure: 49,
      headFlow: 4.3,
      segmentFlow: 8.5,
    },
    {
      head: 2,
      distance: 90,
      elevation: 1,
      bore: 1.73,
      linePressure: 48,
      nozzlePressure: 47,
      headFlow: 4.2,
      segmentFlow: 4.2,
    },
  ]);
});

test("anything else is no profile", () => {
  expect(readProfile([["a", 1]])).toBeUndefined();
  expect(readProfile([headers.slice(0, 4)])).toBeUndefined();
});

test("what LATERAL.PROFILE spills is one, in both systems", () => {
  const us = readProfile(callTable("LATERAL.PROFILE", 50, 3, 45, 2.16, 0.6));
  expect(us?.heads).toHaveLength(3);
  expect(us).toMatchObject({
    pressureUnit: "psi",
    flowUnit: "gpm",
    lengthUnit: "ft",
    diameterUnit: "in",
  });
  const si = readProfile(callTable("LATERAL.PROFILE", 350, 3, 14, 55, 0.05, "SI"));
  expect(si).toMatchObject({
    pressureUnit: "kPa",
    flowUnit: "m³/h",
    lengthUnit: "m",
    diameterUnit: "mm",
  });
});
