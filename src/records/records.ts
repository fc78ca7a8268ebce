import type { Diagnostic, Place } from "../diagnostics/diagnostic.ts";
import type { ClothFields } from "./schema/clothSchema.ts";
import type { ObjectFields } from "./schema/objectSchema.ts";
import type { ProjectFields } from "./schema/projectSchema.ts";
import type { RoomFields } from "./schema/roomSchema.ts";
import type { StudioFields } from "./schema/studioFields.ts";

/** A path of keys and list places inside a front matter. */
export type KeyPath = readonly (string | number)[];

/** What every record carries: its id (the file's name without .md), its file, its Markdown body, and where each key stands. */
export interface Sourced<F> {
  readonly id: string;
  /** Path below the content folder, forward slashes. */
  readonly path: string;
  readonly fields: F;
  /** Markdown after the front matter. */
  readonly body: string;
  /** Where a key stands in the file; a missing key gives its parent's place. */
  readonly place: (keyPath: KeyPath) => Place;
}

export type StudioRecord = Sourced<StudioFields>;
export type ClothRecord = Sourced<ClothFields>;
export type ObjectRecord = Sourced<ObjectFields>;

/** One way to make an item that the client may choose, with the keys in which it differs. */
export interface ItemOption {
  /** What the client calls it. */
  readonly title: string;
  readonly answer: "open" | "yes" | "no";
  /** The item's fields as they would be. */
  readonly fields: unknown;
  /** The keys that it changes. */
  readonly changes: readonly string[];
  readonly index: number;
  readonly place: (keyPath: KeyPath) => Place;
}

/** One item of a room; its fields are those of its kind's schema, and only that kind's own code looks into them. */
export interface ItemRecord {
  /** Kind and title, `curtains-bay`; unique in the room. */
  readonly id: string;
  readonly kind: string;
  readonly title: string;
  readonly fields: unknown;
  /** Its place in the room's list. */
  readonly index: number;
  /** The ways to make it, where it has several; `fields` are those of the one that stands: answered yes, else the first not refused. */
  readonly options?: readonly ItemOption[];
  /** The option that stands, by its place in `options`. */
  readonly stands?: number;
  readonly place: (keyPath: KeyPath) => Place;
}

export interface RoomRecord extends Sourced<RoomFields> {
  readonly project: string;
  readonly items: readonly ItemRecord[];
}

export interface ProjectRecord extends Sourced<ProjectFields> {
  /** In the order of `rooms`, else by file name. */
  readonly rooms: readonly RoomRecord[];
  /** True where an error in its own files or in a card that it uses keeps its documents from being made. */
  readonly broken: boolean;
  /** Paths of the library's cards that its files name, sorted: all that it can be made from again. */
  readonly cards: readonly string[];
}

/** A project whose documents cannot be made now, and stay as they were. */
export interface Stopped {
  readonly project: string;
  /** The files whose errors stop it: its own, cards that it uses, studio.md. */
  readonly because: readonly string[];
}

/** All that was read. A card with an error is left out of its map, and what uses it is broken. */
export interface Records {
  readonly studio: StudioRecord | null;
  readonly cloths: ReadonlyMap<string, ClothRecord>;
  readonly objects: ReadonlyMap<string, ObjectRecord>;
  /** Every project whose card could be read. A broken one keeps only the rooms without errors, and no document is made of it. */
  readonly projects: readonly ProjectRecord[];
  /** Every broken project, also one whose card could not be read. */
  readonly stopped: readonly Stopped[];
  /** Rooms that have a file, as `project/room`, and are in no project's record: their own file or their project's card has an error. */
  readonly unreadRooms: readonly string[];
  readonly diagnostics: readonly Diagnostic[];
}
