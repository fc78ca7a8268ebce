import { expect, test } from "vitest";
import type { ProjectData } from "../../src/documents/projectData.ts";
import { countedWords, spokenPieces } from "../../src/documents/sheets/spokenPieces.ts";
import type { ClothQuantity } from "../../src/quantities/quantityTypes.ts";

// How pieces are named on a plan is the house's own rule: common practice, no source.
const data = {
  studio: { fields: { language: "en-US" } },
  rooms: [
    {
      record: { id: "den" },
      items: [
        { record: { id: "bay" }, kind: { kind: "curtains" } },
        { record: { id: "lane" }, kind: { kind: "blind" } },
      ],
    },
  ],
} as unknown as ProjectData;
const cloth = (pieces: readonly (readonly [item: string, piece: string])[]) =>
  ({
    plan: { pieces: pieces.map(([item, piece]) => ({ room: "den", item, piece })) },
  }) as unknown as ClothQuantity;

test("from which side widths are counted is said once over the plan, not at each of them", () => {
  const both = cloth([
    ["bay", "left curtain, half width 1 of 3 from its left"],
    ["lane", "blind"],
  ]);
  expect(spokenPieces(data, both).plan.pieces.map((p) => p.piece)).toEqual([
    "left curtain, half width 1 of 3",
    "shade",
  ]);
  expect(countedWords(both)).toContain("counted from its left");
  expect(countedWords(cloth([["lane", "blind"]]))).toBe("");
});
