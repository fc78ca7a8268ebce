import { seeded } from "../../cloth/made.ts";
import { inksOf } from "./colourPairs.ts";
import { BANDS } from "./drawings/bands.ts";
import { between, flower, type Make, rect, stem, whole, wrapped } from "./drawings/draw.ts";
import { GEOMETRICS } from "./drawings/geometrics.ts";
import { IRREGULARS } from "./drawings/irregulars.ts";
import { PRINTS } from "./drawings/prints.ts";
import { WEAVES } from "./drawings/weaves.ts";
import type { Drawing } from "./tile.ts";

/*
 * Cloths of our own drawing for the bench, in the traditions that a decorator meets, each from a seed. Units are millimetres.
 * They are not the demo's cloths (tests/cloths), with which the measures were first tried.
 */

const floral: Make = (random) => {
  const { ground, inks } = inksOf(random, 4);
  const [w, h] = [between(random, 220, 460), between(random, 280, 640)];
  const halfDrop = random() < 0.6;
  const group = () => {
    let drawn = "";
    const n = whole(random, 3, 5);
    for (let i = 0; i < n; i++) {
      const [x, y] = [between(random, -0.2, 0.2) * w, between(random, -0.2, 0.2) * h];
      drawn += stem(random, 0, 0.25 * h, x, y, inks[2] as string, 0.012 * w);
      drawn += `<g transform="translate(${x} ${y})">${flower(random, between(random, 0.07, 0.15) * w, [inks[i % 2] as string, inks[3] as string, inks[2] as string])}</g>`;
    }
    return drawn;
  };
  const first = group();
  const second = halfDrop ? first : group();
  return {
    width: w,
    height: h,
    body:
      rect(0, 0, w, h, ground) +
      wrapped(first, 0.25 * w, 0.3 * h, w, h) +
      wrapped(second, 0.75 * w, 0.8 * h, w, h),
    kind: "large-print",
  };
};

/** One-colour line drawings scattered over a great repeat, as printed scenes are. */
const toile: Make = (random) => {
  const { ground, inks } = inksOf(random, 1);
  const ink = inks[0] as string;
  const [w, h] = [between(random, 300, 600), between(random, 350, 650)];
  let body = rect(0, 0, w, h, ground);
  for (let i = 0; i < 9; i++) {
    const r = between(random, 0.06, 0.12) * w;
    let scene = "";
    for (let j = 0; j < 14; j++) {
      const [x, y] = [between(random, -r, r), between(random, -r, r)];
      const [u, v] = [x + between(random, -r, r) * 0.8, y + between(random, -r, r) * 0.8];
      scene += stem(random, x, y, u, v, ink, between(random, 0.01, 0.05) * r);
      if (random() < 0.5)
        scene += `<ellipse cx="${x}" cy="${y}" rx="${between(random, 0.05, 0.3) * r}" ry="${between(random, 0.05, 0.25) * r}" fill="${ink}" fill-opacity="${between(random, 0.2, 0.9)}"/>`;
    }
    body += wrapped(scene, w * (((i * 0.618) % 1) + 0.05 * random()), (h * (i + 0.5)) / 9, w, h);
  }
  return { width: w, height: h, body, kind: "large-print" };
};

/** Two stems of leaves and flowers that wind upwards, mirrored or not. */
const trail: Make = (random) => {
  const { ground, inks } = inksOf(random, 3);
  const [w, h] = [between(random, 150, 320), between(random, 300, 600)];
  const line = between(random, 0.012, 0.03) * w;
  const piece =
    `<path d="M0 ${-h / 2} C${0.3 * w} ${-h / 4} ${0.3 * w} ${-h / 4} 0 0 S${-0.3 * w} ${h / 4} 0 ${h / 2}" fill="none" stroke="${inks[1]}" stroke-width="${line}"/>` +
    `<g transform="translate(${0.2 * w} ${-h / 4})">${flower(random, 0.17 * w, [inks[0] as string, inks[2] as string, inks[1] as string])}</g>` +
    `<g transform="translate(${-0.2 * w} ${h / 4})">${flower(random, 0.14 * w, [inks[2] as string, inks[0] as string, inks[1] as string])}</g>`;
  const half = random() < 0.5 ? h / 2 : 0;
  return {
    width: 2 * w,
    height: h,
    body:
      rect(0, 0, 2 * w, h, ground) +
      wrapped(piece, w / 2, h / 2, 2 * w, h) +
      wrapped(piece, 1.5 * w, h / 2 + half, 2 * w, h),
    kind: "large-print",
  };
};

const ticking: Make = (random) => {
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

const acrossStripe: Make = (random) => {
  const { width, height, body, kind } = ticking(random);
  return {
    width: height,
    height: width,
    body: `<g transform="matrix(0 1 1 0 0 0)">${body}</g>`,
    kind,
    directionDeg: 0,
  };
};

const tartan: Make = (random) => {
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

const gingham: Make = (random) => {
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

const windowpane: Make = (random) => {
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

const trellis: Make = (random) => {
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

const herringbone: Make = (random) => {
  const { ground, inks } = inksOf(random, 1);
  const w = between(random, 30, 80);
  const h = w * between(random, 0.25, 0.6);
  let body = rect(0, 0, w, h, ground);
  for (let y = -2; y <= 3; y++)
    body += `<path d="M0 ${y * h} L${w / 2} ${y * h + w / 2} L${w} ${y * h}" fill="none" stroke="${inks[0]}" stroke-width="${0.3 * h}"/>`;
  return { width: w, height: h, body, kind: "geometric" };
};

/** A ring of key pattern, hexagons or stars, as a lattice of drawn lines. */
const fret: Make = (random) => {
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

/** Pointed ovals with a flower in each, one tone on another. */
const damask: Make = (random) => {
  const { ground, inks } = inksOf(random, 1);
  const ink = inks[0] as string;
  const [w, h] = [between(random, 130, 260), between(random, 220, 460)];
  const half =
    `<path d="M0 ${-0.42 * h} C${0.1 * w} ${-0.3 * h} ${0.42 * w} ${-0.15 * h} ${0.3 * w} ${0.05 * h} C${0.25 * w} ${0.2 * h} ${0.05 * w} ${0.25 * h} 0 ${0.42 * h}" fill="none" stroke="${ink}" stroke-width="${0.04 * w}"/>` +
    `<ellipse cx="${0.1 * w}" cy="${-0.08 * h}" rx="${0.05 * w}" ry="${0.11 * h}" fill="${ink}" transform="rotate(25)"/>` +
    `<ellipse cx="${0.08 * w}" cy="${0.12 * h}" rx="${0.04 * w}" ry="${0.09 * h}" fill="${ink}" transform="rotate(-35)"/>` +
    `<circle cx="${0.2 * w}" cy="${-0.02 * h}" r="${0.03 * w}" fill="${ink}"/>`;
  const piece = `${half}<g transform="scale(-1 1)">${half}</g><ellipse rx="${0.035 * w}" ry="${0.12 * h}" fill="${ink}"/>`;
  return {
    width: 2 * w,
    height: h,
    body:
      rect(0, 0, 2 * w, h, ground) +
      wrapped(piece, w / 2, h / 2, 2 * w, h) +
      wrapped(piece, 1.5 * w, 0, 2 * w, h),
    kind: "large-print",
  };
};

const paisley: Make = (random) => {
  const { ground, inks } = inksOf(random, 3);
  const small = random() < 0.6;
  const w = small ? between(random, 30, 70) : between(random, 170, 300);
  const h = w * between(random, 1, 1.6);
  const r = 0.3 * w;
  const drop = (s: number, ink: string) =>
    `<path transform="scale(${s})" d="M0 ${r} C${-r} ${r} ${-r} ${-0.3 * r} ${-0.2 * r} ${-0.9 * r} C0 ${-1.3 * r} ${0.6 * r} ${-1.2 * r} ${0.7 * r} ${-0.9 * r} C${0.3 * r} ${-r} ${0.2 * r} ${-0.7 * r} ${0.5 * r} ${-0.3 * r} C${1.1 * r} ${0.3 * r} ${0.8 * r} ${r} 0 ${r}Z" fill="${ink}"/>`;
  const piece =
    drop(1, inks[0] as string) +
    drop(0.65, inks[1] as string) +
    drop(0.3, inks[2] as string) +
    `<circle cx="${-0.9 * r}" cy="${-0.9 * r}" r="${0.15 * r}" fill="${inks[2]}"/>`;
  return {
    width: 2 * w,
    height: h,
    body:
      rect(0, 0, 2 * w, h, ground) +
      wrapped(piece, w / 2, h / 2, 2 * w, h) +
      wrapped(piece, 1.5 * w, 0, 2 * w, h),
    kind: small ? "small-print" : "large-print",
  };
};

const sprig: Make = (random) => {
  const { ground, inks } = inksOf(random, 3);
  const [w, h] = [between(random, 18, 60), between(random, 20, 70)];
  const r = between(random, 0.13, 0.22) * Math.min(w, h);
  const piece =
    `<path d="M0 ${-0.5 * r} Q${0.8 * r} ${r} ${0.1 * r} ${2 * r}" fill="none" stroke="${inks[1]}" stroke-width="${0.2 * r}"/>` +
    `<ellipse cx="${0.9 * r}" cy="${0.9 * r}" rx="${0.6 * r}" ry="${0.25 * r}" fill="${inks[1]}" transform="rotate(-30)"/>` +
    flower(random, r, [inks[0] as string, inks[2] as string, inks[1] as string]);
  const straight = random() < 0.4;
  return {
    width: straight ? w : 2 * w,
    height: h,
    body: straight
      ? rect(0, 0, w, h, ground) + wrapped(piece, w / 2, h / 2, w, h)
      : rect(0, 0, 2 * w, h, ground) +
        wrapped(piece, w / 2, h / 2, 2 * w, h) +
        wrapped(piece, 1.5 * w, 0, 2 * w, h),
    kind: "small-print",
  };
};

/** Many small flowers, each its own, so that the repeat is larger than the motif. */
const scatter: Make = (random) => {
  const { ground, inks } = inksOf(random, 3);
  const w = between(random, 60, 105);
  let body = rect(0, 0, w, w, ground);
  for (let i = 0; i < 12; i++) {
    const r = between(random, 0.04, 0.09) * w;
    const ink = [inks[i % 2] as string, inks[2] as string, inks[(i + 1) % 2] as string];
    body += wrapped(
      flower(random, r, ink),
      w * ((i * 0.618) % 1),
      (w * (i + 0.3 * random())) / 12,
      w,
      w,
    );
  }
  return { width: w, height: w, body, kind: "small-print" };
};

const spot: Make = (random) => {
  const { ground, inks } = inksOf(random, 1);
  const w = between(random, 10, 40);
  const dot = `<circle r="${between(random, 0.12, 0.3) * w}" fill="${inks[0]}"/>`;
  return {
    width: w,
    height: w,
    body: rect(0, 0, w, w, ground) + wrapped(dot, w / 2, w / 2, w, w) + wrapped(dot, 0, 0, w, w),
    kind: null,
  };
};

/** Spots as on a pelt, no two alike, over a tile that no photograph shows one and a half times. */
const marking: Make = (random) => {
  const { ground, inks } = inksOf(random, 2);
  const w = 500;
  const spots = whole(random, 12, 22);
  let body = rect(0, 0, w, w, ground);
  for (let i = 0; i < spots; i++) {
    for (let j = 0; j < spots; j++) {
      const r = ((w / spots) * between(random, 0.5, 0.8)) / 2;
      const shape = Array.from({ length: 9 }, (_, k) => {
        const s = r * between(random, 0.6, 1.25);
        return `${(s * Math.cos(0.698 * k)).toFixed(1)},${(1.2 * s * Math.sin(0.698 * k)).toFixed(1)}`;
      }).join(" ");
      const [x, y] = [
        i + 0.5 * (j % 2) + between(random, -0.25, 0.25),
        j + between(random, -0.25, 0.25),
      ];
      body += wrapped(
        `<polygon points="${shape}" fill="${inks[1]}" stroke="${inks[0]}" stroke-width="${0.3 * r}" stroke-linejoin="round"/>`,
        (x * w) / spots,
        (y * w) / spots,
        w,
        w,
      );
    }
  }
  return { width: w, height: w, body, kind: "irregular" };
};

/** Strokes of a brush, laid anyhow. */
const abstract: Make = (random) => {
  const { ground, inks } = inksOf(random, 3);
  const w = 700;
  let body = rect(0, 0, w, w, ground);
  for (let i = 0; i < 160; i++) {
    const [u, v] = [between(random, -60, 60), between(random, -60, 60)];
    const piece = stem(random, -u, -v, u, v, inks[i % 3] as string, between(random, 4, 14));
    body += wrapped(piece, w * random(), w * random(), w, w);
  }
  return { width: w, height: w, body, kind: "irregular" };
};

/** Slubs: yarns thicker and darker here and there, with no repeat. */
const slub: Make = (random) => {
  const { ground } = inksOf(random, 1);
  const w = 160;
  let body = rect(0, 0, w, w, ground);
  for (let i = 0; i < 1400; i++) {
    const level = random() < 0.6;
    const [l, t] = [between(random, 5, 25), between(random, 0.3, 0.9)];
    const shade = random() < 0.5 ? "#000" : "#fff";
    const piece = rect(
      0,
      0,
      level ? l : t,
      level ? t : l,
      shade,
      `fill-opacity="${between(random, 0.05, 0.2)}"`,
    );
    body += wrapped(piece, w * random(), w * random(), w, w);
  }
  return { width: w, height: w, body, kind: "textured-plain" };
};

const plain: Make = (random) => {
  const { ground } = inksOf(random, 1);
  return { width: 100, height: 100, body: rect(0, 0, 100, 100, ground), kind: "plain" };
};

const MAKES: Readonly<Record<string, Make>> = {
  floral,
  toile,
  trail,
  ticking,
  acrossStripe,
  tartan,
  gingham,
  windowpane,
  trellis,
  herringbone,
  fret,
  damask,
  paisley,
  sprig,
  scatter,
  spot,
  marking,
  abstract,
  slub,
  plain,
};

/** More traditions, by which the kinds are judged. */
const MORE: Readonly<Record<string, Make>> = {
  ...PRINTS,
  ...GEOMETRICS,
  ...BANDS,
  ...WEAVES,
  ...IRREGULARS,
};

/** Of these nothing is drawn for trying limits, so that traditions which no limit has seen are reported. */
export const UNSEEN = new Set(
  [
    "broadLeaves suzani conversational tossed blocks scallops kilim facets ogee tattersall blanket boucle basket",
    "zebra chips hide tonalButa",
  ]
    .join(" ")
    .split(" "),
);

/** `each` drawings of every tradition; other seeds give other drawings. */
export function ownDrawings(each: number, firstSeed: number): Drawing[] {
  return drawn(MAKES, each, firstSeed);
}

/** `each` drawings of the further traditions. */
export function moreDrawings(each: number, firstSeed: number): Drawing[] {
  return drawn(MORE, each, firstSeed);
}

function drawn(makes: Readonly<Record<string, Make>>, each: number, firstSeed: number): Drawing[] {
  return Object.entries(makes).flatMap(([name, make], m) =>
    Array.from({ length: each }, (_, i) => ({
      name: `own-${name}-${firstSeed + i}`,
      ...make(seeded(7919 * (firstSeed + i) + 31 * m)),
    })),
  );
}
