import Fraction from "fraction.js";
import type { ClothFacts } from "../items/itemKind.ts";
import type { Length } from "../units/length.ts";
import { afterWashing } from "../units/washing.ts";

const NOTHING = new Fraction(0);
const WASHED_TYPES: ReadonlySet<ClothFacts["type"]> = new Set(["cloth", "lining", "interlining"]);

/** True of what can be washed before it is cut. Paper, leather and trims are not, whatever their cards say. */
export function canBeWashed({ type }: Pick<ClothFacts, "type">): boolean {
  return WASHED_TYPES.has(type);
}

/**
 * A cloth as it is expected to come out of the wash, `across` the share of its width that it loses (null where nobody said it): narrower,
 * its repeat shorter, and nothing left to lose. What it really lost is measured then, and takes the place of this.
 */
export function washedFacts(facts: ClothFacts, saidAcross: Fraction | null): ClothFacts {
  const across = saidAcross ?? NOTHING;
  const along = facts.shrinkage ?? NOTHING;
  const narrower = (length: Length | null) => length && afterWashing(length, across);
  const { repeat } = facts;
  return {
    ...facts,
    usableWidth: narrower(facts.usableWidth),
    repeat: repeat && {
      ...repeat,
      up: afterWashing(repeat.up, along),
      across: narrower(repeat.across),
      fromSelvedge: narrower(repeat.fromSelvedge),
    },
    shrinkage: NOTHING,
    washing: { along, across, ...(saidAcross === null ? { acrossUnsaid: true } : {}) },
  };
}
