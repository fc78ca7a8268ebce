import { type Design, photograph, seeded } from "./made.ts";
import { SHOT } from "./shown.ts";

/** A photograph with the soft shades of three folds, and its colour in blocks of 16 pixels as a camera's file keeps what is faint. */
export function creased(design: Design, seed: number, coarse = 2.5) {
  const { data, width, height } = photograph(design, { ...SHOT, noise: 3, seed });
  const random = seeded(seed);
  const folds = [0, 1, 2].map(() => ({
    turn: Math.PI * random(),
    at: 0.7 * (random() - 0.5),
    wide: 0.05 + 0.04 * random(),
  }));
  const across = Math.ceil(width / 16);
  const blocks = Array.from(
    { length: across * Math.ceil(height / 16) },
    () => coarse * (2 * random() - 1),
  );
  const pixels = data.map((value, i) => {
    const p = Math.floor(i / 3);
    const [x, y] = [p % width, Math.floor(p / width)];
    let light = 1;
    for (const { turn, at, wide } of folds) {
      const [u, v] = [x / width - 0.5, y / width - 0.4];
      const off = (u * Math.cos(turn) + v * Math.sin(turn) - at) / wide;
      light *= 1 - 0.15 * Math.exp(-off * off);
    }
    const hue = blocks[Math.floor(y / 16) * across + Math.floor(x / 16)] as number;
    return Math.max(0, Math.min(255, Math.round(value * light + (1 - (i % 3)) * hue)));
  });
  return { width, height, data: pixels };
}
