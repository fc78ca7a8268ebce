import { hexOfOklab, oklabOfOklch } from "../../../src/colour/oklab.ts";

/** A ground and inks for it that stand off it: seeded, of the lightness and chroma that dyed cloth has. */
export function inksOf(random: () => number, count: number): { ground: string; inks: string[] } {
  const light = random() < 0.6;
  const groundL = light ? 0.82 + 0.13 * random() : 0.28 + 0.2 * random();
  const ground = oklch(groundL, 0.01 + 0.06 * random(), 360 * random());
  const hue = 360 * random();
  const inks = Array.from({ length: count }, (_, i) => {
    const away = 0.22 + 0.3 * random();
    const l = light ? groundL - away : groundL + away;
    return oklch(Math.min(0.92, Math.max(0.25, l)), 0.03 + 0.1 * random(), hue + 137.5 * i);
  });
  return { ground, inks };
}

/** A colour by lightness, chroma and hue, its chroma lowered until a screen can show it. */
export function oklch(l: number, c: number, h: number): string {
  return hexOfOklab(oklabOfOklch([l, c, ((h % 360) + 360) % 360]));
}
