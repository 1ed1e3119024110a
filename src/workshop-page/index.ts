import "../screen/palette.css";
import "../screen/page.css";
import "../screen/plot.css";
import "./styles.css";
import { cautions } from "../cautions";
import { languageChoice } from "../screen/language-choice";
import { sayPage } from "../screen/say-page";
import type { WorkshopWords } from "../sheets/books/workshop/words/shape";
import { screenSaid, speak, workbookSaid } from "../words/spoken";
import { make, part } from "../screen/dom";
import { FunctionHost } from "../screen/host";
import { formatValue } from "../screen/number-format";
import type { UnitSystem } from "../sheets/kit/definition";
import { callText, exercises, filled, inSystem } from "../sheets/books/workshop/exercises";
import { en } from "../sheets/books/workshop/words/en";
import { exerciseView, rightAnswer, type Score } from "./exercise-view";
import { guessView, handText, pictureView, sceneOf } from "./lesson-view";

/** In the page's language, before anything is drawn. */
let words: WorkshopWords = en;
let said = words.page;

/** Where the address leads: "#lesson-3", "#slide-3", "#trainer", "#handout", "#key". */
class WorkshopPage {
  private system: UnitSystem;
  private readonly guesses = new Map<string, string>();
  private readonly score: Score = { typed: new Map(), right: new Set(), shown: new Set() };

  constructor(private readonly host: FunctionHost) {
    // A link may carry the units: "workshop.html?units=SI#lesson-3".
    this.system = new URLSearchParams(location.search).get("units") === "SI" ? "SI" : "US";
  }

  start(): void {
    window.addEventListener("hashchange", () => {
      this.show();
      window.scrollTo(0, 0);
    });
    document.addEventListener("keydown", (event) => this.key(event));
    this.show();
  }

  private get place(): { kind: string; number: number } {
    const found = /^#(lesson|slide)-(\d+)$/.exec(location.hash);
    if (found !== null) {
      const number = Math.min(words.lessons.length, Math.max(1, Number(found[2])));
      return { kind: found[1], number };
    }
    const kind = location.hash.slice(1);
    return { kind: ["trainer", "handout", "key"].includes(kind) ? kind : "start", number: 0 };
  }

  private show(): void {
    const { kind, number } = this.place;
    document.documentElement.classList.toggle("large", kind === "slide");
    document.documentElement.dataset.kind = kind;
    this.navigation(kind);
    const views: Readonly<Record<string, () => HTMLElement[]>> = {
      lesson: () => this.lesson(number),
      slide: () => this.slide(number),
      trainer: () => this.trainer(),
      handout: () => this.handout(false),
      key: () => this.handout(true),
      start: () => this.overview(),
    };
    part("main").replaceChildren(...views[kind]());
    const title = number > 0 ? `${said.lesson} ${number}` : (said[kind as "trainer"] ?? "");
    document.title = `${screenSaid("Fieldsum: workshop")}${title === "" ? "" : ` › ${title}`}`;
    document.documentElement.dataset.shown = location.hash;
  }

  private navigation(current: string): void {
    const link = (hash: string, text: string, isHere: boolean) =>
      make("a", { href: `#${hash}`, "aria-current": isHere ? "page" : undefined }, text);
    part("parts").replaceChildren(
      link("start", said.lessons, current === "start" || current === "lesson"),
      link("trainer", said.trainer, current === "trainer"),
      link("handout", said.handout, current === "handout" || current === "key"),
      link("slide-1", said.slides, current === "slide"),
    );
  }

  private systems(): HTMLElement {
    return make(
      "fieldset",
      { class: "systems" },
      make("legend", {}, said.units),
      ...(["US", "SI"] as const).map((system) => {
        const radio = make("input", {
          type: "radio",
          name: "system",
          value: system,
          checked: system === this.system,
        });
        radio.addEventListener("change", () => {
          this.system = system;
          this.show();
        });
        return make("label", {}, radio, ` ${system}`);
      }),
    );
  }

  private overview(): HTMLElement[] {
    return [
      make("h1", {}, "Workshop"),
      make("p", {}, said.start),
      this.systems(),
      make(
        "ol",
        { class: "contents" },
        ...words.lessons.map(({ title, question }, i) =>
          make(
            "li",
            {},
            make("a", { href: `#lesson-${i + 1}` }, title),
            make("p", { class: "quiet" }, question),
          ),
        ),
      ),
      this.scoreLine(),
      make("p", { class: "quiet" }, said.workbook),
    ];
  }

  private scoreLine(): HTMLElement {
    const line = make("p", { class: "score", role: "status" });
    const all = exercises(this.system);
    const right = all.filter(({ id }) => this.score.right.has(`${id} ${this.system}`)).length;
    line.textContent = `${said.score
      .replace("{right}", String(right))
      .replace("{all}", String(all.length))}. ${said.scoreNote}`;
    return line;
  }

  private lesson(number: number): HTMLElement[] {
    const lesson = words.lessons[number - 1];
    const scene = sceneOf(this.host, this.system, words);
    let score = this.scoreLine();
    const refresh = () => {
      const next = this.scoreLine();
      score.replaceWith(next);
      score = next;
    };
    const all = exercises(this.system);
    const mine = all.filter((exercise) => exercise.lesson === lesson.id);
    const tryThese = mine.map((exercise) =>
      exerciseView(
        exercise,
        all.indexOf(exercise) + 1,
        this.system,
        this.host,
        this.score,
        words,
        refresh,
      ),
    );
    return [
      make(
        "div",
        { class: "lesson-top" },
        make("p", { class: "quiet" }, `${said.lesson} ${number} / ${words.lessons.length}`),
        make("a", { class: "button", href: `#slide-${number}` }, said.large),
      ),
      make("h1", {}, lesson.title),
      make("p", { class: "question" }, lesson.question),
      this.systems(),
      guessView(lesson, words, this.guesses),
      make("h2", {}, said.look),
      pictureView(lesson, scene, words),
      make("h2", {}, said.byHand),
      make("p", {}, handText(lesson, this.system)),
      make(
        "p",
        {},
        `${said.byFunction}: `,
        ...mine.flatMap((exercise) => [make("code", {}, `=${callText(exercise)}`), " "]),
      ),
      make("h2", {}, said.exercises),
      ...tryThese,
      score,
      make("h2", {}, said.inTheField),
      make("p", {}, lesson.field),
      ...(lesson.id === "pump" || lesson.id === "end" ? [this.caution()] : []),
      make("p", { class: "quiet" }, `${said.source}: ${lesson.source}`),
      this.turning("lesson", number),
    ];
  }

  private caution(): HTMLElement {
    const title = workbookSaid(cautions.pressure.title);
    const points = cautions.pressure.points.map(workbookSaid);
    return make("p", { class: "caution" }, make("strong", {}, `${title}: `), points[0]);
  }

  private turning(kind: "lesson" | "slide", number: number): HTMLElement {
    const link = (to: number, text: string) =>
      to < 1 || to > words.lessons.length
        ? make("span")
        : make("a", { class: "button", href: `#${kind}-${to}` }, text);
    return make(
      "nav",
      { class: "turning", "aria-label": said.lessons },
      link(number - 1, `← ${said.previous}`),
      ...(kind === "slide"
        ? [make("a", { class: "button", href: `#lesson-${number}` }, said.leave)]
        : []),
      link(number + 1, `${said.next} →`),
    );
  }

  private slide(number: number): HTMLElement[] {
    const lesson = words.lessons[number - 1];
    const scene = sceneOf(this.host, this.system, words);
    const picture = pictureView(lesson, scene, words);
    // Beside the question there is room for the numbers, so that all stands on one screen.
    const numbers = [...picture.querySelectorAll(".numbers")];
    return [
      make("h1", {}, `${number}  ${lesson.title}`),
      make(
        "div",
        { class: "slide-parts" },
        make(
          "div",
          {},
          make("p", { class: "question" }, lesson.question),
          make("p", {}, make("strong", {}, `${said.guessFirst}: `), lesson.guess),
          make("details", {}, make("summary", {}, said.inTheField), make("p", {}, lesson.field)),
          ...numbers,
        ),
        picture,
      ),
      this.turning("slide", number),
    ];
  }

  /** Arrow keys turn the slides, save in a field that uses them itself. */
  private key(event: KeyboardEvent): void {
    const { kind, number } = this.place;
    if (kind !== "slide" || event.target instanceof HTMLInputElement) return;
    if (event.key === "ArrowRight" || event.key === "PageDown") this.turn(number + 1);
    if (event.key === "ArrowLeft" || event.key === "PageUp") this.turn(number - 1);
    if (event.key === "Escape") location.hash = `#lesson-${number}`;
  }

  private turn(number: number): void {
    if (number >= 1 && number <= words.lessons.length) location.hash = `#slide-${number}`;
  }

  private link(number: number): string {
    const units = this.system === "SI" ? "?units=SI" : "";
    return `${location.origin}${location.pathname}${units}#lesson-${number}`;
  }

  private trainer(): HTMLElement[] {
    const all = exercises(this.system);
    const minutes = words.lessons.reduce((sum, { trainer }) => sum + trainer.minutes, 0);
    return [
      make("h1", {}, said.trainer),
      make("p", {}, said.trainerIntro),
      this.systems(),
      this.printButton(),
      ...words.lessons.map(({ title, trainer }, i) =>
        make(
          "section",
          { class: "trained" },
          make("h2", {}, `${i + 1}  ${title} (${trainer.minutes} ${said.minutes})`),
          make("p", {}, make("strong", {}, `${said.ask}: `), trainer.ask),
          make("p", {}, make("strong", {}, `${said.say}: `), trainer.say),
          make("p", {}, make("strong", {}, `${said.answer}: `), trainer.answer),
          make(
            "p",
            { class: "quiet" },
            `${said.link}: `,
            make("a", { href: this.link(i + 1) }, this.link(i + 1)),
          ),
        ),
      ),
      make("p", {}, make("strong", {}, `${minutes} ${said.minutes}`)),
      make("h2", {}, said.answers),
      make(
        "ol",
        { class: "answers" },
        ...all.map((exercise) =>
          make(
            "li",
            {},
            `${filled(inSystem(words.exercises[exercise.id].ask, this.system), exercise)} `,
            make(
              "strong",
              {},
              `${formatValue(rightAnswer(exercise, this.host), exercise.format)} ${exercise.unit}`.trim(),
            ),
          ),
        ),
      ),
    ];
  }

  private printButton(): HTMLElement {
    const button = make("button", { type: "button", class: "on-screen" }, said.print);
    button.addEventListener("click", () => window.print());
    return button;
  }

  private handout(withKey: boolean): HTMLElement[] {
    const sentence = (text: string) =>
      text.split(/[[\]]/).map((piece, i) => {
        if (i % 2 === 0) return piece;
        return withKey
          ? make("strong", { class: "key" }, piece)
          : make("span", { class: "blank" }, make("span", { class: "out-of-sight" }, "…"));
      });
    const chosen = exercises(this.system).filter(
      (exercise, i, all) => all.findIndex(({ lesson }) => lesson === exercise.lesson) === i,
    );
    return [
      make("h1", {}, said.handoutTitle),
      make(
        "p",
        { class: "on-screen" },
        make("a", { href: withKey ? "#handout" : "#key" }, withKey ? said.handout : said.key),
        " ",
        this.printButton(),
      ),
      make("div", { class: "on-screen" }, this.systems()),
      make("p", {}, `${said.name}: `, make("span", { class: "blank blank-long" })),
      make(
        "ol",
        { class: "handout" },
        ...words.lessons.map((lesson) => {
          const exercise = chosen.find((other) => other.lesson === lesson.id);
          return make(
            "li",
            {},
            make("p", {}, ...sentence(lesson.handout)),
            ...(exercise === undefined
              ? []
              : [
                  make(
                    "p",
                    {},
                    `${filled(inSystem(words.exercises[exercise.id].ask, this.system), exercise)} `,
                    withKey
                      ? make(
                          "strong",
                          { class: "key" },
                          formatValue(rightAnswer(exercise, this.host), exercise.format),
                        )
                      : make("span", { class: "blank" }),
                    ` ${exercise.unit}`,
                  ),
                ]),
          );
        }),
      ),
    ];
  }
}

async function main(): Promise<void> {
  const language = await speak();
  if (language === "es") words = (await import("../sheets/books/workshop/words/es")).es;
  said = words.page;
  sayPage(document.body);
  part("language").replaceChildren(languageChoice("Language", language));
  part("notice").hidden = language === "en";
  const host = await FunctionHost.load(new URL("functions.js", document.baseURI));
  new WorkshopPage(host).start();
}

main().catch((error: unknown) => {
  console.error(error);
  part("main").textContent =
    `${said.unreachable} ${error instanceof Error ? error.message : String(error)}`;
});
