import type { Sharp } from "sharp";
import type { Bytes } from "../../cloth/pixels/pixels.ts";
import type { TileCell } from "../../swatches/tileCell.ts";
import { shrinkInLight } from "../photo/shrinkInLight.ts";
import { drawCell } from "./drawCell.ts";
import { openCloth } from "./openCloth.ts";

/** Pixels of the cell to one of the picture that is wanted: more would be thrown away again. */
const OVER = 1.6;
/** Full size is drawn for what needs nearly all of it. */
const NEARLY = 0.8;

/** Makes a cell's picture, as wide as is asked. */
export type TileMaker = (widthPx: number) => Promise<Sharp>;

/**
 * A maker of one cell's pictures in every width: what is found on the photograph is found once, and a cell is drawn at full size, half,
 * a quarter and so on, once each, whichever is just enough for a picture; that is then shrunk in linear light.
 */
export function tileMaker(photo: Bytes, cell: TileCell): TileMaker {
  let opened: ReturnType<typeof openCloth> | null = null;
  const drawn = new Map<number, ReturnType<typeof drawCell>>();
  const drawnAt = (scale: number): ReturnType<typeof drawCell> => {
    opened ??= openCloth(photo, cell);
    const already = drawn.get(scale) ?? opened.then((cloth) => drawCell(cloth, scale));
    drawn.set(scale, already);
    return already;
  };
  return async (widthPx) => {
    const { data, width, height } = await drawnAt(scaleFor((OVER * widthPx) / cell.widthPx));
    return shrinkInLight(data, { width, height, channels: 3 }, widthPx);
  };
}

/** The smallest of 1, 1/2, 1/4 … that is no less than a part. */
function scaleFor(part: number): number {
  return part > NEARLY ? 1 : 2 ** Math.min(0, Math.ceil(Math.log2(part)));
}
