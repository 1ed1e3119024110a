import { freshId, make } from "../screen/dom";
import type { Argument, FunctionHost } from "../screen/host";
import { formatValue } from "../screen/number-format";
import { callText, type Exercise } from "../sheets/books/workshop/exercises";
import type { UnitSystem } from "../sheets/kit/definition";
import { judge } from "./answer";
import { exerciseText, unitText } from "./said";
import type { WorkshopWords } from "../sheets/books/workshop/words/shape";

/** What this browser tab remembers: the answers typed, which were right, which were shown. */
export interface Score {
  readonly typed: Map<string, string>;
  readonly right: Set<string>;
  readonly shown: Set<string>;
}

export function rightAnswer(exercise: Exercise, host: FunctionHost): number {
  const { name, arguments: cells, pick } = exercise.call;
  const asCells = cells.map((cell): Argument => {
    if (cell === "") return null;
    return typeof cell === "object" ? [[...cell]] : cell;
  });
  const outcome = host.call(name.replace(".", "_"), ...asCells);
  if (outcome.error !== undefined) throw new Error(outcome.error.message);
  const value =
    pick === undefined ? outcome.value : (outcome.value as number[][])[pick[0] - 1][pick[1] - 1];
  return Number(value);
}

/** Question, box and verdict in one block; two hints, then the answer for who asks for it. */
export function exerciseView(
  exercise: Exercise,
  number: number,
  system: UnitSystem,
  host: FunctionHost,
  score: Score,
  words: WorkshopWords,
  changed: () => void,
): HTMLElement {
  const { page, exercises } = words;
  const { ask, hint, second, shown } = exercises[exercise.id];
  const key = `${exercise.id} ${system}`;
  const text = (said: typeof ask) => exerciseText(said, exercise, system);
  const id = freshId("answer");
  const input = make("input", {
    id,
    type: "text",
    inputmode: "text",
    autocomplete: "off",
    autocapitalize: "off",
    spellcheck: "false",
    "aria-describedby": `${id}-verdict`,
    value: score.typed.get(key) ?? "",
  });
  const verdict = make("p", { class: "verdict", id: `${id}-verdict`, "aria-live": "polite" });
  const help = make("p", { class: "help", "aria-live": "polite" });
  const right = rightAnswer(exercise, host);
  const convert = (value: number, from: string, to: string) => {
    const outcome = host.call("UNIT_CONVERT", value, from, to);
    return outcome.error === undefined && typeof outcome.value === "number" ? outcome.value : NaN;
  };
  const say = () => {
    if (input.value.trim() === "") {
      verdict.textContent = "";
      verdict.className = "verdict";
      return;
    }
    const found = judge(input.value, exercise, right, convert);
    verdict.className = `verdict verdict-${found.replace(" ", "-")}`;
    verdict.textContent = page.verdicts[found].replace("{unit}", unitText(exercise) || page.noUnit);
    // An answer that was shown is no point.
    if (found === "right" && !score.shown.has(key)) score.right.add(key);
    if (found !== "right") score.right.delete(key);
    changed();
  };
  input.addEventListener("change", () => {
    score.typed.set(key, input.value);
    say();
  });
  let hints = 0;
  const more = make("button", { type: "button" }, page.hint);
  more.addEventListener("click", () => {
    hints += 1;
    help.textContent = text(hints === 1 ? hint : second);
    more.textContent = page.secondHint;
    if (hints > 1) more.disabled = true;
  });
  const show = make("button", { type: "button" }, page.showMe);
  show.addEventListener("click", () => {
    score.shown.add(key);
    help.replaceChildren(
      `${text(shown)} = ${formatValue(right, exercise.format)} ${unitText(exercise)}`.trim(),
      make("br"),
      make("code", {}, `=${callText(exercise)}`),
    );
    changed();
  });
  const check = make("button", { type: "submit", class: "check" }, page.check);
  const form = make(
    "form",
    { class: "exercise" },
    make("label", { for: id }, make("strong", {}, `${number}.`), ` ${text(ask)}`),
    make(
      "div",
      { class: "answer-row" },
      input,
      make("span", { class: "unit" }, exercise.unit),
      check,
    ),
    verdict,
    make("div", { class: "helps" }, more, show),
    help,
  );
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    score.typed.set(key, input.value);
    say();
  });
  say();
  return form;
}
