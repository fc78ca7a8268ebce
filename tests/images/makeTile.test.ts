import { expect, test } from "vitest";
import { drawCell } from "../../src/images/tile/drawCell.ts";
import { openCloth } from "../../src/images/tile/openCloth.ts";
import type { TileCell } from "../../src/swatches/tileCell.ts";
import { makeLightTile } from "../cloths/makeTile.ts";
import { expose } from "../cloths/photograph.ts";

/** A picture of three channels. */
interface Picture {
  readonly width: number;
  readonly height: number;
  readonly rgb: Buffer;
}

const at = (p: Picture, x: number, y: number): number => {
  const i = (p.width * (((y % p.height) + p.height) % p.height) + x) * 3;
  return ((p.rgb[i] as number) + (p.rgb[i + 1] as number) + (p.rgb[i + 2] as number)) / 3;
};

/** How much more the picture changes from its last column to its first, `drop` lower, than from column to column inside it; one is no seam. */
function seamAcross(p: Picture, drop = 0): number {
  const step = (x: number, next: number, down: number): number => {
    let sum = 0;
    for (let y = 0; y < p.height; y++) sum += Math.abs(at(p, next, y + down) - at(p, x, y));
    return sum / p.height;
  };
  let inside = 0;
  for (let x = 0; x + 1 < p.width; x++) inside = Math.max(inside, step(x, x + 1, 0));
  return step(p.width - 1, 0, drop) / inside;
}

/** The same from the last row to the first. */
function seamUp(p: Picture): number {
  const turned = Buffer.alloc(p.rgb.length);
  for (let y = 0; y < p.height; y++)
    for (let x = 0; x < p.width; x++)
      p.rgb.copy(turned, (x * p.height + y) * 3, (y * p.width + x) * 3, (y * p.width + x) * 3 + 3);
  return seamAcross({ width: p.height, height: p.width, rgb: turned });
}

async function shot(
  name: Parameters<typeof makeLightTile>[0],
  mm: readonly [number, number],
  pxPerMm: number,
  hand: { turnDeg: number; fallOff: number },
): Promise<Picture> {
  const tile = await makeLightTile(name);
  return expose(tile, { acrossMm: mm[0], downMm: mm[1], pxPerMm, ...hand }, 5);
}

const cellOf = (p: Picture, cell: Partial<TileCell>): TileCell => ({
  widthPx: Math.round(p.width * 0.8),
  heightPx: Math.round(p.height * 0.8),
  repeatsAcross: true,
  repeatsUp: true,
  halfDrop: false,
  middle: { x: p.width / 2, y: p.height / 2 },
  ground: null,
  ...cell,
});

async function made(p: Picture, cell: TileCell): Promise<Picture> {
  const photo = { width: p.width, height: p.height, data: p.rgb };
  const { width, height, data } = await drawCell(await openCloth(photo, cell), 1);
  return { width, height, rgb: Buffer.from(data) };
}

/** The cell cut out as it is: what a naive tile would be. */
function cut(p: Picture, { widthPx, heightPx }: TileCell): Picture {
  const rgb = Buffer.alloc(widthPx * heightPx * 3);
  for (let y = 0; y < heightPx; y++)
    p.rgb.copy(rgb, y * widthPx * 3, y * p.width * 3, (y * p.width + widthPx) * 3);
  return { width: widthPx, height: heightPx, rgb };
}

// The check "hayrick" repeats every 4 1/2 in, 114.3 mm, both ways; the damask "vestry" every 114.3 by 342.9 mm, half-drop (tests/cloths).
const REPEAT = 114.3;

test("a check photographed askew, in falling light and a little larger than was said, joins itself on all sides", async () => {
  const p = await shot("hayrick", [REPEAT * 1.3, REPEAT * 1.3], 3, { turnDeg: 1.5, fallOff: 0.3 });
  const size = Math.round(REPEAT * 3 * 1.015);
  const cell = cellOf(p, { widthPx: size, heightPx: size });
  const tile = await made(p, cell);
  expect(seamAcross(tile)).toBeLessThan(1.05);
  expect(seamUp(tile)).toBeLessThan(1.05);
  // The measure itself: a cell that is only cut out shows its seam.
  const naive = cut(p, cell);
  expect(Math.max(seamAcross(naive), seamUp(naive))).toBeGreaterThan(1.3);
});

test("half-drop cloth joins the next column half a cell lower, and not level", async () => {
  const p = await shot("vestry", [REPEAT * 1.25, REPEAT * 3 * 1.15], 2, {
    turnDeg: -1,
    fallOff: 0.25,
  });
  const cell = cellOf(p, {
    widthPx: Math.round(REPEAT * 2),
    heightPx: Math.round(REPEAT * 3 * 2),
    halfDrop: true,
  });
  const tile = await made(p, cell);
  const half = Math.round(cell.heightPx / 2);
  expect(seamAcross(tile, half)).toBeLessThan(1.1);
  expect(seamUp(tile)).toBeLessThan(1.1);
  expect(seamAcross(tile, 0)).toBeGreaterThan(1.3);
});

test("the light of a plain is even, and its weave as lively where two places are mixed as elsewhere", async () => {
  const p = await shot("chaff", [150, 110], 3, { turnDeg: 1, fallOff: 0.35 });
  const tile = await made(p, cellOf(p, { repeatsAcross: false, repeatsUp: false }));
  const part = (q: Picture, i: number, j: number): { mean: number; spread: number } => {
    const [w, h] = [Math.floor(q.width / 4), Math.floor(q.height / 4)];
    let [sum, square] = [0, 0];
    for (let y = j * h; y < (j + 1) * h; y++)
      for (let x = i * w; x < (i + 1) * w; x++) {
        sum += at(q, x, y);
        square += at(q, x, y) ** 2;
      }
    const mean = sum / (w * h);
    return { mean, spread: Math.sqrt(square / (w * h) - mean ** 2) };
  };
  const parts = (q: Picture) => [0, 1, 2, 3].flatMap((i) => [0, 1, 2, 3].map((j) => part(q, i, j)));
  const range = (values: readonly number[]): number => Math.max(...values) / Math.min(...values);
  expect(range(parts(p).map((q) => q.mean))).toBeGreaterThan(1.12);
  expect(range(parts(tile).map((q) => q.mean))).toBeLessThan(1.06);
  expect(range(parts(tile).map((q) => q.spread))).toBeLessThan(1.6);
  expect(seamAcross(tile)).toBeLessThan(1.1);
});

test("what shows less than a cell stands in its middle, and nothing of the pattern is invented about it", async () => {
  const p = await shot("hayrick", [80, 80], 3, { turnDeg: 0, fallOff: 0 });
  const size = 344;
  const tile = await made(p, cellOf(p, { widthPx: size, heightPx: size, ground: "#808080" }));
  for (const [x, y] of [
    [0, 0],
    [size - 1, 4],
    [Math.round(size / 2), 3],
  ] as const)
    expect(at(tile, x, y)).toBe(128);
  // In the middle it is the photograph, pixel for pixel but for reading between pixels.
  let off = 0;
  for (let k = -20; k < 20; k++)
    off += Math.abs(
      at(tile, Math.round(size / 2) + k, Math.round(size / 2)) -
        at(p, Math.round(p.width / 2) + k, Math.round(p.height / 2)),
    );
  expect(off / 40).toBeLessThan(12);
});
