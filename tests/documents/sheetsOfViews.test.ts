import fc from "fast-check";
import { expect, test } from "vitest";
import { boardSheet } from "../../src/documents/board/sheetGeometry.ts";
import { BETWEEN_MM, scaleOf, viewsBySheet } from "../../src/documents/room/sheetsOfViews.ts";

const inch = 25.4;
const view = (name: string, inches: number, high = 106) => ({
  name,
  widthMm: inches * inch,
  heightMm: high * inch,
});
const TABLOID = boardSheet("tabloid");

test("two short walls share a sheet at a fair scale, long ones have their own, in the room's order", () => {
  const walls = [view("north", 206), view("east", 118), view("south", 206), view("west", 118)];
  const names = viewsBySheet(walls, null, TABLOID, "inches").map((s) => s.map((v) => v.name));
  expect(names).toEqual([["north"], ["east", "west"], ["south"]]);
});

test("what stands free goes beside a wall that need not be drawn smaller for it, else on its own sheet", () => {
  const walls = [view("north", 136, 98), view("south", 136, 98)];
  const small = view("chair", 28, 40);
  expect(viewsBySheet(walls, small, TABLOID, "inches").map((s) => s.map((v) => v.name))).toEqual([
    ["north", "chair"],
    ["south"],
  ]);
  const long = view("row", 180, 40);
  expect(viewsBySheet(walls, long, TABLOID, "inches").at(-1)).toEqual([long]);
});

test("every view stands on exactly one sheet, and what shares a sheet fits on it", () => {
  const lengths = fc.array(fc.integer({ min: 40, max: 400 }), { minLength: 1, maxLength: 8 });
  fc.assert(
    fc.property(lengths, fc.constantFrom("a3" as const, "tabloid" as const), (all, paper) => {
      const sheet = boardSheet(paper);
      const walls = all.map((inches, at) => view(`w${at}`, inches));
      const sheets = viewsBySheet(walls, view("free", 60, 40), sheet, "centimetres");
      expect(
        sheets
          .flat()
          .map((v) => v.name)
          .sort(),
      ).toEqual([...walls.map((w) => w.name), "free"].sort());
      for (const views of sheets.filter((s) => s.length > 1)) {
        const found = scaleOf(views, sheet, "centimetres");
        const scale = found?.scale as number;
        const width = views.reduce((sum, v) => sum + v.widthMm / scale, 0) + BETWEEN_MM;
        expect(width).toBeLessThanOrEqual((found?.space.across as number) + 1e-9);
      }
    }),
    { numRuns: 200, seed: 20261125 },
  );
});
