import type Fraction from "fraction.js";
import type { TinCount } from "./tins.ts";
import type { Tin } from "./volume.ts";

/** A size of tin with what one costs, in the currency's units. */
export interface PricedTin {
  readonly tin: Tin;
  readonly price: Fraction;
}

/** A size in whole numbers: volumes and prices each brought to one denominator, so that all sums are exact. */
interface Size {
  readonly tin: Tin;
  readonly volume: bigint;
  readonly price: bigint;
}

interface Found {
  readonly counts: readonly bigint[];
  readonly price: bigint;
  readonly tins: bigint;
  readonly volume: bigint;
}

/** A list of tins that is sold comes nowhere near so many steps; what was best until then stands. */
const MOST_STEPS = 300_000;

const gcd = (a: bigint, b: bigint): bigint => (b === 0n ? a : gcd(b, a % b));
const upTo = (volume: bigint, size: bigint): bigint =>
  volume <= 0n ? 0n : (volume + size - 1n) / size;

/** Fractions as whole numbers of their least common part. */
function whole(values: readonly Fraction[]): bigint[] {
  const part = values.reduce((d, v) => (d / gcd(d, v.d)) * v.d, 1n);
  return values.map((v) => (v.s * v.n * part) / v.d);
}

/** The sizes, that which costs least for what it holds last, of such the largest; and what they must hold. */
function sizesOf(litres: Fraction, priced: readonly PricedTin[]): { all: Size[]; need: bigint } {
  const distinct = priced.filter(
    ({ tin }, at) => priced.findIndex((o) => o.tin.litres.equals(tin.litres)) === at,
  );
  const volumes = whole([litres, ...distinct.map(({ tin }) => tin.litres)]);
  const prices = whole(distinct.map(({ price }) => price));
  const all = distinct.map(
    ({ tin }, at): Size => ({
      tin,
      volume: volumes[at + 1] as bigint,
      price: prices[at] as bigint,
    }),
  );
  const order = (a: Size, b: Size): bigint =>
    b.price * a.volume - a.price * b.volume || a.volume - b.volume;
  return { all: all.sort((a, b) => (order(a, b) > 0n ? 1 : -1)), need: volumes[0] as bigint };
}

function isBetter(a: Found, b: Found | null): boolean {
  if (b === null) return true;
  if (a.price !== b.price) return a.price < b.price;
  return a.tins !== b.tins ? a.tins < b.tins : a.volume < b.volume;
}

/**
 * The tins that hold at least `litres` and cost least; of equal price the fewest tins, then least over. Exact: every count of every size is
 * tried unless it cannot lead to less. What is still to be held costs no less than by the size that is cheapest for what it holds, and
 * of the others there are never as many as that size has common parts: some of them would hold a number of its tins, for no less.
 */
export function cheapestTins(litres: Fraction, priced: readonly PricedTin[]): TinCount[] {
  if (litres.compare(0) <= 0 || priced.length === 0) return [];
  const { all, need } = sizesOf(litres, priced);
  const last = all.at(-1) as Size;
  const part = all.reduce((d, { volume }) => gcd(d, volume), 0n);
  const mostOthers = last.volume / part - 1n;
  const bySize = [...all].sort((a, b) => (a.volume > b.volume ? -1 : 1));
  const largest = (bySize[0] as Size).volume;
  let best: Found | null = null;
  let steps = 0;
  /** True where nothing that begins so can be better than the best. */
  const isLost = (price: bigint, tins: bigint, left: bigint): boolean => {
    if (best === null) return false;
    const rest = left > 0n ? left : 0n;
    const least = price * last.volume + rest * last.price;
    const known = best.price * last.volume;
    return least > known || (least === known && tins + upTo(rest, largest) > best.tins);
  };
  const tryFrom = (at: number, counts: readonly bigint[], price: bigint, left: bigint): void => {
    const size = all[at] as Size;
    const tins = counts.reduce((a, b) => a + b, 0n);
    if (size === last) {
      const n = upTo(left, size.volume);
      const found: Found = {
        counts: [...counts, n],
        price: price + n * size.price,
        tins: tins + n,
        volume: n * size.volume - left,
      };
      if (isBetter(found, best)) best = found;
      return;
    }
    for (let n = 0n; n <= upTo(left, size.volume) && tins + n <= mostOthers; n += 1n) {
      const [cost, rest] = [price + n * size.price, left - n * size.volume];
      if (isLost(cost, tins + n, rest)) break;
      steps += 1;
      if (steps > MOST_STEPS) return;
      tryFrom(at + 1, [...counts, n], cost, rest);
    }
  };
  tryFrom(0, [], 0n, need);
  const { counts } = best as unknown as Found;
  return all
    .flatMap(({ tin }, at) => ((counts[at] ?? 0n) > 0n ? [{ tin, count: Number(counts[at]) }] : []))
    .sort((a, b) => b.tin.litres.compare(a.tin.litres));
}
