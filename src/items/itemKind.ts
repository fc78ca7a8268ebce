import type Fraction from "fraction.js";
import type { z } from "zod";
import type { Diagnostic, Place } from "../diagnostics/diagnostic.ts";
import type { AllowanceTable } from "../fields/allowance.ts";
import type { PaintPrice } from "../fields/paintPriceField.ts";
import type { BedSide } from "../fields/placementField.ts";
import type { Length } from "../units/length.ts";
import type { UnitSystem } from "../units/printLength.ts";

/** What an item may know of a cloth: the card's or the measured values, whichever count. Unknown stays null. */
export interface ClothFacts {
  readonly id: string;
  readonly name: string;
  readonly type: "cloth" | "wallcovering" | "lining" | "interlining" | "trim" | "leather";
  readonly usableWidth: Length | null;
  /** The card's width, where a length of it came and was measured: its repeats across are those of this width. */
  readonly statedWidth?: Length;
  readonly repeat: {
    readonly up: Length;
    readonly across: Length | null;
    readonly match: "straight" | "half-drop" | "free";
    /** From the left selvedge to the middle of the first motif; half of `across` where the card is silent. */
    readonly fromSelvedge: Length | null;
  } | null;
  /** True where it is patterned and neither its card nor its photograph tells how it repeats: lengths are then a plain's, too little perhaps. */
  readonly repeatUnknown?: boolean;
  /** True of a stripe whose repeat across nobody has said: its length is sure, and where its bands fall is not. */
  readonly bandsUnknown?: boolean;
  /** True where it may lie turned a quarter: plain, without nap, or said to run any way. */
  readonly mayTurn: boolean;
  readonly nap: boolean;
  /** True where its motifs have a top, or its bands are not the same read backwards, by its card or else by its photograph. */
  readonly oneWay?: boolean;
  /** What its card says that it may lose of its length, as a share of one; left out where the card is silent, nought where it is washed first. */
  readonly shrinkage?: Fraction;
  /** True where its card says that it is not washed before it is cut. */
  readonly cutUnwashed?: boolean;
  /** Of a cloth that is washed before it is cut: what it loses along and across, as shares of one. Its width and repeat here are those after. */
  readonly washing?: {
    readonly along: Fraction;
    readonly across: Fraction;
    /** True where nobody said what it loses of its width: its width here is then that of before. */
    readonly acrossUnsaid?: boolean;
  };
  readonly roll: { readonly width: Length; readonly length: Length } | null;
}

/** A window, or a door that something hangs at. */
export interface WindowFacts {
  readonly name: string;
  readonly wall: string;
  readonly width: Length;
  readonly height: Length;
  readonly sill: Length;
  readonly recess: Length | null;
  readonly fromLeft: Length;
  /** True for a door opening, whose sill is the floor. */
  readonly isDoor?: boolean;
}

/** What an item may know of an object's card: a rug, a picture, a stove. Unknown stays null. */
export interface ObjectFacts {
  readonly id: string;
  readonly name: string;
  readonly shape:
    | "rug"
    | "picture"
    | "chair"
    | "table"
    | "chest"
    | "lamp"
    | "stove"
    | "seat"
    | "mirror"
    | "box"
    | "bed";
  /** True where it is round from above: a round table. */
  readonly round: boolean;
  /** Of a bed, made up: width, length, and the height of its top above the floor. */
  readonly mattress: readonly [Length, Length, Length] | null;
  /** What is seen of it from the front: width and height; a rug's depth is its second measure, its height null. */
  readonly width: Length | null;
  readonly depth: Length | null;
  readonly height: Length | null;
  /** As typed on the card, `18 kg`: printed, never reckoned with. */
  readonly weight: string | null;
  readonly stays: boolean;
  readonly owner: string | null;
  readonly hasPhoto: boolean;
  /** Its colours as `#rrggbb`, largest share first: from its photograph or its card. */
  readonly colours: readonly string[];
}

/** One run of wall for paint or paper: a rectangle less its openings. All `fromLeft` count from the wall's left end. */
export interface WallRun {
  readonly wall: string;
  readonly fromLeft: Length;
  readonly width: Length;
  readonly height: Length;
  readonly openings: readonly {
    readonly what: "window" | "door";
    readonly fromLeft: Length;
    readonly width: Length;
    readonly foot: Length;
    readonly height: Length;
  }[];
}

/** Everything outside its own fields that an item's arithmetic may look at. Plain values and look-ups; no files. */
export interface ItemContext {
  readonly units: UnitSystem;
  readonly cloth: (id: string) => ClothFacts | null;
  /** An object's card; null where there is none of that name. */
  readonly object: (id: string) => ObjectFacts | null;
  /** What studio.md says of paint, as typed; null where it says nothing. */
  readonly paint: {
    readonly coverage: string | null;
    readonly tins: readonly string[] | null;
    readonly price: readonly PaintPrice[] | null;
  } | null;
  /** The object that it lies on or stands round, as its card has it; null where it has none. */
  readonly host: ObjectFacts | null;
  /** The window that it hangs at, or null. */
  readonly window: WindowFacts | null;
  /** The piece that it hangs on instead, as hangings do on a bed; null where it hangs on a wall. */
  readonly hangsOn: HangsOn | null;
  readonly roomHeight: Length | null;
  /** The floor's length and width, or null without floor or walls. */
  readonly floor: {
    readonly length: Length;
    readonly width: Length;
    readonly perimeter: Length;
  } | null;
  /** Whether another item papers the ceiling, which then is not painted. */
  readonly isCeilingPapered: boolean;
  /**
   * The wall runs that `on` names, in the room's order, with what is papered taken out for paint; `woodwork` names every wall
   * whole, papered or not, since the skirting runs on. An empty list where `on` names a wall that is not there; null where the
   * room has no walls.
   */
  readonly runs: (on: unknown) => readonly WallRun[] | null;
  /** An allowance by its name: looked for at the item, its maker, the studio, then the kind's usual value, which is noted as used. */
  readonly length: (allowance: string) => Length;
  readonly ratio: (allowance: string) => Fraction;
  readonly count: (allowance: string) => number;
  readonly place: (keyPath: readonly (string | number)[]) => Place;
}

/** A piece that carries hangings on its posts or its tester. */
export interface HangsOn {
  /** Its title. */
  readonly title: string;
  /** The side at which they hang; null where that is not said. */
  readonly side: BedSide | null;
}

/** How a piece must lie across the cloth. */
export type AcrossMatch =
  | { readonly how: "free" }
  /** A whole width, selvedge to selvedge. */
  | { readonly how: "whole-width" }
  /** A part width cut against one selvedge, the one that joins. */
  | { readonly how: "selvedge"; readonly side: "left" | "right" }
  /** A motif (or stripe) stands at this distance from the piece's left edge. */
  | { readonly how: "motif-at"; readonly fromLeft: Length };

/** How a piece must lie along the cloth. */
export type AlongMatch =
  | { readonly how: "free" }
  /** A motif's middle stands this far above the piece's foot. `joined` counts the drop's place among its joined neighbours (curtains: from the leading edge, so that a pair begins alike): odd ones on half-drop cloth shift by half a repeat. Where the half-drop falls inside the width the item gives 0 throughout. */
  | { readonly how: "motif-at"; readonly aboveFoot: Length; readonly joined: number }
  /** Level with all other pieces of the same `series` (a window, a room), wherever the pattern starts. */
  | { readonly how: "level"; readonly series: string; readonly joined: number };

/** Pieces to be cut alike. */
export interface ItemCut {
  /** The piece in words, `left curtain, first drop`. */
  readonly piece: string;
  /** Which surface of the item it becomes: face, back, welt, lining, seat … */
  readonly surface: string;
  readonly cloth: string;
  readonly width: Length;
  readonly height: Length;
  readonly count: number;
  readonly mayTurn: boolean;
  readonly across: AcrossMatch;
  readonly along: AlongMatch;
  /** Other rectangles of the same use (a bias reserve need not be square); the plan may take whichever falls best. */
  readonly instead?: readonly { readonly width: Length; readonly height: Length }[];
  /** How the cut size comes about, each allowance named: `92″ drop + 10″ hem + 8″ heading`. */
  readonly because: string;
}

/** Something bought that is not cut from a planned cloth: tape, hooks, a pad, rods, paint, rolls. */
export interface MaterialNeed {
  readonly what: string;
  /** The card that it is bought from, or null. */
  readonly cloth: string | null;
  readonly amount: Fraction;
  readonly unit: "piece" | "metre" | "yard" | "roll" | "litre" | "gallon" | "quart" | "kilogram";
  /** How many tins the amount comes in, where it is sold by the tin. */
  readonly tins?: number;
  readonly text: string;
  /** Who supplies it in the ordinary way. */
  readonly by: "studio" | "maker";
  /** How its length was come by, where cloth money hangs on it. */
  readonly working?: WorkingLine;
}

/** One line of working that can be followed with a pencil. */
export interface WorkingLine {
  readonly what: string;
  /** `96″ pole + 2 × 3 1/2″ returns + 3″ overlap` */
  readonly sum: string;
  readonly result: string;
  /** How it was rounded, or null. */
  readonly rounded: string | null;
}

/** What the handbook's rule gives of one cloth. */
export interface HandbookLength {
  readonly cloth: string;
  readonly length: Length;
  /** Of a cloth that is only estimated, the sentence that says so, where it is not the item's own `estimate`. */
  readonly estimate?: string;
}

/** What an item comes to, for every kind; each kind adds its own finished sizes for its drawing and sheet. */
export interface Made {
  /** Machine figures by the names of the JSON (design: widths, flatWidthMm, cutLengthMm, pleats, strips, rolls, litres …). */
  readonly figures: Readonly<Record<string, number>>;
  readonly cuts: readonly ItemCut[];
  readonly materials: readonly MaterialNeed[];
  readonly working: readonly WorkingLine[];
  /** The length that the handbook's rule gives for each cloth. */
  readonly handbook: readonly HandbookLength[];
  /** What its making is counted by for a maker's rate: widths, items, rolls, square metres. */
  readonly makingCounts: Readonly<
    Partial<
      Record<
        "item" | "width" | "drop" | "yard" | "metre" | "roll" | "square-metre" | "square-foot",
        Fraction
      >
    >
  >;
  /** Not known, to be asked before cutting; each a full sentence. */
  readonly questions: readonly string[];
  /** Codes of cautions that stand where the work is specified: cords, fire, lead-paint, heavy-hanging, small-parts. */
  readonly cautions: readonly string[];
  /** Why its figures are only an estimate, or null. */
  readonly estimate: string | null;
  readonly diagnostics: readonly Diagnostic[];
}

/** A surface as it is seen in the room. */
export interface SeenSurface {
  readonly surface: string;
  /** The cloth or wallcovering card, or null where it is a colour or an object's own photograph. */
  readonly cloth: string | null;
  readonly colour: string | null;
  readonly object: string | null;
  readonly areaMm2: number;
}

/** Where in the height of a room a thing is seen. */
export type HeightZone = "floor" | "seat" | "table" | "wall" | "window" | "overhead";

/** One kind of item: everything about it but its drawing and its sheet. */
export interface ItemKind<F = never, M extends Made = Made> {
  readonly kind: string;
  readonly synonyms: readonly string[];
  /** The word in each vocabulary, for documents. */
  readonly words: Readonly<
    Record<"en-US" | "en-GB", { readonly one: string; readonly many: string }>
  >;
  readonly schema: z.ZodType;
  readonly allowances: AllowanceTable;
  /** The usual phase by commitment: 1 cheap and easily changed, 3 hard to undo. */
  readonly phase: 1 | 2 | 3;
  /** `made` tells of an object's card; a kind whose zone never changes does not look. */
  zone(fields: F, made?: M): HeightZone;
  /** Who makes it: the word looked for in a maker's `makes`. */
  readonly trade: string;
  /** What it hides, in square millimetres, of the front of what it lies on. */
  hides?(fields: F, made: M): number;
  /** True of what is done to a wall: it is there once, and cannot be counted. */
  readonly isWall?: true;
  /** Other words in a maker's `makes` that take this kind in: `upholsterer`, or a kind that the same hands make. */
  readonly alsoMadeAs?: readonly string[];
  /** Cards that it uses, by surface: cloth references to check and to show. */
  readonly cloths: (fields: F) => readonly {
    readonly surface: string;
    readonly cloth: string;
    readonly keyPath: readonly (string | number)[];
  }[];
  make(fields: F, context: ItemContext): M;
  // Methods, not function fields: a list of all kinds holds them as ItemKind, and each is only given what it made itself.
  /** What hangs at a window can be asked for as it is drawn back or let down; all else looks the same. */
  seen(fields: F, made: M, hung?: "open" | "closed"): readonly SeenSurface[];
}
