import { createRequire } from "node:module";
import { getPalette } from "colorthief";
import { buildPaletteSync, type PaletteQuantization, utils } from "image-q";
import { kmeans } from "ml-kmeans";
import { Vibrant } from "node-vibrant/node";
import type { Pixels } from "../../../src/cloth/pixels/pixels.ts";
import { type Oklab, oklabOfRgb } from "../../../src/colour/oklab.ts";
import { oklabOfPixels } from "../../../src/colour/oklabOfPixels.ts";

const quantize = createRequire(import.meta.url)("quantize") as (
  pixels: number[][],
  colours: number,
) => { palette(): [number, number, number][] };

/** What of node-vibrant's colours is used. */
interface Coloured {
  readonly rgb: [number, number, number];
}

type ImageClass = NonNullable<NonNullable<ConstructorParameters<typeof Vibrant>[1]>["ImageClass"]>;
type Image = InstanceType<ImageClass>;

type Bytes = Pixels & { readonly data: Uint8Array };

/** Each gives the colours that it finds in a picture, as Oklab; every one is given all pixels (`quality` 1 where it can skip). */
export const QUANTISERS: Readonly<
  Record<string, (pixels: Bytes, colours: number) => Promise<Oklab[]> | Oklab[]>
> = {
  colorthief: async (pixels, colours) => {
    const options = {
      colorCount: colours,
      quality: 1,
      loader: { load: async () => rgbaOf(pixels) },
    };
    const found = await getPalette("decoded", options);
    return (found ?? []).map((colour) => {
      const { r, g, b } = colour.rgb();
      return oklabOfRgb([r, g, b]);
    });
  },
  "node-vibrant": async (pixels, colours) => {
    const made = new Vibrant("decoded", {
      quality: 1,
      colorCount: colours,
      ImageClass: decoded(pixels),
    });
    await made.getPalette();
    return ((made.result?.colors ?? []) as Coloured[]).map(({ rgb }) => oklabOfRgb(rgb));
  },
  quantize: (pixels, colours) =>
    quantize(triples(pixels), colours)
      .palette()
      .map((rgb) => oklabOfRgb(rgb)),
  "image-q wuquant": (pixels, colours) => imageQ(pixels, colours, "wuquant"),
  "image-q rgbquant": (pixels, colours) => imageQ(pixels, colours, "rgbquant"),
  "image-q neuquant": (pixels, colours) => imageQ(pixels, colours, "neuquant"),
};

/** Plain k-means in Oklab: the least mean distance that can be had, but for its starts. */
export function plainKMeans(pixels: Bytes, colours: number): Oklab[] {
  const oklab = oklabOfPixels(pixels.data);
  const every = Math.max(1, Math.floor(oklab.length / 3 / 20_000));
  const points: number[][] = [];
  for (let p = 0; p < oklab.length / 3; p += every)
    points.push([oklab[p * 3] as number, oklab[p * 3 + 1] as number, oklab[p * 3 + 2] as number]);
  const { centroids } = kmeans(points, colours, { seed: 7, initialization: "kmeans++" });
  return centroids.map(([l = 0, a = 0, b = 0]) => [l, a, b]);
}

function imageQ(pixels: Bytes, colours: number, paletteQuantization: PaletteQuantization): Oklab[] {
  const rgba = new Uint8Array((pixels.data.length / 3) * 4).fill(255);
  for (let p = 0; p < pixels.data.length / 3; p++)
    rgba.set(pixels.data.subarray(p * 3, p * 3 + 3), p * 4);
  const container = utils.PointContainer.fromUint8Array(rgba, pixels.width, pixels.height);
  return buildPaletteSync([container], { colors: colours, paletteQuantization })
    .getPointContainer()
    .getPointArray()
    .map(({ r, g, b }) => oklabOfRgb([r, g, b]));
}

function triples({ data }: Bytes): number[][] {
  return Array.from({ length: data.length / 3 }, (_, p) =>
    Array.from(data.subarray(p * 3, p * 3 + 3)),
  );
}

/** Pixels as the others want them: nobody's time has a file's decoding in it. */
function rgbaOf({ width, height, data }: Bytes) {
  const rgba = new Uint8ClampedArray((data.length / 3) * 4);
  for (let i = 0, to = 0; i < data.length; i += 3, to += 4) {
    rgba[to] = data[i] as number;
    rgba[to + 1] = data[i + 1] as number;
    rgba[to + 2] = data[i + 2] as number;
    rgba[to + 3] = 255;
  }
  return { width, height, data: rgba };
}

/** A picture for node-vibrant that is decoded already. */
function decoded(pixels: Bytes): ImageClass {
  return class implements Image {
    async load(): Promise<Image> {
      return this;
    }
    clear(): void {}
    update(): void {}
    remove(): void {}
    resize(): void {}
    scaleDown(): void {}
    getWidth(): number {
      return pixels.width;
    }
    getHeight(): number {
      return pixels.height;
    }
    getPixelCount(): number {
      return pixels.width * pixels.height;
    }
    getImageData() {
      return rgbaOf(pixels);
    }
  };
}
