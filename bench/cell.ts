import { readFileSync } from "node:fs";
import { join } from "node:path";
import { runInThisContext } from "node:vm";
import { dist } from "../build/settings";
import { standInHost } from "../src/screen/stand-in-host";
import { networkEngine } from "../tests/support/network-engine";
import { compare, microseconds, type Row } from "./measure";
import { networkLine } from "./solver";

const CHART = [
  [35, 3.7],
  [45, 4.2],
  [55, 4.6],
];

/**
 * The built script's function, in the realm that it runs in: in a context that node makes for a
 * script every Math and Array is looked up through a gate, which no host has, and takes most of the time.
 */
function builtFlow(): (...cells: unknown[]) => unknown {
  const host = standInHost();
  Object.assign(globalThis, { CustomFunctions: host.CustomFunctions });
  runInThisContext(readFileSync(join(dist, "functions.js"), "utf8"), { filename: "functions.js" });
  const flow = host.functions.get("LATERAL_FLOW");
  if (flow === undefined) throw new Error("the built script has no LATERAL.FLOW");
  return flow;
}

/** A line of 50 heads asked for by a cell of the built script: a new inlet each call, so none is known. */
export async function cellRows(): Promise<Row[]> {
  const flow = builtFlow();
  let inlet = 55;
  const asked = (...line: unknown[]) =>
    microseconds(() => {
      inlet += 1e-6;
      return flow(inlet, 50, ...line);
    }, 1000);
  // The network engine's line, in the units of the sheet.
  const plain = asked(40, 3.5, networkLine.coefficient, "US", 0, null, 150, 0, 1.64);
  const sizes = [
    [3.5, 25],
    [3, 25],
  ];
  const inRanges = asked([[40]], sizes, CHART, [["US"]], [[10]], [[null]], [[150]], [[0]], [[1.5]]);
  const engine = await networkEngine();
  const network = microseconds(() => engine.solve(networkLine), 1500);
  const wanted = { bound: "at least", value: 50 } as const;
  return [
    compare(
      "times faster: a new 50-head line through the built script against the network engine, warm",
      ["engine", network],
      ["cell", plain],
      wanted,
    ),
    compare(
      "the same on a slope, with a chart, two sizes of tubing and every argument a range",
      ["engine", network],
      ["cell", inRanges],
      { bound: "at least", value: 25 },
    ),
  ];
}
