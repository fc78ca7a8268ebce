import type { Relief } from "./reliefOf.ts";
import { powerOfTwo, transform2d } from "./transform2d.ts";

/** How well a pattern agrees with its mirror images wherever they fit best, 0 to about 1. */
export interface Symmetry {
  /** Mirrored left to right. */
  readonly sideways: number;
  /** Mirrored top to bottom. */
  readonly upsideDown: number;
  /** Turned by 180 degrees. */
  readonly turned: number;
}

/** The symmetries of a relief; a smaller one, some 180 pixels across, is enough. */
export function symmetryOf(relief: Relief): Symmetry {
  return {
    sideways: agreement(relief, true, false),
    upsideDown: agreement(relief, false, true),
    turned: agreement(relief, true, true),
  };
}

/** The best correlation of a relief with itself mirrored, over all shifts by which at least a quarter overlaps. */
function agreement({ width, height, channels }: Relief, flipX: boolean, flipY: boolean): number {
  const reachX = Math.floor(width / 2);
  const reachY = Math.floor(height / 2);
  const across = powerOfTwo(width + reachX);
  const down = powerOfTwo(height + reachY);
  const product = new Float64Array(across * down * 2);
  let energy = 0;
  for (const channel of channels) {
    // The picture in the real part and its mirror image in the imaginary one.
    const field = new Float64Array(across * down * 2);
    for (let y = 0, p = 0; y < height; y++) {
      for (let x = 0; x < width; x++, p++) {
        const i = (y * across + x) * 2;
        const [mx, my] = [flipX ? width - 1 - x : x, flipY ? height - 1 - y : y];
        field[i] = channel[p] as number;
        field[i + 1] = channel[my * width + mx] as number;
        energy += (channel[p] as number) ** 2;
      }
    }
    transform2d(field, across, down, false, height);
    addCrossPower(field, product, across, down);
  }
  transform2d(product, across, down, true);
  let best = 0;
  for (let dy = -reachY; dy <= reachY; dy++) {
    for (let dx = -reachX; dx <= reachX; dx++) {
      const i = ((dy + down) % down) * across + ((dx + across) % across);
      const overlap = (1 - Math.abs(dx) / width) * (1 - Math.abs(dy) / height);
      best = Math.max(best, (product[i * 2] as number) / Math.max(energy * overlap, 1e-12));
    }
  }
  return best;
}

/** Adds A times the conjugate of B, where a field's transform holds A + iB of two real pictures. */
function addCrossPower(
  field: Float64Array,
  product: Float64Array,
  across: number,
  down: number,
): void {
  for (let y = 0; y < down; y++) {
    for (let x = 0; x < across; x++) {
      const i = (y * across + x) * 2;
      const o = (((down - y) % down) * across + ((across - x) % across)) * 2;
      const [re, im] = [field[i] as number, field[i + 1] as number];
      const [ro, io] = [field[o] as number, field[o + 1] as number];
      const [ar, ai] = [(re + ro) / 2, (im - io) / 2];
      const [br, bi] = [(im + io) / 2, (ro - re) / 2];
      (product[i] as number) += ar * br + ai * bi;
      (product[i + 1] as number) += ai * br - ar * bi;
    }
  }
}
