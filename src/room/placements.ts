import type { WindowFacts } from "../items/itemKind.ts";
import type { Length } from "../units/length.ts";
import type { Compass } from "./walls.ts";

/** A rectangle on a wall as one looks at it from inside, and how far its back and front stand from the wall's plane. */
export interface WallBox {
  readonly wall: string;
  readonly left: Length;
  readonly foot: Length;
  readonly width: Length;
  readonly height: Length;
  /** Negative for what hangs inside a recess. */
  readonly back: Length;
  readonly front: Length;
}

/** A rectangle on the floor seen from above: its corner from the west and north edges, its sides to the east and south. */
export interface FloorBox {
  readonly west: Length;
  readonly north: Length;
  readonly toEast: Length;
  readonly toSouth: Length;
  readonly foot: Length;
  readonly height: Length;
  readonly flat: boolean;
}

/** Where an item is. An item on another has that one's name; wall and floor boxes stand where they are known. */
export interface ItemPlacement {
  readonly item: string;
  readonly how: "window" | "wall" | "floor" | "on" | "cover" | "nowhere";
  readonly window: WindowFacts | null;
  readonly wallBox: WallBox | null;
  readonly floorBox: FloorBox | null;
  readonly facing: Compass | null;
  /** The wall that it hangs on, stands against or is said to be drawn against. */
  readonly wall: string | null;
  /** The item, object or window that it lies on. */
  readonly on: string | null;
  /** What was taken for granted, in words: each a full sentence. */
  readonly assumed: readonly string[];
}
