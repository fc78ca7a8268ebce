import { inksOf } from "../colourPairs.ts";
import { between, type Make, rect, whole, wrapped } from "./draw.ts";

/* Patterns of lines: trellises, herringbones and frets, each from a seed. */

export const trellis: Make = (random) => {
  const { ground, inks } = inksOf(random, 2);
  const [w, h] = [between(random, 30, 90), between(random, 40, 120)];
  const line = between(random, 0.03, 0.1) * w;
  const r = between(random, 0.06, 0.16) * w;
  return {
    width: w,
    height: h,
    body:
      rect(0, 0, w, h, ground) +
      `<path d="M0 ${h / 2} L${w / 2} 0 L${w} ${h / 2} L${w / 2} ${h} Z" fill="none" stroke="${inks[0]}" stroke-width="${line}"/>` +
      wrapped(`<circle r="${r}" fill="${inks[1]}"/>`, 0, h / 2, w, h) +
      wrapped(`<circle r="${r}" fill="${inks[1]}"/>`, w / 2, 0, w, h),
    kind: "geometric",
  };
};

export const herringbone: Make = (random) => {
  const { ground, inks } = inksOf(random, 1);
  const w = between(random, 30, 80);
  const h = w * between(random, 0.25, 0.6);
  let body = rect(0, 0, w, h, ground);
  for (let y = -2; y <= 3; y++)
    body += `<path d="M0 ${y * h} L${w / 2} ${y * h + w / 2} L${w} ${y * h}" fill="none" stroke="${inks[0]}" stroke-width="${0.3 * h}"/>`;
  return { width: w, height: h, body, kind: "geometric" };
};

/** A ring of key pattern, hexagons or stars, as a lattice of drawn lines. */
export const fret: Make = (random) => {
  const { ground, inks } = inksOf(random, 2);
  const w = between(random, 25, 80);
  const sides = whole(random, 4, 8);
  const points = (r: number, turn: number) =>
    Array.from({ length: sides }, (_, i) => {
      const a = turn + (2 * Math.PI * i) / sides;
      return `${(r * Math.cos(a)).toFixed(2)},${(r * Math.sin(a)).toFixed(2)}`;
    }).join(" ");
  const piece =
    `<polygon points="${points(0.46 * w, Math.PI / sides)}" fill="none" stroke="${inks[0]}" stroke-width="${0.07 * w}"/>` +
    `<polygon points="${points(0.22 * w, 0)}" fill="${inks[1]}"/>`;
  const brick = random() < 0.5;
  return {
    width: w,
    height: brick ? 2 * w : w,
    body: brick
      ? rect(0, 0, w, 2 * w, ground) +
        wrapped(piece, w / 2, w / 2, w, 2 * w) +
        wrapped(piece, 0, 1.5 * w, w, 2 * w)
      : rect(0, 0, w, w, ground) + wrapped(piece, w / 2, w / 2, w, w),
    kind: "geometric",
  };
};
