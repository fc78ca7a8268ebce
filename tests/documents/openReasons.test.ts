import { expect, test } from "vitest";
import { itemReasons } from "../../src/documents/sheets/openReasons.ts";
import type { ClothQuantity } from "../../src/quantities/quantityTypes.ts";

// Which reason stands on whose sheet is the house's own rule: common practice, no source.
const cloth = (name: string, users: readonly string[], reasons: readonly string[]) =>
  ({
    facts: { name },
    plan: {
      pieces: users.map((user) => {
        const [room, item] = user.split("/");
        return { room, item };
      }),
      notForCutting: reasons,
      released: reasons.length === 0 ? { by: "Ada Wren", on: "2026-12-01" } : null,
    },
    estimates: [],
  }) as unknown as ClothQuantity;

const CAME = "The cloth has not been received and checked.";
const STUDY = "The measures of Study have not been checked on site.";
const CLOTHS = [
  cloth("Print", ["hall/curtains"], [CAME]),
  cloth("Sateen", ["hall/curtains", "study/blind"], [CAME, STUDY]),
  cloth("Trellis", ["study/blind"], [CAME, STUDY]),
  cloth("Damask", ["hall/chair"], []),
];

test("what holds for some of an item's cloths alone is said under their names", () => {
  expect(itemReasons(CLOTHS, "hall", "curtains")).toEqual([
    CAME,
    "Sateen: the measures of Study have not been checked on site.",
  ]);
});

test("what holds for all of them is said as it is, and nothing of other items' cloths", () => {
  expect(itemReasons(CLOTHS, "study", "blind")).toEqual([CAME, STUDY]);
});

test("an item that could be cut, or has no cloth, still waits for its sheet", () => {
  expect(itemReasons(CLOTHS, "hall", "chair")).toEqual([CAME, STUDY]);
  expect(itemReasons(CLOTHS, "hall", "picture")).toEqual([CAME, STUDY]);
  expect(itemReasons([CLOTHS[3] as ClothQuantity], "hall", "chair")).toEqual([]);
});
