import type Fraction from "fraction.js";
import type { MakerPart } from "../quantities/quantityTypes.ts";
import type { Length } from "../units/length.ts";
import type { VolumeUnit } from "../units/volume.ts";

/** A share that one item has in what is bought of a cloth. */
export interface PurchaseUse {
  readonly room: string;
  readonly item: string;
  /**
   * Its weight in the sharing of the cost: the cloth area of its pieces, or its count of rolls; of what several makers divide the maker's
   * length, shared by area.
   */
  readonly weight: Fraction;
}

/** What is bought of one card, for one maker or once for several, as the quantities say. */
export interface Purchase {
  readonly cloth: string;
  /** Null where it is bought for several makers, or for nobody's bench. */
  readonly maker: string | null;
  /** What has to come whole of it, each length for its maker; empty of what is counted. */
  readonly whole: readonly MakerPart[];
  /** A length of cloth, or a count of rolls or pieces. */
  readonly amount: { readonly length: Length } | { readonly count: Fraction };
  readonly uses: readonly PurchaseUse[];
}

/** Tins of one size: how many, and what they hold together. */
export interface PaintTins {
  readonly tins: number;
  readonly amount: Fraction;
  readonly unit: VolumeUnit;
}

/** An item as money sees it. */
export interface PricedItem {
  readonly room: string;
  readonly item: string;
  readonly kind: string;
  readonly title: string;
  readonly maker: string | null;
  /** The phase in which it is bought. */
  readonly usualPhase: number;
  /** How hard it is to undo, by its kind: 1 cheap and easily changed, 3 hard. */
  readonly commitment: 1 | 2 | 3;
  readonly makingCounts: Readonly<Partial<Record<string, Fraction>>>;
  /** The tins of paint to buy, one entry for each size; empty where none is. */
  readonly paint: readonly PaintTins[];
  readonly needsMaking: boolean;
}
