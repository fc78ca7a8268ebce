import { inksOf } from "../colourPairs.ts";
import { between, corners, type Make, rect, whole, wrapped } from "./draw.ts";

/* Geometrics, each from a seed. */

/** A Greek key as a running line. */
const key: Make = (random) => {
  const { ground, inks } = inksOf(random, 1);
  const w = between(random, 20, 60);
  const u = w / 8;
  const line = `<path d="M0 ${7 * u} H${6 * u} V${2 * u} H${2 * u} V${5 * u} H${4 * u} M${6 * u} ${7 * u} H${8 * u}" fill="none" stroke="${inks[0]}" stroke-width="${between(random, 0.6, 1) * u}"/>`;
  return {
    width: w,
    height: w,
    body: rect(0, 0, w, w, ground) + wrapped(line, 0, 0, w, w),
    kind: "geometric",
  };
};

const honeycomb: Make = (random) => {
  const { ground, inks } = inksOf(random, 2);
  const r = between(random, 10, 45);
  const [w, h] = [Math.sqrt(3) * r, 3 * r];
  const cell =
    `<polygon points="${corners(6, r, Math.PI / 6)}" fill="none" stroke="${inks[0]}" stroke-width="${between(random, 0.08, 0.25) * r}"/>` +
    (random() < 0.5
      ? `<polygon points="${corners(6, 0.45 * r, Math.PI / 6)}" fill="${inks[1]}"/>`
      : "");
  return {
    width: w,
    height: h,
    body: rect(0, 0, w, h, ground) + wrapped(cell, 0, 0, w, h) + wrapped(cell, w / 2, h / 2, w, h),
    kind: "geometric",
  };
};

/** Tumbling blocks: lozenges in three tones. */
const blocks: Make = (random) => {
  const { ground, inks } = inksOf(random, 2);
  const r = between(random, 12, 50);
  const [w, h] = [Math.sqrt(3) * r, 3 * r];
  const d = w / 2;
  const cell =
    `<polygon points="0,0 ${d},${-r / 2} ${d},${r / 2} 0,${r}" fill="${inks[0]}"/>` +
    `<polygon points="0,0 ${-d},${-r / 2} ${-d},${r / 2} 0,${r}" fill="${inks[1]}"/>`;
  return {
    width: w,
    height: h,
    body: rect(0, 0, w, h, ground) + wrapped(cell, 0, 0, w, h) + wrapped(cell, w / 2, h / 2, w, h),
    kind: "geometric",
  };
};

/** Lozenges end to end in two colours, as a harlequin's, with a line over them or without. */
const harlequin: Make = (random) => {
  const { ground, inks } = inksOf(random, 2);
  const w = between(random, 20, 70);
  const h = w * between(random, 1.3, 2.2);
  const line =
    random() < 0.5
      ? `<path d="M0 0 L${w} ${h} M${w} 0 L0 ${h}" stroke="${inks[1]}" stroke-width="${0.04 * w}"/>`
      : "";
  return {
    width: w,
    height: h,
    body:
      rect(0, 0, w, h, ground) +
      `<polygon points="${w / 2},0 ${w},${h / 2} ${w / 2},${h} 0,${h / 2}" fill="${inks[0]}"/>${line}`,
    kind: "geometric",
  };
};

const quatrefoil: Make = (random) => {
  const { ground, inks } = inksOf(random, 2);
  const w = between(random, 25, 90);
  const r = between(random, 0.2, 0.24) * w;
  const wide = between(random, 0.04, 0.08) * w;
  const four = (s: number, fill: string) =>
    [
      [1, 0],
      [-1, 0],
      [0, 1],
      [0, -1],
    ]
      .map(([x = 0, y = 0]) => `<circle cx="${x * r}" cy="${y * r}" r="${s}" fill="${fill}"/>`)
      .join("");
  const piece = four(r + wide / 2, inks[0] as string) + four(r - wide / 2, ground);
  return {
    width: w,
    height: w,
    body:
      rect(0, 0, w, w, ground) +
      wrapped(`<g>${piece}</g>`, w / 2, w / 2, w, w) +
      (random() < 0.5 ? wrapped(`<circle r="${0.07 * w}" fill="${inks[1]}"/>`, 0, 0, w, w) : ""),
    kind: "geometric",
  };
};

/** Fish scales: rows of discs, each over the row behind. */
const scallops: Make = (random) => {
  const { ground, inks } = inksOf(random, 2);
  const w = between(random, 16, 70);
  const h = w * between(random, 0.8, 1);
  const rings = whole(random, 1, 3);
  let scale = `<circle r="${0.5 * w}" fill="${ground}" stroke="${inks[0]}" stroke-width="${0.06 * w}"/>`;
  for (let k = 1; k < rings; k++)
    scale += `<circle r="${(0.5 - 0.15 * k) * w}" fill="none" stroke="${inks[k % 2]}" stroke-width="${0.06 * w}"/>`;
  let body = rect(0, 0, w, h, ground);
  for (let row = 4; row >= -2; row--)
    for (let x = -1; x <= 2; x++)
      body += `<g transform="translate(${(x + 0.5 * Math.abs(row % 2)) * w} ${(row * h) / 2})">${scale}</g>`;
  return { width: w, height: h, body, kind: "geometric" };
};

/** Circles that cross their neighbours. */
const linked: Make = (random) => {
  const { ground, inks } = inksOf(random, 1);
  const w = between(random, 20, 80);
  const ring = `<circle r="${between(random, 0.5, 0.72) * w}" fill="none" stroke="${inks[0]}" stroke-width="${between(random, 0.04, 0.1) * w}"/>`;
  return {
    width: w,
    height: w,
    body: rect(0, 0, w, w, ground) + wrapped(ring, w / 2, w / 2, w, w),
    kind: "geometric",
  };
};

/** Eight-pointed stars and crosses, as of tiles. */
const stars: Make = (random) => {
  const { ground, inks } = inksOf(random, 2);
  const w = between(random, 30, 90);
  const points = whole(random, 4, 8);
  const star = `<polygon points="${corners(points, 0.48 * w, 0, between(random, 0.2, 0.32) * w)}" fill="${inks[0]}"/><polygon points="${corners(points, 0.2 * w, 0, 0.1 * w)}" fill="${inks[1]}"/>`;
  return {
    width: w,
    height: w,
    body: rect(0, 0, w, w, ground) + wrapped(star, w / 2, w / 2, w, w),
    kind: "geometric",
  };
};

/** Stepped lozenges of a flat weave. */
const kilim: Make = (random) => {
  const { ground, inks } = inksOf(random, 3);
  const steps = whole(random, 4, 7);
  const u = between(random, 3, 7);
  const [w, h] = [2 * steps * u, 2 * steps * u * between(random, 0.8, 1.3)];
  const lozenge = (n: number, ink: string) => {
    let drawn = "";
    for (let k = 0; k < n; k++)
      drawn += rect(
        -(n - k - 0.5) * u,
        (-(k + 0.5) * h) / (2 * steps),
        (2 * (n - k) - 1) * u,
        ((2 * k + 1) * h) / (2 * steps),
        ink,
      );
    return drawn;
  };
  const piece =
    lozenge(steps - 1, inks[0] as string) +
    lozenge(Math.ceil(steps / 2), inks[1] as string) +
    lozenge(1, inks[2] as string);
  return {
    width: w,
    height: h,
    body: rect(0, 0, w, h, ground) + wrapped(piece, w / 2, h / 2, w, h),
    kind: "geometric",
  };
};

/** Squares within squares, or crosses, in rows. */
const nested: Make = (random) => {
  const { ground, inks } = inksOf(random, 3);
  const w = between(random, 20, 70);
  let piece = "";
  for (const [k, s] of [0.84, 0.6, 0.36, 0.14].entries())
    piece += rect(
      (-s * w) / 2,
      (-s * w) / 2,
      s * w,
      s * w,
      k % 2 ? ground : (inks[k / 2] as string),
    );
  return {
    width: w,
    height: w,
    body: rect(0, 0, w, w, ground) + wrapped(piece, w / 2, w / 2, w, w),
    kind: "geometric",
  };
};

/** Quarter discs, each square turned as it falls: drawn with compasses, but without symmetry. */
const quarters: Make = (random) => {
  const { ground, inks } = inksOf(random, 3);
  const [n, m] = [whole(random, 2, 4), whole(random, 2, 4)];
  const u = between(random, 14, 40);
  let body = rect(0, 0, n * u, m * u, ground);
  for (let i = 0; i < n; i++)
    for (let j = 0; j < m; j++) {
      const quarter = `<path d="M${-u / 2} ${-u / 2} h${u} a${u} ${u} 0 0 1 ${-u} ${u}Z" fill="${inks[whole(random, 0, 2)]}"/>`;
      body += `<g transform="translate(${(i + 0.5) * u} ${(j + 0.5) * u}) rotate(${90 * whole(random, 0, 3)})">${rect(-u / 2, -u / 2, u, u, random() < 0.3 ? (inks[i % 3] as string) : ground)}${quarter}</g>`;
    }
  return { width: n * u, height: m * u, body, kind: "geometric" };
};

/** Triangles of a few tones as they fall, in rows. */
const facets: Make = (random) => {
  const { ground, inks } = inksOf(random, 3);
  const [n, m] = [whole(random, 2, 4), 2 * whole(random, 1, 2)];
  const u = between(random, 14, 40);
  const v = 0.87 * u;
  const tones = [ground, ...inks];
  let body = "";
  for (let j = 0; j < m; j++)
    for (let i = 0; i < n; i++) {
      const x = (i + 0.5 * (j % 2)) * u;
      const one = `<polygon points="0,0 ${u},0 ${u / 2},${v}" fill="${tones[whole(random, 0, 3)]}"/>`;
      const two = `<polygon points="${u},0 ${1.5 * u},${v} ${u / 2},${v}" fill="${tones[whole(random, 0, 3)]}"/>`;
      body += wrapped(one + two, x, j * v, n * u, m * v);
    }
  return {
    width: n * u,
    height: m * v,
    body: rect(0, 0, n * u, m * v, ground) + body,
    kind: "geometric",
  };
};

/** Bars laid in twos and threes across each other, as a parquet floor's. */
const parquet: Make = (random) => {
  const { ground, inks } = inksOf(random, 1);
  const bars = whole(random, 2, 4);
  const u = between(random, 16, 45);
  const one = Array.from({ length: bars }, (_, k) =>
    rect(((k + 0.2) * u) / bars, 0.06 * u, (0.6 * u) / bars, 0.88 * u, inks[0] as string),
  ).join("");
  const turned = `<g transform="translate(${u} 0) rotate(90)">${one}</g>`;
  return {
    width: 2 * u,
    height: 2 * u,
    body:
      rect(0, 0, 2 * u, 2 * u, ground) +
      one +
      `<g transform="translate(${u} ${u})">${one}</g><g transform="translate(${u} 0)">${turned}</g><g transform="translate(0 ${u})">${turned}</g>`,
    kind: "geometric",
  };
};

/** Pointed ovals that touch, a dot in each. */
const ogee: Make = (random) => {
  const { ground, inks } = inksOf(random, 2);
  const w = between(random, 25, 80);
  const h = w * between(random, 1.2, 1.7);
  const line = `<path d="M0 0 C0 ${0.2 * h} ${w / 2} ${0.25 * h} ${w / 2} ${0.5 * h} S0 ${0.8 * h} 0 ${h} M${w} 0 C${w} ${0.2 * h} ${w / 2} ${0.25 * h} ${w / 2} ${0.5 * h} S${w} ${0.8 * h} ${w} ${h}" fill="none" stroke="${inks[0]}" stroke-width="${between(random, 0.05, 0.12) * w}"/>`;
  const dot = `<polygon points="${corners(4, 0.1 * w)}" fill="${inks[1]}"/>`;
  return {
    width: w,
    height: h,
    body:
      rect(0, 0, w, h, ground) +
      wrapped(line, 0, 0, w, h) +
      wrapped(dot, w / 2, 0, w, h) +
      wrapped(dot, 0, h / 2, w, h),
    kind: "geometric",
  };
};

export const GEOMETRICS = {
  key,
  honeycomb,
  blocks,
  harlequin,
  quatrefoil,
  scallops,
  linked,
  stars,
  kilim,
  nested,
  quarters,
  facets,
  parquet,
  ogee,
};
