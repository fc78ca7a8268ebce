import Fraction from "fraction.js";
import { type Money, money } from "../units/money.ts";

/**
 * Shares a sum out by weights so that the parts add up to it to the last minor unit (largest remainder; ties go to the earlier
 * part). Weights are exact and not negative; where all are nought the parts are equal.
 */
export function allocate(total: Money, weights: readonly Fraction[]): Money[] {
  if (weights.length === 0) return [];
  const sum = weights.reduce((a, b) => a.add(b), new Fraction(0));
  const even = sum.compare(0) === 0;
  const negative = total.minor < 0n;
  const size = negative ? -total.minor : total.minor;
  const exact = weights.map((w) =>
    new Fraction(size, 1n).mul(even ? new Fraction(1, weights.length) : w.div(sum)),
  );
  const floors = exact.map((e) => BigInt(e.floor().toFraction()));
  let left = size - floors.reduce((a, b) => a + b, 0n);
  const order = exact
    .map((e, at) => ({ at, rest: e.sub(e.floor()) }))
    .sort((a, b) => b.rest.compare(a.rest) || a.at - b.at);
  for (const { at } of order) {
    if (left === 0n) break;
    floors[at] = (floors[at] as bigint) + 1n;
    left -= 1n;
  }
  return floors.map((minor) => money(negative ? -minor : minor, total.currency));
}
