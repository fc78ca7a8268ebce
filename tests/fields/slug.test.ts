import fc from "fast-check";
import { expect, test } from "vitest";
import { slug } from "../../src/fields/slug.ts";

test.each([
  ["Bay", "bay"],
  ["Window seat", "window-seat"],
  ["  Été à l'île  ", "ete-a-lile"],
  ["Straße", "strasse"],
  ["Æble & Øl", "aeble-ol"],
  ["a--b__c", "a-b-c"],
  ["(left) #5", "left-5"],
  ["Привет", "привет"],
  ["ガラス", "ガラス"],
  ["?!", ""],
])("%j is %j", (text, name) => {
  expect(slug(text)).toBe(name);
});

test("it is safe, short, and stays as it is when taken again", () => {
  fc.assert(
    fc.property(fc.string({ unit: "grapheme", maxLength: 300 }), (text) => {
      const name = slug(text);
      expect(name).toMatch(/^$|^[\p{L}\p{N}](?:[\p{L}\p{N}\p{M}-]*[\p{L}\p{N}\p{M}])?$/u);
      expect([...name].length).toBeLessThanOrEqual(72);
      expect(slug(name)).toBe(name);
    }),
    { numRuns: process.env.SOAK ? 20_000 : 500 },
  );
});
