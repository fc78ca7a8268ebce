import { unevenness } from "../../drawing/foldGeometry.ts";
import { circle, cubic, ellipse, line, rect } from "../../drawing/paths.ts";
import type { Shape } from "../../drawing/shape.ts";

/** Millimetres of the real thing: a usual pole, ring and finial (common practice, no source). */
export const POLE_RADIUS = 15;
export const RING = { rx: 14, ry: 32 } as const;
export const FINIAL_RADIUS = 30;

/** A goblet: a cup that is open at its rim and pinched at its waist. */
export function goblet(x: number, top: number, depth: number, half: number): Shape[] {
  const waist = top + depth;
  const foot = half * 0.22;
  const rim = half * 0.16;
  return [
    {
      shape: "path",
      d: [
        cubic(
          [x - half, top],
          [x - half, top + depth * 0.55],
          [x - foot, top + depth * 0.7],
          [x - foot, waist],
        ),
        cubic(
          [x + half, top],
          [x + half, top + depth * 0.55],
          [x + foot, top + depth * 0.7],
          [x + foot, waist],
        ),
      ].join(""),
      fill: null,
      pen: "edge",
    },
    // Inside the rim it is dark.
    { shape: "path", d: ellipse(x, top, half, rim), fill: { tone: "shadow" }, pen: "edge" },
    {
      shape: "path",
      d: line(x - foot * 1.5, waist, x + foot * 1.5, waist),
      fill: null,
      pen: "outline",
    },
  ];
}

/** A tab from the heading up over the pole, in the curtain's own cloth; its pattern runs on from the point given. */
export function tab(
  x: number,
  width: number,
  headY: number,
  poleY: number,
  origin: { readonly x: number; readonly y: number },
): Shape[] {
  const top = poleY - POLE_RADIUS - 3;
  const d = rect(x - width / 2, top, width, headY - top + 6);
  return [
    { shape: "path", d, fill: { surface: "face", ...origin }, pen: "edge" },
    { shape: "shading", d, light: 0.18, dark: 0.16, direction: "down" },
  ];
}

/** Cloth gathered on a pole through its slot: fine strokes over frill and slot, and the slot's two seams. */
export function slotGathers(
  left: number,
  width: number,
  top: number,
  frill: number,
  depth: number,
): Shape[] {
  const count = Math.max(4, Math.round(width / 17));
  const strokes: string[] = [];
  for (let at = 1; at < count; at += 1) {
    const x = left + (width * at) / count;
    strokes.push(line(x, top + depth * 0.05, x, top + depth * (at % 3 === 1 ? 1.35 : 1.05)));
  }
  const right = left + width;
  const seams = frill > 0 ? [top + frill, top + depth] : [top + depth];
  return [
    { shape: "path", d: strokes.join(""), fill: null, pen: "fold" },
    {
      shape: "path",
      d: seams.map((y) => line(left, y, right, y)).join(""),
      fill: null,
      pen: "edge",
    },
  ];
}

/** The pole as it is seen between the folds of an eyelet heading, with the rims of the eyelets beside it. */
export function eyeletGaps(edges: readonly number[], poleY: number): Shape[] {
  return edges.slice(0, -1).flatMap((left, fold): Shape[] => {
    const right = edges[fold + 1] as number;
    const pitch = right - left;
    const gap = pitch * 0.24;
    const rim = (x: number): Shape => ({
      shape: "path",
      d: ellipse(x, poleY, Math.min(8, pitch * 0.09), POLE_RADIUS * 1.45),
      fill: { tone: "metal" },
      pen: "edge",
    });
    const bar = (x: number, width: number): Shape => ({
      shape: "path",
      d: rect(x, poleY - POLE_RADIUS, width, POLE_RADIUS * 2),
      fill: { tone: "wood-dark" },
      pen: "edge",
    });
    return [rim(left + gap), rim(right - gap), bar(left, gap), bar(right - gap, gap)];
  });
}

/** A pole from `left` to `right` about `y`, with round finials beyond its ends. */
export function pole(left: number, right: number, y: number): Shape[] {
  const finial = (x: number): Shape => ({
    shape: "path",
    d: circle(x, y, FINIAL_RADIUS),
    fill: { tone: "wood-dark" },
    pen: "edge",
  });
  return [
    {
      shape: "path",
      d: rect(left, y - POLE_RADIUS, right - left, POLE_RADIUS * 2),
      fill: { tone: "wood-dark" },
      pen: "edge",
    },
    finial(left - FINIAL_RADIUS * 0.8),
    finial(right + FINIAL_RADIUS * 0.8),
  ];
}

/** A slim track between two walls. */
export function track(left: number, right: number, y: number): Shape[] {
  return [
    {
      shape: "path",
      d: rect(left, y - 10, right - left, 20),
      fill: { tone: "white" },
      pen: "edge",
    },
  ];
}

/** The front half of a ring about the pole. */
export function ring(x: number, poleY: number): Shape {
  return { shape: "path", d: ellipse(x, poleY, RING.rx, RING.ry), fill: null, pen: "edge" };
}

/**
 * Creases that fall from a heading, each its own way: from every place two, of which one soon ends, leaning a little towards the
 * hem. `pitch` is the distance between two places; repeatable, since a drawing must not change by itself.
 */
export function fallingFolds(
  places: readonly number[],
  pitch: number,
  top: number,
  foot: number,
): Shape {
  const fall = foot - top;
  const one = (x: number, lean: number, reach: number) =>
    cubic(
      [x, top],
      [x + lean * 0.2, top + fall * reach * 0.4],
      [x + lean, top + fall * reach * 0.6],
      [x + lean * 1.1, top + fall * reach],
    );
  const lines = places.flatMap((x, at) => {
    const [a, b, c] = [unevenness(at * 3 + 5), unevenness(at * 3 + 6), unevenness(at * 3 + 7)];
    const long = one(x + pitch * 0.06 * (a - 0.5), pitch * 0.22 * (b - 0.5), 0.72 + 0.24 * c);
    const aside = (at % 2 === 0 ? 1 : -1) * pitch * (0.1 + 0.08 * b);
    const short = one(x + aside * 0.6, aside, 0.16 + 0.3 * a);
    return c > 0.18 ? [long, short] : [long];
  });
  return { shape: "path", d: lines.join(""), fill: null, pen: "fold" };
}

/** The heading between two tabs hangs a little: one shallow curve from tab to tab. */
export function swags(
  places: readonly number[],
  tabWidth: number,
  headY: number,
  deep: number,
): Shape {
  const d = places.slice(1).map((to, at) => {
    const from = (places[at] as number) + tabWidth / 2;
    const end = to - tabWidth / 2;
    const low = headY + deep * (0.7 + 0.6 * unevenness(at + 3));
    return `M${from.toFixed(2)} ${headY.toFixed(2)}Q${((from + end) / 2).toFixed(2)} ${(2 * low - headY).toFixed(2)} ${end.toFixed(2)} ${headY.toFixed(2)}`;
  });
  return { shape: "path", d: d.join(""), fill: null, pen: "dimension" };
}
