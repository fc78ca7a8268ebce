/** A cloth's tile: one repeat across and up, as a picture at true size. */
export interface Tile {
  readonly href: string;
  /** To the next column; on half-drop cloth that column hangs half a repeat lower. */
  readonly widthMm: number;
  /** One repeat up the cloth. */
  readonly heightMm: number;
  readonly match: "straight" | "half-drop";
  /** The main motif's middle inside the tile, from its upper left corner. */
  readonly originX: number;
  readonly originY: number;
}

/** What a surface of a drawing is filled with: cloth, a flat colour, a photograph shown whole, or null for bare paper. */
export type Binding =
  | { readonly tile: Tile; readonly averageHex: string }
  | { readonly hex: string }
  /** `isGrey`: the picture has no colour, and may stand in a drawing in grey. */
  | { readonly href: string; readonly averageHex: string; readonly isGrey?: true }
  | null;

/** The flat that stands for a binding where no pattern is shown. */
export function flatOf(binding: Binding): string {
  if (binding === null) return "#ffffff";
  return "hex" in binding ? binding.hex : binding.averageHex;
}
