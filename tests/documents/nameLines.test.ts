import { expect, test } from "vitest";
import { nameLines } from "../../src/documents/words/nameLines.ts";

// How names are broken is the project's own rule; the names are made up.

test.each([
  ["Pomander", ["Pomander"]],
  ["Twenty letters inside", ["Twenty", "letters inside"]],
  ["Twenty letters inside".slice(0, 20), ["Twenty letters insid"]],
  ["Lovage Garden Vine, indigo on ecru", ["Lovage Garden Vine,", "indigo on ecru"]],
  ["Harbour Turnstile Lattice", ["Harbour", "Turnstile Lattice"]],
  ["Schmetterlinge-Jacquard", ["Schmetterlinge-", "Jacquard"]],
])("%s stands on lines as alike as they can be", (name, lines) => {
  expect(nameLines(name, 20)).toEqual(lines);
});

test("a name that is too long for two lines fills the first and ends in an ellipsis", () => {
  expect(nameLines("Deckhouse Stripe in Sea Blue, White and a little Red", 20)).toEqual([
    "Deckhouse Stripe in",
    "Sea Blue, White and…",
  ]);
  expect(nameLines("Schmetterlingsblütenjacquard", 20)).toEqual(["Schmetterlingsblüte…"]);
});

test("where it would be cut a line may be longer, and where nothing is cut it is not", () => {
  expect(nameLines("Schmetterlingsblütentuch", 20, 24)).toEqual(["Schmetterlingsblütentuch"]);
  expect(nameLines("Pomegranate, Quince and Medlar Trellis in rust", 20, 24)).toEqual([
    "Pomegranate, Quince and",
    "Medlar Trellis in rust",
  ]);
  expect(nameLines("Harbour Turnstile Lattice", 20, 24)).toEqual(["Harbour", "Turnstile Lattice"]);
});
