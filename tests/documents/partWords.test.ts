import { expect, test } from "vitest";
import { partWords } from "../../src/documents/room/partWords.ts";
import type { Swatch } from "../../src/swatches/swatch.ts";

const swatch = (name: string, showsMm: number): Swatch =>
  ({
    name,
    photo: { widthPx: 1000, heightPx: 1000, showsMm },
    period: { acrossMm: 400, upMm: 400, halfDrop: false },
  }) as unknown as Swatch;

test("a wall says which cloth's picture shows less than its repeat, and nothing where all show enough", () => {
  expect(partWords([swatch("Rose", 410), swatch("Ash", 400)])).toBe("");
  expect(partWords([swatch("Rose", 300), swatch("Ash", 400), swatch("Rose", 300)])).toBe(
    " The picture of Rose shows less than its repeat: the plain bands between are not in the cloth.",
  );
  expect(partWords([swatch("Rose", 300), swatch("Ash", 260)])).toBe(
    " The pictures of Ash and Rose show less than their repeats: the plain bands between are not in the cloth.",
  );
});
