import { oklabOfPixels } from "../colour/oklabOfPixels.ts";
import { type BandedPicture, bandsOfCheck, bandsOfStripes } from "./bands/measuredBands.ts";
import {
  type BandSequence,
  type Confirm,
  isPlainKind,
  type MeasuredPattern,
  type MeasuredRepeat,
} from "./clothMeasure.ts";
import {
  confirmBands,
  confirmMotif,
  confirmPattern,
  confirmRuns,
  confirmTones,
} from "./confirmPattern.ts";
import { busynessOf } from "./distance/busyness.ts";
import { concentrationOf } from "./distance/concentration.ts";
import { contrastOf } from "./distance/contrast.ts";
import { readingDistances } from "./distance/readingDistance.ts";
import { changesAlong } from "./kind/changes.ts";
import { FINE_CELL_MM, kindOf } from "./kind/kindOf.ts";
import {
  cellSigns,
  crossingAlong,
  crossingOnBias,
  softField,
  waysOfCheck,
} from "./kind/kindSigns.ts";
import { slantOf, sumFromAfar } from "./kind/leaning.ts";
import { runsOfBands } from "./kind/runsOf.ts";
import { surfaceOf } from "./kind/surface.ts";
import { type MeasureSettings, USUAL_SETTINGS } from "./measureSettings.ts";
import { type Motifs, motifsOf } from "./motif/motifSize.ts";
import { widestPx } from "./motif/widest.ts";
import { once } from "./once.ts";
import { cleanLabels } from "./palette/cleanLabels.ts";
import type { PatternPicture } from "./patternPicture.ts";
import { fieldOf } from "./pixels/field.ts";
import type { Relief } from "./pixels/reliefOf.ts";
import { bandWidth } from "./repeat/bandWidth.ts";
import { coloursComeAgain } from "./repeat/coloursAgain.ts";
import { findRepeat } from "./repeat/findRepeat.ts";
import { area, type Lattice } from "./repeat/lattice.ts";
import { acrossRun, repeatOfLattice, repeatOfStripes } from "./repeat/repeatOf.ts";
import type { Stripes } from "./repeat/stripes.ts";

/**
 * A marking's spots nearly fall on each other. What was found is a repeat if it is sure, if the cloth agrees with itself so well one
 * repeat on, grain left out, or else if its cells, grain and all, agree so well with each other.
 */
const ONE_REPEAT = 0.5;
const ONE_CELL = 0.45;
/** Bands that cross are a check's whatever cell was found. */
const CROSSED = 0.9;
/** A weave's own repeat is told from this size of its cell on, where it is so like itself, and from this contrast on. */
const WOVEN = { leastMm: 4, likeItself: 0.6, contrast: 0.4 };
/** Texture from which a cloth whose colours cannot be parted may have a pattern. */
const TONED = 0.0065;
/** From further than this nothing in a house is seen. */
const NO_ROOM_M = 20;

/** A pattern and what about it she should look at. */
export interface FoundPattern {
  readonly pattern: MeasuredPattern;
  readonly confirm: readonly Confirm[];
}

/**
 * Measures the pattern of a picture whose light is even and whose colours are separated. Where its scale is not `reliable` no
 * repeat is sure.
 */
export function patternOf(
  { even, mmPerPx, separation, fine, hexes }: PatternPicture,
  reliable = true,
  { printLimits, acuity }: MeasureSettings = USUAL_SETTINGS,
): FoundPattern {
  const field = fieldOf(even);
  const surface = surfaceOf(field);
  const { relief, stripes, lattice, tilt } = findRepeat(field, {
    parted: separation.centres.length > 1,
    isToned: () => surface.texture >= TONED,
  });
  const reliefMm = mmPerPx * relief.scale;
  const cellMm = lattice && Math.sqrt(area(lattice.basis)) * reliefMm;
  const soft = softField(field);
  const crossing = crossingAlong(soft, lattice?.basis ?? null);
  const cell = once(() =>
    lattice && cellMm ? cellSigns(even, lattice.basis, relief.scale, cellMm) : null,
  );
  const whole = lattice && repeatOfLattice(lattice, reliefMm, relief);
  // What is found in one tone has passed a limit of its own, and its grain hides how alike its cells are.
  const toneOnTone = separation.centres.length < 2;
  const isOne =
    whole !== null &&
    (whole.sure ||
      toneOnTone ||
      whole.confidence >= ONE_REPEAT ||
      (cell()?.agreement ?? 0) >= ONE_CELL ||
      crossing.sum > CROSSED);
  const found = isOne ? whole : null;
  const { centres, labels } = separation;
  const clean = { centres, labels: cleanLabels(labels, even.width, even.height, centres.length) };
  const isFine = !stripes && found !== null && (cellMm ?? 0) < FINE_CELL_MM;
  const motifs = motifsOf(even, clean, mmPerPx, found ? cellMm : null);
  const contrast = contrastOf(separation);
  const judged = kindOf(
    {
      colours: separation.centres.length,
      contrast,
      surface,
      widestMm: isFine ? widestPx(even.width, even.height, clean) * mmPerPx : 0,
      alongRun: stripes?.along ?? null,
      crossing,
      get onBias() {
        return lattice && crossingOnBias(soft, lattice.basis);
      },
      groundShare: Math.max(...labels.counts) / labels.label.length,
      agreement: whole?.confidence ?? 0,
      repeatSure: whole?.sure ?? false,
      get slant() {
        return lattice ? slantOf(field, Math.sqrt(area(lattice.basis))) : 0;
      },
      get sumFromAfar() {
        return lattice ? sumFromAfar(field, lattice.basis) : 0;
      },
      get changes() {
        return cellMm ? changesAlong(cellMm / mmPerPx, clean.labels, even.width) : 0;
      },
      cellMm: found ? cellMm : null,
      get forGeometric() {
        return cell()?.forGeometric ?? 0;
      },
      get mirrored() {
        return cell()?.mirrored ?? 0;
      },
      motifMm: motifs?.mm ?? null,
      freeMm: motifs?.sizesMm ?? [],
      motifsPerCell: lattice ? perCell(motifs, lattice, relief) : 0,
    },
    printLimits,
  );
  const { kind } = judged;
  const isPlain = isPlainKind(kind);
  const seen = stripes
    ? repeatOfStripes(stripes, reliefMm, relief)
    : isPlain
      ? wovenRepeat(found, cellMm ?? 0, contrast)
      : found;
  const comesAgain = () =>
    lattice === null || coloursComeAgain(clean.labels, even, lattice.basis, relief.scale);
  const repeat = seen && { ...seen, sure: seen.sure && reliable && comesAgain() };
  const bandPx = stripes ? bandWidth(even, oklabOfPixels(even.data), stripes.directionDeg) : null;
  const distances =
    kind === "plain"
      ? { patternToM: 0, plainFromM: 0 }
      : readingDistances(even, mmPerPx, acuity, concentrationOf(separation, even.width, mmPerPx));
  const banded = (): BandedPicture => {
    const scale = (relief.scale * fine.even.width) / even.width;
    return { ...fine, scale, tilt, hexes: hexes() };
  };
  const bands = repeat ? bandsOf(kind, banded, stripes, lattice) : [];
  const turned =
    bands.length > 0
      ? runsOfBands(bands)
      : repeat?.sure && !isPlain && lattice
        ? (cell()?.runs ?? null)
        : null;
  const pattern: MeasuredPattern = {
    kind,
    repeat,
    motifMm: isPlain ? null : stripes ? bandPx && bandPx * mmPerPx : cappedMm(motifs, repeat),
    directionDeg: stripes?.directionDeg ?? null,
    bands,
    runs: turned?.runs ?? null,
    contrast,
    busyness: busynessOf(even, separation, mmPerPx),
    patternToM: inRoom(distances.patternToM),
    readsPlainFromM: inRoom(distances.plainFromM),
  };
  return {
    pattern,
    confirm: [
      ...confirmTones(separation, repeat),
      ...confirmPattern(judged, repeat),
      ...confirmMotif(judged, stripes ? null : motifs),
      ...confirmBands(pattern),
      ...confirmRuns(turned),
    ],
  };
}

/** The bands of stripes and of checks; empty of all else. */
function bandsOf(
  kind: MeasuredPattern["kind"],
  picture: () => BandedPicture,
  stripes: Stripes | null,
  lattice: Lattice | null,
): readonly BandSequence[] {
  if (kind === "stripe" && stripes?.periodPx)
    return bandsOfStripes(picture(), acrossRun(stripes.directionDeg, stripes.periodPx));
  const ways = kind === "check" && lattice ? waysOfCheck(lattice.basis) : null;
  return ways ? bandsOfCheck(picture(), ways) : [];
}

/**
 * The repeat of what is called a weave and is to the eye a small pattern for all that, as a herringbone of two yarns: coarse enough to be
 * matched, its colours apart. One in shades of a colour is a plain to the trade.
 */
function wovenRepeat(
  found: MeasuredRepeat | null,
  cellMm: number,
  contrast: number,
): MeasuredRepeat | null {
  const { leastMm, likeItself, contrast: least } = WOVEN;
  return found && cellMm >= leastMm && found.confidence >= likeItself && contrast > least
    ? found
    : null;
}

function inRoom(metres: number): number | null {
  return metres > NO_ROOM_M ? null : metres;
}

/** Whole motifs in one cell that stand free and are at least half as large as the leading one. */
function perCell(motifs: Motifs | null, { basis }: Lattice, relief: Relief): number {
  if (motifs?.method !== "free-standing") return 0;
  const count = motifs.sizesMm.filter((mm) => mm >= motifs.mm / 2).length;
  return (count * area(basis)) / (relief.width * relief.height);
}

/** A motif is never longer than its repeat is far: what measured so was two that touch. */
function cappedMm(motifs: Motifs | null, repeat: MeasuredRepeat | null): number | null {
  if (!motifs) return null;
  const most = repeat ? Math.max(...repeat.lattice.map(([x, y]) => Math.hypot(x, y))) : motifs.mm;
  return Math.min(motifs.mm, most);
}
