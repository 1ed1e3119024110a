/** A text as it stands between the quotes of a formula. */
export function quoted(text: string): string {
  return text.replace(/"/g, '""');
}
