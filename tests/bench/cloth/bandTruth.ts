import type { BandSequence } from "../../../src/cloth/clothMeasure.ts";
import { difference } from "../../../src/colour/difference.ts";
import { hexOfRgb } from "../../../src/colour/hex.ts";
import { channelOfLinear } from "../../../src/colour/linear.ts";
import type { LightTile } from "../../cloths/ground/tile.ts";
import type { Drawing } from "./tile.ts";

/** A band of one repeat: its colour, and its width as a part of the repeat. */
export interface Band {
  readonly hex: string;
  readonly part: number;
}

/** CIEDE2000 under which two places of a drawing are one colour. */
const SAME = 1.5;
/** Part of a repeat by which a width may be off, and two bands of one drawing may differ by rounding. */
const WIDTH = 0.02;
const ROUNDED = 0.006;

/**
 * The bands that a stripe or check was drawn with, read off its tile: across a stripe's run, and from corner to corner of a check that
 * is the same both ways, where each yarn crosses its like.
 */
export function bandsOfTile(tile: LightTile, { kind, directionDeg }: Drawing): Band[] {
  const { width, height, light } = tile;
  const across = directionDeg === 0 ? height : width;
  const hexes = Array.from({ length: across }, (_, k) => {
    const x = directionDeg === 0 ? width >> 1 : k;
    const diagonal = Math.min(height - 1, Math.floor((k * height) / width));
    const y = kind === "check" ? diagonal : directionDeg === 0 ? k : height >> 1;
    const at = (c: number) => channelOfLinear(light[(y * width + x) * 3 + c] as number);
    return hexOfRgb([at(0), at(1), at(2)]);
  });
  const runs = joined(hexes.map((hex) => ({ hex, part: 1 / across })));
  // One pixel between two bands is of both.
  const solid = joined(runs.filter(({ part }) => part > 1.5 / across));
  const all = solid.reduce((sum, { part }) => sum + part, 0);
  return primitive(solid.map(({ hex, part }) => ({ hex, part: part / all })));
}

function joined(bands: readonly Band[]): Band[] {
  const out: Band[] = [];
  for (const band of bands) {
    const last = out.at(-1);
    if (last && difference(last.hex, band.hex) < SAME)
      out[out.length - 1] = { hex: last.hex, part: last.part + band.part };
    else out.push(band);
  }
  const [first, last] = [out[0], out.at(-1)];
  if (first && last && out.length > 1 && difference(first.hex, last.hex) < SAME) {
    out[0] = { hex: first.hex, part: first.part + last.part };
    out.pop();
  }
  return out;
}

/** The bands of the shortest repeat within them. */
function primitive(bands: readonly Band[]): Band[] {
  for (let n = 1; n < bands.length; n++) {
    if (bands.length % n > 0) continue;
    const repeats = bands.every((band, i) => {
      const other = bands[(i + n) % bands.length] as Band;
      return difference(band.hex, other.hex) < SAME && Math.abs(band.part - other.part) < ROUNDED;
    });
    if (!repeats) continue;
    const times = bands.length / n;
    return bands.slice(0, n).map(({ hex, part }) => ({ hex, part: part * times }));
  }
  return [...bands];
}

/** True where a sequence is that of the drawing, wherever it begins: as many bands, which are of one yarn, and how wide they are. */
export function isSequence({ bands }: BandSequence, truth: readonly Band[]): boolean {
  if (bands.length !== truth.length) return false;
  const repeatMm = bands.reduce((sum, { widthMm }) => sum + widthMm, 0);
  const yarns = yarnsOf(truth.map(({ hex }) => hex));
  return bands.some((_, start) => {
    const turned = [...bands.slice(start), ...bands.slice(0, start)];
    return (
      yarnsOf(turned.map(({ hex }) => hex)) === yarns &&
      turned.every(
        ({ widthMm }, i) => Math.abs(widthMm / repeatMm - (truth[i] as Band).part) < WIDTH,
      )
    );
  });
}

/** Which bands are of one yarn, as numbers in the order in which the yarns first come. */
function yarnsOf(hexes: readonly string[]): string {
  const seen: string[] = [];
  return hexes
    .map((hex) => {
      const known = seen.findIndex((other) => difference(other, hex) < SAME);
      return known >= 0 ? known : seen.push(hex) - 1;
    })
    .join(" ");
}
