import type { Language } from "../src/words/language";
import { OWN_NAMES } from "../src/words/language";
import { referenceWords } from "../src/words/words";

/** Text inside an element or a quoted attribute. */
export function escaped(text: string): string {
  return text
    .replace(/&/g, "&amp;")
    .replace(/</g, "&lt;")
    .replace(/>/g, "&gt;")
    .replace(/"/g, "&quot;");
}

/** Data for a script of the page; "<" cannot end the element early. */
export function embedded(id: string, value: unknown): string {
  return `<script type="application/json" id="${id}">${JSON.stringify(value).replace(/</g, "\\u003c")}</script>`;
}

/** The folder that an edition stands in, from the built folder's root. */
export function editionFolder(language: Language): string {
  return language === "en" ? "" : `${language}/`;
}

export interface PlainPage {
  readonly title: string;
  readonly description: string;
  readonly body: string;
  /** The page's address in its edition: "reference/index.html". */
  readonly path: string;
  readonly language?: Language;
  /** Whether the page stands in the other languages too. */
  readonly translated?: boolean;
  readonly script: boolean;
}

/** A page of text: the reference, the sources, support. */
export function plainPage(page: PlainPage): string {
  const { title, description, body, path, language = "en", translated = false, script } = page;
  const { nav, notice } = referenceWords[language];
  const folder = editionFolder(language);
  const up = "../".repeat(`${folder}${path}`.split("/").length - 1);
  const hrefs = (other: Language) => `${up}${editionFolder(other)}${path}`;
  const others = (Object.keys(OWN_NAMES) as Language[]).filter((other) => other !== language);
  const choices = others.map(
    (other) =>
      `<a href="${hrefs(other)}" hreflang="${other}" lang="${other}" data-language="${other}">${OWN_NAMES[other]}</a>\n`,
  );
  return `<!doctype html>
<html lang="${language}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escaped(title)}</title>
<meta name="description" content="${escaped(description)}">
<link rel="icon" href="${up}icons/icon-32.png">
<link rel="stylesheet" href="${up}reference/page.css">
${script ? `<script defer src="${up}reference/page.js"></script>\n` : ""}</head>
<body>
<nav aria-label="${escaped(nav.label)}">
<a href="${up}index.html">${escaped(nav.trial)}</a>
<a href="${up}${folder}reference/index.html">${escaped(nav.functions)}</a>
<a href="${up}sources.html"${language === "en" ? "" : ' hreflang="en"'}>${escaped(nav.sources)}</a>
<a href="${up}${folder}support.html">${escaped(nav.support)}</a>
${translated ? choices.join("") : ""}</nav>
<main>
${notice === "" ? "" : `<p class="notice">${escaped(notice)}</p>\n`}${body}
</main>
</body>
</html>
`;
}
