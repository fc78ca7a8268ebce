import sharp, { type Sharp } from "sharp";
import { byteOfLinear, LINEAR_OF_BYTE } from "../colour/linear.ts";
import { luminanceOfLinear } from "../colour/luminance.ts";

/** The grey of every pixel, in place: three equal channels of the same luminance, and so of the same L* (CIE 15). */
export function toGrey(rgb: Buffer): Buffer {
  const linear = (at: number): number => LINEAR_OF_BYTE[rgb[at] as number] as number;
  for (let i = 0; i < rgb.length; i += 3)
    rgb.fill(byteOfLinear(luminanceOfLinear(linear(i), linear(i + 1), linear(i + 2))), i, i + 3);
  return rgb;
}

/** A picture as it is published: JPEG, quality 84, 4:4:4, sRGB with its profile and nothing else; in grey where it is asked for. */
export async function printJpeg(picture: Sharp, grey: boolean): Promise<Buffer> {
  let made = picture;
  if (grey) {
    const { data, info } = await picture.removeAlpha().raw().toBuffer({ resolveWithObject: true });
    made = sharp(toGrey(data), { raw: { width: info.width, height: info.height, channels: 3 } });
  }
  return made
    .withIccProfile("srgb")
    .jpeg({ quality: 84, chromaSubsampling: "4:4:4", progressive: false, mozjpeg: false })
    .toBuffer();
}
