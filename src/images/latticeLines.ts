import type { ClothMeasure, MeasuredRepeat } from "../cloth/clothMeasure.ts";
import type { ClothView } from "../cloth/clothView.ts";
import { motifCentre } from "../cloth/motifCentre.ts";
import { crop } from "../cloth/pixels.ts";

type Place = readonly [x: number, y: number];

/** The measured repeat and motif as SVG over a prepared photograph, and where their labels stand (in pixels). */
export interface DrawnLattice {
  readonly svg: string;
  readonly labels: readonly { readonly x: number; readonly y: number; readonly text: string }[];
}

/** Lattice points nearer together than this, in pixels, would hide the cloth: only every so manieth is drawn. */
const CLOSEST_PX = 14;

/**
 * The lattice's points over the part that was measured, one repeat as it is cut by (or the bands of a stripe) with its sizes, and
 * a bar as long as the motif. `say` prints millimetres.
 */
export function latticeLines(
  view: ClothView,
  measure: ClothMeasure,
  say: (mm: number) => string,
): DrawnLattice {
  const { part, mmPerPx } = view;
  const { repeat, motifMm, directionDeg } = measure.pattern;
  const centre = motifMm ? motifCentre(crop(view.whole, part), motifMm, mmPerPx) : null;
  const motif: Place = [
    part.x + part.width * (centre?.x ?? 0.5),
    part.y + part.height * (centre?.y ?? 0.5),
  ];
  const origin = repeat?.lattice.length === 2 ? roomiest(motif, repeat, view) : motif;
  const labels: { x: number; y: number; text: string }[] = [];
  const parts: string[] = [];
  const { width, height } = view.whole;
  if (part.width < width || part.height < height) {
    parts.push(
      `<path d="M0 0H${width}V${height}H0Z M${part.x} ${part.y}v${part.height}h${part.width}v${-part.height}Z" fill="#fff" fill-opacity="0.55" fill-rule="evenodd"/>`,
    );
  }
  if (repeat?.lattice.length === 1) parts.push(bandLines(view, repeat, origin, say, labels));
  else if (repeat) parts.push(cells(view, repeat, origin, say, labels));
  if (motifMm !== null) {
    const long = motifMm / mmPerPx;
    // Across the run of a stripe; else level.
    const turn = directionDeg === null ? 0 : ((directionDeg + 90) * Math.PI) / 180;
    const [dx, dy] = [(Math.cos(turn) * long) / 2, (-Math.sin(turn) * long) / 2];
    const [x, y] = origin;
    parts.push(line([x - dx, y - dy], [x + dx, y + dy], "#ffd34d", 5));
    labels.push({ x: x + 8, y: y + 10, text: `motif ${say(motifMm)}` });
  }
  return { svg: parts.join(""), labels };
}

/** Of the lattice's points the one whose repeat, up and to the right, lies most in the part. */
function roomiest(from: Place, repeat: MeasuredRepeat, { part, mmPerPx }: ClothView): Place {
  const [a, b] = repeat.lattice.map(([x, y]): Place => [x / mmPerPx, y / mmPerPx]) as [
    Place,
    Place,
  ];
  const w = (repeat.horizontalMm ?? 0) / mmPerPx;
  const h = (repeat.verticalMm ?? 0) / mmPerPx;
  const wanted: Place = [part.x + (part.width - w) / 2, part.y + (part.height + h) / 2];
  const away = ([x, y]: Place) => Math.hypot(x - wanted[0], y - wanted[1]);
  let best = from;
  for (let i = -40; i <= 40; i++) {
    for (let j = -40; j <= 40; j++) {
      const at: Place = [from[0] + i * a[0] + j * b[0], from[1] + i * a[1] + j * b[1]];
      if (away(at) < away(best)) best = at;
    }
  }
  return best;
}

function cells(
  { part, mmPerPx }: ClothView,
  repeat: MeasuredRepeat,
  origin: Place,
  say: (mm: number) => string,
  labels: { x: number; y: number; text: string }[],
): string {
  const [a, b] = repeat.lattice.map(([x, y]): Place => [x / mmPerPx, y / mmPerPx]) as [
    Place,
    Place,
  ];
  const shortest = Math.min(Math.hypot(...a), Math.hypot(...b));
  const every = Math.max(1, Math.ceil(CLOSEST_PX / shortest));
  const cell = Math.abs(a[0] * b[1] - a[1] * b[0]);
  const far = Math.hypot(part.width, part.height);
  const most = Math.min(
    400,
    Math.ceil((far * Math.max(Math.hypot(...a), Math.hypot(...b))) / cell),
  );
  const { x: left, y: top, width, height } = part;
  const parts: string[] = [
    `<clipPath id="part"><rect x="${left}" y="${top}" width="${width}" height="${height}"/></clipPath>`,
  ];
  for (const [along, over] of [
    [a, b],
    [b, a],
  ] as const) {
    const long = far / Math.hypot(...along);
    for (let i = -most; i <= most; i++) {
      if (i % every !== 0) continue;
      const [x, y] = [origin[0] + i * over[0], origin[1] + i * over[1]];
      const d = `M${(x - along[0] * long).toFixed(1)} ${(y - along[1] * long).toFixed(1)}L${(x + along[0] * long).toFixed(1)} ${(y + along[1] * long).toFixed(1)}`;
      parts.push(
        `<path clip-path="url(#part)" d="${d}" stroke="#fff" stroke-opacity="0.55" stroke-width="1.5"/>`,
      );
    }
  }
  for (let i = -most; i <= most; i++) {
    for (let j = -most; j <= most; j++) {
      if (i % every !== 0 || j % every !== 0) continue;
      const at: Place = [origin[0] + i * a[0] + j * b[0], origin[1] + i * a[1] + j * b[1]];
      if (!within(at, part)) continue;
      const size = Math.max(3, Math.min(9, 0.08 * shortest * every));
      parts.push(
        `<circle cx="${at[0].toFixed(1)}" cy="${at[1].toFixed(1)}" r="${size.toFixed(1)}" fill="#fff" stroke="#111" stroke-width="2"/>`,
      );
    }
  }
  const { verticalMm, horizontalMm, match } = repeat;
  if (verticalMm !== null && horizontalMm !== null) {
    const [w, h] = [horizontalMm / mmPerPx, verticalMm / mmPerPx];
    const [x, y] = origin;
    const dropped: Place = [x + w, match === "half-drop" ? y - h / 2 : y];
    parts.push(line(origin, [x, y - h], "#fff", 3), line(origin, dropped, "#fff", 3));
    labels.push({ x: x + 8, y: y - h / 2, text: `${say(verticalMm)} up` });
    const how = match === "other" ? ", set askew" : `, ${match}`;
    labels.push({
      x: x + w / 2,
      y: (y + dropped[1]) / 2 - 30,
      text: `${say(horizontalMm)} across${how}`,
    });
  } else {
    for (const [vx, vy] of [a, b])
      parts.push(line(origin, [origin[0] + vx, origin[1] + vy], "#fff", 3));
    labels.push({ x: origin[0] + 8, y: origin[1] - 30, text: "set askew" });
  }
  return parts.join("");
}

/** A line along the run at each repeat of a stripe. */
function bandLines(
  { part, mmPerPx }: ClothView,
  repeat: MeasuredRepeat,
  origin: Place,
  say: (mm: number) => string,
  labels: { x: number; y: number; text: string }[],
): string {
  const [vx, vy] = (repeat.lattice[0] as Place).map((v) => v / mmPerPx) as [number, number];
  const period = Math.hypot(vx, vy);
  const far = Math.hypot(part.width, part.height);
  const [ux, uy] = [(-vy / period) * far, (vx / period) * far];
  const every = Math.max(1, Math.ceil(CLOSEST_PX / period));
  const most = Math.ceil(far / period);
  const parts: string[] = [];
  for (let i = -most; i <= most; i++) {
    if (i % every !== 0) continue;
    const [x, y] = [origin[0] + i * vx, origin[1] + i * vy];
    parts.push(line([x - ux, y - uy], [x + ux, y + uy], "#fff", 2));
  }
  const { x, y, width, height } = part;
  labels.push({
    x: origin[0] + vx / 2,
    y: origin[1] - 40,
    text: `${say(Math.hypot(...(repeat.lattice[0] as Place)))} from band to band`,
  });
  return `<clipPath id="part"><rect x="${x}" y="${y}" width="${width}" height="${height}"/></clipPath><g clip-path="url(#part)">${parts.join("")}</g>`;
}

function line(from: Place, to: Place, colour: string, width: number): string {
  const d = `M${from.map((v) => v.toFixed(1)).join(" ")}L${to.map((v) => v.toFixed(1)).join(" ")}`;
  return `<path d="${d}" stroke="#111" stroke-width="${width + 2}" stroke-linecap="round"/><path d="${d}" stroke="${colour}" stroke-width="${width}" stroke-linecap="round"/>`;
}

function within([x, y]: Place, part: ClothView["part"]): boolean {
  return x >= part.x && y >= part.y && x <= part.x + part.width && y <= part.y + part.height;
}
