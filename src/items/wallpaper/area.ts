import type { SeenSurface } from "../itemKind.ts";
import type { WallpaperMade } from "./pieces.ts";
import type { WallpaperFields } from "./schema.ts";

/** Papered wall less its openings. */
export function wallpaperSeen(fields: WallpaperFields, made: WallpaperMade): SeenSurface[] {
  return [
    { surface: "paper", cloth: fields.cloth, colour: null, object: null, areaMm2: made.areaMm2 },
  ];
}
