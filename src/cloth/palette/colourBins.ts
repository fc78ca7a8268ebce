import type { ColourSample } from "./colourSample.ts";

/** The colours of a picture gathered in small boxes: far fewer than pixels, each with its weight and mean. */
export interface ColourBins {
  readonly count: number;
  /** Weight of each box, by how much its pixels count; they sum to one. */
  readonly weight: Float64Array;
  /** Part of the area of each box, rims and all; they sum to one. */
  readonly share: Float64Array;
  /** Mean Oklab of each box, three numbers a box. */
  readonly oklab: Float64Array;
  /** The box of each pixel that was gathered. */
  readonly of: Int32Array;
  /** How much a pixel counts on average: 1 for a picture without a rim. */
  readonly flatness: number;
}

/** Side of a box in Oklab: some four codes of a channel. */
export const BOX = 1 / 72;
/** Boxes along lightness, 0 to 1, and along each colour axis, -0.44 to 0.44. */
const LIGHT = 73;
const HUE = 64;
/** A grey lies in the middle of a box, not on the edge between two. */
const MIDDLE = HUE / 2 + 0.5;

/**
 * Gathers the pixels of a sample by small boxes of Oklab. Boxes come in the order of their colour, so that equal pictures, turned or
 * not, are worked through alike.
 */
export function colourBins({ count, oklab, weight }: ColourSample): ColourBins {
  const { total, ...bins } = gather(count, oklab, weight, null, 1 / BOX);
  return { ...bins, flatness: total / count };
}

/** The same colours in boxes twice as large: enough to begin with. */
export function coarseBins({ count, oklab, weight, share, flatness }: ColourBins): ColourBins {
  const { total: _, ...bins } = gather(count, oklab, weight, share, 0.5 / BOX);
  return { ...bins, flatness };
}

/** Numbers that are summed for a box. */
const SUMS = 5;

/** Number of each box, -1 where it is not met: between two pictures it is wiped, since to make it anew takes longer than all else. */
const SLOT = new Int32Array(LIGHT * HUE * HUE).fill(-1);

function gather(
  count: number,
  oklab: Float32Array | Float64Array,
  weight: Float32Array | Float64Array,
  share: Float64Array | null,
  perUnit: number,
): Omit<ColourBins, "flatness"> & { readonly total: number } {
  const slotOf = new Int32Array(count);
  const boxes: number[] = [];
  for (let p = 0, i = 0; p < count; p++, i += 3) {
    const l = ((oklab[i] as number) * perUnit) | 0;
    const a = ((oklab[i + 1] as number) * perUnit + MIDDLE) | 0;
    const b = ((oklab[i + 2] as number) * perUnit + MIDDLE) | 0;
    const box =
      ((l < LIGHT ? l : LIGHT - 1) * HUE + (a < HUE ? a : HUE - 1)) * HUE + (b < HUE ? b : HUE - 1);
    slotOf[p] = box;
    if (SLOT[box] === -1) {
      SLOT[box] = 0;
      boxes.push(box);
    }
  }
  boxes.sort((one, other) => one - other);
  for (let at = 0; at < boxes.length; at++) SLOT[boxes[at] as number] = at;
  // What belongs to a box lies together: weight, area and the weighted sums of its colours.
  const sums = new Float64Array(boxes.length * SUMS);
  const each = 1 / count;
  for (let p = 0, i = 0; p < count; p++, i += 3) {
    const at = SLOT[slotOf[p] as number] as number;
    slotOf[p] = at;
    const to = at * SUMS;
    const w = weight[p] as number;
    sums[to] = (sums[to] as number) + w;
    sums[to + 1] = (sums[to + 1] as number) + (share ? (share[p] as number) : each);
    sums[to + 2] = (sums[to + 2] as number) + w * (oklab[i] as number);
    sums[to + 3] = (sums[to + 3] as number) + w * (oklab[i + 1] as number);
    sums[to + 4] = (sums[to + 4] as number) + w * (oklab[i + 2] as number);
  }
  const found = {
    count: boxes.length,
    of: slotOf,
    total: 0,
    weight: new Float64Array(boxes.length),
    share: new Float64Array(boxes.length),
    oklab: new Float64Array(boxes.length * 3),
  };
  for (let at = 0, i = 0; at < boxes.length; at++, i += SUMS) {
    SLOT[boxes[at] as number] = -1;
    const w = sums[i] as number;
    found.total += w;
    found.weight[at] = w;
    found.share[at] = sums[i + 1] as number;
    for (let c = 0; c < 3; c++) found.oklab[at * 3 + c] = (sums[i + 2 + c] as number) / w;
  }
  for (let at = 0; at < boxes.length; at++)
    found.weight[at] = (found.weight[at] as number) / found.total;
  return found;
}
