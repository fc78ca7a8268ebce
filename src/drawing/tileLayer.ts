import type { Binding, Tile } from "./binding.ts";
import type { Box } from "./bounds.ts";
import { figure } from "./paths.ts";

/** Laps each tile over the next by this much on paper, so that no hairline shows between them (print design 5). */
export const OVERSIZE_MM = 0.02;

/** The definition of a tile's picture, to be used by reference; in real millimetres. */
export function tileDefinition(id: string, tile: Tile, href: string, scale: number): string {
  const lap = OVERSIZE_MM / scale;
  return `<image id="${id}" width="${figure(tile.widthMm + lap)}" height="${figure(tile.heightMm + lap)}" preserveAspectRatio="none" href="${href}"/>`;
}

/** How far down column `k` hangs against column 0. */
export function columnShift(tile: Tile, k: number): number {
  return tile.match === "half-drop" && Math.abs(k) % 2 === 1 ? tile.heightMm / 2 : 0;
}

/**
 * References to a tile that together cover a box, the main motif's middle of column 0 standing at (x, y). Whole tiles; the caller
 * clips them.
 */
export function tilesOver(box: Box, tile: Tile, id: string, x: number, y: number): string {
  const left = x - tile.originX;
  const top = y - tile.originY;
  const out: string[] = [];
  const firstColumn = Math.floor((box.x1 - left) / tile.widthMm);
  const lastColumn = Math.ceil((box.x2 - left) / tile.widthMm) - 1;
  for (let k = firstColumn; k <= lastColumn; k += 1) {
    const columnTop = top + columnShift(tile, k);
    const firstRow = Math.floor((box.y1 - columnTop) / tile.heightMm);
    const lastRow = Math.ceil((box.y2 - columnTop) / tile.heightMm) - 1;
    for (let row = firstRow; row <= lastRow; row += 1) {
      out.push(
        `<use href="#${id}" x="${figure(left + k * tile.widthMm)}" y="${figure(columnTop + row * tile.heightMm)}"/>`,
      );
    }
  }
  return out.join("");
}

/** A box seen from axes turned clockwise by `deg` about (x, y): what a turned group of tiles must cover. */
export function turnBox(box: Box, x: number, y: number, deg: number): Box {
  const angle = (-deg * Math.PI) / 180;
  const corners = [
    [box.x1, box.y1],
    [box.x2, box.y1],
    [box.x1, box.y2],
    [box.x2, box.y2],
  ].map(([px, py]) => {
    const dx = (px as number) - x;
    const dy = (py as number) - y;
    return [
      x + dx * Math.cos(angle) - dy * Math.sin(angle),
      y + dx * Math.sin(angle) + dy * Math.cos(angle),
    ] as const;
  });
  const xs = corners.map((c) => c[0]);
  const ys = corners.map((c) => c[1]);
  return { x1: Math.min(...xs), y1: Math.min(...ys), x2: Math.max(...xs), y2: Math.max(...ys) };
}

/** True where a binding carries a pattern that is to be laid. */
export function isTiled(binding: Binding): binding is { tile: Tile; averageHex: string } {
  return binding !== null && "tile" in binding;
}
