import type { ClothColour } from "../../cloth/palette/palette.ts";
import { crop, type Rectangle } from "../../cloth/pixels/pixels.ts";
import { shrinkToSide } from "../../cloth/pixels/shrink.ts";
import type { ClothView } from "../../cloth/reading/clothView.ts";
import { oklabOfPixels } from "../../colour/oklabOfPixels.ts";

/** A place on the cloth, in pixels of the whole prepared picture. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** Longer side at which the places are looked for. */
const SIDE = 260;
/** Pixels to each side of a place, at that size, over which its colour is taken; fewer where it lies on lines alone. */
const REACHES = [2, 1, 0];
/** Oklab distance beyond which a place does not show the colour. */
const SEEN = 0.09;

/**
 * For each colour a place on the cloth where it can be found again: where a small patch all round comes nearest to it, away from what
 * is taken already; the smaller the patch must be, the thinner what bears the colour. Null where the picture shows it nowhere.
 */
export function colourSpots(
  view: ClothView,
  colours: readonly Pick<ClothColour, "hex">[],
  taken: readonly Rectangle[],
  apartPx: number,
): (Spot | null)[] {
  const small = shrinkToSide(crop(view.whole, view.part), SIDE);
  const { width, height } = small;
  const scale = view.part.width / width;
  const lab = oklabOfPixels(small.data);
  const spotAt = (x: number, y: number): Spot => ({
    x: view.part.x + (x + 0.5) * scale,
    y: view.part.y + (y + 0.5) * scale,
  });
  const found: (Spot | null)[] = [];
  for (const { hex } of colours) {
    const own = oklabOfPixels(rgbOf(hex));
    const away = new Float32Array(width * height);
    for (let i = 0; i < away.length; i++) {
      away[i] = Math.hypot(...[0, 1, 2].map((c) => at(lab, i * 3 + c) - at(own, c)));
    }
    const isFree = (x: number, y: number) =>
      !isTaken(spotAt(x, y), taken, found, view.part, apartPx);
    let best: readonly [number, number] | null = null;
    for (const reach of REACHES) best ??= nearestPatch(away, width, height, reach, isFree);
    found.push(best && spotAt(...best));
  }
  return found;
}

/** The middle of the patch that on average is nearest to a colour, of those that show it and are free. */
function nearestPatch(
  away: Float32Array,
  width: number,
  height: number,
  reach: number,
  isFree: (x: number, y: number) => boolean,
): readonly [number, number] | null {
  let best: readonly [number, number] | null = null;
  let least = SEEN;
  for (let y = reach; y < height - reach; y++) {
    for (let x = reach; x < width - reach; x++) {
      if (at(away, y * width + x) > least) continue;
      let mean = 0;
      for (let dy = -reach; dy <= reach; dy++)
        for (let dx = -reach; dx <= reach; dx++)
          mean += at(away, (y + dy) * width + x + dx) / (2 * reach + 1) ** 2;
      if (mean >= least || !isFree(x, y)) continue;
      least = mean;
      best = [x, y];
    }
  }
  return best;
}

function isTaken(
  { x, y }: Spot,
  taken: readonly Rectangle[],
  found: readonly (Spot | null)[],
  part: Rectangle,
  apartPx: number,
): boolean {
  const rim = apartPx / 2;
  if (x < part.x + rim || y < part.y + rim) return true;
  if (x > part.x + part.width - rim || y > part.y + part.height - rim) return true;
  if (found.some((other) => other && Math.hypot(other.x - x, other.y - y) < apartPx)) return true;
  return taken.some(
    (box) =>
      x > box.x - rim &&
      y > box.y - rim &&
      x < box.x + box.width + rim &&
      y < box.y + box.height + rim,
  );
}

function rgbOf(hex: string): Uint8Array {
  return Uint8Array.from([1, 3, 5].map((from) => Number.parseInt(hex.slice(from, from + 2), 16)));
}

function at(values: Float32Array, i: number): number {
  return values[i] as number;
}
