import { type Field, fieldOf } from "../pixels/field.ts";
import { gaussian } from "../pixels/gaussian.ts";
import type { Pixels } from "../pixels/pixels.ts";
import type { Relief } from "../pixels/reliefOf.ts";
import { area, type Basis, type Shift } from "../repeat/lattice.ts";
import { type Crossing, crossingOf, shiftAlong } from "./crossing.ts";
import { drawingOf, forGeometric } from "./drawnByRule.ts";
import { CELL_SIDE, meanCell } from "./meanCell.ts";

/** Least width at which cells are laid over each other, in pixels. */
const LEAST_WIDTH = 200;
/** Degrees within which a cloth's warp and weft stand to the picture's sides. */
const HAND_TURN = 6;
/** Pixels of the relief over which a weave's grain is gone. */
const GRAIN = 2;

/** A field without its grain. */
export function softField(field: Field): Field {
  const [l, a, b] = field.channels.map((c) => gaussian(c, field.width, field.height, 1));
  return { ...field, channels: [l, a, b] as [Float32Array, Float32Array, Float32Array] };
}

/** Bands up and across, along the warp and weft of a lattice in pixels of the field; without one along the picture's sides. */
export function crossingAlong(field: Field, basis: Basis | null): Crossing {
  if (basis === null) return crossingOf(field, null, null);
  return crossingOf(field, shiftAlong(basis, true, HAND_TURN), shiftAlong(basis, false, HAND_TURN));
}

/** What wavers in a relief, root mean square: all, and without the grain. */
export function surfaceOf({ width, height, channels }: Relief): {
  surface: number;
  coarse: number;
} {
  let [all, left] = [0, 0];
  for (const channel of channels) {
    const soft = gaussian(channel, width, height, GRAIN);
    for (let p = 0; p < channel.length; p++) {
      all += (channel[p] as number) ** 2;
      left += (soft[p] as number) ** 2;
    }
  }
  const n = width * height;
  return { surface: Math.sqrt(all / n), coarse: Math.sqrt(left / n) };
}

/** What the cells of a lattice say when they are laid over each other: whether they are one cell, and how it is drawn. */
export function cellSigns(
  even: Pixels,
  basis: Basis,
  reliefScale: number,
  cellMm: number,
): { agreement: number; forGeometric: number } {
  const cellPx = Math.sqrt(area(basis)) * reliefScale;
  const width = Math.min(even.width, Math.max(LEAST_WIDTH, (even.width * CELL_SIDE) / cellPx));
  const field = fieldOf(even, width);
  const scale = (field.width / even.width) * reliefScale;
  const [a, b] = basis.map(([x, y]): Shift => [x * scale, y * scale]) as [Shift, Shift];
  const cell = meanCell(field, [a, b]);
  if (!cell) return { agreement: 0, forGeometric: 0 };
  return {
    agreement: cell.agreement,
    forGeometric: forGeometric(drawingOf(cell, [a, b]), cellMm),
  };
}
