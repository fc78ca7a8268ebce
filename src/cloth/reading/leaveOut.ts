import { oklabOfPixels } from "../../colour/oklabOfPixels.ts";
import { crop, type Pixels, type Rectangle } from "../pixels/pixels.ts";

/** Distance in Oklab within which a pixel is still the card. */
const LIKE = 0.05;
/** Part of a line along the card's side that must be like it for the card to reach so far. */
const MOSTLY = 0.6;
/** A card reaches at most so many times its rectangle's size beyond it; further out it is cloth of the card's colour. */
const FURTHEST = 2;

/**
 * A picture without the card that lies on the cloth: the largest whole strip beside it. The rectangle that she gives lies on
 * the card, not around it, so it is first grown over what is of its colour, and by a small rim for the card's edge and shadow.
 */
export function leaveOut(pixels: Pixels, rectangle: Rectangle): Pixels {
  const strip = largestBeside(wholeOf(pixels), wholeCard(pixels, rectangle));
  return strip ? crop(pixels, strip) : pixels;
}

/** All of a picture. */
export function wholeOf({ width, height }: Pixels): Rectangle {
  return { x: 0, y: 0, width, height };
}

/** The largest strip of a rectangle that lies wholly beside another: left, right, above or below; null where there is none. */
export function largestBeside(within: Rectangle, taken: Rectangle): Rectangle | null {
  const left = Math.max(within.x, taken.x);
  const top = Math.max(within.y, taken.y);
  const right = Math.min(within.x + within.width, taken.x + taken.width);
  const foot = Math.min(within.y + within.height, taken.y + taken.height);
  if (right <= left || foot <= top) return within;
  const { x, y, width, height } = within;
  const strips: Rectangle[] = [
    { x, y, width: left - x, height },
    { x: right, y, width: x + width - right, height },
    { x, y, width, height: top - y },
    { x, y: foot, width, height: y + height - foot },
  ];
  const area = (strip: Rectangle) => strip.width * strip.height;
  const best = strips.reduce((a, b) => (area(b) > area(a) ? b : a));
  return area(best) > 0 ? best : null;
}

/** The rectangle grown over the card that it lies on, with a rim. */
export function wholeCard(pixels: Pixels, rectangle: Rectangle): Rectangle {
  const { width, height } = pixels;
  const oklab = oklabOfPixels(pixels.data);
  const card = meanOf(oklab, width, rectangle);
  const like = (x: number, y: number) => {
    const i = (y * width + x) * 3;
    const off = [0, 1, 2].map((c) => (oklab[i + c] as number) - (card[c] as number));
    return Math.hypot(...off) < LIKE;
  };
  const mostly = (count: number, at: (i: number) => boolean) => {
    let n = 0;
    for (let i = 0; i < count; i++) if (at(i)) n++;
    return n >= MOSTLY * count;
  };
  let { x: left, y: top } = rectangle;
  let [right, foot] = [left + rectangle.width, top + rectangle.height];
  const given = { ...rectangle };
  const farX = FURTHEST * given.width;
  const farY = FURTHEST * given.height;
  while (left > 0 && mostly(given.height, (i) => like(left - 1, given.y + i))) left--;
  while (right < width && mostly(given.height, (i) => like(right, given.y + i))) right++;
  while (top > 0 && mostly(given.width, (i) => like(given.x + i, top - 1))) top--;
  while (foot < height && mostly(given.width, (i) => like(given.x + i, foot))) foot++;
  // A side that runs too far has run into cloth of the card's colour.
  if (given.x - left > farX) left = given.x;
  if (right - given.x - given.width > farX) right = given.x + given.width;
  if (given.y - top > farY) top = given.y;
  if (foot - given.y - given.height > farY) foot = given.y + given.height;
  const rim = Math.max(2, Math.round(0.008 * Math.max(width, height)));
  left = Math.max(0, left - rim);
  top = Math.max(0, top - rim);
  right = Math.min(width, right + rim);
  foot = Math.min(height, foot + rim);
  return { x: left, y: top, width: right - left, height: foot - top };
}

function meanOf(oklab: Float32Array, width: number, area: Rectangle): number[] {
  const sums = [0, 0, 0];
  for (let y = area.y; y < area.y + area.height; y++) {
    for (let x = area.x; x < area.x + area.width; x++) {
      for (let c = 0; c < 3; c++)
        sums[c] = (sums[c] as number) + (oklab[(y * width + x) * 3 + c] as number);
    }
  }
  return sums.map((sum) => sum / (area.width * area.height));
}
