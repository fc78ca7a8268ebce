import { crop, type Pixels, type Rectangle } from "./pixels.ts";

/** The largest whole strip of a picture that a rectangle (a card laid on the cloth) does not touch. */
export function leaveOut(pixels: Pixels, { x, y, width, height }: Rectangle): Pixels {
  const right = x + width;
  const foot = y + height;
  const strips: Rectangle[] = [
    { x: 0, y: 0, width: x, height: pixels.height },
    { x: right, y: 0, width: pixels.width - right, height: pixels.height },
    { x: 0, y: 0, width: pixels.width, height: y },
    { x: 0, y: foot, width: pixels.width, height: pixels.height - foot },
  ];
  const area = (strip: Rectangle) => strip.width * strip.height;
  const best = strips.reduce((a, b) => (area(b) > area(a) ? b : a));
  return area(best) > 0 ? crop(pixels, best) : pixels;
}
