import { sampleColours } from "../../cloth/palette/colourSample.ts";
import { evenPicture } from "../../cloth/palette/evenLight.ts";
import { fallOfLight } from "../../cloth/palette/fallOfLight.ts";
import type { Bytes } from "../../cloth/pixels/pixels.ts";
import type { TileCell } from "../../swatches/tileCell.ts";
import { EVEN, type Gain, lightBySteps } from "./lightBySteps.ts";
import { type Lattice, latticeOf } from "./tileLattice.ts";

/** A photograph of which cells are made: what is found on it once, at its full size, for cells of every size. */
export interface OpenCloth {
  /** Raw RGB, without what a lamp or a window does to all of its dyes alike. */
  readonly picture: Bytes;
  readonly cell: TileCell;
  /** The steps of the pattern, in pixels of the picture. */
  readonly lattice: Lattice;
  /** What is left of the uneven light, as the cloth's own steps tell it. */
  readonly gain: Gain;
}

/** The picture in even light. */
function lampTakenOut(picture: Bytes): Bytes {
  const fall = fallOfLight(sampleColours(picture), picture);
  return fall ? evenPicture(picture, fall) : picture;
}

/** Takes uneven light out of a photograph and finds the cell's steps on it. */
export async function openCloth(photo: Bytes, cell: TileCell): Promise<OpenCloth> {
  const picture = lampTakenOut(photo);
  const lattice = await latticeOf(picture, cell);
  const texture = !cell.repeatsAcross && !cell.repeatsUp;
  const isLit = cell.ground === null && (texture || lattice.found.length > 0);
  const gain = isLit ? await lightBySteps(picture, texture ? [] : lattice.found) : EVEN;
  return { picture, cell, lattice, gain };
}
