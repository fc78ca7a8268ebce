import sharp, { type OverlayOptions } from "sharp";
import type { ClothMeasure } from "../../cloth/clothMeasure.ts";
import type { Rectangle } from "../../cloth/pixels/pixels.ts";
import type { ClothView } from "../../cloth/reading/clothView.ts";
import { measuredLength } from "../../swatches/measureText.ts";
import type { UnitSystem } from "../../units/printLength.ts";
import { writeAtomically } from "../writeAtomically.ts";
import { keyOf } from "./drawKey.ts";
import { LetterCase } from "./drawLetters.ts";
import { rulerTicks } from "./drawRuler.ts";
import { colourSpots, type Spot } from "./drawSpots.ts";
import { latticeLines } from "./latticeLines.ts";

const PAPER = "#faf7f0";
const INKS = { ink: "#23282e", second: "#5b6168", accent: "#9b3b24" } as const;
const MARGIN = 56;
/** Room for a ruler beside the picture, in pixels. */
const RULER = 44;
/** A small photograph is drawn larger, so that words can stand beside and on it. */
const LEAST_PX = 900;
const SPOT_PX = 34;

/**
 * Writes a PNG of the photograph as it was measured (straightened, neutralised) between rulers, with the repeat and the motif drawn
 * over it and each colour marked where it can be found again; below it the colours with their shares, what is known of the pattern,
 * and what could not be told.
 */
export async function drawMeasure(
  title: string,
  view: ClothView,
  measure: ClothMeasure,
  units: UnitSystem,
  destination: string,
): Promise<void> {
  const picture = await plate(title, view, measure, units, await LetterCase.open());
  await writeAtomically(destination, picture);
}

async function plate(
  title: string,
  seen: ClothView,
  measure: ClothMeasure,
  units: UnitSystem,
  letters: LetterCase,
): Promise<Buffer> {
  const view = await enlarged(seen);
  const { width, height } = view.whole;
  const overlays: OverlayOptions[] = [];
  const say = (mm: number) => measuredLength(mm, units);
  const left = MARGIN + RULER;
  const head = await letters.set(title, {
    sizePx: 40,
    ink: INKS.ink,
    face: "title",
    mostPx: width,
  });
  overlays.push({ input: head.png, left, top: MARGIN - 12 });
  const shows = await letters.set(
    `shows ${say(measure.showsMm)} of cloth across its middle, ${say(measure.showsDownMm)} down`,
    { sizePx: 24, ink: INKS.second, mostPx: width },
  );
  overlays.push({ input: shows.png, left, top: MARGIN + head.height - 2 });
  const top = MARGIN + head.height + shows.height + 16 + RULER;
  overlays.push(...(await rulers(view, units, letters, left, top)));
  const picture = await annotated(view, measure, say, letters);
  overlays.push({ input: picture, left, top });
  const key = await keyOf(measure, width, units, letters, INKS);
  const below = top + height + 30;
  for (const each of key.overlays)
    overlays.push({
      ...each,
      left: left + (each.left as number),
      top: below + (each.top as number),
    });
  return sharp({
    create: {
      width: left + width + MARGIN,
      height: below + key.height + MARGIN - 8,
      channels: 3,
      background: PAPER,
    },
  })
    .composite(overlays)
    .png({ compressionLevel: 9 })
    .toBuffer();
}

/** The photograph with what was measured over it. */
async function annotated(
  view: ClothView,
  measure: ClothMeasure,
  say: (mm: number) => string,
  letters: LetterCase,
): Promise<Buffer> {
  const { width, height } = view.whole;
  const { svg, labels } = latticeLines(view, measure, say);
  const taken: Rectangle[] = [];
  const words: OverlayOptions[] = [];
  for (const { x, y, text } of labels) {
    const set = await letters.set(text, { sizePx: 25, ink: INKS.ink, ground: PAPER });
    const box = clear(
      {
        x: Math.round(Math.max(4, Math.min(width - set.width - 4, x - set.width / 2))),
        y: Math.round(Math.max(4, Math.min(height - set.height - 4, y - set.height / 2))),
        width: set.width,
        height: set.height,
      },
      taken,
      height,
    );
    taken.push(box);
    words.push({ input: set.png, left: box.x, top: box.y });
  }
  const spots = colourSpots(view, measure.colours, taken, SPOT_PX * 1.6);
  const marks = spots.map((spot, at) =>
    spot ? ring(spot, measure.colours[at]?.hex ?? PAPER) : "",
  );
  const drawn = `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" fill="none">${svg}${marks.join("")}<rect x="0.5" y="0.5" width="${width - 1}" height="${height - 1}" stroke="${INKS.ink}" stroke-opacity="0.6"/></svg>`;
  const numbers: OverlayOptions[] = [];
  for (const [at, spot] of spots.entries()) {
    if (!spot) continue;
    const dark = (measure.colours[at]?.lrv ?? 50) < 32;
    const ink = dark ? "#ffffff" : INKS.ink;
    const set = await letters.set(String(at + 1), { sizePx: 22, ink, face: "bold" });
    const [x, y] = [spot.x - set.width / 2, spot.y - set.height / 2];
    numbers.push({ input: set.png, left: Math.round(x), top: Math.round(y) });
  }
  return sharp(bytesOf(view.whole.data), { raw: { width, height, channels: 3 } })
    .composite([{ input: Buffer.from(drawn), left: 0, top: 0 }, ...words, ...numbers])
    .png()
    .toBuffer();
}

/** A label moved down, or up, until it lies on no other. */
function clear(box: Rectangle, taken: readonly Rectangle[], height: number): Rectangle {
  const meets = (y: number) =>
    taken.some(
      (other) =>
        box.x < other.x + other.width + 6 &&
        other.x < box.x + box.width + 6 &&
        y < other.y + other.height + 6 &&
        other.y < y + box.height + 6,
    );
  for (let off = 0; off < height; off += 8) {
    for (const y of [box.y + off, box.y - off]) {
      if (y >= 4 && y + box.height <= height - 4 && !meets(y)) return { ...box, y };
    }
  }
  return box;
}

function ring({ x, y }: Spot, hex: string): string {
  const [cx, cy] = [x.toFixed(1), y.toFixed(1)];
  return `<circle cx="${cx}" cy="${cy}" r="${SPOT_PX / 2 + 2}" fill="#fff" stroke="${INKS.ink}" stroke-opacity="0.7"/><circle cx="${cx}" cy="${cy}" r="${SPOT_PX / 2 - 1}" fill="${hex}"/>`;
}

/** Rulers above and to the left of the picture, from its upper left corner. */
async function rulers(
  view: ClothView,
  units: UnitSystem,
  letters: LetterCase,
  left: number,
  top: number,
): Promise<OverlayOptions[]> {
  const { width, height } = view.whole;
  const overlays: OverlayOptions[] = [];
  const parts: string[] = [];
  const style = { sizePx: 18, ink: INKS.second };
  const across = rulerTicks(width, view.mmPerPx, units);
  for (const { px, number } of across.at) {
    const x = left + px;
    parts.push(`M${x.toFixed(1)} ${top - 6}v${number === null ? -7 : -14}`);
    if (number === null) continue;
    const text = number === 0 ? `0 ${across.unit}` : String(number);
    const set = await letters.set(text, style);
    const from = number === 0 ? x - 2 : x - set.width / 2;
    overlays.push({ input: set.png, left: Math.round(from), top: top - 24 - set.height });
  }
  for (const { px, number } of rulerTicks(height, view.mmPerPx, units).at) {
    const y = top + px;
    parts.push(`M${left - 6} ${y.toFixed(1)}h${number === null ? -7 : -14}`);
    if (number === null || number === 0) continue;
    const set = await letters.set(String(number), style);
    overlays.push({
      input: set.png,
      left: left - 26 - set.width,
      top: Math.round(y - set.height / 2),
    });
  }
  const size = `width="${left + width + MARGIN}" height="${top + height + 30}"`;
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" ${size}><path d="${parts.join("")}" stroke="${INKS.second}" stroke-width="1.5"/></svg>`;
  return [{ input: Buffer.from(svg), left: 0, top: 0 }, ...overlays];
}

/** A small picture at a size that words can stand on. */
async function enlarged(view: ClothView): Promise<ClothView> {
  const { width, height, data } = view.whole;
  const by = LEAST_PX / width;
  if (by <= 1) return view;
  const large = await sharp(bytesOf(data), { raw: { width, height, channels: 3 } })
    .resize(LEAST_PX, Math.round(height * by), { kernel: "lanczos3" })
    .raw()
    .toBuffer({ resolveWithObject: true });
  const { x, y, width: w, height: h } = view.part;
  const whole = {
    width: large.info.width,
    height: large.info.height,
    data: new Uint8Array(large.data),
  };
  const part = {
    x: Math.round(x * by),
    y: Math.round(y * by),
    width: Math.min(whole.width - Math.round(x * by), Math.round(w * by)),
    height: Math.min(whole.height - Math.round(y * by), Math.round(h * by)),
  };
  return { ...view, whole, part, mmPerPx: view.mmPerPx / by };
}

function bytesOf(data: Uint8Array | Float32Array): Uint8Array {
  return data instanceof Uint8Array ? data : Uint8Array.from(data, (v) => Math.round(v));
}
