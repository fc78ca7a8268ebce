import { cellTurned } from "../../../src/cloth/kind/cellTurned.ts";
import { CELL_SIDE, type MeanCell } from "../../../src/cloth/kind/meanCell.ts";
import { channelsOf } from "../../../src/cloth/pixels/field.ts";
import type { Basis } from "../../../src/cloth/repeat/lattice.ts";
import { oklabOfLinear } from "../../../src/colour/oklabOfPixels.ts";
import { type LightTile, sampleWrapped } from "../../cloths/ground/tile.ts";

/** What a drawing is upside down, by the drawing itself: null where a rim of a pixel decides. */
export type DrawnRuns = "two-way" | "one-way" | "neither" | null;

/** Likeness from which a drawing is the same, and under which it is another: what is rasterised is never quite itself. */
const SAME = 0.95;
const OTHER = 0.88;

/** Lays one cell of a drawing, whose repeat is known, over itself upside down and mirrored. */
export function runsOfTile(tile: LightTile, basis: Basis): DrawnRuns {
  const [a, b] = basis;
  const point = new Float32Array(3);
  const n = CELL_SIDE * CELL_SIDE;
  const channels: [Float32Array, Float32Array, Float32Array] = [
    new Float32Array(n),
    new Float32Array(n),
    new Float32Array(n),
  ];
  for (let v = 0, k = 0; v < CELL_SIDE; v++) {
    for (let u = 0; u < CELL_SIDE; u++, k++) {
      const x = (u * a[0] + v * b[0]) / CELL_SIDE;
      const y = (u * a[1] + v * b[1]) / CELL_SIDE;
      sampleWrapped(tile, x, y, point);
      const lab = oklabOfLinear(point[0] as number, point[1] as number, point[2] as number);
      for (const [c, value] of channelsOf(lab).entries()) (channels[c] as Float32Array)[k] = value;
    }
  }
  for (const channel of channels) {
    const mean = channel.reduce((sum, value) => sum + value, 0) / n;
    for (let k = 0; k < n; k++) channel[k] = (channel[k] as number) - mean;
  }
  const cell: MeanCell = { channels, agreement: 1, cells: 1 };
  const { half, mirrored } = cellTurned(cell, basis);
  if (half >= SAME) return "two-way";
  if (half > OTHER) return null;
  if (mirrored >= SAME) return "one-way";
  return mirrored > OTHER ? null : "neither";
}
