import type { RoomScheme } from "../../scheme/roomScheme.ts";

/** A part of the share strip, millimetres from the sheet's upper edge. */
export interface StripPart {
  readonly hex: string;
  readonly name: string;
  readonly hundredths: number;
  readonly y: number;
  readonly height: number;
  /** Where its label's first line stands; moved off where the part is too low for it. */
  readonly labelY: number;
  /** True where a hair leader must join label and part. */
  readonly led: boolean;
}

const LABEL_MM = 9;

/**
 * The share strip: full height, every part at its true height, the largest at the top; labels at each part's middle top, pushed
 * apart where parts are low, and then led to by a hair line.
 */
export function shareStrip(
  scheme: RoomScheme,
  height: number,
  labelsFrom: number,
  labelsTo: number,
): StripPart[] {
  let y = 0;
  const parts = scheme.shares.map((s) => {
    const part = {
      hex: s.hex,
      name: s.name.charAt(0).toUpperCase() + s.name.slice(1),
      hundredths: s.hundredths,
      y,
      height: (height * s.hundredths) / 100,
    };
    y += part.height;
    return part;
  });
  const wanted = parts.map((p) => Math.max(labelsFrom, p.y + Math.min(3.2, p.height / 2 - 2)));
  const placed: number[] = [];
  for (const w of wanted)
    placed.push(Math.max(w, (placed.at(-1) ?? Number.NEGATIVE_INFINITY) + LABEL_MM));
  for (let i = placed.length - 1, floor = labelsTo; i >= 0; i--) {
    placed[i] = Math.min(placed[i] as number, floor);
    floor = (placed[i] as number) - LABEL_MM;
  }
  return parts.map((p, at) => {
    const labelY = placed[at] as number;
    return {
      ...p,
      labelY,
      led: labelY + 2 < p.y || labelY + 2 > p.y + p.height,
    };
  });
}
