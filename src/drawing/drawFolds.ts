import { flatOf, type Tile } from "./binding.ts";
import { type FoldedCloth, foldCloth, SLICES, unevenness } from "./foldGeometry.ts";
import { figure, type Point, polyline } from "./paths.ts";
import type { Pencase } from "./pencase.ts";
import type { Shape } from "./shape.ts";
import { columnShift, isTiled } from "./tileLayer.ts";

type Folds = Extract<Shape, { shape: "folds" }>;

/** The narrowest slice of a fold on paper. */
const LEAST_SLICE_MM = 0.14;

/** The waves of a hem on paper, up and down. */
const WAVE_MM = 0.55;

/** Cloth hung in folds: the pattern squeezed slice by slice, shaded as vectors, with a waving hem and falling hairlines. */
export function drawFolds(folds: Folds, pencase: Pencase): string {
  const workshop = pencase.style === "workshop";
  // A slice narrower than print can show is not cut.
  const pitchMm = (folds.width / folds.pleats) * pencase.scale;
  const count = Math.max(4, Math.min(SLICES, Math.round(pitchMm / LEAST_SLICE_MM)));
  const { x, width, flatWidth, pleats } = folds;
  const cloth = foldCloth(x, width, flatWidth, pleats, workshop ? 0 : 0.08, count);
  const outline = outlineOf(folds, cloth, pencase);
  if (pencase.isAbsent)
    return `<path d="${outline}" fill="${pencase.ground}" stroke-linejoin="round" ${pencase.stroke("outline")}/>`;
  const clip = pencase.newId();
  pencase.define(`<clipPath id="${clip}"><path d="${outline}"/></clipPath>`);
  const parts = [`<g clip-path="url(#${clip})">`];
  if (workshop) parts.push(`<path d="${outline}" fill="#fff"/>`);
  else parts.push(face(folds, cloth, pencase), shading(folds, cloth, pencase));
  parts.push("</g>");
  if (folds.creases !== false && !pencase.isSmall) parts.push(creases(folds, cloth, pencase));
  parts.push(
    `<path d="${outline}" fill="none" stroke-linejoin="round" ${pencase.stroke("outline")}/>`,
  );
  return parts.join("");
}

/** How much of its width the cloth still has at a height: drawn in smoothly to its waist, and opening again a little below it. */
function shareAt(folds: Folds, y: number): number {
  const { waist } = folds;
  if (!waist) return 1;
  const least = Math.min(1, waist.width / folds.width);
  const above = Math.max(0, (y - folds.y) / (waist.y - folds.y));
  if (y <= waist.y) return 1 - (1 - least) * above ** 2.2;
  const below = (y - waist.y) / (folds.y + folds.height - waist.y);
  return least + (1 - least) * 0.62 * Math.sin((Math.min(1, below * 1.25) * Math.PI) / 2);
}

/** A place on the hanging cloth once it is drawn in about its middle. */
function drawnIn(folds: Folds, x: number, y: number): Point {
  const middle = folds.x + folds.width / 2;
  return [middle + (x - middle) * shareAt(folds, y), y];
}

/** Points down one side, as many as its curve needs. */
function side(folds: Folds, x: number, from: number, to: number): Point[] {
  if (!folds.waist) return [[x, to]];
  return Array.from({ length: 28 }, (_, at) =>
    drawnIn(folds, x, from + ((to - from) * (at + 1)) / 28),
  );
}

/** The cloth's edge: three straight sides, and a foot that waves with the folds. */
function outlineOf(folds: Folds, cloth: FoldedCloth, pencase: Pencase): string {
  const { x, y, width, height, hem } = folds;
  const foot = y + height;
  const points: Point[] = [
    [x, y],
    [x + width, y],
  ];
  if (hem === "straight") {
    points.push(...side(folds, x + width, y, foot), drawnIn(folds, x, foot));
    if (folds.waist) points.push(...side(folds, x, foot, y));
    return polyline(points, true);
  }
  // It never dips under the given foot: cloth that clears the floor must be seen to clear it.
  const wave = Math.min(pencase.paper(WAVE_MM), folds.height / 60);
  const middle = foot - wave;
  if (folds.waist) points.push(...side(folds, x + width, y, middle - wave));
  for (let fold = cloth.edges.length - 2; fold >= 0; fold -= 1) {
    const left = cloth.edges[fold] as number;
    const pitch = (cloth.edges[fold + 1] as number) - left;
    for (let step = 12; step >= 1; step -= 1) {
      points.push(
        drawnIn(
          folds,
          left + (pitch * step) / 12,
          middle - wave * Math.cos((2 * Math.PI * step) / 12),
        ),
      );
    }
  }
  points.push(drawnIn(folds, x, middle - wave));
  if (folds.waist) points.push(...side(folds, x, middle - wave, y));
  return polyline(points, true);
}

function face(folds: Folds, cloth: FoldedCloth, pencase: Pencase): string {
  const binding = pencase.binding(folds.surface);
  const { x, y, width, height } = folds;
  const flat = `<rect x="${figure(x)}" y="${figure(y)}" width="${figure(width)}" height="${figure(height)}" fill="${flatOf(binding)}"/>`;
  if (!isTiled(binding)) return flat;
  const { tile } = binding;
  const columns = [0, 1].map((odd) => column(tile, odd, folds, pencase));
  const left = folds.originX - tile.originX;
  const slices = cloth.slices.map((slice) => {
    const squeeze = slice.flatWidth / slice.width;
    // Each slice laps under the next, so that no gap shows between them at any resolution.
    const lap = Math.min(slice.width, pencase.paper(0.25));
    const from = slice.flatX;
    const to = from + slice.flatWidth + lap * squeeze;
    const uses: string[] = [];
    for (let k = Math.floor((from - left) / tile.widthMm); left + k * tile.widthMm < to; k += 1) {
      const id = columns[tile.match === "half-drop" ? Math.abs(k) % 2 : 0];
      uses.push(`<use href="#${id}" x="${figure(left + k * tile.widthMm)}"/>`);
    }
    return `<svg x="${figure(slice.x)}" y="${figure(y)}" width="${figure(slice.width + lap)}" height="${figure(height)}" viewBox="${figure(from)} ${figure(y)} ${figure(to - from)} ${figure(height)}" preserveAspectRatio="none">${uses.join("")}</svg>`;
  });
  return `<g aria-hidden="true">${flat}${slices.join("")}</g>`;
}

/** One column of the cloth as high as the folds, defined once for even and once for odd columns. */
function column(tile: Tile, odd: number, folds: Folds, pencase: Pencase): string {
  if (odd === 1 && tile.match !== "half-drop") return "";
  const id = pencase.newId();
  const tileId = pencase.tileId({ tile, averageHex: "#ffffff" });
  const top = folds.originY - tile.originY + columnShift(tile, odd);
  const uses: string[] = [];
  for (
    let row = Math.floor((folds.y - top) / tile.heightMm);
    top + row * tile.heightMm < folds.y + folds.height;
    row += 1
  ) {
    uses.push(`<use href="#${tileId}" y="${figure(top + row * tile.heightMm)}"/>`);
  }
  pencase.define(`<g id="${id}">${uses.join("")}</g>`);
  return id;
}

/** All folds' shade as two gradients over the whole width: one that multiplies, one that lightens. Vectors in print. */
function shading(folds: Folds, cloth: FoldedCloth, pencase: Pencase): string {
  const { x, y, width, height } = folds;
  const layer = (
    colour: string,
    strength: (slice: FoldedCloth["slices"][number]) => number,
    blend: string,
  ) => {
    const id = pencase.newId();
    const stops = cloth.slices.map((slice) => {
      const at = (slice.x + slice.width / 2 - x) / width;
      return `<stop offset="${figure(at)}" stop-color="${colour}" stop-opacity="${figure(Math.min(1, strength(slice)))}"/>`;
    });
    pencase.define(`<linearGradient id="${id}">${stops.join("")}</linearGradient>`);
    return `<rect x="${figure(x)}" y="${figure(y)}" width="${figure(width)}" height="${figure(height)}" fill="url(#${id})"${blend}/>`;
  };
  const shadow = pencase.style === "grey" ? "#8b8b8b" : "#94867f";
  return (
    layer(shadow, (slice) => 1.5 * slice.dark, ' style="mix-blend-mode:multiply"') +
    layer("#ffffff", (slice) => slice.light, "")
  );
}

/** A hairline from each valley that stops short of the hem, each at its own height. */
function creases(folds: Folds, cloth: FoldedCloth, pencase: Pencase): string {
  const foot = folds.y + folds.height;
  const head = folds.y + Math.min(100, folds.height / 8);
  const room = foot - head;
  const lines = cloth.edges.slice(1, -1).map((x, at) => {
    const short = Math.min(room * 0.4, pencase.paper(4 + 22 * unevenness(at + 31)));
    if (folds.waist) {
      const fall = foot - short - head;
      return polyline(
        Array.from({ length: 25 }, (_, step) => drawnIn(folds, x, head + (fall * step) / 24)),
      );
    }
    return `M${figure(x)} ${figure(head)}V${figure(foot - short)}`;
  });
  return lines.length > 0
    ? `<path d="${lines.join("")}" fill="none" ${pencase.stroke("fold")}/>`
    : "";
}
