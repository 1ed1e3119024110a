import { layField, summaryOf } from "../src/formulas/field-layout";
import { requireField } from "../src/formulas/polygon";
import type { Field } from "../src/formulas/turned-field";
import { solveLine } from "../src/solver/solve-line";
import { compare, microseconds, type Row } from "./measure";
import { fiftyHeads } from "./solver";

/** Six corners, one of them turned inwards, and a clump of trees: some ten acres. */
export const field: Field = {
  corners: [
    { x: 0, y: 0 },
    { x: 190, y: 12 },
    { x: 204, y: 150 },
    { x: 130, y: 118 },
    { x: 95, y: 221 },
    { x: -14, y: 160 },
  ],
  obstacles: [{ x: 60, y: 90, radius: 14 }],
  setback: 4,
};

export function fieldRows(): Row[] {
  const layout = microseconds(() => {
    requireField(field.corners);
    return summaryOf(layField(field, { bearing: 97, spacing: 13.7, move: 15.2 }));
  });
  const solve = microseconds(() => solveLine(fiftyHeads));
  return [
    compare(
      "times a 50-head solve: laying out a field of six corners with a clump kept clear",
      ["layout", layout],
      ["solve", solve],
      { bound: "at most", value: 20 },
    ),
  ];
}
