import { expect, test } from "vitest";
import { inOneLine, listColumns } from "../../src/documents/sheets/clothHeight.ts";
import { numberWords, placeWords } from "../../src/documents/sheets/cutNumbers.ts";

// What a line of the cut list must say, and how wide its columns are: common practice, no source.

test("numbers that follow each other are a run, wherever they stand", () => {
  expect(numberWords([3])).toBe("3");
  expect(numberWords([2, 4])).toBe("2, 4");
  expect(numberWords([1, 2, 3])).toBe("1 to 3");
  expect(numberWords([3, 4, 5, 6, 7, 8, 11, 12])).toBe("3 to 8, 11, 12");
});

test("three pieces have three places from the selvedge, or one that holds for all", () => {
  expect(placeWords(["0″", "28″", "0″"])).toBe("0″, 28″, 0″");
  expect(placeWords(["14″", "14″"])).toBe("14″");
});

const row = (item: string, at = "0″", number = "1") => ({
  number,
  item,
  piece: "boxing, front, whole width",
  size: "28 1/2″ × 19″",
  at,
  left: "0″",
});

test("a line of long names is not kept whole at the cost of its places", () => {
  expect(inOneLine([row("Settle seat")])).toBe(true);
  const long = "Window step pad, one hundred and ten inches long";
  expect(inOneLine([row(long), row(long, "38″, 55″, 72″", "3 to 8, 11 to 13")])).toBe(false);
});

test("over the whole width many places have a wider column, and the columns fill the width", () => {
  const many = Array.from({ length: 9 }, (_, n) => `${38 + n * 17}″`).join(", ");
  const few = listColumns([row("Settle")], 170.9);
  const wide = listColumns([row("Settle"), row("Skirt", many)], 170.9);
  expect(wide[5] as number).toBeGreaterThan(few[5] as number);
  for (const columns of [few, wide]) {
    expect(columns.reduce((a, b) => a + b)).toBeCloseTo(170.9, 0);
    expect(Math.min(...columns)).toBeGreaterThan(5);
  }
});
