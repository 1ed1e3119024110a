/** Texts by their English: a text that was reworded is no longer found, so no stale one is shown. */
export type Texts = Readonly<Record<string, string>>;

/**
 * The text in the table's language: whole, or passage by passage where it is made of passages that
 * the table has. Undefined where a part is not in the table.
 */
export function translation(text: string, texts: Texts): string | undefined {
  const whole = ownText(texts, text);
  if (whole !== undefined) return whole;
  for (let end = text.lastIndexOf(" "); end > 0; end = text.lastIndexOf(" ", end - 1)) {
    const first = ownText(texts, text.slice(0, end));
    if (first === undefined) continue;
    const rest = translation(text.slice(end + 1), texts);
    if (rest !== undefined) return `${first} ${rest}`;
  }
  return undefined;
}

/** As it stands where the table does not have it. */
export function translated(text: string, texts: Texts): string {
  return translation(text, texts) ?? text;
}

function ownText(texts: Texts, text: string): string | undefined {
  return Object.prototype.hasOwnProperty.call(texts, text) ? texts[text] : undefined;
}
