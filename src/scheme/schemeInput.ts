import type { ClothRecord, RoomRecord } from "../records/records.ts";
import type { HEIGHTS } from "../records/schema/roomSchema.ts";
import type { Swatch } from "../swatches/swatch.ts";

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

/** All that the scheme looks at. Nothing here knows a price or a cut length. */
export interface SchemeInput {
  readonly room: RoomRecord;
  readonly cloths: ReadonlyMap<string, ClothRecord>;
  readonly swatches: ReadonlyMap<string, Swatch>;
  readonly objects: ReadonlyMap<string, Swatch>;
  readonly seen: readonly SeenPart[];
  readonly contacts: readonly Contact[];
  readonly language: string;
}
