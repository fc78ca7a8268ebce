import { expect, test } from "vitest";
import type { ItemData } from "../../src/documents/projectData.ts";
import { cautionsOf } from "../../src/documents/words/cautions.ts";
import { CAUTION_CODES } from "../../src/items/common/cautions.ts";

// How a caution is printed is the house's own rule: common practice, no source.
const items = [
  { made: { cautions: CAUTION_CODES }, kind: { kind: "curtains" } },
] as unknown as ItemData[];

test.each(["en-US", "en-GB"])("no caution says its run-in word twice, in %s", (language) => {
  const printed = cautionsOf(items, language, "maker");
  expect(printed).toHaveLength(CAUTION_CODES.length);
  for (const { word, text } of printed) {
    expect(word).toMatch(/[.:]$/);
    expect(text.toLowerCase()).not.toMatch(new RegExp(`^${word.slice(0, -1).toLowerCase()}[.:]`));
    // After a colon the sentence goes on.
    expect(text.charAt(0) === text.charAt(0).toLowerCase()).toBe(word.endsWith(":"));
  }
});
