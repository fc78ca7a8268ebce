import { cleanLabels } from "../palette/cleanLabels.ts";
import type { Separation } from "../palette/clothColours.ts";
import { separateColours } from "../palette/palette.ts";
import { type Component, components } from "../pixels/components.ts";
import { distanceToEdge } from "../pixels/distanceToEdge.ts";
import { maskOf } from "../pixels/masks.ts";
import type { Pixels } from "../pixels/pixels.ts";
import { grown, thickParts } from "./maskParts.ts";
import { oneInCell } from "./together.ts";

/** How a motif's size was found. */
export type MotifMethod =
  /** Motifs that stand free on the ground: the longer side of the box around one. */
  | "free-standing"
  /** Flowers or medallions that stems and scrolls join: their size without what is thin between them. */
  | "joined"
  /** Shapes of one colour that stand free of each other though the ground does not (a check). */
  | "one-colour"
  /** Bands or lines that run out of the picture: their width. */
  | "bands";

/** The motifs of a picture. */
export interface Motifs {
  readonly mm: number;
  readonly method: MotifMethod;
  /** Whole motifs that were measured, the longer side of the box around each, in millimetres, least first. */
  readonly sizesMm: readonly number[];
}

/** Under this share of the area there is no pattern to measure. */
const LEAST_SHARE = 0.004;
/** Parts smaller than this, in pixels, are noise. */
const LEAST_PX = 6;
/** Parts of one motif lie within this part of the picture's width of each other. */
const JOINED = 0.004;
/** What stands free but is longer than this part of the cell's side, and whose box is more than that part of its area, is more than one motif. */
const WHOLE_CELL = { side: 0.75, area: 0.4 };
/** The size that this part of the motifs' area does not exceed: the large motif leads, a berry beside it does not. */
const LEADING = 0.6;

/**
 * Size of a cloth's motif in millimetres, or null where it has none (a plain) or fewer than two pixels of it are seen. Motifs
 * on a ground: the longer side of the box around the leading one; checks: the side of a square; stripes and lines: the width
 * of a band.
 */
export function motifSize(pixels: Pixels, mmPerPx: number): number | null {
  const { centres, labels } = separateColours(pixels).separation;
  const clean = cleanLabels(labels, pixels.width, pixels.height, centres.length);
  return motifsOf(pixels, { centres, labels: clean }, mmPerPx)?.mm ?? null;
}

/**
 * The motifs of colours that are separated already, their labels cleaned of grain. Where the side of the repeat's cell is known, what stands free but is nearly
 * as large as the cell is taken for several motifs that stems join.
 */
export function motifsOf(
  { width, height }: Pixels,
  { centres, labels }: Separation,
  mmPerPx: number,
  cellMm: number | null = null,
): Motifs | null {
  const { label, counts } = labels;
  const ground = counts.indexOf(Math.max(...counts));
  const figure = maskOf(label, ground, true);
  const area = label.length - (counts[ground] ?? 0);
  if (area < LEAST_SHARE * figure.length) return null;
  const joined = grown(figure, width, height, Math.max(1, Math.round(JOINED * width)));
  const parts = components(figure, width, height, joined);
  const free = freeStanding(parts, width, height);
  const standing = free.area > 0.5 * area ? sized(free, "free-standing", mmPerPx) : null;
  if (standing && !fillsCell(standing, cellMm)) {
    const cellPx = cellMm === null ? null : cellMm / mmPerPx;
    const motifs = cellPx && oneInCell(parts, { width, height, cellPx });
    const whole = motifs && sized(freeStanding(motifs, width, height), "free-standing", mmPerPx);
    return whole && !fillsCell(whole, cellMm) ? whole : standing;
  }
  const thick = freeStanding(thickParts(figure, width, height), width, height);
  if (thick.area > 0.5 * thick.all) return sized(thick, "joined", mmPerPx);
  if (standing) return standing;
  let best = free;
  let most = 0;
  for (const g of centres.keys()) {
    const one = maskOf(label, g);
    const parts = freeStanding(components(one, width, height), width, height);
    // Squares fill their boxes; half-tone squares that touch at corners run together in stairs, which do not.
    const worth = parts.area * parts.filled ** 2;
    if (parts.area > 0.6 * (counts[g] ?? 0) && worth > most) {
      best = parts;
      most = worth;
    }
  }
  if (most > 0 && best.area > 0.15 * area) return sized(best, "one-colour", mmPerPx);
  const mm = meanWidth(figure, width, height) * mmPerPx;
  return mm >= 2 * mmPerPx ? { mm, method: "bands", sizesMm: [] } : null;
}

/** True where what stands free takes up so much of the cell that it is rather all that is in it, joined by stems. */
function fillsCell({ mm, boxMm2 }: Sized, cellMm: number | null): boolean {
  if (cellMm === null || mm < WHOLE_CELL.side * cellMm) return false;
  // A tall sprig or a long spray is longer than the side of its cell, and takes up little of it.
  return boxMm2 > WHOLE_CELL.area * cellMm ** 2;
}

/** Motifs with the area of the box around the leading one. */
interface Sized extends Motifs {
  readonly boxMm2: number;
}

interface FreeStanding {
  /** Of all parts. */
  readonly all: number;
  /** Of all parts that end within the picture. */
  readonly area: number;
  /** Part of their boxes that they fill. */
  readonly filled: number;
  /** Longer side, area, and area of its box, of each whole part. */
  readonly parts: readonly Part[];
}

interface Part {
  readonly size: number;
  readonly area: number;
  readonly box: number;
}

function freeStanding(list: readonly Component[], width: number, height: number): FreeStanding {
  const all = list.reduce((sum, part) => sum + part.area, 0);
  let area = 0;
  let boxes = 0;
  const parts: Part[] = [];
  for (const part of list) {
    const across = part.right - part.left + 1;
    const down = part.bottom - part.top + 1;
    if (part.area < LEAST_PX || across > 0.6 * width || down > 0.6 * height) continue;
    area += part.area;
    const cut =
      part.left === 0 || part.top === 0 || part.right === width - 1 || part.bottom === height - 1;
    // A motif cut by the border stands free but has no whole size.
    if (cut) continue;
    boxes += across * down;
    parts.push({ size: Math.max(across, down), area: part.area, box: across * down });
  }
  if (parts.length === 0) return { all, area: 0, filled: 0, parts };
  const whole = parts.reduce((sum, part) => sum + part.area, 0);
  return { all, area, filled: whole / boxes, parts };
}

/** The size below which `LEADING` of the area lies, averaged over the sizes next to it so that one pixel does not leap. */
function sized({ parts }: FreeStanding, method: MotifMethod, mmPerPx: number): Sized | null {
  const sorted = [...parts].sort((a, b) => a.size - b.size);
  const total = sorted.reduce((sum, part) => sum + part.area, 0);
  let before = 0;
  let sum = 0;
  let boxes = 0;
  let weight = 0;
  for (const part of sorted) {
    // The parts whose area lies between the two marks about the leading one, by as much as lies there.
    const from = Math.max(before, (LEADING - 0.15) * total);
    const to = Math.min(before + part.area, (LEADING + 0.15) * total);
    if (to > from) {
      sum += (to - from) * part.size;
      boxes += (to - from) * part.box;
      weight += to - from;
    }
    before += part.area;
  }
  const px = weight > 0 ? sum / weight : 0;
  if (px < 2) return null;
  return {
    mm: px * mmPerPx,
    method,
    sizesMm: sorted.map((part) => part.size * mmPerPx),
    boxMm2: (boxes / weight) * mmPerPx ** 2,
  };
}

/** Mean width of what is drawn, in pixels: in a band of width w the mean distance to its edge is w / 4. */
export function meanWidth(mask: Uint8Array, width: number, height: number): number {
  const distance = distanceToEdge(mask, width, height);
  let sum = 0;
  let count = 0;
  for (let p = 0; p < mask.length; p++) {
    if (!mask[p]) continue;
    // Distances run from pixel centre to pixel centre outside, half a pixel more than to the edge.
    sum += (distance[p] as number) - 0.5;
    count++;
  }
  return count > 0 ? (4 * sum) / count : 0;
}
