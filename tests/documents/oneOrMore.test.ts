import { expect, test } from "vitest";
import {
  cuttingWords,
  listHead,
  scaleTitle,
  shownAlike,
  shownAt,
} from "../../src/documents/board/oneOrMore.ts";

// How boards speak is the house's own rule: common practice, no source.

test("of one cloth alone nothing is said of each, of all, or of large against small", () => {
  const said = [
    shownAt(1, 3),
    shownAlike(1),
    listHead("cloth", 1),
    listHead("colour", 1),
    cuttingWords(1),
    scaleTitle(1),
  ].join(" ");
  expect(said).not.toMatch(/\b(each|all|every|cloths|their|they|small|large and)\b/i);
  expect(shownAt(1, 3)).toBe("The cloth is shown at one third of its true size.");
});

test("of several they are compared", () => {
  expect(shownAt(2, 3)).toBe("Cloths are shown at one third of their true size.");
  expect([2, 3].map(scaleTitle)).toEqual(["Large and small", "Large, middling, small"]);
  expect(listHead("colour", 4)).toBe("Each colour");
  expect(cuttingWords(2)).toMatch(/not at one scale/);
});
