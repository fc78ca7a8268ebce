import { readdir, readFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import sharp from "sharp";
import { expect, test } from "vitest";
import { openCache } from "../../src/images/cache.ts";
import { makePicture } from "../../src/images/makePicture.ts";
import { type OpenPhoto, openPhoto } from "../../src/images/photo/openPhoto.ts";
import { profileName } from "../../src/images/photo/profileName.ts";
import { file, flag, folder, made, PLACE } from "./made.ts";

/** A photograph, opened as the site does. */
async function opened(path: string): Promise<OpenPhoto> {
  const { value } = await openPhoto(path, PLACE);
  if (!value) throw new Error(`${path} cannot be opened`);
  return value;
}

async function source() {
  return file(
    "IMG_0042.jpg",
    await flag(960, 640)
      .withExif({
        IFD0: { Make: "Invented", Artist: "A. Person", Copyright: "secret words" },
        IFD3: { GPSLatitudeRef: "N", GPSLatitude: "51/1 30/1 3230/100" },
      })
      .jpeg({ quality: 95 })
      .toBuffer(),
  );
}

test("a published picture is a 4:4:4 sRGB JPEG of the width asked for, without any of the camera's data", async () => {
  const path = await source();
  expect((await sharp(path).metadata()).exif?.toString("latin1")).toContain("secret words");
  const destination = join(await folder(), "deep/er/p1.jpg");
  const request = {
    photo: await opened(path),
    crop: null,
    widthPx: 300,
    destination,
    place: PLACE,
  };
  const { value, diagnostics } = await makePicture(request);
  expect(diagnostics).toEqual([]);
  const bytes = await readFile(destination);
  const meta = await sharp(bytes).metadata();
  expect(meta).toMatchObject({
    format: "jpeg",
    width: 300,
    height: 200,
    chromaSubsampling: "4:4:4",
    space: "srgb",
  });
  expect(value).toMatchObject({ widthPx: 300, heightPx: 200, bytes: bytes.length });
  expect([meta.exif, meta.xmp, meta.iptc, meta.orientation]).toEqual([
    undefined,
    undefined,
    undefined,
    undefined,
  ]);
  expect(bytes.toString("latin1")).not.toMatch(/secret|Invented|Person|GPS|IMG_0042/);
  expect(meta.icc && profileName(meta.icc)).toMatch(/sRGB/);
  // Only the finished file is there: no temporary one is left.
  expect(await readdir(dirname(destination))).toEqual(["p1.jpg"]);
});

test("a crop is taken from the upright photograph, at its own size where more was asked", async () => {
  const turned = await file(
    "turned.png",
    await sharp(await flag(96, 64).png().toBuffer())
      .rotate(270)
      .withMetadata({ orientation: 6 })
      .png()
      .toBuffer(),
  );
  const destination = join(await folder(), "p.jpg");
  const crop = { x: 0, y: 0, width: 24, height: 16 };
  const { value } = await makePicture({
    photo: await opened(turned),
    crop,
    widthPx: 5000,
    destination,
    place: PLACE,
  });
  expect(value).toMatchObject({ widthPx: 24, heightPx: 16 });
  const { data } = await sharp(destination).raw().toBuffer({ resolveWithObject: true });
  expect(Math.min(...data.subarray(0, 3))).toBeGreaterThan(250);
});

test("fine checks keep their light when they are shrunk", async () => {
  const checks = made(512, 512, (x, y) => (((x ^ y) & 1) === 1 ? [255, 255, 255] : [0, 0, 0]));
  const path = await file("checks.png", await checks.png().toBuffer());
  const destination = join(await folder(), "c.jpg");
  await makePicture({
    photo: await opened(path),
    crop: null,
    widthPx: 64,
    destination,
    place: PLACE,
  });
  const { data } = await sharp(destination).raw().toBuffer({ resolveWithObject: true });
  for (const v of data) expect(Math.abs(v - 188)).toBeLessThanOrEqual(2);
});

test("the same request gives the same bytes, with and without the cache", async () => {
  const path = await source();
  const there = await folder();
  const cache = openCache(join(there, "cache"));
  const crop = { x: 100, y: 50, width: 400, height: 300 };
  const made1 = await makePicture({
    photo: await opened(path),
    crop,
    widthPx: 200,
    destination: join(there, "1.jpg"),
    place: PLACE,
  });
  const made2 = await makePicture({
    photo: await opened(path),
    crop,
    widthPx: 200,
    destination: join(there, "2.jpg"),
    place: PLACE,
    cache,
  });
  const made3 = await makePicture({
    photo: await opened(path),
    crop,
    widthPx: 200,
    destination: join(there, "3.jpg"),
    place: PLACE,
    cache,
  });
  expect(made2.value).toEqual(made1.value);
  expect(made3.value).toEqual(made1.value);
  expect((await readFile(join(there, "3.jpg"))).equals(await readFile(join(there, "1.jpg")))).toBe(
    true,
  );
  const other = await makePicture({
    photo: await opened(path),
    crop,
    widthPx: 199,
    destination: join(there, "4.jpg"),
    place: PLACE,
    cache,
  });
  expect(other.value?.widthPx).toBe(199);
});

test.each([
  { x: 0, y: 0, width: 961, height: 10 },
  { x: -1, y: 0, width: 10, height: 10 },
  { x: 0, y: 631, width: 10, height: 10 },
  { x: 0, y: 0, width: 0, height: 10 },
  { x: 0.5, y: 0, width: 10, height: 10 },
])("a crop outside the photograph is refused: %o", async (crop) => {
  const destination = join(await folder(), "p.jpg");
  const { value, diagnostics } = await makePicture({
    photo: await opened(await source()),
    crop,
    widthPx: 100,
    destination,
    place: PLACE,
  });
  expect(value).toBeNull();
  expect(diagnostics[0]).toMatchObject({ ...PLACE, code: "crop-outside" });
  expect(diagnostics[0]?.message).toContain("960 x 640 pixels");
  await expect(readFile(destination)).rejects.toThrow();
});

test("a photograph that cannot be read gives its diagnostic, and one that breaks off writes nothing", async () => {
  const missing = await openPhoto("nowhere.jpg", PLACE);
  expect(missing.value).toBeNull();
  expect(missing.diagnostics[0]?.code).toBe("photo-missing");
  const whole = await readFile(await source());
  const broken = await file("broken.jpg", whole.subarray(0, whole.length / 2));
  const destination = join(await folder(), "p.jpg");
  const photo = await opened(broken);
  const { value, diagnostics } = await makePicture({
    photo,
    crop: null,
    widthPx: 100,
    destination,
    place: PLACE,
  });
  expect(value).toBeNull();
  expect(diagnostics[0]).toMatchObject({ ...PLACE, code: "photo-damaged" });
  await expect(readFile(destination)).rejects.toThrow();
});

test("a photograph is decoded once, however many pictures are made of it", async () => {
  const photo = await opened(await source());
  expect(await photo.decoded()).toBe(await photo.decoded());
});
