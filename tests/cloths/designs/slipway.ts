import type { LightTile } from "../ground/tile.ts";
import { threads, warpFaced, wovenYarns } from "../techniques/wovenYarns.ts";
import { harbour } from "./palettes.ts";

/** Slipway: an ink-and-chalk ticking, warp-faced, 1 1/2 inches to the repeat. */
export function slipway(): LightTile {
  const { ink, chalk } = harbour;
  const warp = threads([
    [chalk, 12],
    [ink, 3],
    [chalk, 3],
    [ink, 14],
    [chalk, 3],
    [ink, 3],
    [chalk, 12],
    [ink, 5],
    [chalk, 5],
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
    1.5 * 25.4,
  );
}
