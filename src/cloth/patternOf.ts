import { oklabOfPixels } from "../colour/oklabOfPixels.ts";
import type { Confirm, MeasuredPattern, MeasuredRepeat } from "./clothMeasure.ts";
import { busynessOf } from "./distance/busyness.ts";
import { contrastOf } from "./distance/contrast.ts";
import { readingDistances } from "./distance/readingDistance.ts";
import { FINE_CELL_MM, type JudgedKind, kindOf } from "./kind/kindOf.ts";
import { cellSigns, crossingAlong, crossingOnBias, softField } from "./kind/kindSigns.ts";
import { surfaceOf } from "./kind/surface.ts";
import { type Motifs, motifsOf } from "./motif/motifSize.ts";
import { type PrintLimits, USUAL_LIMITS } from "./motif/printSize.ts";
import { widestPx } from "./motif/widest.ts";
import { once } from "./once.ts";
import { cleanLabels } from "./palette/cleanLabels.ts";
import type { Separation } from "./palette/clothColours.ts";
import type { Separated } from "./palette/palette.ts";
import { fieldOf } from "./pixels/field.ts";
import type { Relief } from "./pixels/reliefOf.ts";
import { bandWidth } from "./repeat/bandWidth.ts";
import { coloursComeAgain } from "./repeat/coloursAgain.ts";
import { findRepeat } from "./repeat/findRepeat.ts";
import { area, type Lattice } from "./repeat/lattice.ts";
import { repeatOfLattice, repeatOfStripes } from "./repeat/repeatOf.ts";

/**
 * A marking's spots nearly fall on each other. What was found is a repeat if it is sure, if the cloth agrees with itself so well one
 * repeat on, grain left out, or else if its cells, grain and all, agree so well with each other.
 */
const ONE_REPEAT = 0.5;
const ONE_CELL = 0.45;
/** Bands that cross are a check's whatever cell was found. */
const CROSSED = 0.9;
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
  { even, separation }: Separated,
  mmPerPx: number,
  reliable = true,
  printLimits: PrintLimits = USUAL_LIMITS,
): FoundPattern {
  const field = fieldOf(even);
  const surface = surfaceOf(field);
  const { relief, stripes, lattice } = findRepeat(field, {
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
  const judged = kindOf(
    {
      colours: separation.centres.length,
      contrast: contrastOf(separation),
      surface,
      widestMm: isFine ? widestPx(even.width, even.height, clean) * mmPerPx : 0,
      alongRun: stripes?.along ?? null,
      crossing,
      get onBias() {
        return lattice && crossingOnBias(soft, lattice.basis);
      },
      groundShare: Math.max(...labels.counts) / labels.label.length,
      agreement: whole?.confidence ?? 0,
      cellMm: found ? cellMm : null,
      get forGeometric() {
        return cell()?.forGeometric ?? 0;
      },
      motifMm: motifs?.mm ?? null,
      freeMm: motifs?.sizesMm ?? [],
      motifsPerCell: lattice ? perCell(motifs, lattice, relief) : 0,
    },
    printLimits,
  );
  const { kind } = judged;
  const isPlain = kind === "plain" || kind === "textured-plain";
  const seen = stripes ? repeatOfStripes(stripes, reliefMm, relief) : isPlain ? null : found;
  const comesAgain = () =>
    lattice === null || coloursComeAgain(clean.labels, even, lattice.basis, relief.scale);
  const repeat = seen && { ...seen, sure: seen.sure && reliable && comesAgain() };
  const bandPx = stripes ? bandWidth(even, oklabOfPixels(even.data), stripes.directionDeg) : null;
  const distances =
    kind === "plain" ? { patternToM: 0, plainFromM: 0 } : readingDistances(even, mmPerPx);
  const pattern: MeasuredPattern = {
    kind,
    repeat,
    motifMm: isPlain ? null : stripes ? bandPx && bandPx * mmPerPx : cappedMm(motifs, repeat),
    directionDeg: stripes?.directionDeg ?? null,
    contrast: contrastOf(separation),
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
    ],
  };
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

/** A pattern whose colours lie so near each other that one is all that is told. */
function confirmTones({ centres }: Separation, repeat: MeasuredRepeat | null): Confirm[] {
  if (centres.length > 1 || repeat === null) return [];
  const why =
    "The pattern's colours lie so near each other on this photograph that they count as one; photograph it in clearer light, or name them on the card.";
  return [{ what: "colours", why }];
}

/** The size of motifs that stems or scrolls join hangs on where one is said to end. */
function confirmMotif({ kind }: JudgedKind, motifs: Motifs | null): Confirm[] {
  const isPrint = kind === "small-print" || kind === "large-print";
  if (!isPrint || motifs?.method !== "joined") return [];
  const why =
    "The motifs are joined by what lies between them, so that where one ends is a guess; measure one on the cloth.";
  return [{ what: "pattern.motifMm", why }];
}

function confirmPattern({ kind, sure }: JudgedKind, repeat: MeasuredRepeat | null): Confirm[] {
  const guessed: Confirm[] = sure
    ? []
    : [{ what: "pattern.kind", why: "The kind of pattern is a guess; name it yourself." }];
  if (kind === "plain" || kind === "textured-plain") return guessed;
  if (repeat === null) {
    return [
      {
        what: "pattern.repeat",
        why: "No repeat was found: the picture must show one and a half of it each way. Measure it on the cloth.",
      },
      {
        what: "pattern.kind",
        why: "Without a repeat the kind of pattern is a guess; name it yourself.",
      },
    ];
  }
  if (repeat.sure) return guessed;
  return [
    {
      what: "pattern.repeat",
      why: "The repeat is not sure, as where the picture does not show it twice; measure it on the cloth, from a motif to the next like it, up and across.",
    },
    ...guessed,
  ];
}
