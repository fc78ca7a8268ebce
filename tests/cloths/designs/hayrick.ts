import type { LightTile } from "../ground/tile.ts";
import { threads, twill, wovenYarns } from "../techniques/wovenYarns.ts";
import { stove } from "./palettes.ts";

/** Its sett, warp and weft alike, dye and threads. */
export const SETT: readonly (readonly [string, number])[] = [
  [stove.cream, 34],
  [stove.bottle, 8],
  [stove.cream, 6],
  [stove.bottle, 40],
  [stove.honey, 4],
  [stove.bottle, 40],
  [stove.cream, 6],
  [stove.bottle, 8],
  [stove.cream, 34],
  [stove.russet, 12],
];

/** Hayrick: a wool check in bottle, cream and russet with a honey overcheck, 4 1/2 inches to the repeat. */
export function hayrick(): LightTile {
  const sett = threads(SETT);
  return wovenYarns(
    {
      warp: sett,
      weft: sett,
      warpOnTop: twill,
      yarnPx: 4,
      depth: 0.4,
      unevenness: 1,
      hair: 0.09,
      seed: 6101,
      twist: 1,
    },
    4.5 * 25.4,
  );
}
