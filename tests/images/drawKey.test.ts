// What stands below the photograph on the plate that `swatch --draw` writes.
import sharp from "sharp";
import { expect, test } from "vitest";
import { measureCloth } from "../../src/cloth/measureCloth.ts";
import { keyOf } from "../../src/images/overlay/drawKey.ts";
import { LetterCase } from "../../src/images/overlay/drawLetters.ts";
import { photograph, stripes } from "../cloth/made.ts";

const INKS = { ink: "#23282e", second: "#5b6168", accent: "#9b3b24" };

test("words set beside each other stand on one line, whatever their letters", async () => {
  const letters = await LetterCase.open();
  const style = { sizePx: 24, ink: "#000000", upright: true } as const;
  const [flat, tall, deep] = await Promise.all(
    ["mean", "hid", "gypsy"].map((word) => letters.set(word, style)),
  );
  expect(tall?.height).toBe(flat?.height);
  expect(deep?.height).toBe(flat?.height);
  // What holds the line open is not seen and takes no room.
  const loose = await letters.set("mean", { ...style, upright: false });
  expect(Math.abs((flat?.width ?? 0) - loose.width)).toBeLessThanOrEqual(5);
  const inkOf = async (png: Buffer) =>
    (await sharp(png).extractChannel("alpha").stats()).channels[0]?.sum;
  expect(await inkOf(flat?.png ?? Buffer.alloc(0))).toBe(await inkOf(loose.png));
});

// Names of three and four words beside each other, on plates from wide to narrow.
test.each([1300, 1000, 700, 620, 420])(
  "on a plate of %i pixels no words of the key lie on others",
  async (width) => {
    const cloth = stripes(
      ["#bfb199", 20],
      ["#523b2c", 12],
      ["#7d8794", 12],
      ["#a5552e", 9],
      ["#33464a", 9],
    );
    const picture = photograph(cloth, { widthMm: 200, heightMm: 150, widthPx: 500, noise: 2 });
    const { value } = measureCloth(picture, 200, {
      place: { file: "made.png", line: null, column: null, keyPath: null },
    });
    if (!value) throw new Error("not measured");
    expect(value.colours.length).toBeGreaterThanOrEqual(4);
    const { overlays, height } = await keyOf(
      value,
      width,
      "centimetres",
      await LetterCase.open(),
      INKS,
    );
    const boxes = await Promise.all(
      overlays.map(async ({ input, left = 0, top = 0 }) => {
        const meta = await sharp(input as Buffer).metadata();
        return { left, top, right: left + meta.width, bottom: top + meta.height };
      }),
    );
    for (const [n, one] of boxes.entries()) {
      expect(one.right).toBeLessThanOrEqual(width);
      expect(one.bottom).toBeLessThanOrEqual(height + 8);
      for (const other of boxes.slice(n + 1)) {
        const across = Math.min(one.right, other.right) - Math.max(one.left, other.left);
        const down = Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top);
        // A line's picture has room above and below its letters; two of them may share that.
        expect(across <= 0 || down <= 8, JSON.stringify([one, other])).toBe(true);
      }
    }
  },
);
