import { writeAddress } from "../../sheets/kit/address";
import type { Page } from "../../sheets/kit/definition";
import type { Callables } from "../../reference";
import type { CellValue, FunctionHost } from "../../screen/host";
import { FirstValues } from "../first-values";
import type { Content, Contents } from "../kept/changes";
import { type Input, inputsOf, placeOf } from "../kept/inputs";
import { typedKey, type ShownCell } from "../sheet-values";

/** Inputs of a workbook by what they are called: "Heads", "From the inlet: Size (mm)". */
export type Inputs = ReadonlyMap<string, CellValue>;

export interface Check {
  /** In English, in every language of the workbook. */
  readonly label: string;
  /** "OK", or what is wrong. */
  readonly text: string;
}

export interface Said {
  /** What the question with this key came to. */
  shown(key: string): ShownCell;
  /** The same where a number is due: NaN for anything else. */
  number(key: string): number;
  /** What the check with this label says. */
  check(label: string): string;
  checks(): Check[];
}

/** A column that no page of a ready-made workbook reaches. */
const ASIDE = 200;

/**
 * A ready-made workbook that is asked what it would answer to other inputs: formulas over its names,
 * worked out by the reckoning of the page itself, so that what is said beside a workbook is what it
 * says once it is opened.
 */
export class AskedBook {
  readonly inputs: ReadonlyMap<string, Input>;
  private readonly checks: readonly { readonly label: string; readonly key: string }[];

  constructor(
    private readonly pages: readonly Page[],
    private readonly callables: Callables,
    private readonly host: FunctionHost,
    /** What it holds already. */
    private readonly already: Contents = new Map(),
  ) {
    this.inputs = new Map(inputsOf(pages).map((input) => [input.called, input]));
    this.checks = pages.flatMap((page) =>
      page.cells
        .filter(({ role }) => role === "check")
        .map(({ label = "", at }) => ({ label, key: typedKey(page.name, at) })),
    );
  }

  /** What its cells hold with these inputs: what has to be kept of it. */
  contents(inputs: Inputs): Map<string, Content> {
    const contents = new Map(this.already);
    for (const [called, value] of inputs) {
      const input = this.inputs.get(called);
      if (input === undefined) throw new Error(`the workbook has no input "${called}"`);
      if (value === (input.cell.value ?? null)) contents.delete(input.key);
      else contents.set(input.key, value);
    }
    return contents;
  }

  /** The value that an input has before anything is put into it. */
  stands(called: string): CellValue {
    const input = this.inputs.get(called);
    if (input === undefined) throw new Error(`the workbook has no input "${called}"`);
    return this.shows(input.key);
  }

  ask(inputs: Inputs, questions: Readonly<Record<string, string>>): Said {
    const contents = this.contents(inputs);
    const keys = Object.keys(questions);
    const place = (index: number) => ({ page: this.pages[0].name, row: index, column: ASIDE });
    keys.forEach((key, index) =>
      contents.set(typedKey(this.pages[0].name, writeAddress(place(index))), {
        formula: questions[key],
      }),
    );
    const values = this.values(contents);
    const shown = (key: string) => {
      const index = keys.indexOf(key);
      if (index < 0) throw new Error(`"${key}" was not asked`);
      return values.read(place(index));
    };
    const judged = (key: string) => {
      const { value, error } = values.read(placeOf(key));
      return error?.message ?? String(value ?? "");
    };
    return {
      shown,
      number: (key) => {
        const { value, error } = shown(key);
        return error === undefined && typeof value === "number" ? value : NaN;
      },
      check: (label) => judged(this.checks.find((one) => one.label === label)?.key ?? label),
      checks: () => this.checks.map(({ label, key }) => ({ label, text: judged(key) })),
    };
  }

  private shows(key: string): CellValue {
    return this.values(new Map(this.already)).read(placeOf(key)).value;
  }

  private values(contents: Map<string, Content>): FirstValues {
    return new FirstValues(this.pages, contents, this.callables, this.host);
  }
}
