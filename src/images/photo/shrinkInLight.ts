import sharp, { type Channels, type Sharp } from "sharp";

/**
 * A picture of plain sRGB pixels shrunk to a width in linear light, or fine checks would darken; with a kernel without much
 * overshoot, which linear light would show. Never enlarged. Plain pixels, since a JPEG that bears a colour profile comes out black.
 */
export function shrinkInLight(
  data: Uint8Array,
  from: { readonly width: number; readonly height: number; readonly channels: Channels },
  widthPx: number,
): Sharp {
  return sharp(data, { raw: { ...from } })
    .pipelineColourspace("scrgb")
    .resize({ width: Math.min(Math.round(widthPx), from.width), kernel: "mitchell" })
    .toColourspace("srgb");
}
