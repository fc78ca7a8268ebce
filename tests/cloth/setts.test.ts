// Published thread counts, woven here as a twill and photographed: the bands that are measured are those counts.
// The counts of the half setts are those commonly printed of these two tartans (from memory); the dyes are ours.
import { expect, test } from "vitest";
import { measureCloth } from "../../src/cloth/measureCloth.ts";
import { difference } from "../../src/colour/difference.ts";
import { expose } from "../cloths/photograph.ts";
import { threads, twill, wovenYarns } from "../cloths/techniques/wovenYarns.ts";

const DYES: Readonly<Record<string, string>> = {
  B: "#31548c",
  K: "#1f1f22",
  G: "#3a7a52",
  R: "#b02a30",
  Y: "#e0b23c",
  W: "#eeeae0",
};
const THREAD_MM = 0.45;

test.each([
  ["the government tartan", "B24 K4 B4 K4 B4 K20 G24 K6 G24 K20 B22 K4 B4"],
  ["the royal Stewart tartan", "R72 B8 K12 Y2 K2 W2 K2 G16 R8 K2 R4 W2"],
])("%s: every band of its sett, to half a thread", (_, sett) => {
  const half = sett.split(" ").map((one) => {
    return [DYES[one.slice(0, 1)] as string, Number(one.slice(1))] as const;
  });
  // It turns at its first and its last stripe, which are counted once.
  const full = [...half, ...half.slice(1, -1).reverse()];
  const repeatMm = THREAD_MM * full.reduce((sum, [, count]) => sum + count, 0);
  const yarns = threads(full);
  const loom = { warp: yarns, weft: yarns, warpOnTop: twill, yarnPx: 4 };
  const look = { depth: 0.3, unevenness: 0.6, hair: 0.05, seed: 7, twist: 1 };
  const tile = wovenYarns({ ...loom, ...look }, repeatMm);
  const acrossMm = 2.2 * repeatMm;
  const shot = { acrossMm, downMm: 0.8 * acrossMm, pxPerMm: 1000 / acrossMm };
  const { width, height, rgb } = expose(tile, { ...shot, turnDeg: 1, fallOff: 0.15 }, 3);
  const pixels = { width, height, data: new Uint8Array(rgb) };
  const place = { file: "sett", line: 1, column: 1, keyPath: null };
  const { value } = measureCloth(pixels, acrossMm, { place });
  expect(value?.pattern.kind).toBe("check");
  expect(value?.pattern.runs).toBe("two-way");
  expect(value?.pattern.bands).toHaveLength(2);
  for (const { bands } of value?.pattern.bands ?? []) {
    const said = bands.map(({ hex, widthMm }) => `${hex} ${(widthMm / THREAD_MM).toFixed(1)}`);
    expect(bands.length, said.join(", ")).toBe(full.length);
    const fits = full.some((__, turn) =>
      bands.every(({ hex, widthMm }, i) => {
        const [dye, count] = full[(i + turn) % full.length] as readonly [string, number];
        return difference(hex, dye) < 6 && Math.abs(widthMm / THREAD_MM - count) < 0.5;
      }),
    );
    expect(fits, said.join(", ")).toBe(true);
  }
});
