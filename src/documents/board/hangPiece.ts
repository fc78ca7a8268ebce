import type { Role } from "../../scheme/roles.ts";

/** A piece of the mix before it has a place. */
export interface HangPiece {
  readonly id: string;
  readonly role: Role | "anchor" | "object";
  /** Its share of the cloth that is seen, 0 to 1. */
  readonly share: number;
  /** Width over height of its photograph, for an anchor that is shown whole; null for cloth, which is cut to suit. */
  readonly ownAspect: number | null;
  readonly look: "stripe" | "geometric" | "print" | "plain";
  /** The width of one repeat on paper, mm, or null. */
  readonly repeatOnPaperMm: number | null;
  /** As large as it can be shown: what its photograph shows, mm on paper; null where it can be laid as far as is wanted. */
  readonly most: { readonly width: number; readonly height: number } | null;
  /** L* of its average, 0 to 100, for the balance of light and dark. */
  readonly lightness: number;
}

/** A piece with its place on the field; millimetres from the field's upper left corner. */
export interface HungPiece {
  readonly id: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly row: "upper" | "lower";
}

export interface Field {
  readonly width: number;
  readonly height: number;
}

/** The gap between pieces, and the channels in which the captions hang. */
export const GAP_MM = 6;
export const CAPTION_MM = 18;
