import sharp from "sharp";
import type { Rectangle } from "../cloth/pixels/pixels.ts";
import { type Checked, diagnostic, type Place } from "../diagnostics/diagnostic.ts";
import { type Cache, cacheKey, NO_CACHE, sha256 } from "./cache.ts";
import type { OpenPhoto } from "./photo/openPhoto.ts";
import { shrinkInLight } from "./photo/shrinkInLight.ts";
import { printJpeg } from "./printJpeg.ts";
import { writeAtomically } from "./writeAtomically.ts";

/** A picture to publish. */
export interface PictureRequest {
  readonly photo: OpenPhoto;
  /** Part of the upright photograph to take, in its own pixels; null for the whole. */
  readonly crop: Rectangle | null;
  /** Width wanted, in pixels; a crop that is narrower is kept at its own width. */
  readonly widthPx: number;
  /** In grey, each place as light as it is. */
  readonly grey?: boolean;
  /** File to write, a JPEG. */
  readonly destination: string;
  /** Where the user named the photograph. */
  readonly place: Place;
  readonly cache?: Cache;
}

/** A picture that was written. */
export interface MadePicture {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly bytes: number;
  readonly sha256: string;
}

/**
 * Writes a published picture: JPEG, quality 84, 4:4:4, sRGB with its profile and no other metadata (no place, no camera, no
 * date). Shrunk in linear light, never enlarged, the same bytes for the same request with one version of sharp.
 */
export async function makePicture(request: PictureRequest): Promise<Checked<MadePicture>> {
  const { photo, crop, widthPx, grey = false, destination, place, cache = NO_CACHE } = request;
  const key = cacheKey({
    what: "picture",
    sha256: photo.sha256,
    options: { crop, widthPx, ...(grey ? { grey } : {}) },
  });
  let jpeg = await cache.readBytes(key);
  if (jpeg === null) {
    const decoded = await photo.decoded();
    if (decoded.value === null) return { value: null, diagnostics: decoded.diagnostics };
    const { width, height, data } = decoded.value.pixels;
    const part = crop ?? { x: 0, y: 0, width, height };
    if (!inside(part, width, height)) {
      const message = `The part asked for (${part.x}, ${part.y}, ${part.width} x ${part.height}) is not inside the photograph ${photo.file.name}, ${width} x ${height} pixels.`;
      const hint = "Give left, top, width and height in pixels of the upright photograph.";
      return { value: null, diagnostics: [diagnostic(place, "crop-outside", message, { hint })] };
    }
    const cut = await sharp(data, { raw: { width, height, channels: 3 } })
      .extract({ left: part.x, top: part.y, width: part.width, height: part.height })
      .raw()
      .toBuffer();
    const shrunk = shrinkInLight(
      cut,
      { width: part.width, height: part.height, channels: 3 },
      widthPx,
    );
    jpeg = await printJpeg(shrunk, grey);
    await cache.writeBytes(key, jpeg);
  }
  await writeAtomically(destination, jpeg);
  const made = await sharp(jpeg).metadata();
  return {
    value: { widthPx: made.width, heightPx: made.height, bytes: jpeg.length, sha256: sha256(jpeg) },
    diagnostics: [],
  };
}

function inside({ x, y, width, height }: Rectangle, pictureWidth: number, pictureHeight: number) {
  const whole = [x, y, width, height].every(Number.isInteger);
  return (
    whole &&
    x >= 0 &&
    y >= 0 &&
    width > 0 &&
    height > 0 &&
    x + width <= pictureWidth &&
    y + height <= pictureHeight
  );
}
