import { leastSquares } from "../pixels/leastSquares.ts";
import type { Bytes } from "../pixels/pixels.ts";
import { coarseBins, colourBins } from "./colourBins.ts";
import type { ColourSample } from "./colourSample.ts";
import { nearest, weightedKMeans } from "./weightedKMeans.ts";

/** How the light falls over a picture: log light as a plane and a bowl, 0 on average; x and y run from -1 to 1. */
export interface Fall {
  readonly x: number;
  readonly y: number;
  readonly bowl: number;
  /** Brightest place over darkest. */
  readonly over: number;
}

/** A fall under this is left alone: no eye sees it across a picture. */
const LEAST_FALL = 1.04;
/** A fall over this is no lamp but the cloth's own shading. */
const MOST_FALL = 2.2;
/** Part of the fields' spread in lightness that the fall must account for: a lamp's is nearly all of it, a pattern's is little. */
const EXPLAINED = 0.5;
/** Fields along each side, and in how many of them some dye must be seen. */
const FIELDS = 8;
const LEAST_FIELDS = 48;
/** Colour groups that the sample is parted into. */
const GROUPS = 10;

/**
 * The fall of a lamp's or a window's light over a picture, or null where there is none to speak of. Each colour, with its own lit and
 * shaded sides, is one dye all over the cloth: what its lightness does in common with the others' from place to place is the lamp's
 * doing. Fitted in log light to the means of all dyes in all fields at once, each dye about its own mean.
 */
export function fallOfLight(sample: ColourSample, { width, height }: Bytes): Fall | null {
  const means = dyesInFields(sample, dyesOf(sample), width, height);
  if (new Set(means.map(({ field }) => field)).size < LEAST_FIELDS) return null;
  const found = fitFall(means);
  if (!found || found.explained < EXPLAINED) return null;
  const [x = 0, y = 0, bowl = 0] = found.terms;
  const over = fallOver(x, y, bowl);
  return over < LEAST_FALL || over > MOST_FALL ? null : { x, y, bowl, over };
}

/** A place along a side from -1 to 1. */
export function placeAt(i: number, count: number): number {
  return (2 * i + 1) / count - 1;
}

/** The dye of each pixel of a sample, -1 for one of a colour that is hardly there. */
function dyesOf(sample: ColourSample): Int8Array {
  const bins = colourBins(sample);
  const coarse = coarseBins(bins);
  const { centres, weight } = weightedKMeans(coarse.oklab, coarse.weight, GROUPS);
  const order = [...weight.keys()].sort((a, b) => (weight[b] as number) - (weight[a] as number));
  const dyeOf = new Int8Array(weight.length).fill(-1);
  let dyes = 0;
  for (const leader of order) {
    if (dyeOf[leader] !== -1 || (weight[leader] as number) < LEAST_SHARE) continue;
    for (const g of order) if (dyeOf[g] === -1 && isShade(centres, leader, g)) dyeOf[g] = dyes;
    dyes++;
  }
  // All pixels of a small box of colours are of the dye that its mean is nearest to.
  const { oklab } = bins;
  const dyeOfBin = Int8Array.from(
    { length: bins.count },
    (_, n) => dyeOf[nearest(centres, oklab[n * 3], oklab[n * 3 + 1], oklab[n * 3 + 2])] as number,
  );
  const dye = new Int8Array(sample.count);
  for (let n = 0; n < sample.count; n++) dye[n] = dyeOfBin[bins.of[n] as number] as number;
  return dye;
}

/** Share from which a colour tells of the light. */
const LEAST_SHARE = 0.04;

/** True where two colours differ in lightness only, as the lit and the shaded side of one would: all of Oklab is scaled alike. */
function isShade(centres: Float64Array, one: number, other: number): boolean {
  const [l = 0, a = 0, b = 0] = centres.subarray(one * 3, one * 3 + 3);
  const [gl = 0, ga = 0, gb = 0] = centres.subarray(other * 3, other * 3 + 3);
  const scale = gl / Math.max(l, 1e-6);
  const off = Math.hypot(ga - a * scale, gb - b * scale);
  return scale > 0.85 && scale < 1.18 && off < 0.008 + 0.08 * Math.hypot(a, b);
}

/** A dye in a field: how much of it there is, the mean of its place and the log of its mean light. */
interface DyeInField {
  readonly dye: number;
  readonly field: number;
  readonly weight: number;
  readonly u: number;
  readonly v: number;
  readonly bowl: number;
  readonly log: number;
}

/** Lightness in Oklab under which there is more noise than light. */
const LEAST_LIGHT = 0.12;
/** Part of a field's pixels under which a dye there tells nothing. */
const LEAST_THERE = 0.02;

function dyesInFields(
  { at, oklab, weight }: ColourSample,
  dye: Int8Array,
  width: number,
  height: number,
): DyeInField[] {
  const fields = FIELDS * FIELDS;
  const sums = new Float64Array((GROUPS + 1) * fields * 5);
  const columns = placesAlong(width);
  const rows = placesAlong(height);
  for (let n = 0, y = 0, rowEnd = width; n < at.length; n++) {
    const p = at[n] as number;
    while (p >= rowEnd) {
      y++;
      rowEnd += width;
    }
    const light = oklab[n * 3] as number;
    const own = dye[n] as number;
    if (own < 0 || light < LEAST_LIGHT) continue;
    const x = p + width - rowEnd;
    const u = columns.place[x] as number;
    const v = rows.place[y] as number;
    const field =
      (own * FIELDS + (rows.field[y] as number)) * FIELDS + (columns.field[x] as number);
    const i = 5 * field;
    const w = weight[n] as number;
    sums[i] = (sums[i] as number) + w;
    sums[i + 1] = (sums[i + 1] as number) + w * u;
    sums[i + 2] = (sums[i + 2] as number) + w * v;
    sums[i + 3] = (sums[i + 3] as number) + w * (u * u + v * v - 2 / 3);
    sums[i + 4] = (sums[i + 4] as number) + w * light;
  }
  const means: DyeInField[] = [];
  for (let i = 0; i < sums.length; i += 5) {
    const [w = 0, u = 0, v = 0, bowl = 0, light = 0] = sums.subarray(i, i + 5);
    if (w < (LEAST_THERE * at.length) / fields) continue;
    const cell = i / 5;
    means.push({
      dye: Math.floor(cell / fields),
      field: cell % fields,
      weight: w,
      u: u / w,
      v: v / w,
      bowl: bowl / w,
      // Oklab's lightness goes with the cube root of the light.
      log: 3 * Math.log(light / w),
    });
  }
  return means;
}

/** The places along a side, from -1 to 1, and the field that each lies in. */
function placesAlong(count: number): { place: Float64Array; field: Uint8Array } {
  return {
    place: Float64Array.from({ length: count }, (_, i) => placeAt(i, count)),
    field: Uint8Array.from({ length: count }, (_, i) => Math.floor((FIELDS * i) / count)),
  };
}

/** The three terms by least squares about each dye's own mean; a field that lies far off is left out the next time. */
function fitFall(all: readonly DyeInField[]): { terms: number[]; explained: number } | null {
  let kept = new Set(all);
  for (let round = 0; ; round++) {
    const centred = aboutMeans(kept, all);
    const sums = leastSquares(3, 1e-3);
    for (const { of, weight, u, v, bowl, log } of centred) {
      if (!kept.has(of)) continue;
      const w = Math.sqrt(weight);
      sums.add([w * u, w * v, w * bowl], w * log);
    }
    const terms = sums.solve();
    if (!terms) return null;
    const [x = 0, y = 0, b = 0] = terms;
    const off = centred.map(({ u, v, bowl, log }) => log - x * u - y * v - b * bowl);
    let [before, after, total] = [0, 0, 0];
    for (const [n, { of, weight, log }] of centred.entries()) {
      if (!kept.has(of)) continue;
      before += weight * log * log;
      after += weight * (off[n] as number) ** 2;
      total += weight;
    }
    if (round === 2) return { terms, explained: before > 0 ? 1 - after / before : 0 };
    const limit = 2.5 * Math.sqrt(after / total) + 1e-9;
    kept = new Set(
      centred.filter((_, n) => Math.abs(off[n] as number) <= limit).map(({ of }) => of),
    );
  }
}

/** Fields less the means of their dyes, which are taken over those that are kept. */
function aboutMeans(kept: ReadonlySet<DyeInField>, all: readonly DyeInField[]) {
  const means = new Map<
    number,
    { weight: number; u: number; v: number; bowl: number; log: number }
  >();
  for (const { dye, weight, u, v, bowl, log } of kept) {
    const mean = means.get(dye) ?? { weight: 0, u: 0, v: 0, bowl: 0, log: 0 };
    mean.weight += weight;
    mean.u += weight * u;
    mean.v += weight * v;
    mean.bowl += weight * bowl;
    mean.log += weight * log;
    means.set(dye, mean);
  }
  return all.flatMap((of) => {
    const mean = means.get(of.dye);
    if (!mean) return [];
    const w = mean.weight;
    return [
      {
        of,
        weight: of.weight,
        u: of.u - mean.u / w,
        v: of.v - mean.v / w,
        bowl: of.bowl - mean.bowl / w,
        log: of.log - mean.log / w,
      },
    ];
  });
}

function fallOver(x: number, y: number, bowl: number): number {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const v of [-1, -0.5, 0, 0.5, 1]) {
    for (const u of [-1, -0.5, 0, 0.5, 1]) {
      const log = x * u + y * v + bowl * (u * u + v * v - 2 / 3);
      low = Math.min(low, log);
      high = Math.max(high, log);
    }
  }
  return Math.exp(high - low);
}
