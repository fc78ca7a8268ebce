import { colourName, spellColourName } from "../colour/colourName.ts";
import { difference } from "../colour/difference.ts";
import { nearestInPalette, type PaletteColour, SAME_COLOUR } from "./palette.ts";
import type { HeightZone, SchemeInput, SeenPart } from "./schemeInput.ts";

/** One colour on one seen surface. */
export interface SeenColour {
  readonly hex: string;
  readonly areaMm2: number;
  readonly part: SeenPart;
}

/** A colour of what is seen in the room, with its part of a hundred. */
export interface SharePart {
  readonly hex: string;
  readonly name: string;
  /** Whole number; all parts sum to a hundred. */
  readonly hundredths: number;
  readonly areaMm2: number;
  /** The palette colour that it is, or null for one from outside. */
  readonly palette: PaletteColour | null;
}

/** Every colour of every seen surface: a cloth or object by its measured shares, paint as one flat. Nothing known, nothing counted. */
export function seenColours(input: SchemeInput): SeenColour[] {
  return input.seen.flatMap((part): SeenColour[] => {
    if (part.colour) return [{ hex: part.colour, areaMm2: part.areaMm2, part }];
    const swatch = part.cloth
      ? input.swatches.get(part.cloth)
      : part.object
        ? input.objects.get(part.object)
        : undefined;
    return (swatch?.colours ?? []).map((c) => ({
      hex: c.hex,
      areaMm2: part.areaMm2 * c.share,
      part,
    }));
  });
}

/** Largest remainder: whole hundredths that sum to a hundred, each at least one. */
function hundredths(areas: readonly number[]): number[] {
  const whole = areas.reduce((a, b) => a + b, 0);
  const exact = areas.map((a) => (whole > 0 ? (a / whole) * 100 : 0));
  const out = exact.map((e) => Math.max(1, Math.floor(e)));
  const order = exact
    .map((e, at) => ({ at, rest: e - Math.floor(e) }))
    .sort((a, b) => b.rest - a.rest || a.at - b.at);
  let left = 100 - out.reduce((a, b) => a + b, 0);
  for (let i = 0; left > 0 && order.length > 0; i = (i + 1) % order.length, left--)
    out[(order[i] as { at: number }).at] = (out[(order[i] as { at: number }).at] as number) + 1;
  while (left < 0) {
    const at = out.indexOf(Math.max(...out));
    out[at] = (out[at] as number) - 1;
    left++;
  }
  return out;
}

interface Group {
  hex: string;
  area: number;
  palette: PaletteColour | null;
}

/**
 * What will be seen, in a hundred parts: every seen colour is given to the palette colour that it is (within CIEDE2000 12), else to a
 * colour of its own; at most `most` parts, the small ones given to the nearest. An estimate: areas are the drawn room's.
 */
export function sharesOfRoom(
  input: SchemeInput,
  palette: readonly PaletteColour[],
  most = 8,
): SharePart[] {
  const groups: Group[] = palette.map((p) => ({
    hex: p.hex,
    area: 0,
    palette: p,
  }));
  const all = seenColours(input).sort((a, b) => b.areaMm2 - a.areaMm2 || (a.hex < b.hex ? -1 : 1));
  for (const colour of all) {
    const near = groups.map((g) => difference(colour.hex, g.hex));
    const at = near.indexOf(Math.min(...near));
    const group = groups[at];
    if (group && (near[at] as number) <= SAME_COLOUR) group.area += colour.areaMm2;
    else groups.push({ hex: colour.hex, area: colour.areaMm2, palette: null });
  }
  const kept = groups
    .filter((g) => g.area > 0)
    .sort((a, b) => b.area - a.area || (a.hex < b.hex ? -1 : 1));
  while (kept.length > most) {
    const spare = [...kept].reverse().find((g) => g.palette === null) ?? (kept.at(-1) as Group);
    kept.splice(kept.indexOf(spare), 1);
    const nearest = kept.reduce((a, b) =>
      difference(spare.hex, b.hex) < difference(spare.hex, a.hex) ? b : a,
    );
    nearest.area += spare.area;
  }
  kept.sort((a, b) => b.area - a.area || (a.hex < b.hex ? -1 : 1));
  const parts = hundredths(kept.map((g) => g.area));
  return kept.map((g, at) => ({
    hex: g.hex,
    name: g.palette?.name ?? spellColourName(colourName(g.hex).name, input.language),
    hundredths: parts[at] as number,
    areaMm2: g.area,
    palette: g.palette,
  }));
}

/** Where a palette colour is carried: the items (and accessories) that show it, and at which heights. */
export interface Carried {
  readonly colour: PaletteColour;
  readonly items: readonly {
    readonly id: string;
    readonly title: string;
    readonly zone: HeightZone;
    readonly cloth: string | null;
    readonly share: number;
  }[];
  readonly zones: readonly HeightZone[];
  /** Titles of what shows too little of it to carry it. */
  readonly touches: readonly string[];
}

/** A surface carries a colour when at least this share of it is that colour; common practice, no source. */
const CARRIES = 0.03;

/** For every palette colour, the places that carry it: one entry an item, the ceiling and the accessories of the room file included. */
export function carriedColours(input: SchemeInput, palette: readonly PaletteColour[]): Carried[] {
  const colours = seenColours({ ...input, seen: [...input.seen, ...input.overhead] });
  return palette.map((colour): Carried => {
    const shares = new Map<string, Carried["items"][number]>();
    // Shades of one palette colour on one surface count together.
    const onSurface = new Map<SeenPart, number>();
    for (const seen of colours) {
      const near = nearestInPalette(seen.hex, palette);
      if (near?.colour !== colour || near.distance > SAME_COLOUR || seen.part.areaMm2 <= 0)
        continue;
      onSurface.set(seen.part, (onSurface.get(seen.part) ?? 0) + seen.areaMm2 / seen.part.areaMm2);
    }
    for (const [part, share] of onSurface) {
      const id = part.item ?? `${part.kind}-${part.wall ?? part.zone}`;
      const before = shares.get(id);
      shares.set(id, {
        id,
        title: part.title,
        zone: part.zone,
        cloth: part.cloth ?? before?.cloth ?? null,
        share: Math.max(share, before?.share ?? 0),
      });
    }
    const accessories = (input.room.fields.accessories ?? [])
      .filter((a) =>
        (a.colours ?? []).some((name) => name.toLowerCase() === colour.name.toLowerCase()),
      )
      .map((a) => ({
        id: a.what,
        title: a.what,
        zone: a.height ?? ("table" as const),
        cloth: null,
        share: 1,
      }));
    const items = [...[...shares.values()].filter((s) => s.share >= CARRIES), ...accessories];
    const touches = [...shares.values()].filter((s) => s.share < CARRIES).map((s) => s.title);
    return { colour, items, zones: [...new Set(items.map((i) => i.zone))], touches };
  });
}
