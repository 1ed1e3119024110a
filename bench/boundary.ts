import { frictionPressureLoss } from "../src/formulas/friction";
import { call } from "../tests/support/host";
import { compare, microseconds, type Row } from "./measure";

const CHART = [
  [35, 3.7],
  [45, 4.2],
  [55, 4.6],
];

/** A column of cells that ask for the nth head, each line new to the memory; time per cell. */
function perCell(heads: number): number {
  let inlet = 50;
  return (
    microseconds(() => {
      inlet += 1e-6;
      for (let n = 1; n <= heads; n++) {
        call("LATERAL.PRESSURE", n, inlet, heads, 45, 12, CHART, "US", 0, null, 150, 45, 2);
      }
    }) / heads
  );
}

export function boundaryRows(): Row[] {
  const short = perCell(50);
  const long = perCell(400);
  const cell = microseconds(() => call("PIPE.FRICTION", 50, 2.067, 100, "US", 150));
  const law = { law: "Hazen–Williams", c: 150 } as const;
  const bare = microseconds(() => frictionPressureLoss(0.00315, 0.0525, 30.48, law));
  return [
    compare(
      "times a cell at 50 heads: a cell of an nth-head column at 400 heads",
      ["400 heads", long],
      ["50 heads", short],
      { bound: "at most", value: 1.3 },
    ),
    compare(
      "times the bare formula: PIPE.FRICTION through the boundary",
      ["cell", cell],
      ["formula", bare],
    ),
  ];
}
