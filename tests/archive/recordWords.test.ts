import { expect, test } from "vitest";
import { keyWords } from "../../src/documents/words/inVocabulary.ts";

test("a record names pieces as the studio's documents do", () => {
  expect(keyWords("border-top", "en-GB")).toBe("border top");
  expect(keyWords("welt", "en-GB")).toBe("piping");
  expect(keyWords("welt", "en-US")).toBe("welt");
  // A figure keeps its sign: a hyphen parts words alone.
  expect(keyWords("angle -5", "en-GB")).toBe("angle -5");
});
