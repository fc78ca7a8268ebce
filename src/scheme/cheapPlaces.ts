import type { FindingInput } from "./findingInput.ts";
import { nearestInPalette, type PaletteColour, SAME_COLOUR } from "./palette.ts";
import type { HeightZone } from "./schemeInput.ts";
import type { Carried } from "./seenColours.ts";

/** Heights at which a small thing is easily set, in the order of what it costs. */
const SMALL_THINGS: readonly HeightZone[] = ["table", "wall", "floor"];
/** A cloth can carry a colour to a welt or a cushion when at least this share of it is that colour. */
const TELLS = 0.3;

/** The cloth of the mix that has most of a colour, or null. */
function clothWith(input: FindingInput, colour: PaletteColour): string | null {
  const found = input.roles
    .map((r) => {
      const swatch = input.swatches.get(r.cloth);
      const share = (swatch?.colours ?? [])
        .filter((c) => {
          const near = nearestInPalette(c.hex, input.palette.colours);
          return near?.colour === colour && near.distance <= SAME_COLOUR;
        })
        .reduce((a, c) => a + c.share, 0);
      return { name: r.name, share };
    })
    .sort((a, b) => b.share - a.share || (a.name < b.name ? -1 : 1))[0];
  return found && found.share >= TELLS ? found.name : null;
}

/**
 * Where a colour could be carried at the least cost, cheapest first: a small thing at a height that has none of it, a welt on a
 * cushion, a further cushion, an edge on the curtains. At most three, in words.
 */
export function cheapPlaces(input: FindingInput, carried: Carried): string[] {
  const { say } = input;
  const bare = SMALL_THINGS.filter((zone) => !carried.zones.includes(zone));
  const cloth = clothWith(input, carried.colour);
  const has = new Set(carried.items.map((i) => i.id));
  const without = (kind: string): string | undefined =>
    input.items.find((i) => i.kind === kind && !has.has(i.item))?.title;
  const cushion = without("cushion");
  const curtains = without("curtains");
  const of = cloth ? say` of ${cloth}` : "";
  return [
    ...bare.slice(0, 1).map((zone) => say`a small thing at ${zone} height`),
    ...(cushion ? [say`a welt${of} on ${cushion}`] : []),
    ...(cushion || curtains ? [] : [say`a cushion${of}`]),
    ...(curtains ? [say`an edge${of} on ${curtains}`] : []),
  ].slice(0, 3);
}
