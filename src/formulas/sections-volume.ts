import { volumeOfPipe } from "./pipe-volume";

/** Water held by full pipe of several sizes, m³: the sum over the sections (bore and length in m). */
export function sectionsVolume(
  sections: readonly { readonly bore: number; readonly length: number }[],
): number {
  return sections.reduce((sum, section) => sum + volumeOfPipe(section.bore, section.length), 0);
}
