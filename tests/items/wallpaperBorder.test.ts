import fc from "fast-check";
import { expect, test } from "vitest";
import { wallpaperAllowances } from "../../src/items/wallpaper/allowances.ts";
import { wallpaperSeen } from "../../src/items/wallpaper/area.ts";
import { borderRolls } from "../../src/items/wallpaper/border.ts";
import { makeWallpaper } from "../../src/items/wallpaper/pieces.ts";
import { wallpaperSchema } from "../../src/items/wallpaper/schema.ts";
import { Length } from "../../src/units/length.ts";
import {
  type ContextAsk,
  clothFacts,
  contextFor,
  fieldsOf,
  given,
  length,
  tradeCase,
  wallRun,
  wanted,
} from "./tradeContext.ts";

const PAPER = clothFacts({
  id: "paper",
  type: "wallcovering",
  roll: { width: length("0.53 m"), length: length("10.05 m") },
});
const BORDER = clothFacts({
  id: "border",
  name: "Rope",
  type: "wallcovering",
  roll: { width: length("10 cm"), length: length("5 m") },
});
const FLAT = clothFacts({ id: "flat", name: "Flat", type: "wallcovering" });

function make(
  raw: Record<string, unknown>,
  runs: ReturnType<typeof wallRun>[],
  ask: ContextAsk = {},
) {
  const fields = fieldsOf(wallpaperSchema, {
    wallpaper: "Walls",
    cloth: "paper",
    on: "walls",
    ...raw,
  });
  const context = contextFor(wallpaperAllowances, {
    cloths: [PAPER, BORDER, FLAT],
    units: "centimetres",
    runs,
    ...ask,
  });
  return { fields, made: makeWallpaper(fields, context) };
}
const ROOM = [
  wallRun("4.3 m", "2.4 m"),
  wallRun("3 m", "2.4 m", [], "east"),
  wallRun("4.3 m", "2.4 m", [], "south"),
  wallRun("3 m", "2.4 m", [], "west"),
];
const door = {
  what: "door" as const,
  fromLeft: length("1 m"),
  width: length("90 cm"),
  foot: Length.zero,
  height: length("2 m"),
};

test("run over roll length, up (wp-12, common practice, no source: 14.6 m of 5 m rolls is 3), spare stated apart", () => {
  const c = tradeCase("wallpaper", "wp-12");
  const sum = length("14.6 m");
  expect(given(c, "run")).toBe(14.6);
  expect(borderRolls(sum, length("5 m"), null)).toBe(wanted(c, "border_rolls"));
  const { made } = make({ borders: [{ cloth: "border", at: "ceiling" }] }, ROOM);
  const [border] = made.borders;
  expect(border?.run.equals(sum)).toBe(true);
  expect(border?.stretches).toBe(1);
  expect(border?.rolls).toBe(wanted(c, "border_rolls"));
  expect(border?.spare).toBe(1);
  expect(made.materials.find((m) => m.cloth === "border")?.text).toContain("4 rolls of border");
});

test("a border at a rail stops at doors, one under the ceiling passes above them", () => {
  const runs = [wallRun("4 m", "2.4 m", [door])];
  const { made } = make(
    {
      borders: [
        { cloth: "border", at: "rail", height: "90 cm" },
        { cloth: "border", at: "ceiling" },
      ],
    },
    runs,
  );
  expect(made.borders.map((b) => [b.run.toMm(), b.stretches])).toEqual([
    [3100, 2],
    [4000, 1],
  ]);
  expect(made.figures.borderMm).toBe(7100);
});

test("a repeat along the roll is lost once a roll; a longer run never needs fewer rolls", () => {
  expect(borderRolls(length("14.6 m"), length("5 m"), length("52 cm"))).toBe(4);
  expect(borderRolls(length("1 m"), length("5 m"), length("5 m"))).toBeNull();
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 9000 }), fc.integer({ min: 0, max: 90 }), (cm, up) => {
      const repeat = up === 0 ? null : Length.cm(up);
      const one = borderRolls(Length.cm(cm), length("5 m"), repeat) as number;
      expect(
        borderRolls(Length.cm(cm + 50), length("5 m"), repeat) as number,
      ).toBeGreaterThanOrEqual(one);
      // What is bought covers the run even when every roll but its own repeat is lost.
      expect(one * (500 - up)).toBeGreaterThanOrEqual(cm);
    }),
    { numRuns: 200 },
  );
});

test("what is seen: the border in the paper's place", () => {
  const { fields, made } = make({ borders: [{ cloth: "border", at: "ceiling" }] }, ROOM);
  const seen = wallpaperSeen(fields, made);
  const sum = seen.reduce((n, s) => n + s.areaMm2, 0);
  expect(sum).toBeCloseTo(made.areaMm2, 3);
  expect(seen[1]).toMatchObject({ surface: "border-0", cloth: "border" });
});

test("bad input is told at its line", () => {
  for (const [border, code, key] of [
    [{ cloth: "flat", at: "ceiling" }, "border-without-roll", "cloth"],
    [{ cloth: "border", at: "rail" }, "border-not-measured", "at"],
    [{ cloth: "border", at: "rail", height: "2.35 m" }, "border-beyond-wall", "height"],
  ] as const) {
    const found = make({ borders: [border] }, ROOM).made.diagnostics[0];
    expect(found, code).toMatchObject({ code, keyPath: `items[0].borders.0.${key}` });
    expect(found?.hint, code).toBeTruthy();
  }
});
