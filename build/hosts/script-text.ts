/** Words that a script cannot use for a parameter. */
const RESERVED = new Set(
  "break case catch class const continue default delete do else enum export extends false finally for function if import in let new null return static super switch this throw true try typeof var void while with yield".split(
    " ",
  ),
);

/** The name of an argument as a script may spell it; no formula sees it. */
export function parameterName(name: string): string {
  return RESERVED.has(name) ? `${name}_` : name;
}

/** Text as it may stand in a script's comment, on one line. */
export function inComment(text: string): string {
  return text.replace(/\*\//g, "* /").replace(/\s+/g, " ").trim();
}
