import type { Length } from "../../units/length.ts";
import type { ClothPlan } from "../quantityTypes.ts";

/** A piece of a cloth in hand. */
export interface RemnantInHand {
  readonly length: Length;
  /** Null: as wide as the cloth. */
  readonly width: Length | null;
  /** How many such pieces there are: two for a pair of curtains taken down. */
  readonly count: number;
  /** Holes, stains and worn places, from the left edge and the lower end. */
  readonly holes: readonly Hole[];
  /** Seams that run along it, each by its distance from the left edge. */
  readonly seams: readonly Length[];
  /** From the lower end up to the middle of the first motif; null where it is not known. */
  readonly firstMotif: Length | null;
}

/** A place that no piece may touch. */
export interface Hole {
  readonly fromLeft: Length;
  readonly up: Length;
  readonly width: Length;
  readonly height: Length;
}

/** Some items of one room, by their ids and in words. */
export interface Named {
  readonly project: string;
  readonly room: string;
  readonly items: readonly string[];
  readonly titles: readonly string[];
  /** The cloth that the item is in now, where it is another. */
  readonly insteadOf: string | null;
  readonly words: {
    /** Project and room, `Quay House, sitting room`. */
    readonly where: string;
    /** Title and kind, `Bay, curtains`. */
    readonly items: readonly string[];
    readonly insteadOf: string | null;
  };
}

/** What some items of one room need of the cloth. */
export interface Makes extends Named {
  readonly needed: Length;
  readonly keeps: "both" | "left" | "right";
  readonly plan: ClothPlan;
}

/** The nearest that the remnant comes to what it cannot make. */
export interface Miss extends Named {
  readonly missing: Length;
  /** Which of its pieces is the first without room, and what would do. */
  readonly shortfall: {
    readonly holds: number;
    readonly of: number;
    readonly piece: string;
    readonly missing: Length | null;
    /** The motif so much lower (negative: higher) on that piece would do. */
    readonly motifLower: Length | null;
  };
}

export interface ClothFits {
  readonly width: Length;
  readonly makes: readonly Makes[];
  readonly nearestMiss: Miss | null;
}
