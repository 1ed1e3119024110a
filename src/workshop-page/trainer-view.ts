import { make } from "../screen/dom";
import { formatValue } from "../screen/number-format";
import { exercises } from "../sheets/books/workshop/exercises";
import { rightAnswer } from "./exercise-view";
import { joinCode, reachedFromElsewhere } from "./join-code";
import { exerciseText, unitText } from "./said";
import { lessonAddress, printButton, type Workshop } from "./workshop";

/** Minutes, what to ask, what they will say, how they get in, and the key of all exercises. */
export function trainerView(workshop: Workshop, systems: HTMLElement): HTMLElement[] {
  const { words, system, host } = workshop;
  const said = words.page;
  const all = exercises(system);
  const minutes = words.lessons.reduce((sum, { trainer }) => sum + trainer.minutes, 0);
  return [
    make("h1", {}, said.trainer),
    make("p", {}, said.trainerIntro),
    systems,
    make(
      "p",
      { class: "on-screen" },
      printButton(workshop),
      " ",
      make("a", { href: "#slides" }, said.allSlides),
    ),
    ...(reachedFromElsewhere(location)
      ? []
      : [make("p", { class: "caution" }, `${said.ownAddress}`)]),
    ...words.lessons.map(({ title, trainer }, i) => {
      const address = lessonAddress(workshop, i + 1);
      return make(
        "section",
        { class: "trained" },
        make(
          "div",
          {},
          make("h2", {}, `${i + 1}  ${title} (${trainer.minutes} ${said.minutes})`),
          make("p", {}, make("strong", {}, `${said.ask}: `), trainer.ask),
          make("p", {}, make("strong", {}, `${said.say}: `), trainer.say),
          make("p", {}, make("strong", {}, `${said.answer}: `), trainer.answer),
          make("p", { class: "quiet" }, `${said.link}: `, make("a", { href: address }, address)),
        ),
        joinCode(address, `${said.scan}: ${i + 1}`),
      );
    }),
    make("p", {}, make("strong", {}, `${minutes} ${said.minutes}`)),
    make("h2", {}, said.answers),
    make(
      "ol",
      { class: "answers" },
      ...all.map((exercise) => {
        const right = formatValue(rightAnswer(exercise, host), exercise.format);
        return make(
          "li",
          {},
          `${exerciseText(words.exercises[exercise.id].ask, exercise, system)} `,
          make("strong", {}, `${right} ${unitText(exercise)}`.trim()),
        );
      }),
    ),
  ];
}
