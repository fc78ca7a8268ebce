// Pictures that are no swatch: each ends in a clear diagnostic or an honest "cannot tell", never in a made-up number.
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import sharp from "sharp";
import { afterAll, beforeAll, expect, test } from "vitest";
import { measureCloth } from "../../src/cloth/measureCloth.ts";
import type { Pixels } from "../../src/cloth/pixels/pixels.ts";
import { readPhoto } from "../../src/images/photo/readPhoto.ts";
import { discs, photograph, plain, seeded } from "./made.ts";

const PLACE = { file: "card.md", line: 3, column: 1, keyPath: null };
const measure = (pixels: Pixels, showsMm = 200) => measureCloth(pixels, showsMm, { place: PLACE });
const SPOTS = discs("#efe6d2", "#2f4a63", { across: 20, up: 20, diameter: 9 });

let folder = "";
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "bad-input-"));
});
afterAll(() => rm(folder, { recursive: true, force: true }));

test("a black picture is refused", () => {
  const data = new Uint8Array(300 * 200 * 3).fill(2);
  const { value, diagnostics } = measure({ width: 300, height: 200, data });
  expect(value).toBeNull();
  expect(diagnostics[0]).toMatchObject({ code: "photo-black", line: 3 });
});

test("one flat colour is a plain of that colour, without repeat, motif or direction", () => {
  const shot = { widthMm: 200, heightMm: 150, widthPx: 320 };
  const { value } = measure(photograph(plain("#8a5a44"), shot));
  expect(value?.pattern).toMatchObject({
    kind: "plain",
    repeat: null,
    motifMm: null,
    directionDeg: null,
    contrast: 0,
    busyness: 0,
  });
  expect(value?.colours).toHaveLength(1);
  expect(value?.colours[0]?.hex).toBe("#8a5a44");
});

test("eight pixels are too few", async () => {
  const file = join(folder, "tiny.png");
  await sharp({ create: { width: 8, height: 8, channels: 3, background: "#884422" } }).toFile(file);
  const { value, diagnostics } = await readPhoto(file, { place: PLACE });
  expect(value).toBeNull();
  expect(diagnostics[0]?.code).toBe("photo-too-small");
});

test("a panorama gives no sure repeat, and says why", () => {
  const pixels = photograph(SPOTS, { widthMm: 400, heightMm: 80, widthPx: 640 });
  const { value } = measure(pixels, 400);
  expect(value?.pattern.repeat?.sure ?? false).toBe(false);
  expect(value?.confirm.map(({ what }) => what)).toContain("photo");
});

test("a face has no sure repeat, and its kind is to be confirmed", () => {
  const { value } = measure(face());
  expect(value?.pattern.repeat?.sure ?? false).toBe(false);
  expect(value?.pattern.directionDeg).toBeNull();
  expect(value?.confirm.map(({ what }) => what)).toContain("pattern.repeat");
});

test.each([0, 1_000_000])("a length shown of %d mm is refused", (showsMm) => {
  const { value, diagnostics } = measure(
    photograph(SPOTS, { widthMm: 200, heightMm: 150, widthPx: 160 }),
    showsMm,
  );
  expect(value).toBeNull();
  expect(diagnostics[0]?.code).toMatch(/^shows-too-/);
});

test("a white card outside the picture is refused", () => {
  const pixels = photograph(SPOTS, { widthMm: 200, heightMm: 150, widthPx: 160 });
  const neutral = { rectangle: { x: 140, y: 10, width: 60, height: 30 }, reflectance: 0.9 };
  const { value, diagnostics } = measureCloth(pixels, 200, { place: PLACE, neutral });
  expect(value).toBeNull();
  expect(diagnostics[0]?.code).toBe("neutral-outside");
});

test("of an animated picture the first is read, 16 bits and CMYK inks come to the same cloth", async () => {
  const pixels = photograph(SPOTS, { widthMm: 100, heightMm: 80, widthPx: 320, noise: 2 });
  const { width, height } = pixels;
  const raw = { width, height, channels: 3 as const };
  const frame = await sharp(pixels.data, { raw }).png().toBuffer();
  const dark = await sharp({ create: { ...raw, background: "#101010" } })
    .png()
    .toBuffer();
  const files = {
    "moving.webp": sharp([frame, dark], { join: { animated: true } }).webp({ lossless: true }),
    "deep.png": sharp(frame).toColourspace("rgb16").png(),
    "inks.jpg": sharp(frame).toColourspace("cmyk").jpeg({ quality: 95 }),
  };
  for (const [name, image] of Object.entries(files)) {
    await image.toFile(join(folder, name));
    const { value: photo } = await readPhoto(join(folder, name), { place: PLACE });
    expect(photo?.notes.length, name).toBeGreaterThan(0);
    const found = photo && measure(photo.pixels, 100).value?.pattern.repeat;
    expect(found?.horizontalMm, name).toBeCloseTo(20, 0);
    expect(found?.verticalMm, name).toBeCloseTo(20, 0);
  }
});

/** An oval of skin with eyes, brows, mouth and hair before a wall. */
function face(): Pixels {
  const [width, height] = [360, 480];
  const data = new Uint8Array(width * height * 3);
  const random = seeded(11);
  const inside = (x: number, y: number, cx: number, cy: number, rx: number, ry: number) =>
    ((x - cx) / rx) ** 2 + ((y - cy) / ry) ** 2 < 1;
  for (let y = 0, i = 0; y < height; y++) {
    for (let x = 0; x < width; x++, i += 3) {
      let rgb = [176, 184, 180];
      if (inside(x, y, 180, 190, 130, 160)) rgb = [70, 48, 36];
      if (inside(x, y, 180, 250, 105, 150)) rgb = [214, 168, 142];
      for (const eye of [135, 225]) {
        if (inside(x, y, eye, 195, 26, 6)) rgb = [80, 55, 40];
        if (inside(x, y, eye, 220, 20, 10)) rgb = [240, 236, 230];
        if (inside(x, y, eye, 220, 9, 9)) rgb = [60, 80, 90];
      }
      if (inside(x, y, 180, 335, 42, 12)) rgb = [168, 84, 84];
      if (inside(x, y, 180, 275, 12, 22)) rgb = [198, 148, 122];
      const shade = 1 - 0.35 * (x / width) + 0.02 * (random() - 0.5);
      for (let c = 0; c < 3; c++) data[i + c] = Math.round((rgb[c] as number) * shade);
    }
  }
  return { width, height, data };
}
