import type { HeightZone } from "./schemeInput.ts";

/** Words for lamps by the height at which they give light. Daylight is no lamp. Common words, no source. */
const LAMPS: readonly (readonly [HeightZone, RegExp])[] = [
  [
    "overhead",
    /\b(?:pendants?|chandeliers?|ceiling|downlights?|spotlights?|recessed|lanterns?|overhead)\b/i,
  ],
  [
    "wall",
    /\b(?:wall[- ]?lights?|wall[- ]?lamps?|sconces?|picture[- ]?lights?|swing[- ]?arms?)\b/i,
  ],
  [
    "table",
    /\b(?:table[- ]?lamps?|desk[- ]?lamps?|reading[- ]?lamps?|bedside|candles?|candlesticks?)\b/i,
  ],
  ["floor", /\b(?:floor[- ]?lamps?|standard[- ]?lamps?|uplights?|uplighters?)\b/i],
];

/** The heights at which a room's lamps give light, from what `light` says; empty where it names none that is known. */
export function lampHeights(said: readonly string[]): HeightZone[] {
  return [
    ...new Set(
      said.flatMap((words) => LAMPS.filter(([, word]) => word.test(words)).map(([zone]) => zone)),
    ),
  ];
}
