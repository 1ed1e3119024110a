/** Reads a file of header rules as a static host does. */
export interface Rule {
  readonly path: string;
  readonly headers: readonly (readonly [name: string, value: string])[];
}

export function readRules(text: string): Rule[] {
  return text
    .trim()
    .split(/\n\n+/)
    .map((block) => {
      const [path, ...lines] = block.split("\n");
      return {
        path,
        headers: lines.map((line): [string, string] => {
          const colon = line.indexOf(":");
          return [line.slice(0, colon).trim(), line.slice(colon + 1).trim()];
        }),
      };
    });
}

export function matching(rules: readonly Rule[], path: string): Rule[] {
  return rules.filter(({ path: pattern }) =>
    pattern.endsWith("*") ? path.startsWith(pattern.slice(0, -1)) : path === pattern,
  );
}

/** The strictest hosts send every rule that matches, values of one name joined with a comma. */
export function joined(rules: readonly Rule[], path: string): Record<string, string> {
  const found: Record<string, string> = {};
  for (const [name, value] of matching(rules, path).flatMap(({ headers }) => headers)) {
    found[name] = name in found ? `${found[name]}, ${value}` : value;
  }
  return found;
}
