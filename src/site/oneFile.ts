import { existsSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { dirname, join, posix } from "node:path";
import sharp from "sharp";
import { shrinkInLight } from "../images/photo/shrinkInLight.ts";
import { writeAtomically } from "../images/writeAtomically.ts";
import { facesFor } from "./fontFaces.ts";

/** Reads a file by its path from the page, forward slashes. */
type ReadFile = (path: string) => Promise<Buffer>;

const STYLE = /<link rel="stylesheet" href="([^"]+)">/g;
const SCRIPT = /<script src="([^"]+)"><\/script>/g;
const IMAGE = /<image ([^>]*?)href="([^"#][^"]*)"([^>]*?)\/>/g;
const IMG_SOURCE = /(<img [^>]*?src=")([^"]+)(")/g;
const FIT = /\s*preserveAspectRatio="([^"]+)"/;

const dataAddress = (type: string, bytes: Buffer): string =>
  `data:${type};base64,${bytes.toString("base64")}`;

/** Replaces every match by what an asynchronous function gives for it. */
async function replaceEach(
  text: string,
  pattern: RegExp,
  by: (found: readonly string[]) => Promise<string>,
): Promise<string> {
  const made: string[] = [];
  for (const found of text.matchAll(pattern)) made.push(await by(found));
  return text.replace(pattern, () => made.shift() as string);
}

/** What is sent by mail keeps two thirds of the print's pixels a side, 200 ppi where print has 300: enough for any screen. */
const PART = 2 / 3;
/** Narrower pictures are left as they are: they weigh little, and fine cloth must not blur. */
const SMALL_PX = 300;

async function lighter(jpeg: Buffer): Promise<{ bytes: Buffer; width: number; height: number }> {
  const { width, height } = await sharp(jpeg).metadata();
  if (width <= SMALL_PX) return { bytes: jpeg, width, height };
  const plain = await sharp(jpeg).removeAlpha().raw().toBuffer({ resolveWithObject: true });
  const from = { width, height, channels: plain.info.channels };
  const { data, info } = await shrinkInLight(plain.data, from, width * PART)
    .withIccProfile("srgb")
    .jpeg({ quality: 82, chromaSubsampling: "4:4:4" })
    .toBuffer({ resolveWithObject: true });
  return { bytes: data, width: info.width, height: info.height };
}

/**
 * A page with everything that it loads written into it: style sheets, the fonts of its letters, script, pictures. A picture that drawings show many times
 * is kept once, as a symbol at the page's end, and used by reference. Throws where something that it loads would stay outside.
 */
export async function inOneFile(html: string, read: ReadFile): Promise<string> {
  let page = await replaceEach(html, STYLE, async ([, href = ""]) => {
    const css = facesFor((await read(href)).toString("utf8"), html);
    const folder = posix.dirname(href);
    const whole = await replaceEach(css, /url\("([^"]+\.woff2)"\)/g, async ([, font = ""]) => {
      const bytes = await read(posix.join(folder, font));
      return `url("${dataAddress("font/woff2", bytes)}")`;
    });
    return `<style>\n${whole}</style>`;
  });
  page = await replaceEach(page, SCRIPT, async ([, src = ""]) => {
    const text = (await read(src)).toString("utf8");
    return `<script>\n${text}</script>`;
  });
  page = await replaceEach(page, IMG_SOURCE, async ([, before = "", src = "", after = ""]) =>
    src.startsWith("data:")
      ? `${before}${src}${after}`
      : `${before}${dataAddress("image/jpeg", await read(src))}${after}`,
  );
  const ids = new Map<string, string>();
  const kept = new Map<string, string>();
  const keep = async (href: string): Promise<string> => {
    const { bytes, width, height } = await lighter(await read(href));
    const address = dataAddress("image/jpeg", bytes);
    const id = ids.get(address) ?? `picture-${ids.size}`;
    if (ids.has(address)) return id;
    ids.set(address, id);
    const fits = [
      ["none", "none"],
      ["slice", "xMidYMid slice"],
      ["meet", "xMidYMid meet"],
    ].map(
      ([kind, how]) =>
        `<symbol id="${id}-${kind}" viewBox="0 0 ${width} ${height}" preserveAspectRatio="${how}"><use href="#${id}"/></symbol>`,
    );
    pictures += `<image id="${id}" width="${width}" height="${height}" preserveAspectRatio="none" href="${address}"/>${fits.join("")}`;
    return id;
  };
  let pictures = "";
  page = await replaceEach(page, IMAGE, async ([, before = "", href = "", after = ""]) => {
    const fit = FIT.exec(before + after)?.[1] ?? "xMidYMid meet";
    const rest = `${before}${after}`.replace(FIT, "").replace(/\s+/g, " ").trim();
    const id = kept.get(href) ?? (await keep(href));
    kept.set(href, id);
    const kind = fit === "none" ? "none" : fit.endsWith("slice") ? "slice" : "meet";
    return `<use href="#${id}-${kind}" ${rest}/>`;
  });
  if (pictures !== "") {
    const store = `<svg width="0" height="0" style="position:absolute" aria-hidden="true"><defs>${pictures}</defs></svg>`;
    page = page.replace(/<script>|<\/body>/, (tag) => `${store}\n${tag}`);
  }
  const left = /\b(?:src|href)="(?!#|data:|https?:|mailto:)([^"]*)"/.exec(page);
  if (left) throw new Error(`${left[1]} would stay outside the one file`);
  return page;
}

/** Rewrites a staged page as one file; a page that could not be rendered is left alone. */
export async function writeInOneFile(root: string, path: string): Promise<void> {
  const file = join(root, ...path.split("/"));
  if (!existsSync(file)) return;
  const folder = dirname(file);
  const html = await readFile(file, "utf8");
  const page = await inOneFile(html, (name) => readFile(join(folder, ...name.split("/"))));
  await writeAtomically(file, Buffer.from(page));
}
