import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { cautions, type CautionSubject } from "../src/cautions";
import type { ArgumentHelp, FunctionHelp } from "../src/reference";
import { oneCall, toScreen } from "../src/formula-text/dialect";
import type { Language } from "../src/words/language";
import { referenceWords } from "../src/words/words";
import { type Edition, spanishEdition, writeEditionReference } from "./editions";
import { editionFolder, embedded, escaped, plainPage } from "./html";
import { dist, NAMESPACE } from "./settings";

/** One static page a function and a list of them, from the doc comments. */
export function writeReferencePages(functions: readonly FunctionHelp[]): void {
  writeEdition({ language: "en", functions, cautions });
  const spanish = spanishEdition(functions);
  writeEdition(spanish);
  writeEditionReference(spanish);
}

export function writeEdition(edition: Edition): void {
  const folder = join(dist, editionFolder(edition.language), "reference");
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, "index.html"), listPage(edition));
  for (const help of edition.functions)
    writeFileSync(join(folder, file(help)), functionPage(help, edition));
}

function fullName(help: FunctionHelp): string {
  return `${NAMESPACE}.${help.name}`;
}

function file(help: FunctionHelp): string {
  return help.page.slice(help.page.lastIndexOf("/") + 1);
}

function entry(help: FunctionHelp): string {
  return `<li data-id="${help.id}"><a href="${file(help)}"><code>${escaped(fullName(help))}</code><br>
${escaped(help.short)} <span class="quiet">${escaped(help.task)}</span></a></li>`;
}

export function listPage({ language, functions }: Edition): string {
  const words = referenceWords[language].list;
  const families = [...new Set(functions.map(({ family }) => family))];
  const body = `<h1>${words.heading(functions.length)}</h1>
<form id="search-form" hidden role="search">
<label for="search">${escaped(words.question)}</label>
<input id="search" type="search" autocomplete="off" placeholder="${escaped(words.placeholder)}">
<p id="found-count" class="quiet" role="status"></p>
</form>
<ul id="found" class="entries" hidden></ul>
<div id="families">
${families
  .map(
    (family) => `<h2 id="${family.toLowerCase()}">${escaped(family)}</h2>
<ul class="entries">
${functions
  .filter((help) => help.family === family)
  .map(entry)
  .join("\n")}
</ul>`,
  )
  .join("\n")}
</div>`;
  return plainPage({
    title: words.title,
    description: words.description,
    body,
    path: "reference/index.html",
    language,
    translated: true,
    script: true,
  });
}

export function functionPage(help: FunctionHelp, edition: Edition): string {
  const { language, functions } = edition;
  const words = referenceWords[language].page;
  // Titles of publications stay in their own language.
  const source =
    language === "en" ? escaped(help.source) : `<span lang="en">${escaped(help.source)}</span>`;
  const root = language === "en" ? "../" : "../../";
  const kin = functions.filter(({ family, id }) => family === help.family && id !== help.id);
  const signature = help.arguments
    .map(({ name, optional }) => (optional ? `[${name}]` : name))
    .join(", ");
  const body = `<p class="task">${escaped(help.task)}</p>
<h1>${escaped(fullName(help)).replace(/\./g, ".<wbr>")}</h1>
<p>${escaped(help.short)}</p>
<p class="formula">=${escaped(fullName(help))}(${escaped(signature)})</p>
${help.cautions.map((subject) => cautionBox(subject as CautionSubject, edition)).join("\n")}
<h2>${escaped(words.tryIt)}</h2>
<p id="formula" class="formula" data-function="${escaped(fullName(help))}">${escaped(toScreen(help.example, NAMESPACE))}</p>
<form id="try-it" class="fields">
${help.arguments.map((argument, place) => field(argument, exampleText(help, place), language)).join("\n")}
</form>
<div id="result" role="status"></div>
<p class="quiet">${escaped(help.returns)}</p>
<h2>${escaped(words.arguments)}</h2>
<div class="scrolled" tabindex="0" role="region" aria-label="${escaped(words.arguments)}"><table>
<tr><th scope="col">${escaped(words.argument)}</th><th scope="col">${escaped(words.whatItIs)}</th></tr>
${help.arguments.map((argument) => argumentRow(argument, language)).join("\n")}
</table></div>
<h2>${escaped(words.method)}</h2>
<p>${escaped(help.remarks)}</p>
<p><b>${escaped(words.source)}</b> ${source} <a href="${root}sources.html#${help.id}">${escaped(words.checked)}</a></p>
<h2>${escaped(words.errors)}</h2>
<p>${escaped(help.errors)}</p>
${
  kin.length === 0
    ? ""
    : `<h2>${escaped(words.family)}</h2>
<ul class="entries">
${kin.map(entry).join("\n")}
</ul>`
}
${embedded("function-help", help)}`;
  return plainPage({
    title: `${fullName(help)} — Fieldsum`,
    description: help.short,
    body,
    path: `reference/${file(help)}`,
    language,
    translated: true,
    script: true,
  });
}

/** The text of one argument in the example; "" where it is left out. */
function exampleText(help: FunctionHelp, place: number): string {
  return oneCall(help.example)?.arguments[place] ?? "";
}

function field(
  { name, choices, optional }: ArgumentHelp,
  text: string,
  language: Language,
): string {
  const words = referenceWords[language].page;
  const label = optional ? `${name} <span class="quiet">${escaped(words.optional)}</span>` : name;
  if (choices === undefined) {
    return `<label>${label}<input name="${escaped(name)}" value="${escaped(text)}" disabled autocomplete="off" spellcheck="false"></label>`;
  }
  const options = choices.map(({ value, help }) => {
    const literal = `"${value}"`;
    const chosen = literal.toLowerCase() === text.toLowerCase() ? " selected" : "";
    const said = help === "" || help === value ? value : `${value}: ${help}`;
    return `<option value="${escaped(literal)}"${chosen}>${escaped(said)}</option>`;
  });
  return `<label>${label}<select name="${escaped(name)}" disabled><option value="">${escaped(words.blank)}</option>${options.join("")}</select></label>`;
}

function argumentRow(
  { name, help, optional, range, choices = [] }: ArgumentHelp,
  language: Language,
): string {
  const words = referenceWords[language].page;
  const notes = [
    optional ? words.mayBeBlank : "",
    range ? words.takesRange : "",
    choices.length === 0 ? "" : words.oneOf(choices.map(({ value }) => `"${value}"`).join(", ")),
  ].filter((note) => note !== "");
  return `<tr><th scope="row"><code>${escaped(name)}</code></th><td>${escaped(help)} <span class="quiet">${escaped(notes.join(" "))}</span></td></tr>`;
}

function cautionBox(subject: CautionSubject, { language, cautions }: Edition): string {
  const { title, points } = cautions[subject];
  const { caution } = referenceWords[language].page;
  return `<section class="caution"><h2>${escaped(caution(title))}</h2>
<ul>${points.map((point) => `<li>${escaped(point)}</li>`).join("")}</ul></section>`;
}
