/** All words of the workshop in one language: a second language is a second file of this shape. */
export interface WorkshopWords {
  readonly language: string;
  /** In the order in which they are taught. */
  readonly lessons: readonly LessonWords[];
  readonly exercises: Readonly<Record<ExerciseId, ExerciseWords>>;
  readonly pictures: PictureWords;
  readonly page: PageWords;
}

/** Text for both unit systems, or for each. */
export type InUnits = string | { readonly US: string; readonly SI: string };

export type LessonId =
  | "cans"
  | "rate"
  | "hours"
  | "wind"
  | "pressure"
  | "along"
  | "band"
  | "bore"
  | "sizes"
  | "pump"
  | "end";

export interface LessonWords {
  readonly id: LessonId;
  /** Name of the workbook's page: short. */
  readonly page: string;
  readonly title: string;
  readonly question: string;
  /** What to guess before looking. */
  readonly guess: string;
  /** How it is worked by hand. */
  readonly hand: InUnits;
  /** What it means in the field. */
  readonly field: string;
  readonly source: string;
  readonly trainer: {
    readonly minutes: number;
    readonly ask: string;
    readonly say: string;
    readonly answer: string;
  };
  /** A sentence of the handout; what is in square brackets is left blank and stands in the key. */
  readonly handout: string;
}

export type ExerciseId =
  | "catchDepth"
  | "uniformity"
  | "driestQuarter"
  | "rate"
  | "netDepth"
  | "hours"
  | "setsADay"
  | "widestMove"
  | "friction"
  | "headFlow"
  | "factor"
  | "shortcut"
  | "mostHeads"
  | "bore"
  | "segment"
  | "pumpHead"
  | "power"
  | "water";

/** Numbers stand as {name}: exercises.ts holds them. */
export interface ExerciseWords {
  readonly ask: InUnits;
  readonly hint: InUnits;
  readonly second: InUnits;
  /** The answer worked by hand. */
  readonly shown: InUnits;
}

/** Words in and under the pictures of the page. */
export type PictureWords = Readonly<
  Record<
    | "cansTitle"
    | "sprinkler"
    | "canCaught"
    | "mean"
    | "du"
    | "cu"
    | "cansSaid"
    | "bucketTitle"
    | "headFlow"
    | "spacing"
    | "move"
    | "slope"
    | "pours"
    | "takes"
    | "runsOff"
    | "soilGood"
    | "soilBad"
    | "fieldTitle"
    | "netDepth"
    | "efficiency"
    | "lines"
    | "line"
    | "dayBelow"
    | "setHours"
    | "setsADay"
    | "roundDays"
    | "hoursSaid"
    | "tooLong"
    | "overlap"
    | "windTitle"
    | "wetted"
    | "wind"
    | "widestMove"
    | "windGood"
    | "windBad"
    | "pressureTitle"
    | "pipeFlow"
    | "bore"
    | "lost"
    | "twice"
    | "speed"
    | "pressureSaid"
    | "alongTitle"
    | "heads"
    | "factor"
    | "alongBelow"
    | "alongSaid"
    | "alongLong"
    | "equalLoss"
    | "solvedLoss"
    | "bandTitle"
    | "uphill"
    | "level"
    | "downhill"
    | "band"
    | "bandUphill"
    | "bandGood"
    | "bandBad"
    | "boreTitle"
    | "size"
    | "sizeShown"
    | "hidden"
    | "boreSaid"
    | "sizesTitle"
    | "larger"
    | "allLarger"
    | "twoSizes"
    | "sizesGood"
    | "sizesBad"
    | "pumpTitle"
    | "linesRunning"
    | "head"
    | "pumpSaid"
    | "endTitle"
    | "length"
    | "ground"
    | "water"
    | "weight"
    | "endSaid",
    string
  >
>;

/** Words of the page around the lessons. */
export type PageWords = Readonly<
  Record<
    | "lessons"
    | "trainer"
    | "handout"
    | "key"
    | "slides"
    | "lesson"
    | "units"
    | "guessFirst"
    | "guessAsk"
    | "look"
    | "exercises"
    | "inTheField"
    | "byHand"
    | "byFunction"
    | "source"
    | "previous"
    | "next"
    | "large"
    | "leave"
    | "print"
    | "allSlides"
    | "scan"
    | "ownAddress"
    | "formulaNote"
    | "score"
    | "scoreNote"
    | "check"
    | "hint"
    | "secondHint"
    | "showMe"
    | "noUnit"
    | "numbers"
    | "minutes"
    | "ask"
    | "say"
    | "answer"
    | "answers"
    | "start"
    | "trainerIntro"
    | "link"
    | "handoutTitle"
    | "name"
    | "workbook"
    | "unreachable"
    | "outOfRange"
    | "safety",
    string
  >
> & {
  readonly verdicts: Readonly<
    Record<"right" | "percent" | "close" | "not yet" | "unread" | "unit", string>
  >;
};
