import { inksOf } from "../colourPairs.ts";
import { between, blob, flower, leaf, type Make, put, rect, stem, whole, wrapped } from "./draw.ts";

/* Large prints of flowers, leaves, scenes and trails, each from a seed. */

const SEED_STEP = 0.618;

export const floral: Make = (random) => {
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
export const toile: Make = (random) => {
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
export const trail: Make = (random) => {
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

/** Broad leaves that lie over each other and leave hardly any ground. */
export const broadLeaves: Make = (random) => {
  const { ground, inks } = inksOf(random, 4);
  const [w, h] = [between(random, 260, 420), between(random, 260, 480)];
  let body = rect(0, 0, w, h, ground);
  const n = whole(random, 7, 12);
  for (let i = 0; i < n; i++) {
    const l = between(random, 0.3, 0.45) * w;
    const one = leaf(l, l * between(random, 0.2, 0.35), inks[i % 3] as string, inks[3] as string);
    let ribs = "";
    for (let k = 1; k < 7; k++)
      ribs += `<path d="M${0.13 * k * l} 0 L${(0.13 * k + 0.08) * l} ${0.12 * l} M${0.13 * k * l} 0 L${(0.13 * k + 0.08) * l} ${-0.12 * l}" stroke="${inks[3]}" stroke-width="${0.012 * l}"/>`;
    body += wrapped(
      put(one + ribs, 0, 0, between(random, -100, -20)),
      w * ((i * SEED_STEP) % 1),
      (h * (i + random())) / n,
      w,
      h,
    );
  }
  return { width: w, height: h, body, kind: "large-print" };
};

/** A tree's branches with birds, leaves and blossom over a great repeat. */
export const branches: Make = (random) => {
  const { ground, inks } = inksOf(random, 4);
  const [w, h] = [between(random, 280, 520), between(random, 350, 640)];
  const twig = (l: number, depth: number): string => {
    const bend = between(random, -0.3, 0.3) * l;
    let drawn = `<path d="M0 0 Q${0.5 * l} ${bend} ${l} 0" fill="none" stroke="${inks[0]}" stroke-width="${0.05 * l}" stroke-linecap="round"/>`;
    for (let k = 0; k < 4; k++) {
      const at = between(random, 0.3, 1) * l;
      const turn = between(random, 25, 70) * (random() < 0.5 ? -1 : 1);
      drawn += put(
        depth > 0
          ? twig(0.5 * l, depth - 1)
          : leaf(0.35 * l, 0.12 * l, inks[1 + (k % 2)] as string, ground),
        at,
        (bend * at * (l - at)) / (l * l),
        turn,
      );
    }
    return (
      drawn +
      put(flower(random, 0.13 * l, [inks[3] as string, inks[2] as string, inks[1] as string]), l, 0)
    );
  };
  const bird = (s: number) =>
    `<path d="M${-s} 0 C${-0.6 * s} ${-0.7 * s} ${0.4 * s} ${-0.8 * s} ${0.7 * s} ${-0.3 * s} L${s} ${-0.25 * s} L${0.7 * s} ${-0.1 * s} C${0.6 * s} ${0.5 * s} ${-0.3 * s} ${0.6 * s} ${-1.6 * s} ${0.5 * s}Z" fill="${inks[3]}"/><path d="M${-0.6 * s} ${-0.1 * s} Q0 ${0.4 * s} ${0.4 * s} ${-0.1 * s} Q${-0.1 * s} ${-0.4 * s} ${-0.6 * s} ${-0.1 * s}Z" fill="${inks[2]}"/>`;
  const body =
    rect(0, 0, w, h, ground) +
    wrapped(put(twig(0.5 * w, 2), 0, 0, between(random, -80, -40)), 0.2 * w, 0.55 * h, w, h) +
    wrapped(put(twig(0.45 * w, 2), 0, 0, between(random, -150, -100)), 0.85 * w, 0.98 * h, w, h) +
    wrapped(bird(0.07 * w), 0.5 * w, 0.2 * h, w, h) +
    wrapped(`<g transform="scale(-1 1)">${bird(0.06 * w)}</g>`, 0.3 * w, 0.8 * h, w, h);
  return { width: w, height: h, body, kind: "large-print" };
};

/** Full-blown roses of many petals, close together. */
export const blooms: Make = (random) => {
  const { ground, inks } = inksOf(random, 4);
  const w = between(random, 200, 380);
  const h = w * between(random, 1, 1.5);
  const bloom = (r: number, a: string, b: string) => {
    let drawn = "";
    for (let ring = 0; ring < 4; ring++) {
      const s = r * (1 - 0.24 * ring);
      const n = 7 - ring;
      for (let k = 0; k < n; k++)
        drawn += put(
          `<path d="${blob(random, 0.45 * s, 7, 0.2)}" fill="${(ring + k) % 2 ? a : b}" stroke="${inks[3]}" stroke-width="${0.02 * r}"/>`,
          0.6 * s * Math.cos((2 * Math.PI * (k + 0.4 * ring)) / n),
          0.6 * s * Math.sin((2 * Math.PI * (k + 0.4 * ring)) / n),
        );
    }
    return drawn;
  };
  let body = rect(0, 0, w, h, ground);
  for (let i = 0; i < 14; i++) {
    const l = between(random, 0.14, 0.22) * w;
    body += wrapped(
      put(leaf(l, 0.3 * l, inks[2] as string, inks[3] as string), 0, 0, 360 * random()),
      w * random(),
      h * random(),
      w,
      h,
    );
  }
  for (let i = 0; i < 4; i++)
    body += wrapped(
      bloom(between(random, 0.13, 0.2) * w, inks[i % 2] as string, inks[(i + 1) % 2] as string),
      w * (0.25 + 0.5 * (i % 2)),
      h * (0.13 + 0.25 * i),
      w,
      h,
    );
  return { width: w, height: h, body, kind: "large-print" };
};

/** Flowers, buds and cut leaves so close that no ground is seen between them, as on a chintz. */
export const thicket: Make = (random) => {
  const { ground, inks } = inksOf(random, 4);
  const [w, h] = [between(random, 180, 420), between(random, 200, 520)];
  let body = rect(0, 0, w, h, ground);
  const n = whole(random, 45, 70);
  for (let i = 0; i < n; i++) {
    const l = between(random, 0.16, 0.3) * w;
    const lobes = whole(random, 3, 6);
    let piece = leaf(l, between(random, 0.16, 0.3) * l, inks[2] as string, ground);
    for (let k = 1; k < lobes; k++)
      for (const side of [-1, 1])
        piece += put(
          leaf(0.4 * l, 0.09 * l, inks[2] as string, ground),
          (k * l) / lobes,
          0,
          side * 50,
        );
    body += wrapped(put(piece, 0, 0, 360 * random()), w * random(), h * random(), w, h);
  }
  const heads = whole(random, 7, 12);
  for (let i = 0; i < heads; i++) {
    const ink = [inks[i % 2] as string, inks[3] as string, inks[2] as string];
    const r = between(random, 0.08, 0.15) * w;
    body += wrapped(
      flower(random, r, ink),
      w * ((i * SEED_STEP) % 1),
      (h * (i + random())) / heads,
      w,
      h,
    );
  }
  return { width: w, height: h, body, kind: "large-print" };
};
