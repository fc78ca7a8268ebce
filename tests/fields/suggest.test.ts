import fc from "fast-check";
import { expect, test } from "vitest";
import { alignmentDistance, nearest } from "../../src/fields/suggest.ts";

// kitten/sitting and saturday/sunday are the usual worked examples of edit distance; "ca" to "abc" tells optimal string
// alignment (3) from the unrestricted distance (2). From memory.
test.each([
  ["kitten", "sitting", 3],
  ["saturday", "sunday", 3],
  ["ca", "abc", 3],
  ["bay", "bya", 1],
  ["", "abc", 3],
  ["abc", "abc", 0],
])("from %j to %j it is %i", (a, b, distance) => {
  expect(alignmentDistance(a, b)).toBe(distance);
  expect(alignmentDistance(b, a)).toBe(distance);
});

test("it is nought for the same word only, the same both ways, and never more than the longer word", () => {
  const word = fc.string({ unit: fc.constantFrom("a", "b", "c", "é"), maxLength: 8 });
  fc.assert(
    fc.property(word, word, (a, b) => {
      const distance = alignmentDistance(a, b);
      expect(distance === 0).toBe(a === b);
      expect(distance).toBe(alignmentDistance(b, a));
      expect(distance).toBeLessThanOrEqual(Math.max(a.length, b.length));
      expect(distance).toBeGreaterThanOrEqual(Math.abs(a.length - b.length));
    }),
  );
});

test.each([
  ["headnig", ["heading", "hem"], "heading"],
  ["from_left", ["from-left", "size"], "from-left"],
  ["Heading", ["heading"], "heading"],
  ["cafe", ["café"], "café"],
  ["xyz", ["heading", "hem"], null],
  ["to", ["at", "on"], null],
  ["hme", ["hem", "home"], "hem"],
])("for %j of %j: %j", (word, words, found) => {
  expect(nearest(word, words)).toBe(found);
});
