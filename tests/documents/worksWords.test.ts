import { expect, test } from "vitest";
import { fitting, leastLines } from "../../src/documents/room/worksWords.ts";

const words = {
  works: ["A sentence of thirty-one letters", "Another of thirty-one letters..", "A third"],
  noted: ["Something to be known of it all"],
};

test("what the page holds is said whole, and no sentence is cut", () => {
  expect(fitting(words, 20, 40)).toEqual(words);
  expect(fitting({ ...words, noted: [] }, 3.5, 40).works).toEqual(words.works.slice(0, 1));
  expect(fitting(words, 1, 40)).toEqual({ works: [], noted: [] });
});

test("what is published comes first, and leaves what works its first lines", () => {
  const many = { ...words, noted: Array.from({ length: 9 }, () => "x".repeat(39)) };
  const said = fitting(many, 12, 40);
  // Of twelve lines two heads take five and what works two.
  expect(said.noted).toHaveLength(5);
  expect(said.works).toEqual(words.works);
  const least = leastLines(many, 40);
  expect(fitting(many, least, 40).noted).toEqual(many.noted);
  expect(fitting(many, least - 1, 40).noted).not.toEqual(many.noted);
});
