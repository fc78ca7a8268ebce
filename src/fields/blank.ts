/** What stands in a starting file for words that only she knows. */
export const BLANK = "(write here)";
