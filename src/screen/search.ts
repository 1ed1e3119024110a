import MiniSearch from "minisearch";
import type { FunctionHelp } from "../reference";

/**
 * Finds functions by word, unit or task. Task and name weigh most; a word may be unfinished or
 * misspelt by a letter. Questions are full of small words, which say nothing and are left out.
 */
const SMALL_WORDS = new Set(
  "a an and are at be by can do does for from have how i in is it its many me much my need of on or should that the their this to what when which will with you".split(
    " ",
  ),
);

interface Entry {
  readonly id: string;
  readonly task: string;
  readonly name: string;
  readonly short: string;
  readonly help: string;
}

export type FunctionSearch = (query: string) => readonly FunctionHelp[];

export function functionSearch(functions: readonly FunctionHelp[]): FunctionSearch {
  const index = new MiniSearch<Entry>({
    fields: ["task", "name", "short", "help"],
    // "gpm," is a word of a help text, "m³/h" is one word, "LATERAL.PRESSURE" two.
    tokenize: (text) =>
      text
        .toLowerCase()
        .split(/[\s.,;:?!()"*]+/)
        .filter(Boolean),
    processTerm: (term) => (SMALL_WORDS.has(term) ? null : term),
    searchOptions: {
      boost: { task: 4, name: 4, short: 2 },
      prefix: (term) => term.length > 1,
      fuzzy: (term) => (term.length > 4 ? 0.2 : false),
    },
  });
  index.addAll(
    functions.map((help) => ({
      id: help.id,
      task: help.task,
      name: help.name,
      short: help.short,
      help: [help.returns, help.remarks, ...help.arguments.map((a) => `${a.name} ${a.help}`)].join(
        " ",
      ),
    })),
  );
  const byId = new Map(functions.map((help) => [help.id, help]));
  return (query) => {
    if (query.trim() === "") return functions;
    return index.search(query).flatMap((found) => byId.get(found.id as string) ?? []);
  };
}
