import { rmSync } from "node:fs";
import { mkdtemp, readFile, writeFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import sharp from "sharp";
import { plainFont } from "./plainFont.ts";

/** A line or paragraph as a picture. */
export interface Letters {
  readonly png: Buffer;
  readonly width: number;
  readonly height: number;
}

export interface LetterStyle {
  readonly sizePx: number;
  readonly ink: string;
  readonly face?: keyof typeof FACES;
  /** A ground of its own, so that it reads on cloth. */
  readonly ground?: string;
  /** Breaks lines at so many pixels. */
  readonly mostPx?: number;
  /** First and last line are as high as any, whatever their letters, so that words set beside each other stand on one line. */
  readonly upright?: boolean;
}

const FACES = {
  text: { name: "Alegreya Sans", pack: "alegreya-sans", file: "alegreya-sans-latin-400-normal" },
  bold: {
    name: "Alegreya Sans Bold",
    pack: "alegreya-sans",
    file: "alegreya-sans-latin-700-normal",
  },
  title: { name: "EB Garamond", pack: "eb-garamond", file: "eb-garamond-latin-400-normal" },
} as const;

/** The tallest sign of a face: it reaches above all letters and below them. */
const TALLEST = "|";
const PAD_X = 9;
const PAD_Y = 5;

/** Sets words into pictures, in the fonts of the pages: the same on a machine that has no fonts. */
export class LetterCase {
  private constructor(private readonly folder: string) {}

  /** The case of this process; its fonts lie in a temporary folder until the process ends. */
  static open(): Promise<LetterCase> {
    LetterCase.opened ??= LetterCase.unpack();
    return LetterCase.opened;
  }

  // The setter remembers a font's file for as long as it runs: were it put away after each picture, the next would have no letters.
  private static opened: Promise<LetterCase> | null = null;

  private static async unpack(): Promise<LetterCase> {
    const folder = await mkdtemp(join(tmpdir(), "roomcloth-letters-"));
    process.once("exit", () => rmSync(folder, { recursive: true, force: true }));
    for (const { pack, file } of Object.values(FACES)) {
      await writeFile(join(folder, `${file}.ttf`), plainFont(await readFile(woff(pack, file))));
    }
    return new LetterCase(folder);
  }

  async set(text: string, style: LetterStyle): Promise<Letters> {
    const { ink, ground, upright = false } = style;
    const strut = upright ? await this.strut(style) : "";
    const { data, info } = await this.picture(
      `${strut}<span foreground="${ink}" font_features="lnum">${marked(text)}</span>${strut}`,
      style,
    );
    if (ground === undefined) return { png: data, width: info.width, height: info.height };
    const [width, height] = [info.width + 2 * PAD_X, info.height + 2 * PAD_Y];
    const plate = `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}"><rect width="${width}" height="${height}" rx="2" fill="${ground}" fill-opacity="0.94"/></svg>`;
    const png = await sharp(Buffer.from(plate))
      .composite([{ input: data, left: PAD_X, top: PAD_Y }])
      .png()
      .toBuffer();
    return { png, width, height };
  }

  private picture(markup: string, { sizePx, face = "text", mostPx }: LetterStyle) {
    const { name, file } = FACES[face];
    return sharp({
      text: {
        text: markup,
        font: `${name} ${sizePx}px`,
        fontfile: join(this.folder, `${file}.ttf`),
        rgba: true,
        dpi: 72,
        ...(mostPx === undefined ? {} : { width: Math.max(1, mostPx), wrap: "word" as const }),
      },
    })
      .png()
      .toBuffer({ resolveWithObject: true });
  }

  /** The tallest sign, not seen and of no width: a picture is cut to what is set in it, and this holds it open. */
  private async strut(style: LetterStyle): Promise<string> {
    const key = `${style.face ?? "text"} ${style.sizePx}`;
    const known = this.struts.get(key);
    if (known !== undefined) return known;
    const line = { ...style, mostPx: undefined };
    const [short, long] = await Promise.all(
      [10, 50].map((count) => this.picture(TALLEST.repeat(count), line)),
    );
    const advancePx = ((long?.info.width ?? 0) - (short?.info.width ?? 0)) / 40;
    // Pango counts in 1024ths of a point; a point is a pixel at 72 dots an inch.
    const back = -Math.round(advancePx * 1024);
    const strut = `<span fgalpha="1" letter_spacing="${back}">${TALLEST}</span>`;
    this.struts.set(key, strut);
    return strut;
  }

  private readonly struts = new Map<string, string>();
}

function woff(pack: string, file: string): string {
  const home = createRequire(import.meta.url).resolve(`@fontsource/${pack}/package.json`);
  return join(dirname(home), "files", `${file}.woff`);
}

/** Text for the setter: nothing of it is markup, and its fractions are built. */
function marked(text: string): string {
  const safe = text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;");
  return safe.replace(
    /(?<![\d/])(\d{1,2}\/\d{1,2})(?![\d/])/g,
    '<span font_features="lnum, frac">$1</span>',
  );
}
