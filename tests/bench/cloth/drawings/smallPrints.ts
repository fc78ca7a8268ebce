import { inksOf } from "../colourPairs.ts";
import {
  between,
  flower,
  halfDropped,
  leaf,
  type Make,
  put,
  rect,
  stem,
  whole,
  wrapped,
} from "./draw.ts";

/* Small prints and spots, each from a seed. */

const SEED_STEP = 0.618;

export const paisley: Make = (random) => {
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

export const sprig: Make = (random) => {
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
export const scatter: Make = (random) => {
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

export const spot: Make = (random) => {
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

/** Small flowers and leaves so close that the ground is a rest. */
export const ditsy: Make = (random) => {
  const { ground, inks } = inksOf(random, 4);
  const w = between(random, 45, 95);
  let body = rect(0, 0, w, w, ground);
  const n = 34;
  for (let i = 0; i < n; i++) {
    const r = between(random, 0.03, 0.055) * w;
    const [x, y] = [w * ((i * SEED_STEP + 0.05 * random()) % 1), (w * (i + random())) / n];
    body += wrapped(
      random() < 0.6
        ? flower(random, r, [inks[i % 3] as string, inks[3] as string, inks[2] as string])
        : put(leaf(2 * r, 0.6 * r, inks[2] as string, ground), 0, 0, 360 * random()),
      x,
      y,
      w,
      w,
    );
  }
  return { width: w, height: w, body, kind: "small-print" };
};

/** A block-printed flower on its stem, in half-drop, with dots about it. */
export const buta: Make = (random) => {
  const { ground, inks } = inksOf(random, 2);
  const [w, h] = [between(random, 35, 75), between(random, 45, 95)];
  const r = 0.16 * w;
  let piece = stem(random, 0, 0.4 * h, 0, 0, inks[1] as string, 0.05 * w);
  for (const s of [-1, 1])
    for (const k of [0.12, 0.25])
      piece += put(
        leaf(0.26 * w, 0.07 * w, inks[1] as string, ground),
        0,
        k * h,
        s < 0 ? 200 : -20,
      );
  piece += put(
    flower(random, r, [inks[0] as string, inks[1] as string, inks[1] as string]),
    0,
    -0.08 * h,
  );
  for (let k = 0; k < 5; k++)
    piece += `<circle cx="${(0.3 * w * Math.cos(k + 1)).toFixed(2)}" cy="${(-0.08 * h + 0.3 * w * Math.sin(k + 3.5)).toFixed(2)}" r="${0.025 * w}" fill="${inks[0]}"/>`;
  return halfDropped(piece, w, h, ground, "small-print");
};

/** Small pictures in rows: birds, fishes, shells or cups, each row another way round. */
export const conversational: Make = (random) => {
  const { ground, inks } = inksOf(random, 2);
  const [w, h] = [between(random, 30, 60), between(random, 24, 48)];
  const s = 0.26 * Math.min(w, h);
  const [a, b] = inks as [string, string];
  const things = [
    `<path d="M${-s} 0 C${-0.4 * s} ${-0.8 * s} ${0.5 * s} ${-0.7 * s} ${s} 0 C${0.5 * s} ${0.7 * s} ${-0.4 * s} ${0.8 * s} ${-s} 0 L${-1.5 * s} ${-0.5 * s} L${-1.5 * s} ${0.5 * s}Z" fill="${a}"/><circle cx="${0.5 * s}" cy="${-0.15 * s}" r="${0.12 * s}" fill="${ground}"/>`,
    `<path d="M${-s} ${0.1 * s} C${-0.6 * s} ${-0.7 * s} ${0.4 * s} ${-0.9 * s} ${0.7 * s} ${-0.3 * s} L${1.1 * s} ${-0.2 * s} L${0.7 * s} 0 C${0.5 * s} ${0.6 * s} ${-0.3 * s} ${0.7 * s} ${-1.5 * s} ${0.5 * s}Z" fill="${a}"/><path d="M0 ${0.5 * s} L${-0.1 * s} ${1.1 * s} M${0.2 * s} ${0.5 * s} L${0.3 * s} ${1.1 * s}" stroke="${b}" stroke-width="${0.12 * s}"/>`,
    `<path d="M${-s} ${-0.6 * s} L${0.6 * s} ${-0.6 * s} C${0.6 * s} ${0.9 * s} ${-s} ${0.9 * s} ${-s} ${-0.6 * s}Z" fill="${a}"/><path d="M${0.6 * s} ${-0.3 * s} C${1.3 * s} ${-0.4 * s} ${1.2 * s} ${0.5 * s} ${0.4 * s} ${0.35 * s}" fill="none" stroke="${b}" stroke-width="${0.18 * s}"/>`,
  ];
  const thing = things[whole(random, 0, 2)] as string;
  const flip = random() < 0.5;
  return {
    width: 2 * w,
    height: 2 * h,
    body:
      rect(0, 0, 2 * w, 2 * h, ground) +
      [0, 1]
        .map(
          (i) =>
            wrapped(thing, w / 2 + i * w, h / 2, 2 * w, 2 * h) +
            wrapped(
              flip ? `<g transform="scale(-1 1)">${thing}</g>` : thing,
              i * w,
              1.5 * h,
              2 * w,
              2 * h,
            ),
        )
        .join(""),
    kind: "small-print",
  };
};

/** A running vine with leaves and berries in rows close together. */
export const vine: Make = (random) => {
  const { ground, inks } = inksOf(random, 3);
  const [w, h] = [between(random, 22, 45), between(random, 40, 80)];
  let piece = `<path d="M0 ${-h / 2} C${0.5 * w} ${-h / 4} ${0.5 * w} ${-h / 4} 0 0 S${-0.5 * w} ${h / 4} 0 ${h / 2}" fill="none" stroke="${inks[1]}" stroke-width="${0.05 * w}"/>`;
  for (const [x, y, turn] of [
    [0.25, -0.37, -30],
    [0.33, -0.2, 20],
    [0.05, -0.03, -140],
    [-0.25, 0.13, 200],
    [-0.33, 0.3, 150],
    [-0.1, 0.45, 40],
  ] as const) {
    piece += put(
      leaf(0.3 * w, 0.1 * w, inks[1] as string, ground),
      x * w,
      y * h,
      turn + between(random, -20, 20),
    );
    piece += `<circle cx="${(x * w - 0.12 * w * Math.sign(x)).toFixed(2)}" cy="${(y * h + 0.06 * h).toFixed(2)}" r="${0.06 * w}" fill="${inks[random() < 0.5 ? 0 : 2]}"/>`;
  }
  return {
    width: w,
    height: h,
    body: rect(0, 0, w, h, ground) + wrapped(piece, w / 2, h / 2, w, h),
    kind: "small-print",
  };
};

/** Single leaves or corals tossed about, each turned its own way. */
export const tossed: Make = (random) => {
  const { ground, inks } = inksOf(random, 2);
  const w = between(random, 50, 100);
  const coral = random() < 0.4;
  let body = rect(0, 0, w, w, ground);
  for (let i = 0; i < 8; i++) {
    const l = between(random, 0.16, 0.24) * w;
    let piece = coral ? "" : put(leaf(l, 0.26 * l, inks[i % 2] as string, ground), -l / 2, 0);
    for (let k = 0; coral && k < 5; k++)
      piece += `<path d="M${-0.5 * l} 0 Q0 ${between(random, -0.2, 0.2) * l} ${between(random, 0.2, 0.55) * l} ${(k - 2) * 0.22 * l}" fill="none" stroke="${inks[i % 2]}" stroke-width="${0.07 * l}" stroke-linecap="round"/>`;
    body += wrapped(
      put(piece, 0, 0, 360 * random()),
      w * ((i * 0.382) % 1),
      (w * (i + 0.3 * random())) / 8,
      w,
      w,
    );
  }
  return { width: w, height: w, body, kind: "small-print" };
};
