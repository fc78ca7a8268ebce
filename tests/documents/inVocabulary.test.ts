import { expect, test } from "vitest";
import { inVocabulary } from "../../src/documents/words/inVocabulary.ts";

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
