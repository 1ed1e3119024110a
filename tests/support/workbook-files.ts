/** What reads, works out and writes workbooks, put into one file by bundled.ts. */
export { evaluate } from "../../build/sheet-evaluator";
export { openWorkbook } from "../../src/trial/files/open";
export { pagesAsTheyStand } from "../../src/trial/files/pages";
export { saveWorkbook } from "../../src/trial/files/save";
export { Refused } from "../../src/trial/files/package";
export { writeSheet } from "../../build/sheets";
