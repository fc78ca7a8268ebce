import type { Grains } from "../piece.ts";
import type { Kind } from "./kinds.ts";
import { mod } from "./modes.ts";

/**
 * The pattern points worth trying as a start: those at which a kind in register has its foot, the kinds that use most cloth
 * first. Without a repeat there is nothing to choose.
 */
export function startsFor(kinds: readonly Kind[], vertical: Grains, most: number): Grains[] {
  if (vertical <= 0) return [0];
  const weight = new Map<Grains, number>();
  for (const kind of kinds) {
    for (const mode of kind.modes) {
      if (mode.yResidue === null) continue;
      const start = mod(mode.yResidue, vertical);
      weight.set(start, (weight.get(start) ?? 0) + kind.area * kind.count);
    }
  }
  const starts = [...weight].sort((a, b) => b[1] - a[1] || a[0] - b[0]).map(([start]) => start);
  return starts.length > 0 ? starts.slice(0, most) : [0];
}
