import { inBytes, type Pixels } from "../pixels/pixels.ts";
import { edgeWidth } from "./edgeWidth.ts";

/** What makes a photograph a poor witness. */
export interface PhotoQuality {
  /** Width of its sharpest edges in pixels of the size at which patterns are read; null where it shows no edges. */
  readonly edgePx: number | null;
  /** True where even the sharpest edges are wide: out of focus, moved, or a cloth whose own edges are soft. */
  readonly soft: boolean;
  /** Part of the area, 0 to 1, where a channel is as light as it can be, so that colour is lost. */
  readonly blownShare: number;
  readonly blownOut: boolean;
  /** Part of the area that is as dark as can be. */
  readonly blockedShare: number;
  readonly tooDark: boolean;
}

/** Edges wider than this, in pixels of that size, blur small motifs and their colours. */
const SOFT_EDGE_PX = 6;
const BLOWN_SHARE = 0.02;
const BLOCKED_SHARE = 0.25;

/** Judges a photograph before it is neutralised or evened. The limits are our own, tried on made cloths; no source. */
export function photoQuality(pixels: Pixels): PhotoQuality {
  const picture = inBytes(pixels);
  const { data } = picture;
  const count = data.length / 3;
  let blown = 0;
  let blocked = 0;
  for (let i = 0; i < data.length; i += 3) {
    const most = Math.max(data[i] as number, data[i + 1] as number, data[i + 2] as number);
    if (most === 255) blown++;
    if (most <= 8) blocked++;
  }
  const edgePx = edgeWidth(picture);
  return {
    edgePx,
    soft: edgePx !== null && edgePx > SOFT_EDGE_PX,
    blownShare: blown / count,
    blownOut: blown / count > BLOWN_SHARE,
    blockedShare: blocked / count,
    tooDark: blocked / count > BLOCKED_SHARE,
  };
}
