import { make } from "../screen/dom";
import { formatValue } from "../screen/number-format";
import { type Exercise, exercises } from "../sheets/books/workshop/exercises";
import { rightAnswer } from "./exercise-view";
import { exerciseText, unitText } from "./said";
import { printButton, type Workshop } from "./workshop";

/** One page of paper with blanks, or with what belongs in them; an exercise for each lesson. */
export function handoutView(
  workshop: Workshop,
  withKey: boolean,
  systems: HTMLElement,
): HTMLElement[] {
  const { words, system, host } = workshop;
  const said = words.page;
  const sentence = (text: string) =>
    text.split(/[[\]]/).map((piece, i) => {
      if (i % 2 === 0) return piece;
      return withKey
        ? make("strong", { class: "key" }, piece)
        : make("span", { class: "blank" }, make("span", { class: "out-of-sight" }, "…"));
    });
  const question = (exercise: Exercise) =>
    make(
      "p",
      {},
      `${exerciseText(words.exercises[exercise.id].ask, exercise, system)} `,
      make(
        "span",
        { class: "together" },
        withKey
          ? make(
              "strong",
              { class: "key" },
              formatValue(rightAnswer(exercise, host), exercise.format),
            )
          : make("span", { class: "blank" }),
        ` ${unitText(exercise)}`,
      ),
    );
  const all = exercises(system);
  return [
    make("h1", {}, said.handoutTitle),
    make(
      "p",
      { class: "on-screen" },
      make("a", { href: withKey ? "#handout" : "#key" }, withKey ? said.handout : said.key),
      " ",
      printButton(workshop),
    ),
    make("div", { class: "on-screen" }, systems),
    make("p", {}, `${said.name}: `, make("span", { class: "blank blank-long" })),
    make(
      "ol",
      { class: "handout" },
      ...words.lessons.map((lesson) => {
        const exercise = all.find((other) => other.lesson === lesson.id);
        return make(
          "li",
          {},
          make("p", {}, ...sentence(lesson.handout)),
          ...(exercise === undefined ? [] : [question(exercise)]),
        );
      }),
    ),
  ];
}
