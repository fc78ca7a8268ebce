import type { Pixels } from "../../cloth/pixels/pixels.ts";
import { shrinkToSide } from "../../cloth/pixels/shrink.ts";
import type { Checked, Place } from "../../diagnostics/diagnostic.ts";
import { sha256 } from "../cache.ts";
import { decodePhoto } from "./decodePhoto.ts";
import { loadPhotoFile } from "./loadPhotoFile.ts";
import type { PhotoFormat } from "./photoFormat.ts";

/** A photograph, ready to be measured. */
export interface Photo {
  /** Upright, sRGB, shrunk in linear light. */
  readonly pixels: Pixels;
  /** Size of the upright photograph as it came, in pixels. */
  readonly widthPx: number;
  readonly heightPx: number;
  /** SHA-256 of the file's bytes, in hex. */
  readonly sha256: string;
  readonly format: PhotoFormat;
  /** What was done to it, in plain words, for the studio. */
  readonly notes: readonly string[];
}

/** How a photograph is read. */
export interface ReadPhotoOptions {
  /** Where the user named it; diagnostics carry this place. */
  readonly place: Place;
  /** Longer side of `pixels` at most, in pixels. */
  readonly sidePx?: number;
}

/** Longer side that colours are told at: some 700 000 pixels of a 4:3 photograph. */
export const MEASURING_SIDE_PX = 960;

/**
 * Reads a photograph for measuring: JPEG, PNG, WebP, TIFF or AVIF, honouring the camera's orientation and the colour profile.
 * Every fault of the file is a diagnostic at the place that names it, with a null value; it never throws on one.
 */
export async function readPhoto(path: string, options: ReadPhotoOptions): Promise<Checked<Photo>> {
  const file = await loadPhotoFile(path, options.place);
  if (file.value === null) return { value: null, diagnostics: file.diagnostics };
  const { bytes, format } = file.value;
  const side = options.sidePx ?? MEASURING_SIDE_PX;
  const decoding = decodePhoto(file.value, options.place, side);
  // While other threads decode.
  const hash = sha256(bytes);
  const decoded = await decoding;
  if (decoded.value === null) return { value: null, diagnostics: decoded.diagnostics };
  const { widthPx, heightPx, pixels, notes } = decoded.value;
  return {
    value: { pixels: shrinkToSide(pixels, side), widthPx, heightPx, sha256: hash, format, notes },
    diagnostics: [],
  };
}
