/**
 * Stands in the place of the library with which the grid reads numbers from what is typed or pasted
 * (webpack.config.js): that one takes every comma for a thousands mark, and reads 0,175 as 175.
 */
import { parseNumber as parseWithCommas } from "numfmt";
import { readTyped } from "./typed";

export * from "numfmt";

const PARTS = /^([^\d,.]*)([\d.,]*)([^\d,.]*)$/;

/** A number with its sign, currency or percent; null where its commas leave it in doubt. */
export const parseNumber: typeof parseWithCommas = (text, ...options) => {
  if (!text.includes(",")) return parseWithCommas(text, ...options);
  const [, before = "", digits = "", behind = ""] = PARTS.exec(text.trim()) ?? [];
  const number = readTyped(digits);
  if (typeof number !== "number") return null as never;
  return parseWithCommas(`${before}${number}${behind}`, ...options);
};
