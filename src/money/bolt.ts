import type Fraction from "fraction.js";
import { Length } from "../units/length.ts";
import { compareMoney, type Money, subtractMoney, timesMoney } from "../units/money.ts";

/** A cloth bought cut or by whole bolts. */
export interface BoltChoice {
  /** What is needed, cut. */
  readonly cut: Money;
  /** Whole bolts at the bolt's price. */
  readonly bolts: Money;
  readonly boltCount: number;
  /** What the whole bolts leave over. */
  readonly over: Length;
  /** Length from which one bolt costs no more than the same length cut: the bolt's price over the cut price. Exact. */
  readonly breakEven: Length;
  /** What whole bolts save; negative where they cost more. */
  readonly saves: Money;
  readonly worth: boolean;
}

/**
 * Cut length against whole bolts, by trade prices for the same unit (common practice: price breaks come at a full bolt or piece).
 * `unit` is the unit's length, `least` how many bolts it takes where lengths have to come whole.
 */
export function boltChoice(
  need: Length,
  cutPrice: Money,
  bolt: { readonly length: Length; readonly price: Money },
  unit: Length,
  least = 0,
): BoltChoice {
  const units = (length: Length): Fraction => length.over(unit);
  const boltCount = Math.max(least, Number(need.over(bolt.length).ceil().toFraction()));
  const all = bolt.length.times(boltCount);
  const cut = timesMoney(cutPrice, units(need));
  const bolts = timesMoney(bolt.price, units(all));
  const ratio = bolt.length.mm
    .mul(bolt.price.minor)
    .div(cutPrice.minor === 0n ? 1n : cutPrice.minor);
  return {
    cut,
    bolts,
    boltCount,
    over: all.minus(need),
    breakEven: Length.mm(ratio),
    saves: subtractMoney(cut, bolts),
    worth: compareMoney(bolts, cut) < 0,
  };
}
