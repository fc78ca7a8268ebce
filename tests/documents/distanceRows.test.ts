import { expect, test } from "vitest";
import { distanceRows } from "../../src/documents/board/distanceRows.ts";
import { shortened } from "../../src/documents/words/phrases.ts";
import type { Swatch } from "../../src/swatches/swatch.ts";

// How names below the patches are fitted is the project's own rule.
const swatch = (name: string): Swatch =>
  ({ name, kind: "large-print", readsPlainFromM: null }) as unknown as Swatch;
const rows = (names: readonly string[]) => distanceRows(names.map(swatch), 50, "centimetres");

test("a short name stands on one line with its words, a long one above them while there is room", () => {
  const [short, long] = rows(["Pomander", "Pomegranate and Quince Trellis, rust"]);
  expect(short).toMatchObject({ name: "Pomander", isFolded: false, y: 50 });
  expect(long).toMatchObject({
    name: "Pomegranate and Quince Trellis, rust",
    isFolded: true,
    y: 74,
  });
});

test("eight rows stand too close for two lines: a long name is cut so that its words fit beside it", () => {
  const eight = rows(Array(8).fill("Vestry Damask in Old Gold"));
  for (const row of eight) {
    expect(row).toMatchObject({ name: "Vestry Damask…", isFolded: false });
    // The caption is 66 mm wide; on the printed page a letter of a name takes 1.95 mm at the most, one of the words 1.45.
    expect(row.name.length * 1.95 + (row.words.length + 1) * 1.45).toBeLessThan(66);
  }
});

test.each([
  ["Vestry Damask in Old Gold", 14, "Vestry Damask…"],
  ["Vestry Damask in Old Gold", 13, "Vestry…"],
  ["Schmetterlingsblüten", 10, "Schmetter…"],
  ["Vestry", 6, "Vestry"],
])("%s in %d letters is %s", (name, letters, told) => {
  expect(shortened(name, letters)).toBe(told);
  expect(told.length).toBeLessThanOrEqual(letters);
});
