import { inksOf } from "../colourPairs.ts";
import {
  between,
  blob,
  flower,
  halfDropped,
  leaf,
  type Make,
  put,
  rect,
  whole,
  wrapped,
} from "./draw.ts";

/* Large prints of a figure that is mirrored or grows by a rule, each from a seed. */

/** Pointed ovals with a flower in each, one tone on another. */
export const damask: Make = (random) => {
  const { ground, inks } = inksOf(random, 1);
  const ink = inks[0] as string;
  const [w, h] = [between(random, 130, 260), between(random, 220, 460)];
  const half =
    `<path d="M0 ${-0.42 * h} C${0.1 * w} ${-0.3 * h} ${0.42 * w} ${-0.15 * h} ${0.3 * w} ${0.05 * h} C${0.25 * w} ${0.2 * h} ${0.05 * w} ${0.25 * h} 0 ${0.42 * h}" fill="none" stroke="${ink}" stroke-width="${0.04 * w}"/>` +
    `<ellipse cx="${0.1 * w}" cy="${-0.08 * h}" rx="${0.05 * w}" ry="${0.11 * h}" fill="${ink}" transform="rotate(25)"/>` +
    `<ellipse cx="${0.08 * w}" cy="${0.12 * h}" rx="${0.04 * w}" ry="${0.09 * h}" fill="${ink}" transform="rotate(-35)"/>` +
    `<circle cx="${0.2 * w}" cy="${-0.02 * h}" r="${0.03 * w}" fill="${ink}"/>`;
  const piece = `${half}<g transform="scale(-1 1)">${half}</g><ellipse rx="${0.035 * w}" ry="${0.12 * h}" fill="${ink}"/>`;
  return halfDropped(piece, w, h, ground, "large-print");
};

/** Great embroidered rounds, none quite like another, with leaves between. */
export const suzani: Make = (random) => {
  const { ground, inks } = inksOf(random, 4);
  const [w, h] = [between(random, 240, 420), between(random, 280, 460)];
  const round = (r: number) => {
    const n = whole(random, 9, 14);
    let drawn = `<path d="${blob(random, r, 2 * n, 0.08)}" fill="${inks[0]}"/>`;
    for (let k = 0; k < n; k++)
      drawn += put(
        `<ellipse cx="${0.7 * r}" rx="${0.2 * r}" ry="${0.13 * r}" fill="${inks[1]}"/>`,
        0,
        0,
        (360 * k) / n + between(random, -6, 6),
      );
    return `${drawn}<path d="${blob(random, 0.4 * r, 12, 0.15)}" fill="${inks[2]}"/><path d="${blob(random, 0.2 * r, 9, 0.2)}" fill="${inks[3]}"/>`;
  };
  let body = rect(0, 0, w, h, ground);
  for (const [x, y, r] of [
    [0.27, 0.25, 0.2],
    [0.75, 0.45, 0.17],
    [0.3, 0.75, 0.14],
    [0.78, 0.92, 0.12],
  ] as const) {
    for (let k = 0; k < 4; k++) {
      const l = 1.8 * r * w;
      body += wrapped(
        put(
          `<path d="M0 0 C${0.3 * l} ${-0.4 * l} ${0.8 * l} ${-0.3 * l} ${l} ${0.1 * l} C${0.7 * l} ${0.05 * l} ${0.4 * l} ${0.1 * l} 0 0Z" fill="${inks[3]}"/>`,
          0,
          0,
          90 * k + between(random, -30, 30),
        ),
        x * w,
        y * h,
        w,
        h,
      );
    }
    body += wrapped(round(r * w), x * w, y * h, w, h);
  }
  return { width: w, height: h, body, kind: "large-print" };
};

/** Scrolling acanthus mirrored about an upright line, one colour with its shade. */
export const scrolls: Make = (random) => {
  const { ground, inks } = inksOf(random, 2);
  const [w, h] = [between(random, 140, 240), between(random, 260, 480)];
  const curl = (s: number, ink: string) =>
    `<path d="M0 0 C${0.8 * s} ${-0.2 * s} ${1.2 * s} ${-s} ${0.5 * s} ${-1.1 * s} C${0.1 * s} ${-1.1 * s} ${0.2 * s} ${-0.6 * s} ${0.5 * s} ${-0.7 * s}" fill="none" stroke="${ink}" stroke-width="${0.12 * s}" stroke-linecap="round"/>` +
    put(leaf(0.6 * s, 0.18 * s, ink, ground), 0.6 * s, -0.35 * s, 20) +
    put(leaf(0.5 * s, 0.15 * s, ink, ground), 0.9 * s, -0.8 * s, -40);
  let side = "";
  for (let k = 0; k < 4; k++)
    side += put(
      curl(between(random, 0.2, 0.32) * w, inks[k % 2] as string),
      0.03 * w,
      (0.4 - 0.24 * k) * h,
      between(random, -15, 15),
    );
  const piece =
    `${side}<g transform="scale(-1 1)">${side}</g>` +
    put(
      flower(random, 0.13 * w, [inks[0] as string, inks[1] as string, inks[0] as string]),
      0,
      -0.38 * h,
    );
  return halfDropped(piece, w, h, ground, "large-print");
};

/** Two inks of nearly equal share: curling leaves with as much ground as figure, as block prints and brocades have. */
export const arabesque: Make = (random) => {
  const { ground, inks } = inksOf(random, 2);
  const [w, h] = [between(random, 130, 300), between(random, 160, 380)];
  const mirrored = random() < 0.5;
  let side = "";
  for (let i = 0; i < 26; i++) {
    const l = between(random, 0.15, 0.34) * w;
    const [a, b] = [between(random, 0.3, 0.9) * l, between(random, -0.6, 0.2) * l];
    side += put(
      `<path d="M0 0 C${0.3 * l} ${-a} ${l} ${-a} ${l} 0 C${l} ${0.4 * l} ${0.5 * l} ${0.3 * l} ${0.5 * l} ${b} C${0.4 * l} ${0.2 * l} ${0.1 * l} ${0.2 * l} 0 0Z" fill="${inks[i % 9 === 0 ? 1 : 0]}" stroke="${ground}" stroke-width="${0.03 * l}"/>`,
      between(random, 0, 0.5) * w,
      between(random, -0.5, 0.5) * h,
      360 * random(),
    );
  }
  const piece = mirrored ? `${side}<g transform="scale(-1 1)">${side}</g>` : side;
  return halfDropped(piece, w, h, ground, "large-print");
};
