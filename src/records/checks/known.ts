import { slug } from "../../fields/slug.ts";

/** The names that a file may point at. A set that is null could not be read, and nothing is held against it. */
export interface Known {
  /** Cards of the library, those with errors included: they are there. */
  readonly cloths: ReadonlySet<string>;
  readonly objects: ReadonlySet<string>;
  readonly makers: ReadonlySet<string> | null;
  readonly suppliers: ReadonlySet<string> | null;
  /** Codes of findings, where they are known. */
  readonly findings: readonly string[] | null;
  /** Every file of the content folder, for pictures. */
  readonly present: ReadonlySet<string>;
  /** What makers, suppliers and cards are called on documents, as `calledKey` writes it, with the names that files point at them by. */
  readonly called?: ReadonlyMap<string, string>;
  /** The rooms of the project. */
  readonly rooms?: ReadonlySet<string>;
  /** What stands in the room. */
  readonly room?: RoomNames;
}

/** What something is called as a key of `called`: its sort, and its name without signs and capitals. */
export function calledKey(sort: "cloth" | "object" | "maker" | "supplier", name: string): string {
  return `${sort}/${slug(name)}`;
}

/** What each of some things is called, with its own key. */
export function calledIn<T>(
  sort: Parameters<typeof calledKey>[0],
  all: Readonly<Record<string, T>> | undefined,
  nameOf: (one: T) => string,
): [string, string][] {
  return Object.entries(all ?? {}).map(([key, one]) => [calledKey(sort, nameOf(one)), key]);
}

export interface RoomNames {
  /** Windows, and doors that have a name. */
  readonly windows: readonly string[];
  /** The walls that can be named; null where the room has neither floor nor walls. */
  readonly walls: readonly string[] | null;
  readonly items: readonly {
    readonly id: string;
    readonly kind: string;
    readonly title: string;
    readonly index: number;
  }[];
}

/** A card of the library that a file uses. */
export interface Use {
  readonly library: "cloths" | "objects";
  readonly id: string;
}
