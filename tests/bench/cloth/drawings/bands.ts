import { inksOf } from "../colourPairs.ts";
import { between, type Make, rect, turnedAcross, whole } from "./draw.ts";

/* Stripes and checks, each from a seed. */

/** Two wide bands, as an awning's. */
const awning: Make = (random) => {
  const { ground, inks } = inksOf(random, 1);
  const w = between(random, 30, 160);
  return {
    width: w,
    height: w,
    body:
      rect(0, 0, w, w, ground) + rect(0, 0, between(random, 0.4, 0.6) * w, w, inks[0] as string),
    kind: "stripe",
    directionDeg: 90,
  };
};

/** Hairlines in ones or twos, far apart. */
const pinstripe: Make = (random) => {
  const { ground, inks } = inksOf(random, 1);
  const w = between(random, 8, 40);
  const line = between(random, 0.05, 0.1) * w;
  const two = random() < 0.5;
  return {
    width: w,
    height: w,
    body:
      rect(0, 0, w, w, ground) +
      rect(0.2 * w, 0, line, w, inks[0] as string) +
      (two ? rect(0.2 * w + 2 * line, 0, line, w, inks[0] as string) : ""),
    kind: "stripe",
    directionDeg: 90,
  };
};

/** Bands that shade from one tone to the next. */
const shaded: Make = (random) => {
  const { ground, inks } = inksOf(random, 2);
  const w = between(random, 30, 120);
  const n = 12;
  let body = rect(0, 0, w, w, ground);
  for (let i = 0; i < n; i++)
    body += rect(
      (0.5 * w * i) / n,
      0,
      (0.52 * w) / n,
      w,
      inks[0] as string,
      `fill-opacity="${(i + 1) / n}"`,
    );
  body += rect(0.7 * w, 0, 0.06 * w, w, inks[1] as string);
  return { width: w, height: w, body, kind: "stripe", directionDeg: 90 };
};

/** Stripes of many widths and colours that do not come again before a hand's breadth or two. */
const blanket: Make = (random) => {
  const { ground, inks } = inksOf(random, 4);
  const w = between(random, 90, 220);
  let body = rect(0, 0, w, w, ground);
  for (let x = 0; x < 0.9 * w; ) {
    const wide = between(random, 0.02, 0.12) * w;
    body += rect(x, 0, wide, w, inks[whole(random, 0, 3)] as string);
    x += wide + between(random, 0, 0.1) * w;
  }
  return { width: w, height: w, body, kind: "stripe", directionDeg: 90 };
};

const acrossBlanket: Make = turnedAcross(blanket);

/** Large squares of full and half tone. */
const buffalo: Make = (random) => {
  const { ground, inks } = inksOf(random, 1);
  const w = between(random, 60, 180);
  const ink = inks[0] as string;
  const deep = between(random, 0.45, 0.7);
  return {
    width: w,
    height: w,
    body:
      rect(0, 0, w, w, ground) +
      rect(0, 0, w / 2, w, ink, `fill-opacity="${deep}"`) +
      rect(0, 0, w, w / 2, ink, `fill-opacity="${deep}"`),
    kind: "check",
  };
};

/** Fine lines of two colours in turn, both ways, on a light ground. */
const tattersall: Make = (random) => {
  const { ground, inks } = inksOf(random, 2);
  const w = between(random, 16, 60);
  const line = between(random, 0.04, 0.09) * w;
  const both = [0.22, 0.72].map((at, i) => ({ at: at * w, ink: inks[i] as string }));
  return {
    width: w,
    height: w,
    body:
      rect(0, 0, w, w, ground) +
      both.map(({ at, ink }) => rect(at, 0, line, w, ink)).join("") +
      both.map(({ at, ink }) => rect(0, at, w, line, ink)).join(""),
    kind: "check",
  };
};

/** Squares of two full colours, one in the other's place at each step. */
const chequer: Make = (random) => {
  const { ground, inks } = inksOf(random, 1);
  const w = between(random, 16, 90);
  return {
    width: w,
    height: w,
    body:
      rect(0, 0, w, w, ground) +
      rect(0, 0, w / 2, w / 2, inks[0] as string) +
      rect(w / 2, w / 2, w / 2, w / 2, inks[0] as string),
    kind: "check",
  };
};

/** Bands of many widths both ways, other ones in warp and weft. */
const madras: Make = (random) => {
  const { ground, inks } = inksOf(random, 4);
  const [w, h] = [between(random, 70, 160), between(random, 70, 160)];
  const bands = (length: number) => {
    const list: { at: number; wide: number; ink: string }[] = [];
    for (let at = 0; at < 0.85 * length; ) {
      const wide = between(random, 0.03, 0.18) * length;
      list.push({ at, wide, ink: inks[whole(random, 0, 3)] as string });
      at += wide + between(random, 0.02, 0.15) * length;
    }
    return list;
  };
  return {
    width: w,
    height: h,
    body:
      rect(0, 0, w, h, ground) +
      bands(w)
        .map(({ at, wide, ink }) => rect(at, 0, wide, h, ink, 'fill-opacity="0.5"'))
        .join("") +
      bands(h)
        .map(({ at, wide, ink }) => rect(0, at, w, wide, ink, 'fill-opacity="0.5"'))
        .join(""),
    kind: "check",
  };
};

export const ticking: Make = (random) => {
  const { ground, inks } = inksOf(random, 3);
  const w = between(random, 12, 90);
  let body = rect(0, 0, w, w, ground);
  const n = whole(random, 1, 5);
  for (let i = 0; i < n; i++) {
    const width = (w / n) * between(random, 0.12, 0.6);
    body += rect(
      (w * i) / n + between(random, 0, 0.3) * (w / n),
      0,
      width,
      w,
      inks[i % 3] as string,
    );
  }
  return { width: w, height: w, body, kind: "stripe", directionDeg: 90 };
};

export const acrossStripe: Make = turnedAcross(ticking);

export const tartan: Make = (random) => {
  const { ground, inks } = inksOf(random, 3);
  const w = between(random, 50, 160);
  const n = whole(random, 2, 4);
  const bands = Array.from({ length: n }, (_, i) => ({
    at: w * (i / n + between(random, 0, 0.1)),
    width: (w / n) * between(random, 0.1, 0.6),
    ink: inks[i % 3] as string,
  }));
  let body = rect(0, 0, w, w, ground);
  for (const { at, width, ink } of bands) body += rect(at, 0, width, w, ink, 'fill-opacity="0.55"');
  for (const { at, width, ink } of bands) body += rect(0, at, w, width, ink, 'fill-opacity="0.55"');
  return { width: w, height: w, body, kind: "check" };
};

export const gingham: Make = (random) => {
  const { ground, inks } = inksOf(random, 1);
  const w = between(random, 8, 60);
  const ink = inks[0] as string;
  return {
    width: w,
    height: w,
    body:
      rect(0, 0, w, w, ground) +
      rect(0, 0, w / 2, w, ink, 'fill-opacity="0.5"') +
      rect(0, 0, w, w / 2, ink, 'fill-opacity="0.5"'),
    kind: "check",
  };
};

export const windowpane: Make = (random) => {
  const { ground, inks } = inksOf(random, 2);
  const [w, h] = [between(random, 30, 90), between(random, 30, 110)];
  const line = between(random, 0.03, 0.1) * w;
  return {
    width: w,
    height: h,
    body:
      rect(0, 0, w, h, ground) +
      rect(0.3 * w, 0, line, h, inks[0] as string) +
      rect(0, 0.3 * h, w, line, inks[random() < 0.5 ? 0 : 1] as string),
    kind: "check",
  };
};

export const BANDS = {
  awning,
  pinstripe,
  shaded,
  blanket,
  acrossBlanket,
  buffalo,
  tattersall,
  chequer,
  madras,
};
