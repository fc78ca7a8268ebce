import type { ScaledField } from "../pixels/field.ts";
import { reliefOf } from "../pixels/reliefOf.ts";
import { softened } from "../pixels/softened.ts";
import { alongOverAcross } from "./alongAcross.ts";
import { autocorrelation } from "./autocorrelation.ts";
import { comparedByHues } from "./comparedByHues.ts";
import { type Figures, figuresOf } from "./figures.ts";
import { findLattice } from "./findLattice.ts";
import type { Lattice } from "./lattice.ts";
import { levelOf } from "./latticeLevel.ts";
import { levelled } from "./levelled.ts";
import { looseness } from "./looseness.ts";
import { refineLattice } from "./refineLattice.ts";
import { type SeenPattern, seenPattern } from "./seenPattern.ts";
import { findStripes, type Stripes, wholeStripes } from "./stripes.ts";
import { unevenness } from "./unevenness.ts";
import { wholeTurns } from "./wholeTurns.ts";

/** How a picture repeats: as stripes, as a lattice, or not at all. */
export interface FoundRepeat extends SeenPattern {
  readonly stripes: Stripes | null;
  readonly lattice: Lattice | null;
}

/** Change along the run, for that across it, from which stripes are a check. */
const CROSSED = 0.12;
/** Stripes agree with themselves all along their run nearly as well as at the points of any lattice; a trellis does not. */
const STEADY = 0.72;
/** Agreement with itself from which colours too near to be parted make a pattern all the same, tone on tone. */
const TONED = 0.45;
/**
 * Less is enough for a lattice of so few and so many points: what a weave, its grain and the camera's own blocks leave agrees at a
 * great many points or at hardly any. On photographs of known cloths no plain reached it.
 */
const FAINT = 0.3;
const FEWEST_POINTS = 3;
const MOST_POINTS = 60;

/** Part of the width over which a mean is taken out where a fold's shade is stronger than the pattern. */
const NARROW = 0.015;
/** Agreement with itself from which a pattern is clear. */
const CLEAR = 0.6;

/** Rise of what is drawn on the bands, they themselves taken out, from which stripes have figures, and from which they may have some. */
const DRAWN = 0.55;
const PERHAPS_DRAWN = 0.25;
/** Part of all that wavers which figures are at least: less is the yarns' own. */
const LEAST_DRAWN = 0.06;
/** That rise where shades are taken out narrowly, from which they are drawn: a fold's soft shade across the bands is gone there. */
const STAYS_DRAWN = 0.4;
/** Part of that rise at which the figures agree at a lattice's points. */
const AGREED = 0.5;

/** What the colours of a picture say of its pattern. */
export interface ColourSigns {
  /** Its colours can be told apart. */
  readonly parted: boolean;
  /** It wavers by more than a grain, whether or not they can. */
  readonly isToned: () => boolean;
}

/**
 * Finds how a field whose light is even repeats. Where it is not clear, as under a fold whose shade is stronger than the pattern, shades
 * are taken out more narrowly, and the view in which it agrees with itself better is taken. What is faint is looked for so at once, in
 * its lightness alone, which a camera keeps finer than colour; only where nothing is found, in its hues alone, which have no shade.
 */
export function findRepeat(field: ScaledField, signs: ColourSigns): FoundRepeat {
  const whole = () => repeatIn(field, seenPattern(field), signs);
  if (signs.parted) {
    const found = whole();
    if (found.stripes || agreementOf(found) >= CLEAR) return found;
    return better(found, repeatIn(field, seenPattern(field, NARROW), signs));
  }
  const none = new Float32Array(field.width * field.height);
  const [lightness, ...hues] = field.channels;
  const light: ScaledField = { ...field, channels: [lightness, none, none] };
  const found = repeatIn(field, seenPattern(light, NARROW), signs);
  const inHues: ScaledField = { ...field, channels: [none, ...hues] };
  if (agreementOf(found) >= CLEAR) return byHues(better(found, whole()), inHues);
  if (found.stripes || found.lattice) return byHues(found, inHues);
  return wideBands(found, field, light, signs) ?? repeatIn(field, seenPattern(inHues), signs);
}

/** Agreement of a band's edges with themselves along it: no fold is so straight, or its shade so sharp. */
const STRAIGHT = 0.8;
/** Degrees by which bands and their edges may run apart. */
const APART_DEG = 1.5;

/**
 * Stripes whose bands are so wide that of them their edges alone are left where shades are taken out narrowly: then it is not seen how
 * they come again. They are looked for in the whole lightness where the edges run straight, and must run as these do; else null.
 */
function wideBands(
  { correlation }: FoundRepeat,
  field: ScaledField,
  light: ScaledField,
  signs: ColourSigns,
): FoundRepeat | null {
  const edges = signs.isToned() ? findStripes(correlation) : null;
  if (!edges || edges.along < STRAIGHT) return null;
  const found = repeatIn(field, seenPattern(light), signs);
  if (!found.stripes) return null;
  const turned = Math.abs(found.stripes.directionDeg - edges.directionDeg);
  return Math.min(turned, 180 - turned) <= APART_DEG ? found : null;
}

/** What was found by lightness, its cells compared by their hues, which have no shade that must be taken out narrowly. */
function byHues(found: FoundRepeat, inHues: ScaledField): FoundRepeat {
  const { lattice, tilt, correlation } = found;
  if (!lattice) return found;
  const hues = autocorrelation(levelled(softened(reliefOf(inHues)), tilt));
  return { ...found, lattice: comparedByHues(lattice, correlation, hues) };
}

function agreementOf({ lattice }: FoundRepeat): number {
  return lattice?.score ?? 0;
}

/** Of two views of a picture that in which its lattice agrees with itself better, the first where neither does. */
function better(one: FoundRepeat, other: FoundRepeat): FoundRepeat {
  return agreementOf(other) > agreementOf(one) ? other : one;
}

function repeatIn(
  field: ScaledField,
  seen: SeenPattern,
  { parted, isToned }: ColourSigns,
): FoundRepeat {
  const { relief, correlation } = seen;
  const lattice = findLattice(correlation);
  const steady = STEADY * (lattice?.score ?? 0);
  const ridge = parted || isToned() ? findStripes(correlation, steady) : null;
  const isStriped = ridge !== null && alongOverAcross(relief, ridge.directionDeg) < CROSSED;
  const figures = isStriped ? figuresOf(relief, ridge.directionDeg) : null;
  const isDrawn =
    ridge !== null &&
    figures !== null &&
    figures.rise >= DRAWN &&
    figures.part >= LEAST_DRAWN &&
    narrowRise(field, seen, ridge) >= STAYS_DRAWN;
  const drawn = isDrawn ? latticeOfFigures(lattice, figures) : null;
  if (isStriped && !drawn) {
    const plain = !parted && Math.min(ridge.along, ridge.confidence) < TONED;
    const stripes = wholeStripes(field, seen.tilt, ridge);
    const doubtful = stripes.doubtful === true || (figures?.rise ?? 0) >= PERHAPS_DRAWN;
    return { ...seen, stripes: plain ? null : { ...stripes, doubtful }, lattice: null };
  }
  const found = drawn ?? lattice;
  if (!found || !(parted || isPattern(found, isToned())))
    return { ...seen, stripes: null, lattice: null };
  const refined = refineLattice(seen, found);
  const whole = wholeTurns(field, refined);
  // Bands hide how long a repeat along them is: what is drawn on them tells.
  const telling = drawn && figures ? figures.correlation : refined.seen.correlation;
  const uneven = unevenness(telling, whole.basis)?.errors ?? 0;
  const loose = looseness(telling, whole.basis);
  return { ...refined.seen, stripes: null, lattice: { ...whole, uneven, loose } };
}

/** How far what is drawn on the bands rises again along them where shades are taken out narrowly. */
function narrowRise(field: ScaledField, { tilt }: SeenPattern, { directionDeg }: Stripes): number {
  const narrow = levelled(softened(reliefOf(field, NARROW)), tilt);
  return figuresOf(narrow, directionDeg).rise;
}

/** The lattice of figures on bands: that of the whole where the figures agree at its points, else their own; null where neither holds. */
function latticeOfFigures(whole: Lattice | null, { correlation, rise }: Figures): Lattice | null {
  const level = whole && levelOf(correlation, whole.basis);
  if (level && level.mean >= AGREED * rise) return whole;
  const own = findLattice(correlation);
  return own && own.points >= FEWEST_POINTS ? own : null;
}

/** True where a lattice is a pattern tone on tone, and no weave. */
function isPattern({ score, points }: Lattice, toned: boolean): boolean {
  if (toned && score >= TONED) return true;
  return score >= FAINT && points >= FEWEST_POINTS && points <= MOST_POINTS;
}
