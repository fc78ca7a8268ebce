import { textWidthMm } from "../../drawing/words.ts";
import { svgNumber } from "../words/svgNumber.ts";
import { type LabelBox, meets } from "./labelPlaces.ts";

const r = (n: number): string => svgNumber(n, 2);
/** A strip thinner than this has no room for its number. */
const THIN_MM = 3.6;
/** Of a number and its ground. */
const HIGH = 4;
/** Shares of a strip's length at which its number is tried, and distances from the strip. */
const ALONG = [0.5, 0.35, 0.65, 0.2, 0.8];
const AWAY = [1, 2.5, 4, 6, 8, 10];

/**
 * The number of a strip too thin to hold it: beside it on what is not cut, with a line to a dot on the strip; null where the strip
 * is no such strip or nothing beside it is free. It adds itself to the labels `taken`.
 */
export function stripLabel(
  number: string,
  at: LabelBox,
  taken: LabelBox[],
  pieces: readonly LabelBox[],
  cloth: { readonly top: number; readonly foot: number },
): string | null {
  if (at.height >= THIN_MM || at.width < 6) return null;
  const width = textWidthMm(number) * 1.04 + 1;
  const middle = at.y + at.height / 2;
  for (const away of AWAY)
    for (const share of ALONG)
      for (const below of [true, false]) {
        const x = at.x + at.width * share;
        const y = below ? at.y + at.height + away : at.y - away - HIGH;
        const box = { x: x - width / 2, y, width, height: HIGH };
        if (y < cloth.top || y + HIGH > cloth.foot) continue;
        if (box.x < at.x || box.x + width > at.x + at.width) continue;
        const own = {
          x: x - 0.6,
          width: 1.2,
          y: Math.min(middle, y),
          height: Math.abs(middle - y),
        };
        if ([...taken, ...pieces].some((other) => meets(box, other))) continue;
        if (taken.some((other) => meets(own, other))) continue;
        taken.push(box, own);
        const to = below ? y + 0.4 : y + HIGH - 0.4;
        return `<rect x="${r(box.x)}" y="${r(y)}" width="${r(width)}" height="${HIGH}" fill="#fff"/><path d="M${r(x)} ${r(middle)}V${r(to)}" stroke="#000" stroke-width=".25"/><circle cx="${r(x)}" cy="${r(middle)}" r=".55"/><text x="${r(x)}" y="${r(y + 3.3)}" text-anchor="middle" font-size="3.5" font-weight="700">${number}</text>`;
      }
  return null;
}
