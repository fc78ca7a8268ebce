import { differenceOfLab } from "./difference.ts";
import { type LabD65, labD65Of } from "./labD65.ts";
import nbs from "./nbsNames.json" with { type: "json" };

/** A plain-English colour name. */
export interface ColourName {
  /**
   * As printed: the full name. Where two are as near, what both say (`dark red` of a dark and a very dark red), the hue alone only where
   * both are strong colours; of what is nearly gray the gray; else the nearest full name. Source's words and spelling (gray).
   */
  readonly name: string;
  /** The full name of the nearest category, sure or not: of two that are as near, one. */
  readonly nearest: string;
  /** The broader name (29 of them), for example `reddish brown`. */
  readonly broad: string;
  /** The broadest (13), for example `brown`. */
  readonly broadest: string;
  /** Number of the nearest of the 267 categories. */
  readonly number: number;
  /** CIEDE2000 to that category's centroid. */
  readonly difference: number;
  /** False where the runner-up was as near, so that no more is said than both say. */
  readonly sure: boolean;
}

type Entry = readonly [n: number, name: string, broad: string, broadest: string, ...LabD65];

/** Two centroids closer than this to each other's distance make the full name a coin toss. */
const COIN_TOSS = 1;

const ENTRIES = nbs.names as unknown as readonly Entry[];

/** More than CIEDE2000's weight of lightness, S_L = 1 + 0.015 (L - 50)^2 / sqrt(20 + (L - 50)^2), can be for L from 0 to 100. */
const MOST_SL = 1.76;

/**
 * Chroma (CIELAB) under which nobody calls a colour blue or green, though the dictionary's broader name of a bluish gray is blue: that of
 * its darker grays and bluish whites at most.
 */
const NEARLY_GREY = 4.5;
const NEUTRAL = /(gray|white|black)$/;
/** Words of the dictionary (its section 2) for how strong a colour is, with which it may be called by its hue alone. */
const STRONG = /^(vivid|brilliant|strong|moderate) /;
const FULL_NAMES: ReadonlySet<string> = new Set(ENTRIES.map(([, full]) => full));

/**
 * What two full names as near both say, or the nearer one where that is no name of the dictionary. A dark, drab or brownish colour is
 * never called by its hue alone: a wine is no red, an ochre no yellow.
 */
function sharedName([, full, broad, broadest]: Entry, [, other]: Entry): string {
  if (NEUTRAL.test(full)) return full;
  const words = other.split(" ");
  const shared = full.split(" ").filter((word) => words.includes(word));
  if (shared.at(-1) !== full.split(" ").at(-1)) return full;
  const name = shared.join(" ");
  if (name === broad || name === broadest)
    return STRONG.test(full) && STRONG.test(other) ? name : full;
  return FULL_NAMES.has(name) ? name : full;
}

/** The nearest gray, white or black, without `dark`, `light` or `medium`, which two names as near would differ in. */
function greyName(lab: LabD65): string {
  const away = ([, , , , l, a, b]: Entry): number => differenceOfLab(lab, [l, a, b]);
  const greys = ENTRIES.filter(([, full]) => NEUTRAL.test(full));
  const nearest = greys.reduce((best, each) => (away(each) < away(best) ? each : best));
  return nearest[1].replace(/^(dark|light|medium) /, "");
}

/** Name of a hex colour in the NBS dictionary (Special Publication 440): the nearest centroid by CIEDE2000. */
export function colourName(hex: string): ColourName {
  const lab = labD65Of(hex);
  let best = ENTRIES[0] as Entry;
  let next = best;
  let nearest = Number.POSITIVE_INFINITY;
  let second = Number.POSITIVE_INFINITY;
  for (const entry of ENTRIES) {
    // Lightness alone is more than the second already: S_L is never over 1.75 (CIE 142-2001), and what hue and chroma add never under 0.
    if (Math.abs(lab[0] - entry[4]) > MOST_SL * second) continue;
    const d = differenceOfLab(lab, [entry[4], entry[5], entry[6]]);
    if (d < nearest) {
      second = nearest;
      next = best;
      nearest = d;
      best = entry;
    } else if (d < second) {
      second = d;
      next = entry;
    }
  }
  const sure = second - nearest >= COIN_TOSS;
  const [number, full, broad, broadest] = best;
  const isGrey = Math.hypot(lab[1], lab[2]) < NEARLY_GREY;
  return {
    name: sure ? full : isGrey ? greyName(lab) : sharedName(best, next),
    nearest: full,
    broad,
    broadest,
    number,
    difference: nearest,
    sure,
  };
}

/** The name in the studio's spelling: the dictionary writes gray and grayish. */
export function spellColourName(name: string, language: string): string {
  return language === "en-GB" ? name.replace(/\bgray/g, "grey") : name;
}
