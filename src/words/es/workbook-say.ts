import { formReader } from "../message-reader";
import { translation } from "../translate";
import { cautions } from "./cautions";
import { composed, workbooks } from "./workbooks";

/** A text of a ready-made workbook, cautions among them, in Spanish. */
export const sayWorkbook = formReader(
  composed,
  (text) => translation(text, workbooks) ?? translation(text, cautions),
);
