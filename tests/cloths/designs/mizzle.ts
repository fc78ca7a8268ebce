import { mixHex } from "../ground/light.ts";
import { seeded } from "../ground/seeded.ts";
import type { LightTile } from "../ground/tile.ts";
import { wovenYarns } from "../techniques/wovenYarns.ts";
import { harbour } from "./palettes.ts";

const TURN = 12;

/** Mizzle: a blue-grey wool herringbone, the twill turning every twelve ends, flecked as wool is dyed in the fleece. */
export function mizzle(): LightTile {
  const random = seeded(6401);
  const fleece = (from: string, to: string, count: number) =>
    Array.from({ length: count }, () => mixHex(from, to, random.between(0, 1)));
  const pale = mixHex(harbour.slate, harbour.mist, 0.2);
  const warp = fleece(pale, mixHex(pale, harbour.mist, 0.2), TURN * 12);
  const weft = fleece(harbour.slate, mixHex(harbour.slate, harbour.ink, 0.34), 144);
  const warpOnTop = (i: number, j: number) => {
    const rising = Math.floor(i / TURN) % 2 === 0;
    const step = rising ? i + j : -i - 1 + j + 2;
    return (((step % 4) + 4) & 3) < 2;
  };
  return wovenYarns(
    {
      warp,
      weft,
      warpOnTop,
      yarnPx: 6,
      depth: 0.3,
      unevenness: 0.8,
      hair: 0.12,
      seed: 6402,
      twist: 1,
    },
    120,
  );
}
