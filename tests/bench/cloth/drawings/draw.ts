import type { Drawing } from "../tile.ts";

/* What the drawings of cloths are put together from. Units are millimetres. */

export type Random = () => number;
export type Make = (random: Random) => Omit<Drawing, "name">;

export const between = (random: Random, from: number, to: number) => from + (to - from) * random();
export const whole = (random: Random, from: number, to: number) =>
  Math.floor(between(random, from, to + 1));

/** A piece drawn at nine places about the tile, so that what leaves at one edge comes in at the other. */
export function wrapped(piece: string, x: number, y: number, w: number, h: number): string {
  let all = "";
  for (const dx of [-w, 0, w])
    for (const dy of [-h, 0, h])
      all += `<g transform="translate(${(x + dx).toFixed(2)} ${(y + dy).toFixed(2)})">${piece}</g>`;
  return all;
}

/** A piece in half-drop: two columns, the second half the height higher. */
export function halfDropped(
  piece: string,
  w: number,
  h: number,
  ground: string,
  kind: Drawing["kind"],
): ReturnType<Make> {
  return {
    width: 2 * w,
    height: h,
    body:
      rect(0, 0, 2 * w, h, ground) +
      wrapped(piece, w / 2, h / 2, 2 * w, h) +
      wrapped(piece, 1.5 * w, 0, 2 * w, h),
    kind,
  };
}

/** Stripes that run up, laid so that they run across. */
export function turnedAcross(make: Make): Make {
  return (random) => {
    const { body, width, height, ...rest } = make(random);
    return {
      ...rest,
      width: height,
      height: width,
      body: `<g transform="matrix(0 1 1 0 0 0)">${body}</g>`,
      directionDeg: 0,
    };
  };
}

export const rect = (x: number, y: number, w: number, h: number, fill: string, more = "") =>
  `<rect x="${x}" y="${y}" width="${w}" height="${h}" fill="${fill}" ${more}/>`;

/** A flower of some petals, its heart and leaves; some 2 * r across. */
export function flower(random: Random, r: number, [petal, heart, leaf]: readonly string[]): string {
  const petals = whole(random, 5, 8);
  const turn = 360 * random();
  let drawn = "";
  for (let i = 0; i < 3; i++) {
    const at = turn + 120 * i + between(random, -25, 25);
    drawn += `<path d="M0 0 C${0.5 * r} ${-0.35 * r} ${1.2 * r} ${-0.3 * r} ${1.45 * r} 0 C${1.2 * r} ${0.25 * r} ${0.5 * r} ${0.2 * r} 0 0Z" fill="${leaf}" transform="rotate(${at})"/>`;
  }
  for (let i = 0; i < petals; i++)
    drawn += `<ellipse cx="${0.55 * r}" rx="${0.45 * r}" ry="${(1.5 * r) / petals}" fill="${petal}" stroke="${heart}" stroke-width="${0.03 * r}" transform="rotate(${turn + (360 * i) / petals})"/>`;
  return `${drawn}<circle r="${0.24 * r}" fill="${heart}"/>`;
}

/** A curved stem with leaves on it from a place to a place. */
export function stem(
  random: Random,
  x1: number,
  y1: number,
  x2: number,
  y2: number,
  ink: string,
  w: number,
) {
  const bow = between(random, -0.4, 0.4);
  const [mx, my] = [(x1 + x2) / 2 - bow * (y2 - y1), (y1 + y2) / 2 + bow * (x2 - x1)];
  return `<path d="M${x1} ${y1} Q${mx} ${my} ${x2} ${y2}" fill="none" stroke="${ink}" stroke-width="${w}"/>`;
}

/** A closed smooth outline through places about a middle, with a random radius at each. */
export function blob(random: Random, r: number, points = 9, rough = 0.35): string {
  const at = Array.from({ length: points }, (_, k) => {
    const s = r * between(random, 1 - rough, 1 + rough);
    const a = (2 * Math.PI * k) / points;
    return [s * Math.cos(a), s * Math.sin(a)] as const;
  });
  const middle = (k: number) => {
    const [p, q] = [
      at[k % points] as readonly [number, number],
      at[(k + 1) % points] as readonly [number, number],
    ];
    return `${((p[0] + q[0]) / 2).toFixed(2)} ${((p[1] + q[1]) / 2).toFixed(2)}`;
  };
  let path = `M${middle(0)}`;
  for (let k = 1; k <= points; k++) {
    const [x, y] = at[k % points] as readonly [number, number];
    path += ` Q${x.toFixed(2)} ${y.toFixed(2)} ${middle(k)}`;
  }
  return `${path}Z`;
}

/** A regular polygon's or star's corners about the origin, as the points of an svg polygon. */
export function corners(sides: number, r: number, turn = 0, inner = r): string {
  const n = inner === r ? sides : 2 * sides;
  return Array.from({ length: n }, (_, i) => {
    const a = turn + (2 * Math.PI * i) / n;
    const s = i % 2 === 0 ? r : inner;
    return `${(s * Math.cos(a)).toFixed(2)},${(s * Math.sin(a)).toFixed(2)}`;
  }).join(" ");
}

/** A leaf from the origin to the right, `l` long, with its rib. */
export function leaf(l: number, w: number, fill: string, rib: string): string {
  return (
    `<path d="M0 0 C${0.25 * l} ${-w} ${0.7 * l} ${-w} ${l} 0 C${0.7 * l} ${w} ${0.25 * l} ${w} 0 0Z" fill="${fill}"/>` +
    `<path d="M0 0 L${0.9 * l} 0" stroke="${rib}" stroke-width="${0.04 * l}" fill="none"/>`
  );
}

/** A piece put somewhere, turned by degrees. */
export const put = (piece: string, x: number, y: number, turnDeg = 0) =>
  `<g transform="translate(${x.toFixed(2)} ${y.toFixed(2)}) rotate(${turnDeg.toFixed(1)})">${piece}</g>`;

/** A small tile laid side by side until it is about so wide, for what is shown many times over. */
export function spread(tile: ReturnType<Make>, wideMm: number): ReturnType<Make> {
  const [n, m] = [Math.round(wideMm / tile.width), Math.round(wideMm / tile.height)];
  let body = `<defs><svg id="one" width="${tile.width}" height="${tile.height}">${tile.body}</svg></defs>`;
  for (let i = 0; i < n; i++)
    for (let j = 0; j < m; j++)
      body += `<use href="#one" x="${(i * tile.width).toFixed(3)}" y="${(j * tile.height).toFixed(3)}"/>`;
  return { ...tile, width: n * tile.width, height: m * tile.height, body };
}
