import { CoverLp } from "./coverLp.ts";
import type { Kind } from "./kinds.ts";
import { mod } from "./modes.ts";
import type { Grains } from "./piece.ts";
import type { SideBySide } from "./sideBySide.ts";
import { measureIn, type Slab, slabsAt } from "./slabs.ts";

/** The least number of lines of a slab, one a repeat, that the pieces crossing it need. */
export interface LineCount {
  readonly slab: Slab;
  readonly lines: number;
}

/**
 * Whole lines. A piece in register crosses the lines y = r + k V of a residue r a known number of times, the same for all r of a
 * slab between neighbouring edges. The least number of such lines that hold all crossings, sets of pieces side by side at legal
 * places, is a fractional bin packing, rounded up.
 */
export function wholeLines(
  kinds: readonly Kind[],
  typeOf: readonly (readonly number[])[],
  sideBySide: SideBySide,
  vertical: Grains,
): LineCount[] {
  const edges = kinds.flatMap((kind) =>
    kind.modes.flatMap((mode) =>
      mode.yResidue === null ? [] : [mode.yResidue, mode.yResidue + mode.height],
    ),
  );
  const known = new Map<string, number>();
  return slabsAt(edges, vertical).map((slab) => {
    const size = slab.to - slab.from;
    const covers = kinds.map((kind) =>
      kind.modes.map((mode) =>
        mode.yResidue === null
          ? Math.floor(mode.height / vertical)
          : Math.round(
              measureIn(slab, mode.yResidue, mode.yResidue + mode.height, vertical) / size,
            ),
      ),
    );
    const key = JSON.stringify(covers);
    const lines = known.get(key) ?? linesFor(kinds, covers, typeOf, sideBySide);
    known.set(key, lines);
    return { slab, lines };
  });
}

function linesFor(
  kinds: readonly Kind[],
  covers: readonly (readonly number[])[],
  typeOf: readonly (readonly number[])[],
  sideBySide: SideBySide,
): number {
  const asking = kinds.flatMap((kind, k) => {
    const options = kind.modes.map((_, m) => ({
      type: typeOf[k]?.[m] as number,
      cover: Float64Array.of(covers[k]?.[m] as number),
    }));
    return options.every((option) => option.cover[0] === 0) ? [] : [{ count: kind.count, options }];
  });
  if (asking.length === 0) return 0;
  const found = new CoverLp(sideBySide, asking, Float64Array.of(1)).refute(Float64Array.of(0));
  if (!found) return 0;
  return Math.ceil(found.demand / (found.prices[0] as number) - 1e-6);
}

/** The least length that holds all whole lines, if cutting starts at pattern point `start`. */
export function lengthForLines(
  counts: readonly LineCount[],
  start: number,
  vertical: Grains,
): number {
  let length = 0;
  for (const { slab, lines } of counts) {
    if (lines === 0) continue;
    const inside = slab.from < start && start < slab.to;
    const first = inside ? vertical : mod(slab.from - start, vertical) + slab.to - slab.from;
    length = Math.max(length, (lines - 1) * vertical + first);
  }
  return length;
}
