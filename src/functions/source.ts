import { readMonthsOfWater } from "../boundary/crop-water";
import { above, atLeast } from "../boundary/numbers";
import { spillTable } from "../boundary/table";
import { dayMeasure, hourMeasure, readUnits } from "../boundary/units";
import { balanceByMonth } from "../formulas/source-balance";
import { sourceDuration } from "../formulas/source-days";
import type { Units } from "./units";

/**
 * Days that a pond or tank lasts.
 * @customfunction SOURCE_DAYS SOURCE.DAYS
 * @param volume Water that may be taken (US gal, m³), 0 or more: leave out what the intake cannot reach.
 * @param flow Pumped flow (gpm, m³/h), above 0.
 * @param hours Hours of pumping a day, above 0 and at most 24.
 * @param [inflow] What runs in day and night, less seepage and evaporation (gpm, m³/h), 0 or more; blank or 0 is none.
 * @returns Days.
 * @remarks Volume ÷ (flow × hours − inflow × 24). Evaporation takes roughly the reference ET over the pond's surface.
 * @source A water balance.
 * @errors #VALUE! for a blank, text or negative value, or more than 24 hours. #N/A when the inflow makes up for all that is pumped: the water never runs out.
 * @cautions water edge, backflow
 * @task how many days will my pond last?
 * @example =IRRIG.SOURCE.DAYS(900000, 118, 11, "US", 15)
 */
export function sourceDays(volume: any, flow: any, hours: any, units?: Units, inflow?: any): any {
  const u = readUnits(units);
  return dayMeasure.give(
    sourceDuration(
      u.fieldVolume.read("volume", volume, atLeast(0)),
      u.flow.read("flow", flow, above(0)),
      hourMeasure.read("hours", hours, above(0, 24)),
      u.flow.readOr("inflow", inflow, atLeast(0), 0),
    ),
  );
}

/**
 * Spills month by month what a pond or tank holds after need, inflow and loss, and how much is short.
 * @customfunction SOURCE_BALANCE SOURCE.BALANCE
 * @param volume Water that may be taken when it is full (US gal, m³), 0 or more: leave out what the intake cannot reach. It is full at the start and never holds more.
 * @param needs Water needed in each month (US gal, m³), 0 or more: one row or column, at most 120 months. SYSTEM.VOLUME gives one from an area and a gross depth.
 * @param [inflows] What runs in each month (US gal, m³), 0 or more: one value for every month or one a month; blank or 0 is none.
 * @param [losses] Seepage and evaporation of each month (US gal, m³), 0 or more: one value for every month or one a month; blank or 0 is none.
 * @returns Header row, then one row a month: month (1 is the first), held at its end, short, run over (US gal, m³).
 * @remarks What it holds, and the inflow less the loss, serve the need; what is left stays for the next month, up to the full volume; the rest runs over. A month that is short leaves it empty. Within a month the order of rain, need and loss is not told apart: where it matters, use weeks instead. Begin with the month in which it is full; a pond that begins half full is found by a first month whose need is the missing half.
 * @source A water balance.
 * @errors #VALUE! for a blank, text or negative value, more than 120 months, or inflows or losses that are neither one value nor one a month.
 * @cautions water edge
 * @task does my pond last through the season?
 * @example =IRRIG.SOURCE.BALANCE(900000, {0;180000;420000;510000;400000;120000}, "US", {300000;150000;60000;20000;20000;90000}, {20000;30000;45000;50000;40000;25000})
 */
export function sourceBalance(
  volume: any,
  needs: any[][],
  units?: Units,
  inflows?: any[][],
  losses?: any[][],
): any[][] {
  const u = readUnits(units);
  const months = balanceByMonth(
    u.fieldVolume.read("volume", volume, atLeast(0)),
    readMonthsOfWater(u, { needs, inflows, losses }),
  );
  const unit = u.fieldVolume.unit;
  return spillTable(
    [
      { header: "month" },
      { header: "held at the end", unit },
      { header: "short", unit },
      { header: "run over", unit },
    ],
    months.map((end, i) => [
      i + 1,
      u.fieldVolume.give(end.held),
      u.fieldVolume.give(end.short),
      u.fieldVolume.give(end.over),
    ]),
  );
}
