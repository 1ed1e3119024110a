import type { RankedBearing } from "../formulas/bearings";
import { headsOf, type Layout, runLength, summaryOf } from "../formulas/field-layout";
import { type Ground, requireHeight } from "../formulas/ground-height";
import { type Spill, spillPairs, spillTable } from "./table";
import { percent, type Measures } from "./units";

/** One row a run. */
export function runsTable(u: Measures, layout: Layout): Spill {
  const length = u.length.unit;
  return spillTable(
    [
      { header: "position" },
      { header: "run" },
      { header: "near x", unit: length },
      { header: "near y", unit: length },
      { header: "far x", unit: length },
      { header: "far y", unit: length },
      { header: "length", unit: length },
      { header: "heads" },
      { header: "area covered", unit: u.area.unit },
      { header: "beyond the edge", unit: u.area.unit },
    ],
    layout.runs.map((run) => [
      run.position,
      run.run,
      u.length.give(run.nearEnd.x),
      u.length.give(run.nearEnd.y),
      u.length.give(run.farEnd.x),
      u.length.give(run.farEnd.y),
      u.length.give(runLength(run)),
      run.heads,
      u.area.give(run.covered),
      u.area.give(run.beyond),
    ]),
  );
}

/** One row a head; with a ground, its height above the near end of its run too. */
export function headsTable(u: Measures, layout: Layout, spacing: number, ground?: Ground): Spill {
  const length = u.length.unit;
  const columns = [
    { header: "position" },
    { header: "run" },
    { header: "head" },
    { header: "along", unit: length },
    { header: "x", unit: length },
    { header: "y", unit: length },
  ];
  const body = layout.runs.flatMap((run) => {
    const name = `position ${run.position}, run ${run.run}`;
    const low = ground && requireHeight(ground, run.nearEnd, `the near end of ${name}`);
    return headsOf(layout.turned, run, spacing).map(({ head, along, place }) => {
      const row = [
        run.position,
        run.run,
        head,
        u.length.give(along),
        u.length.give(place.x),
        u.length.give(place.y),
      ];
      if (ground === undefined || low === undefined) return row;
      return [...row, u.length.give(requireHeight(ground, place, `head ${head} of ${name}`) - low)];
    });
  });
  return spillTable(ground ? [...columns, { header: "height", unit: length }] : columns, body);
}

/** Label and value: a layout at a glance. */
export function summaryTable(u: Measures, layout: Layout): Spill {
  const summary = summaryOf(layout);
  return spillPairs([
    [{ header: "area", unit: u.area.unit }, u.area.give(summary.area)],
    [{ header: "positions" }, summary.positions],
    [{ header: "runs" }, summary.runs],
    [{ header: "heads of the longest run" }, summary.longest],
    [{ header: "heads in all" }, summary.heads],
    [{ header: "share covered" }, summary.shareCovered],
    [{ header: "thrown beyond the edge", unit: u.area.unit }, u.area.give(summary.beyond)],
    [{ header: "most heads to shut off" }, summary.mostShut],
  ]);
}

/** One row a bearing; how steep only where the ground is known. */
export function bearingsTable(ranked: readonly RankedBearing[], steep: boolean): Spill {
  const columns = [
    { header: "bearing", unit: "degrees" },
    { header: "runs" },
    { header: "heads" },
    { header: "share covered" },
  ];
  return spillTable(
    steep ? [...columns, { header: "steepest", unit: "%" }] : columns,
    ranked.map(({ bearing, runs, heads, shareCovered, steepest }) => [
      bearing,
      runs,
      heads,
      shareCovered,
      ...(steep ? [percent.give(steepest ?? 0)] : []),
    ]),
  );
}
