import type { Grains } from "../piece.ts";

export interface Band {
  readonly foot: Grains;
  readonly top: Grains;
}

/** The stretches between straight cross-cuts: the most bands such that no piece crosses from one to the next. */
export function bandsOf(pieces: readonly { y: Grains; height: Grains }[]): Band[] {
  const sorted = [...pieces].sort((a, b) => a.y - b.y);
  const bands: { foot: Grains; top: Grains }[] = [];
  for (const { y, height } of sorted) {
    const open = bands.at(-1);
    if (open && y < open.top) open.top = Math.max(open.top, y + height);
    else bands.push({ foot: y, top: y + height });
  }
  return bands;
}

/** The longest band; 0 without pieces. */
export function longestBand(bands: readonly Band[]): Grains {
  return bands.reduce((most, band) => Math.max(most, band.top - band.foot), 0);
}
