import type { SeenSurface } from "../itemKind.ts";
import type { WallpaperMade } from "./pieces.ts";
import type { WallpaperFields } from "./schema.ts";

/** Papered wall less its openings, and its borders in its place. */
export function wallpaperSeen(fields: WallpaperFields, made: WallpaperMade): SeenSurface[] {
  const borders = made.borders.map((border) => ({
    surface: border.surface,
    cloth: border.cloth,
    colour: null,
    object: null,
    areaMm2: border.run.toMm() * border.width.toMm(),
  }));
  const covered = borders.reduce((sum, b) => sum + b.areaMm2, 0);
  return [
    {
      surface: "paper",
      cloth: fields.cloth,
      colour: null,
      object: null,
      areaMm2: Math.max(0, made.areaMm2 - covered),
    },
    ...borders,
  ];
}
