import { inksOf } from "../colourPairs.ts";
import { between, blob, type Make, put, rect, spread, whole, wrapped } from "./draw.ts";

/* Plains with a surface: seen at arm's length, but no pattern to a decorator. Each from a seed. */

const shade = (random: () => number) => (random() < 0.5 ? "#000" : "#fff");

/** Padded cells of a double cloth, tone on tone. */
const matelasse: Make = (random) => {
  const { ground } = inksOf(random, 1);
  const u = between(random, 2.4, 4.5);
  const deep = between(random, 0.06, 0.16);
  const cell =
    `<ellipse rx="${0.42 * u}" ry="${0.36 * u}" fill="#fff" fill-opacity="${deep}"/>` +
    `<path d="M${-0.5 * u} 0 L0 ${0.5 * u} L${0.5 * u} 0" fill="none" stroke="#000" stroke-opacity="${1.3 * deep}" stroke-width="${0.16 * u}"/>`;
  const body =
    rect(0, 0, u, u, ground) + wrapped(cell, u / 2, u / 2, u, u) + wrapped(cell, 0, 0, u, u);
  return spread({ width: u, height: u, body, kind: "textured-plain" }, 160);
};

/** Loops of a fancy yarn. */
const boucle: Make = (random) => {
  const { ground } = inksOf(random, 1);
  const w = 130;
  let body = rect(0, 0, w, w, ground);
  for (let i = 0; i < 3000; i++) {
    const r = between(random, 0.6, 1.6);
    body += wrapped(
      `<circle r="${r.toFixed(2)}" fill="none" stroke="${shade(random)}" stroke-opacity="${between(random, 0.08, 0.28).toFixed(2)}" stroke-width="${between(random, 0.3, 0.7).toFixed(2)}"/>`,
      w * random(),
      w * random(),
      w,
      w,
    );
  }
  return { width: w, height: w, body, kind: "textured-plain" };
};

/** Soft tufts of a chenille, lighter and darker as they lie. */
const chenille: Make = (random) => {
  const { ground } = inksOf(random, 1);
  const w = 130;
  let body = rect(0, 0, w, w, ground);
  for (let i = 0; i < 2600; i++) {
    const piece = `<ellipse rx="${between(random, 0.5, 1).toFixed(2)}" ry="${between(random, 1.2, 3).toFixed(2)}" fill="${shade(random)}" fill-opacity="${between(random, 0.05, 0.17).toFixed(2)}"/>`;
    body += wrapped(piece, w * random(), w * random(), w, w);
  }
  return { width: w, height: w, body, kind: "textured-plain" };
};

/** A tweed: flecks of other colours in a heathered ground. */
const tweed: Make = (random) => {
  const { ground, inks } = inksOf(random, 3);
  const w = 130;
  let body = rect(0, 0, w, w, ground);
  for (let i = 0; i < 2600; i++) {
    const piece = rect(
      -0.6,
      -0.35,
      between(random, 0.8, 1.8),
      0.7,
      shade(random),
      `fill-opacity="${between(random, 0.06, 0.2).toFixed(2)}"`,
    );
    body += wrapped(put(piece, 0, 0, 180 * random()), w * random(), w * random(), w, w);
  }
  for (let i = 0; i < 240; i++)
    body += wrapped(
      `<ellipse rx="${between(random, 0.5, 1).toFixed(2)}" ry="0.5" fill="${inks[i % 3]}" fill-opacity="0.7"/>`,
      w * random(),
      w * random(),
      w,
      w,
    );
  return { width: w, height: w, body, kind: "textured-plain" };
};

/** A basket weave of thick yarns. */
const basket: Make = (random) => {
  const { ground } = inksOf(random, 1);
  const u = between(random, 2, 4.5);
  const deep = between(random, 0.08, 0.2);
  const body =
    rect(0, 0, u, u, ground) +
    rect(0, 0, u / 2, u / 2, "#000", `fill-opacity="${deep}"`) +
    rect(u / 2, u / 2, u / 2, u / 2, "#000", `fill-opacity="${deep}"`);
  return spread({ width: u, height: u, body, kind: "textured-plain" }, 150);
};

/** Linen of two tones of yarn, some thick, warp and weft each as they come. */
const twoTone: Make = (random) => {
  const { ground } = inksOf(random, 1);
  const w = 120;
  let body = rect(0, 0, w, w, ground);
  for (let i = 0; i < 2600; i++) {
    const [l, t] = [between(random, 8, 40), between(random, 0.3, 0.8)];
    const level = i % 2 === 0;
    body += wrapped(
      rect(
        0,
        0,
        level ? l : t,
        level ? t : l,
        shade(random),
        `fill-opacity="${between(random, 0.05, 0.16).toFixed(2)}"`,
      ),
      w * random(),
      w * random(),
      w,
      w,
    );
  }
  return { width: w, height: w, body, kind: "textured-plain" };
};

/** A crushed pile: the light lies on it in clouds of one colour. */
const crushed: Make = (random) => {
  const { ground } = inksOf(random, 1);
  const w = 260;
  let body = rect(0, 0, w, w, ground);
  for (let i = 0; i < 1500; i++)
    body += wrapped(
      `<path d="${blob(random, between(random, 1.5, 5), 7, 0.5)}" fill="${shade(random)}" fill-opacity="${between(random, 0.03, 0.09).toFixed(2)}"/>`,
      w * random(),
      w * random(),
      w,
      w,
    );
  return { width: w, height: w, body, kind: "textured-plain" };
};

/** A small herringbone of a suiting, two tones of one colour. */
const fineBone: Make = (random) => {
  const { ground } = inksOf(random, 1);
  const u = between(random, 3, 5);
  const n = whole(random, 3, 4);
  let body = rect(0, 0, 2 * u, u, ground);
  for (let k = -n; k <= 2 * n; k++)
    body += `<path d="M0 ${(k * u) / n} l${u} ${u} l${u} ${-u}" fill="none" stroke="#000" stroke-opacity="${between(random, 0.14, 0.18)}" stroke-width="${(0.3 * u) / n}"/>`;
  return spread({ width: 2 * u, height: u, body, kind: "textured-plain" }, 120);
};

/** Slubs: yarns thicker and darker here and there, with no repeat. */
export const slub: Make = (random) => {
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

export const plain: Make = (random) => {
  const { ground } = inksOf(random, 1);
  return { width: 100, height: 100, body: rect(0, 0, 100, 100, ground), kind: "plain" };
};

export const WEAVES = { matelasse, boucle, chenille, tweed, basket, twoTone, crushed, fineBone };
