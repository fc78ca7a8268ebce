import { mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import sharp, { type OverlayOptions } from "sharp";
import type { ClothMeasure } from "../cloth/clothMeasure.ts";
import type { ClothView } from "../cloth/clothView.ts";
import { measuredLength } from "../swatches/measureText.ts";
import type { UnitSystem } from "../units/printLength.ts";
import { latticeLines } from "./latticeLines.ts";
import { plainFont } from "./plainFont.ts";
import { writeAtomically } from "./writeAtomically.ts";

const INK = "#1f1c18";
const PAPER = "#faf7f0";
/** Margins, chips and letters of the key below the picture, in pixels. */
const MARGIN = 24;
const ROW = 44;
const CHIP = 64;
const FONT = join(
  dirname(createRequire(import.meta.url).resolve("@fontsource/alegreya-sans/package.json")),
  "files",
  "alegreya-sans-latin-400-normal.woff",
);

/**
 * Writes a PNG of the photograph as it was measured (straightened, neutralised), with the lattice, one repeat and the motif drawn
 * over it, and below it the colours with their shares and what could not be told. Letters come from a font of our own, so that the
 * picture is the same on a machine without fonts.
 */
export async function drawMeasure(
  view: ClothView,
  measure: ClothMeasure,
  units: UnitSystem,
  destination: string,
): Promise<void> {
  const folder = await mkdtemp(join(tmpdir(), "roomcloth-letters-"));
  try {
    const fontfile = join(folder, "letters.ttf");
    await writeFile(fontfile, plainFont(await readFile(FONT)));
    await writeAtomically(destination, await pictureOf(view, measure, units, fontfile));
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

async function pictureOf(
  view: ClothView,
  measure: ClothMeasure,
  units: UnitSystem,
  fontfile: string,
): Promise<Buffer> {
  const { width, height } = view.whole;
  const say = (mm: number) => measuredLength(mm, units);
  const { svg, labels } = latticeLines(view, measure, say);
  const overlays: OverlayOptions[] = [
    {
      input: Buffer.from(
        `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" fill="none">${svg}</svg>`,
      ),
      left: 0,
      top: 0,
    },
  ];
  for (const { x, y, text } of labels) {
    const letters = await lettersOf(text, 28, INK, PAPER, fontfile);
    overlays.push({
      input: letters.png,
      left: Math.round(Math.max(0, Math.min(width - letters.width, x))),
      top: Math.round(Math.max(0, Math.min(height - letters.height, y))),
    });
  }
  const key = await keyOf(measure, view, units, fontfile);
  const { data } = view.whole;
  const bytes = data instanceof Uint8Array ? data : Uint8Array.from(data, (v) => Math.round(v));
  const top = await sharp(bytes, { raw: { width, height, channels: 3 } })
    .composite(overlays.filter(({ input }) => input))
    .png()
    .toBuffer();
  return sharp({
    create: { width, height: height + key.height, channels: 3, background: PAPER },
  })
    .composite([
      { input: top, left: 0, top: 0 },
      ...key.overlays.map((each) => ({ ...each, top: (each.top as number) + height })),
    ])
    .png({ compressionLevel: 9 })
    .toBuffer();
}

/** The key: a ruler, the colours, and what she should look at. */
async function keyOf(measure: ClothMeasure, view: ClothView, units: UnitSystem, fontfile: string) {
  const { width } = view.whole;
  const overlays: OverlayOptions[] = [];
  const columns = width >= 900 ? 2 : 1;
  const columnWidth = Math.floor((width - 2 * MARGIN) / columns);
  let top = MARGIN;
  const put = async (text: string, left: number, at: number, most: number) => {
    const letters = await lettersOf(text, 26, INK, null, fontfile, most);
    overlays.push({ input: letters.png, left, top: at });
    return letters.height;
  };
  const ruler = rulerOf(view.mmPerPx, width, units);
  overlays.push({ input: Buffer.from(ruler.svg), left: MARGIN, top });
  await put(ruler.text, MARGIN + ruler.widthPx + 14, top - 6, width);
  top += ROW;
  const rows = Math.ceil(measure.colours.length / columns);
  for (const [at, { hex, share, name }] of measure.colours.entries()) {
    const left = MARGIN + Math.floor(at / rows) * columnWidth;
    const y = top + (at % rows) * ROW;
    const chip = `<svg xmlns="http://www.w3.org/2000/svg" width="${CHIP}" height="32"><rect x="0.5" y="0.5" width="${CHIP - 1}" height="31" fill="${hex}" stroke="${INK}"/></svg>`;
    overlays.push({ input: Buffer.from(chip), left, top: y });
    const percent = share < 0.01 ? "< 1" : String(Math.round(share * 100));
    await put(`${percent} %  ${name}  ${hex}`, left + CHIP + 14, y + 2, columnWidth - CHIP - 20);
  }
  top += rows * ROW + 8;
  const kind = measure.pattern.kind?.replaceAll("-", " ") ?? "kind cannot be told";
  const looks = measure.confirm.map(({ why }) => `Please look: ${why}`);
  for (const text of [kind, ...looks]) {
    top += (await put(text, MARGIN, top, width - 2 * MARGIN)) + 10;
  }
  return { overlays, height: top + MARGIN };
}

/** A ruler of a round length, about a fifth of the picture. */
function rulerOf(mmPerPx: number, width: number, units: UnitSystem) {
  const unit = units === "inches" ? 25.4 : 10;
  const fit = (0.2 * width * mmPerPx) / unit;
  const steps = [0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500];
  const count = steps.filter((n) => n <= fit).at(-1) ?? 0.5;
  const widthPx = Math.max(4, Math.round((count * unit) / mmPerPx));
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${widthPx}" height="20" fill="none" stroke="${INK}" stroke-width="3"><path d="M1.5 2V18M1.5 10H${widthPx - 1.5}M${widthPx - 1.5} 2V18"/></svg>`;
  return { svg, widthPx, text: units === "inches" ? `${count} in` : `${count} cm` };
}

/** A line (or, with `most`, a paragraph) of text as a picture, on a ground of its own where one is given. */
async function lettersOf(
  text: string,
  sizePx: number,
  ink: string,
  ground: string | null,
  fontfile: string,
  most?: number,
) {
  const safe = text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;");
  const letters = sharp({
    text: {
      text: `<span foreground="${ink}">${safe}</span>`,
      font: `Alegreya Sans ${sizePx}px`,
      fontfile,
      rgba: true,
      dpi: 72,
      ...(most ? { width: most, wrap: "word" as const } : {}),
    },
  });
  const { data, info } = await letters.png().toBuffer({ resolveWithObject: true });
  if (ground === null) return { png: data, width: info.width, height: info.height };
  const pad = 6;
  const png = await sharp(data)
    .extend({
      top: pad,
      bottom: pad,
      left: pad,
      right: pad,
      background: { ...rgb(ground), alpha: 0.9 },
    })
    .flatten({ background: ground })
    .png()
    .toBuffer();
  return { png, width: info.width + 2 * pad, height: info.height + 2 * pad };
}

function rgb(hex: string) {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16));
  return { r, g, b };
}
