import { linear } from "../ground/light.ts";
import type { LightTile } from "../ground/tile.ts";
import { pile } from "../techniques/pile.ts";
import { stove } from "./palettes.ts";

/** Sorrel: a russet cotton velvet. */
export const sorrel = (pxPerMm: number): LightTile =>
  pile(linear(stove.russet), 160, 160, pxPerMm, 6501);
