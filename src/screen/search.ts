import MiniSearch from "minisearch";
import type { FunctionHelp } from "../reference";
import { searchWords, smallWords } from "../words/es/search-words";

/**
 * Finds functions by word, unit or task, in English or Spanish, with or without accents. Task and
 * name weigh most; a word may be unfinished or misspelt by a letter. Questions are full of small
 * words, which say nothing and are left out.
 */
const ENGLISH_SMALL_WORDS =
  "a an and are at be by can do does for from have how i in is it its many me much my need of on or should that the their this to what when which will with you".split(
    " ",
  );
const SMALL_WORDS = new Set([...ENGLISH_SMALL_WORDS, ...smallWords]);

/** The other language's words for a word; a search for one finds the other. */
const OTHER_WORDS = new Map<string, readonly string[]>(Object.entries(searchWords));
for (const [spanish, english] of Object.entries(searchWords))
  for (const word of english) OTHER_WORDS.set(word, [...(OTHER_WORDS.get(word) ?? []), spanish]);

/** The words of the help for a word that is in none: those of the other language, begun or whole. */
function otherWords(term: string, vocabulary: ReadonlySet<string>): readonly string[] {
  const whole = OTHER_WORDS.get(term);
  const begun = [...OTHER_WORDS].filter(([word]) => term.length > 3 && word.startsWith(term));
  const found = whole ?? begun.flatMap(([, words]) => words);
  return [...new Set(found)].filter((word) => vocabulary.has(word));
}

function folded(text: string): string {
  return text.toLowerCase().normalize("NFD").replace(/\p{M}/gu, "");
}

interface Entry {
  readonly id: string;
  readonly task: string;
  readonly name: string;
  readonly short: string;
  readonly help: string;
}

export type FunctionSearch = (query: string) => readonly FunctionHelp[];

export function functionSearch(functions: readonly FunctionHelp[]): FunctionSearch {
  const vocabulary = new Set<string>();
  const index = new MiniSearch<Entry>({
    fields: ["task", "name", "short", "help"],
    // "gpm," is a word of a help text, "m³/h" is one word, "LATERAL.PRESSURE" two.
    tokenize: (text) =>
      folded(text)
        .split(/[\s.,;:?!¿¡()"*]+/)
        .filter(Boolean),
    processTerm: (term) => {
      if (SMALL_WORDS.has(term)) return null;
      vocabulary.add(term);
      return term;
    },
    searchOptions: {
      processTerm: (term) => {
        if (SMALL_WORDS.has(term)) return null;
        if ([...vocabulary].some((word) => word.startsWith(term))) return term;
        const others = otherWords(term, vocabulary);
        return others.length === 0 ? term : [...others];
      },
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
