import sharp from "sharp";
import { expect, test } from "vitest";
import { inOneFile } from "../../src/site/oneFile.ts";

/** A picture of a colour and its paler half, as the print's pictures are written: a JPEG with a colour profile. */
async function picture(width: number, height: number): Promise<Buffer> {
  const data = new Uint8Array(width * height * 3);
  for (let i = 0; i < width * height; i++)
    data.set(i % width < width / 2 ? [190, 80, 50] : [240, 230, 200], i * 3);
  return sharp(data, { raw: { width, height, channels: 3 } })
    .withIccProfile("srgb")
    .jpeg({ quality: 90 })
    .toBuffer();
}

test("the pictures of a page in one file show what the page's own show, larger ones lighter", async () => {
  const files = new Map([
    ["a.jpg", await picture(900, 600)],
    ["b.jpg", await picture(200, 120)],
  ]);
  const html = `<!doctype html><body><svg><image href="a.jpg" width="30" height="20"/><image href="b.jpg" width="3" height="2"/></svg></body>`;
  const page = await inOneFile(html, async (path) => files.get(path) as Buffer);
  const kept = [...page.matchAll(/<image [^>]*href="data:image\/jpeg;base64,([^"]+)"/g)].map((m) =>
    Buffer.from(m[1] as string, "base64"),
  );
  expect(kept).toHaveLength(2);
  expect((await sharp(kept[0]).metadata()).width).toBe(600);
  expect((await sharp(kept[1]).metadata()).width).toBe(200);
  for (const bytes of kept) {
    const { data, info } = await sharp(bytes).raw().toBuffer({ resolveWithObject: true });
    const at = (part: number) => {
      const i =
        (Math.floor(info.height / 2) * info.width + Math.floor(part * info.width)) * info.channels;
      return [...data.subarray(i, i + 3)];
    };
    at(0.25).forEach((value, c) => {
      expect(Math.abs(value - ([190, 80, 50][c] as number))).toBeLessThan(6);
    });
    at(0.75).forEach((value, c) => {
      expect(Math.abs(value - ([240, 230, 200][c] as number))).toBeLessThan(6);
    });
  }
});
