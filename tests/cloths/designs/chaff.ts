import { linear, mixHex } from "../ground/light.ts";
import type { LightTile } from "../ground/tile.ts";
import { plainCloth } from "../techniques/plainCloth.ts";
import { stove } from "./palettes.ts";

/** Chaff: a heavy slub linen the colour of oatmeal. */
export const chaff = (pxPerMm: number): LightTile =>
  plainCloth(linear(stove.flax), linear(mixHex(stove.flax, stove.fawn, 0.34)), 150, pxPerMm, {
    seed: 6601,
    yarnPx: 4.6,
    slub: 1,
    depth: 0.3,
    grain: 0.03,
  });
