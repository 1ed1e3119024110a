import { make } from "../../screen/dom";

export interface Question<Choice extends string> {
  readonly title: string;
  readonly text: readonly string[];
  /** The answers, the usual one first. Leaving the question is none of them. */
  readonly choices: readonly { readonly choice: Choice; readonly label: string }[];
  /** What leaving it is called. */
  readonly otherwise: string;
  /** Whether Enter leaves it, where the answer cannot be taken back. */
  readonly isCareful?: true;
  /** What else it shows, below the text. */
  readonly more?: readonly HTMLElement[];
  /** A text to write, with what stands in it at first. */
  readonly line?: { readonly label: string; readonly value: string };
}

export interface Answer<Choice extends string> {
  readonly choice: Choice;
  readonly line: string;
}

/** Asks, and resolves with the answer; undefined where the question was left. */
export function ask<Choice extends string>(
  question: Question<Choice>,
): Promise<Answer<Choice> | undefined> {
  const line = make("input", {
    type: "text",
    id: "ask-line",
    autocomplete: "off",
    value: question.line?.value ?? "",
  });
  const buttons = question.choices.map(({ choice, label }, index) =>
    make(
      "button",
      { type: "submit", value: choice, class: index === 0 ? "usual" : undefined },
      label,
    ),
  );
  const leave = make("button", { type: "button" }, question.otherwise);
  if (question.isCareful === true) leave.autofocus = true;
  const form = make("form");
  const dialog = make("dialog", { class: "ask", "aria-labelledby": "ask-title" }, form);
  form.append(
    ...[
      make("h2", { id: "ask-title" }, question.title),
      ...question.text.map((text) => make("p", {}, text)),
      ...(question.more ?? []),
      ...(question.line === undefined
        ? []
        : [make("label", { for: "ask-line" }, question.line.label), line]),
      make("div", { class: "ask-buttons" }, ...buttons, leave),
    ],
  );
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    dialog.close((event.submitter as HTMLButtonElement | null)?.value ?? "");
  });
  leave.addEventListener("click", () => dialog.close(""));
  const before = document.activeElement;
  document.body.append(dialog);
  dialog.showModal();
  if (question.line !== undefined) line.select();
  return new Promise((resolve) =>
    dialog.addEventListener("close", () => {
      dialog.remove();
      if (before instanceof HTMLElement) before.focus();
      const chosen = question.choices.find(({ choice }) => choice === dialog.returnValue);
      resolve(chosen === undefined ? undefined : { choice: chosen.choice, line: line.value });
    }),
  );
}

/** Says something that needs no answer. */
export async function say(title: string, ...text: string[]): Promise<void> {
  await ask({ title, text, choices: [], otherwise: "Close" });
}
