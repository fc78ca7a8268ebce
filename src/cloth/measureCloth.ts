import { type Checked, diagnostic } from "../diagnostics/diagnostic.ts";
import type { ClothMeasure, Confirm } from "./clothMeasure.ts";
import { type MeasureSettings, USUAL_SETTINGS } from "./measureSettings.ts";
import { clothColours } from "./palette/clothColours.ts";
import { describeColours, type Separated, separateColours } from "./palette/palette.ts";
import { patternOf } from "./patternOf.ts";
import { PATTERN_SIDE_PX, patternPicture } from "./patternPicture.ts";
import { checkPixels, crop, type Pixels } from "./pixels/pixels.ts";
import { shrinkToSide } from "./pixels/shrink.ts";
import { type ClothView, clothView, type ViewOptions } from "./reading/clothView.ts";
import { type PhotoQuality, photoQuality } from "./reading/quality.ts";
import { isStrip } from "./reading/shown.ts";

/** Part of the picture that is as dark as can be, from which there is nothing to see. */
const ALL_BLACK = 0.995;

/** What is asked of a measurement. */
export interface MeasureOptions extends ViewOptions, Partial<MeasureSettings> {
  /** How many colours; without it as many as stand out. */
  readonly colours?: number;
}

/**
 * Measures a cloth on an upright picture that shows `showsMm` millimetres of it from its left to its right edge, along its middle
 * (null where a bank card's corners give the scale). The value is null where the picture, or what is said of it, cannot be used.
 */
export function measureCloth(
  pixels: Pixels,
  showsMm: number | null,
  options: MeasureOptions,
): Checked<ClothMeasure> {
  checkPixels(pixels);
  const { value: view, diagnostics } = clothView(pixels, showsMm, options);
  if (view === null) return { value: null, diagnostics };
  const { value: measure, diagnostics: found } = measureView(pixels, view, options);
  return { value: measure, diagnostics: [...diagnostics, ...found] };
}

/** Measures a cloth that was prepared; `pixels` is the photograph as it came, by which its quality is judged. */
export function measureView(
  pixels: Pixels,
  view: ClothView,
  options: MeasureOptions,
): Checked<ClothMeasure> {
  const quality = photoQuality(shrinkToSide(pixels, PATTERN_SIDE_PX));
  if (quality.blockedShare > ALL_BLACK) {
    const hint = "Photograph the cloth in daylight, without the flash, beside a window.";
    const message = "The photograph is black: nothing can be seen on it.";
    return {
      value: null,
      diagnostics: [diagnostic(options.place, "photo-black", message, { hint })],
    };
  }
  const cloth = crop(view.whole, view.part);
  const separated = separateColours(cloth, options);
  const { colours, average } = describeColours(separated);
  const reliable = !isStrip(pixels.width, pixels.height);
  const picture = patternPicture(
    patternColours(separated, options),
    view.mmPerPx,
    Math.max(view.whole.width, view.whole.height),
  );
  const settings = { ...USUAL_SETTINGS, ...options };
  const { pattern, confirm } = patternOf(picture, reliable, settings);
  const measure: ClothMeasure = {
    showsMm: view.showsMm,
    showsDownMm: view.showsDownMm,
    colours,
    average,
    pattern,
    quality,
    confirm: [
      ...view.confirm,
      ...confirmPhoto(quality, separated.fall, options.neutral !== undefined),
      ...confirm,
    ],
  };
  return { value: measure, diagnostics: [] };
}

/** The colours that the pattern is read from: those that stand out, however many she asked for. */
function patternColours(separated: Separated, { colours }: MeasureOptions): Separated {
  if (colours === undefined) return separated;
  const { even, sample } = separated;
  return { ...separated, separation: clothColours({ picture: even, sample }) };
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
