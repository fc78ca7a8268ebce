import type { ClothRecord, RoomRecord } from "../records/records.ts";
import type { HEIGHTS } from "../records/schema/roomSchema.ts";
import type { Swatch } from "../swatches/swatch.ts";
import type { UnitSystem } from "../units/printLength.ts";

export type HeightZone = (typeof HEIGHTS)[number];

/** One surface that is seen in the room: how large, where, of what. */
export interface SeenPart {
  /** The item that it belongs to, or null for bare wall and floor. */
  readonly item: string | null;
  /** The item's title, for sentences. */
  readonly title: string;
  readonly kind: string;
  readonly surface: string;
  readonly cloth: string | null;
  readonly object: string | null;
  readonly colour: string | null;
  readonly zone: HeightZone;
  readonly wall: string | null;
  readonly areaMm2: number;
}

/** Two items that are in contact, from `touches` or from where they stand. */
export interface Contact {
  readonly one: string;
  readonly other: string;
  readonly stated: boolean;
}

/** A cloth that an item uses, seen or not: a lining too. */
export interface ClothUse {
  readonly item: string;
  readonly title: string;
  readonly kind: string;
  /** face, back, welt, lining, cover, paper … as the kind names it. */
  readonly surface: string;
  readonly cloth: string;
}

/** How far an item is from the eye, in metres; null where the room has no plan, no door or no seat. */
export interface Views {
  readonly doorM: number | null;
  /** From the nearest seat that is not itself. */
  readonly seatM: number | null;
}

/** Facts of single items that a finding of fitness looks at. */
export interface ItemFacts {
  readonly item: string;
  readonly title: string;
  readonly kind: string;
  readonly atWindow: boolean;
  /** How a blind is worked, or null. */
  readonly operation: string | null;
  /** True of a loose cover. */
  readonly isLoose: boolean;
  /** 0: it is there already. */
  readonly phase: number;
  readonly views: Views;
}

/** A rug with what stands on it, and a picture on its wall: plain measures in millimetres. */
export interface SizeFacts {
  /** How far the rug reaches beyond the table on it, at the side where it is least. */
  readonly rugs: readonly {
    readonly rug: string;
    readonly rugTitle: string;
    readonly table: string;
    readonly tableTitle: string;
    readonly leastMarginMm: number;
  }[];
  readonly pictures: readonly {
    readonly item: string;
    readonly title: string;
    readonly centreMm: number;
  }[];
}

/** All that the scheme looks at. Nothing here knows a price or a cut length. */
export interface SchemeInput {
  readonly room: RoomRecord;
  readonly cloths: ReadonlyMap<string, ClothRecord>;
  readonly swatches: ReadonlyMap<string, Swatch>;
  readonly objects: ReadonlyMap<string, Swatch>;
  /** What is seen with curtains drawn back. */
  readonly seen: readonly SeenPart[];
  /** The same with curtains closed and blinds let down. */
  readonly closed: readonly SeenPart[];
  /** The ceiling's paper and paint: they carry colours, and count in no share of what is seen. */
  readonly overhead: readonly SeenPart[];
  readonly contacts: readonly Contact[];
  readonly uses: readonly ClothUse[];
  readonly items: readonly ItemFacts[];
  readonly sizes: SizeFacts;
  /** Size of a motif from which the studio calls a print large, in millimetres. */
  readonly largeMotifMm?: number;
  /** Objects that are bought at a price, with the day on which it was given; only that day is looked at. */
  readonly objectPrices: readonly {
    readonly id: string;
    readonly name: string;
    readonly on: string | null;
  }[];
  /** What is bought ready for an item and has no price: how it is said and what one of it is called. */
  readonly unpriced: readonly {
    readonly item: string;
    readonly title: string;
    readonly text: string;
    readonly name: string;
    readonly count: number;
  }[];
  readonly language: string;
  readonly units: UnitSystem;
  /** The day, ISO, from which the age of a price is reckoned. */
  readonly on: string;
}
