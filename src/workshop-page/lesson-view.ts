import { freshId, make } from "../screen/dom";
import type { Argument, FunctionHost } from "../screen/host";
import { formatValue } from "../screen/number-format";
import type { UnitSystem } from "../sheets/kit/definition";
import { inSystem } from "../sheets/books/workshop/exercises";
import type { LessonWords, WorkshopWords } from "../sheets/books/workshop/words/shape";
import { readAnswer } from "./answer";
import { type Control, drawings, type Scene } from "./drawings";

export function sceneOf(host: FunctionHost, system: UnitSystem, words: WorkshopWords): Scene {
  const call = (name: string, cells: readonly Argument[]) => {
    const outcome = host.call(name, ...cells);
    if (outcome.error !== undefined) throw new NotDrawn(outcome.error.message);
    return outcome.value;
  };
  return {
    system,
    words: words.pictures,
    number: (name, ...cells) => call(name, cells) as number,
    table: (name, ...cells) => call(name, cells) as (string | number)[][],
  };
}

/** The functions have no answer for these numbers; the message says why. */
class NotDrawn extends Error {}

/** The picture, what moves it, and its numbers. */
export function pictureView(lesson: LessonWords, scene: Scene, words: WorkshopWords): HTMLElement {
  const drawing = drawings[lesson.id];
  const controls = drawing.controls(scene.system);
  const values = Object.fromEntries(controls.map(({ name, value }) => [name, value]));
  const frame = make("div", { class: "frame" });
  const said = make("p", { "aria-live": "polite" });
  const numbers = make("table", { class: "numbers" });
  const draw = () => {
    try {
      const picture = drawing.draw(values, scene);
      frame.replaceChildren(picture.svg);
      said.className = picture.good ? "said" : "said said-bad";
      said.textContent = `${picture.good ? "✓" : "✗"} ${picture.said}`;
      numbers.replaceChildren(
        make("caption", { class: "out-of-sight" }, words.page.numbers),
        make(
          "tbody",
          {},
          ...picture.numbers.map(([label, value]) =>
            make("tr", {}, make("th", { scope: "row" }, label), make("td", {}, value)),
          ),
        ),
      );
    } catch (thrown) {
      if (!(thrown instanceof NotDrawn)) throw thrown;
      said.className = "said said-bad";
      said.textContent = `✗ ${words.page.outOfRange} ${thrown.message}`;
    }
  };
  const view = make(
    "div",
    { class: "picture" },
    frame,
    said,
    make(
      "div",
      { class: "controls" },
      ...controls.map((control) =>
        controlView(control, words, (value) => {
          values[control.name] = value;
          draw();
        }),
      ),
    ),
    numbers,
  );
  draw();
  return view;
}

/** A slider for the finger with a box for the number; each follows the other. */
function controlView(
  { name, unit, value, low, high, step }: Control,
  words: WorkshopWords,
  take: (value: number) => void,
): HTMLElement {
  const id = freshId("control");
  const label = words.pictures[name];
  const slider = make("input", {
    type: "range",
    min: low,
    max: high,
    step,
    value,
    "aria-label": `${label}, ${unit}`,
  });
  const box = make("input", {
    id,
    type: "text",
    inputmode: "decimal",
    autocomplete: "off",
    value: formatValue(value, "0.##"),
  });
  slider.addEventListener("input", () => {
    box.value = formatValue(Number(slider.value), "0.##");
    box.removeAttribute("aria-invalid");
    take(Number(slider.value));
  });
  box.addEventListener("change", () => {
    const typed = readAnswer(box.value)?.value;
    const allowed = typed !== undefined && typed >= low && typed <= high;
    const whole = Number.isInteger(step) && Number.isInteger(low);
    if (!allowed || (whole && step === 1 && !Number.isInteger(typed))) {
      box.setAttribute("aria-invalid", "true");
      return;
    }
    box.removeAttribute("aria-invalid");
    slider.value = String(typed);
    take(typed);
  });
  return make(
    "div",
    { class: "control" },
    make("label", { for: id }, label),
    make("span", { class: "control-box" }, box, make("span", { class: "unit" }, unit)),
    slider,
  );
}

/** A guess is kept beside the picture; nothing judges it but the eye. */
export function guessView(
  lesson: LessonWords,
  words: WorkshopWords,
  guesses: Map<string, string>,
): HTMLElement {
  const id = freshId("guess");
  const input = make("input", {
    id,
    type: "text",
    autocomplete: "off",
    value: guesses.get(lesson.id) ?? "",
  });
  input.addEventListener("input", () => guesses.set(lesson.id, input.value));
  return make(
    "div",
    { class: "guess" },
    make("label", { for: id }, make("strong", {}, `${words.page.guessFirst}: `), lesson.guess),
    input,
  );
}

export function handText(lesson: LessonWords, system: UnitSystem): string {
  return inSystem(lesson.hand, system);
}
