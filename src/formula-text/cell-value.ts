/** What a cell holds, and what a formula may have in it. */
export type CellValue = string | number | boolean | null;
