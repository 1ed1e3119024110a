import { type Color, darkPalette, palette, seriesColors } from "../src/palette";

function declarations(shades: Readonly<Record<Color, string>>): string {
  const names = Object.entries(shades).map(([name, shade]) => {
    const custom = name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
    return `--${custom}: ${shade};`;
  });
  const series = seriesColors.map((name, i) => `--series-${i}: ${shades[name]};`);
  return [...names, ...series].join(" ");
}

/**
 * The colors as custom properties: as the system has it, or as `data-theme` says where a page is told.
 * Without weight of their own, so that a style for paper or a theme puts others over them.
 */
export function paletteCss(): string {
  return `:where(:root) { ${declarations(palette)} }
@media (prefers-color-scheme: dark) {
  :where(:root:not([data-theme="light"])) { ${declarations(darkPalette)} }
}
:where(:root[data-theme="dark"]) { ${declarations(darkPalette)} }
`;
}

/** For the bundler, in place of what stands in the style sheet. */
export default function paletteLoader(this: { addDependency(path: string): void }): string {
  this.addDependency(require.resolve("../src/palette"));
  return paletteCss();
}
