import type { MeasureOptions } from "../../cloth/measureCloth.ts";
import type { MeasureSettings } from "../../cloth/measureSettings.ts";
import { type Rectangle, shrunkRectangle } from "../../cloth/pixels/pixels.ts";
import type { Point } from "../../cloth/reading/homography.ts";
import type { NeutralPatch } from "../../cloth/reading/neutralise.ts";
import type { Place } from "../../diagnostics/diagnostic.ts";
import { parseLength } from "../../units/parseLength.ts";
import type { UnitSystem } from "../../units/printLength.ts";
import { UsageError } from "../outcome.ts";

/** What is typed after a photograph; places in pixels of the upright photograph. */
export interface TypedOptions {
  readonly shows?: string;
  readonly colours?: string;
  readonly neutral?: string;
  readonly corners?: readonly string[];
  readonly crop?: string;
}

/** The same, read. */
export interface SwatchOptions {
  readonly showsMm: number | null;
  readonly colours: number | null;
  readonly neutral: NeutralPatch | null;
  readonly corners: readonly Point[] | null;
  readonly crop: Rectangle | null;
  /** How lengths are printed: as she typed hers. */
  readonly units: UnitSystem;
}

/** Reads the options; throws a UsageError, with an example, for what cannot be read. */
export function swatchOptions(typed: TypedOptions): SwatchOptions {
  const { shows } = typed;
  if (shows === undefined && typed.corners === undefined) {
    throw new UsageError(
      "Say how much cloth the picture shows from left to right: --shows 27in, for example; or give the four corners of a bank card that lies on it: --corners x,y x,y x,y x,y.",
    );
  }
  return {
    showsMm: shows === undefined ? null : lengthOf(shows),
    colours: typed.colours === undefined ? null : countOf(typed.colours),
    neutral: typed.neutral === undefined ? null : patchOf(typed.neutral),
    corners: typed.corners === undefined ? null : cornersOf(typed.corners),
    crop: typed.crop === undefined ? null : rectangleOf(typed.crop, "--crop"),
    units: shows !== undefined && !INCHES.test(shows) ? "centimetres" : "inches",
  };
}

const INCHES = /["'”″’′]|in|ft|yd|feet|foot|yard/i;

function lengthOf(text: string): number {
  if (/^\s*0+(\.0*)?\s*$/.test(text)) return 0;
  const read = parseLength(text);
  if (read.ok) return read.length.toMm();
  throw new UsageError(`"${text}" is no length. Write --shows 27in or --shows "68 cm".`);
}

function countOf(text: string): number {
  const count = Number(text);
  if (/^\d+$/.test(text) && count >= 2 && count <= 12) return count;
  throw new UsageError(`"${text}" is no number of colours: --colours takes 2 to 12.`);
}

function rectangleOf(text: string, option: string): Rectangle {
  const numbers = text.split(",").map((part) => part.trim());
  const [x, y, width, height] = numbers.map(Number) as [number, number, number, number];
  if (numbers.length === 4 && numbers.every((n) => /^\d+$/.test(n)) && width > 0 && height > 0) {
    return { x, y, width, height };
  }
  throw new UsageError(
    `"${text}" is no part of a picture: ${option} takes left,top,width,height in pixels, 40,60,200,150 for example.`,
  );
}

function patchOf(text: string): NeutralPatch {
  const [where = "", part = ""] = text.split("@");
  const found = /^\s*(\d+(?:\.\d+)?|\.\d+)\s*(%?)\s*$/.exec(part);
  const reflectance = found ? Number(found[1]) / (found[2] === "%" ? 100 : 1) : Number.NaN;
  if (!(reflectance > 0 && reflectance <= 1)) {
    throw new UsageError(
      `"${text}" does not say how much light the patch reflects: --neutral 40,60,200,150@0.9 for white card, @0.18 for a grey card.`,
    );
  }
  return { rectangle: rectangleOf(where, "--neutral"), reflectance };
}

function cornersOf(texts: readonly string[]): readonly Point[] {
  const parts = texts.flatMap((text) => text.trim().split(/\s+/));
  const points = parts.map((part) => {
    const found = /^(\d+(?:\.\d+)?),(\d+(?:\.\d+)?)$/.exec(part);
    return found ? ([Number(found[1]), Number(found[2])] as const) : null;
  });
  if (points.length === 4 && points.every((p) => p !== null)) return points;
  throw new UsageError(
    `"${texts.join(" ")}" are not four corners: --corners 120,80 400,90 395,270 118,262, each x,y in pixels from the top left.`,
  );
}

/** The options for a picture that was shrunk by `scale`, as a studio sets it. */
export function measureOptions(
  { colours, neutral, corners, crop }: SwatchOptions,
  scale: number,
  place: Place,
  settings: MeasureSettings,
): MeasureOptions {
  return {
    place,
    ...settings,
    ...(colours === null ? {} : { colours }),
    ...(neutral
      ? { neutral: { ...neutral, rectangle: shrunkRectangle(neutral.rectangle, scale) } }
      : {}),
    ...(corners ? { corners: corners.map(([x, y]): Point => [x * scale, y * scale]) } : {}),
    ...(crop ? { crop: shrunkRectangle(crop, scale) } : {}),
  };
}
