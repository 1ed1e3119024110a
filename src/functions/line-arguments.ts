import type { Units } from "./units";

/** A line of heads, as the functions take it that have nothing of their own behind it. */
export type LineArguments = [
  heads: any,
  spacing: any[][],
  inside: any[][],
  discharge: any[][],
  units?: Units,
  rise?: any[][],
  regulator?: any[][],
  friction?: any,
  first?: any,
  riser?: any,
];
