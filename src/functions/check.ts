import { above, anyNumber, atLeast, readNumber, readOptionalNumber } from "../boundary/numbers";
import { GREATEST_SPEED } from "../boundary/pipe";
import { readChartRange, readRegulatorPressures, readSpacingWind } from "../boundary/sprinkler";
import { percent, readUnits, rounded } from "../boundary/units";
import { sentences, tooHigh, tooLow, verdict } from "../boundary/verdict";
import { allowablePressure } from "../formulas/allowable-pressure";
import { largestSpacing } from "../formulas/sprinkler-spacing";
import { PRESSURE_VARIATION, SHARE_OF_RATING } from "../tables/practice-limits";
import type { Units } from "./units";

/**
 * Says whether the pressure along a line varies too much: "OK", or what to change.
 * @customfunction CHECK_VARIATION CHECK.VARIATION
 * @param variation Pressure variation, a fraction, 0 or more; LATERAL.VARIATION gives it.
 * @param [limit] Largest variation, a fraction above 0 up to 1 (blank or 0: 0.2).
 * @returns {@text checkVerdict}
 * @remarks With sprinklers that follow a square root, 20% of pressure is 10% of flow. A value that shows as its limit, to three digits, keeps it. A formatting rule can test the cell for "OK".
 * @source USDA-NRCS Conservation Practice Standard 442, Sprinkler System; from memory.
 * @errors #VALUE! for a blank or text, a negative variation, or a limit above 1.
 * @task does every head get about the same?
 * @example =IRRIG.CHECK.VARIATION(0.17)
 */
export function checkVariation(variation: any, limit?: any): any {
  const most = readOptionalNumber("limit", limit, above(0, 1)) ?? PRESSURE_VARIATION;
  return verdict(
    tooHigh({
      fact: "pressure varies by",
      value: readNumber("variation", variation, atLeast(0)),
      bound: most,
      limit: (bound) => `the limit is ${bound}`,
      cure: "use larger tubing, fewer sprinklers, a line with less slope, or regulators",
      measure: percent,
    }),
  );
}

/**
 * Says whether the soil can take the application rate: "OK", or what to change.
 * @customfunction CHECK_RATE CHECK.RATE
 * @param rate Application rate (in/h, mm/h), 0 or more; APPLICATION.RATE gives it.
 * @param intake Largest rate for the soil and slope, in the same unit, above 0; SOIL.INTAKE gives it.
 * @returns {@text checkVerdict}
 * @remarks Takes no units argument: both in the same unit. A value that shows as its limit, to three digits, keeps it. A formatting rule can test the cell for "OK".
 * @source USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11 (2016): the rate must not exceed what the soil takes in.
 * @errors #VALUE! for a blank or text, a negative rate, or an intake that is not above 0.
 * @task will the water run off?
 * @example =IRRIG.CHECK.RATE(0.18, 0.4)
 */
export function checkRate(rate: any, intake: any): any {
  return verdict(
    tooHigh({
      fact: "application rate is",
      value: readNumber("rate", rate, atLeast(0)),
      bound: readNumber("intake", intake, above(0)),
      limit: (bound) => `the soil takes in ${bound}`,
      cure: "use smaller nozzles, or a wider spacing or move",
    }),
  );
}

/**
 * Says whether water moves too fast in a pipe: "OK", or what to change.
 * @customfunction CHECK_SPEED CHECK.SPEED
 * @param velocity Velocity of the water (ft/s, m/s), 0 or more; PIPE.VELOCITY gives it.
 * @param [limit] Largest velocity (ft/s, m/s), above 0 (blank or 0: 5 ft/s, 1.5 m/s).
 * @returns {@text checkVerdict}
 * @remarks Above 5 ft/s surge is to be analyzed: PIPE.SURGE. A value that shows as its limit, to three digits, keeps it. A formatting rule can test the cell for "OK".
 * @source USDA-NRCS Conservation Practice Standard 430, Irrigation Pipeline; from memory.
 * @errors #VALUE! for a blank, text or negative velocity or limit.
 * @cautions pressure
 * @task does the water move too fast?
 * @example =IRRIG.CHECK.SPEED(4.2, "US")
 */
export function checkSpeed(velocity: any, units?: Units, limit?: any): any {
  const u = readUnits(units);
  const most = u.speed.readOr("limit", limit, above(0), GREATEST_SPEED);
  return verdict(
    tooHigh({
      fact: "velocity is",
      value: u.speed.read("velocity", velocity, atLeast(0)),
      bound: most,
      limit: (bound) => `the limit is ${bound}`,
      cure: "use larger tubing, or send less flow through it",
      measure: u.speed,
    }),
  );
}

/**
 * Says whether a pressure is within what a pipe may carry: "OK", or what to change.
 * @customfunction CHECK_PRESSURE CHECK.PRESSURE
 * @param pressure Highest static pressure, with the valves shut and the pump running, at the lowest point of the line (psi, kPa), 0 or more; PUMP.STATIC gives it.
 * @param rating Pressure rating of the weakest part, in the same unit, above 0: as marked on it, or PIPE.RATING at the pipe's temperature.
 * @param [share] Share of the rating that the pressure may reach, a fraction above 0 up to 1 (blank or 0: 0.72, where surge has not been analyzed).
 * @returns {@text checkVerdict}
 * @remarks Takes no units argument: both in the same unit. The marking and the manufacturer's rating go before a computed one. A value that shows as its limit, to three digits, keeps it. A formatting rule can test the cell for "OK".
 * @source USDA-NRCS Conservation Practice Standard 430, Irrigation Pipeline; from memory.
 * @errors #VALUE! for a blank or text, a negative pressure, a rating that is not above 0, or a share above 1.
 * @cautions pressure
 * @task is the pipe strong enough?
 * @example =IRRIG.CHECK.PRESSURE(68, 125)
 */
export function checkPressure(pressure: any, rating: any, share?: any): any {
  const part = readOptionalNumber("share", share, above(0, 1)) ?? SHARE_OF_RATING;
  const rated = readNumber("rating", rating, above(0));
  return verdict(
    tooHigh({
      fact: "pressure is",
      value: readNumber("pressure", pressure, atLeast(0)),
      bound: allowablePressure(rated, part),
      limit: (bound) =>
        `the limit is ${bound} (${percent.say(part)} of the rating of ${rounded(rated)})`,
      cure: "use pipe and parts with a higher rating, or lower the pressure",
    }),
  );
}

/**
 * Says whether pressure regulators can hold their set pressure along a line: "OK", or what to change.
 * @customfunction CHECK_REGULATOR CHECK.REGULATOR
 * @param lowest Lowest pressure under a regulator while the line runs (psi, kPa), 0 or more: that in the line less the height of the riser, as LATERAL.SUMMARY gives it; not the pressure at the nozzle, which the regulator has already lowered.
 * @param highest Highest line pressure (psi, kPa), not below the lowest: LATERAL.SUMMARY gives it while the line runs, PUMP.STATIC with the valves shut, which can be more.
 * @param set Outlet set pressure of the regulators (psi, kPa), above 0.
 * @param [loss] Pressure the regulator itself takes (psi, kPa), 0 or more. Left out or empty text: 5 psi, 34.5 kPa; a blank cell may count as 0.
 * @param [limit] Highest pressure the regulator is made for (psi, kPa), above 0 (blank or 0: none).
 * @returns {@text checkVerdict}
 * @remarks Both are pressures ahead of the regulators. The lowest must be at least set + loss, the highest at most the limit. A value that shows as its limit, to three digits, keeps it. A formatting rule can test the cell for "OK".
 * @source Common practice; the loss of 5 psi from memory. The regulator's own sheet goes first.
 * @errors #VALUE! for a blank, text or negative pressure, or a lowest above the highest.
 * @cautions pressure
 * @task do the regulators get enough pressure?
 * @example =IRRIG.CHECK.REGULATOR(46, 62, 40, "US", 5, 120)
 */
export function checkRegulator(
  lowest: any,
  highest: any,
  set: any,
  units?: Units,
  loss?: any,
  limit?: any,
): any {
  const u = readUnits(units);
  const pressures = readRegulatorPressures(u, {
    lowest,
    highest,
    set,
    loss,
    limit,
  });
  return verdict(
    tooLow({
      fact: "lowest pressure under a regulator is",
      value: pressures.low,
      bound: pressures.needed,
      limit: (bound) =>
        `the regulators need ${bound} (set ${u.pressure.say(pressures.set)}, loss ${u.pressure.say(pressures.loss)})`,
      cure: "raise the inlet pressure or use larger tubing",
      measure: u.pressure,
    }),
    tooHigh({
      fact: "highest line pressure is",
      value: pressures.high,
      bound: pressures.most,
      limit: (bound) => `the regulators' limit is ${bound}`,
      cure: "lower the inlet pressure or use regulators made for more",
      measure: u.pressure,
    }),
  );
}

/**
 * Says whether a pressure lies within a sprinkler's chart: "OK", or what to change.
 * @customfunction CHECK_CHART CHECK.CHART
 * @param pressure Pressure at the nozzle (psi, kPa), 0 or more.
 * @param chart The sprinkler's chart, two columns *(pressure, flow)* and two rows or more, with pressures in the same unit.
 * @returns {@text checkVerdict}
 * @remarks Takes no units argument: both pressures in the same unit. Outside of its chart a sprinkler's drops and throw are not what its sheet says, even where a flow can still be worked out. A value that shows as its limit, to three digits, keeps it. A formatting rule can test the cell for "OK".
 * @source Common practice: the chart is the range that the sprinkler was tested in.
 * @errors #VALUE! for a blank or text, a negative pressure, or a chart that is not two columns and at least two rows.
 * @task does the sprinkler work at this pressure?
 * @example =IRRIG.CHECK.CHART(42, {35,3.7;45,4.2;55,4.6})
 */
export function checkChart(pressure: any, chart: any[][]): any {
  const { lowest, highest } = readChartRange(chart);
  const value = readNumber("pressure", pressure, atLeast(0));
  return verdict(
    tooLow({
      fact: "pressure is",
      value,
      bound: lowest,
      limit: (bound) => `the chart begins at ${bound}`,
      cure: "raise the pressure, or use a nozzle whose chart reaches down to it",
    }),
    tooHigh({
      fact: "pressure is",
      value,
      bound: highest,
      limit: (bound) => `the chart ends at ${bound}`,
      cure: "lower the pressure, or use a nozzle whose chart reaches up to it",
    }),
  );
}

/**
 * Says whether heads stand too far apart for their wetted diameter and the wind: "OK", or what to change.
 * @customfunction CHECK_SPACING CHECK.SPACING
 * @param spacing Distance between heads along the line (ft, m), above 0.
 * @param move Distance between positions of the line (ft, m), above 0.
 * @param wetted Wetted diameter of a head (ft, m), above 0: twice its throw at the working pressure.
 * @param wind Wind speed while the line runs (mph, km/h), 0 or more.
 * @returns {@text checkVerdict}
 * @remarks As SPRINKLER.SPACING: along the line at most 50% of the wetted diameter; between positions 65% in calm air, up to and at 0.5 mph (0.8 km/h), 60% up to and at 5 mph (8 km/h), 50% up to and at 10 mph (16 km/h), 45% above. A value that shows as its limit, to three digits, keeps it. A formatting rule can test the cell for "OK".
 * @source Older issues of USDA-NRCS Conservation Practice Standard 442; from memory.
 * @errors #VALUE! for a blank, text or negative value, or a spacing, move or diameter that is not above 0.
 * @cautions roads and buildings, overhead wires
 * @task do the heads overlap enough?
 * @example =IRRIG.CHECK.SPACING(45, 50, 92, 5, "US")
 */
export function checkSpacing(spacing: any, move: any, wetted: any, wind: any, units?: Units): any {
  const u = readUnits(units);
  const diameter = u.length.read("wetted", wetted, above(0));
  const speed = readSpacingWind(u, wind);
  const { along, between } = largestSpacing(diameter, speed);
  const shareOf = (spacing: number) =>
    `${percent.say(spacing / diameter)} of the wetted diameter of ${u.length.say(diameter)}`;
  return verdict(
    tooHigh({
      fact: "spacing is",
      value: u.length.read("spacing", spacing, above(0)),
      bound: along,
      limit: (bound) => `the limit along the line is ${bound} (${shareOf(along)})`,
      cure: "set the sprinklers closer, or use sprinklers that throw farther",
      measure: u.length,
    }),
    tooHigh({
      fact: "move is",
      value: u.length.read("move", move, above(0)),
      bound: between,
      limit: (bound) =>
        `the limit is ${bound} (${shareOf(between)} at a wind of ${u.wind.say(speed)})`,
      cure: "make shorter moves, use sprinklers that throw farther, or run when it is calmer",
      measure: u.length,
    }),
  );
}

/**
 * Says whether a pump gets enough suction head: "OK", or what to change.
 * @customfunction CHECK_NPSH CHECK.NPSH
 * @param available Net positive suction head available (ft, m), any number; PUMP.NPSH gives it.
 * @param required Net positive suction head the pump requires at its flow, from its curve, in the same unit, above 0.
 * @returns {@text checkVerdict}
 * @remarks Takes no units argument: both in the same unit. There is no margin in it: the pump's own sheet may ask for one. A value that shows as its limit, to three digits, keeps it. A formatting rule can test the cell for "OK".
 * @source The definition of NPSH: a pump cavitates where the head available is below the head required.
 * @errors #VALUE! for a blank or text, or a required head that is not above 0.
 * @cautions water edge
 * @task does the pump get enough suction head?
 * @example =IRRIG.CHECK.NPSH(24, 9)
 */
export function checkNpsh(available: any, required: any): any {
  const head = readNumber("available", available, anyNumber);
  const bound = readNumber("required", required, above(0));
  const cure = "set the pump lower, use a shorter or larger suction pipe, or pump less";
  // Two numbers would hide that no pump at all can work there.
  if (head < 0)
    return verdict(
      sentences(
        "suction head available is below 0, so the water boils before it reaches any pump",
        cure,
      ),
    );
  return verdict(
    tooLow({
      fact: "suction head available is",
      value: head,
      bound,
      limit: (required) => `the pump requires ${required}`,
      cure,
    }),
  );
}

/**
 * Says whether the pull on a line that is towed is allowable: "OK", or what to change.
 * @customfunction CHECK_PULL CHECK.PULL
 * @param pull Pull at the hitch (lbf, N), 0 or more; TOW.PULL gives it.
 * @param safe Allowable pull of the weakest tubing or joint, in the same unit, above 0; TOW.SAFEPULL gives it.
 * @returns {@text checkVerdict}
 * @remarks Takes no units argument: both in the same unit. The limits of the vehicle, the hitch and the manufacturer go first. A value that shows as its limit, to three digits, keeps it. A formatting rule can test the cell for "OK".
 * @source The definition of an allowable pull: what the weakest part may carry.
 * @errors #VALUE! for a blank or text, a negative pull, or an allowable pull that is not above 0.
 * @cautions towing
 * @task can I tow the line without tearing it?
 * @example =IRRIG.CHECK.PULL(380, 570)
 */
export function checkPull(pull: any, safe: any): any {
  return verdict(
    tooHigh({
      fact: "pull is",
      value: readNumber("pull", pull, atLeast(0)),
      bound: readNumber("safe", safe, above(0)),
      limit: (bound) => `the allowable pull is ${bound}`,
      cure: "drain the line first, or tow it in shorter pieces",
    }),
  );
}
