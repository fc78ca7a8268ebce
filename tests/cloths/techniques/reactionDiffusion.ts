import { seeded } from "../ground/seeded.ts";

/**
 * Gray and Scott's reaction and diffusion on a square that wraps: the second substance after `steps`, row by row, 0 to about 0.4.
 * Feed and kill rates decide between spots and stripes (Pearson, "Complex patterns in a simple system", Science 261, 1993).
 */
export function reactionDiffusion(
  size: number,
  feed: number,
  kill: number,
  steps: number,
  seed: number,
): Float32Array {
  const random = seeded(seed);
  let a = new Float32Array(size * size).fill(1);
  let b = new Float32Array(size * size);
  for (let spot = 0; spot < size * 0.5; spot++) {
    const x = Math.floor(random.next() * size);
    const y = Math.floor(random.next() * size);
    for (let dy = 0; dy < 4; dy++) {
      for (let dx = 0; dx < 4; dx++) {
        const at = ((y + dy) % size) * size + ((x + dx) % size);
        a[at] = 0.5;
        b[at] = 0.25 + 0.2 * random.next();
      }
    }
  }
  let a2 = new Float32Array(size * size);
  let b2 = new Float32Array(size * size);
  for (let step = 0; step < steps; step++) {
    for (let y = 0; y < size; y++) {
      const up = ((y + size - 1) % size) * size;
      const here = y * size;
      const down = ((y + 1) % size) * size;
      for (let x = 0; x < size; x++) {
        const l = x === 0 ? size - 1 : x - 1;
        const r = x + 1 === size ? 0 : x + 1;
        const at = here + x;
        const A = a[at] as number;
        const B = b[at] as number;
        const spreadA =
          0.2 *
            ((a[up + x] as number) +
              (a[down + x] as number) +
              (a[here + l] as number) +
              (a[here + r] as number)) +
          0.05 *
            ((a[up + l] as number) +
              (a[up + r] as number) +
              (a[down + l] as number) +
              (a[down + r] as number)) -
          A;
        const spreadB =
          0.2 *
            ((b[up + x] as number) +
              (b[down + x] as number) +
              (b[here + l] as number) +
              (b[here + r] as number)) +
          0.05 *
            ((b[up + l] as number) +
              (b[up + r] as number) +
              (b[down + l] as number) +
              (b[down + r] as number)) -
          B;
        const react = A * B * B;
        a2[at] = A + spreadA - react + feed * (1 - A);
        b2[at] = B + 0.5 * spreadB + react - (kill + feed) * B;
      }
    }
    [a, a2] = [a2, a];
    [b, b2] = [b2, b];
  }
  return b;
}
