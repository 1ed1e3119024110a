import type { Page } from "playwright-core";

/** Words that English sentences are full of and Spanish has not: one of them gives a sentence away. */
const ENGLISH = new RegExp(
  `(?<![\\p{L}\\d_.#-])(${[
    ...["the", "an", "and", "or", "of", "to", "from", "with", "for", "by", "on", "at", "into"],
    ...[
      "is",
      "are",
      "was",
      "were",
      "be",
      "been",
      "has",
      "have",
      "does",
      "do",
      "must",
      "can",
      "will",
    ],
    ...[
      "not",
      "but",
      "if",
      "than",
      "that",
      "this",
      "these",
      "there",
      "here",
      "where",
      "when",
      "which",
    ],
    ...["what", "who", "how", "why", "it", "its", "they", "them", "their", "your", "you", "each"],
    ...[
      "all",
      "any",
      "more",
      "less",
      "most",
      "least",
      "between",
      "under",
      "over",
      "above",
      "below",
    ],
    ...[
      "type",
      "choose",
      "open",
      "save",
      "copy",
      "close",
      "print",
      "show",
      "search",
      "insert",
      "name",
    ],
    ...["line", "lines", "sprinkler", "sprinklers", "flow", "pressure", "depth", "water", "field"],
    ...["sheet", "page", "row", "column", "cell", "cells", "table", "value", "values", "number"],
    ...[
      "tubing",
      "pipe",
      "feeder",
      "pump",
      "inlet",
      "soil",
      "crop",
      "wind",
      "hours",
      "days",
      "units",
    ],
    ...[
      "spacing",
      "move",
      "stand",
      "flag",
      "device",
      "valve",
      "price",
      "cost",
      "highest",
      "lowest",
    ],
    ...["as", "set", "rate", "length", "width", "size", "height", "loss", "limit"],
  ].join("|")})(?![\\p{L}\\d_]|\\.[A-Z])`,
  "iu",
);

/** Whether a text that should be Spanish has English words in it. */
export const hasEnglish = (text: string): boolean => ENGLISH.test(text);

/** What stands on a page for people to read or to have read out, without formulas and choices of functions. */
function textsOf(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const NOT_SAID = "code, script, style, noscript, template, #grid, [lang=en]";
    const found = new Set<string>();
    const isSeen = (element: Element) =>
      element.checkVisibility({ checkVisibilityCSS: true }) && element.closest(NOT_SAID) === null;
    const walk = (node: Node) => {
      for (const child of node.childNodes) {
        if (child instanceof Text) {
          const text = child.data.replace(/\s+/g, " ").trim();
          if (text !== "") found.add(text);
        } else if (child instanceof Element) visit(child);
      }
    };
    const visit = (element: Element) => {
      if (element instanceof HTMLOptionElement) {
        // A choice that a function takes stands for itself.
        if (element.value !== element.text) found.add(element.text.trim());
        return;
      }
      if (!(element instanceof HTMLOptGroupElement) && !isSeen(element)) return;
      for (const name of [
        "aria-label",
        "aria-description",
        "alt",
        "label",
        "placeholder",
        "title",
      ]) {
        const said = element.getAttribute(name);
        if (said !== null && said !== "") found.add(said);
      }
      if (element.shadowRoot !== null) walk(element.shadowRoot);
      walk(element);
    };
    visit(document.body);
    found.add(document.title);
    return [...found];
  });
}

/** Texts of a Spanish page that have English words in them, save those that stay as they are. */
export async function englishLeft(page: Page, stays: readonly string[] = []): Promise<string[]> {
  // A formula stands as it is typed; capitals are names of families.
  const texts = (await textsOf(page)).filter((text) => !text.startsWith("=") && /[a-z]/.test(text));
  return texts.filter((text) => hasEnglish(stays.reduce(without, text)));
}

function without(text: string, one: string): string {
  const plain = one.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
  return text.replace(new RegExp(`(?<!\\p{L})${plain}(?!\\p{L})`, "gu"), " ");
}
