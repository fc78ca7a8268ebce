import { mkdir, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { CLOTHS } from "./cloths.ts";
import { toBytes } from "./ground/tile.ts";
import { makeLightTile, makeTile } from "./makeTile.ts";
import { OBJECTS } from "./objects.ts";
import { develop, expose, type ShotOptions } from "./photograph.ts";
import { recount, type Share } from "./recount.ts";
import type { PatternTruth } from "./truth.ts";

/*
 * Draws every photograph of the demo studio anew, and writes beside them what is true of each cloth:
 *   node --import tsx tests/cloths/make.ts [NAME …]
 */

const HERE = fileURLToPath(new URL(".", import.meta.url));
const CONTENT = fileURLToPath(new URL("../../content", import.meta.url));
/** The whole studio's pictures together stay under four megabytes: the great repeats get more, the small ones less. */
const limitBytes = (shot: ShotOptions) =>
  shot.acrossMm * shot.downMm > 300_000 && shot.pxPerMm > 1 ? 350_000 : 195_000;

type Entry = {
  file: string;
  showsMm: number;
  tileMm: [number, number];
  pattern: PatternTruth | null;
  palette: Share[];
};

const round = (value: number) => Number(value.toFixed(4));
const seedOf = (name: string) =>
  [...name].reduce((sum, letter) => (sum * 31 + letter.charCodeAt(0)) >>> 0, 7);
const extension = (shot: ShotOptions) => (shot.format === "jpeg" ? "jpg" : shot.format);

async function main(only: readonly string[]): Promise<void> {
  const truth: Record<string, Entry> = {};
  const wanted = (name: string) => only.length === 0 || only.includes(name);
  await mkdir(join(CONTENT, "cloths"), { recursive: true });
  await mkdir(join(CONTENT, "objects"), { recursive: true });
  for (const [name, cloth] of Object.entries(CLOTHS)) {
    const file = `cloths/${name}.${extension(cloth.photo)}`;
    const clean = await makeTile(name);
    truth[name] = {
      file,
      showsMm: round(cloth.photo.acrossMm),
      tileMm: [round(clean.width / clean.pxPerMm), round(clean.height / clean.pxPerMm)],
      pattern: cloth.pattern,
      palette: tidy(recount(clean, cloth.inks)),
    };
    if (!wanted(name)) continue;
    const tile = await makeLightTile(name);
    const bytes = await develop(
      expose(tile, cloth.photo, seedOf(name)),
      cloth.photo,
      limitBytes(cloth.photo),
    );
    await writeFile(join(CONTENT, file), bytes);
    report(file, bytes.length);
  }
  for (const [name, object] of Object.entries(OBJECTS)) {
    const file = `objects/${name}.${extension(object.photo)}`;
    const picture = await object.make(object.pxPerMm);
    truth[name] = {
      file,
      showsMm: round(object.photo.acrossMm),
      tileMm: [round(object.photo.acrossMm), round(object.photo.downMm)],
      pattern: null,
      palette: tidy(recount(toBytes(picture), object.inks)),
    };
    if (!wanted(name)) continue;
    const bytes = await develop(
      expose(picture, object.photo, seedOf(name)),
      object.photo,
      limitBytes(object.photo),
    );
    await writeFile(join(CONTENT, file), bytes);
    report(file, bytes.length);
  }
  await writeFile(join(HERE, "truth.json"), `${JSON.stringify(truth, null, 2)}\n`);
}

const report = (file: string, bytes: number) =>
  process.stderr.write(`${file} ${Math.round(bytes / 1000)} kB\n`);

/** Shares to four places that still sum to one exactly: the rounding goes to the largest. */
function tidy(shares: readonly Share[]): Share[] {
  const rounded = shares.map(({ hex, share }) => ({ hex, share: round(share) }));
  const first = rounded[0];
  if (first)
    first.share = round(first.share + 1 - rounded.reduce((sum, { share }) => sum + share, 0));
  return rounded;
}

await main(process.argv.slice(2));
