import { inksOf } from "../colourPairs.ts";
import { between, blob, type Make, put, type Random, rect, stem, whole, wrapped } from "./draw.ts";

/* Patterns in which no repeat is seen: markings, blots, abstracts. Each from a seed, over a tile larger than is shown. */

const W = 520;

/** Places that keep some distance from each other, round the edges as well. */
function places(random: Random, n: number, w: number): [number, number][] {
  const apart = (0.75 * w) / Math.sqrt(n);
  const kept: [number, number][] = [];
  for (let tries = 0; tries < 30 * n && kept.length < n; tries++) {
    const [x, y] = [w * random(), w * random()];
    const clear = kept.every(([u, v]) => {
      const [dx, dy] = [Math.abs(u - x), Math.abs(v - y)];
      return Math.hypot(Math.min(dx, w - dx), Math.min(dy, w - dy)) > apart;
    });
    if (clear) kept.push([x, y]);
  }
  return kept;
}

/** Rosettes as a leopard's: broken rings about a darker middle. */
const rosettes: Make = (random) => {
  const { ground, inks } = inksOf(random, 2);
  let body = rect(0, 0, W, W, ground);
  const n = whole(random, 160, 420);
  for (const [x, y] of places(random, n, W)) {
    const r = (0.36 * W) / Math.sqrt(n);
    let piece = `<path d="${blob(random, 0.7 * r, 8, 0.25)}" fill="${inks[1]}"/>`;
    const arcs = whole(random, 2, 4);
    for (let k = 0; k < arcs; k++)
      piece += put(
        `<path d="${blob(random, 0.42 * r, 7, 0.4)}" fill="${inks[0]}"/>`,
        0.85 * r * Math.cos((2 * Math.PI * (k + 0.4 * random())) / arcs),
        0.85 * r * Math.sin((2 * Math.PI * (k + 0.4 * random())) / arcs),
      );
    body += wrapped(piece, x, y, W, W);
  }
  return { width: W, height: W, body, kind: "irregular" };
};

/** Wavering bars that fork and taper, as a zebra's. */
const zebra: Make = (random) => {
  const { ground, inks } = inksOf(random, 1);
  let body = rect(0, 0, W, W, ground);
  const rows = whole(random, 9, 15);
  for (let j = 0; j < rows; j++) {
    for (let k = 0; k < 3; k++) {
      const [x, l] = [W * random(), between(random, 0.25, 0.5) * W];
      const t = (0.3 * W) / rows;
      const [a, b] = [between(random, -1.2, 1.2) * t, between(random, -1.2, 1.2) * t];
      const piece = `<path d="M0 0 C${0.3 * l} ${a - t} ${0.6 * l} ${b - t} ${l} ${between(random, -1, 1) * t} C${0.6 * l} ${b + t} ${0.3 * l} ${a + t} 0 0Z" fill="${inks[0]}"/>`;
      body += wrapped(piece, x, ((j + 0.5 * random()) * W) / rows, W, W);
    }
  }
  return { width: W, height: W, body, kind: "irregular" };
};

/** Patches parted by light lines, as a giraffe's. */
const patches: Make = (random) => {
  const { ground, inks } = inksOf(random, 1);
  let body = rect(0, 0, W, W, ground);
  const n = whole(random, 70, 200);
  const list = places(random, n, W);
  for (const [x, y] of list) {
    // The patch reaches nearly to the middle between it and its neighbours.
    const others = list
      .filter(([u, v]) => u !== x || v !== y)
      .map(
        ([u, v]) => [((u - x + 1.5 * W) % W) - 0.5 * W, ((v - y + 1.5 * W) % W) - 0.5 * W] as const,
      );
    const shape = Array.from({ length: 28 }, (_, k) => {
      const [c, s] = [Math.cos((Math.PI * k) / 14), Math.sin((Math.PI * k) / 14)];
      let reach = (0.9 * W) / Math.sqrt(n);
      for (const [u, v] of others) {
        const along = c * u + s * v;
        if (along > 0) reach = Math.min(reach, (u * u + v * v) / (2 * along));
      }
      const r = Math.max(1, reach - (0.07 * W) / Math.sqrt(n)) * between(random, 0.93, 1);
      return `${(r * c).toFixed(1)},${(r * s).toFixed(1)}`;
    }).join(" ");
    body += wrapped(`<polygon points="${shape}" fill="${inks[0]}"/>`, x, y, W, W);
  }
  return { width: W, height: W, body, kind: "irregular" };
};

/** Chips of stone of all sizes. */
const chips: Make = (random) => {
  const { ground, inks } = inksOf(random, 4);
  let body = rect(0, 0, W, W, ground);
  for (const [i, [x, y]] of places(random, whole(random, 150, 400), W).entries()) {
    const r = 4 + 14 * random() ** 2;
    const n = whole(random, 4, 7);
    const shape = Array.from({ length: n }, (_, k) => {
      const s = r * between(random, 0.5, 1.2);
      return `${(s * Math.cos((2 * Math.PI * k) / n)).toFixed(1)},${(s * Math.sin((2 * Math.PI * k) / n)).toFixed(1)}`;
    }).join(" ");
    body += wrapped(`<polygon points="${shape}" fill="${inks[i % 4]}"/>`, x, y, W, W);
  }
  return { width: W, height: W, body, kind: "irregular" };
};

/** Washes of colour that run over each other. */
const washes: Make = (random) => {
  const { ground, inks } = inksOf(random, 4);
  let body = rect(0, 0, W, W, ground);
  for (let i = 0; i < 70; i++)
    body += wrapped(
      `<path d="${blob(random, between(random, 15, 75), 10, 0.5)}" fill="${inks[i % 4]}" fill-opacity="${between(random, 0.3, 0.7).toFixed(2)}"/>`,
      W * random(),
      W * random(),
      W,
      W,
    );
  return { width: W, height: W, body, kind: "irregular" };
};

/** Veins of a marbled paper. */
const veins: Make = (random) => {
  const { ground, inks } = inksOf(random, 3);
  let body = rect(0, 0, W, W, ground);
  for (let i = 0; i < 46; i++) {
    let [x, y, path] = [0, 0, "M0 0"];
    let turn = 2 * Math.PI * random();
    for (let k = 0; k < 5; k++) {
      turn += between(random, -0.9, 0.9);
      const l = between(random, 20, 60);
      const bow = between(random, -15, 15);
      path += ` q${(0.5 * l * Math.cos(turn) - bow * Math.sin(turn)).toFixed(1)} ${(0.5 * l * Math.sin(turn) + bow * Math.cos(turn)).toFixed(1)} ${(l * Math.cos(turn)).toFixed(1)} ${(l * Math.sin(turn)).toFixed(1)}`;
      x += l * Math.cos(turn);
      y += l * Math.sin(turn);
    }
    body += wrapped(
      `<path d="${path}" fill="none" stroke="${inks[i % 3]}" stroke-width="${between(random, 1.5, 9).toFixed(1)}" stroke-linecap="round"/>`,
      W * random() - x / 2,
      W * random() - y / 2,
      W,
      W,
    );
  }
  return { width: W, height: W, body, kind: "irregular" };
};

/** Drops of paint as they fell, large and small. */
const splashes: Make = (random) => {
  const { ground, inks } = inksOf(random, 3);
  let body = rect(0, 0, W, W, ground);
  const n = whole(random, 250, 700);
  for (let i = 0; i < n; i++)
    body += wrapped(
      `<path d="${blob(random, 1.5 + 16 * random() ** 4, 8, 0.25)}" fill="${inks[i % 3]}"/>`,
      W * random(),
      W * random(),
      W,
      W,
    );
  return { width: W, height: W, body, kind: "irregular" };
};

/** A hide's great patches. */
const hide: Make = (random) => {
  const { ground, inks } = inksOf(random, 1);
  let body = rect(0, 0, W, W, ground);
  for (const [x, y] of places(random, whole(random, 40, 80), W))
    body += wrapped(
      `<path d="${blob(random, between(random, 14, 42), 11, 0.4)}" fill="${inks[0]}"/>`,
      x,
      y,
      W,
      W,
    );
  return { width: W, height: W, body, kind: "irregular" };
};

/** Spots as on a pelt, no two alike, over a tile that no photograph shows one and a half times. */
export const marking: Make = (random) => {
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
export const abstract: Make = (random) => {
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

export const IRREGULARS = { rosettes, zebra, patches, chips, washes, veins, splashes, hide };
