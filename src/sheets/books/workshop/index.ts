import { bluestemFlat, type Field } from "../../parts/bluestem-flat";
import type { PageBuilder } from "../../kit/builder";
import { workbook } from "../../kit/workbook";
import {
  basePage,
  DEALER_QUESTION,
  GROWER_ANSWER,
  GROWER_QUESTION,
  OFFICER_ANSWER,
  OFFICER_QUESTION,
} from "../../parts/line-blocks";
import { namesPage } from "../../parts/names";
import { heads } from "../heads";
import { along } from "./along";
import { band } from "./band";
import { bore } from "./bore";
import { cans } from "./cans";
import { end } from "./end";
import { exercisePage } from "./exercise-page";
import { hours } from "./hours";
import { COLUMNS, type Lesson, lessonPage, words } from "./lesson";
import { pressure } from "./pressure";
import { pump } from "./pump";
import { rate } from "./rate";
import { sizes } from "./sizes";
import { wind } from "./wind";

/** What people can see and touch comes first. */
const lessons: readonly Lesson[] = [
  cans,
  rate,
  hours,
  wind,
  pressure,
  along,
  band,
  bore,
  sizes,
  pump,
  end,
];

export const workshop = workbook({
  ...heads.workshop,
  subjects: ["pressure", "overhead wires"],
  answers: [
    [
      DEALER_QUESTION,
      '=Heads&" sprinklers on each of "&Lines&IF(Lines=1, " line", " lines")&": what they cost stands in the workbook Quote. Here is why there can be "&Heads&" of them."',
    ],
    [OFFICER_QUESTION, OFFICER_ANSWER],
    [GROWER_QUESTION, GROWER_ANSWER],
  ],
  field: bluestemFlat,
  pages: (field: Field) => [
    {
      name: "Start",
      title: "Workshop: why the numbers are what they are",
      widths: COLUMNS,
      landscape: true,
      onePage: true,
      write: startPage,
    },
    ...lessons.map((lesson) => lessonPage(lesson, field)),
    exercisePage(field),
    basePage(field, "Base", "The line that the pages of this workbook speak of."),
    namesPage(field.system),
  ],
});

function startPage(page: PageBuilder): void {
  page.text(
    "Each page takes one step: guess first, then change a shaded cell and look. The formula stands beside each result, as you would type it.",
  );
  page.gap();
  page.table("A", [
    {
      header: "Page",
      role: "label",
      rows: [...words.lessons.map((lesson, i) => `${i + 1}  ${lesson.page}`), "Exercise"],
    },
    {
      header: "What it asks",
      role: "text",
      span: 5,
      rows: [
        ...words.lessons.map(({ question }) => question),
        "Empty cells that tell you whether you are right.",
      ],
    },
  ]);
  page.gap();
  page.safety("pressure", "overhead wires");
}
