import { inksOf } from "../colourPairs.ts";
import {
  between,
  flower,
  halfDropped,
  leaf,
  type Make,
  put,
  rect,
  whole,
  wrapped,
} from "./draw.ts";

/* Close checks and close small prints, as for linings and cushions' backs, each from a seed. */

/** Bands of two colours in turn, both ways, as wide as the ground between them. */
const gunClub: Make = (random) => {
  const { ground, inks } = inksOf(random, 2);
  const w = between(random, 14, 50);
  const more = `fill-opacity="${between(random, 0.45, 0.65)}"`;
  const [one, two] = inks as [string, string];
  return {
    width: w,
    height: w,
    body:
      rect(0, 0, w, w, ground) +
      rect(0, 0, w / 4, w, one, more) +
      rect(w / 2, 0, w / 4, w, two, more) +
      rect(0, 0, w, w / 4, one, more) +
      rect(0, w / 2, w, w / 4, two, more),
    kind: "check",
  };
};

/** Small squares of a few yarns. */
const pinCheck: Make = (random) => {
  const { ground, inks } = inksOf(random, 1);
  const w = between(random, 7, 16);
  const wide = between(random, 0.3, 0.5) * w;
  const more = `fill-opacity="${between(random, 0.5, 0.7)}"`;
  const ink = inks[0] as string;
  return {
    width: w,
    height: w,
    body:
      rect(0, 0, w, w, ground) + rect(0, 0, wide, w, ink, more) + rect(0, 0, w, wide, ink, more),
    kind: "check",
  };
};

/** Lines both ways, one colour over the other where they cross, each in ones, twos or threes. */
const graphCheck: Make = (random) => {
  const { ground, inks } = inksOf(random, 2);
  const [w, h] = [between(random, 15, 140), between(random, 0.8, 1.3)];
  const [one, two] = inks as [string, string];
  const line = between(random, 0.02, 0.07) * w;
  const [ups, levels] = [whole(random, 1, 3), whole(random, 1, 3)];
  let body = rect(0, 0, w, w * h, ground);
  for (let k = 0; k < ups; k++)
    body += rect((0.2 + 0.02 * k) * w + 2 * k * line, 0, line, w * h, one);
  for (let k = 0; k < levels; k++) body += rect(0, 0.3 * w + 2 * k * line, w, line, two);
  return { width: w, height: w * h, body, kind: "check" };
};

/** A ground of small squares with lines over it every few of them. */
const overcheck: Make = (random) => {
  const { ground, inks } = inksOf(random, 2);
  const n = whole(random, 3, 6);
  const u = between(random, 8, 20);
  const w = n * u;
  const [one, two] = inks as [string, string];
  const line = between(random, 0.15, 0.3) * u;
  let body = rect(0, 0, w, w, ground);
  for (let k = 0; k < n; k++)
    body +=
      rect(k * u, 0, u / 2, w, one, 'fill-opacity="0.4"') +
      rect(0, k * u, w, u / 2, one, 'fill-opacity="0.4"');
  body += rect(0.6 * u, 0, line, w, two) + rect(0, 0.6 * u, w, line, two);
  return { width: w, height: w, body, kind: "check" };
};

/** Seeds of one shape that lie two ways, in half-drop. */
const seeds: Make = (random) => {
  const { ground, inks } = inksOf(random, 2);
  const [w, h] = [between(random, 14, 40), between(random, 16, 46)];
  const l = between(random, 0.3, 0.45) * Math.min(w, h);
  const turn = between(random, 20, 70);
  const one = (ink: string) => put(leaf(l, 0.35 * l, ink, ground), -l / 2, 0);
  const piece =
    put(one(inks[0] as string), -0.24 * w, -0.24 * h, turn) +
    put(one(inks[1] as string), 0.24 * w, 0.24 * h, -turn);
  return halfDropped(piece, w, h, ground, "small-print");
};

/** Little flowers with a bud and two leaves, each turned its own way, close together. */
const posies: Make = (random) => {
  const { ground, inks } = inksOf(random, 3);
  const w = between(random, 35, 90);
  const n = whole(random, 5, 9);
  let body = rect(0, 0, w, w, ground);
  for (let i = 0; i < n; i++) {
    const r = (between(random, 0.2, 0.3) * w) / Math.sqrt(n);
    const [petal, heart, green] = [
      inks[i % 2] as string,
      inks[(i + 1) % 2] as string,
      inks[2] as string,
    ];
    const piece =
      put(leaf(1.6 * r, 0.4 * r, green, ground), 0, 0, 70) +
      put(leaf(1.4 * r, 0.35 * r, green, ground), 0, 0, 120) +
      flower(random, r, [petal, heart, green]);
    body += wrapped(
      put(piece, 0, 0, between(random, -60, 60)),
      w * ((i * 0.618) % 1),
      (w * (i + 0.4 * random())) / n,
      w,
      w,
    );
  }
  return { width: w, height: w, body, kind: "small-print" };
};

/** Berries in threes on a stalk, in rows. */
const berries: Make = (random) => {
  const { ground, inks } = inksOf(random, 2);
  const [w, h] = [between(random, 15, 45), between(random, 18, 50)];
  const r = between(random, 0.08, 0.13) * Math.min(w, h);
  const [red, green] = inks as [string, string];
  let piece = `<path d="M0 ${2.5 * r} Q${r} 0 0 ${-1.5 * r}" fill="none" stroke="${green}" stroke-width="${0.3 * r}"/>`;
  for (const [x, y] of [
    [-1.2, -1],
    [1.1, -0.6],
    [0.1, -2.4],
  ] as const)
    piece += `<circle cx="${x * r}" cy="${y * r}" r="${r}" fill="${red}"/>`;
  piece += put(leaf(2.4 * r, 0.8 * r, green, ground), 0, 1.8 * r, between(random, -50, -10));
  return random() < 0.5
    ? halfDropped(piece, w, h, ground, "small-print")
    : {
        width: w,
        height: h,
        body: rect(0, 0, w, h, ground) + wrapped(piece, w / 2, h / 2, w, h),
        kind: "small-print",
      };
};

export const CLOSE = { gunClub, pinCheck, graphCheck, overcheck, seeds, posies, berries };
