import type { Kind } from "../laying/kinds.ts";
import { mod } from "../laying/modes.ts";
import type { Grains } from "../piece.ts";
import { CoverLp } from "./coverLp.ts";
import type { SideBySide } from "./sideBySide.ts";
import { measureIn, type Slab, slabsAt } from "./slabs.ts";

/** The least number of lines of a slab, one a repeat, that the pieces crossing it need. */
export interface LineCount {
  readonly slab: Slab;
  readonly lines: number;
  /** What one copy of each kind takes of them at least, if one line holds at most 1: a dual of the packing. */
  readonly worth: readonly number[];
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
  const known = new Map<string, Omit<LineCount, "slab">>();
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
    const packed = known.get(key) ?? linesFor(kinds, covers, typeOf, sideBySide);
    known.set(key, packed);
    return { slab, ...packed };
  });
}

function linesFor(
  kinds: readonly Kind[],
  covers: readonly (readonly number[])[],
  typeOf: readonly (readonly number[])[],
  sideBySide: SideBySide,
): Omit<LineCount, "slab"> {
  const none = { lines: 0, worth: kinds.map(() => 0) };
  const asking = kinds.flatMap((kind, k) => {
    const options = kind.modes.map((_, m) => ({
      type: typeOf[k]?.[m] as number,
      cover: Float64Array.of(covers[k]?.[m] as number),
    }));
    return options.every((option) => option.cover[0] === 0)
      ? []
      : [{ k, count: kind.count, options }];
  });
  if (asking.length === 0) return none;
  const found = new CoverLp(sideBySide, asking, Float64Array.of(1)).refute(Float64Array.of(0));
  if (!found) return none;
  const line = found.prices[0] as number;
  const worth = [...none.worth];
  asking.forEach(({ k }, i) => {
    worth[k] = (found.ofKinds[i] as number) / line;
  });
  return { lines: Math.ceil(found.demand / line - 1e-6), worth };
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
