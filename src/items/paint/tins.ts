import Fraction from "fraction.js";
import type { Tin } from "./volume.ts";

export interface TinCount {
  readonly tin: Tin;
  readonly count: number;
}

/**
 * Tins that hold at least `litres`, where their prices are not known: least paint over, then fewest tins. Of a smaller size never so many that two thirds of the
 * next larger would be bought by it, since three quarts cost about as much as a gallon (common practice, no source).
 */
export function tinsFor(litres: Fraction, sizes: readonly Tin[]): TinCount[] {
  if (litres.compare(0) <= 0) return [];
  const distinct = sizes.filter(
    (s, at) => sizes.findIndex((o) => o.litres.equals(s.litres)) === at,
  );
  const sorted = [...distinct].sort((a, b) => b.litres.compare(a.litres));
  let best: { counts: number[]; litres: Fraction; tins: number } | null = null;
  const tryFrom = (at: number, counts: number[], held: Fraction): void => {
    const tin = sorted[at];
    if (!tin) {
      if (held.compare(litres) < 0) return;
      const tins = counts.reduce((a, b) => a + b, 0);
      const better =
        best === null ||
        held.compare(best.litres) < 0 ||
        (held.equals(best.litres) && tins < best.tins);
      if (better) best = { counts: [...counts], litres: held, tins };
      return;
    }
    const left = litres.sub(held);
    const needed = left.compare(0) <= 0 ? 0 : Number(left.div(tin.litres).ceil().valueOf());
    const larger = sorted[at - 1];
    const most = larger
      ? Number(larger.litres.mul(2).div(3).div(tin.litres).floor().valueOf())
      : needed;
    // The largest size fills all but its last tin or two; more choices than that only cost time.
    const least = at === 0 ? Math.max(0, needed - 1) : 0;
    for (let n = Math.min(needed, Math.max(most, 1)); n >= least; n -= 1)
      tryFrom(at + 1, [...counts, n], held.add(tin.litres.mul(n)));
  };
  tryFrom(0, [], new Fraction(0));
  const found = best as { counts: number[] } | null;
  if (found === null) {
    const largest = sorted[0];
    return largest
      ? [{ tin: largest, count: Number(litres.div(largest.litres).ceil().valueOf()) }]
      : [];
  }
  return sorted.flatMap((tin, at) =>
    (found.counts[at] ?? 0) > 0 ? [{ tin, count: found.counts[at] as number }] : [],
  );
}
