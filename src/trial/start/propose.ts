import { shownAs, type Quantity } from "../../sheets/kit/builder";
import { MOST_HEADS } from "../../sheets/parts/line-inputs";
import { MOST_LINES } from "../../sheets/parts/supply";
import type { UnitSystem } from "../../sheets/kit/definition";
import { formatValue } from "../../screen/number-format";
import { textSaid } from "../../words/spoken";
import type { AskedBook, Check, Inputs, Said } from "./asked-book";
import type { Given } from "./given";
import { partsOf, rounded } from "./layout";
import { LIMITS_TO_MOVE } from "./limits-to-move";
import { said, type Sentence, sentence } from "./say";
import { waterInputs } from "./water";

/** One thing that is proposed, and why. */
export interface Proposed {
  readonly what: string;
  /** As it is shown, with its unit. */
  readonly value: string;
  readonly why: readonly Sentence[];
  /** The name of the workbook's cell that holds it, and what it holds. */
  readonly cell?: string;
  readonly number?: number;
}

export interface Plan {
  readonly rows: readonly Proposed[];
  /** Of the workbook Line layout. */
  readonly inputs: Inputs;
  /** What other workbooks ask beside that. */
  readonly beside: Inputs;
  /** What to know before it is built. */
  readonly notes: readonly Sentence[];
}

/** Why no plan fits: a check that fails, what it says, and which limit to move. */
export interface Obstacle {
  readonly check: string;
  readonly says: Sentence;
  readonly move?: string;
}

export type Outcome =
  | { readonly plan: Plan; readonly obstacles?: undefined }
  | { readonly plan?: undefined; readonly obstacles: readonly Obstacle[] };

/** A field is cut into so many strips at most, each with its own row of positions. */
const MOST_STRIPS = 12;
const MOST_POSITIONS = 500;
/** The widest move, and so many less one beside it. */
const MOVES_TRIED = 3;
const PUMP_AND_LINES = "Pump and lines";
/** So many numbers of strips are tried where only the water falls short. */
const DRY_TRIALS = 2;

const TOO_LARGE: Obstacle = {
  check: "Positions",
  says: sentence("The field takes more positions of a line than the workbook has room for."),
  move: "Move: plan it as several fields, each with lines of its own.",
};

/** Nominal sizes of the ISO series, mm, for main and feeder. */
const SIZES = [63, 75, 90, 110, 125, 140, 160, 200, 250];
/** Wall classes, the usual one first. */
const HEAVIER = [13.6, 11];

/** Checks that more strips cannot mend. */
const BEYOND_STRIPS = new Set([
  "Rate and the soil",
  "Spacing and the wind",
  "Set and the day",
  "Days and the crop",
  "Suction",
  "Static pressure and the rating",
]);

interface Sizes {
  readonly large: number;
  readonly small: number;
  readonly changeover: number;
  readonly feeder: number;
  readonly main: number;
  readonly sdr: number;
}

interface Strip {
  readonly strips: number;
  readonly positions: number;
  readonly heads: number;
  readonly spacing: number;
  readonly inputs: Inputs;
}

interface Days {
  readonly days: number;
  readonly depth: number;
  readonly lines: number;
}

interface Judged {
  readonly inputs: Inputs;
  readonly days: Days;
  readonly said: Said;
  readonly failed: readonly Check[];
}

/**
 * Looks for the plan with the fewest strips, then the fewest lines, then the least of the larger
 * tubing, of which every check of the workbook passes. Every number is asked of the workbook, which
 * asks the functions. Yields between trials, so that a page stays alive.
 */
export function* proposePlan(book: AskedBook, given: Given): Generator<undefined, Outcome> {
  const search = new Search(book, given);
  return yield* search.run();
}

class Search {
  private readonly base: Inputs;
  private readonly along: number;
  private readonly between: number;

  constructor(
    private readonly book: AskedBook,
    private readonly given: Given,
  ) {
    const { system } = given;
    const charts = [1, 2, 3].flatMap((row): [string, number][] => [
      [`Sprinkler chart, pressure, row ${row}`, given[`pressure${row}` as "pressure1"]],
      [`Sprinkler chart, flow, row ${row}`, given[`flow${row}` as "flow1"]],
    ]);
    const ground: [string, number | string][] = [
      ["FieldName", given.name],
      ["Lowest", given.least],
      ["Wetted", given.wetted],
      ["Wind", given.wind],
      ["Texture", given.soil],
      ["Slope", given.slope],
      ["CropUse", given.cropUse],
      ["MoveHours", given.moveHours],
      ["DayHours", given.dayHours],
      ["LowestRise", 0 - given.lowest],
      ["Drop", given.lowest],
    ];
    const { length, width } = given;
    const first = book.ask(new Map([...ground, ...charts]), {
      along: "=INDEX(IRRIG.SPRINKLER.SPACING(Wetted, Wind, Units), 1, 2)",
      between: "=INDEX(IRRIG.SPRINKLER.SPACING(Wetted, Wind, Units), 2, 2)",
      area: `=IRRIG.FIELD.AREA({0,0;${length},0;${length},${width};0,${width}}, "${system}")`,
    });
    this.along = first.number("along");
    this.between = first.number("between");
    this.base = new Map([
      ...ground,
      ...charts,
      ...waterInputs(book, given),
      ["Area", rounded(first.number("area"))],
    ]);
  }

  *run(): Generator<undefined, Outcome> {
    let nearest: Judged | undefined;
    let before: readonly Check[] = [];
    let dry = 0;
    for (let strips = 1; strips <= MOST_STRIPS; strips++) {
      yield;
      const ways = this.ways(strips);
      const positions = Math.min(...ways.map((way) => way.positions));
      if (ways.length > 0 && positions > MOST_POSITIONS) return { obstacles: [TOO_LARGE] };
      let closest: Judged | undefined;
      for (const way of ways) {
        const found = yield* this.fitting(way);
        if (found.failed.length === 0) {
          const sizes = yield* this.lessTubing(way, found);
          return { plan: this.plan(way, sizes, before) };
        }
        if (closest === undefined || isNearer(found, closest)) closest = found;
      }
      if (closest === undefined) continue;
      const { failed } = closest;
      before = failed;
      if (nearest === undefined || isNearer(closest, nearest)) nearest = closest;
      if (failed.every(({ label }) => BEYOND_STRIPS.has(label))) break;
      // The whole field takes much the same water in however many strips.
      dry += failed.every(({ label }) => label === PUMP_AND_LINES) ? 1 : 0;
      if (dry > DRY_TRIALS || ways[0].heads <= 2) break;
    }
    return { obstacles: nearest === undefined ? [TOO_LARGE] : this.obstacles(nearest) };
  }

  private obstacles({ failed, said }: Judged): Obstacle[] {
    return failed.map(({ label, text }) => ({
      check: label,
      says: label === PUMP_AND_LINES ? this.shortOfWater(said, text) : plainSentence(text),
      ...(label in LIMITS_TO_MOVE && { move: LIMITS_TO_MOVE[label] }),
    }));
  }

  /** The workbook speaks of a pump; a hydrant's owner is told what is missing there. */
  private shortOfWater(said: Said, text: string): Sentence {
    const { given } = this;
    const show = (value: number, quantity: Quantity) => shownIn(value, quantity, given.system);
    const there = given.water === "pump" ? given.mostFlow : given.flow;
    const lines = formatValue(said.number("Lines"), "0");
    const all = said.number("AllFlow");
    if (all > there)
      return sentence(
        "The lines that the field needs, {lines}, take {all} together; there are {flow}.",
        {
          lines,
          all: show(all, "flow"),
          flow: show(there, "flow"),
        },
      );
    const open = said.number("OpenInlet");
    if (Number.isNaN(open)) return plainSentence(text);
    return sentence(
      "With {lines} lines running there are {open} at the inlet of a line; {planned} are needed.",
      {
        lines,
        open: show(open, "pressure"),
        planned: show(said.number("PlannedInlet"), "pressure"),
      },
    );
  }

  /**
   * With the widest move that the wind allows, and with narrower ones, whose sets are shorter: the
   * fewest lines first, and the widest move among like ones.
   */
  private ways(strips: number): Strip[] {
    return Array.from({ length: MOVES_TRIED }, (_, more) => this.strip(strips, more))
      .filter((way) => way !== undefined)
      .map((way) => ({ way, lines: this.days(way, this.wholeSizes(way)).lines }))
      .sort((one, other) => one.lines - other.lines)
      .map(({ way }) => way);
  }

  /** The field cut into so many strips along its length; undefined where a sheet has no room for it. */
  private strip(strips: number, more: number): Strip | undefined {
    const { book, given, base } = this;
    const length = given.length / strips;
    const along = partsOf(
      book,
      base,
      { length, most: this.along },
      (apart) => `=IRRIG.LATERAL.HEADS(${length}, ${apart}, ${apart / 2})`,
    );
    const across = partsOf(
      book,
      base,
      { length: given.width, most: this.between, more },
      (apart) => `=IRRIG.SET.POSITIONS(${given.width}, ${apart})`,
    );
    const positions = strips * across.count;
    if (along.count < 1 || along.count > MOST_HEADS) return undefined;
    const rise = given.rise / strips;
    const extension = given.length - length;
    const main = Math.max(1, (given.water === "pump" ? given.main : 0) + extension);
    return {
      strips,
      positions,
      heads: along.count,
      spacing: along.apart,
      inputs: new Map([
        ...base,
        ["Heads", along.count],
        ["Spacing", along.apart],
        ["First", rounded(along.apart / 2)],
        ["Rise", rounded(rise)],
        // The highest inlet: a line that rises ends at the highest point, another begins there.
        ["FeederRise", rounded(Math.max(0 - given.lowest, given.highest - Math.max(0, rise)))],
        ["Move", across.apart],
        ["Positions", positions],
        ["Main, for all lines: Length", rounded(main)],
      ]),
    };
  }

  /** The largest tubing all the way, the rest as the workbook has it. */
  private wholeSizes({ heads }: Strip): Sizes {
    const number = (called: string) => Number(this.book.stands(called));
    return {
      large: number("Size (mm), row 1"),
      small: number("Size (mm), row 2"),
      changeover: heads,
      feeder: number("Feeder, one each: Size (mm)"),
      main: number("Main, for all lines: Size (mm)"),
      sdr: number("Main, for all lines: SDR"),
    };
  }

  /** The largest tubing all the way, with main, feeder and wall as they must be. */
  private *fitting(strip: Strip): Generator<undefined, Judged & { readonly sizes: Sizes }> {
    let sizes = this.wholeSizes(strip);
    for (;;) {
      const judged = this.judge(strip, sizes);
      yield;
      const next = larger(sizes, judged.failed);
      if (judged.failed.length === 0 || next === undefined) return { ...judged, sizes };
      sizes = next;
    }
  }

  /** As little of the larger tubing as keeps every check, then the smaller pair likewise. */
  private *lessTubing(
    strip: Strip,
    whole: Judged & { readonly sizes: Sizes },
  ): Generator<undefined, Judged & { readonly sizes: Sizes }> {
    let best = whole;
    const number = (row: number) => Number(this.book.stands(`Size (mm), row ${row}`));
    for (const [large, small] of [
      [number(1), number(2)],
      [number(2), number(3)],
      [number(3), number(3)],
    ]) {
      const sizes = (changeover: number): Sizes => ({ ...whole.sizes, large, small, changeover });
      // A smaller pair needs its larger size to do all the way.
      if (large !== whole.sizes.large && !this.runs(strip, sizes(strip.heads), whole)) break;
      let low = large === small ? strip.heads : 1;
      let high = strip.heads;
      while (low < high) {
        const middle = Math.floor((low + high) / 2);
        if (this.runs(strip, sizes(middle), whole)) high = middle;
        else low = middle + 1;
        yield;
      }
      for (; low <= strip.heads; low++) {
        const judged = this.judge(strip, sizes(low));
        yield;
        if (judged.failed.length > 0) continue;
        best = { ...judged, sizes: sizes(low) };
        break;
      }
    }
    return best;
  }

  /** The line alone, at the pressure that there is: what a whole judgement would say first. */
  private runs(strip: Strip, sizes: Sizes, { days, said }: Judged): boolean {
    const line = this.book.ask(this.inputs(strip, sizes, days), { planned: "=PlannedInlet" });
    return (
      line.number("planned") <= said.number("OpenInlet") &&
      ["Pressure along the line", "Highest pressure and the chart", "Velocity in the line"].every(
        (label) => line.check(label) === "OK",
      )
    );
  }

  private judge(strip: Strip, sizes: Sizes): Judged {
    const days = this.days(strip, sizes);
    const inputs = this.inputs(strip, sizes, days);
    const said = this.book.ask(inputs, NUMBERS);
    const failed = said.checks().filter(({ text }) => text !== "OK");
    const fault = said.shown("InputFault").value;
    return {
      inputs,
      days,
      said,
      failed: fault === "OK" ? failed : [{ label: "Inputs", text: String(fault) }, ...failed],
    };
  }

  /**
   * The days between irrigations: the fewest lines first, then the most days, each with the depth
   * that the crop uses in them, as far as the soil holds it.
   */
  private days(strip: Strip, sizes: Sizes): Days {
    const { crop } = this.given;
    const trial = this.inputs(strip, sizes, { days: 1, depth: this.given.cropUse, lines: 1 });
    const longest = Math.max(
      1,
      Math.floor(this.book.ask(trial, { longest: longestInterval(crop) }).number("longest") + 1e-9),
    );
    const many = Array.from({ length: Math.min(longest, MOST_DAYS) }, (_, index) => index + 1);
    const lines = this.book.ask(
      trial,
      Object.fromEntries(
        many.map((days) => [
          String(days),
          `=IRRIG.SYSTEM.LINES(Positions, IRRIG.SET.PERDAY(IRRIG.SET.TIME(CropUse*${days}, Rate, Efficiency), MoveHours, DayHours), ${days})`,
        ]),
      ),
    );
    let best: Days | undefined;
    for (const days of many) {
      const needed = lines.number(String(days));
      if (!(needed <= MOST_LINES) || needed > (best?.lines ?? MOST_LINES)) continue;
      best = { days, depth: rounded(days * this.given.cropUse), lines: needed };
    }
    return best ?? { days: longest, depth: rounded(longest * this.given.cropUse), lines: 1 };
  }

  private inputs(strip: Strip, sizes: Sizes, { depth, lines }: Days): Inputs {
    const { large, small, changeover, feeder, main, sdr } = sizes;
    return new Map([
      ...strip.inputs,
      ["NetDepth", depth],
      ["Lines", lines],
      ["Changeover", changeover],
      ["From the inlet: Size (mm)", large],
      ["After the changeover: Size (mm)", small],
      ["Feeder, one each: Size (mm)", feeder],
      ["Main, for all lines: Size (mm)", main],
      ...[
        "From the inlet: SDR",
        "After the changeover: SDR",
        "Main, for all lines: SDR",
        "Feeder, one each: SDR",
        "SDR, row 1",
        "SDR, row 2",
        "SDR, row 3",
      ].map((called): [string, number] => [called, sdr]),
    ]);
  }

  private plan(
    strip: Strip,
    { inputs, days, said: answers, sizes }: Judged & { readonly sizes: Sizes },
    before: readonly Check[],
  ): Plan {
    const { given } = this;
    const { system } = given;
    const show = (value: number, quantity: Quantity) => shownIn(value, quantity, system);
    const plain = (value: number, format = "0.##") => formatValue(value, format).replace(/\D$/, "");
    const asked = (key: string, quantity: Quantity) => show(answers.number(key), quantity);
    const input = (called: string) => Number(inputs.get(called));
    const row = (what: string, value: string, cell: string, ...why: Sentence[]): Proposed => ({
      what,
      value,
      why,
      cell,
      number: answers.number(cell),
    });
    const length = given.length / strip.strips;
    const [mended] = before;
    const wind = { wind: show(given.wind, "wind"), wetted: show(given.wetted, "length") };
    const soil = this.book.ask(inputs, {
      most: mostNet(given.crop),
      longest: longestInterval(given.crop),
    });
    const rows: Proposed[] = [
      row(
        "Sprinkler spacing",
        asked("Spacing", "length"),
        "Spacing",
        sentence(
          "SPRINKLER.SPACING: in a wind of {wind} a sprinkler that wets {wetted} may stand at most {most} from the next on the line. {length} in {count} equal parts.",
          {
            ...wind,
            most: show(this.along, "length"),
            length: show(length, "length"),
            count: plain(strip.heads),
          },
        ),
      ),
      row(
        "Inlet to sprinkler 1",
        asked("First", "length"),
        "First",
        sentence("Half a spacing, so that the first and the last water up to the edge."),
      ),
      row(
        "Sprinklers on each line",
        plain(answers.number("Heads")),
        "Heads",
        sentence("LATERAL.HEADS: so many fit {length} at that spacing.", {
          length: show(length, "length"),
        }),
        ...(strip.strips === 1 || mended === undefined
          ? []
          : [
              sentence(
                "The length is cut into {strips} strips, each with its own row of positions: with fewer, one line fails. {why}",
                { strips: plain(strip.strips), why: textSaid(mended.text) },
              ),
            ]),
      ),
      row(
        "Move from position to position",
        asked("Move", "length"),
        "Move",
        sentence(
          "SPRINKLER.SPACING: at most {most} between positions in that wind, so that two of them overlap.",
          { most: show(this.between, "length") },
        ),
      ),
      row(
        "Positions",
        plain(answers.number("Positions")),
        "Positions",
        sentence("SET.POSITIONS: {width} in moves of {move}.", {
          width: show(given.width, "length"),
          move: asked("Move", "length"),
        }),
        ...(strip.strips === 1
          ? []
          : [
              sentence("{count} in each of {strips} strips.", {
                count: plain(answers.number("Positions") / strip.strips),
                strips: plain(strip.strips),
              }),
            ]),
      ),
      row(
        "Net depth of an irrigation",
        asked("NetDepth", "depth"),
        "NetDepth",
        sentence(
          "SOIL.AWC, CROP.ROOT, CROP.DEPLETION and SOIL.NET: the soil gives the crop up to {most}. The crop uses {use}: this is the water of {days} days, of {longest} that the soil would last.",
          {
            most: show(soil.number("most"), "depth"),
            use: show(given.cropUse, "dailyDepth"),
            days: plain(days.days),
            longest: plain(soil.number("longest"), "0.0"),
          },
        ),
      ),
      row(
        "Lines",
        plain(answers.number("Lines")),
        "Lines",
        sentence(
          "SYSTEM.LINES: {positions} positions within {days} days. Sets a day with each line: {sets}.",
          {
            positions: plain(answers.number("Positions")),
            sets: plain(answers.number("SetsPerDay")),
            days: plain(days.days),
          },
        ),
      ),
      {
        what: "Tubing of a line",
        value: said(tubingOf(sizes, strip.heads)),
        cell: "Changeover",
        number: sizes.changeover,
        why: [
          sentence(
            "LATERAL.VARIATION: pressure varies by {varies}, the limit is {limit}. LATERAL.SUMMARY: the water runs at up to {speed}, the limit is {most}.",
            {
              varies: formatValue(answers.number("Variation"), "0.0%"),
              limit: formatValue(answers.number("Limit"), "0%"),
              speed: asked("Speed", "speed"),
              most: asked("GreatestSpeed", "speed"),
            },
          ),
          ...(sizes.changeover > 1 && sizes.large !== sizes.small
            ? [sentence("With one segment less of the larger size a check fails.")]
            : []),
        ],
      },
      {
        what: "Feeder, hydrant to line",
        value: `${plain(sizes.feeder)} mm, ${asked("FeederLength", "length")}`,
        cell: "FeederLength",
        number: answers.number("FeederLength"),
        why: [
          sentence(
            "FEEDER.LENGTH: reaches the {count} positions that a hydrant serves, with slack. PIPE.VELOCITY: within the limit at {flow}.",
            { count: plain(answers.number("OwnPositions")), flow: asked("LineFlow", "flow") },
          ),
        ],
      },
      {
        what: "Main, to the last hydrant",
        value: `${plain(sizes.main)} mm, SDR ${plain(sizes.sdr)}`,
        why: [
          sentence("PIPE.VELOCITY: within the limit at {flow}.", {
            flow: asked("AllFlow", "flow"),
          }),
          given.water === "hydrant" && strip.strips === 1
            ? sentence("What the main loses up to the gauge is in its reading.")
            : sentence("PIPE.FRICTION: reckoned over {length}.", {
                length: show(input("Main, for all lines: Length"), "length"),
              }),
        ],
      },
      row(
        "Pressure at the inlet of a line",
        asked("PlannedInlet", "pressure"),
        "PlannedInlet",
        sentence(
          "LATERAL.INLET: the least that gives the lowest nozzle {least}. PUMP.LINES: with all lines running there are {open}; throttle to the planned one at the valve.",
          { least: asked("Lowest", "pressure"), open: asked("OpenInlet", "pressure") },
        ),
      ),
      row(
        "Flow of all lines",
        asked("AllFlow", "flow"),
        "AllFlow",
        sentence("LATERAL.SUMMARY: {line} into each line, {head} from an average sprinkler.", {
          line: asked("LineFlow", "flow"),
          head: asked("HeadFlow", "headFlow"),
        }),
      ),
      row(
        "Set time",
        `${formatValue(answers.number("SetHours"), "0.0")} h`,
        "SetHours",
        sentence(
          "SET.TIME: {depth} net at {rate} and an efficiency of {efficiency}. SOIL.INTAKE: the soil takes {intake}.",
          {
            depth: asked("NetDepth", "depth"),
            rate: asked("Rate", "rate"),
            efficiency: formatValue(answers.number("Efficiency"), "0.00"),
            intake: asked("Intake", "rate"),
          },
        ),
      ),
      row(
        "Days to cover the field",
        plain(answers.number("RoundDays")),
        "RoundDays",
        sentence(
          "SET.PERDAY: sets with their moves of {move} h that a day of {day} h holds: {sets}.",
          {
            sets: plain(answers.number("SetsPerDay")),
            move: plain(given.moveHours),
            day: plain(given.dayHours),
          },
        ),
      ),
      row(
        "Highest pressure that the pipe must bear",
        asked("WithSurge", "pressure"),
        "WithSurge",
        sentence(
          "PUMP.STATIC: {shut} at the lowest point with the valves shut, and PIPE.SURGE on top. PIPE.RATING: SDR {sdr} bears {rating} that warm.",
          {
            shut: asked("StaticPressure", "pressure"),
            sdr: plain(answers.number("WeakestSDR")),
            rating: asked("PipeRating", "pressure"),
          },
        ),
      ),
    ];
    const open = Math.floor(answers.number("OpenInlet") * 10) / 10;
    return {
      rows,
      inputs: new Map([...inputs, ["InletThereIs", open]]),
      beside: new Map<string, number | string>([
        ["Crop", given.crop],
        ["RotationDays", days.days],
        ["Width", rounded(given.width * strip.strips)],
      ]),
      notes: this.notes(strip, days),
    };
  }

  private notes({ strips }: Strip, { lines }: Days): Sentence[] {
    const notes: Sentence[] = [];
    if (strips > 1)
      notes.push(
        sentence(
          "The strips lie end to end, with a row of hydrants at the start of each: the main is reckoned to the farthest.",
        ),
      );
    if (lines < strips)
      notes.push(
        sentence(
          "The workbook counts one hydrant for each line, so that the feeder is reckoned for all of its positions. With a hydrant in each strip it is shorter.",
        ),
      );
    if (this.given.water === "hydrant")
      notes.push(
        sentence(
          "The workbook takes the hydrant for a pump: its head is what the gauge showed, and its energy is what that head is worth, not what your supplier spends.",
        ),
      );
    return notes;
  }
}

const MOST_DAYS = 60;

/** What is asked of a plan, by the names of the workbook's cells. */
const NUMBERS = Object.fromEntries(
  [
    "InputFault,Spacing,First,Heads,Move,Positions,NetDepth,Lines,SetsPerDay,Variation,Limit,Speed",
    "GreatestSpeed,FeederLength,OwnPositions,LineFlow,AllFlow,PlannedInlet,Lowest,OpenInlet,HeadFlow",
    "SetHours,Rate,Efficiency,Intake,RoundDays,WithSurge,StaticPressure,WeakestSDR,PipeRating",
  ]
    .join(",")
    .split(",")
    .map((name) => [name, `=${name}`]),
);

function mostNet(crop: string): string {
  return `=IRRIG.SOIL.NET(IRRIG.SOIL.AWC(Texture, Units), IRRIG.CROP.ROOT("${crop}", Units), IRRIG.CROP.DEPLETION("${crop}", Units, CropUse), Units)`;
}

function longestInterval(crop: string): string {
  return `=IRRIG.SYSTEM.INTERVAL(${mostNet(crop).slice(1)}, CropUse)`;
}

function tubingOf({ large, small, changeover }: Sizes, heads: number): Sentence {
  const places = {
    large: String(large),
    small: String(small),
    first: String(changeover),
    rest: String(heads - changeover),
  };
  return changeover >= heads
    ? sentence("{large} mm all the way", places)
    : sentence("{large} mm for {first} segments, then {small} mm for {rest}", places);
}

/** The next sizes to try against what fails; undefined where none helps. */
function larger(sizes: Sizes, failed: readonly Check[]): Sizes | undefined {
  const fails = (...labels: string[]) => failed.some(({ label }) => labels.includes(label));
  const after = (size: number) => SIZES.find((other) => other > size);
  const main = after(sizes.main);
  if (fails("Velocity in the main") && main !== undefined) return { ...sizes, main };
  const feeder = after(sizes.feeder);
  if (fails("Velocity in the feeder") && feeder !== undefined) return { ...sizes, feeder };
  const sdr = HEAVIER.find((other) => other < sizes.sdr);
  const bursts = fails("Static pressure and the rating", "With surge, against the whole rating");
  if (bursts && sdr !== undefined) return { ...sizes, sdr };
  return undefined;
}

function shownIn(value: number, quantity: Quantity, system: UnitSystem): string {
  const { unit, format } = shownAs(quantity, system);
  return `${formatValue(value, format)} ${unit}`;
}

/** A check's own sentence, said by the workbook already. */
function plainSentence(text: string): Sentence {
  return sentence("{why}", { why: textSaid(text) });
}

/** Fewer checks fail, or the same with less water. */
function isNearer(one: Judged, other: Judged): boolean {
  if (one.failed.length !== other.failed.length) return one.failed.length < other.failed.length;
  return one.said.number("AllFlow") < other.said.number("AllFlow");
}
