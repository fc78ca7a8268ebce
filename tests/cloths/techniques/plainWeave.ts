import { noise1, noise2 } from "../ground/noise.ts";
import { seeded } from "../ground/seeded.ts";

export type WeaveOptions = {
  seed: number;
  /** Yarn pitch in pixels, across (warp ends) and down (weft picks); must divide the tile, so it is fitted. */
  yarnPx: number;
  /** 0 for a smooth cotton, 1 for a rough linen. */
  slub: number;
  /** Depth of the relief, 0 to 1. */
  depth: number;
  /** Finest speckle, as a share of lightness. */
  grain: number;
};

/** For each pixel of a tile the factor that the weave lays over its light, and how high the yarn on top stands (0 to 1). */
export type Weave = { factor: Float32Array; height: Float32Array };

/**
 * A plain weave, periodic over the tile: yarns over and under like a chessboard, each yarn a little lighter or darker than its
 * neighbours, with slubs (thick places) along it.
 */
export function plainWeave(width: number, height: number, options: WeaveOptions): Weave {
  const { seed, slub, depth, grain } = options;
  const ends = Math.max(2, 2 * Math.round(width / options.yarnPx / 2));
  const picks = Math.max(2, 2 * Math.round(height / options.yarnPx / 2));
  const random = seeded(seed);
  const tones = (count: number) => wander(count, random.bell, slub);
  const warpTone = tones(ends);
  const weftTone = tones(picks);
  const warpShift = tones(ends);
  const weftShift = tones(picks);
  const warpSlub = Array.from({ length: 24 }, (_, i) =>
    noise1(seed + 31 * i + 7, Math.max(3, Math.round(height / 60))),
  );
  const weftSlub = Array.from({ length: 24 }, (_, i) =>
    noise1(seed + 37 * i + 11, Math.max(3, Math.round(width / 60))),
  );
  const warpKind = Array.from({ length: ends }, () => random.next());
  const weftKind = Array.from({ length: picks }, () => random.next());
  const speckle = noise2(seed + 5, 256, 256);
  const factor = new Float32Array(width * height);
  const high = new Float32Array(width * height);
  for (let y = 0; y < height; y++) {
    const v = y / height;
    for (let x = 0; x < width; x++) {
      const u = x / width;
      const ex = u * ends;
      const py = v * picks;
      const end = Math.floor(ex);
      const pick = Math.floor(py);
      const warpOnTop = (end + pick) % 2 === 0;
      const across = warpOnTop ? ex - end : py - pick;
      const along = warpOnTop ? py - pick : ex - end;
      const relief =
        Math.cos((across - 0.5) * Math.PI) * (0.72 + 0.28 * Math.cos((along - 0.5) * Math.PI));
      const of = warpOnTop ? end : pick;
      const kind = ((warpOnTop ? warpKind : weftKind)[of] as number) * 24;
      const line = (warpOnTop ? warpSlub : weftSlub)[Math.floor(kind)] as (t: number) => number;
      const thick = Math.max(0, line((warpOnTop ? v : u) + kind * 1.7) - 0.45) * 2.2;
      const tone = (warpOnTop ? warpTone : weftTone)[of] as number;
      const neighbour = (warpOnTop ? weftShift[pick] : warpShift[end]) as number;
      const at = y * width + x;
      high[at] = relief;
      factor[at] =
        1 +
        depth * (relief - 0.62) * 0.42 +
        slub *
          (0.022 * tone * (0.6 + 0.4 * line((warpOnTop ? v : u) * 2)) +
            0.008 * neighbour +
            0.07 * thick) +
        grain * speckle(u * 3.0 + kind * 0, v * 3.0);
    }
  }
  return { factor, height: high };
}

/** A row of yarn tones: neighbours resemble each other a little, as bobbins do, and the row closes on itself. */
function wander(count: number, bell: () => number, roughness: number): number[] {
  const raw = Array.from({ length: count }, bell);
  return raw.map((value, i) => {
    const before = raw[(i + count - 1) % count] as number;
    const lone = Math.abs(value) > 1.7 ? value * 0.8 * roughness : 0;
    return 0.75 * value + 0.4 * before + lone;
  });
}
