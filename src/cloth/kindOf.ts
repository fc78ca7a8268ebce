import type { MeasuredRepeat, PatternKind } from "./clothMeasure.ts";
import type { Symmetry } from "./symmetry.ts";

/** What the kind of a pattern is told from. */
export interface KindSigns {
  /** Colours that were separated. */
  readonly colours: number;
  /** Lightness and hue that waver over more than a grain, root mean square in Oklab. */
  readonly texture: number;
  /** Mean width of the wider of figure and ground, in millimetres. */
  readonly widestMm: number;
  readonly striped: boolean;
  /** The repeat of what is no stripe. */
  readonly repeat: MeasuredRepeat | null;
  /** How far it is a sum of warp and weft, 0 to 1. */
  readonly additivity: number;
  readonly symmetry: Symmetry;
  readonly motifMm: number | null;
  /** Sizes of the motifs that stand free, in millimetres. */
  readonly freeMm: readonly number[];
  /** Motifs that stand free in one cell of the repeat. */
  readonly motifsPerCell: number;
}

/** Texture over this is seen at arm's length. */
const TEXTURE = 0.0065;
/** Where figure and ground are both finer than this, it is a weave, not a pattern; in millimetres. */
const WEAVE_MM = 2;
/** What repeats closer than this in one tone is a weave as well. */
const WEAVE_CELL_MM = 6;
const CHECK = 0.78;
/** Agreement with itself turned about, and with both mirror images, from which a pattern is geometric; a damask has one. */
const TURNED = 0.72;
const MIRRORED = 0.55;
/** Side of a square cell, and size of a motif, from which a print is large, in millimetres. */
const LARGE_CELL_MM = 110;
const LARGE_MOTIF_MM = 90;
/** Motifs in a cell from which a pattern of like spots is a marking, not a repeat that is seen as one. */
const SCATTERED = 16;

/**
 * The kind of a pattern in the trade's words. The kinds are common practice, no source; the limits are our own, tried on made
 * cloths. The first that fits: plain, textured plain, stripe, check, irregular, geometric, large print, small print.
 */
export function kindOf(signs: KindSigns): PatternKind {
  const { repeat, symmetry } = signs;
  if (signs.striped) return "stripe";
  const cellMm = repeat ? Math.sqrt(cellArea(repeat)) : null;
  if (signs.colours < 2) {
    if (cellMm === null || cellMm < WEAVE_CELL_MM)
      return signs.texture < TEXTURE ? "plain" : "textured-plain";
  } else if (signs.widestMm < WEAVE_MM) return "textured-plain";
  if (repeat && signs.additivity > CHECK) return "check";
  if (repeat === null) return (signs.motifMm ?? 0) >= LARGE_MOTIF_MM ? "large-print" : "irregular";
  if (signs.motifsPerCell >= SCATTERED && alike(signs.freeMm)) return "irregular";
  const mirrored = Math.min(symmetry.sideways, symmetry.upsideDown);
  const drawnByRule = symmetry.turned > TURNED && mirrored > MIRRORED;
  if (drawnByRule) return "geometric";
  const large = (cellMm ?? 0) >= LARGE_CELL_MM || (signs.motifMm ?? 0) >= LARGE_MOTIF_MM;
  return large ? "large-print" : "small-print";
}

/** True where the motifs are nearly of one size, as spots are and leaves with flowers are not. */
function alike(sizes: readonly number[]): boolean {
  if (sizes.length < 8) return false;
  const at = (part: number) => sizes[Math.floor(part * (sizes.length - 1))] as number;
  return at(0.85) < 1.8 * at(0.25);
}

function cellArea({ lattice, horizontalMm, verticalMm }: MeasuredRepeat): number {
  if (horizontalMm !== null && verticalMm !== null) return horizontalMm * verticalMm;
  const [a, b] = lattice;
  return a && b ? Math.abs(a[0] * b[1] - a[1] * b[0]) : 0;
}
