import type { Hole, RemnantInHand } from "../../quantities/fits/found.ts";
import type { Length } from "../../units/length.ts";
import { parseLength } from "../../units/parseLength.ts";
import { UsageError } from "../outcome.ts";
import type { FitsScope } from "./fits.ts";

/** What is typed after the cloth. */
export interface TypedRemnant {
  readonly length?: string;
  readonly width?: string;
  readonly pieces?: string;
  readonly hole?: readonly string[];
  readonly seam?: readonly string[];
  readonly firstMotif?: string;
}

/** Which items are asked about. */
export interface TypedScope {
  readonly project?: string;
  readonly common?: boolean;
}

/** Reads which items are asked about; a project and the common items are two questions. */
export function scopeOf({ project, common }: TypedScope): FitsScope {
  if (project !== undefined && common)
    throw new UsageError("Name a project or ask for the common items, not both.");
  return { project: project ?? null, commonOnly: common === true };
}

/** Longer than any bolt: what is typed so is a slip. */
const MOST_M = 200;
const MOST_PIECES = 20;

/** Reads a remnant; throws a UsageError, with an example, for what cannot be. */
export function remnantOf(typed: TypedRemnant): RemnantInHand {
  if (typed.length === undefined)
    throw new UsageError('Say how long the remnant is: --length "1 3/4 yd", for example.');
  const length = sizeOf(typed.length, "--length");
  if (length.toMm() > MOST_M * 1000)
    throw new UsageError(`"${typed.length}" is longer than any bolt: ${MOST_M} m is the most.`);
  const width = typed.width === undefined ? null : sizeOf(typed.width, "--width");
  const inside = (at: Length, most: Length | null, what: string) => {
    if (most !== null && at.compare(most) >= 0)
      throw new UsageError(`${what} lies outside the remnant.`);
    return at;
  };
  return {
    length,
    width,
    count: typed.pieces === undefined ? 1 : countOf(typed.pieces),
    holes: (typed.hole ?? []).map((text) => {
      const hole = holeOf(text);
      inside(hole.fromLeft, width, `The hole "${text}"`);
      inside(hole.up, length, `The hole "${text}"`);
      return hole;
    }),
    seams: (typed.seam ?? []).map((text) =>
      inside(sizeOf(text, "--seam"), width, `The seam "${text}"`),
    ),
    firstMotif:
      typed.firstMotif === undefined ? null : placeOf(typed.firstMotif, '--first-motif "9 1/2in"'),
  };
}

function sizeOf(text: string, option: string): Length {
  const read = parseLength(text);
  if (read.ok && !read.length.isZero() && !read.length.isNegative()) return read.length;
  throw new UsageError(`"${text}" is no size: write ${option} "1 3/4 yd" or ${option} "80 cm".`);
}

/** A place may be at the very edge. */
function placeOf(text: string, example: string): Length {
  const read = parseLength(/^\s*0\s*$/.test(text) ? "0 mm" : text);
  if (read.ok && !read.length.isNegative()) return read.length;
  throw new UsageError(`"${text}" is no measure: write ${example}.`);
}

function countOf(text: string): number {
  const count = Number(text);
  if (/^\d+$/.test(text) && count >= 1 && count <= MOST_PIECES) return count;
  throw new UsageError(`"${text}" is no number of pieces: --pieces takes 1 to ${MOST_PIECES}.`);
}

const HOLE = '--hole "12in, 30in, 2in x 3in"';

/** From the left edge, up from the lower end, and its size. */
function holeOf(text: string): Hole {
  const [left, up, size, ...rest] = text.split(",").map((part) => part.trim());
  const [width, height, ...more] = (size ?? "").split(/\s*(?:x|×|by)\s*/i);
  if (!left || !up || !width || !height || rest.length > 0 || more.length > 0)
    throw new UsageError(
      `"${text}" is no hole: give its distance from the left edge, from the lower end, and its size: ${HOLE}.`,
    );
  return {
    fromLeft: placeOf(left, HOLE),
    up: placeOf(up, HOLE),
    width: sizeOf(width, "--hole"),
    height: sizeOf(height, "--hole"),
  };
}
