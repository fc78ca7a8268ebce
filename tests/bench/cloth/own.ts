import { seeded } from "../../cloth/made.ts";
import { acrossStripe, BANDS, gingham, tartan, ticking, windowpane } from "./drawings/bands.ts";
import { CLOSE } from "./drawings/close.ts";
import type { Make } from "./drawings/draw.ts";
import { floral, toile, trail } from "./drawings/florals.ts";
import { GEOMETRICS } from "./drawings/geometrics.ts";
import { abstract, IRREGULARS, marking } from "./drawings/irregulars.ts";
import { fret, herringbone, trellis } from "./drawings/lines.ts";
import { NEARLY } from "./drawings/nearly.ts";
import { damask } from "./drawings/ornaments.ts";
import { PRINTS } from "./drawings/prints.ts";
import { paisley, scatter, spot, sprig } from "./drawings/smallPrints.ts";
import { plain, slub, WEAVES } from "./drawings/weaves.ts";
import type { Drawing } from "./tile.ts";

/*
 * Cloths of our own drawing for the bench, in the traditions that a decorator meets, each from a seed. Units are millimetres.
 * They are not the demo's cloths (tests/cloths), with which the measures were first tried.
 */

const MAKES: Readonly<Record<string, Make>> = {
  floral,
  toile,
  trail,
  ticking,
  acrossStripe,
  tartan,
  gingham,
  windowpane,
  trellis,
  herringbone,
  fret,
  damask,
  paisley,
  sprig,
  scatter,
  spot,
  marking,
  abstract,
  slub,
  plain,
};

/** More traditions, by which the kinds are judged. */
const MORE: Readonly<Record<string, Make>> = {
  ...PRINTS,
  ...GEOMETRICS,
  ...BANDS,
  ...WEAVES,
  ...IRREGULARS,
  ...CLOSE,
};

/** Of these nothing is drawn for trying limits, so that traditions which no limit has seen are reported. */
export const UNSEEN = new Set(
  [
    "broadLeaves suzani conversational tossed blocks scallops kilim facets ogee tattersall blanket boucle basket",
    "zebra chips hide tonalButa",
  ]
    .join(" ")
    .split(" "),
);

/** `each` drawings of every tradition; other seeds give other drawings. */
export function ownDrawings(each: number, firstSeed: number): Drawing[] {
  return drawn(MAKES, each, firstSeed);
}

/** `each` drawings of the further traditions. */
export function moreDrawings(each: number, firstSeed: number): Drawing[] {
  return drawn(MORE, each, firstSeed);
}

/** `each` drawings of the stripes and checks whose half or third is nearly a repeat. */
export function nearlyDrawings(each: number, firstSeed: number): Drawing[] {
  return drawn(NEARLY, each, firstSeed);
}

function drawn(makes: Readonly<Record<string, Make>>, each: number, firstSeed: number): Drawing[] {
  return Object.entries(makes).flatMap(([name, make], m) =>
    Array.from({ length: each }, (_, i) => ({
      name: `own-${name}-${firstSeed + i}`,
      ...make(seeded(7919 * (firstSeed + i) + 31 * m)),
    })),
  );
}
