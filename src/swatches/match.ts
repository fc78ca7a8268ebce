import { paletteDistance } from "../cloth/palette/paletteDistance.ts";
import { difference } from "../colour/difference.ts";
import type { ClothRecord } from "../records/records.ts";
import { printLength, type UnitSystem } from "../units/printLength.ts";
import type { Swatch, SwatchColour } from "./swatch.ts";

/** What a cloth is compared by. */
export interface MatchWanted {
  readonly colours: readonly Pick<SwatchColour, "hex" | "share" | "name">[];
  readonly kind: string | null;
}

/** A cloth of the library, and how near it comes. */
export interface Match {
  readonly cloth: string;
  readonly name: string;
  /** Mean CIEDE2000 by which its area would have to be recoloured; 0 for the same colours in the same shares. */
  readonly distance: number;
  /** Lengths of the pieces in hand, in words, or null. */
  readonly remnant: string | null;
  readonly why: string;
}

/** Nearer than this a cloth is like it: a remnant in hand then goes before all that must be bought. */
const LIKE = 14;
/** Two colours so near are the same colour to the eye across a room. */
const SAME = 6;
const MOST = 12;

/**
 * The cloths of the library nearest to a photograph, by colours and their shares: those that are like it with a remnant in hand
 * first, then the others, each by distance. Cards without colours cannot be compared and are left out. The limits are our own.
 */
export function match(
  wanted: MatchWanted,
  library: readonly { readonly card: ClothRecord; readonly swatch: Swatch }[],
  units: UnitSystem,
): readonly Match[] {
  return library
    .filter(({ swatch }) => swatch.colours.length > 0)
    .map(({ card, swatch }): Match => {
      const distance = paletteDistance(wanted.colours, swatch.colours);
      const pieces = card.fields.remnant ?? [];
      const remnant =
        pieces.length === 0
          ? null
          : pieces.map((piece) => printLength(piece.length, units)).join(", ");
      const why = whyOf(wanted, swatch, remnant, distance);
      return { cloth: card.id, name: swatch.name, distance, remnant, why };
    })
    .sort((a, b) => rank(a) - rank(b) || a.distance - b.distance || (a.cloth < b.cloth ? -1 : 1))
    .slice(0, MOST);
}

function rank({ remnant, distance }: Match): number {
  return remnant !== null && distance <= LIKE ? 0 : 1;
}

function whyOf(
  wanted: MatchWanted,
  swatch: Swatch,
  remnant: string | null,
  distance: number,
): string {
  const shared: { name: string; here: number; there: number }[] = [];
  const missing: string[] = [];
  for (const colour of wanted.colours) {
    const there = swatch.colours.filter((each) => difference(each.hex, colour.hex) <= SAME);
    const share = there.reduce((sum, each) => sum + each.share, 0);
    if (there.length > 0) shared.push({ name: colour.name, here: colour.share, there: share });
    else missing.push(colour.name);
  }
  const percent = (share: number) => `${Math.round(share * 100)} %`;
  const said = shared
    .slice(0, 3)
    .map(({ name, here, there }) => `${name} (${percent(here)} here, ${percent(there)} there)`);
  const parts = [
    ...(remnant !== null ? [`in hand: ${remnant}`] : []),
    distance <= LIKE ? "like it in colour" : "other colours",
    ...(said.length > 0 ? [`both have ${said.join(", ")}`] : []),
    ...(missing.length > 0 ? [`it lacks ${missing.slice(0, 3).join(", ")}`] : []),
    ...(wanted.kind !== null && swatch.kind !== null
      ? [
          wanted.kind === swatch.kind
            ? `both are ${swatch.kind.replaceAll("-", " ")}`
            : `${swatch.kind.replaceAll("-", " ")}, not ${wanted.kind.replaceAll("-", " ")}`,
        ]
      : []),
  ];
  return parts.join("; ");
}
