import type { YAMLParseError } from "yaml";

/** What the parser's complaint means to someone who is no programmer. */
export function parserFault(error: YAMLParseError): {
  readonly code: string;
  readonly message: string;
  readonly how: string;
} {
  switch (error.code) {
    case "BAD_INDENT":
    case "BAD_COLLECTION_TYPE":
      return {
        code: "indent-uneven",
        message: "This line does not begin below the lines that it belongs to.",
        how: "Begin all keys that belong together in the same column.",
      };
    case "MISSING_CHAR":
      if (/sequence item/i.test(error.message)) {
        return {
          code: "indent-uneven",
          message: "This line stands in a list, but neither as an entry nor below the keys of one.",
          how: 'Begin it with "- ", or below the keys of the entry above.',
        };
      }
      if (/map values|implicit map/i.test(error.message)) {
        return {
          code: "colon-missing",
          message: 'This is no "key: value": the colon is missing.',
          how: "Put a colon and a space behind the key, or take the line out.",
        };
      }
      return {
        code: "sign-missing",
        message: "A sign is missing on this line.",
        how: "Look for a quotation mark, bracket or comma that is left out.",
      };
    case "TAB_AS_INDENT":
      return {
        code: "tab-indent",
        message: "This line is set in with a tab.",
        how: "Set it in with spaces, two for each step.",
      };
    case "BLOCK_AS_IMPLICIT_KEY":
    case "MULTILINE_IMPLICIT_KEY":
    case "BLOCK_IN_FLOW":
      return {
        code: "colon-in-words",
        message: "A colon on this line is taken for a key's.",
        how: "Put the words with the colon in quotes, or look at how far the line is set in.",
      };
    case "MULTIPLE_DOCS":
      return {
        code: "document-twice",
        message: "A line of three dots or hyphens ends the front matter before its end.",
        how: "Take the line out.",
      };
    case "BAD_DQ_ESCAPE":
      return {
        code: "backslash-in-quotes",
        message: "A backslash between double quotation marks changes the letter behind it.",
        how: "Use single quotation marks.",
      };
    case "BAD_SCALAR_START":
    case "UNEXPECTED_TOKEN":
      return {
        code: "sign-unexpected",
        message: "A sign or word stands here that does not fit what comes before it.",
        how: "Put the words in quotes, or take away what is too much.",
      };
    default:
      return {
        code: "line-unreadable",
        message: "This line cannot be read.",
        how: 'Write it as "key: value".',
      };
  }
}
