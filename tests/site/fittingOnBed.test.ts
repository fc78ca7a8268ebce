import { expect, test } from "vitest";
import { askedOf, CURTAINS, linesOf, sheetOf } from "./fittingOf.ts";

// What the fitter reads of what hangs on a bed. Numbers by hand; what is said is common practice, no source.

test("what holds back a bed's curtains goes up on the bed too, and no wall is looked at for it", async () => {
  const { walls } = await sheetOf(
    `  - object: oak-bed\n    at: { floor: 200 cm x 175 cm, facing: south }\n  - curtains: Foot\n    at: { on: oak-bed, side: foot }\n    cloth: plain\n    pole: 140 cm\n    pole-height: 210 cm\n    to: floor\n    heading: pencil-pleat\n  - tieback: Ties\n    at: { on: curtains-foot }\n    cloth: plain\n    hook-height: 90 cm\n`,
    { "objects/oak-bed.md": "object: Oak bed\nshape: bed\nsize: 150 cm x 200 cm x 110 cm" },
  );
  expect(walls.map(({ heading, entries }) => [heading, entries.length])).toEqual([
    ["On Oak bed", 2],
  ]);
  const ties = walls[0]?.entries.find(({ heading }) => /tie-back/i.test(heading));
  const words = [
    ...(ties?.checks.map(({ text }) => text.html) ?? []),
    ...linesOf(ties, "Caution"),
  ].join(" ");
  expect(words).toContain("Frame looked at");
  expect(words).toContain("None on a cot or a small child");
  expect(words).not.toMatch(/wall/i);
});

test("what hangs on a bed stands by itself after the walls, without a wall's drawing, and speaks of the bed's tester", async () => {
  const bed = `${CURTAINS}
  - object: oak-bed
    at: { wall: south, from-left: 100 cm }
  - curtains: Foot
    at: { on: oak-bed, side: foot }
    cloth: plain
    hangs-from: track
    pole: 150 cm
    pole-height: 215 cm
    to: floor
    heading: pencil-pleat
  - valance: Tester
    at: { on: oak-bed }
    cloth: plain
    board: 154 cm
    depth: 30 cm
    return: 60 cm
    heading: gathered`;
  const { walls } = await sheetOf(bed, {
    "objects/oak-bed.md": "object: Oak bed\nshape: bed\nsize: 150 cm x 200 cm x 110 cm",
  });
  expect(walls.map((w) => [w.heading, w.before, w.drawings.length, w.entries.length])).toEqual([
    ["North wall", "", 1, 1],
    ["On Oak bed", "", 0, 2],
  ]);
  const [first, second] = walls[1]?.entries ?? [];
  expect([first?.of, second?.of]).toEqual(["2 of 3", "3 of 3"]);
  expect(linesOf(first, "Piece")).toEqual(["On Oak bed, at its foot."]);
  expect(linesOf(second, "Tester")).toEqual(["154 cm long.", "Goes 60 cm along each side."]);
  expect(askedOf(second).join()).toMatch(/^How high above the floor is the tester&#39;s top\?$/);
  expect(JSON.stringify(walls[1])).not.toMatch(/wall|[Bb]oard|window/);
});
