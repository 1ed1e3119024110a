import { quoted } from "../../formula-text/quoted";
import { cautions, type CautionSubject } from "../../cautions";
import { cellsOf } from "./address";
import { INPUT_FAULT, type Label, PageBuilder } from "./builder";
import type { Allowed, Page, ReadyMadeSheet, SheetCell, UnitSystem } from "./definition";
import { limitFormula, limitText } from "./limits";

/** One page of a workbook: its frame is put round it by `workbook`, `write` fills it. */
export interface PagePlan {
  /** Name of the worksheet. */
  readonly name: string;
  readonly title: Label;
  /** One line under the title. */
  readonly purpose?: string;
  /** Column widths in characters, from A on. */
  readonly widths: readonly number[];
  readonly landscape?: true;
  /** Printed on one page, however long. */
  readonly onePage?: true;
  /** Numbers behind another page's picture. */
  readonly working?: true;
  write(page: PageBuilder): void;
}

export interface WorkbookPlan<Field> {
  readonly id: string;
  readonly title: string;
  /** One sentence: what it answers, for whom. */
  readonly purpose: string;
  /** Where its work can hurt someone; those that its pages name are added. */
  readonly subjects: readonly CautionSubject[];
  /** The first questions of the people who open it, and the formulas that answer them. */
  readonly answers: readonly (readonly [question: string, answer: string])[];
  /** The field that its inputs start with. */
  field(system: UnitSystem): Field;
  pages(field: Field): readonly PagePlan[];
}

/** On the first page, before the questions of the people who open it. */
export const CHECKS_QUESTION = "Does the plan hold?";

/** Conditions that one formula may nest; hosts allow 64. */
const NESTED = 50;

/** Rows of a table of inputs: one that is longer would be printed too small to read. */
const TABLE_ROWS = 40;

/**
 * A ready-made sheet from its pages. Each gets its title, stays frozen below it; the first opens with
 * the line of checks and the answers; behind them come the page that lists checks and limits, and the
 * page that states the cautions in full.
 */
export function workbook<Field>(plan: WorkbookPlan<Field>): ReadyMadeSheet {
  const { id, title, purpose } = plan;
  return {
    id,
    title,
    purpose,
    pages: (system) => {
      const written = plan
        .pages(plan.field(system))
        .map((page, i) => writePage(page, system, i === 0 ? plan.answers : undefined));
      const named = written.flatMap((page) => (page.cautions ?? []) as CautionSubject[]);
      return [
        ...written,
        checksPage(written, system),
        cautionsPage(system, [...new Set([...plan.subjects, ...named])]),
      ];
    },
  };
}

function writePage(
  plan: PagePlan,
  system: UnitSystem,
  answers: WorkbookPlan<unknown>["answers"] | undefined,
): Page {
  const page = new PageBuilder(plan.name, system, plan.widths, plan.landscape === true);
  page.title(plan.title);
  if (answers !== undefined) {
    page.checksAnswer(CHECKS_QUESTION);
    for (const [question, answer] of answers) page.question(question, answer);
  }
  page.freeze();
  if (plan.purpose !== undefined) page.purpose(plan.purpose);
  page.gap();
  plan.write(page);
  if (plan.onePage === true) page.printOnOnePage();
  if (plan.working === true) page.printTitleAlone();
  return page.build();
}

interface Placed {
  readonly cell: SheetCell;
  /** As a formula on another page refers to it. */
  readonly reference: string;
  readonly page: string;
}

function placed(pages: readonly Page[], role: SheetCell["role"]): Placed[] {
  return pages.flatMap(({ name, cells }) =>
    cells
      .filter((cell) => cell.role === role)
      .map((cell) => ({
        cell,
        page: name,
        reference: cell.name ?? `'${name.replace(/'/g, "''")}'!${cell.at}`,
      })),
  );
}

/** What was compared with what, and what each input allows: one place for both. */
function checksPage(pages: readonly Page[], system: UnitSystem): Page {
  const checks = placed(pages, "check");
  const inputs = placed(pages, "input");
  const page = new PageBuilder("Checks", system, [54, 12, 28, 50]);
  page.title("Checks and limits");
  page.freeze();
  page.purpose(
    "Every check of this workbook in one list, and every input with what it allows. An input outside its limits is named first; until it is fixed nothing is judged and no money is shown.",
  );
  page.gap();
  page.heading("In short");
  const short = page.row;
  page.row += 2 + Math.ceil(inputs.length / NESTED);
  page.gap();

  let results = "";
  if (checks.length > 0) {
    page.heading("Checks");
    [, , results] = page.table("A", [
      { header: "Check", role: "label", rows: checks.map(({ cell }) => String(cell.label)) },
      { header: "Page", role: "text", rows: checks.map(({ page: name }) => `'${name}`) },
      {
        header: "Result",
        role: "mark",
        span: 2,
        rows: checks.map(({ reference }) => `=${reference}`),
      },
    ]);
    page.gap();
  }

  const faults: string[] = [];
  for (const { name } of pages) {
    const here = inputs.filter((input) => input.page === name);
    for (const [i, part] of inParts(here, TABLE_ROWS).entries()) {
      const from = i * TABLE_ROWS + 1;
      const which = here.length > TABLE_ROWS ? `, ${from} to ${from + part.length - 1}` : "";
      page.heading(`Inputs of the page ${name}${which}`);
      faults.push(...inputTable(page, part));
      page.gap();
    }
  }

  page.row = short;
  const summary = page.block("A", 1);
  summary.row += 2;
  const parts = inParts(faults, NESTED).map((chunk, i) => {
    const from = i * NESTED + 1;
    return summary.mark(`Inputs ${from} to ${from + chunk.length - 1}`, `=${firstNot(chunk)}`, 1);
  });
  summary.row = short;
  summary.sentence("All inputs", `=${firstNot(parts)}`, 1);
  page.nameRange(INPUT_FAULT, `B${short}`);
  summary.sentence(
    "All checks",
    `=${checkLine(checks, results === "" ? [] : cellsOf(results))}`,
    1,
  );
  page.nameRange("CheckLine", `B${short + 1}`);
  page.needsLines(short + 1, 3);
  return page.build();
}

/** Each input with what it allows; gives the addresses of the verdicts. */
function inputTable(page: PageBuilder, inputs: readonly Placed[]): string[] {
  const [, , verdicts] = page.table("A", [
    { header: "Input", role: "label", rows: inputs.map(({ cell }) => `'${labelOf(cell)}`) },
    {
      header: "Allowed",
      role: "text",
      span: 2,
      rows: inputs.map(({ cell }) => `'${limitText(limitsOf(cell))}`),
    },
    {
      header: "Result",
      role: "mark",
      rows: inputs.map(
        ({ cell, reference }) => `=${limitFormula(labelOf(cell), reference, limitsOf(cell))}`,
      ),
    },
  ]);
  return cellsOf(verdicts);
}

function inParts<T>(all: readonly T[], most: number): T[][] {
  return Array.from({ length: Math.ceil(all.length / most) }, (_, i) =>
    all.slice(i * most, (i + 1) * most),
  );
}

function labelOf({ label, at }: SheetCell): string {
  if (label === undefined) throw new Error(`the input at ${at} has no label`);
  return label;
}

function limitsOf({ allowed, at }: SheetCell): Allowed {
  if (allowed === undefined) throw new Error(`the input at ${at} has no limits`);
  return allowed;
}

/** The first of these cells that is not "OK". */
function firstNot(cells: readonly string[]): string {
  return cells.reduceRight((rest, at) => `IF(${at}<>"OK", ${at}, ${rest})`, '"OK"');
}

/**
 * How many checks pass, which fail, and the first failed one's sentence. A check that only waits for
 * another is not named: it would stand before the cause.
 */
function checkLine(checks: readonly Placed[], results: readonly string[]): string {
  if (checks.length === 0)
    return `IF(${INPUT_FAULT}="OK", "This workbook judges no plan.", ${INPUT_FAULT})`;
  const passed = results.map((at) => `N(${at}="OK")`).join("+");
  const failed = results
    .map(
      (at, i) =>
        `IF(OR(${at}="OK", MID(${at}, 1, 10)="Not judged"), "", "; ${quoted(String(checks[i].cell.label))}")`,
    )
    .join("&");
  const all = results.length;
  return (
    `IF(${INPUT_FAULT}<>"OK", "Fix first: "&${INPUT_FAULT}, ` +
    `IF(${passed}=${all}, "All ${all} checks pass.", ` +
    `${passed}&" of ${all} checks pass. Failed: "&MID(${failed}, 3, 999)&". "&${firstNot(results)}))`
  );
}

/** The page that states the cautions in full. */
function cautionsPage(system: UnitSystem, subjects: readonly CautionSubject[]): Page {
  const page = new PageBuilder("Cautions", system, [25, 25, 25, 25]);
  page.title("Safety: read before field work");
  page.freeze();
  page.text(
    "These remind; they do not replace local codes, the instructions of each piece of equipment, training, or the work of licensed people.",
  );
  page.gap();
  for (const subject of subjects) {
    page.heading(cautions[subject].title);
    for (const point of cautions[subject].points) {
      page.paragraph(1, page.row, 4, `• ${point}`, "caution");
      page.row++;
    }
    page.gap();
  }
  return { ...page.build(), cautions: subjects };
}
