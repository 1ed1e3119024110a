import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { LANGUAGES, type Language } from "../src/words/language";
import { supportWords } from "../src/words/words";
import { editionFolder, escaped, plainPage } from "./html";
import { HOST_RUNTIME } from "./headers";
import { dist, SUPPORT_CONTACT, VERSION } from "./settings";

/** The page that a host opens for the functions: nothing to see, two scripts to run. */
export function functionsPage(): string {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<title>Fieldsum functions</title>
<script src="${HOST_RUNTIME}"></script>
<script src="functions.js"></script>
</head>
<body></body>
</html>
`;
}

/** Where this build's publisher wants to be asked; without a setting, only what always holds. */
export function contactLine(contact: string, questions: string): string {
  if (contact === "") return "";
  const isMail = /^[^\s@/]+@[^\s@/]+$/.test(contact);
  if (!isMail && !contact.startsWith("https://"))
    throw new Error(`SUPPORT_CONTACT is neither a mail address nor an https address: ${contact}`);
  const address = escaped(isMail ? `mailto:${contact}` : contact);
  return `<p>${escaped(questions)} <a href="${address}">${escaped(contact)}</a>.</p>\n`;
}

export function writePlainPages(): void {
  writeFileSync(join(dist, "functions.html"), functionsPage());
  for (const language of LANGUAGES) {
    const folder = join(dist, editionFolder(language));
    mkdirSync(folder, { recursive: true });
    writeFileSync(join(folder, "support.html"), supportPage(language));
  }
}

function supportPage(language: Language): string {
  const { title, description, questions, body } = supportWords[language];
  return plainPage({
    title,
    description,
    body: body(contactLine(SUPPORT_CONTACT, questions), VERSION),
    path: "support.html",
    language,
    translated: true,
    script: true,
  });
}
