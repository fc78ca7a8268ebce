import sharp, { type Metadata, type Sharp } from "sharp";
import type { Pixels } from "../../cloth/pixels/pixels.ts";
import { type Checked, diagnostic, type Place } from "../../diagnostics/diagnostic.ts";
import type { PhotoFile } from "./loadPhotoFile.ts";
import { profileName } from "./profileName.ts";
import { isFine, sideOnLoad } from "./shrinkOnLoad.ts";

/** Longest side that is read, in pixels. */
export const MOST_SIDE_PX = 16_000;
/** Most pixels that are read, whatever the sides. */
export const MOST_PIXELS = 100_000_000;
/** Part of the picture that may be transparent. */
const MOST_CLEAR = 0.6;
/** Shortest side from which anything can be measured, in pixels. */
export const LEAST_SIDE_PX = 48;

/** The whole photograph, upright, in sRGB, with what was done to get there. */
export interface DecodedPhoto {
  /** Size of the upright photograph as it came. */
  readonly widthPx: number;
  readonly heightPx: number;
  /** At that size, or smaller where a smaller one was asked for and nothing is lost by it. */
  readonly pixels: Pixels & { readonly data: Uint8Array };
  readonly notes: readonly string[];
}

/**
 * Decodes a photograph: turned upright, its colour profile (or CMYK inks) converted to sRGB, transparent parts laid on white, 16 bits
 * brought to 8. Sizes are checked before a pixel is decoded. At full size; where `sidePx` is given, the longer side that it will be
 * shrunk to, it may come at half its size and less, as `sideOnLoad` says.
 */
export async function decodePhoto(
  { bytes, name, format }: PhotoFile,
  place: Place,
  sidePx?: number,
): Promise<Checked<DecodedPhoto>> {
  const refuse = (code: string, message: string, hint: string): Checked<DecodedPhoto> => ({
    value: null,
    diagnostics: [diagnostic(place, code, message, { actual: name, hint })],
  });
  const damaged = () =>
    refuse(
      "photo-damaged",
      `The photograph ${name} is damaged or incomplete.`,
      "Copy it again from the camera or telephone; a copy that broke off half way looks like this.",
    );

  let meta: Metadata;
  try {
    meta = await sharp(bytes, { limitInputPixels: false }).metadata();
  } catch {
    return damaged();
  }
  const { width, height } = meta;
  if (Math.max(width, height) > MOST_SIDE_PX || width * height > MOST_PIXELS) {
    return refuse(
      "photo-too-large",
      `The photograph ${name} is ${width} x ${height} pixels; at most ${MOST_SIDE_PX} on a side and ${MOST_PIXELS / 1e6} million in all are read.`,
      "Save a smaller copy: 4000 pixels on the longer side are plenty.",
    );
  }
  if (Math.min(width, height) < LEAST_SIDE_PX) {
    return refuse(
      "photo-too-small",
      `The photograph ${name} is ${width} x ${height} pixels, too small to measure anything on.`,
      "Use the photograph itself, not its thumbnail: 1000 pixels or more on the longer side.",
    );
  }
  try {
    const { data, info } = await raw(bytes, meta, sidePx);
    if (info.channels !== 3) return damaged();
    const clear = meta.hasAlpha ? await clearShare(bytes) : 0;
    if (clear > MOST_CLEAR) {
      return refuse(
        "photo-transparent",
        `The picture ${name} is transparent over ${Math.round(clear * 100)} % of its area: there is too little cloth to see.`,
        "Use the photograph itself, before it was cut out of its ground.",
      );
    }
    const pixels = {
      width: info.width,
      height: info.height,
      data: new Uint8Array(data.buffer, data.byteOffset, data.length),
    };
    const { width: widthPx, height: heightPx } = meta.autoOrient;
    const notes = notesOf(meta, format, clear);
    return { value: { widthPx, heightPx, pixels, notes }, diagnostics: [] };
  } catch {
    return damaged();
  }
}

async function raw(bytes: Buffer, meta: Metadata, sidePx: number | undefined) {
  const whole = () => {
    const picture = sharp(bytes, { failOn: "warning", limitInputPixels: MOST_PIXELS }).autoOrient();
    return meta.hasAlpha ? picture.flatten({ background: "#ffffff" }) : picture;
  };
  const plain = (picture: Sharp) =>
    picture.toColourspace("srgb").raw({ depth: "uchar" }).toBuffer({ resolveWithObject: true });
  const side = sidePx === undefined ? null : sideOnLoad(meta, sidePx);
  if (side === null) return plain(whole());
  const size = { width: side, height: side, fit: "inside", kernel: "linear" } as const;
  // The strip is read while the picture is loaded, by another thread. Which of the two failed first does not matter.
  const loading = plain(whole().resize(size));
  loading.catch(() => undefined);
  return (await isFine(bytes, meta, side)) ? plain(whole()) : loading;
}

/** Part of the picture that can be seen through by more than half. */
async function clearShare(bytes: Buffer): Promise<number> {
  const alpha = await sharp(bytes, { limitInputPixels: MOST_PIXELS })
    .extractChannel("alpha")
    .raw({ depth: "uchar" })
    .toBuffer();
  let clear = 0;
  for (const value of alpha) if (value < 128) clear++;
  return clear / alpha.length;
}

function notesOf(meta: Metadata, format: string, clear: number): string[] {
  const notes: string[] = [];
  if ((meta.orientation ?? 1) > 1) notes.push("turned upright, as the camera noted");
  const profile = meta.icc ? profileName(meta.icc) : null;
  if (meta.space === "cmyk") {
    notes.push(
      `printing inks (CMYK${profile ? `, ${profile}` : ""}) converted to sRGB: colours are approximate`,
    );
  } else if (meta.icc && !/^sRGB/i.test(profile ?? "")) {
    notes.push(`colours converted from its own profile${profile ? ` (${profile})` : ""} to sRGB`);
  }
  if (clear > 0)
    notes.push(
      `transparent parts, ${percentOf(clear)} of the picture, laid on white: they count as cloth`,
    );
  if (meta.depth !== "uchar") notes.push("brought to 8 bits a channel");
  if (["b-w", "grey16"].includes(meta.space))
    notes.push("a black-and-white picture: it has no colours");
  if ((meta.pages ?? 1) > 1)
    notes.push(`first picture of ${meta.pages} in the ${format.toUpperCase()} file`);
  return notes;
}

function percentOf(share: number): string {
  return share < 0.01 ? "under 1 %" : `${Math.round(share * 100)} %`;
}
