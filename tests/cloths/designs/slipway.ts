import type { LightTile } from "../ground/tile.ts";
import { threads, warpFaced, wovenYarns } from "../techniques/wovenYarns.ts";
import { harbour } from "./palettes.ts";

/** Slipway: an ink-and-chalk ticking, warp-faced, 2 1/4 inches to the repeat. */
export function slipway(): LightTile {
  const { ink, chalk } = harbour;
  const warp = threads([
    [chalk, 18],
    [ink, 4],
    [chalk, 5],
    [ink, 21],
    [chalk, 5],
    [ink, 4],
    [chalk, 18],
    [ink, 7],
    [chalk, 8],
  ]);
  const weft = threads([[harbour.chalk, 100]]);
  return wovenYarns(
    {
      warp,
      weft,
      warpOnTop: warpFaced,
      yarnPx: 4,
      depth: 0.34,
      unevenness: 0.9,
      hair: 0.07,
      seed: 6201,
      twist: 0.6,
    },
    2.25 * 25.4,
  );
}
