import type { OverlayOptions } from "sharp";
import type { ClothMeasure } from "../../cloth/clothMeasure.ts";
import { patternFacts } from "../../swatches/measureText.ts";
import type { UnitSystem } from "../../units/printLength.ts";
import type { LetterCase, LetterStyle, Letters } from "./drawLetters.ts";

/** What stands below the photograph. */
export interface Key {
  readonly overlays: readonly OverlayOptions[];
  readonly height: number;
}

export interface Inks {
  readonly ink: string;
  readonly second: string;
  readonly accent: string;
}

const CHIP = { width: 58, height: 40 };
const ROW = 52;
const STRIP = 34;
const GAP = 26;

/** The colours as a strip of their shares and one by one, what is known of the pattern, and what she should look at. */
export async function keyOf(
  measure: ClothMeasure,
  width: number,
  units: UnitSystem,
  letters: LetterCase,
  { ink, second, accent }: Inks,
): Promise<Key> {
  const overlays: OverlayOptions[] = [];
  const put = async (text: string, left: number, top: number, style: LetterStyle) => {
    const set = await letters.set(text, style);
    overlays.push({ input: set.png, left, top });
    return set;
  };
  const head = { sizePx: 21, ink: second, face: "bold", upright: true } as const;
  const body = { sizePx: 24, ink, upright: true } as const;
  const small = { sizePx: 20, ink: second, upright: true } as const;

  overlays.push({ input: shareStrip(measure, width, ink), left: 0, top: 0 });
  let top = STRIP + GAP;
  const columns = width >= 1000 ? 3 : width >= 620 ? 2 : 1;
  const columnWidth = Math.floor(width / columns);
  const rows = Math.ceil(measure.colours.length / columns);
  const most = columnWidth - CHIP.width - 24;
  const names = await Promise.all(
    measure.colours.map(({ name }, at) =>
      letters.set(`${at + 1}  ${name}`, { ...body, mostPx: most }),
    ),
  );
  // A long name takes a second line in a narrow column, and its row the room for it.
  const lineHeight = Math.min(...names.map(({ height }) => height));
  const heights = Array.from({ length: rows }, (_, row) => {
    const inRow = names.filter((_, at) => at % rows === row);
    return ROW + Math.max(...inRow.map(({ height }) => height)) - lineHeight;
  });
  const tops = heights.map((_, row) => heights.slice(0, row).reduce((sum, h) => sum + h, top));
  for (const [at, colour] of measure.colours.entries()) {
    const left = Math.floor(at / rows) * columnWidth;
    const y = tops[at % rows] as number;
    overlays.push({ input: chip(colour.hex, ink), left, top: y });
    const beside = left + CHIP.width + 14;
    const name = names[at] as Letters;
    overlays.push({ input: name.png, left: beside, top: y - 7 });
    const reflects = `${percent(colour.share)}   ${colour.hex}   reflects ${Math.round(colour.lrv)} %`;
    await put(reflects, beside, y - 9 + name.height, small);
  }
  top += heights.reduce((sum, h) => sum + h, 0) + GAP - 10;
  overlays.push({ input: rule(width, second), left: 0, top });
  top += GAP - 6;
  const facts = patternFacts(measure.pattern, units);
  const wide = 190;
  for (const { what, value } of facts) {
    await put(what, 0, top + 2, head);
    const set = await put(value, wide, top, { ...body, mostPx: width - wide });
    top += set.height + 4;
  }
  if (measure.confirm.length > 0) {
    top += 10;
    const title = await put("please look", 0, top + 2, { ...head, ink: accent });
    for (const { why } of measure.confirm) {
      const set = await put(why, wide, top, { ...body, mostPx: width - wide });
      top += Math.max(set.height, title.height) + 7;
    }
  }
  return { overlays, height: top };
}

/** The shares of the colours as one strip, the largest first. */
function shareStrip({ colours }: ClothMeasure, width: number, ink: string): Buffer {
  let left = 0;
  const parts = colours.map(({ hex, share }) => {
    const part = `<rect x="${left.toFixed(2)}" width="${(share * width + 0.5).toFixed(2)}" height="${STRIP}" fill="${hex}"/>`;
    left += share * width;
    return part;
  });
  return Buffer.from(
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${STRIP}">${parts.join("")}<rect x="0.5" y="0.5" width="${width - 1}" height="${STRIP - 1}" fill="none" stroke="${ink}" stroke-opacity="0.5"/></svg>`,
  );
}

function chip(hex: string, ink: string): Buffer {
  const { width, height } = CHIP;
  return Buffer.from(
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}"><rect x="0.5" y="0.5" width="${width - 1}" height="${height - 1}" fill="${hex}" stroke="${ink}" stroke-opacity="0.5"/></svg>`,
  );
}

function rule(width: number, ink: string): Buffer {
  return Buffer.from(
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="1"><rect width="${width}" height="1" fill="${ink}" fill-opacity="0.4"/></svg>`,
  );
}

function percent(share: number): string {
  return share > 0 && share < 0.01 ? "< 1 %" : `${Math.round(share * 100)} %`;
}
