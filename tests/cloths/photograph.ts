import sharp from "sharp";
import { byteOfLinear } from "./ground/light.ts";
import { seeded } from "./ground/seeded.ts";
import { type LightTile, sampleWrapped } from "./ground/tile.ts";

/** How a swatch was photographed. */
export type ShotOptions = {
  /** How much cloth the picture shows, across its middle and down it, in millimetres. */
  acrossMm: number;
  downMm: number;
  pxPerMm: number;
  /** How far the camera was turned, in degrees; under 0.4 for a careful hand. */
  turnDeg: number;
  /** How much darker a corner is than the middle, as a share of its light. */
  fallOff: number;
  format: "jpeg" | "webp" | "png";
  profile: "srgb" | "p3";
  /** `place`: camera and position as a telephone writes them; `turned`: these, and pixels stored on their side. */
  metadata: "none" | "place" | "turned";
};

/** The picture of a tile that wraps (a cloth) or of a whole object, as raw sRGB bytes. */
export function expose(
  tile: LightTile,
  shot: Pick<ShotOptions, "acrossMm" | "downMm" | "pxPerMm" | "turnDeg" | "fallOff">,
  seed: number,
  /** Linear multipliers of a lamp's colour, to test neutralising: [1.08, 1, 0.86] is a warm lamp. */
  cast: readonly [number, number, number] = [1, 1, 1],
): { width: number; height: number; rgb: Buffer } {
  const width = Math.round(shot.acrossMm * shot.pxPerMm);
  const height = Math.round(shot.downMm * shot.pxPerMm);
  const step = tile.pxPerMm * (shot.acrossMm / width);
  const turn = (shot.turnDeg * Math.PI) / 180;
  const cos = Math.cos(turn) * step;
  const sin = Math.sin(turn) * step;
  const random = seeded(seed);
  const wholeObject = Math.abs(tile.width / tile.pxPerMm - shot.acrossMm) < 1 && shot.turnDeg === 0;
  const [startX, startY] = wholeObject
    ? [tile.width / 2, tile.height / 2]
    : [random.next() * tile.width, random.next() * tile.height];
  // Where the tile is finer than the picture, several points are averaged, as a lens does.
  const n = Math.max(1, Math.ceil(step - 0.05));
  const rgb = Buffer.alloc(width * height * 3);
  const point = new Float32Array(3);
  const lean = random.between(-0.35, 0.35) * shot.fallOff;
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const sum: [number, number, number] = [0, 0, 0];
      for (let j = 0; j < n; j++) {
        for (let i = 0; i < n; i++) {
          const px = x + (i + 0.5) / n - width / 2;
          const py = y + (j + 0.5) / n - height / 2;
          sampleWrapped(
            tile,
            startX + px * cos - py * sin - 0.5,
            startY + px * sin + py * cos - 0.5,
            point,
          );
          sum[0] += point[0] as number;
          sum[1] += point[1] as number;
          sum[2] += point[2] as number;
        }
      }
      const u = (2 * x) / width - 1;
      const v = (2 * y) / height - 1;
      const lit = (1 - (shot.fallOff * (u * u + v * v)) / 2 + lean * u - Math.abs(lean)) / (n * n);
      const at = (y * width + x) * 3;
      for (let k = 0; k < 3; k++) {
        rgb[at + k] = byteOfLinear(
          Math.min(1, (sum[k as 0 | 1 | 2] as number) * lit * (cast[k] as number)),
        );
      }
    }
  }
  return { width, height, rgb };
}

/** Exif of an invented telephone at an invented place, out at sea: what a published picture must not carry. */
const TELEPHONE = {
  IFD0: { Make: "Invented Telephone Works", Model: "Pocket Seven", Artist: "Studio telephone" },
  IFD3: {
    GPSLatitudeRef: "N",
    GPSLatitude: "41/1 15/1 3000/100",
    GPSLongitudeRef: "W",
    GPSLongitude: "41/1 15/1 3000/100",
  },
};

/** Encodes an exposed picture as a telephone would, at the best quality that stays under `limitBytes`. */
export async function develop(
  picture: { width: number; height: number; rgb: Buffer },
  shot: Pick<ShotOptions, "format" | "profile" | "metadata">,
  limitBytes: number,
): Promise<Buffer> {
  const encode = async (quality: number): Promise<Buffer> => {
    let image = sharp(picture.rgb, {
      raw: { width: picture.width, height: picture.height, channels: 3 },
    });
    if (shot.metadata === "turned") image = image.rotate(270);
    image = image.withIccProfile(shot.profile);
    if (shot.metadata !== "none") image = image.withExif(TELEPHONE);
    if (shot.metadata === "turned")
      image = image
        .withMetadata({ orientation: 6 })
        .withIccProfile(shot.profile)
        .withExifMerge(TELEPHONE);
    if (shot.format === "png") return image.png({ compressionLevel: 9 }).toBuffer();
    if (shot.format === "webp") return image.webp({ quality, effort: 6 }).toBuffer();
    return image
      .jpeg({ quality, mozjpeg: true, chromaSubsampling: quality > 80 ? "4:4:4" : "4:2:0" })
      .toBuffer();
  };
  for (const quality of [90, 86, 82, 78, 74, 70, 66, 62, 58]) {
    const bytes = await encode(quality);
    if (bytes.length <= limitBytes || shot.format === "png") return bytes;
  }
  return encode(54);
}
