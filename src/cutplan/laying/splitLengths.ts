import type { Grains } from "../piece.ts";
import type { Band } from "./bands.ts";

/**
 * Splits consecutive bands over lengths of at most `maxLength`, each beginning at the foot of its first band. What is least is
 * the lengths together with one repeat more for every further length, which is lost before its own pattern point; on equal
 * terms, the fewer lengths. Every band must be within `maxLength`. Returns the index of the first band of each length.
 */
export function splitLengths(
  bands: readonly Band[],
  maxLength: Grains,
  vertical: Grains,
): number[] {
  const n = bands.length;
  const cost = new Float64Array(n + 1);
  const count = new Int32Array(n + 1);
  const from = new Int32Array(n + 1);
  for (let end = 1; end <= n; end++) {
    cost[end] = Number.POSITIVE_INFINITY;
    const top = (bands[end - 1] as Band).top;
    for (let first = end - 1; first >= 0; first--) {
      const length = top - (bands[first] as Band).foot;
      if (length > maxLength) break;
      const c = (cost[first] as number) + length + (first > 0 ? vertical : 0);
      const k = (count[first] as number) + 1;
      if (c < (cost[end] as number) || (c === cost[end] && k < (count[end] as number))) {
        cost[end] = c;
        count[end] = k;
        from[end] = first;
      }
    }
  }
  const firsts: number[] = [];
  for (let end = n; end > 0; end = from[end] as number) firsts.unshift(from[end] as number);
  return firsts;
}

/** What a split costs: the lengths together and one repeat for each beyond the first; infinite if one is over `maxLength`. */
export function splitCost(
  bands: readonly Band[],
  firsts: readonly number[],
  maxLength: Grains,
  vertical: Grains,
): Grains {
  let cost = 0;
  firsts.forEach((first, i) => {
    const last = (firsts[i + 1] ?? bands.length) - 1;
    const length = (bands[last] as Band).top - (bands[first] as Band).foot;
    cost += length <= maxLength ? length : Number.POSITIVE_INFINITY;
    if (i > 0) cost += vertical;
  });
  return cost;
}
