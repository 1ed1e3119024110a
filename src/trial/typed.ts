import type { CellValue } from "../screen/host";

/** A number where it reads as one; anything else is handed on as text, for the functions to judge. */
export function readTyped(text: string): CellValue {
  const trimmed = text.trim();
  if (trimmed === "") return null;
  const number = Number(trimmed.replace(/,(?=\d{3}\b)/g, ""));
  return Number.isFinite(number) ? number : trimmed;
}
