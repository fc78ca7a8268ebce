import { mixHex } from "../ground/light.ts";
import { seeded } from "../ground/seeded.ts";
import type { LightTile } from "../ground/tile.ts";
import { warpFaced, wovenYarns } from "../techniques/wovenYarns.ts";
import { stove } from "./palettes.ts";

/** Tallow: an ivory cotton sateen for lining. */
export function tallow(): LightTile {
  const random = seeded(6701);
  const base = mixHex(stove.cream, "#ffffff", 0.22);
  const yarns = Array.from({ length: 200 }, () =>
    mixHex(base, stove.cream, random.between(0, 0.5)),
  );
  return wovenYarns(
    {
      warp: yarns,
      weft: yarns,
      warpOnTop: warpFaced,
      yarnPx: 3,
      depth: 0.14,
      unevenness: 0.4,
      hair: 0.03,
      seed: 6702,
    },
    80,
  );
}
