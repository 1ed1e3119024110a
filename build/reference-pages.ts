import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { cautions, type CautionSubject } from "../src/cautions";
import type { ArgumentHelp, FunctionHelp } from "../src/reference";
import { oneCall, toScreen } from "../src/formula-text/dialect";
import { embedded, escaped, plainPage } from "./html";
import { dist, NAMESPACE } from "./settings";

/** One static page a function and a list of them, from the doc comments. */
export function writeReferencePages(functions: readonly FunctionHelp[]): void {
  mkdirSync(join(dist, "reference"), { recursive: true });
  writeFileSync(join(dist, "reference", "index.html"), listPage(functions));
  for (const help of functions) writeFileSync(join(dist, help.page), functionPage(help, functions));
}

function fullName(help: FunctionHelp): string {
  return `${NAMESPACE}.${help.name}`;
}

function file(help: FunctionHelp): string {
  return help.page.slice("reference/".length);
}

function entry(help: FunctionHelp): string {
  return `<li data-id="${help.id}"><a href="${file(help)}"><code>${escaped(fullName(help))}</code><br>
${escaped(help.short)} <span class="quiet">${escaped(help.task)}</span></a></li>`;
}

export function listPage(functions: readonly FunctionHelp[]): string {
  const families = [...new Set(functions.map(({ family }) => family))];
  const body = `<h1>${functions.length} functions</h1>
<form id="search-form" hidden role="search">
<label for="search">What do you want to know?</label>
<input id="search" type="search" autocomplete="off" placeholder="how long do I run a set?">
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
    title: "Fieldsum: functions",
    description: "Every cell function, by family and by what it answers.",
    body,
    up: "../",
    script: true,
  });
}

export function functionPage(help: FunctionHelp, functions: readonly FunctionHelp[]): string {
  const kin = functions.filter(({ family, id }) => family === help.family && id !== help.id);
  const signature = help.arguments
    .map(({ name, optional }) => (optional ? `[${name}]` : name))
    .join(", ");
  const body = `<p class="task">${escaped(help.task)}</p>
<h1>${escaped(fullName(help)).replace(/\./g, ".<wbr>")}</h1>
<p>${escaped(help.short)}</p>
<p class="formula">=${escaped(fullName(help))}(${escaped(signature)})</p>
${help.cautions.map((subject) => cautionBox(subject as CautionSubject)).join("\n")}
<h2>Try it</h2>
<p id="formula" class="formula" data-function="${escaped(fullName(help))}">${escaped(toScreen(help.example, NAMESPACE))}</p>
<form id="try-it" class="fields">
${help.arguments.map((argument, place) => field(argument, exampleText(help, place))).join("\n")}
</form>
<div id="result" role="status"></div>
<p class="quiet">${escaped(help.returns)}</p>
<h2>Arguments</h2>
<div class="scroll" tabindex="0" role="region" aria-label="Arguments"><table>
<tr><th scope="col">argument</th><th scope="col">what it is</th></tr>
${help.arguments.map(argumentRow).join("\n")}
</table></div>
<h2>Method and limits</h2>
<p>${escaped(help.remarks)}</p>
<p><b>Source:</b> ${escaped(help.source)} <a href="../sources.html#${help.id}">How it is checked</a></p>
<h2>Errors</h2>
<p>${escaped(help.errors)}</p>
${
  kin.length === 0
    ? ""
    : `<h2>Of the same family</h2>
<ul class="entries">
${kin.map(entry).join("\n")}
</ul>`
}
${embedded("function-help", help)}`;
  return plainPage({
    title: `${fullName(help)} — Fieldsum`,
    description: help.short,
    body,
    up: "../",
    script: true,
  });
}

/** The text of one argument in the example; "" where it is left out. */
function exampleText(help: FunctionHelp, place: number): string {
  return oneCall(help.example)?.arguments[place] ?? "";
}

function field({ name, choices, optional }: ArgumentHelp, text: string): string {
  const label = optional ? `${name} <span class="quiet">(optional)</span>` : name;
  if (choices === undefined) {
    return `<label>${label}<input name="${escaped(name)}" value="${escaped(text)}" disabled autocomplete="off" spellcheck="false"></label>`;
  }
  const options = choices.map(({ value, help }) => {
    const literal = `"${value}"`;
    const chosen = literal.toLowerCase() === text.toLowerCase() ? " selected" : "";
    const said = help === "" || help === value ? value : `${value}: ${help}`;
    return `<option value="${escaped(literal)}"${chosen}>${escaped(said)}</option>`;
  });
  return `<label>${label}<select name="${escaped(name)}" disabled><option value="">blank</option>${options.join("")}</select></label>`;
}

function argumentRow({ name, help, optional, range, choices = [] }: ArgumentHelp): string {
  const notes = [
    optional ? "May be blank." : "",
    range ? "Takes a range." : "",
    choices.length === 0 ? "" : `One of ${choices.map(({ value }) => `"${value}"`).join(", ")}.`,
  ].filter((note) => note !== "");
  return `<tr><th scope="row"><code>${escaped(name)}</code></th><td>${escaped(help)} <span class="quiet">${escaped(notes.join(" "))}</span></td></tr>`;
}

function cautionBox(subject: CautionSubject): string {
  const { title, points } = cautions[subject];
  return `<section class="caution"><h2>Caution: ${escaped(title)}</h2>
<ul>${points.map((point) => `<li>${escaped(point)}</li>`).join("")}</ul></section>`;
}
