/** One narrow upright part of hung cloth: where it is seen, and which part of the flat cloth is squeezed into it. */
export interface Slice {
  readonly x: number;
  readonly width: number;
  /** From the cloth's left edge, flat. */
  readonly flatX: number;
  readonly flatWidth: number;
  /** Shade from 0 (none): how strongly it is darkened, and how strongly lit. */
  readonly dark: number;
  readonly light: number;
}

export interface FoldedCloth {
  readonly slices: readonly Slice[];
  /** Where each fold begins and ends; one more than there are folds. */
  readonly edges: readonly number[];
  /** How deep each fold stands, half from crest to valley. */
  readonly depths: readonly number[];
}

/** Slices of one fold; a small drawing needs fewer. */
export const SLICES = 22;

/** Length along z = A sin(2 pi t / p) over one fold, as a multiple of the pitch p; `slope` is 2 pi A / p. */
export function arcRatio(slope: number, steps = 180): number {
  let sum = 0;
  for (let i = 0; i < steps; i += 1) {
    const cos = Math.cos((2 * Math.PI * (i + 0.5)) / steps);
    sum += Math.sqrt(1 + slope * slope * cos * cos);
  }
  return sum / steps;
}

/** The greatest slope of the sine that holds `fullness` times its pitch of cloth; 0 for flat cloth. By halving. */
export function slopeForFullness(fullness: number): number {
  if (fullness <= 1) return 0;
  let low = 0;
  let high = fullness * 2.5;
  for (let i = 0; i < 48; i += 1) {
    const middle = (low + high) / 2;
    if (arcRatio(middle) < fullness) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** A repeatable number from 0 to 1 for an index; folds are not all alike, and a picture must not change by itself. */
export function unevenness(index: number): number {
  const value = Math.sin((index + 1) * 12.9898) * 43758.5453;
  return value - Math.floor(value);
}

/**
 * Cloth hung in folds, seen from the front (print design 8): each fold a sine whose length is the cloth that it takes up, cut into
 * `count` slices, lit from the upper left. `uneven` (0 to 0.3) lets the folds differ in width. Sizes in any one unit.
 */
export function foldCloth(
  x: number,
  width: number,
  flatWidth: number,
  folds: number,
  uneven = 0.08,
  count = SLICES,
): FoldedCloth {
  const weights = Array.from({ length: folds }, (_, i) => 1 + uneven * (2 * unevenness(i) - 1));
  const whole = weights.reduce((a, b) => a + b, 0);
  const flatPerFold = flatWidth / folds;
  const slices: Slice[] = [];
  const edges = [x];
  const depths: number[] = [];
  let left = x;
  for (const [fold, weight] of weights.entries()) {
    const pitch = (width * weight) / whole;
    const slope = slopeForFullness(flatPerFold / pitch);
    depths.push((slope * pitch) / (2 * Math.PI));
    const dx = pitch / count;
    const lengths = Array.from({ length: count }, (_, i) => {
      const rise = slope * Math.cos(angleOf(i, count));
      return Math.sqrt(1 + rise * rise);
    });
    const perLength = flatPerFold / lengths.reduce((a, b) => a + b, 0);
    let flatX = fold * flatPerFold;
    for (const [i, length] of lengths.entries()) {
      const ds = length * perLength;
      slices.push({ x: left + i * dx, width: dx, flatX, flatWidth: ds, ...shade(slope, i, count) });
      flatX += ds;
    }
    left += pitch;
    edges.push(left);
  }
  return { slices, edges, depths };
}

/** A quarter turn back, so that a fold begins and ends in its valley and its crest stands in the middle. */
function angleOf(slice: number, count: number): number {
  return (2 * Math.PI * (slice + 0.5)) / count - Math.PI / 2;
}

function shade(slope: number, slice: number, count: number): { dark: number; light: number } {
  const angle = angleOf(slice, count);
  const rise = slope * Math.cos(angle);
  const size = Math.sqrt(1 + rise * rise);
  const facing = 0.55 * (1 / size) + 0.42 * (rise / size) + 0.16 * Math.sin(angle);
  return { dark: Math.max(0, 0.46 - facing) * 0.78, light: Math.max(0, facing - 0.62) * 0.5 };
}
