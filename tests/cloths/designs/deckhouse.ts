import type { LightTile } from "../ground/tile.ts";
import { threads, warpFaced, wovenYarns } from "../techniques/wovenYarns.ts";
import { harbour } from "./palettes.ts";

const { ink, chalk, clay, straw, blush, tide } = harbour;

/** Its warp from the left, dye and threads. */
export const WARP: readonly (readonly [string, number])[] = [
  [chalk, 70],
  [ink, 5],
  [chalk, 5],
  [clay, 74],
  [chalk, 5],
  [ink, 5],
  [chalk, 70],
  [tide, 4],
  [chalk, 6],
  [straw, 26],
  [blush, 14],
  [straw, 10],
  [chalk, 6],
  [tide, 5],
];

/** Deckhouse: a wide awning stripe in clay, chalk, straw and ink, 9 inches to the repeat. */
export function deckhouse(): LightTile {
  const warp = threads(WARP);
  const weft = threads([[chalk, 130]]);
  return wovenYarns(
    {
      warp,
      weft,
      warpOnTop: warpFaced,
      yarnPx: 3,
      depth: 0.32,
      unevenness: 1,
      hair: 0.07,
      seed: 6301,
      twist: 0.6,
    },
    9 * 25.4,
  );
}
