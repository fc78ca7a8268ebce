// Makers read which way a cloth runs: a plan shows pieces upright, and a piece in the hand shows nothing.
import { expect, test } from "vitest";
import { wayLine } from "../../src/items/common/wayLine.ts";
import { cushionDrawing } from "../../src/items/cushion/drawing.ts";
import type { ClothFacts } from "../../src/items/itemKind.ts";
import { cushion } from "./drawnItems.ts";

const sheetOf = (more: Partial<ClothFacts>): string => {
  const [fields, made, context] = cushion({ count: "2" });
  const turned = {
    ...context,
    cloth: (id: string) => {
      const facts = context.cloth(id);
      return facts && { ...facts, nap: false, ...more };
    },
  };
  return JSON.stringify(cushionDrawing.sheet(fields, made, turned));
};

test("a pattern that runs one way is said on the sheet, a pile before it, and else nothing", () => {
  expect(sheetOf({ oneWay: true })).toContain("All pieces the same way up.");
  const pile = sheetOf({ oneWay: true, nap: true });
  expect(pile).toContain("Pile or sheen: all pieces one way.");
  expect(pile).not.toContain("the same way up");
  expect(sheetOf({})).not.toContain("the same way up");
});

test("of curtains it is said of their widths", () => {
  const facts = { nap: false, oneWay: true } as ClothFacts;
  expect(wayLine(facts, "widths")).toBe("All widths the same way up.");
});
