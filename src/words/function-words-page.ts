/** What the page is called, in English, that puts over what functions say in a workbook. */
export const FUNCTION_WORDS = "Words of the functions";
