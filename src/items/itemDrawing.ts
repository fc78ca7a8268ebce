import type { Drawing } from "../drawing/shape.ts";
import type { UnitSystem } from "../units/printLength.ts";
import type { ClothFacts, Made, ObjectFacts } from "./itemKind.ts";

/** What a drawing or a sheet may look at beside the item's own fields and what was made of them. */
export interface DrawingContext {
  readonly units: UnitSystem;
  readonly language: "en-US" | "en-GB";
  readonly cloth: (id: string) => ClothFacts | null;
  readonly object: (id: string) => ObjectFacts | null;
  /** How other items of the room change its look: a lamp whose shade is an item of its own, curtains that tie-backs hold. */
  readonly look?: { readonly bare?: boolean; readonly heldAboveFloorMm?: number };
}

/** One heading of the words column of a specification sheet, with its short lines. */
export interface SheetGroup {
  readonly heading: string;
  readonly lines: readonly string[];
}

/** A tick box at the foot of the sheet; `blank` is a rule to write on, with its unit mark or "". */
export interface SheetCheck {
  readonly text: string;
  readonly blank: string | null;
}

/** The words of one item on its maker's sheet, beside its drawing. */
export interface ItemSheet {
  readonly groups: readonly SheetGroup[];
  readonly checks: readonly SheetCheck[];
  /** What each sign of the drawing means, once, in words: `Lozenge: middle of the motif.` */
  readonly signs: readonly string[];
}

/** How one kind of item is drawn and described; listed in drawings.ts. */
export interface ItemDrawing<F = never, M extends Made = Made> {
  readonly kind: string;
  /** From the front as it stands in the room, at full size, its foot on the box's lower edge; null where nothing is to be drawn. */
  elevation(fields: F, made: M, context: DrawingContext): Drawing | null;
  /** As `elevation`, from its left side with its front to the left, its depth for its width; missing where a kind has no such view. */
  side?(fields: F, made: M, context: DrawingContext): Drawing | null;
  /** As `elevation`, from behind; missing where a kind has no such view. */
  back?(fields: F, made: M, context: DrawingContext): Drawing | null;
  /** From above, its back at the box's upper edge; null where it takes no floor. */
  plan(fields: F, made: M, context: DrawingContext): Drawing | null;
  /** For its maker: dimensioned, black on white. */
  workshop(fields: F, made: M, context: DrawingContext): readonly Drawing[];
  sheet(fields: F, made: M, context: DrawingContext): ItemSheet;
}
