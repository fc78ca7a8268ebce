import { type ClothMeasure, isPlainKind } from "../cloth/clothMeasure.ts";
import type { PatternKind, Period, Swatch, SwatchPhoto } from "./swatch.ts";

const TEXTURE: Period = { acrossMm: null, upMm: null, halfDrop: false };
/** A measured repeat whose length agrees so nearly with the card's may tell the width that the card leaves open. */
const AGREES = 0.04;
/** Irregular marks of which a photograph shows so many each way are to the eye a texture, as a hide or a marbled paper is. */
const MANY = 5;
/** Stripes within so many degrees of level run across the cloth. */
const LEVEL_DEG = 30;

/**
 * The period of a cloth, or null where it has a pattern and nobody knows how it comes again. A plain has no steps at all, a stripe
 * one, across its bands; small marks strewn without order have none to the eye. The card's repeat counts; the photograph's fills in a width that the card does not give, where its length
 * agrees with the card's.
 */
export function periodOf(
  kind: PatternKind | null,
  repeat: Swatch["repeat"],
  measure: ClothMeasure | null,
  scatter: { readonly motifMm: number | null; readonly photo: SwatchPhoto | null },
): Period | null {
  if (isPlainKind(kind)) return TEXTURE;
  const seen = measure?.pattern.repeat ?? null;
  if (kind === "stripe") {
    const step = repeat ? (repeat.acrossMm ?? repeat.upMm) : null;
    if (step !== null) {
      const lean = measure?.pattern.directionDeg ?? 90;
      const level = repeat?.acrossMm == null && Math.abs(90 - lean) > 90 - LEVEL_DEG;
      return level
        ? { acrossMm: null, upMm: step, halfDrop: false }
        : { acrossMm: step, upMm: null, halfDrop: false };
    }
    return seen?.sure && (seen.horizontalMm === null) !== (seen.verticalMm === null)
      ? { acrossMm: seen.horizontalMm, upMm: seen.verticalMm, halfDrop: false }
      : null;
  }
  if (!repeat) {
    const shown = shownMm(scatter.photo);
    const { motifMm } = scatter;
    const many = shown && motifMm && Math.min(shown.across, shown.up) >= MANY * motifMm;
    return kind === "irregular" && many ? TEXTURE : null;
  }
  const upMm = repeat.upMm;
  const agrees =
    seen?.verticalMm != null && Math.abs(seen.verticalMm - upMm) <= upMm * AGREES
      ? seen.horizontalMm
      : null;
  const acrossMm = repeat.acrossMm ?? agrees;
  return acrossMm === null ? null : { acrossMm, upMm, halfDrop: repeat.match === "half-drop" };
}

/** Rounding of what a photograph shows and of a repeat, as a part of one. */
const SLACK = 0.005;

/** How much cloth a photograph shows; null where nobody said. */
export function shownMm(photo: SwatchPhoto | null): { across: number; up: number } | null {
  if (!photo?.showsMm) return null;
  return { across: photo.showsMm, up: (photo.heightPx / photo.widthPx) * photo.showsMm };
}

/**
 * How a photograph may be laid beside itself. `whole`: it shows one step of the pattern or more each way, or nothing comes again.
 * `part`: the steps are known and it shows less than one, so that it may stand at its place in each step with nothing known between.
 * `alone`: nobody knows the steps, or how much it shows.
 */
export function layingOf(swatch: Pick<Swatch, "photo" | "period">): "whole" | "part" | "alone" {
  const shows = shownMm(swatch.photo);
  if (!shows || !swatch.period) return "alone";
  const { acrossMm, upMm } = swatch.period;
  const holds = (step: number | null, shown: number): boolean =>
    step === null || step <= shown * (1 + SLACK);
  return holds(acrossMm, shows.across) && holds(upMm, shows.up) ? "whole" : "part";
}
