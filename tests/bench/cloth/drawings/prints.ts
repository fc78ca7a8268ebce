import { inksOf } from "../colourPairs.ts";
import { between, blob, flower, leaf, type Make, put, rect, stem, whole, wrapped } from "./draw.ts";

/* Prints, small and large, each from a seed. */

const SEED_STEP = 0.618;

/** Broad leaves that lie over each other and leave hardly any ground. */
const broadLeaves: Make = (random) => {
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
const branches: Make = (random) => {
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
const blooms: Make = (random) => {
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

/** Great embroidered rounds, none quite like another, with leaves between. */
const suzani: Make = (random) => {
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
const scrolls: Make = (random) => {
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

/** Small flowers and leaves so close that the ground is a rest. */
const ditsy: Make = (random) => {
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
const buta: Make = (random) => {
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
  return {
    width: 2 * w,
    height: h,
    body:
      rect(0, 0, 2 * w, h, ground) +
      wrapped(piece, w / 2, h / 2, 2 * w, h) +
      wrapped(piece, 1.5 * w, 0, 2 * w, h),
    kind: "small-print",
  };
};

/** Small pictures in rows: birds, fishes, shells or cups, each row another way round. */
const conversational: Make = (random) => {
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
const vine: Make = (random) => {
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
const tossed: Make = (random) => {
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

/** Flowers, buds and cut leaves so close that no ground is seen between them, as on a chintz. */
const thicket: Make = (random) => {
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

/** Two inks of nearly equal share: curling leaves with as much ground as figure, as block prints and brocades have. */
const arabesque: Make = (random) => {
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

/** A print with its colours moved most of the way to its ground, as a jacquard shows it tone on tone. */
function tonal(make: Make): Make {
  return (random) => {
    const drawn = make(random);
    const ground = /fill="(#[0-9a-f]{6})"/.exec(drawn.body)?.[1] ?? "#888888";
    const veil = rect(0, 0, drawn.width, drawn.height, ground, 'fill-opacity="0.8"');
    return { ...drawn, body: drawn.body + veil };
  };
}

export const PRINTS = {
  broadLeaves,
  branches,
  blooms,
  suzani,
  scrolls,
  ditsy,
  buta,
  conversational,
  vine,
  tossed,
  thicket,
  arabesque,
  tonalScrolls: tonal(scrolls),
  tonalBlooms: tonal(blooms),
  tonalButa: tonal(buta),
};
