import { expect, test } from "vitest";
import { inItemWords, inVocabulary } from "../../src/documents/words/inVocabulary.ts";

// Common usage on the two sides of the Atlantic, no single source.
test("an item's lines speak the studio's vocabulary, whole words only, capitals kept", () => {
  expect(inVocabulary("3 fibre inserts", "en-US")).toBe("3 fiber inserts");
  expect(inVocabulary("3 fibre inserts", "en-GB")).toBe("3 fibre inserts");
  expect(inVocabulary("9 yd of welt cord", "en-GB")).toBe("9 yd of piping cord");
  expect(inVocabulary("9 yd of welt cord", "en-US")).toBe("9 yd of welt cord");
  expect(inVocabulary("Moulding and mitres", "en-US")).toBe("Molding and miters");
  expect(inVocabulary("The welt's length", "en-GB")).toBe("The piping's length");
  expect(inVocabulary("double welted, weltschmerz", "en-GB")).toBe("double welted, weltschmerz");
});

test("there and back is the same line", () => {
  for (const line of ["fibre", "panel moulding", "piping cord", "skirting", "colour"])
    expect(inVocabulary(inVocabulary(line, "en-US"), "en-GB")).toBe(line);
});

test("a blind is a shade on an American sheet, a lampshade's shade stays one on both", () => {
  expect(inItemWords("One blind; Blinds of one drop", "blind", "en-US")).toBe(
    "One shade; Shades of one drop",
  );
  expect(inItemWords("One blind", "blind", "en-GB")).toBe("One blind");
  expect(inItemWords("Written on the shade", "lampshade", "en-GB")).toBe("Written on the shade");
});
