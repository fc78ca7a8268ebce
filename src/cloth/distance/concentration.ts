import type { Separation } from "../palette/clothColours.ts";

/** How much stronger a pattern stands, once all that is finer than a box is one, than its root mean square over the cloth says. */
export interface Concentration {
  readonly boxMm: number;
  /** 1 for waves and for grain, more where little is drawn on an open ground. */
  readonly times: number;
}

/** Blocks across the picture that the least box is one of. */
const BLOCKS = 160;
/** Blocks along the lesser side under which no more is said. */
const FEWEST = 6;
/** Mean fourth power over the squared mean square of grain (a normal distribution), which is no more than its root mean square. */
const GRAIN = 3;

/**
 * How far a cloth's colours are gathered in little of its area, box by box, the least first. A dot on an open ground is seen as well as one
 * among many: over all the cloth its root mean square is less, by the root of how little it covers, and its mean fourth power is less by
 * as much as its mean square. Read from the separated colours, since a fold or a thread that stands out is no pattern. No box has more than
 * a lesser one, so that what is left of a cloth only falls as one walks away: in boxes in which a fine check is gone a stain is all there is.
 */
export function concentrationOf(
  { centres, labels }: Separation,
  width: number,
  mmPerPx: number,
): Concentration[] {
  if (centres.length < 2) return [];
  const side = Math.max(2, Math.round(width / BLOCKS));
  let blocks = blocksOf(centres, labels.label, width, side);
  const found: Concentration[] = [];
  for (let boxMm = side * mmPerPx; Math.min(blocks.across, blocks.down) >= FEWEST; boxMm *= 2) {
    found.push({ boxMm, times: timesOf(blocks.values) });
    blocks = halved(blocks);
  }
  return found.map(({ boxMm }, at) => ({
    boxMm,
    times: Math.min(...found.slice(0, at + 1).map((one) => one.times)),
  }));
}

/** How much stronger the pattern stands at a box of some millimetres, between two that are known by their ratio. */
export function timesAt(list: readonly Concentration[], boxMm: number): number {
  const next = list.findIndex((one) => one.boxMm >= boxMm);
  const [last] = list.slice(-1);
  if (next < 0) return last?.times ?? 1;
  const [before, after] = [list[next - 1], list[next]];
  if (!before || !after) return after?.times ?? 1;
  const part = Math.log(boxMm / before.boxMm) / Math.log(after.boxMm / before.boxMm);
  return before.times + part * (after.times - before.times);
}

interface Blocks {
  readonly across: number;
  readonly down: number;
  /** Mean Oklab of each block, three values a block. */
  readonly values: Float32Array;
}

/** Blocks of a picture whose pixels are their colours' centres; every second pixel is enough. */
function blocksOf(
  centres: Separation["centres"],
  label: Uint8Array,
  width: number,
  side: number,
): Blocks {
  const colours = Float64Array.from(centres.flat());
  const [across, down] = [Math.floor(width / side), Math.floor(label.length / width / side)];
  const values = new Float32Array(3 * across * down);
  const each = 1 / Math.ceil(side / 2) ** 2;
  for (let row = 0, i = 0; row < down; row++) {
    for (let block = 0; block < across; block++, i += 3) {
      let [l, a, b] = [0, 0, 0];
      for (let y = 0; y < side; y += 2) {
        const from = (row * side + y) * width + block * side;
        for (let p = from; p < from + side; p += 2) {
          const c = 3 * (label[p] as number);
          l += colours[c] as number;
          a += colours[c + 1] as number;
          b += colours[c + 2] as number;
        }
      }
      values[i] = each * l;
      values[i + 1] = each * a;
      values[i + 2] = each * b;
    }
  }
  return { across, down, values };
}

/** Blocks twice as wide and high. */
function halved({ across, down, values }: Blocks): Blocks {
  const [wide, high] = [Math.floor(across / 2), Math.floor(down / 2)];
  const out = new Float32Array(3 * wide * high);
  for (let y = 0; y < high; y++) {
    for (let x = 0; x < wide; x++) {
      for (let c = 0; c < 3; c++) {
        const p = 3 * (2 * y * across + 2 * x) + c;
        const q = p + 3 * across;
        out[3 * (y * wide + x) + c] =
          ((values[p] as number) +
            (values[p + 3] as number) +
            (values[q] as number) +
            (values[q + 3] as number)) /
          4;
      }
    }
  }
  return { across: wide, down: high, values: out };
}

/** The root of the mean fourth power over the squared mean square, of the distance from the mean, over that of grain; 1 at the least. */
function timesOf(values: Float32Array): number {
  const count = values.length / 3;
  let [l, a, b] = [0, 0, 0];
  for (let i = 0; i < values.length; i += 3) {
    l += values[i] as number;
    a += values[i + 1] as number;
    b += values[i + 2] as number;
  }
  [l, a, b] = [l / count, a / count, b / count];
  let [second, fourth] = [0, 0];
  for (let i = 0; i < values.length; i += 3) {
    const dl = (values[i] as number) - l;
    const da = (values[i + 1] as number) - a;
    const db = (values[i + 2] as number) - b;
    const square = dl * dl + da * da + db * db;
    second += square;
    fourth += square * square;
  }
  return second > 0 ? Math.max(1, Math.sqrt((count * fourth) / second ** 2 / GRAIN)) : 1;
}
