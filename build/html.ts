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

export interface PlainPage {
  readonly title: string;
  readonly description: string;
  readonly body: string;
  /** The way from the page to the built folder's root: "" or "../". */
  readonly up: "" | "../";
  readonly script: boolean;
}

/** A page of text: the reference, the sources, support. */
export function plainPage({ title, description, body, up, script }: PlainPage): string {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escaped(title)}</title>
<meta name="description" content="${escaped(description)}">
<link rel="icon" href="${up}icons/icon-32.png">
<link rel="stylesheet" href="${up}reference/page.css">
${script ? `<script defer src="${up}reference/page.js"></script>\n` : ""}</head>
<body>
<nav aria-label="Pages">
<a href="${up}index.html">Trial sheets</a>
<a href="${up}reference/index.html">Functions</a>
<a href="${up}sources.html">Sources</a>
<a href="${up}support.html">Support and privacy</a>
</nav>
<main>
${body}
</main>
</body>
</html>
`;
}
