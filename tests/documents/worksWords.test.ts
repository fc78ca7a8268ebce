import { expect, test } from "vitest";
import { fitting } from "../../src/documents/room/worksWords.ts";

const words = {
  works: ["A sentence of thirty-one letters", "Another of thirty-one letters..", "A third"],
  noted: ["Something to be known of it all"],
};

test("what the page holds is said whole, and no sentence is cut", () => {
  expect(fitting(words, 20, 40)).toEqual(words);
  expect(fitting({ ...words, noted: [] }, 3.5, 40).works).toEqual(words.works.slice(0, 1));
  expect(fitting(words, 1, 40)).toEqual({ works: [], noted: [] });
});

test("what is published takes half of the lines at most", () => {
  const many = { ...words, noted: Array.from({ length: 9 }, () => "x".repeat(39)) };
  const said = fitting(many, 12, 40);
  expect(said.noted).toHaveLength(3);
  expect(said.works).toEqual(words.works);
});
