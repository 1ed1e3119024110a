/**
 * The field's colors, for paper and light screens and for dark ones: moss for structure, heather for
 * what the user sets, clay for warnings. Workbooks take the light ones; `screen/palette.css` is made
 * from both.
 */
const colors = {
  ink: ["#23281f", "#e9ebe2"],
  quiet: ["#5c6356", "#a9b09e"],
  paper: ["#faf9f5", "#171a15"],
  sheet: ["#ffffff", "#1f231c"],
  line: ["#d5d7cb", "#3d4437"],
  moss: ["#4c5d38", "#b5c99a"],
  mossRule: ["#6d7a5c", "#8d9c79"],
  mossTint: ["#e7ebdf", "#2c3425"],
  mossWash: ["#f3f5ee", "#232a1e"],
  heather: ["#56497f", "#c3b6ee"],
  heatherTint: ["#e6e3f1", "#2b2739"],
  clay: ["#7c3a16", "#f0ab83"],
  clayTint: ["#f6e3d8", "#3b261a"],
  fern: ["#2f6b3a", "#93d09f"],
  reed: ["#20605f", "#7fcfcb"],
  focus: ["#1d5fd1", "#8ab4ff"],
} as const satisfies Readonly<Record<string, readonly [light: string, dark: string]>>;

export type Color = keyof typeof colors;

function shade(at: 0 | 1): Readonly<Record<Color, string>> {
  const entries = Object.entries(colors).map(([name, shades]) => [name, shades[at]]);
  return Object.fromEntries(entries) as Record<Color, string>;
}

export const palette = shade(0);
export const darkPalette = shade(1);

/** Moss from dark to light, in steps of equal lightness, for a library of controls. */
export const mossSteps = [
  "#060803",
  "#131a0c",
  "#1d2913",
  "#263518",
  "#2f421e",
  "#384e24",
  "#425b2b",
  "#4c6833",
  "#5a763f",
  "#69844d",
  "#79935c",
  "#8aa26d",
  "#9cb180",
  "#afc195",
  "#c3d1ac",
  "#d8e2c7",
] as const;

/** A chart's series, told apart by lightness and by their markers too. */
export const seriesColors = ["moss", "heather", "clay", "reed"] as const satisfies readonly Color[];
