import type { SeenSurface } from "../itemKind.ts";
import type { PaintMade } from "./pieces.ts";
import type { PaintFields } from "./schema.ts";

/** Painted area in its colour; small openings that were kept in are so few that they are not taken out here either. */
export function paintSeen(fields: PaintFields, made: PaintMade): SeenSurface[] {
  if (made.area === null || made.area.compare(0) <= 0) return [];
  return [
    {
      surface: "paint",
      cloth: null,
      colour: fields.colour,
      object: null,
      areaMm2: made.area.valueOf(),
    },
  ];
}
