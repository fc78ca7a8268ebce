import { mkdir } from "node:fs/promises";
import { dirname, join } from "node:path";
import type { Diagnostic, Place } from "../diagnostics/diagnostic.ts";
import type { PagePicture } from "../documents/page.ts";
import { type Cache, cacheKey, NO_CACHE, openCache } from "../images/cache.ts";
import { limiter } from "../images/limiter.ts";
import { makePicture } from "../images/makePicture.ts";
import { type OpenPhoto, openPhoto } from "../images/photo/openPhoto.ts";
import { printJpeg } from "../images/printJpeg.ts";
import { type TileMaker, tileMaker } from "../images/tile/makeTile.ts";
import { writeAtomically } from "../images/writeAtomically.ts";
import { cacheSubfolder } from "../press/cacheFolder.ts";
import type { TileCell } from "../swatches/tileCell.ts";
import type { MakePictures } from "./computed.ts";

/** Makes the pictures of one photograph: each cell of it is found once for all of its pictures. */
function picturesOf(photo: OpenPhoto, place: Place, cache: Cache) {
  const makers = new Map<string, TileMaker>();
  const makerOf = async (cell: TileCell): Promise<TileMaker | readonly Diagnostic[]> => {
    const decoded = await photo.decoded();
    if (decoded.value === null) return decoded.diagnostics;
    const name = JSON.stringify(cell);
    const maker = makers.get(name) ?? tileMaker(decoded.value.pixels, cell);
    makers.set(name, maker);
    return maker;
  };
  const makeTile = async (
    { widthPx, grey }: PagePicture,
    tile: TileCell,
    destination: string,
  ): Promise<readonly Diagnostic[]> => {
    const options = { widthPx, tile, ...(grey ? { grey } : {}) };
    const key = cacheKey({ what: "tile", sha256: photo.sha256, options });
    let jpeg = await cache.readBytes(key);
    if (jpeg === null) {
      const maker = await makerOf(tile);
      if (typeof maker !== "function") return maker;
      jpeg = await printJpeg(await maker(widthPx), grey);
      await cache.writeBytes(key, jpeg);
    }
    await writeAtomically(destination, jpeg);
    return [];
  };
  return async (picture: PagePicture, destination: string): Promise<readonly Diagnostic[]> => {
    const { crop, widthPx, grey, tile } = picture;
    if (tile) return makeTile(picture, tile, destination);
    const request = { photo, crop, widthPx, grey, destination, place, cache };
    return (await makePicture(request)).diagnostics;
  };
}

/** Makes the pictures of all pages below the staging folder, each path once: all of a photograph together, two photographs at a time. */
export const makePictures: MakePictures = async (pages, work) => {
  const all = new Map(pages.flatMap((page) => page.pictures).map((one) => [one.path, one]));
  const bySource = new Map<string, PagePicture[]>();
  for (const picture of all.values())
    bySource.set(picture.source, [...(bySource.get(picture.source) ?? []), picture]);
  const folder = work.useCache ? cacheSubfolder("pictures") : null;
  const cache = folder ? openCache(folder) : NO_CACHE;
  const run = limiter(2);
  const failed: string[] = [];
  const diagnostics: Diagnostic[] = [];
  let done = 0;
  const makeAll = async (source: string, pictures: readonly PagePicture[]): Promise<void> => {
    const place: Place = { file: source, line: null, column: null, keyPath: null };
    const photo = await openPhoto(join(work.contentDir, source), place);
    const make = photo.value && picturesOf(photo.value, place, cache);
    for (const picture of pictures) {
      const destination = join(work.stagingDir, picture.path);
      await mkdir(dirname(destination), { recursive: true });
      const found = make ? await make(picture, destination) : photo.diagnostics;
      diagnostics.push(...found);
      if (found.some((d) => d.severity === "error")) failed.push(picture.path);
      work.onProgress(`Made ${++done} of ${all.size} pictures`);
    }
  };
  await Promise.all(
    [...bySource].map(([source, pictures]) => run(() => makeAll(source, pictures))),
  );
  return { value: { failed }, diagnostics };
};
