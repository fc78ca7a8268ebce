import { CODE } from "./code.ts";

/** A place in the kernels' memory: the number of a byte. */
type At = number;

/**
 * The inner loops of picture work, four numbers at a time, which JavaScript cannot say. Their sources, with what each does, are in
 * `assembly/`; they work on arrays that `layOut` has laid in their memory.
 */
export interface Kernels {
  windowProducts(
    channels: At,
    places: number,
    width: number,
    own: number,
    first: number,
    count: number,
    step: number,
    side: number,
    sums: At,
  ): void;
  interleave(channels: At, places: number, to: At): void;
  separate(from: At, places: number, channels: At): void;
  meansAlong(from: At, to: At, width: number, height: number, radius: number): void;
  meansDown(from: At, to: At, width: number, height: number, radius: number, sums: At): void;
  transformRows(
    re: At,
    im: At,
    count: number,
    from: number,
    to: number,
    turns: At,
    order: At,
    work: At,
  ): void;
  transformColumns(
    re: At,
    im: At,
    across: number,
    count: number,
    filled: number,
    kept: number,
    turns: At,
    order: At,
    work: At,
  ): void;
  addPower(re: At, im: At, count: number, to: At, anew: boolean): void;
}

const PAGE = 1 << 16;
/** Vectors are read from whole multiples of this, and a little past the end of an array. */
const ALIGNED = 64;

const memory = new WebAssembly.Memory({ initial: 1 });

/** The kernels, ready to be called. */
export const kernels = new WebAssembly.Instance(
  new WebAssembly.Module(Uint8Array.from(atob(CODE), (letter) => letter.charCodeAt(0))),
  { env: { memory } },
).exports as unknown as Kernels;

/**
 * Lays arrays of so many numbers of 32 bits out in the kernels' memory; an array's `byteOffset` is its place there. What they hold is
 * left over from before. They are good until arrays are laid out again.
 */
export function layOut(...lengths: readonly number[]): Float32Array[] {
  let end = ALIGNED;
  const starts = lengths.map((length) => {
    const start = end;
    end = Math.ceil((start + 4 * length) / ALIGNED + 1) * ALIGNED;
    return start;
  });
  const missing = end - memory.buffer.byteLength;
  if (missing > 0) memory.grow(Math.ceil(missing / PAGE));
  return lengths.map((length, n) => new Float32Array(memory.buffer, starts[n], length));
}
