import type { PaletteColour } from "./palette.ts";
import type { HeightZone, SchemeInput, SeenPart } from "./schemeInput.ts";
import { type SharePart, seenColours, sharesOfRoom } from "./seenColours.ts";

const ORDER: readonly HeightZone[] = ["floor", "seat", "table", "wall", "window", "overhead"];

/** What is seen of one height, or of one wall. */
export interface PlaceShares {
  /** The height's or the wall's name. */
  readonly place: string;
  readonly areaMm2: number;
  /** Its colours in a hundred parts; empty where nothing is known of what is seen there. */
  readonly shares: readonly SharePart[];
  /** Share of it that is plain, or null where nothing is known. */
  readonly plainShare: number | null;
}

/** Plain surface as a share of all that is known: paint and plain cloths against patterned ones. */
export function plainShareOf(input: SchemeInput, seen: readonly SeenPart[]): number | null {
  let plain = 0;
  let all = 0;
  for (const part of seen) {
    const swatch = part.cloth
      ? input.swatches.get(part.cloth)
      : part.object
        ? input.objects.get(part.object)
        : undefined;
    if (!part.colour && !swatch) continue;
    all += part.areaMm2;
    const isPlain =
      part.colour !== null || swatch?.kind === "plain" || swatch?.kind === "textured-plain";
    if (isPlain) plain += part.areaMm2;
  }
  return all > 0 ? plain / all : null;
}

/** How much of all that is seen has a known colour, 0 to 1; bare walls and a floor without a colour have none. */
export function knownShareOf(input: SchemeInput): number {
  const whole = input.seen.reduce((a, s) => a + s.areaMm2, 0);
  const known = seenColours(input).reduce((a, c) => a + c.areaMm2, 0);
  return whole > 0 ? Math.min(1, known / whole) : 0;
}

function place(
  input: SchemeInput,
  palette: readonly PaletteColour[],
  name: string,
  seen: readonly SeenPart[],
): PlaceShares {
  return {
    place: name,
    areaMm2: seen.reduce((a, s) => a + s.areaMm2, 0),
    shares: sharesOfRoom({ ...input, seen }, palette),
    plainShare: plainShareOf(input, seen),
  };
}

/** Colours by height: floor, seat, table, wall, window, overhead; heights with nothing seen are left out. */
export function sharesByZone(input: SchemeInput, palette: readonly PaletteColour[]): PlaceShares[] {
  return ORDER.map((zone) =>
    place(
      input,
      palette,
      zone,
      input.seen.filter((s) => s.zone === zone),
    ),
  ).filter((p) => p.areaMm2 > 0);
}

/** Colours by wall, in the order in which the walls are first seen: what hangs on, stands against and covers each. */
export function sharesByWall(input: SchemeInput, palette: readonly PaletteColour[]): PlaceShares[] {
  const walls = [...new Set(input.seen.flatMap((s) => (s.wall === null ? [] : [s.wall])))];
  return walls
    .map((wall) =>
      place(
        input,
        palette,
        wall,
        input.seen.filter((s) => s.wall === wall),
      ),
    )
    .filter((p) => p.areaMm2 > 0);
}
