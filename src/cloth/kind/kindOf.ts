import type { PrintLimits } from "../motif/printSize.ts";
import { checkOf, fineCheckOf, isCheckOnBias } from "./checkOf.ts";
import type { JudgedKind, KindSigns } from "./judgedKind.ts";

/** Limits of the signs, tried on photographs of made cloths. */
const LIMITS = {
  /** Stripes that agree less with themselves along their run may be brushstrokes or streaks. */
  streaks: 0.5,
  /** Texture, and surface, over this are seen at arm's length. */
  texture: 0.0065,
  surface: 0.0108,
  /** What repeats closer than this in one tone is a weave; so is what has no waves above the second figure. */
  weaveCellMm: 6,
  coarse: 0.0035,
  /** Where figure and ground are both finer than this, it is a weave. */
  weaveMm: 2,
  /** What does not repeat and has less contrast is a surface, not a pattern. */
  contrast: 0.27,
  /** What is a sum of bands by this and more may be a check. */
  opaqueSum: 0.82,
  /** Agreement one repeat further under which what comes again may do so by chance. */
  chance: 0.6,
  /** What is a sum of bands by this and more, nearly all of them one way, is a stripe with figures on it or between its bands. */
  banded: 0.7,
  /** Where the figures stand in rows, the rows are bands as well, so that up to this it may be such a stripe. */
  rows: 0.5,
  /** What does not repeat and is made of motifs smaller than this, in millimetres, are the flecks of a yarn. */
  fleckMm: 6,
  /** Motifs in a cell from which a pattern of spots of nearly one size is a marking, and how nearly. */
  scattered: 16,
  alike: 1.35,
  /** Size of a motif, in millimetres, under which a great repeat is still a small print. */
  sprigMm: 25,
  /** Whole motifs in a picture up to which a pattern without a repeat is a large print seen too near. */
  few: 5,
};

/** Only of cells finer than this, in millimetres, it is asked how wide figure and ground are. */
export const FINE_CELL_MM = 4 * LIMITS.weaveCellMm;

/** Nearer than this part to a limit the answer is a guess. */
const NEAR = 0.15;
/** Part of the limits of a surface, both signs taken together, up to which a plain is sure. */
const SMOOTH = 0.7;
/** A print whose edges are so far their own mirror image may be called a geometric: stars, scales, a damask. */
const OWN_MIRROR = 0.93;
/** Part of the size from which a motif is large, under which a great repeat of them may still be called a small print. */
const SMALL_IN_GREAT = 0.5;
/** Odds, in logarithms, under which geometric or print is a guess. */
const DOUBT = 2;

/**
 * The kind of a pattern in the trade's words. The kinds are common practice, no source; the limits are our own. The first that
 * fits: stripe, fine check, plain, textured plain, check, irregular (nothing repeats), check on the bias, geometric, irregular (a
 * marking), large or small print.
 */
export function kindOf(signs: KindSigns, limits: PrintLimits): JudgedKind {
  const { crossing, cellMm } = signs;
  if (signs.alongRun !== null) return { kind: "stripe", sure: signs.alongRun > LIMITS.streaks };
  const fineCheck = fineCheckOf(signs, LIMITS.contrast);
  if (fineCheck) return fineCheck;
  const plain = plainOf(signs);
  if (plain) return plain;
  const check = checkOf(signs);
  if (check) return check;
  if (cellMm === null) {
    if (signs.freeMm.length > LIMITS.few && (signs.motifMm ?? 0) < LIMITS.fleckMm)
      return { kind: "textured-plain", sure: false };
    const few = signs.freeMm.length > 1 && signs.freeMm.length <= LIMITS.few;
    const large = few && (signs.motifMm ?? 0) >= limits.motifMm;
    return { kind: large ? "large-print" : "irregular", sure: false };
  }
  if (isCheckOnBias(signs)) return { kind: "check", sure: false };
  // A stripe with figures is called by its bands or by its figures; what is nearly a sum of bands both ways may be a check.
  const figured = crossing.sum > LIMITS.banded && crossing.balance < LIMITS.rows;
  const banded = crossing.sum > LIMITS.opaqueSum || signs.agreement < LIMITS.chance;
  // In one tone grain is as strong as the drawing: where the repeat is not sure either, how it is drawn is a guess.
  const faint = signs.colours < 2 && !signs.repeatSure;
  const sure = !faint && !figured && !banded && Math.abs(signs.forGeometric) > DOUBT;
  if (signs.forGeometric > 0) return { kind: "geometric", sure };
  if (signs.motifsPerCell >= LIMITS.scattered && alike(signs.freeMm))
    return { kind: "irregular", sure: false };
  return printOf(signs, cellMm, limits, sure && signs.mirrored < OWN_MIRROR);
}

/** Plain or textured plain, or null where there is a pattern. */
function plainOf(signs: KindSigns): JudgedKind | null {
  const { cellMm, surface } = signs;
  const weave =
    cellMm === null || cellMm < LIMITS.weaveCellMm
      ? signs.contrast < LIMITS.contrast
      : signs.colours < 2 && surface.coarse < LIMITS.coarse;
  const fine =
    signs.colours > 1 &&
    signs.widestMm < LIMITS.weaveMm &&
    cellMm !== null &&
    cellMm < FINE_CELL_MM;
  if (!weave && !fine) return null;
  const signsSeen = [surface.texture / LIMITS.texture, surface.all / LIMITS.surface] as const;
  const seen = Math.max(...signsSeen);
  // The eye takes both together: a slub shows a little as grain and a little as streaks. So does a velvet, which is a plain.
  if (signs.colours < 2 && seen < 1)
    return { kind: "plain", sure: Math.hypot(...signsSeen) < SMOOTH };
  // Coarse, and no repeat found: it may be a pattern tone on tone whose repeat was missed.
  const missed = cellMm === null && surface.coarse > 2 * LIMITS.coarse;
  const sure = seen > 1 + NEAR && signs.contrast < (1 - NEAR) * LIMITS.contrast && !missed;
  return { kind: "textured-plain", sure };
}

/** Small or large, by the repeat and by the motif where one was measured. */
function printOf(
  { motifMm, freeMm }: KindSigns,
  cellMm: number,
  limits: PrintLimits,
  sure: boolean,
): JudgedKind {
  const motif = freeMm.length > 0 ? motifMm : null;
  const sprigs = motif !== null && motif < LIMITS.sprigMm;
  const byCell = cellMm / limits.cellMm;
  const byMotif = (motif ?? 0) / limits.motifMm;
  const large = byMotif >= 1 || (byCell >= 1 && !sprigs);
  const near = [byCell, byMotif].some((part) => Math.abs(Math.log(part)) < NEAR);
  // A great repeat of small motifs is called either way.
  const either = byCell >= 1 && motif !== null && byMotif < SMALL_IN_GREAT;
  return { kind: large ? "large-print" : "small-print", sure: sure && !near && !either };
}

/** True where the motifs are nearly of one size, as spots are and leaves with flowers are not. */
function alike(sizes: readonly number[]): boolean {
  if (sizes.length < 8) return false;
  const at = (part: number) => sizes[Math.floor(part * (sizes.length - 1))] as number;
  return at(0.85) < LIMITS.alike * at(0.25);
}
