import type { Drawing } from "../drawing/shape.ts";
import type { Length } from "../units/length.ts";
import type { UnitSystem } from "../units/printLength.ts";
import type { ClothFacts, HangsOn, Made, ObjectFacts, WindowFacts } from "./itemKind.ts";

/** What a drawing or a sheet may look at beside the item's own fields and what was made of them. */
export interface DrawingContext {
  readonly units: UnitSystem;
  readonly language: "en-US" | "en-GB";
  readonly cloth: (id: string) => ClothFacts | null;
  readonly object: (id: string) => ObjectFacts | null;
  /**
   * How other items of the room change its look: a lamp whose shade is an item of its own, curtains that tie-backs hold, or that hang
   * drawn together behind a bed.
   */
  readonly look?: {
    readonly bare?: boolean;
    readonly heldAboveFloorMm?: number;
    readonly drawnTogether?: boolean;
  };
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

/** The rectangle that a thing takes on its wall, as one looks at it from inside: from the wall's left end, and from the floor. */
export interface OnWall {
  readonly wall: string;
  readonly left: Length;
  readonly foot: Length;
  readonly width: Length;
  readonly height: Length;
}

/** What the fitter's words of an item may look at beside its fields and what was made of them. */
export interface FittingContext extends DrawingContext {
  /** The opening that it hangs at, or null. */
  readonly window: WindowFacts | null;
  /** Where it is on its wall, as it was worked out; null where that is not known. Of what hangs on another item, that one's. */
  readonly box: OnWall | null;
  /** What it hangs on, in words, or null. */
  readonly on: string | null;
  /** The piece that carries it, or what it holds back; null at a window or on a wall. */
  readonly hangsOn: HangsOn | null;
  /** What was taken for granted of its place, each a full sentence. */
  readonly assumed: readonly string[];
}

/** How a thing is drawn on its wall for the fitter, and the height that it is fixed at. */
export interface FittingMark {
  /** A pole or track with what hangs from it, a board or headrail with what hangs from it, what hangs as a whole, or hooks alone. */
  readonly as: "pole" | "board" | "frame" | "hooks";
  /** Above the floor: a pole's middle, a board's top, a headboard's foot, a picture's middle. */
  readonly height: Length;
  /** The left and right end of what is fixed, from the wall's left end; null where nobody knows. */
  readonly across: { readonly left: Length; readonly width: Length } | null;
}

/** What a fitter reads of one item that goes up. */
export interface FittingLine {
  readonly groups: readonly SheetGroup[];
  readonly checks: readonly SheetCheck[];
  /** Not known, to be asked before anything is drilled; each a full sentence. */
  readonly questions: readonly string[];
  /** Null where its place on the wall is not known. */
  readonly mark: FittingMark | null;
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
  /** What the fitter reads of it; null where this one does not go up on a wall, missing where none of its kind does. */
  fitting?(fields: F, made: M, context: FittingContext): FittingLine | null;
}
