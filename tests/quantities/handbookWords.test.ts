import { expect, test } from "vitest";
import { handbookWords } from "../../src/quantities/text/handbookWords.ts";
import { Length } from "../../src/units/length.ts";

const plan = {
  length: Length.mm(7105),
  lowerBound: Length.mm(7050),
  itemByItem: Length.mm(7300),
  pieces: [1],
};
const words = (mm: number) =>
  handbookWords(Length.mm(mm), plan, "centimetres")?.replace(/\u202f/g, " ");

test("below the bound it is too short, as is proved; the bound is rounded down, the figure up", () => {
  expect(words(7041)).toBe(
    "The handbook's rule gives 7.05 m, which is too short to cut these pieces in register: no plan can need less than 7.05 m.",
  );
});

test("below the plan it is not to be bought by", () => {
  expect(words(7050)).toContain("7.11 m, and cut item by item in register 7.3 m; do not buy by it");
});

test("at the plan and above it", () => {
  expect(words(7105)).toBe("The handbook's rule gives 7.11 m, as the plan does.");
  expect(words(7205)).toContain("needs 0.1 m less");
});

test("nothing to say without a figure or a plan", () => {
  expect(handbookWords(null, plan, "inches")).toBeNull();
  expect(handbookWords(Length.mm(1), { ...plan, pieces: [] }, "inches")).toBeNull();
});
