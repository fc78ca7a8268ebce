import { colourName, spellColourName } from "../colour/colourName.ts";
import { difference } from "../colour/difference.ts";
import { family } from "../colour/family.ts";
import { lightReflectance } from "../colour/luminance.ts";
import { oklchOf } from "../colour/oklab.ts";
import type { Swatch, SwatchColour } from "../swatches/swatch.ts";
import type { SchemeInput } from "./schemeInput.ts";

/** A colour of the room's palette. */
export interface PaletteColour {
  readonly hex: string;
  /** Her own name for it, else its NBS name. */
  readonly name: string;
  readonly named: "own" | "nbs";
  readonly family: string;
  readonly lrv: number;
  /** Its share of the anchor or main cloth that it was drawn from; null where she fixed it. */
  readonly shareOfSource: number | null;
}

export interface RoomPalette {
  readonly colours: readonly PaletteColour[];
  /** Where they come from: the anchor, the main cloth, or the room file. */
  readonly source: {
    readonly from: "anchor" | "main-cloth" | "room-file" | "nothing";
    readonly id: string | null;
    readonly name: string | null;
  };
}

/** Colours nearer than this (CIEDE2000) count as the same colour of the room; common practice, no source. */
export const SAME_COLOUR = 12;

/**
 * The `count` colours of a source that a decorator would draw: its largest first, then one after another the colour that adds
 * most, weighed by its share (power 0.4, so that an accent of two per cent can win) and by its CIEDE2000 distance from those taken.
 * What counts as the same colour of a room is drawn once, though fewer come out than were asked for.
 */
export function drawColours(colours: readonly SwatchColour[], count: number): SwatchColour[] {
  const left = [...colours].sort((a, b) => b.share - a.share || (a.hex < b.hex ? -1 : 1));
  const taken = left.splice(0, 1);
  while (taken.length < count && left.length > 0) {
    const worth = left.map(
      (c) => c.share ** 0.4 * Math.min(40, ...taken.map((t) => difference(c.hex, t.hex))),
    );
    const best = worth.indexOf(Math.max(...worth));
    const [next] = left.splice(best, 1);
    if (!next || taken.some((t) => difference(next.hex, t.hex) < SAME_COLOUR)) continue;
    taken.push(next);
  }
  return taken;
}

function entry(
  hex: string,
  own: string | null,
  shareOfSource: number | null,
  language: string,
): PaletteColour {
  return {
    hex,
    name: own ?? spellColourName(colourName(hex).name, language),
    named: own ? "own" : "nbs",
    family: family(hex),
    lrv: lightReflectance(hex),
    shareOfSource,
  };
}

/**
 * The room's palette: the list in `colours`, else two to five (four where nothing is said) drawn from the anchor, else from the main
 * cloth. A listed colour keeps her name for it; the others carry their NBS name.
 */
export function roomPalette(input: SchemeInput, main: Swatch | null): RoomPalette {
  const { room, language } = input;
  const asked = room.fields.colours;
  if (Array.isArray(asked)) {
    const colours = asked.map((c) =>
      typeof c === "string"
        ? entry(c, null, null, language)
        : entry(c.colour, c.name ?? null, null, language),
    );
    return { colours, source: { from: "room-file", id: null, name: null } };
  }
  const anchorId = room.fields.anchor;
  const anchor = anchorId
    ? (input.objects.get(anchorId) ?? input.swatches.get(anchorId) ?? null)
    : null;
  const source = anchor && anchor.colours.length > 0 ? anchor : main;
  if (!source || source.colours.length === 0)
    return { colours: [], source: { from: "nothing", id: null, name: null } };
  const drawn = drawColours(source.colours, asked ?? 4);
  return {
    colours: drawn.map((c) => entry(c.hex, null, c.share, language)),
    source: {
      from: source === anchor ? "anchor" : "main-cloth",
      id: source.id,
      name: source.name,
    },
  };
}

/** The palette colour nearest to a colour, with its CIEDE2000 distance, or null for an empty palette. */
export function nearestInPalette(
  hex: string,
  palette: readonly PaletteColour[],
): { colour: PaletteColour; distance: number } | null {
  let best: { colour: PaletteColour; distance: number } | null = null;
  for (const colour of palette) {
    const distance = difference(hex, colour.hex);
    if (!best || distance < best.distance) best = { colour, distance };
  }
  return best;
}

/** Chroma (OKLCH) below which a colour is a neutral that goes with any palette; common practice, no source. */
export const NEUTRAL_CHROMA = 0.035;

/** Creams and ivories: so light that they pass for white up to this chroma; our own choice, no source. */
const CREAM = { lightness: 0.88, chroma: 0.05 };

/** True for a colour so grey, or so near white, that it goes with any palette. */
export function isNeutral(hex: string): boolean {
  const [lightness, chroma] = oklchOf(hex);
  return chroma < NEUTRAL_CHROMA || (lightness >= CREAM.lightness && chroma < CREAM.chroma);
}
