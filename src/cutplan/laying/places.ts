import type { ClothPattern, Grains } from "../piece.ts";
import type { CrossCut, Place, Register } from "../plan.ts";
import { bandsOf } from "./bands.ts";
import { type Mode, mod } from "./modes.ts";

/** What a place must equal modulo the repeat, on a length that begins at pattern point `start`; null for a free piece. */
export function registerOf(
  mode: Mode,
  start: Grains,
  pattern: ClothPattern | null,
): Register | null {
  const x = mode.registerX;
  const y = mode.registerY === null ? null : mod(mode.registerY - start, pattern?.vertical ?? 1);
  return x === null && y === null ? null : { x, y };
}

/** Every straight cut between the pieces: where a band ends, and where the next begins if cloth is left between. */
export function crossCuts(places: readonly Place[], lengths: number): CrossCut[] {
  const cuts: CrossCut[] = [];
  for (let length = 0; length < lengths; length++) {
    const bands = bandsOf(places.filter((place) => place.length === length));
    const at = new Set<Grains>();
    bands.forEach((band, i) => {
      if (band.foot > 0) at.add(band.foot);
      if (i < bands.length - 1) at.add(band.top);
    });
    for (const y of [...at].sort((a, b) => a - b)) cuts.push({ length, y });
  }
  return cuts;
}
