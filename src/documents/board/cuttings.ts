import type { Tile } from "../../drawing/binding.ts";
import { type ColourBand, colourCard } from "../pictures/colourCard.ts";
import { escapeHtml } from "../words/marks.ts";
import { svgNumber } from "../words/svgNumber.ts";
import { type Edge, edgePath } from "./edges.ts";

/** What fills a cutting: one picture, tiles of a repeat, a flat colour, or a card of its colours where nobody has photographed it yet. */
export type CuttingFill =
  | { readonly picture: string }
  | { readonly tile: Tile; readonly scale: number; readonly ground: string | null }
  | { readonly flat: string }
  | { readonly awaited: readonly ColourBand[] };

export interface Cutting {
  readonly id: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly edge: Edge;
  readonly fill: CuttingFill;
}

const r = svgNumber;

/**
 * Tiles that cover a rectangle, the motif's middle standing at (atX, atY); each a hair oversize so that no seam shows on paper, and over
 * the cloth's average, so that none does on a screen, whose pixels two tiles share at their edges.
 */
export function tileImages(
  tile: Tile,
  scale: number,
  box: { x: number; y: number; width: number; height: number },
  atX: number,
  atY: number,
  ground: string | null = null,
): string {
  const w = tile.widthMm / scale;
  const h = tile.heightMm / scale;
  const startX = atX - tile.originX / scale;
  const startY = atY - tile.originY / scale;
  const from = Math.floor((box.x - startX) / w);
  const to = Math.ceil((box.x + box.width - startX) / w);
  let out =
    ground === null
      ? ""
      : `<rect x="${r(box.x)}" y="${r(box.y)}" width="${r(box.width)}" height="${r(box.height)}" fill="${ground}"/>`;
  for (let column = from; column < to; column++) {
    const drop = tile.match === "half-drop" && column % 2 !== 0 ? h / 2 : 0;
    const first = Math.floor((box.y - startY - drop) / h);
    const last = Math.ceil((box.y + box.height - startY - drop) / h);
    for (let row = first; row < last; row++) {
      out += `<image href="${escapeHtml(tile.href)}" x="${r(startX + column * w)}" y="${r(startY + drop + row * h)}" width="${r(w + 0.02)}" height="${r(h + 0.02)}" preserveAspectRatio="none"/>`;
    }
  }
  return out;
}

/** Where the motif should stand so that one whole motif shows, a little right of and above the middle. */
export function motifSpot(c: { x: number; y: number; width: number; height: number }): {
  x: number;
  y: number;
} {
  return { x: c.x + c.width * 0.56, y: c.y + c.height * 0.42 };
}

/** Darkens a colour to about a third, for the flat shadow that a cutting throws on its ground. */
export function shadowOf(ground: string): string {
  const n = Number.parseInt(ground.slice(1), 16);
  const c = [n >> 16, (n >> 8) & 255, n & 255].map((v) => Math.round(v * 0.34));
  return `rgb(${c.join(",")})`;
}

/** The id of a cutting in its drawing, by which it can be shown once more. */
export const pieceId = (prefix: string, at: number): string => `${prefix}-piece${at}`;

/**
 * The cuttings of a board as SVG, in millimetres of paper: cloth is the only decoration. A flat shadow of two shifted copies, light
 * from the upper left; no stroke round cloth; paper, paint and pictures with a thin ink line.
 */
export function cuttingsSvg(cuttings: readonly Cutting[], ground: string, prefix: string): string {
  const shadow = shadowOf(ground);
  return cuttings
    .map((c, at) => {
      const edge = "awaited" in c.fill ? "straight" : c.edge;
      const d = edgePath(edge, c.x, c.y, c.width, c.height);
      const id = `${prefix}-c${at}`;
      const group = `<g id="${pieceId(prefix, at)}">`;
      const shade = `<path d="${d}" transform="translate(.9 1.3)" fill="${shadow}" fill-opacity=".1"/><path d="${d}" transform="translate(.4 .6)" fill="${shadow}" fill-opacity=".16"/>`;
      if ("awaited" in c.fill) return `${group}${shade}${colourCard(c.fill.awaited, c)}</g>`;
      const spot = motifSpot(c);
      const inner =
        "picture" in c.fill
          ? `<image href="${escapeHtml(c.fill.picture)}" x="${r(c.x)}" y="${r(c.y)}" width="${r(c.width)}" height="${r(c.height)}" preserveAspectRatio="xMidYMid slice"/>`
          : "tile" in c.fill
            ? tileImages(c.fill.tile, c.fill.scale, c, spot.x, spot.y, c.fill.ground)
            : `<path d="${d}" fill="${c.fill.flat}"/>`;
      const line =
        edge === "straight"
          ? `<path d="${d}" fill="none" stroke="#23282e" stroke-width=".25"/>`
          : "";
      return `${group}${shade}<clipPath id="${id}"><path d="${d}"/></clipPath><g clip-path="url(#${id})">${inner}</g>${line}</g>`;
    })
    .join("");
}
