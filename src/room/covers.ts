import { type Diagnostic, diagnostic } from "../diagnostics/diagnostic.ts";
import type { ItemRecord } from "../records/records.ts";
import { Length } from "../units/length.ts";
import { printLike } from "../units/printLike.ts";
import { commonFields } from "./commonFields.ts";
import { clipFace, type FaceRect, facesOf } from "./faces.ts";
import type { Wall } from "./walls.ts";

/** What an item's `on` may say once it is read. */
type On =
  | string
  | readonly string[]
  | {
      readonly wall: string;
      readonly "from-left"?: Length;
      readonly width?: Length;
      readonly breast?: "face" | "face-and-sides";
    };

/** An item that covers walls or the ceiling, paper or paint, and the face rectangles that it covers before anything is taken out. */
export interface Cover {
  readonly item: string;
  /** Paper lies over paint: what has a cloth is hung, what has a colour is painted. */
  readonly what: "paper" | "paint";
  readonly faces: readonly FaceRect[];
  readonly onCeiling: boolean;
}

/**
 * The face rectangles that `on` names, up to `height`: all walls, some by name, or a part of one. A part that meets a breast covers
 * the breast's face; `breast: face-and-sides` adds its sides.
 */
export function facesOn(on: unknown, walls: readonly Wall[], height: Length): FaceRect[] {
  const named = on as On;
  if (typeof named === "string")
    return named === "walls" ? walls.flatMap((w) => facesOf(w, height)) : [];
  if (Array.isArray(named)) {
    return walls.filter((w) => named.includes(w.name)).flatMap((w) => facesOf(w, height));
  }
  if (typeof named !== "object" || named === null || !("wall" in named)) return [];
  const wall = walls.find((w) => w.name === named.wall);
  if (!wall) return [];
  const faces = facesOf(wall, height);
  if (named.breast && wall.breast) {
    const parts = named.breast === "face" ? ["breast"] : ["breast-left", "breast", "breast-right"];
    return faces.filter((face) => parts.includes(face.part));
  }
  const from = named["from-left"] ?? Length.zero;
  const to = named.width ? from.plus(named.width) : wall.length;
  if (from.isZero() && to.compare(wall.length) >= 0) return faces;
  return faces.flatMap((face) => clipFace(face, from, to) ?? []);
}

/** True for an item that covers walls or the ceiling: it has `on` and a cloth or a colour. */
export function isCover(item: ItemRecord): boolean {
  const fields = commonFields(item);
  return fields.on !== undefined && (fields.cloth !== undefined || fields.colour !== undefined);
}

/** The covers of a room; `height` is the room's, and an item's own height goes before it. */
export function coversOf(
  items: readonly ItemRecord[],
  walls: readonly Wall[],
  height: Length | null,
): Cover[] {
  return items.filter(isCover).map((item) => {
    const fields = commonFields(item);
    const own = fields.height ?? height;
    return {
      item: item.id,
      what: fields.cloth === undefined ? "paint" : "paper",
      faces: own ? facesOn(fields.on, walls, height ? Length.min(own, height) : own) : [],
      onCeiling: fields.on === "ceiling",
    };
  });
}

/** What is wrong with the part of a wall that an item covers: there is no such breast, or it reaches beyond the wall. */
export function checkOn(item: ItemRecord, walls: readonly Wall[]): Diagnostic[] {
  const on = commonFields(item).on as On | undefined;
  if (on === undefined || typeof on === "string" || !("wall" in on)) return [];
  const wall = walls.find((each) => each.name === on.wall);
  if (!wall) return [];
  if (on.breast && !wall.breast) {
    return [
      diagnostic(
        item.place(["on", "breast"]),
        "breast-unknown",
        `The ${wall.name} wall has no chimney breast.`,
        {
          hint: `Add its lengths to that wall, for example breast: { from-left: 1', width: 3' 6", depth: 14" } or { from-left: 30 cm, width: 107 cm, depth: 36 cm }, or give from-left and width here.`,
        },
      ),
    ];
  }
  const right = (on["from-left"] ?? Length.zero).plus(on.width ?? Length.zero);
  if (right.compare(wall.length) <= 0) return [];
  return [
    diagnostic(
      item.place(["on"]),
      "part-beyond-wall",
      `This part reaches ${printLike(right.minus(wall.length), wall.length, on.width)} beyond the right end of the ${wall.name} wall.`,
      {
        hint: "Check from-left (from the wall's left end, seen from inside) and width.",
      },
    ),
  ];
}
