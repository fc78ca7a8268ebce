import { basename, resolve } from "node:path";
import type { ClothMeasure } from "../../cloth/clothMeasure.ts";
import { measureCloth } from "../../cloth/measureCloth.ts";
import { USUAL_SETTINGS } from "../../cloth/measureSettings.ts";
import { clothView } from "../../cloth/reading/clothView.ts";
import type { Diagnostic, Place } from "../../diagnostics/diagnostic.ts";
import { diagnosticJson } from "../../diagnostics/report.ts";
import { drawMeasure } from "../../images/overlay/drawMeasure.ts";
import { type Photo, readPhoto } from "../../images/photo/readPhoto.ts";
import { readMeasureSettings } from "../../site/readLibrary.ts";
import { measureJson } from "../../swatches/measureJson.ts";
import { measureText } from "../../swatches/measureText.ts";
import { machineFault } from "../machineFault.ts";
import { exitOf, type Outcome } from "../outcome.ts";
import { measureOptions, type SwatchOptions } from "./swatchOptions.ts";

/** Longer side at which the picture with its measurement is drawn, in pixels. */
const DRAWN_SIDE_PX = 1400;
/** A bank card is straightened from a finer picture than is measured in the end. */
const CARD_SIDE_PX = 1600;

/**
 * What one photograph of a cloth says, in numbers; with `draw`, as a picture too. Of the studio only its
 * own limits of what is a large print are read, where there is one; nothing else is written.
 */
export async function swatch(
  contentDir: string,
  photo: string,
  options: SwatchOptions,
  draw: string | null,
): Promise<Outcome> {
  const { measured, diagnostics } = await measurePhoto(contentDir, photo, options);
  if (measured === null) return failed(photo, diagnostics);
  const { measure, notes } = measured;
  const text = measureText(photo, measure, notes, options.units);
  const more: Diagnostic[] = [];
  if (draw !== null) {
    try {
      more.push(...(await drawn(photo, options, measure, draw)));
    } catch (error) {
      const fault = machineFault(error);
      if (fault === null) throw error;
      more.push(fault);
    }
  }
  const all = [...diagnostics, ...more];
  return {
    exit: exitOf(all),
    json: measureJson(photo, measure, notes),
    text: draw !== null && more.length === 0 ? `${text}\nDrawn in ${draw}.` : text,
    diagnostics: all,
  };
}

/** A photograph read and measured. */
export interface MeasuredPhoto {
  readonly measure: ClothMeasure;
  readonly notes: readonly string[];
}

/** Reads and measures one photograph as the options, and the studio's limits, say. */
export async function measurePhoto(
  contentDir: string,
  photo: string,
  options: SwatchOptions,
): Promise<{
  readonly measured: MeasuredPhoto | null;
  readonly diagnostics: readonly Diagnostic[];
}> {
  const place = placeOf(photo);
  const sidePx = options.corners ? { sidePx: CARD_SIDE_PX } : {};
  const read = await readPhoto(resolve(photo), { place, ...sidePx });
  if (read.value === null) return { measured: null, diagnostics: read.diagnostics };
  const { pixels, notes } = read.value;
  const studio = await readMeasureSettings(contentDir);
  const found = measureCloth(
    pixels,
    options.showsMm,
    measureOptions(options, scaleOf(read.value), place, studio.settings),
  );
  const diagnostics = [...studio.diagnostics, ...read.diagnostics, ...found.diagnostics];
  return { measured: found.value && { measure: found.value, notes }, diagnostics };
}

async function drawn(
  photo: string,
  options: SwatchOptions,
  measure: ClothMeasure,
  draw: string,
): Promise<readonly Diagnostic[]> {
  const place = placeOf(photo);
  const read = await readPhoto(resolve(photo), { place, sidePx: DRAWN_SIDE_PX });
  if (read.value === null) return read.diagnostics;
  const { pixels } = read.value;
  const wanted = measureOptions(options, scaleOf(read.value), place, USUAL_SETTINGS);
  const view = clothView(pixels, options.showsMm, wanted);
  if (view.value === null) return view.diagnostics;
  await drawMeasure(basename(photo), view.value, measure, options.units, resolve(draw));
  return [];
}

function scaleOf({ pixels, widthPx }: Photo): number {
  return pixels.width / widthPx;
}

function placeOf(photo: string): Place {
  return { file: photo, line: null, column: null, keyPath: null };
}

/** What was typed and cannot be is a wrong command line; all else is the photograph's fault. */
const TYPED = /^(shows|crop|corners)-|-outside$/;

/** Nothing could be measured. */
export function failed(photo: string, diagnostics: readonly Diagnostic[]): Outcome {
  const errors = diagnostics.filter((one) => one.severity === "error");
  const typed = errors.length > 0 && errors.every((one) => TYPED.test(one.code));
  return {
    exit: typed ? 2 : exitOf(diagnostics) || 1,
    json: { photo, diagnostics: diagnostics.map(diagnosticJson) },
    text: "",
    diagnostics,
  };
}
