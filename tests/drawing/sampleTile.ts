import sharp from "sharp";
import type { Binding } from "../../src/drawing/binding.ts";
import type { RenderOptions } from "../../src/drawing/renderDrawing.ts";
import type { Drawing, Shape } from "../../src/drawing/shape.ts";

/** A made-up tile 40 × 60 mm: white, its upper left quarter red, its motif's middle in that quarter's middle. */
export async function tile(match: "straight" | "half-drop"): Promise<Binding> {
  const red = await sharp({ create: { width: 20, height: 30, channels: 3, background: "#ff0000" } })
    .png()
    .toBuffer();
  const image = await sharp({
    create: { width: 40, height: 60, channels: 3, background: "#ffffff" },
  })
    .composite([{ input: red, left: 0, top: 0 }])
    .png()
    .toBuffer();
  return {
    tile: {
      href: `data:image/png;base64,${image.toString("base64")}`,
      widthMm: 40,
      heightMm: 60,
      match,
      originX: 10,
      originY: 15,
    },
    averageHex: "#ffbfbf",
  };
}

export const drawing = (shapes: readonly Shape[], more: Partial<Drawing> = {}): Drawing => ({
  widthMm: 200,
  heightMm: 200,
  shapes,
  dimensions: [],
  title: "Chair & stool",
  description: 'A "chair"',
  ...more,
});
export const options = (more: Partial<RenderOptions> = {}): RenderOptions => ({
  scale: 1,
  bindings: () => null,
  style: "cloth",
  dimensions: true,
  idPrefix: "t",
  ...more,
});

/** Colours at points of a drawing, in its millimetres, one pixel a millimetre. */
export async function seen(
  svg: { svg: string; widthMm: number; insetMm: { left: number; top: number } },
  points: readonly (readonly [number, number])[],
) {
  const flat = await sharp(
    Buffer.from(svg.svg.replace(/ (width|height)="([\d.]+)mm"/g, ' $1="$2"')),
    { density: 72 },
  )
    .flatten({ background: "#ffffff" })
    .raw()
    .toBuffer({ resolveWithObject: true });
  const { width, channels } = flat.info;
  const per = width / svg.widthMm;
  return points.map(([x, y]) => {
    const at =
      (Math.round((y + svg.insetMm.top) * per) * width + Math.round((x + svg.insetMm.left) * per)) *
      channels;
    return [...flat.data.subarray(at, at + 3)].map((v) => (v > 128 ? 1 : 0)).join("");
  });
}
export const RED = "100";
export const WHITE = "111";

/** A hundred millimetres of cloth in three folds. */
export const THREE_FOLDS: Shape = {
  shape: "folds",
  surface: "face",
  x: 0,
  y: 0,
  width: 100,
  height: 100,
  flatWidth: 220,
  pleats: 3,
  originX: 0,
  originY: 0,
  hem: "wavy",
};
