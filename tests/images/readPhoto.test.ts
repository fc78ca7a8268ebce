import { mkdir, truncate } from "node:fs/promises";
import { join } from "node:path";
import Color from "colorjs.io";
import sharp from "sharp";
import { expect, test } from "vitest";
import type { Pixels } from "../../src/cloth/pixels/pixels.ts";
import { sha256 } from "../../src/images/cache.ts";
import { MOST_BYTES } from "../../src/images/photo/loadPhotoFile.ts";
import { readPhoto } from "../../src/images/photo/readPhoto.ts";
import { file, flag, folder, made, PLACE } from "./made.ts";

const at = ({ width, data }: Pixels, x: number, y: number) => [
  ...data.slice((y * width + x) * 3, (y * width + x) * 3 + 3),
];

function close(actual: readonly number[], expected: readonly number[], tolerance: number) {
  expected.forEach((value, i) => {
    expect(
      Math.abs((actual[i] as number) - value),
      `${actual} against ${expected}`,
    ).toBeLessThanOrEqual(tolerance);
  });
}

async function read(name: string, bytes: Uint8Array | string, sidePx?: number) {
  return readPhoto(await file(name, bytes), { place: PLACE, sidePx });
}

test.each(["jpeg", "png", "webp", "tiff", "avif"] as const)("%s is read", async (format) => {
  const bytes = await flag().toFormat(format, { quality: 95 }).toBuffer();
  const { value, diagnostics } = await read(`fern.${format}`, bytes);
  expect(diagnostics).toEqual([]);
  expect(value).toMatchObject({ format, widthPx: 96, heightPx: 64, notes: [] });
  expect(value?.sha256).toBe(sha256(bytes));
  if (!value) throw new Error();
  close(at(value.pixels, 60, 10), [200, 80, 40], 5);
  close(at(value.pixels, 60, 50), [30, 60, 140], 5);
});

// EXIF 2.32, tag 0x0112: which side of the scene the stored row 0 and column 0 are.
const W = 96;
const H = 64;
const scene: Record<number, (row: number, column: number) => readonly [x: number, y: number]> = {
  1: (r, c) => [c, r],
  2: (r, c) => [W - 1 - c, r],
  3: (r, c) => [W - 1 - c, H - 1 - r],
  4: (r, c) => [c, H - 1 - r],
  5: (r, c) => [r, c],
  6: (r, c) => [W - 1 - r, c],
  7: (r, c) => [W - 1 - r, H - 1 - c],
  8: (r, c) => [r, H - 1 - c],
};
test.each([1, 2, 3, 4, 5, 6, 7, 8])("orientation %i comes out upright", async (orientation) => {
  const upright = await flag(W, H).raw().toBuffer();
  const place = scene[orientation] as (typeof scene)[1];
  const [width, height] = orientation < 5 ? [W, H] : [H, W];
  const stored = made(width, height, (column, row) => {
    const [x, y] = place?.(row, column) ?? [0, 0];
    const i = (y * W + x) * 3;
    return [upright[i] ?? 0, upright[i + 1] ?? 0, upright[i + 2] ?? 0];
  });
  const bytes = await stored.withMetadata({ orientation }).png().toBuffer();
  const { value } = await read("turned.png", bytes);
  expect([value?.widthPx, value?.heightPx]).toEqual([96, 64]);
  if (!value) throw new Error();
  expect(at(value.pixels, 2, 2)).toEqual([255, 255, 255]);
  expect(at(value.pixels, 90, 2)).toEqual([200, 80, 40]);
  expect(at(value.pixels, 2, 60)).toEqual([30, 60, 140]);
  expect(value.notes.some((note) => note.includes("upright"))).toBe(orientation > 1);
});

test("a Display P3 photograph is converted to sRGB (values by colorjs.io)", async () => {
  // The profile is written for what sRGB can hold; the file then carries P3 numbers.
  const bytes = await made(64, 64, () => [200, 80, 40])
    .withIccProfile("p3")
    .png()
    .toBuffer();
  const stored = await sharp(bytes, { ignoreIcc: true } as object)
    .raw()
    .toBuffer();
  const p3 = new Color("srgb", [200 / 255, 80 / 255, 40 / 255]).to("p3").coords as number[];
  close(
    [...stored.subarray(0, 3)],
    p3.map((v) => v * 255),
    1.5,
  );
  const { value } = await read("p3.png", bytes);
  if (!value) throw new Error();
  close(at(value.pixels, 30, 30), [200, 80, 40], 2);
  expect(value.notes.join()).toMatch(/converted from its own profile \(.*P3.*\) to sRGB/);
});

test("CMYK, 16 bits, greys and transparency come to plain sRGB, and it is said", async () => {
  const brick = () => made(64, 64, () => [200, 80, 40]);
  const inks = await read("inks.jpg", await brick().toColourspace("cmyk").jpeg().toBuffer());
  expect(inks.value?.notes.join()).toContain("CMYK");
  expect(inks.value?.pixels.data).toHaveLength(64 * 64 * 3);

  const deep = await read("deep.png", await brick().toColourspace("rgb16").png().toBuffer());
  expect(deep.value && at(deep.value.pixels, 5, 5)).toEqual([200, 80, 40]);
  expect(deep.value?.notes).toEqual(["brought to 8 bits a channel"]);

  const grey = await read("grey.png", await brick().toColourspace("b-w").png().toBuffer());
  const [r, g, b] = (grey.value && at(grey.value.pixels, 5, 5)) ?? [];
  expect([g, b]).toEqual([r, r]);
  expect(grey.value?.notes.join()).toContain("black-and-white");

  const part = async (seen: number) => {
    const alpha = Buffer.from(Uint8Array.from({ length: 64 * 64 }, (_, p) => (p < seen ? 255 : 0)));
    const rgb = await brick().raw().toBuffer();
    const picture = sharp(rgb, { raw: { width: 64, height: 64, channels: 3 } });
    return picture
      .joinChannel(alpha, { raw: { width: 64, height: 64, channels: 1 } })
      .png()
      .toBuffer();
  };
  const clear = await read("clear.png", await part(48 * 64));
  expect(clear.value && at(clear.value.pixels, 5, 60)).toEqual([255, 255, 255]);
  expect(clear.value && at(clear.value.pixels, 5, 5)).toEqual([200, 80, 40]);
  expect(clear.value?.notes).toEqual([
    "transparent parts, 25 % of the picture, laid on white: they count as cloth",
  ]);
  const whole = await read("whole.png", await part(64 * 64));
  expect(whole.value?.notes).toEqual([]);
  const none = await read("none.png", await part(600));
  expect(none.value).toBeNull();
  expect(none.diagnostics[0]).toMatchObject({ code: "photo-transparent" });
  expect(none.diagnostics[0]?.message).toContain("transparent over 85 % of its area");
});

test("a large photograph is shrunk in linear light, its own size kept", async () => {
  const checks = made(512, 256, (x, y) => (((x ^ y) & 1) === 1 ? [255, 255, 255] : [0, 0, 0]));
  const { value } = await read("checks.png", await checks.png().toBuffer(), 64);
  expect([value?.widthPx, value?.heightPx]).toEqual([512, 256]);
  expect([value?.pixels.width, value?.pixels.height]).toEqual([64, 32]);
  // Half the light is code 188, not 128 (IEC 61966-2-1).
  expect(new Set(value?.pixels.data)).toEqual(new Set([188]));
});

const ftyp = (brand: string, more = "") =>
  Buffer.concat([
    Buffer.from([0, 0, 0, 24]),
    Buffer.from(`ftyp${brand}\0\0\0\0${more.padEnd(8, "\0")}`, "latin1"),
    Buffer.alloc(200, 1),
  ]);
const jpeg = async () =>
  made(400, 400, (x, y) => [x & 255, y & 255, (x * y) & 255])
    .jpeg()
    .toBuffer();
const half = (bytes: Buffer) => bytes.subarray(0, bytes.length >> 1);

const refused: [
  string,
  string,
  () => Promise<Uint8Array | string> | Uint8Array | string,
  RegExp,
][] = [
  ["fern.heic", "photo-heic", () => ftyp("heic", "mif1heic"), /HEIC.*cannot be read/],
  ["fern.jpg", "photo-heic", () => ftyp("mif1", "heix"), /HEIC/],
  [
    "fern.svg",
    "photo-svg",
    () => '<?xml version="1.0"?>\n<svg xmlns="http://www.w3.org/2000/svg"/>',
    /drawing \(SVG\)/,
  ],
  ["fern.jpg", "photo-svg", () => "  <svg viewBox='0 0 9 9'></svg>", /drawing \(SVG\)/],
  ["fern.gif", "photo-gif", () => "GIF89a\x01\0\x01\0", /GIF picture, a kind that is not read/],
  ["fern.bmp", "photo-bmp", () => "BM\0\0\0\0", /BMP picture/],
  ["fern.pdf", "photo-pdf", () => "%PDF-1.7\n", /drawing \(PDF\)/],
  ["fern.jpg", "photo-empty", () => "", /is empty \(0 bytes\)/],
  [
    "fern.jpg",
    "photo-not-a-picture",
    () => "not a picture at all",
    /not a picture that can be read/,
  ],
  ["fern.jpg", "photo-damaged", async () => half(await jpeg()), /damaged or incomplete/],
  [
    "fern.png",
    "photo-damaged",
    async () => half(await flag(300, 300).png({ compressionLevel: 0 }).toBuffer()),
    /damaged or incomplete/,
  ],
  [
    "fern.webp",
    "photo-damaged",
    async () => half(await flag(300, 300).webp({ lossless: true }).toBuffer()),
    /damaged or incomplete/,
  ],
  [
    "fern.tif",
    "photo-damaged",
    async () => half(await flag(300, 300).tiff({ compression: "none" }).toBuffer()),
    /damaged or incomplete/,
  ],
  [
    "fern.avif",
    "photo-damaged",
    async () => half(await flag(300, 300).avif().toBuffer()),
    /damaged or incomplete/,
  ],
  ["fern.jpg", "photo-damaged", async () => (await jpeg()).fill(7, 20), /damaged or incomplete/],
  [
    "long.png",
    "photo-too-large",
    () =>
      sharp({ create: { width: 20000, height: 60, channels: 3, background: "#fff" } })
        .png()
        .toBuffer(),
    /20000 x 60 pixels; at most 16000 on a side and 100 million in all/,
  ],
  [
    "vast.png",
    "photo-too-large",
    () =>
      sharp({ create: { width: 12000, height: 9000, channels: 3, background: "#fff" } })
        .png({ compressionLevel: 1 })
        .toBuffer(),
    /12000 x 9000 pixels; at most 16000 on a side and 100 million in all/,
  ],
  [
    "thumb.png",
    "photo-too-small",
    () => flag(96, 40).png().toBuffer(),
    /96 x 40 pixels, too small/,
  ],
];

test.each(refused)("%s is refused as %s", async (name, code, bytes, message) => {
  const { value, diagnostics } = await read(name, await bytes());
  expect(value).toBeNull();
  expect(diagnostics).toHaveLength(1);
  const [d] = diagnostics;
  expect(d).toMatchObject({ ...PLACE, code, severity: "error", actual: name });
  expect(d?.message).toMatch(message);
  expect(d?.message).toContain(name);
  expect(d?.hint).toBeTruthy();
  // Plain words only: nothing of the decoder's own talk.
  expect(`${d?.message} ${d?.hint}`).not.toMatch(/vips|buffer|header|Error|undefined|NaN/);
});

test("the HEIC hint says how to export from a telephone", async () => {
  const { diagnostics } = await read("fern.heic", ftyp("heic"));
  expect(diagnostics[0]?.hint).toMatch(/telephone.*Most Compatible/);
});

test("missing files, folders and too heavy files are refused", async () => {
  const here = await folder();
  const missing = await readPhoto(join(here, "fern.jpg"), { place: PLACE });
  expect(missing.value).toBeNull();
  expect(missing.diagnostics[0]).toMatchObject({
    ...PLACE,
    code: "photo-missing",
    message: "There is no photograph fern.jpg.",
  });
  await mkdir(join(here, "sub"));
  const sub = await readPhoto(join(here, "sub"), { place: PLACE });
  expect(sub.diagnostics[0]?.code).toBe("photo-not-a-file");
  const under = await readPhoto(join(await file("a.jpg", "x"), "b.jpg"), { place: PLACE });
  expect(under.diagnostics[0]?.code).toBe("photo-missing");

  const heavy = await file("heavy.jpg", await jpeg());
  await truncate(heavy, MOST_BYTES + 1);
  const tooHeavy = await readPhoto(heavy, { place: PLACE });
  expect(tooHeavy.diagnostics[0]).toMatchObject({
    code: "photo-too-heavy",
    message: "The photograph heavy.jpg is 120 MB; at most 120 MB are read.",
  });
});
