import { make } from "../screen/dom";
import { joinCode, reachedFromElsewhere } from "./join-code";
import { pictureView, sceneOf } from "./lesson-view";
import { lessonAddress, lessonCautions, printButton, type Workshop } from "./workshop";

/** A lesson for the wall: all of it on one screen, what it means in the field when it is asked for. */
export function slideView(workshop: Workshop, number: number): HTMLElement[] {
  const { words } = workshop;
  const lesson = words.lessons[number - 1];
  const { question, picture, numbers } = parts(workshop, number);
  const field = make(
    "details",
    {},
    make("summary", {}, words.page.inTheField),
    make("p", {}, lesson.field),
    ...lessonCautions(lesson.id),
  );
  return [
    make("h1", {}, `${number}  ${lesson.title}`),
    make(
      "div",
      { class: "slide-parts" },
      make("div", {}, ...question, ...numbers, field, ...joining(workshop, number)),
      picture,
    ),
  ];
}

/** Every lesson on a sheet of its own, with nothing left to open. */
export function slidesView(workshop: Workshop, systems: HTMLElement): HTMLElement[] {
  const { words } = workshop;
  return [
    make("h1", { class: "on-screen" }, words.page.slides),
    make("div", { class: "on-screen" }, systems, printButton(workshop)),
    ...words.lessons.map((lesson, i) => {
      const { question, picture, numbers } = parts(workshop, i + 1);
      picture.querySelector(".controls")?.remove();
      return make(
        "section",
        { class: "slide-sheet" },
        make("h2", {}, `${i + 1}  ${lesson.title}`),
        make(
          "div",
          { class: "slide-parts" },
          make(
            "div",
            {},
            ...question,
            ...numbers,
            make("h3", {}, words.page.inTheField),
            make("p", {}, lesson.field),
            ...lessonCautions(lesson.id),
          ),
          picture,
        ),
      );
    }),
  ];
}

function parts(workshop: Workshop, number: number) {
  const { words, host, system } = workshop;
  const lesson = words.lessons[number - 1];
  const picture = pictureView(lesson, sceneOf(host, system, words), words);
  return {
    question: [
      make("p", { class: "question" }, lesson.question),
      make("p", {}, make("strong", {}, `${words.page.guessFirst}: `), lesson.guess),
    ],
    picture,
    // Beside the question there is room for the numbers, so that all stands on one screen.
    numbers: [...picture.querySelectorAll(".numbers")],
  };
}

/** A code on the wall, where phones in the room can follow it. */
function joining(workshop: Workshop, number: number): HTMLElement[] {
  if (!reachedFromElsewhere(location)) return [];
  const { scan } = workshop.words.page;
  return [
    make(
      "div",
      { class: "joining" },
      joinCode(lessonAddress(workshop, number), scan),
      make("p", {}, scan),
    ),
  ];
}
