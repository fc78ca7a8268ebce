import { expect, test } from "vitest";
import { separateColours } from "../../src/cloth/palette/palette.ts";
import { patternPicture } from "../../src/cloth/patternPicture.ts";
import { photograph, sprigs } from "./made.ts";

const SPRIGS = sprigs(["#efe3c8", "#556b2f", "#c98a86", "#d8a21c"], { across: 40, up: 52 });

test("a pattern is read smaller than its colours are told, in the same colours", () => {
  const separated = separateColours(
    photograph(SPRIGS, { widthMm: 300, heightMm: 225, widthPx: 960, noise: 3 }),
  );
  const { even, mmPerPx, fine, separation, hexes } = patternPicture(separated, 0.3125, 960);
  expect([even.width, even.height]).toEqual([640, 480]);
  expect(fine).toEqual({ even: separated.even, mmPerPx: 0.3125 });
  expect(mmPerPx).toBe(0.46875);
  expect(separation.centres).toEqual(separated.separation.centres);
  const shares = (counts: readonly number[]) =>
    counts.map((n) => n / counts.reduce((sum, m) => sum + m, 0));
  const large = shares(separated.separation.labels.counts);
  for (const [g, share] of shares(separation.labels.counts).entries())
    expect(Math.abs(share - (large[g] as number))).toBeLessThan(0.01);
  expect(hexes()).toHaveLength(separation.centres.length);
});

test("a part of a photograph is made smaller as the whole would be, a small one stays as it is", () => {
  const separated = separateColours(
    photograph(SPRIGS, { widthMm: 200, heightMm: 150, widthPx: 480, noise: 3 }),
  );
  expect(patternPicture(separated, 1, 960).even.width).toBe(320);
  const same = patternPicture(separated, 1, 480);
  expect(same.even).toBe(separated.even);
  expect(same.mmPerPx).toBe(1);
});
