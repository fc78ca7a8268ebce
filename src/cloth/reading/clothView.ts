import {
  type Checked,
  type Diagnostic,
  diagnostic,
  type Place,
} from "../../diagnostics/diagnostic.ts";
import type { Confirm } from "../clothMeasure.ts";
import { isInside, type Pixels, type Rectangle } from "../pixels/pixels.ts";
import { type CardFault, cardPlane } from "./bankCard.ts";
import { boxAround, flatPicture } from "./flatten.ts";
import { mapPoint, type Point } from "./homography.ts";
import { largestBeside, wholeCard, wholeOf } from "./leaveOut.ts";
import { type NeutralPatch, neutralise } from "./neutralise.ts";
import { confirmShown, shownFault } from "./shown.ts";

/** What in a photograph is cloth, and what gives its scale and its light. All places in pixels of the picture that is given. */
export interface ViewOptions {
  /** A white or grey card; it is left out of the measuring. */
  readonly neutral?: NeutralPatch;
  /** The four corners of a bank card that lies on the cloth, in any order: they give scale and perspective. */
  readonly corners?: readonly Point[];
  /** The part that is cloth; without it the whole picture. */
  readonly crop?: Rectangle;
  /** Where the user named the photograph; diagnostics carry it. */
  readonly place: Place;
}

/** The cloth, neutralised and seen from straight above. */
export interface ClothView {
  /** The whole picture as it was prepared; `part` of it is measured. */
  readonly whole: Pixels;
  readonly part: Rectangle;
  readonly mmPerPx: number;
  /** What the photograph as it came shows along its middle, across and down. */
  readonly showsMm: number;
  readonly showsDownMm: number;
  readonly confirm: readonly Confirm[];
}

/** The bank card's edge and shadow, in millimetres, go with it. */
const CARD_RIM_MM = 3;
/** A part smaller than this, in pixels, shows too little to measure. */
const LEAST_PX = 40;
/** Card and said length may differ by so much before it is said. */
const SCALES_APART = 0.04;

/**
 * Prepares a photograph: brings it to neutral light on a declared patch, straightens it by a bank card's corners, and leaves out
 * card and patch. `showsMm` is what it shows from left to right along its middle; where it is null the bank card must say so.
 */
export function clothView(
  pixels: Pixels,
  showsMm: number | null,
  options: ViewOptions,
): Checked<ClothView> {
  const { neutral, corners, crop, place } = options;
  const stop = (...diagnostics: Diagnostic[]) => ({ value: null, diagnostics });
  const said = showsMm === null ? null : shownFault(showsMm, place);
  if (said) return stop(said);
  let lit = pixels;
  if (neutral) {
    const { value, diagnostics } = neutralise(pixels, neutral, place);
    if (value === null) return { value, diagnostics };
    lit = value;
  }
  if (crop && !isInside(crop, pixels)) {
    return stop(
      diagnostic(place, "crop-outside", "The part to be measured is not inside the photograph.", {
        hint: "Give left, top, width and height in pixels of the upright photograph.",
      }),
    );
  }
  if (corners) return cardView(lit, corners, showsMm, options);
  if (showsMm === null) throw new RangeError("a photograph without a scale");
  let part: Rectangle | null = crop ?? wholeOf(pixels);
  if (neutral) part = largestBeside(part, wholeCard(lit, neutral.rectangle));
  if (!part || isTooSmall(part)) return stop(tooLittle(place));
  const mmPerPx = showsMm / pixels.width;
  const showsDownMm = pixels.height * mmPerPx;
  const confirm = confirmShown(pixels.width, pixels.height);
  const view = { whole: lit, part, mmPerPx, showsMm, showsDownMm, confirm };
  return { value: view, diagnostics: [] };
}

function cardView(
  lit: Pixels,
  corners: readonly Point[],
  showsMm: number | null,
  { neutral, crop, place }: ViewOptions,
): Checked<ClothView> {
  const stop = (...diagnostics: Diagnostic[]) => ({ value: null, diagnostics });
  const found = cardPlane(corners, lit.width, lit.height);
  if ("fault" in found) return stop(cardFault(found.fault, place));
  const { plane } = found;
  const shown = shownFault(plane.acrossMm, place);
  if (shown) return stop(shown);
  const onPlane = (p: Point): Point => mapPoint(plane.toPlane, p) as Point;
  const bounds = crop
    ? (cornersOf(crop).map(onPlane) as unknown as typeof plane.corners)
    : plane.corners;
  const flat = flatPicture(lit, plane.toPhoto, bounds, Math.max(lit.width, lit.height));
  if (!flat) return stop(cardFault("steep", place));
  let part: Rectangle | null = wholeOf(flat.pixels);
  const others = [corners, ...(neutral ? [cornersOf(wholeCard(lit, neutral.rectangle))] : [])];
  for (const other of others) {
    const taken = boxAround(flat, other.map(onPlane), CARD_RIM_MM);
    if (part && taken) part = largestBeside(part, taken);
  }
  if (!part || isTooSmall(part)) return stop(tooLittle(place));
  const apart = showsMm === null ? 1 : Math.max(showsMm / plane.acrossMm, plane.acrossMm / showsMm);
  const confirm = confirmShown(lit.width, lit.height);
  if (apart > 1 + SCALES_APART) {
    confirm.push({
      what: "showsMm",
      why: `By the bank card the picture shows ${Math.round(plane.acrossMm)} mm across its middle, not ${Math.round(showsMm as number)} mm as you say; the card's measure was taken.`,
    });
  }
  const view: ClothView = {
    whole: flat.pixels,
    part,
    mmPerPx: flat.mmPerPx,
    showsMm: plane.acrossMm,
    showsDownMm: plane.downMm,
    confirm,
  };
  return { value: view, diagnostics: [] };
}

function cornersOf({ x, y, width, height }: Rectangle): Point[] {
  return [
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
  ];
}

function isTooSmall({ width, height }: Rectangle): boolean {
  return Math.min(width, height) < LEAST_PX;
}

function tooLittle(place: Place): Diagnostic {
  return diagnostic(place, "cloth-too-little", "Too little of the photograph is left to measure.", {
    hint: "Lay the cards at the edge of the cloth, and let the cloth fill the rest of the picture.",
  });
}

const FAULTS: Readonly<Record<CardFault, readonly [message: string, hint: string]>> = {
  outside: [
    "A corner of the bank card lies outside the photograph.",
    "Give the corners in pixels of the upright photograph; all four must be in the picture.",
  ],
  crossed: [
    "The four corners do not make the outline of a card.",
    "Give the four outer corners, each once.",
  ],
  small: [
    "The bank card is too small in the photograph to measure by.",
    "Come nearer, or use --shows with a length that you measured on the cloth.",
  ],
  steep: [
    "The photograph was taken from too low: the cloth runs away from the camera.",
    "Photograph it from straight above.",
  ],
};

function cardFault(fault: CardFault, place: Place): Diagnostic {
  const [message, hint] = FAULTS[fault];
  return diagnostic(place, `corners-${fault}`, message, { hint });
}
