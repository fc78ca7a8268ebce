import { expect, test } from "vitest";
import { wallpaperDrawing } from "../../src/items/wallpaper/drawing.ts";
import { wallpaperKind } from "../../src/items/wallpaper/kind.ts";
import type { WallpaperMade } from "../../src/items/wallpaper/pieces.ts";
import { drawingContext, words } from "./drawnItems.ts";
import { type ContextAsk, clothFacts, contextFor, fieldsOf, length } from "./tradeContext.ts";

// Paper on a ceiling, by hand: the strips and rolls of a wall as long as the ceiling is wide. Common practice, no source.

const FLOOR = {
  length: length("4.2 m"),
  width: length("3.4 m"),
  perimeter: length("15.2 m"),
} as ContextAsk["floor"];

function papered(raw: Record<string, string> = {}, floor: ContextAsk["floor"] = FLOOR) {
  const card = clothFacts({
    id: "paper",
    type: "wallcovering",
    roll: { width: length("53 cm"), length: length("10.05 m") },
    repeat: { up: length("32 cm"), across: null, match: "straight", fromSelvedge: null },
  });
  const fields = fieldsOf(wallpaperKind.schema, {
    wallpaper: "Stars",
    on: "ceiling",
    cloth: "paper",
    ...raw,
  }) as never;
  const ask = { cloths: [card], units: "centimetres", runs: [] } as const;
  const context = contextFor(wallpaperKind.allowances, floor ? { ...ask, floor } : ask);
  const made = wallpaperKind.make(fields, context) as WallpaperMade;
  const drawn = drawingContext(context);
  return {
    made,
    codes: made.diagnostics.map((d) => d.code),
    drawings: wallpaperDrawing.workshop(fields, made, drawn),
    sheet: wallpaperDrawing.sheet(fields, made, drawn),
    zone: wallpaperKind.zone(fields),
  };
}

test("strips run the shorter way where nothing is said, and that is asked", () => {
  const { made, codes, drawings, sheet, zone } = papered();
  expect(codes).toEqual([]);
  // 420 / 53 up to 8 strips of 340 + 10; 350 up to 11 repeats of 32 is 352; 1 + (1005 - 32 - 350) / 352 down to 2 a roll.
  expect([made.strips, made.cut.toMm(), made.perRoll, made.rollsHung]).toEqual([8, 3500, 2, 4]);
  expect(made.figures).toMatchObject({ strips: 8, rolls: 5, areaM2: 14.28 });
  expect(made.questions.join(" ")).toContain("reckoned from north to south, the shorter way");
  expect(zone).toBe("overhead");
  const [drawing] = drawings;
  expect(drawings).toHaveLength(1);
  expect([drawing?.widthMm, drawing?.heightMm]).toEqual([4200, 3400]);
  expect(drawing?.title).toBe(
    "Ceiling, strips 1 to 8; west wall at the left, north wall at the head",
  );
  expect(words(drawing?.shapes ?? [])).toEqual(["1", "2", "3", "4", "5", "6", "7", "8"]);
  const said = sheet.groups.flatMap((g) => g.lines).join(" ");
  expect(said).toContain("On the ceiling, strips from north to south.");
  expect(said).not.toMatch(/under the ceiling line|seen from inside/);
  expect(sheet.checks.map((c) => c.text).join()).toContain("Ceiling sound and dry");
});

test("the other way they are longer and fewer", () => {
  const { made, codes, drawings } = papered({ "strips-run": "east-west" });
  expect(codes).toEqual([]);
  // 340 / 53 up to 7 strips of 420 + 10; 430 up to 14 repeats is 448; 1 + (1005 - 32 - 430) / 448 down to 2 a roll.
  expect([made.strips, made.cut.toMm(), made.perRoll, made.rollsHung]).toEqual([7, 4300, 2, 4]);
  expect(made.questions.join(" ")).not.toContain("Which way do the strips run?");
  expect(drawings[0]?.title).toContain("north wall at the left, east wall at the head");
  const across = { ...FLOOR, length: length("3 m"), width: length("5 m") } as ContextAsk["floor"];
  expect(papered({}, across).made.ceiling).toBe("east-west");
});

test.each([
  [{}, undefined, "room-without-walls"],
  [{ height: "2.6 m" }, FLOOR, "ceiling-with-height"],
  [{ on: "walls", "strips-run": "east-west" }, FLOOR, "strips-run-on-walls"],
] as const)("what cannot be so of a ceiling is told: %o", (raw, floor, code) => {
  const { codes, made } = papered(raw as Record<string, string>, floor ?? (null as never));
  expect(codes).toContain(code);
  expect(made.diagnostics.every((d) => d.hint)).toBe(true);
});
