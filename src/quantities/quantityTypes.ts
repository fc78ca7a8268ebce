import type Fraction from "fraction.js";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import type { ClothFacts, Made, MaterialNeed, WorkingLine } from "../items/itemKind.ts";
import type { UsedAllowance } from "../room/allowances.ts";
import type { FurnishedRoom } from "../room/furnishRoom.ts";
import type { Length } from "../units/length.ts";
import type { Buy, Needed, Sale } from "./buy.ts";
import type { Origin } from "./text/origins.ts";
import type { WashingLeft } from "./text/washWords.ts";

/** One piece where it is cut: exact lengths, x from the left selvedge, y from the length's pattern point upwards. */
export interface PlannedPiece {
  readonly id: string;
  readonly room: string;
  readonly item: string;
  readonly piece: string;
  readonly surface: string;
  readonly x: Length;
  readonly y: Length;
  /** As it lies, turned or not. */
  readonly width: Length;
  readonly height: Length;
  readonly turned: boolean;
  readonly mayTurn: boolean;
  /** What x and y equal modulo the repeat; on half-drop cloth, of the piece's own column. */
  readonly register: { readonly x: Length | null; readonly y: Length | null } | null;
  readonly length: number;
  /** How its cut size came about. */
  readonly because: string;
}

/** Who released a plan for cutting, and when (ISO date). */
export interface Release {
  readonly by: string;
  readonly on: string;
}

export interface ClothPlan {
  readonly length: Length;
  readonly lowerBound: Length;
  /** The pattern point where the first length is begun, above a motif's middle. */
  readonly start: Length;
  readonly starts: readonly Length[];
  readonly lengths: readonly Length[];
  /** Nothing stands against it; the sheet says so only once the studio has released it too. */
  readonly forCutting: boolean;
  /** Who released it for cutting, and when; null until then, and where the release no longer holds. */
  readonly released: Release | null;
  /** A short number that changes with the plan. */
  readonly number: string;
  /** Why it is not for cutting, each a full sentence; empty where it is. */
  readonly notForCutting: readonly string[];
  readonly pattern: {
    readonly horizontal: Length | null;
    readonly vertical: Length;
    readonly match: "straight" | "half-drop" | "free";
    readonly motifX: Length;
  } | null;
  readonly pieces: readonly PlannedPiece[];
  /** Parts of the lengths that came which nothing is cut from, where a flaw lies or, its start unknown, may lie. */
  readonly flaws: readonly {
    readonly length: number;
    readonly x: Length;
    readonly y: Length;
    readonly width: Length;
    readonly height: Length;
  }[];
  /** Straight cuts from selvedge to selvedge that no piece crosses. */
  readonly crossCuts: readonly { readonly length: number; readonly y: Length }[];
  /** The same pieces item by item, in register; null on cloth that has arrived. */
  readonly itemByItem: Length | null;
  /** What choosing the pattern points of what must only be level saved; null where nothing was open. */
  readonly saved: Length | null;
  /** What was left open and chosen by what makes the plan shortest. */
  readonly chose: readonly ("pattern-point" | "welt-shape")[];
  readonly levels: readonly LevelPieces[];
}

/** Pieces that need only be level with each other. */
export interface LevelPieces {
  readonly room: string;
  readonly items: readonly string[];
  /** From a piece's cut foot up to the first motif's middle; null where any point of the pattern serves as well. */
  readonly motifAboveFoot: Length | null;
}

/** What is cut from one lot: which of the plan's lengths are of it, and the rooms with the items that come from it. */
export interface LotUse {
  readonly lot: string;
  /** Indexes into the plan's lengths. */
  readonly lengths: readonly number[];
  readonly rooms: readonly { readonly room: string; readonly items: readonly string[] }[];
}

/** A length that is only estimated, on top of the plan. */
export interface Estimate {
  readonly room: string;
  readonly item: string;
  readonly length: Length;
  readonly text: string;
}

/** A value that nobody said and that was taken instead. */
export interface UsedDefault {
  /** Null for a default of the cloth itself. */
  readonly room: string | null;
  readonly item: string | null;
  readonly what: string;
  readonly value: string;
  readonly source: string;
}

/** What one maker cuts from one cloth, planned together, and what to buy for it. */
export interface ClothQuantity {
  readonly cloth: string;
  readonly maker: string | null;
  /** Null until it has arrived; of several lots their names together. */
  readonly lot: string | null;
  /** Each lot that is cut from, with what comes from it; empty until it has arrived. */
  readonly lots: readonly LotUse[];
  /** Of a cloth that is washed first, what of it is still to be done with the receipts that it is planned on; null where nothing is. */
  readonly washing: WashingLeft;
  /** How many receipts of the project it came with. */
  readonly receipts: number;
  readonly facts: ClothFacts;
  readonly usableWidth: Length;
  readonly plan: ClothPlan;
  readonly estimates: readonly Estimate[];
  /** Reserve for where the pattern begins on the cloth: up to one repeat for each length. */
  readonly spare: Length;
  /** True where all that is cut from it is marked as the client's own: nothing is bought. */
  readonly clientsOwn: boolean;
  /** What this maker gets: all that is bought for it alone, or its part where the cloth is bought once for several makers. */
  readonly buy: Buy;
  /** What is needed before it is rounded to how the cloth is sold. */
  readonly needed: Needed;
  readonly sale: Sale;
  /** The handbook's figures together; null where no kind gives one. */
  readonly handbook: Length | null;
  /** What is to be said of the handbook's figure beside the plan's; null where there is none. */
  readonly handbookWords: string | null;
  readonly defaultsUsed: readonly UsedDefault[];
  /** Where its width, its repeat and the step in which it is sold come from. */
  readonly origins: readonly Origin[];
  readonly working: readonly WorkingLine[];
  /** Area of cloth that each item takes, for sharing the cost: square millimetres, exact. */
  readonly uses: readonly {
    readonly room: string;
    readonly item: string;
    readonly areaMm2: Fraction;
  }[];
}

/** So much of a cloth for one maker. */
export interface MakerPart {
  readonly maker: string | null;
  readonly length: Length;
}

/** A cloth that is bought once for several makers, in one lot, and divided. */
export interface SharedBuy {
  readonly cloth: string;
  readonly name: string;
  /** What is bought, all makers together. */
  readonly buy: Buy;
  /** What each maker gets of it; together no more than what is bought. */
  readonly parts: readonly MakerPart[];
  /** The whole bolts, and what is cut from each, no length split over two; null of what is bought by length. */
  readonly bolts: {
    readonly length: Length;
    readonly count: number;
    readonly cut: readonly (readonly MakerPart[])[];
  } | null;
  /** What it would come to if each maker's were bought by itself. */
  readonly separately: Length;
}

export interface ItemQuantity {
  readonly room: string;
  readonly item: string;
  readonly kind: string;
  readonly title: string;
  readonly maker: string | null;
  readonly made: Made;
  readonly allowances: readonly UsedAllowance[];
  readonly defaultsUsed: readonly UsedDefault[];
}

export interface RoomMaterial extends MaterialNeed {
  readonly room: string;
  readonly item: string;
}

/** What is bought of one trim for a whole project. */
export interface TrimBuy {
  readonly cloth: string;
  readonly name: string;
  /** What is sewn on, all items together. */
  readonly need: Length;
  readonly buy: Buy;
  /** How much of it each item takes. */
  readonly uses: readonly {
    readonly room: string;
    readonly item: string;
    readonly length: Length;
  }[];
  readonly working: WorkingLine;
}

/** What a project needs to be bought and cut. */
export interface ProjectQuantities {
  readonly project: string;
  /** The room that it was filtered to, or null. */
  readonly room: string | null;
  readonly rooms: readonly FurnishedRoom[];
  /** The same rooms, their items worked out on the cloths as they came: what makers work to. */
  readonly asArrived: readonly FurnishedRoom[];
  readonly cloths: readonly ClothQuantity[];
  /** The cloths among them that are bought once for several makers; of a room the project's. */
  readonly together: readonly SharedBuy[];
  /** What each item needs that is not cut from a cloth; of trims what is sewn on there. */
  readonly materials: readonly RoomMaterial[];
  /** What is bought of each trim; of a room the project's, with the room's own uses. */
  readonly trims: readonly TrimBuy[];
  readonly items: readonly ItemQuantity[];
  readonly diagnostics: readonly Diagnostic[];
}
