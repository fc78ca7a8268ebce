import type Fraction from "fraction.js";
import type { Length } from "../../../units/length.ts";
import type { ClothFacts, ItemCut } from "../../itemKind.ts";

export const SKIRT_STYLES = ["gathered", "box-pleat", "tailored"] as const;
export type SkirtStyle = (typeof SKIRT_STYLES)[number];

/** One length of skirt between two finished ends: `left side`, or the whole way round. */
export interface SkirtRun {
  readonly name: string;
  readonly length: Length;
  /** The sides that it goes along; empty where another line has told how its length came about. */
  readonly sides: readonly Length[];
  /** Corners within it, each with a pleat where it is tailored. */
  readonly corners: number;
}

export interface SkirtAsk {
  readonly cloth: string;
  readonly runs: readonly SkirtRun[];
  readonly style: SkirtStyle;
  readonly fullness: Fraction;
  readonly cornerPleat: Length;
  /** Side hems, or the lap, of one run together, and what they are called. */
  readonly ends: Length;
  readonly endsWord: string;
  readonly drop: Length;
  readonly hem: Length;
  readonly top: Length;
  /** What its pieces and allowances are called; a skirt with drop, hem and top where nothing is said. */
  readonly words?: {
    readonly piece: string;
    readonly drop: string;
    readonly hem: string;
    readonly top: string;
  };
  readonly join: Length;
  readonly count: number;
  readonly railroad: boolean | undefined;
  readonly keyPath: readonly string[];
}

/** One run as it is cut. */
export interface RunCut {
  readonly run: SkirtRun;
  /** Flat cloth that it needs, joins not counted. */
  readonly flat: Length;
  /** Widths of cloth, or strips where it is sideways. */
  readonly widths: number;
  readonly joined: Length;
  /** Of cloth run sideways, the lengths of its strips from the left; null where it is made of widths. */
  readonly strips: readonly Length[] | null;
}

export interface Skirt {
  readonly cloth: ClothFacts;
  readonly usableWidth: Length;
  readonly style: SkirtStyle;
  readonly fullness: Fraction;
  readonly drop: Length;
  readonly cut: Length;
  readonly hem: Length;
  readonly top: Length;
  readonly runs: readonly RunCut[];
  readonly sideways: boolean;
  readonly cuts: readonly ItemCut[];
  readonly widths: number;
  readonly finishedRun: Length;
  readonly flat: Length;
  readonly handbook: Length;
}
