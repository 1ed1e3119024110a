/** All words of the workshop in one language: a second language is a second file of this shape. */
export interface WorkshopWords {
  readonly language: string;
  /** In the order in which they are taught. */
  readonly lessons: readonly LessonWords[];
  readonly exercises: Readonly<Record<ExerciseId, ExerciseWords>>;
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
