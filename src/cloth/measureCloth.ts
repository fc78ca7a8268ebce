import { oklabOfPixels } from "../colour/oklabOfPixels.ts";
import type { Checked, Place } from "../diagnostics/diagnostic.ts";
import { clothColours } from "./clothColours.ts";
import type { ClothMeasure, Confirm } from "./clothMeasure.ts";
import { leaveOut } from "./leaveOut.ts";
import { type NeutralPatch, neutralise } from "./neutralise.ts";
import { describeColours, type Separated, separateColours } from "./palette.ts";
import { patternOf } from "./patternOf.ts";
import { checkPixels, type Pixels } from "./pixels.ts";
import { type PhotoQuality, photoQuality } from "./quality.ts";

/** Raise when the same picture would be measured otherwise: cached measurements are then made anew. */
export const MEASURE_VERSION = 2;

/** What is asked of a measurement. */
export interface MeasureOptions {
  /** How many colours; without it as many as stand out. */
  readonly colours?: number;
  /** A white or grey card in the picture, in pixels of `pixels`; it is left out of the measuring. */
  readonly neutral?: NeutralPatch;
  /** Where the user named the photograph; diagnostics of the neutral patch carry it. */
  readonly place: Place;
}

/**
 * Measures a cloth on an upright picture that shows `showsMm` millimetres of it from its left to its right edge. The value is
 * null only where the neutral patch is refused.
 */
export function measureCloth(
  pixels: Pixels,
  showsMm: number,
  options: MeasureOptions,
): Checked<ClothMeasure> {
  checkPixels(pixels);
  if (!(showsMm > 0)) throw new RangeError(`a photograph cannot show ${showsMm} mm`);
  const mmPerPx = showsMm / pixels.width;
  const quality = photoQuality(pixels, oklabOfPixels(pixels.data));
  let cloth = pixels;
  if (options.neutral) {
    const { value, diagnostics } = neutralise(pixels, options.neutral, options.place);
    if (value === null) return { value, diagnostics };
    cloth = leaveOut(value, options.neutral.rectangle);
  }
  const separated = separateColours(cloth, options);
  const { even, fall, oklab, separation } = separated;
  const { colours, average } = describeColours(even, oklab, separation);
  const { pattern, confirm } = patternOf(patternColours(separated, options), mmPerPx);
  const measure: ClothMeasure = {
    showsMm,
    showsDownMm: pixels.height * mmPerPx,
    colours,
    average,
    pattern,
    quality,
    confirm: [...confirmPhoto(quality, fall, options.neutral !== undefined), ...confirm],
  };
  return { value: measure, diagnostics: [] };
}

/** The colours that the pattern is read from: those that stand out, however many she asked for. */
function patternColours(separated: Separated, { colours }: MeasureOptions): Separated {
  if (colours === undefined) return separated;
  const { even, oklab } = separated;
  return { ...separated, separation: clothColours(even, oklab) };
}

function confirmPhoto(quality: PhotoQuality, fall: number, neutral: boolean): Confirm[] {
  const list: Confirm[] = [];
  const percent = (share: number) => `${Math.round(share * 100)} %`;
  if (!neutral) {
    list.push({
      what: "colours",
      why: "No white or grey card was declared, so the colours are the camera's: compare them with the sample.",
    });
  }
  if (fall >= 1.15) {
    list.push({
      what: "colours",
      why: `The light falls off across the picture (by ${percent(1 - 1 / fall)}); it was evened, as if the cloth were one shade all over.`,
    });
  }
  if (quality.blownOut) {
    list.push({
      what: "colours",
      why: `${percent(quality.blownShare)} of the picture is blown out: the lightest colours are lost.`,
    });
  }
  if (quality.tooDark) {
    list.push({
      what: "colours",
      why: `${percent(quality.blockedShare)} of the picture is black: the darkest colours are lost.`,
    });
  }
  if (quality.soft) {
    list.push({
      what: "photo",
      why: "Even its sharpest edges are soft: out of focus or moved, unless the cloth's own edges are soft, as an ikat's are.",
    });
  }
  return list;
}
