import { distance, type Mean, type Segment } from "./bandSegments.ts";

/** Bands of warp and weft over each other: the mean colour where each crosses each, warp by warp. */
export type Crossings = readonly (readonly Mean[])[];

/** Part of the greatest difference between two bands of one way within which two bands are of one yarn. */
const ALIKE = 0.2;
/** Part of the weft's own differences from which a warp band shows them, as what is woven does and what is printed over it does not. */
const WOVEN = 0.5;

/**
 * The yarns' own colours of the bands of a check. Seen all along, a band is mixed with all that crosses it; its own colour stands where
 * a yarn crosses its like. As every crossing is a mean of both yarns, bands of warp and weft are told to be alike by one difference of
 * both ways, the one under which most of them find their like. What has none is reckoned back from its mean.
 */
export function crossedColours(
  warp: readonly Segment[],
  weft: readonly Segment[],
  crossings: Crossings,
): { readonly warp: Mean[]; readonly weft: Mean[] } {
  const rows = warp.map((band) => band.mean);
  const columns = weft.map((band) => band.mean);
  const limit = ALIKE * 2 * Math.max(spread(rows), spread(columns));
  const shift = shiftOf(warp, weft);
  const unlike = (i: number, j: number) =>
    distance(
      doubled(rows[i] as Mean),
      doubled(columns[j] as Mean).map((v, c) => v - (shift[c] as number)),
    );
  const mean = weighted(warp);
  const own = (i: number, j: number) => (crossings[i] as readonly Mean[])[j] as Mean;
  const yarn = (
    band: Mean,
    others: readonly Segment[],
    unlikeTo: (k: number) => number,
    at: (k: number) => Mean,
    back: number,
  ): Mean => {
    const near = others.map((_, k) => k).sort((a, b) => unlikeTo(a) - unlikeTo(b))[0] as number;
    if (unlikeTo(near) < limit) return at(near);
    if (steepness(others, at) < WOVEN) return band;
    return band.map((v, c) => 2 * v - (mean[c] as number) + (back * (shift[c] as number)) / 2);
  };
  return {
    warp: rows.map((band, i) =>
      yarn(
        band,
        weft,
        (j) => unlike(i, j),
        (j) => own(i, j),
        1,
      ),
    ),
    weft: columns.map((band, j) =>
      yarn(
        band,
        warp,
        (i) => unlike(i, j),
        (i) => own(i, j),
        -1,
      ),
    ),
  };
}

/** Twice the difference that makes the most of both ways alike: of all pairs the one under which all together are least apart. */
function shiftOf(warp: readonly Segment[], weft: readonly Segment[]): Mean {
  let best: { shift: Mean; off: number } = { shift: [], off: Number.POSITIVE_INFINITY };
  for (const one of warp) {
    for (const other of weft) {
      const shift = doubled(other.mean).map((v, c) => v - (doubled(one.mean)[c] as number));
      const moved = weft.map(({ mean }) => doubled(mean).map((v, c) => v - (shift[c] as number)));
      const least = (mean: Mean, of: readonly Mean[]) =>
        Math.min(...of.map((m) => distance(mean, m)));
      const rows = warp.map(({ mean }) => doubled(mean));
      const off =
        warp.reduce(
          (sum, { from, to }, i) => sum + (to - from) * least(rows[i] as Mean, moved),
          0,
        ) +
        weft.reduce((sum, { from, to }, j) => sum + (to - from) * least(moved[j] as Mean, rows), 0);
      if (off < best.off) best = { shift, off };
    }
  }
  return best.shift;
}

/** How far a band shows the differences of what crosses it: 1 as a mean of both, 0 where it lies over them. */
function steepness(others: readonly Segment[], at: (k: number) => Mean): number {
  const middle = weighted(others);
  let [up, over] = [0, 0];
  const here = others.map((_, k) => at(k));
  const mean = weighted(others.map((band, k) => ({ ...band, mean: here[k] as Mean })));
  for (const [k, other] of others.entries()) {
    for (const [c, v] of other.mean.entries()) {
      const off = v - (middle[c] as number);
      up +=
        (other.to - other.from) * off * (((here[k] as Mean)[c] as number) - (mean[c] as number));
      over += (other.to - other.from) * off * off;
    }
  }
  return over > 0 ? up / over : 0;
}

function weighted(bands: readonly Segment[]): Mean {
  const [first] = bands;
  return (first?.mean ?? []).map((_, c) =>
    bands.reduce((sum, { from, to, mean }) => sum + (to - from) * (mean[c] as number), 0),
  );
}

function doubled(mean: Mean): Mean {
  return mean.map((v) => 2 * v);
}

function spread(means: readonly Mean[]): number {
  return Math.max(...means.flatMap((one) => means.map((other) => distance(one, other))));
}
