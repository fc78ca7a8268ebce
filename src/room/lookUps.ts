import type { ClothFacts } from "../items/itemKind.ts";

/** What the room asks of the swatches, handed in as functions. */
export interface LookUps {
  /** What is known of a card of the cloth library; null where there is none of that name. */
  readonly cloth: (id: string) => ClothFacts | null;
  /** An object's colours as `#rrggbb`, largest share first: from its photograph, else its card. */
  readonly objectColours: (id: string) => readonly string[];
}
