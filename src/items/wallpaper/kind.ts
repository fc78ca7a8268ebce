import type { ItemKind } from "../itemKind.ts";
import { wallpaperAllowances } from "./allowances.ts";
import { wallpaperSeen } from "./area.ts";
import { makeWallpaper, type WallpaperMade } from "./pieces.ts";
import { type WallpaperFields, wallpaperSchema } from "./schema.ts";

/** Wallpaper in rolls. */
export const wallpaperKind: ItemKind<WallpaperFields, WallpaperMade> = {
  kind: "wallpaper",
  synonyms: ["wallcovering", "paper"],
  words: {
    "en-US": { one: "wallpaper", many: "wallpapers" },
    "en-GB": { one: "wallpaper", many: "wallpapers" },
  },
  schema: wallpaperSchema,
  allowances: wallpaperAllowances,
  phase: 2,
  zone: (fields) => (fields.on === "ceiling" ? "overhead" : "wall"),
  trade: "hanging",
  isWall: true,
  cloths: (fields) => [
    { surface: "paper", cloth: fields.cloth, keyPath: ["cloth"] },
    ...(fields.borders ?? []).map((border, n) => ({
      surface: `border-${n}`,
      cloth: border.cloth,
      keyPath: ["borders", n, "cloth"],
    })),
  ],
  make: makeWallpaper,
  seen: wallpaperSeen,
};
