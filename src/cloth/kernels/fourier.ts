import { kernels, layOut } from "./kernels.ts";

/** A real picture's size, and the size in powers of two, four or more, to which it is padded with noughts before it is transformed. */
export interface Padded {
  readonly width: number;
  readonly height: number;
  readonly across: number;
  readonly down: number;
}

/** One or two channels of a picture: the transform takes complex numbers, so that two go together. */
export type Pair = readonly [Float32Array, Float32Array?];

/** The least power of two, four or more, that is not under `least`. */
export function powerOfTwo(least: number): number {
  let size = 4;
  while (size < least) size *= 2;
  return size;
}

/**
 * The Fourier transform, without a division, of a picture of complex numbers whose sides are powers of two, four or more: its real and
 * its imaginary parts, row by row. The arrays are good until the kernels are used for something else.
 */
export function transformed(
  re: Float32Array,
  im: Float32Array | null,
  across: number,
  down: number,
): [Float32Array, Float32Array] {
  const size = { width: across, height: down, across, down };
  const laid = laidOut(size);
  transformPair(laid, [re, im ?? undefined], size);
  return [laid.re, laid.im];
}

/**
 * Power of some channels by a Fourier transform in two dimensions, summed over them: `across` waves a row, the first row's level ones,
 * without a division. Of a pair it is not its own mirror image: that of a wave and of its mirror image together are twice those of both
 * channels. The array is good until the kernels are used for something else.
 */
export function powerOf(pairs: readonly Pair[], size: Padded): Float32Array {
  return addedPower(laidOut(size), pairs, size).power;
}

/**
 * Sums of the products of some channels with themselves, shifted and padded: the first `kept` rows of shifts down, each of `across`
 * places, shifts to the left from its end. The array is good until the kernels are used for something else.
 */
export function productsOf(pairs: readonly Pair[], size: Padded, kept: number): Float32Array {
  const { across, down } = size;
  const laid = addedPower(laidOut(size), pairs, size);
  const { power, im, work } = laid;
  // A power is real: its transform's real part is what a transform back would give, but for a division.
  im.fill(0);
  const at = [power.byteOffset, im.byteOffset] as const;
  kernels.transformColumns(...at, across, down, down, kept, ...placesOf(laid.downTables), work);
  kernels.transformRows(...at, across, 0, kept, ...placesOf(laid.acrossTables), work);
  const products = power.subarray(0, kept * across);
  const part = 1 / (across * down);
  for (let p = 0; p < products.length; p++) products[p] = (products[p] as number) * part;
  return products;
}

interface Laid {
  readonly re: Float32Array;
  readonly im: Float32Array;
  readonly power: Float32Array;
  readonly acrossTables: Tables;
  readonly downTables: Tables;
  readonly work: number;
}

/** What the transform of one size needs: parts of a whole turn, and places with their bits reversed. */
interface Tables {
  readonly turns: Float32Array;
  readonly order: Float32Array;
}

const placesOf = ({ turns, order }: Tables) => [turns.byteOffset, order.byteOffset] as const;

function laidOut({ across, down }: Padded): Laid {
  const all = across * down;
  const work = 8 * Math.max(across, down);
  const laid = layOut(all, all, all, 2 * across, across, 2 * down, down, work);
  const [re, im, power, acrossTurns, acrossOrder, downTurns, downOrder, room] = laid as [
    Float32Array,
    Float32Array,
    Float32Array,
    Float32Array,
    Float32Array,
    Float32Array,
    Float32Array,
    Float32Array,
  ];
  return {
    re,
    im,
    power,
    acrossTables: filled({ turns: acrossTurns, order: acrossOrder }),
    downTables: filled({ turns: downTurns, order: downOrder }),
    work: room.byteOffset,
  };
}

function filled(tables: Tables): Tables {
  const count = tables.order.length;
  const { turns, order } = tablesOf(count);
  tables.turns.set(turns);
  new Uint32Array(tables.order.buffer, tables.order.byteOffset, count).set(order);
  return tables;
}

interface KnownTables {
  readonly turns: Float32Array;
  readonly order: Uint32Array;
}

const known = new Map<number, KnownTables>();

function tablesOf(count: number): KnownTables {
  const found = known.get(count);
  if (found) return found;
  const turns = Float32Array.from({ length: 2 * count }, (_, i) => {
    const turn = (-2 * Math.PI * (i >> 1)) / count;
    return i % 2 === 0 ? Math.cos(turn) : Math.sin(turn);
  });
  const order = new Uint32Array(count);
  for (let i = 1; i < count; i++)
    order[i] = ((order[i >> 1] as number) >> 1) | (i % 2 === 0 ? 0 : count / 2);
  const made = { turns, order };
  known.set(count, made);
  return made;
}

function addedPower(laid: Laid, pairs: readonly Pair[], size: Padded): Laid {
  const { re, im, power } = laid;
  const at = [re.byteOffset, im.byteOffset] as const;
  for (const [n, pair] of pairs.entries()) {
    transformPair(laid, pair, size);
    kernels.addPower(...at, size.across * size.down, power.byteOffset, n === 0);
  }
  return laid;
}

/** Pads a pair of channels and transforms it. */
function transformPair(laid: Laid, [one, other]: Pair, size: Padded): void {
  const { re, im, acrossTables, downTables, work } = laid;
  const { height, across, down } = size;
  const rows = 4 * Math.ceil(height / 4);
  const at = [re.byteOffset, im.byteOffset] as const;
  pad(one, re, size, rows);
  pad(other ?? null, im, size, rows);
  kernels.transformRows(...at, across, 0, height, ...placesOf(acrossTables), work);
  kernels.transformColumns(...at, across, down, height, down, ...placesOf(downTables), work);
}

/** Lays a channel into wider rows, of which so many are made clean. */
function pad(
  channel: Float32Array | null,
  to: Float32Array,
  { width, height, across }: Padded,
  rows: number,
): void {
  to.fill(0, 0, rows * across);
  if (channel === null) return;
  for (let y = 0; y < height; y++) to.set(channel.subarray(y * width, (y + 1) * width), y * across);
}
