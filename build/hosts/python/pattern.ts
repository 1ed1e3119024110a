import ts from "typescript";
import { Refusal } from "./refusal";

/** What "\s" means in the language; Python's own is another set. */
const SPACES =
  "\\t\\n\\x0b\\x0c\\r \\xa0\\u1680\\u2000-\\u200a\\u2028\\u2029\\u202f\\u205f\\u3000\\ufeff";
const CLASSES: Readonly<Record<string, string>> = {
  s: SPACES,
  d: "0-9",
  w: "A-Za-z0-9_",
};
/** Signs that mean themselves behind a backslash in both languages. */
const PLAIN_ESCAPES = /[-\\^$.*+?()[\]{}|/]/;

/** A pattern and its flags, spelled for Python; what could mean something else is refused. */
export function translatedPattern(node: ts.RegularExpressionLiteral): {
  pattern: string;
  flags: string;
} {
  const text = node.text;
  const end = text.lastIndexOf("/");
  const flags = text.slice(end + 1);
  if (/[^gi]/.test(flags)) throw new Refusal(node, "a flag of a pattern that is not known");
  const source = text.slice(1, end);
  let pattern = "";
  let inClass = false;
  for (let i = 0; i < source.length; i++) {
    const sign = source[i];
    if (sign === "\\") {
      const next = source[++i];
      if (next in CLASSES) pattern += inClass ? CLASSES[next] : `[${CLASSES[next]}]`;
      else if (PLAIN_ESCAPES.test(next)) pattern += `\\${next}`;
      else throw new Refusal(node, `the escape \\${next} of a pattern is not known`);
    } else if (inClass) {
      if (sign === "]") inClass = false;
      pattern += sign === "[" ? "\\[" : sign;
    } else if (sign === "[") {
      inClass = true;
      pattern += sign;
    } else if (sign === "$") {
      pattern += "\\Z";
    } else if (sign === "(" && source[i + 1] === "?" && source[i + 2] !== ":") {
      throw new Refusal(node, "a group of a pattern that is not known");
    } else {
      pattern += sign;
    }
  }
  return { pattern, flags };
}
