import { expect, test } from "vitest";
import { usualValues } from "../../src/documents/sheets/usualValues.ts";
import { curtainsAllowances } from "../../src/items/curtains/allowances.ts";

// How a sheet says what was taken is the house's own rule: common practice, no source.
const said = (value: string) => {
  const what = `returns-in-fullness: ${curtainsAllowances["returns-in-fullness"].description}`;
  const [group] = usualValues([{ title: "Bay", rows: [{ what, value }] }]);
  return group?.rows[0];
};

test("of a choice the sheet says what was taken, not its number", () => {
  expect(said("1")?.what).not.toMatch(/[01]:/);
  expect(said("1")?.value.html).toBe("gathered as the rest is");
  expect(said("0")?.value.html).toBe("added flat, after the fullness");
});

test("what several items took stands once, under all their names", () => {
  const row = { what: "join: seam turning on each piece of a join", value: "1/2″" };
  const groups = usualValues([
    { title: "Bay", rows: [row] },
    { title: "Bed", rows: [row, { ...row, value: "1″" }] },
  ]);
  expect(groups.map((g) => g.titles)).toEqual([["Bay", "Bed"], ["Bed"]]);
});
