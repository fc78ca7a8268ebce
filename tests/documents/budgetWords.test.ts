import { expect, test } from "vitest";
import {
  roomsPhrase,
  stairHead,
  stepName,
  stepSentence,
} from "../../src/documents/proposal/budgetWords.ts";
import { beforeSigning } from "../../src/documents/proposal/proposal.ts";
import { clearOf } from "../../src/documents/proposal/stair.ts";

// How a proposal speaks is the house's own rule: common practice, no source.

test("a step that stands alone has no number, and waits for nothing but its samples", () => {
  expect(stepName(0, 1)).toBe("All at once");
  expect([0, 1, 2].map((at) => stepName(at, 3))).toEqual(["First", "Second", "Last"]);
  expect(stepSentence(3, true)).not.toMatch(/the rest/);
  expect(stepSentence(3, false)).toMatch(/waits until the rest has proved itself/);
  expect(stepSentence(1, true)).toBe(stepSentence(1, false));
});

test("fees are no step: the head over the stair counts phases alone", () => {
  expect([0, 1, 2, 3, 7].map(stairHead)).toEqual([
    "Where the money goes",
    "Where the money goes",
    "Two steps, one after another",
    "Three steps, one after another",
    "7 steps, one after another",
  ]);
});

test("rooms in a sentence have one article, and none before a name that brings its own", () => {
  expect(roomsPhrase([])).toBe("the project");
  expect(roomsPhrase(["Landing"])).toBe("the landing");
  expect(roomsPhrase(["The Great Room"])).toBe("the Great Room");
  expect(roomsPhrase(["Ida's room"])).toBe("Ida's room");
  expect(roomsPhrase(["The Great Room", "Hall"])).toBe("the Great Room and hall");
  expect(roomsPhrase(["Theater"])).toBe("the theater");
});

test("words below the stair stand clear of the limit's line: before it, or past it where they would leave the stair", () => {
  const words = { end: 168, wide: 40 };
  expect(clearOf(null, words)).toBe(168);
  expect(clearOf(100, words)).toBe(168);
  const before = clearOf(165, words);
  expect(before).toBeLessThan(165);
  const past = clearOf(20, { end: 40, wide: 40 });
  expect(past - 40).toBeGreaterThan(20);
});

test("of many cautions the last three keep to the signature; of few all do", () => {
  expect(beforeSigning([1, 2, 3, 4])).toEqual({ cautionsBefore: [], cautions: [1, 2, 3, 4] });
  expect(beforeSigning([1, 2, 3, 4, 5, 6])).toEqual({
    cautionsBefore: [1, 2, 3],
    cautions: [4, 5, 6],
  });
  expect(beforeSigning([])).toEqual({ cautionsBefore: [], cautions: [] });
});
