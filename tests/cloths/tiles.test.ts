import { expect, test } from "vitest";
import { CLOTHS } from "./cloths.ts";
import { type Tile, toBytes } from "./ground/tile.ts";
import { makeTile } from "./makeTile.ts";

/** Mean absolute difference of a tile from itself moved by whole pixels, wrapping. */
function moved(tile: Tile, dx: number, dy: number): number {
  const { width, height, rgb } = tile;
  let sum = 0;
  let count = 0;
  for (let y = 0; y < height; y += 2) {
    const y2 = (((y + dy) % height) + height) % height;
    for (let x = 0; x < width; x += 2) {
      const x2 = (((x + dx) % width) + width) % width;
      for (let k = 0; k < 3; k++) {
        sum += Math.abs(
          (rgb[(y * width + x) * 3 + k] as number) - (rgb[(y2 * width + x2) * 3 + k] as number),
        );
        count += 1;
      }
    }
  }
  return sum / count;
}

/** Mean absolute difference between one column (or row) and the next. */
function step(tile: Tile, along: "x" | "y", at: number): number {
  const { width, height, rgb } = tile;
  const long = along === "x" ? height : width;
  let sum = 0;
  for (let i = 0; i < long; i++) {
    const [x, y] = along === "x" ? [at, i] : [i, at];
    const [x2, y2] = along === "x" ? [(at + 1) % width, i] : [i, (at + 1) % height];
    for (let k = 0; k < 3; k++) {
      sum += Math.abs(
        (rgb[(y * width + x) * 3 + k] as number) - (rgb[(y2 * width + x2) * 3 + k] as number),
      );
    }
  }
  return sum / long / 3;
}

const sketches = new Map<string, Promise<Tile>>();

/** Half the usual density: enough to compare, and quick. Drawn once for all that is asked of it. */
function sketch(name: string): Promise<Tile> {
  const known = sketches.get(name) ?? makeTile(name, (CLOTHS[name]?.pxPerMm ?? 1) / 2);
  sketches.set(name, known);
  return known;
}

test.each(Object.keys(CLOTHS))(
  "the tile of %s joins itself at both edges without a seam",
  async (name) => {
    const tile = await sketch(name);
    for (const along of ["x", "y"] as const) {
      const count = along === "x" ? tile.width : tile.height;
      const inside = Array.from({ length: count - 1 }, (_, at) => step(tile, along, at)).sort(
        (a, b) => a - b,
      );
      // A seam would stand out among the steps from one row of pixels to the next; it may not exceed the greatest of them.
      expect(step(tile, along, count - 1)).toBeLessThanOrEqual(
        (inside.at(-1) as number) * 1.15 + 1,
      );
    }
  },
);

test.each(Object.keys(CLOTHS))("%s is drawn alike every time", async (name) => {
  const cloth = CLOTHS[name] as (typeof CLOTHS)[string];
  const first = await sketch(name);
  const again = toBytes(await cloth.make(cloth.pxPerMm / 2));
  expect(again.width).toBe(first.width);
  expect(Buffer.compare(Buffer.from(again.rgb), Buffer.from(first.rgb))).toBe(0);
});

const patterned = Object.entries(CLOTHS).filter(([, cloth]) => cloth.pattern.repeat !== null);

test.each(patterned)(
  "%s repeats by the lattice that its truth states, and by no half of it",
  async (name, cloth) => {
    const tile = await sketch(name);
    const px = (mm: number) => Math.round(mm * tile.pxPerMm);
    for (const [x, y] of cloth.pattern.repeat?.lattice ?? []) {
      const whole = moved(tile, px(x), px(y));
      const half = moved(tile, px(x / 2), px(y / 2));
      // A vector that closes the whole tile is exact; within it only weave and the block's hand differ.
      expect(whole).toBeLessThan(half * 0.75 + 0.01);
    }
  },
);

test("a cloth that the demo does not have is refused by name", async () => {
  await expect(makeTile("nettle")).rejects.toThrow(/expected one of pomander/);
});
