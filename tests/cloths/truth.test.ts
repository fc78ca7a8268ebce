import { readdir, readFile, stat } from "node:fs/promises";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import sharp from "sharp";
import { expect, test } from "vitest";
import { CLOTHS } from "./cloths.ts";
import { makeTile } from "./makeTile.ts";
import { OBJECTS } from "./objects.ts";
import { recount } from "./recount.ts";
import truth from "./truth.json" with { type: "json" };

const CONTENT = fileURLToPath(new URL("../../content", import.meta.url));
const entries = Object.entries(truth);
const shots = { ...CLOTHS, ...OBJECTS };

test("the truth names every cloth and object that is drawn, and no other", () => {
  expect(entries.map(([name]) => name).sort()).toEqual(Object.keys(shots).sort());
});

test.each(entries)("the shares of %s sum to one", (_name, entry) => {
  expect(entry.palette.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 6);
  for (const { hex } of entry.palette) expect(hex).toMatch(/^#[0-9a-f]{6}$/);
});

test.each(["hayrick", "turnstile", "caraway", "peppercorn", "slipway"])(
  "the palette written for %s is that of its tile drawn today",
  async (name) => {
    const today = recount(await makeTile(name), CLOTHS[name]?.inks ?? []);
    const written =
      (truth as Record<string, { palette: { hex: string; share: number }[] }>)[name]?.palette ?? [];
    expect(today.map((c) => c.hex)).toEqual(written.map((c) => c.hex));
    for (const [i, { share }] of today.entries())
      expect(share).toBeCloseTo(written[i]?.share ?? -1, 3);
  },
);

test.each(entries)(
  "the photograph of %s lies in the content at the size that was exposed",
  async (name, entry) => {
    const shot = shots[name]?.photo;
    const file = join(CONTENT, entry.file);
    const { width, height, orientation = 1 } = await sharp(file).metadata();
    const upright = orientation >= 5 ? [height, width] : [width, height];
    expect(upright).toEqual([
      Math.round((shot?.acrossMm ?? 0) * (shot?.pxPerMm ?? 0)),
      Math.round((shot?.downMm ?? 0) * (shot?.pxPerMm ?? 0)),
    ]);
    expect((await stat(file)).size).toBeLessThanOrEqual(350_000);
  },
);

test("all photographs together stay under four megabytes, and none lies there unknown", async () => {
  const found: string[] = [];
  let bytes = 0;
  for (const folder of ["cloths", "objects"]) {
    for (const file of await readdir(join(CONTENT, folder))) {
      if (!/\.(jpe?g|png|webp)$/.test(file)) continue;
      found.push(`${folder}/${file}`);
      bytes += (await stat(join(CONTENT, folder, file))).size;
    }
  }
  expect(bytes).toBeLessThan(4_000_000);
  expect(found.sort()).toEqual(entries.map(([, entry]) => entry.file).sort());
});

test.each(entries)("the card of %s shows what its photograph shows", async (_name, entry) => {
  const card = await readFile(join(CONTENT, entry.file.replace(/\.\w+$/, ".md")), "utf8");
  const [, whole, top, foot] = /shows: (\d+)(?: (\d+)\/(\d+))?"/.exec(card) ?? [];
  const inches = Number(whole) + (top ? Number(top) / Number(foot) : 0);
  expect(inches * 25.4).toBeCloseTo(entry.showsMm, 3);
});

test.each(Object.entries(CLOTHS))(
  "the photograph of %s shows one and a half repeats or more",
  (_name, cloth) => {
    const { repeat } = cloth.pattern;
    expect(cloth.photo.acrossMm).toBeGreaterThanOrEqual(1.5 * (repeat?.horizontalMm ?? 0));
    expect(cloth.photo.downMm).toBeGreaterThanOrEqual(1.5 * (repeat?.verticalMm ?? 0));
    expect(Math.abs(cloth.photo.turnDeg)).toBeLessThan(0.4);
  },
);

test("the photographs have what a telephone's have: a wide profile, a stored turn, a place", async () => {
  const read = (name: keyof typeof truth) => sharp(join(CONTENT, truth[name].file)).metadata();
  const wide = await read("vestry");
  const turned = await read("hayrick");
  const placed = await read("tiled-stove");
  expect(wide.icc?.toString("latin1")).not.toBe((await read("caraway")).icc?.toString("latin1"));
  expect(turned.orientation).toBe(6);
  for (const exif of [turned.exif, placed.exif]) {
    expect(exif?.toString("latin1")).toContain("Invented Telephone Works");
    // 0x8825, the pointer to the GPS part (Exif 2.32, section 4.6.3), in either byte order.
    expect(
      exif?.includes(Buffer.from([0x25, 0x88])) || exif?.includes(Buffer.from([0x88, 0x25])),
    ).toBe(true);
  }
});
