import { expect, test } from "vitest";
import { savingOf, savingWords } from "../../src/quantities/text/savingWords.ts";
import { Length } from "../../src/units/length.ts";

type Cloth = Parameters<typeof savingOf>[0][number];
const cloth = (length: number, itemByItem: number | null, pieces = 1): Cloth =>
  ({
    plan: {
      length: Length.yards(length),
      itemByItem: itemByItem === null ? null : Length.yards(itemByItem),
      pieces: Array.from({ length: pieces }, () => ({})),
    },
  }) as unknown as Cloth;

test("what planning together saves, by hand; cloth that has come and cloth with nothing to cut are left out", () => {
  const cloths = [cloth(10, 12), cloth(4, 4), cloth(7, null), cloth(0, 9, 0)];
  expect(savingOf(cloths)?.itemByItem.equals(Length.yards(16))).toBe(true);
  expect(savingWords(cloths, "inches")).toBe(
    "Of the cloth still to come: laid item by item, each in register, the pieces would take 16\u202fyd; cut together they take 14\u202fyd, which saves 2\u202fyd.",
  );
  expect(savingWords([cloth(4, 5)], "inches")).toMatch(/^Laid item by item/);
  expect(savingWords([cloth(4, 4)], "inches")).toMatch(/cut together they take as much\.$/);
  expect(savingWords([cloth(7, null)], "inches")).toBeNull();
  expect(savingOf([])).toBeNull();
});
