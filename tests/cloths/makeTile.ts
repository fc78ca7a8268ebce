import { CLOTHS } from "./cloths.ts";
import { type LightTile, type Tile, toBytes } from "./ground/tile.ts";

const made = new Map<string, Promise<LightTile>>();

/** One clean repeat of a demo cloth as light, without any camera; made once for each density. */
export function makeLightTile(name: string, pxPerMm?: number): Promise<LightTile> {
  const cloth = CLOTHS[name];
  if (!cloth)
    throw new Error(
      `makeTile: expected one of ${Object.keys(CLOTHS).join(", ")}, received ${name}`,
    );
  const density = pxPerMm ?? cloth.pxPerMm;
  const key = `${name} ${density}`;
  const known = made.get(key);
  if (known) return known;
  const promise = Promise.resolve(cloth.make(density));
  made.set(key, promise);
  return promise;
}

/** One clean repeat of a demo cloth as raw sRGB; `pxPerMm` is what it came to after rounding to whole pixels. */
export async function makeTile(name: string, pxPerMm?: number): Promise<Tile> {
  return toBytes(await makeLightTile(name, pxPerMm));
}
